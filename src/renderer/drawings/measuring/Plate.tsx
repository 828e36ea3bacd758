import { type ReactNode, useId } from 'react'

/** A small drawing of where to put a tool, in millimetres of paper, 120 wide. Its description is read in its place. */
export function Plate(props: {
  readonly title: string
  readonly description: string
  readonly height: number
  readonly children: ReactNode
}) {
  const id = useId()
  return (
    <figure className="plate">
      <svg role="img" aria-labelledby={`${id}title`} aria-describedby={`${id}desc`} viewBox={`0 0 120 ${props.height}`}>
        <title id={`${id}title`}>{props.title}</title>
        <desc id={`${id}desc`}>{props.description}</desc>
        {props.children}
      </svg>
      <figcaption>{props.title}</figcaption>
    </figure>
  )
}

/** Words on a drawing: 2.5 mm capitals. */
export function Label(props: {
  readonly x: number
  readonly y: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly children: string
}) {
  return (
    <text className="drawing-text" x={props.x} y={props.y} fontSize="3.8" textAnchor={props.anchor ?? 'middle'}>
      {props.children}
    </text>
  )
}

/** An axis: chain line, beyond the part at both ends (ISO 128). */
export function Axis(props: { readonly x1: number; readonly x2: number; readonly y: number }) {
  return <line className="line-axis fill-none" x1={props.x1} x2={props.x2} y1={props.y} y2={props.y} />
}

const HEAD = { length: 2.6, half: 0.45 }

/** A dimension line between two points with a filled arrow at each end (ISO 129-1). */
export function Between(props: { readonly from: readonly [number, number]; readonly to: readonly [number, number] }) {
  const [x1, y1] = props.from
  const [x2, y2] = props.to
  const angle = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI
  const head = `0,0 ${-HEAD.length},${-HEAD.half} ${-HEAD.length},${HEAD.half}`
  return (
    <g>
      <line className="line-thin fill-none" x1={x1} y1={y1} x2={x2} y2={y2} />
      <polygon className="arrow" points={head} transform={`translate(${x2} ${y2}) rotate(${angle})`} />
      <polygon className="arrow" points={head} transform={`translate(${x1} ${y1}) rotate(${angle + 180})`} />
    </g>
  )
}

/** Points of a thread's flank line: crests at `crest`, roots at `root`, from one x to another. */
export function flanks(from: number, to: number, pitch: number, crest: number, root: number, first: 'crest' | 'root'): string {
  const points: string[] = []
  for (let at = 0, x = from; x <= to + 0.01; at += 1, x = from + (at * pitch) / 2) {
    points.push(`${x},${(at % 2 === 0) === (first === 'crest') ? crest : root}`)
  }
  return points.join(' ')
}

/** One jaw of a calliper, as an outline. */
export function Tool({ points }: { readonly points: string }) {
  return <polygon className="tool" points={points} />
}
