import type { EndFamily } from '../../../shared/model/end/family.ts'
import { FAMILY_WORDS } from '../../../shared/report/text/verdicts.ts'

/** What each family of ends is called in a list. */
export const END_FAMILY_WORDS: Readonly<Record<EndFamily, string>> = {
  unified: 'inch thread',
  metric: 'metric thread',
  npt: 'NPT',
  nptf: 'NPTF',
  g: 'G pipe thread',
  r: 'R pipe thread',
  rc: 'Rc pipe thread',
  rp: 'Rp pipe thread',
  ...FAMILY_WORDS,
  taper: 'ball-stud taper',
  round: 'clamp, tube, bore or pin',
  spline: 'splines',
  tail: 'hose or barb',
  weld: 'welded',
  unmeasured: 'not measured',
}
