import type { ReactNode } from 'react'
import { Button } from 'react-aria-components'
import { Sheet } from './Sheet.tsx'

/** Asks before something is taken away; what changes nothing comes first. */
export function Confirm(props: {
  readonly title: string
  readonly keep: string
  readonly act: string
  readonly busy?: boolean
  readonly children: ReactNode
  readonly onClose: () => void
  readonly onAct: () => void
}) {
  return (
    <Sheet title={props.title} role="alertdialog" onClose={props.onClose}>
      {props.children}
      <div className="sheet-foot">
        <Button className="button" onPress={props.onClose} autoFocus>
          {props.keep}
        </Button>
        <Button className="button button-danger" isDisabled={props.busy ?? false} onPress={props.onAct}>
          {props.act}
        </Button>
      </div>
    </Sheet>
  )
}
