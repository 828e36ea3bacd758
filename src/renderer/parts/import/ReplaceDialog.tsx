import { Button } from 'react-aria-components'
import { Sheet } from '../Sheet.tsx'

/** Asks before a build that is there is replaced by the one in a file. */
export function ReplaceDialog(props: { readonly sentence: string; readonly onClose: () => void; readonly onReplace: () => void }) {
  return (
    <Sheet title="This build is here already" role="alertdialog" onClose={props.onClose}>
      <p>{props.sentence}</p>
      <p>Replacing it puts the file’s build in its place. Export the one here first if you may want it again.</p>
      <div className="sheet-foot">
        <Button className="button" onPress={props.onClose} autoFocus>
          Keep what is here
        </Button>
        <Button className="button button-danger" onPress={props.onReplace}>
          Replace it
        </Button>
      </div>
    </Sheet>
  )
}
