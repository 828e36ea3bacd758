import { exhaustive } from '../../../shared/result/result.ts'
import { ProblemList } from '../../parts/ProblemList.tsx'
import type { Filling } from './useSurvey.ts'

/** Whether what is filled in is in the build; and what to do where it is not. */
export function Saving({ filling }: { readonly filling: Filling }) {
  const { standing } = filling
  switch (standing.kind) {
    case 'saved':
      return (
        <p className="quiet" role="status">
          Saved as it stands.
        </p>
      )
    case 'saving':
      return (
        <p className="quiet" role="status">
          Saving…
        </p>
      )
    case 'incomplete':
      return (
        <p className="quiet" role="status">
          Kept in this window; saved once the method and the tape are said.
        </p>
      )
    case 'two':
      return (
        <div className="trouble" role="alert">
          <p>The survey of this build was changed elsewhere meanwhile. Yours is kept here and is not saved. Which one shall stand?</p>
          <div className="tools">
            <button type="button" className="button" onClick={filling.keepMine}>
              Mine, over the other
            </button>
            <button type="button" className="button" onClick={filling.takeTheirs}>
              The other; let mine go
            </button>
          </div>
        </div>
      )
    case 'refused':
      return (
        <div className="trouble" role="alert">
          <p>Not saved, but kept in this window:</p>
          <ProblemList problems={standing.problems} />
          <button type="button" className="button" onClick={filling.retry}>
            Try again
          </button>
        </div>
      )
    default:
      return exhaustive(standing, 'standing of a survey')
  }
}
