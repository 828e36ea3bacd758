import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'

const circle = { id: 'bump-geometry', cites: 'Circle geometry of drag link and track bar, front view', mark: 'derived' }
const rise = { meaning: 'rise of the axle against the frame; droop negative', dimension: 'length' }
const reach = (L, h, z) => Math.abs(h) < L && Math.abs(h + z) < L
const pull = (L, h, z) => Math.sqrt(L ** 2 - h ** 2) - Math.sqrt(L ** 2 - (h + z) ** 2)
export const bumpLateralPull = defineFormula({
  id: 'bump.lateral-pull',
  title: 'How far a sloping link pulls its axle end sideways as the axle rises',
  equation: 's = sqrt(L^2 - h^2) - sqrt(L^2 - (h + z)^2)',
  symbols: {
    L: { meaning: 'length of the link between joint centres, in front view', dimension: 'length', above: 0 },
    h: { meaning: 'height of the axle end above the frame end; below negative', dimension: 'length' },
    z: rise,
  },
  result: { symbol: 's', meaning: 'sideways movement of the axle end towards the frame end', dimension: 'length' },
  requires: [{ says: 'the link reaches: |h| < L and |h + z| < L', holds: ({ L, h, z }) => reach(L, h, z) }],
  source: circle,
  examples: [
    { given: { L: '900 mm', h: '100 mm', z: '75 mm' }, gives: '11.606 mm', tolerance: 1e-4, because: 'five figures', source: circle },
  ],
  remark: 'Joint centres count, not the bends of the bar.',
  compute: ({ L, h, z }) => si(pull(L, h, z), 'length'),
})
export const bumpSteerError = defineFormula({
  id: 'bump.steer-error',
  title: 'Steer that suspension travel puts in (bump steer)',
  equation: 'epsilon = asin((sqrt(L_d^2 - h_d^2) - sqrt(L_d^2 - (h_d + z)^2) - sqrt(L_t^2 - h_t^2) + sqrt(L_t^2 - (h_t + z)^2)) / r)',
  symbols: {
    L_d: { meaning: 'length of the drag link', dimension: 'length', above: 0 },
    h_d: { meaning: 'height of the axle end of the drag link above its frame end', dimension: 'length' },
    L_t: { meaning: 'length of the track bar', dimension: 'length', above: 0 },
    h_t: { meaning: 'height of the axle end of the track bar above its frame end', dimension: 'length' },
    z: rise,
    r: { meaning: 'length of the steering arm', dimension: 'length', above: 0 },
  },
  result: { symbol: 'epsilon', meaning: 'steer of the road wheels with the hand wheel held', dimension: 'angle' },
  requires: [
    { says: 'the drag link reaches', holds: ({ L_d, h_d, z }) => reach(L_d, h_d, z) },
    { says: 'the track bar reaches', holds: ({ L_t, h_t, z }) => reach(L_t, h_t, z) },
    {
      says: "the difference is within the arm's length",
      holds: ({ L_d, h_d, L_t, h_t, z, r }) => Math.abs(pull(L_d, h_d, z) - pull(L_t, h_t, z)) <= r,
    },
  ],
  source: circle,
  examples: [
    {
      given: { L_d: '900 mm', h_d: '140 mm', L_t: '850 mm', h_t: '90 mm', z: '75 mm', r: '165 mm' },
      gives: '1.289°',
      tolerance: 4e-4,
      because: 'four figures',
      source: circle,
    },
    {
      given: { L_d: '900 mm', h_d: '-140 mm', L_t: '850 mm', h_t: '-90 mm', z: '75 mm', r: '165 mm' },
      gives: '-1.375°',
      tolerance: 4e-4,
      because: 'four figures',
      source: circle,
    },
  ],
  remark: 'Both links on the same side of the axle, the arm square to the drag link in the middle. Zero when both are equal and parallel.',
  compute: ({ L_d, h_d, L_t, h_t, z, r }) => si(Math.asin((pull(L_d, h_d, z) - pull(L_t, h_t, z)) / r), 'angle'),
})
