import { useCallback } from 'react'
import { CHANGED_MEANWHILE, type Step, sentences, useChange, useReread } from '../../app/build-file.ts'
import { useNotice } from '../../app/notice.tsx'

/** Carries out a step and says how it went. */
export type Act = (step: Step, said: string) => Promise<boolean>

/**
 * Steps on a build that a press of a button carries out. Where somebody else changed the build meanwhile nothing is overwritten:
 * the build is read anew and shown as it is now, so that the step can be taken again.
 * @returns a function that says whether the step was done
 */
export function useSteps(id: string): Act {
  const change = useChange(id)
  const reread = useReread(id)
  const tell = useNotice()
  return useCallback(
    async (step, said) => {
      const problems = await change(step)
      if (problems.some((problem) => problem.code === CHANGED_MEANWHILE)) {
        await reread()
        tell(`${sentences(problems)} The build is shown as it is now: do it again if it is still wanted.`, 'trouble')
      } else if (problems.length > 0) tell(sentences(problems), 'trouble')
      else tell(said)
      return problems.length === 0
    },
    [change, reread, tell],
  )
}
