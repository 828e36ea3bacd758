import type { Problem } from '../../shared/contract/contract.ts'
import { keyed } from './keyed.ts'
import { Scroller } from './Scroller.tsx'

/** Everything wrong with an input: where, and in a sentence what. */
export function ProblemList({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <Scroller className="problems" label="What is to be put right">
      <ol>
        {keyed(problems, (problem) => `${problem.place} ${problem.sentence}`).map(({ key, item: problem }) => (
          <li key={key}>
            {problem.place !== '' && <code className="problem-place">{problem.place}</code>}
            <span>{problem.sentence}</span>
          </li>
        ))}
      </ol>
    </Scroller>
  )
}
