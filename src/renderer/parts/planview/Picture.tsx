import { memo, type ReactNode, type RefObject, useId, useRef } from 'react'
import type { Block } from '../../../shared/report/document.ts'
import type { Drawing } from '../../../shared/report/drawing.ts'
import { messageOf } from '../../app/client.ts'
import { keep } from '../../app/download.ts'
import { useNotice } from '../../app/notice.tsx'
import { Shape } from '../../drawings/Shape.tsx'
import { svgFile } from '../../drawings/svg-file.ts'
import { Table } from '../blocks/Table.tsx'
import { keyed } from '../keyed.ts'
import { useZoom } from './useZoom.ts'

/** A table stays as it is while its picture moves. */
const StillTable = memo(Table)

/**
 * A drawing to look at closely: zoomed by buttons or Ctrl and the wheel, saved as a file, told in words and as a table.
 */
export function Picture(props: {
  readonly drawing: Drawing
  readonly caption: string
  /** begins the name of its file */
  readonly of: string
  readonly table?: Extract<Block, { kind: 'table' }> | undefined
  /** laid over the drawing, in its millimetres */
  readonly overlay?: ReactNode
  readonly painted?: RefObject<SVGSVGElement | null>
  readonly tools?: ReactNode
}) {
  const { drawing } = props
  const id = useId()
  const box = useRef<HTMLElement>(null)
  const own = useRef<SVGSVGElement>(null)
  const svg = props.painted ?? own
  const zoom = useZoom(box)
  const tell = useNotice()
  const save = async () => {
    if (svg.current === null) return
    try {
      tell(await keep(svgFile(svg.current, `${props.of} ${drawing.id}`)))
    } catch (error) {
      tell(messageOf(error), 'trouble')
    }
  }
  return (
    <figure className="picture" aria-labelledby={`${id}name`}>
      <div className="picture-head">
        <figcaption>
          <span id={`${id}name`} className="picture-name">
            {drawing.title}
          </span>
          <span className="quiet">{props.caption}</span>
        </figcaption>
        <div className="picture-tools">
          <button type="button" className="button button-small" onClick={zoom.out} disabled={zoom.zoom <= 1}>
            <span aria-hidden="true">−</span>
            <span className="unseen">Smaller: {drawing.title}</span>
          </button>
          <span className="picture-zoom" role="status">
            <span className="unseen">Size </span>
            {Math.round(zoom.zoom * 100)} %
          </span>
          <button type="button" className="button button-small" onClick={zoom.in} disabled={zoom.zoom >= 8}>
            <span aria-hidden="true">+</span>
            <span className="unseen">Larger: {drawing.title}</span>
          </button>
          <button type="button" className="button button-small" onClick={zoom.fit} disabled={zoom.zoom === 1}>
            Fit<span className="unseen">: {drawing.title}</span>
          </button>
          <button type="button" className="button button-small" onClick={() => void save()}>
            Save as SVG<span className="unseen">: {drawing.title}</span>
          </button>
          {props.tools}
        </div>
      </div>
      <section ref={box} className="picture-paper" {...(zoom.zoom > 1 ? { tabIndex: 0, 'aria-label': `${drawing.title}, enlarged` } : {})}>
        <div style={{ width: `${zoom.zoom * 100}%` }}>
          <svg
            ref={svg}
            role="img"
            aria-labelledby={`${id}title`}
            aria-describedby={`${id}desc`}
            viewBox={`0 0 ${drawing.width} ${drawing.height}`}
          >
            <title id={`${id}title`}>{drawing.title}</title>
            <desc id={`${id}desc`}>{drawing.description}</desc>
            {keyed(drawing.items, (item) => item.kind).map(({ key, item }) => (
              <Shape key={key} item={item} />
            ))}
            {props.overlay}
          </svg>
        </div>
      </section>
      <details className="picture-words">
        <summary>In words{props.table === undefined ? '' : ' and as a table'}</summary>
        <p>{drawing.description}</p>
        {props.table !== undefined && <StillTable block={props.table} />}
      </details>
    </figure>
  )
}
