import type { BuildFile } from '../../../src/shared/model/build.ts'

/** A build in which every key that the model knows is there at least once. */
export const fullBuild = (): BuildFile => ({
  format: 'steerwright build',
  version: 1,
  build: { id: 'larch', name: 'Larch', revision: 3, units: 'inch', currency: 'EUR', startedOn: '2026-02-28', purgeAllowance: '25 %', notes: 'first go' },
  vehicle: {
    id: 'truck', name: 'Crew truck', description: 'coils in front', wheelbase: '103 in', frontAxleLoad: '2900 lb',
    tyre: { size: '36x12.50R17', pressure: '24 psi', printWidth: '9.5 in' }, odometer: '182 400 km', notes: 'muddy',
  },
  axle: {
    id: 'front', name: 'Front axle', kingpinSpacing: '58 3/4 in', armLength: '7 in', armAngle: '16°', tieRod: 'behind', kingpinInclination: '8.5°',
    caster: '6° 30′', track: '66 in', notes: 'from a heavier vehicle',
  },
  parts: [
    {
      kind: 'rod end', id: 'end-left', name: 'Rod end', maker: 'Fernhill', partNumber: 'FH-78', supplier: 'Bench & Bolt', price: '42.50', quantity: 2,
      state: 'ordered', expected: '2026-03-09', workingPressure: '1 MPa',
      ends: [
        { name: 'thread', connection: '7/8-18 LH male', note: 'with jam nut' },
        { name: 'grease', connection: 'weld', leftOpen: true },
      ],
      note: 'left hand',
    },
    {
      kind: 'tube', id: 'tie-rod', name: 'Tie rod', state: 'here', serves: 'tie rod', outsideDiameter: '1 1/2 in', wall: '1/4 in', length: '48 in',
      material: 'cold drawn steel', ends: [{ name: 'left', connection: '7/8-18 LH female' }],
    },
    { kind: 'ram', id: 'ram', name: 'Ram', state: 'to order', ended: 'single', bore: '1 3/4 in', rod: '16 mm', stroke: '8 in', closedLength: '13.1 in', ends: [] },
    { kind: 'hose', id: 'hose', name: 'Hose', state: 'fitted', line: 'ram', bore: '3/8 in', length: '30 in', ends: [] },
    { kind: 'pump', id: 'pump', name: 'Pump', state: 'here', reliefPressure: '1500 psi', idleFlow: '2 gpm', cruiseFlow: '3,5 gpm', volume: '0.2 L', ends: [] },
    { kind: 'steering box', id: 'box', name: 'Box', state: 'here', turns: '4', sweep: '94°', volume: '0.4 L', ends: [] },
    { kind: 'reservoir', id: 'can', name: 'Can', state: 'here', volume: '1 qt', ends: [] },
    { kind: 'fluid', id: 'oil', name: 'Oil', state: 'to order', grade: 'ISO VG 32', bottle: '946 mL', ends: [] },
  ],
  joints: [
    { id: 'left', name: 'Left end', a: 'end-left/thread', b: 'tie-rod/left', with: ['jam nut', 'sealant', 'jam nut'], note: 'snug' },
    { id: 'bare', a: 'tie-rod/left', b: 'end-left/grease' },
  ],
  survey: {
    takenOn: '2026-03-01', resolution: '1/16 in', method: 'to the stops', endedBy: { left: 'knuckle stop', right: 'tyre contact' },
    madeSure: ['on stands', 'alignment good'],
    readings: [
      { mark: 'centre', at: '10 in', by: 'A', note: 'once' },
      { mark: 'left', at: '-6 1/16 in' },
    ],
    ramAngle: '4°', note: 'cold',
  },
  limits: [{ id: 'stop', what: 'knuckle stop', side: 'left', travel: '3.9 in', angle: '35°', uncertainty: '1 mm', note: 'bolt' }],
  torqueSpecs: [
    {
      id: 'clamp', joint: 'left', what: 'Clamp bolt', value: '45 lbf·ft', tolerance: '5 lb-ft', angle: '90°', from: 'maker', source: 'leaflet',
      recheckAfter: '100 miles',
    },
  ],
  torqueRecords: [
    {
      id: 'second', spec: 'clamp', on: '2026-03-02', value: '46 ft-lb', wrench: 'W2', by: 'B', odometer: '182 410 km', corrects: 'first', note: 'misread',
    },
    { id: 'first', spec: 'clamp', on: '2026-03-01', value: '64 N·m' },
  ],
  alignment: [
    {
      id: 'after', on: '2026-03-03', when: 'after', toe: '1/16 in', toeAt: '28 in', camberLeft: '-0.5°', camberRight: '−0.25°', casterLeft: '6°',
      casterRight: '6.1°', method: 'tape', by: 'A', odometer: '182 420 km', corrects: 'before', note: 'level floor',
    },
    { id: 'before', on: '2026-03-01', when: 'before' },
  ],
  tasks: [
    {
      id: 'fit', name: 'Fit it', hours: { low: '1 h', likely: '90 min', high: '3 h' }, after: ['weld'], needs: ['ram', 'hose'], helpers: 1, cures: '1 d',
      finishInOneGo: true, done: true, note: 'both hands',
    },
    { id: 'weld', name: 'Weld it', hours: { low: '2 h', likely: '3 h', high: '5 h' }, after: [] },
  ],
  sessions: [{ id: 'saturday', on: '2026-03-07', hours: '8 h', helpers: 0, note: 'cold' }],
})
