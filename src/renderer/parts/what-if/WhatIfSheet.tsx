import { Button } from 'react-aria-components'
import { BlockView } from '../blocks/BlockView.tsx'
import { keyed } from '../keyed.ts'
import { StateTag } from '../Mark.tsx'
import { Sheet } from '../Sheet.tsx'
import type { Comparison } from './compare.ts'

/** Where the keyboard goes once the sheet is put away for good: the button that opened it has nothing to ask any more. */
export const toTheDesk = (): void => {
  requestAnimationFrame(() => requestAnimationFrame(() => document.getElementById('desk')?.focus()))
}

const stops = (count: number) =>
  count === 0 ? (
    <StateTag state="good" text="nothing stops the build" />
  ) : (
    <StateTag state="stops" text={count === 1 ? 'one point stops the build' : `${count} points stop the build`} />
  )

/** What a change that is not saved yet would change in the plan, before and after side by side; then it is kept, edited on or dropped. */
export function WhatIfSheet(props: {
  readonly comparison: Comparison
  readonly onKeep: () => void
  readonly onBack: () => void
  readonly onDrop: () => void
}) {
  const { blocks, stopsBefore, stopsAfter } = props.comparison
  return (
    <Sheet title="What would change" wide onClose={props.onBack}>
      <p className="quiet">Nothing is saved yet.</p>
      <dl className="what-if-stops">
        <div>
          <dt>Before</dt>
          <dd>{stops(stopsBefore)}</dd>
        </div>
        <div>
          <dt>After</dt>
          <dd>{stops(stopsAfter)}</dd>
        </div>
      </dl>
      <div className="what-if-blocks">
        {keyed(blocks, (block) => block.kind).map(({ key, item }) => (
          <BlockView key={key} block={item} />
        ))}
      </div>
      <div className="sheet-foot what-if-foot">
        <Button className="button button-strong" onPress={props.onKeep}>
          Keep the change: save
        </Button>
        <Button className="button" onPress={props.onBack}>
          Back to editing
        </Button>
        <Button className="button button-danger" onPress={props.onDrop}>
          Drop the change
        </Button>
      </div>
    </Sheet>
  )
}
