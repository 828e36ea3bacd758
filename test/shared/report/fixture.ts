import type { Build, BuildFile } from '../../../src/shared/model/build.ts'
import { readBuild } from '../../../src/shared/model/exchange.ts'

/** A small build with one good joint, one that goes together and is wrong, one not measured, a survey, a ram and fluid. */
export const FILE: BuildFile = {
  format: 'steerwright build',
  version: 1,
  build: { id: 'larch-front', name: 'front axle and assist steering', revision: 7, units: 'inch', currency: 'EUR' },
  vehicle: { id: 'larch', name: 'Larch', description: 'forest-road crew truck', tyre: { size: '36x12.50R17' } },
  axle: { id: 'axle', name: 'heavy front axle', kingpinSpacing: '60 in', armLength: '7 in' },
  parts: [
    {
      id: 'tube',
      kind: 'tube',
      name: 'Tie-rod tube',
      serves: 'tie rod',
      state: 'here',
      price: '180',
      supplier: 'Quarry Lane Spares',
      ends: [
        { name: 'left', connection: '7/8-18 LH female' },
        { name: 'right', connection: '7/8-18 female' },
      ],
    },
    {
      id: 'end-left',
      kind: 'rod end',
      name: 'Rod end, left',
      maker: 'Brackwater Forge',
      partNumber: 'BF-7818',
      state: 'here',
      price: '42.50',
      ends: [
        { name: 'shank', connection: '7/8-18 LH male' },
        { name: 'stud', connection: 'taper 1:8 stud, large 0.70 in' },
      ],
    },
    {
      id: 'end-right',
      kind: 'rod end',
      name: 'Rod end, right',
      state: 'to order',
      quantity: 1,
      ends: [
        { name: 'shank', connection: '7/8-14 male' },
        { name: 'stud', connection: 'not measured' },
      ],
    },
    {
      id: 'arm',
      kind: 'steering arm',
      name: 'Steering arm, left',
      state: 'fitted',
      ends: [{ name: 'hole', connection: 'taper 1:10 hole, large 0.70 in' }],
    },
    {
      id: 'arm-right',
      kind: 'steering arm',
      name: 'Steering arm, right',
      state: 'fitted',
      ends: [{ name: 'hole', connection: 'taper 1:8 hole, large 0.70 in' }],
    },
    {
      id: 'ram',
      kind: 'ram',
      name: 'Assist ram',
      state: 'ordered',
      price: '310.00',
      supplier: 'Quarry Lane Spares',
      ended: 'single',
      bore: '1 3/4 in',
      rod: '20 mm',
      stroke: '8 in',
      ends: [],
    },
    {
      id: 'hose',
      kind: 'hose',
      name: 'Ram hose',
      line: 'ram',
      bore: '3/8 in',
      length: '40 in',
      state: 'to order',
      price: '28',
      quantity: 2,
      ends: [],
    },
    { id: 'pump', kind: 'pump', name: 'Pump', reliefPressure: '1500 psi', volume: '0.4 L', state: 'fitted', ends: [] },
    { id: 'oil', kind: 'fluid', name: 'Steering oil', bottle: '1 L', state: 'to order', price: '9.90', ends: [] },
  ],
  joints: [
    { id: 'tube-left', a: 'tube/left', b: 'end-left/shank', with: ['jam nut'] },
    { id: 'tube-right', name: 'Tie rod, right end', a: 'tube/right', b: 'end-right/shank' },
    { id: 'left-arm', a: 'end-left/stud', b: 'arm/hole' },
    { id: 'right-arm', a: 'end-right/stud', b: 'arm-right/hole' },
  ],
  survey: {
    takenOn: '2026-02-21',
    resolution: '1/32 in',
    method: 'to the stops',
    endedBy: { left: 'knuckle stop', right: 'not known' },
    madeSure: ['on stands', 'hand wheel centred'],
    readings: [
      { mark: 'centre', at: '12 in' },
      { mark: 'centre', at: '12 1/32 in' },
      { mark: 'left', at: '7 15/16 in', by: 'Ida' },
      { mark: 'left', at: '8 in' },
      { mark: 'right', at: '16 1/8 in' },
    ],
    ramAngle: '6°',
  },
  torqueSpecs: [
    {
      id: 'nut-left',
      joints: ['left-arm'],
      what: 'Castle nut, left stud',
      value: '85 lbf·ft',
      tolerance: '5 lbf·ft',
      from: 'maker',
      source: 'sheet with the rod end',
      recheckAfter: '100 miles',
    },
    { id: 'clamp', what: 'Clamp bolt', from: 'own practice' },
  ],
  torqueRecords: [{ id: 'r1', spec: 'nut-left', on: '2026-02-28', value: '86 lbf·ft', by: 'Ida' }],
}

export function buildOf(file: BuildFile): Build {
  const read = readBuild(JSON.stringify(file))
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1))
  return read.value.build
}
