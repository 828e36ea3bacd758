import { useId } from 'react'
import type { Drawing } from '../../shared/report/drawing.ts'
import { keyed } from '../parts/keyed.ts'
import { Scroller } from '../parts/Scroller.tsx'
import { Shape } from './Shape.tsx'

/** A drawing on screen, to its own proportions; its description is read in its place. Small windows scroll it. */
export function Figure({ drawing, caption }: { readonly drawing: Drawing; readonly caption: string }) {
  const id = useId()
  return (
    <figure className="figure">
      <Scroller label={drawing.title} className="figure-paper">
        <svg role="img" aria-labelledby={`${id}title`} aria-describedby={`${id}desc`} viewBox={`0 0 ${drawing.width} ${drawing.height}`}>
          <title id={`${id}title`}>{drawing.title}</title>
          <desc id={`${id}desc`}>{drawing.description}</desc>
          {keyed(drawing.items, (item) => item.kind).map(({ key, item }) => (
            <Shape key={key} item={item} />
          ))}
        </svg>
      </Scroller>
      <figcaption>{caption}</figcaption>
    </figure>
  )
}
