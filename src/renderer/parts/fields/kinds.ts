import type { PartKind } from '../../../shared/model/part.ts'
import type { Dimension } from '../../../shared/quantities/dimension.ts'

/** One field of a part: the key it has in a file, what it is called, and what goes in. */
export type Field =
  | { readonly key: string; readonly label: string; readonly takes: 'text'; readonly hint?: string; readonly needed?: true }
  | { readonly key: string; readonly label: string; readonly takes: 'quantity'; readonly dimension: Dimension; readonly hint: string }
  | { readonly key: string; readonly label: string; readonly takes: 'choice'; readonly choices: readonly string[]; readonly hint?: string }
  | { readonly key: string; readonly label: string; readonly takes: 'count' | 'price' | 'day' | 'note'; readonly hint?: string }

const text = (key: string, label: string, hint?: string): Field => ({ key, label, takes: 'text', ...(hint === undefined ? {} : { hint }) })
const length = (key: string, label: string, hint = '1 1/2 in or 38 mm'): Field => ({
  key,
  label,
  takes: 'quantity',
  dimension: 'length',
  hint,
})
const quantity = (key: string, label: string, dimension: Dimension, hint: string): Field => ({
  key,
  label,
  takes: 'quantity',
  dimension,
  hint,
})
const choice = (key: string, label: string, choices: readonly string[]): Field => ({ key, label, takes: 'choice', choices })

const volume = quantity('volume', 'Volume', 'volume', '1.2 L or 40 fl oz')
const overall = length('length', 'Length overall', '2 1/4 in or 57 mm')

const PLAIN: readonly Field[] = [overall]

/** What a part of each kind can say beside its common fields. */
const OWN: Readonly<Record<PartKind, readonly Field[]>> = {
  knuckle: PLAIN,
  'steering arm': PLAIN,
  'pitman arm': PLAIN,
  'rod end': PLAIN,
  bung: PLAIN,
  clamp: PLAIN,
  bracket: PLAIN,
  adapter: PLAIN,
  fastener: PLAIN,
  damper: PLAIN,
  'axle housing': PLAIN,
  other: PLAIN,
  tube: [
    choice('serves', 'Serves as', ['tie rod', 'drag link', 'other']),
    length('outsideDiameter', 'Outside diameter'),
    length('wall', 'Wall', '0.250 in or 6.3 mm'),
    length('length', 'Length', '46 in or 1168 mm'),
    text('material', 'Material', '1026 drawn over mandrel'),
  ],
  ram: [
    choice('ended', 'Rod comes out', ['single', 'double']),
    length('bore', 'Bore', '1 3/4 in or 45 mm'),
    length('rod', 'Rod diameter', '3/4 in or 20 mm'),
    length('stroke', 'Stroke', '8 in or 200 mm'),
    length('closedLength', 'Closed length, pin to pin', '14 1/2 in or 370 mm'),
  ],
  hose: [
    choice('line', 'Line', ['pressure', 'return', 'suction', 'ram']),
    length('bore', 'Bore', '3/8 in or 10 mm'),
    length('length', 'Length', '30 in or 760 mm'),
  ],
  pump: [
    quantity('reliefPressure', 'Relief pressure', 'pressure', '1500 psi or 103 bar'),
    quantity('idleFlow', 'Flow at idle', 'flow', '2.4 gpm or 9 L/min'),
    quantity('cruiseFlow', 'Flow at cruise', 'flow', '3 gpm or 11 L/min'),
    volume,
  ],
  'steering box': [quantity('turns', 'Turns lock to lock', 'ratio', '3.2'), quantity('sweep', 'Sweep of the arm', 'angle', '88°'), volume],
  reservoir: [volume],
  cooler: [volume],
  filter: [volume],
  fluid: [text('grade', 'Grade', 'as the bottle says'), quantity('bottle', 'Bottle holds', 'volume', '1 L or 1 qt')],
}

const NAME: Field = { key: 'name', label: 'Name', takes: 'text', needed: true }

/** What the part is, in the order in which a person describes it. */
export const describing = (kind: PartKind): readonly Field[] => [
  NAME,
  ...OWN[kind],
  quantity('workingPressure', 'Working pressure', 'pressure', '3000 psi or 207 bar'),
]

/** Where it comes from and how far it has come. */
export const BUYING: readonly Field[] = [
  text('maker', 'Maker'),
  text('partNumber', 'Part number'),
  text('supplier', 'Supplier'),
  { key: 'price', label: 'Price each', takes: 'price', hint: '42.50' },
  { key: 'quantity', label: 'How many', takes: 'count', hint: '1' },
  choice('state', 'State', ['to order', 'ordered', 'here', 'fitted']),
  { key: 'expected', label: 'Expected on', takes: 'day', hint: '2026-11-25' },
  { key: 'note', label: 'Note', takes: 'note' },
]

/** Every key a part of this kind can have in a file beside kind, id and ends, in the order of the file. */
export const keysOf = (kind: PartKind): readonly string[] => [
  'name',
  ...BUYING.map((field) => field.key).filter((key) => key !== 'note'),
  'workingPressure',
  ...OWN[kind].map((field) => field.key),
  'note',
]
