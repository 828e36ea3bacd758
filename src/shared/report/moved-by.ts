import type { Build } from '../model/build.ts'
import type { Sensitivity } from '../planner/forces-types.ts'
import type { MovedText } from './document.ts'
import { aboutText, chosenWords, labelOf } from './text/index.ts'
import type { Show } from './units.ts'

/** The inputs that move a margin most, the greatest first, and what a tenth more and a tenth less of each does to it. */
export function movedTexts(build: Build, { inputs }: Sensitivity, show: Show): readonly MovedText[] {
  return inputs.map(({ origin, si, dimension, greater, smaller }) => ({
    name: originName(build, origin),
    value: show(si, dimension),
    greater: percent(greater),
    smaller: percent(smaller),
  }))
}

const percent = (part: number): string => `${part >= 0 ? '+' : '−'}${Math.abs(part * 100).toFixed(1)} %`

function originName(build: Build, origin: Sensitivity['inputs'][number]['origin']): string {
  switch (origin.kind) {
    case 'entered':
      return aboutText(build, origin.path)
    case 'table':
      return `${origin.row} (table ${origin.table})`
    case 'chosen':
      return `chosen: ${chosenWords(origin.why)}`
    case 'readings':
      return `readings of the ${origin.mark} mark`
    case 'number':
      return labelOf(origin.id)
  }
}
