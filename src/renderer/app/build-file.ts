import { type QueryClient, useQuery, useQueryClient } from '@tanstack/react-query'
import { useCallback } from 'react'
import type { Problem, ProcedureOutput } from '../../shared/contract/contract.ts'
import type { BuildFile } from '../../shared/model/build.ts'
import { call, messageOf } from './client.ts'

type Read = ProcedureOutput<'builds.read'>

const keyOf = (id: string) => ['file', id] as const

/** The build as its file holds it, to be changed. */
export const useBuildFile = (id: string) => useQuery({ queryKey: keyOf(id), queryFn: () => call('builds.read', { id }) })

/**
 * The stored file as the window knows it this very moment. What is shown follows a write a little later; who clears what was typed
 * right after it was saved must not fall back on the file from before.
 */
export function useStoredNow(id: string): () => BuildFile | undefined {
  const client = useQueryClient()
  return useCallback(() => {
    const read = client.getQueryData<Read>(keyOf(id))
    return read?.ok === true ? read.value.file : undefined
  }, [client, id])
}

/** After a build was changed: all that is shown of it is read anew, save its file, which the answer already told. */
export function forgetShown(client: QueryClient, id: string): void {
  void client.invalidateQueries({ queryKey: ['build', id] })
  void client.invalidateQueries({ queryKey: ['candidates', id] })
  void client.invalidateQueries({ queryKey: ['builds'] })
}

/** What a step does to the file; null where it finds nothing to do any more. */
export type Step = (file: BuildFile) => BuildFile | null

/** One step waits for the one before, so that two quick ones are not based on the same revision. */
const queues = new Map<string, Promise<unknown>>()

async function write(client: QueryClient, id: string, step: Step): Promise<readonly Problem[]> {
  const kept: Read | undefined = client.getQueryData(keyOf(id))
  const known: Read = kept ?? (await client.fetchQuery<Read>({ queryKey: keyOf(id), queryFn: () => call('builds.read', { id }) }))
  if (!known.ok) return known.problems
  const { file, revision, changedAt } = known.value
  const changed = step(file)
  if (changed === null) return []
  const answer = await call('builds.write', { file: changed, basedOn: revision, changedAt })
  if (!answer.ok) return answer.problems
  const { revision: now, changedAt: at } = answer.value
  const after: Read = {
    ok: true,
    value: { file: { ...changed, build: { ...changed.build, revision: now } }, revision: now, changedAt: at },
  }
  client.setQueryData(keyOf(id), after)
  forgetShown(client, id)
  return []
}

/**
 * Carries out steps on a build's file, one after the other.
 * @returns a function that gives the problems a step met; none where it is done
 */
export function useChange(id: string): (step: Step) => Promise<readonly Problem[]> {
  const client = useQueryClient()
  return useCallback(
    (step) => {
      const turn = (queues.get(id) ?? Promise.resolve()).then(() =>
        write(client, id, step).catch((error): readonly Problem[] => [{ code: 'window', place: '', sentence: messageOf(error) }]),
      )
      queues.set(id, turn)
      return turn
    },
    [client, id],
  )
}

/** Reads the stored file again, after somebody else changed it. */
export function useReread(id: string): () => Promise<void> {
  const client = useQueryClient()
  return useCallback(async () => {
    await client.refetchQueries({ queryKey: keyOf(id) })
    forgetShown(client, id)
  }, [client, id])
}

/** The refusal that says somebody else was quicker. */
export const CHANGED_MEANWHILE = 'build.changed_meanwhile'

/** All sentences of a refusal as one text. */
export const sentences = (problems: readonly Problem[]): string => problems.map((problem) => problem.sentence).join(' ')
