import { Button } from 'react-aria-components'
import type { Problem } from '../../../shared/contract/contract.ts'
import { ProblemList } from '../ProblemList.tsx'
import { Sheet } from '../Sheet.tsx'

/** A file that was refused, with everything that is wrong with it at once. */
export function RefusedDialog(props: {
  readonly from: string
  readonly problems: readonly Problem[]
  readonly onClose: () => void
  readonly onAgain: () => void
}) {
  const count = props.problems.length
  return (
    <Sheet title="Not taken in" wide onClose={props.onClose}>
      <p>
        <strong>{props.from}</strong> has {count === 1 ? 'one thing' : `${count} things`} to put right. Nothing was changed here.
      </p>
      <ProblemList problems={props.problems} />
      <div className="sheet-foot">
        <Button
          className="button button-strong"
          onPress={() => {
            props.onClose()
            props.onAgain()
          }}
        >
          Choose a file again…
        </Button>
        <Button className="button" onPress={props.onClose}>
          Close
        </Button>
      </div>
    </Sheet>
  )
}
