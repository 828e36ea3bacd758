import { useEffect, useRef } from 'react'
import { Button } from 'react-aria-components'
import type { WorkingText } from '../../../shared/report/document.ts'
import { Sheet } from '../Sheet.tsx'
import { Working } from './Working.tsx'

/** One working, opened from a number. */
export function WorkingSheet(props: {
  readonly working: WorkingText
  readonly back: { readonly label: string; readonly go: () => void } | null
  readonly onClose: () => void
}) {
  const start = useRef<HTMLDivElement>(null)
  const last = useRef(props.working.id)
  useEffect(() => {
    // The button that led here is gone from the sheet: without this the focus would fall off the page.
    if (last.current !== props.working.id) start.current?.focus()
    last.current = props.working.id
  }, [props.working.id])
  return (
    <Sheet title={props.working.label} wide onClose={props.onClose}>
      <div ref={start} tabIndex={-1} className="working-start">
        <Working working={props.working} />
      </div>
      <div className="sheet-foot">
        {props.back !== null && (
          <Button className="button" onPress={props.back.go}>
            ← Back to {props.back.label}
          </Button>
        )}
        <Button className="button button-strong" onPress={props.onClose}>
          Close
        </Button>
      </div>
    </Sheet>
  )
}
