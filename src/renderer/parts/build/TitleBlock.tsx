import type { Document } from '../../../shared/report/document.ts'
import type { Units } from '../../app/queries.ts'

/** The ruled box in the lower right corner, where a drawing says what it is. */
export function TitleBlock(props: { readonly document: Document; readonly section: string; readonly units: Units }) {
  return (
    <footer className="title-block">
      <dl>
        <div className="title-block-wide">
          <dt>Subject</dt>
          <dd>{props.document.subject}</dd>
        </div>
        <div>
          <dt>Sheet</dt>
          <dd>{props.section}</dd>
        </div>
        <div>
          <dt>Units</dt>
          <dd>{props.units === 'inch' ? 'inch' : 'metric'}</dd>
        </div>
        <div>
          <dt>Date</dt>
          <dd>{props.document.printedOn}</dd>
        </div>
        <div className="title-block-wide">
          <dt>Note</dt>
          <dd>{props.document.footer}</dd>
        </div>
      </dl>
    </footer>
  )
}
