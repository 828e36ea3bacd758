import type * as z from 'zod'
import type { forces } from '../../../src/shared/model/forces.ts'
import type { geometry } from '../../../src/shared/model/geometry.ts'
import { DEMO } from './builds.ts'

/** Where Larch's joints are, as its owner found them with a tape. */
export const LARCH_GEOMETRY: z.input<typeof geometry> = {
  tieRod: { toe: '1/16 in', toeAt: '36 in', above: '-1 in' },
  wheel: { hubFace: '5 1/2 in', offset: '1/2 in', loadedRadius: '16 3/4 in', diameter: '35 1/2 in', width: '12 1/2 in' },
  pitman: { from: 'left kingpin', along: '11 in', ahead: '7 in', ballAbove: '10 in', length: '6 1/2 in', points: 'behind', angle: '0°' },
  dragLink: { to: 'right knuckle', armLength: '7 1/4 in', armAngle: '4°', armPoints: 'ahead', above: '8 in' },
  ram: {
    from: 'left kingpin',
    along: '9 1/2 in',
    ahead: '-8 1/2 in',
    above: '1 in',
    rodEnd: 'left',
    rodAlong: '28 in',
    rodAhead: '-1/2 in',
    rodAbove: '2 1/4 in',
    bodyLength: '13 in',
    bodyDiameter: '2 1/8 in',
  },
}

/** What the sums on force, strength and flow need beside. */
export const LARCH_FORCES: z.input<typeof forces> = {
  ground: { friction: '0.7', rockFactor: '1.5' },
  handWheel: '15 in',
  losses: { ram: '90 %' },
  box: { pistonBore: '3 in', sectorRadius: '1 3/8 in', sectorRating: '1600 lbf·ft' },
  oil: { grade: 'VG 32', cold: '-10 °C', hot: '80 °C' },
  tieRod: { material: '1026 DOM' },
  dragLink: { material: '1026 DOM' },
  rodEnd: { yield: '85 ksi', studDiameter: '0.87 in', studLever: '0.7 in', studYield: '110 ksi' },
  steeringArm: { thickness: '1 1/8 in', width: '2 1/4 in', lever: '5 1/2 in', yield: '60 ksi' },
  bolts: [
    {
      id: 'bracket',
      what: 'Bracket bolts',
      place: 'ram bracket',
      thread: '1/2-13',
      grade: '8',
      count: 4,
      finish: 'zinc',
      convention: 'industry',
      planes: 1,
      height: '2 in',
      rows: '3 in',
    },
    { id: 'clamp', what: 'Clamp bolts', place: 'ram clamp', thread: '7/16-14', grade: '8', count: 4, finish: 'zinc', maker: '50 lbf·ft' },
  ],
  hoses: [{ hose: 'ram-hose-left', bend: '6 in', longestWay: '34 in' }],
}

/** The corrected demo with all of it. */
export const LARCH = { ...DEMO.corrected, geometry: LARCH_GEOMETRY, forces: LARCH_FORCES }
