import type { BuildFile } from '../../../shared/model/build.ts'
import {
  type Check,
  choice,
  currency,
  day,
  type FieldsOf,
  id,
  list,
  name,
  note,
  optional,
  optionalList,
  optionalNested,
  quantity,
  whole,
} from '../field.ts'
import { type Table, table } from '../table.ts'
import { single } from './keys.ts'

export type HeaderFile = BuildFile['build']
/** Lists of a file that live in tables of their own; the row of the build remembers which of them the file has. */
export type FileLists = Omit<BuildFile, 'format' | 'version' | 'build' | 'vehicle' | 'axle' | 'geometry' | 'forces' | 'survey'>

const header: FieldsOf<HeaderFile> = {
  id,
  name,
  revision: whole(1, 1_000_000),
  units: choice('inch', 'metric'),
  currency: optional(currency),
  startedOn: optional(day),
  purgeAllowance: optional(quantity('ratio', { min: 0, max: 5 })),
  notes: optional(note),
}

const lists: FieldsOf<FileLists> = {
  parts: list(),
  joints: list(),
  limits: optionalList(),
  torqueSpecs: optionalList(),
  torqueRecords: optionalList(),
  alignment: optionalList(),
  tasks: optionalList(),
  sessions: optionalList(),
}

/** When a row was changed last, ISO 8601 in UTC. */
export const changedAt: Check = {
  about: 'changed_at',
  sql: `"changed_at" GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]T*Z' AND datetime("changed_at") IS NOT NULL`,
}

export const build: Table<HeaderFile & FileLists> = table<HeaderFile & FileLists>('build', {
  keys: [{ name: 'changed_at', type: 'text', required: true }],
  primary: ['id'],
  checks: [changedAt],
  fields: { ...header, ...lists },
})

type TyreFile = NonNullable<BuildFile['vehicle']['tyre']>

export const vehicle = table<BuildFile['vehicle']>('vehicle', {
  ...single,
  fields: {
    id,
    name,
    description: optional(note),
    wheelbase: optional(quantity('length', { positive: true, max: 10 })),
    frontAxleLoad: optional(quantity('force', { positive: true, max: 200_000 })),
    tyre: optionalNested<TyreFile>({
      size: optional(name),
      pressure: optional(quantity('pressure', { positive: true, max: 2e6 })),
      printWidth: optional(quantity('length', { positive: true, max: 1 })),
    }),
    odometer: optional(name),
    notes: optional(note),
  },
})

export type AxleFile = NonNullable<BuildFile['axle']>

export const axle = table<AxleFile>('axle', {
  ...single,
  fields: {
    id,
    name,
    kingpinSpacing: optional(quantity('length', { positive: true, max: 3 })),
    armLength: optional(quantity('length', { positive: true, max: 1 })),
    armAngle: optional(quantity('angle', { min: -1.2, max: 1.2 })),
    tieRod: optional(choice('behind', 'ahead')),
    kingpinInclination: optional(quantity('angle', { min: -0.5, max: 0.5 })),
    caster: optional(quantity('angle', { min: -0.5, max: 0.5 })),
    track: optional(quantity('length', { positive: true, max: 4 })),
    notes: optional(note),
  },
})
