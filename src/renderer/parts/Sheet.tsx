import type { ReactNode } from 'react'
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components'

/**
 * A sheet of paper laid over the bench: a dialog that Esc, its own buttons or a press beside it put away, after which the
 * focus goes back to where it came from.
 */
export function Sheet(props: {
  readonly title: string
  readonly role?: 'dialog' | 'alertdialog'
  readonly wide?: boolean
  readonly onClose: () => void
  readonly children: ReactNode
}) {
  return (
    <ModalOverlay className="veil" isOpen isDismissable onOpenChange={(open) => !open && props.onClose()}>
      <Modal className={props.wide === true ? 'sheet sheet-wide' : 'sheet'}>
        <Dialog className="sheet-body" role={props.role ?? 'dialog'}>
          <Heading slot="title" level={2} className="sheet-title">
            {props.title}
          </Heading>
          {props.children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  )
}
