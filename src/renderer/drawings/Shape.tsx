import type { Ink, Item } from '../../shared/report/drawing.ts'
import { exhaustive } from '../../shared/result/result.ts'

/** Height of a capital in DejaVu Sans as a share of the type size; drawings give the height of the capital (ISO 3098). */
const CAPITAL = 0.729

/** Length and half width of an arrow head, mm: a narrow filled one (ISO 129-1). */
const ARROW = { length: 2.6, half: 0.45 }

function inkClass(ink: Ink): string {
  const state = ink.state === undefined ? '' : ` state-${ink.state}`
  return `line-${ink.line} fill-${ink.fill ?? 'none'}${state}`
}

/** One item of a drawing. Widths and colours are in style/drawing.css. */
export function Shape({ item }: { readonly item: Item }) {
  switch (item.kind) {
    case 'line':
      return <line className={inkClass(item.ink)} x1={item.from.x} y1={item.from.y} x2={item.to.x} y2={item.to.y} />
    case 'polyline': {
      const points = item.points.map((point) => `${point.x},${point.y}`).join(' ')
      return item.closed ? (
        <polygon className={inkClass(item.ink)} points={points} />
      ) : (
        <polyline className={inkClass(item.ink)} points={points} />
      )
    }
    case 'circle':
      return <circle className={inkClass(item.ink)} cx={item.centre.x} cy={item.centre.y} r={item.radius} />
    case 'text':
      return (
        <text
          className={item.state === undefined ? 'drawing-text' : `drawing-text state-${item.state}`}
          x={item.at.x}
          y={item.at.y}
          fontSize={item.size / CAPITAL}
          textAnchor={item.anchor}
        >
          {item.text}
        </text>
      )
    case 'arrow': {
      const turned = `translate(${item.at.x} ${item.at.y}) rotate(${(item.angle * 180) / Math.PI})`
      return <polygon className="arrow" transform={turned} points={`0,0 ${-ARROW.length},${-ARROW.half} ${-ARROW.length},${ARROW.half}`} />
    }
    default:
      return exhaustive(item, 'drawing item')
  }
}
