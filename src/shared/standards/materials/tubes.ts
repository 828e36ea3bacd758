import { defineTable } from '../table.ts'

export interface TubeMaterialRow {
  readonly id: string
  readonly grade: '1020' | '1026' | '4130'
  readonly condition: string
  readonly specification: string
  readonly yield_ksi: number
  readonly tensile_ksi: number
  readonly modulus_ksi: number
  /** id of the source of the strength */
  readonly source: string
}

/** Least strength of steel tube. Copies that disagree are separate rows: the mill certificate has the last word. */
export const TUBE_MATERIALS = defineTable<TubeMaterialRow>({
  name: 'tube-materials',
  title: 'Strength of steel tube',
  sources: [
    { id: 'a513', cites: 'ASTM A513, least mechanical properties', mark: 'published', read: 'a reproduction of the table' },
    {
      id: 'a513-type-5',
      cites: 'ASTM A513 type 5, mandrel-drawn, stress-relieved',
      mark: 'published',
      read: 'a reproduction of the type 5 table',
    },
    { id: 'mill', cites: 'a mill’s data page for mandrel-drawn tube; it does not agree with the other copy for 1026', mark: 'published' },
    { id: 'aircraft', cites: 'MIL-T-6736B / AMS-T-6736, condition N, from memory', mark: 'memory' },
    { id: 'modulus', cites: 'mechanical design handbook, notes on the Euler column: one modulus for all steels', mark: 'published' },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'grade', title: 'Grade' },
    { key: 'condition', title: 'Condition' },
    { key: 'specification', title: 'Specification' },
    { key: 'yield_ksi', title: 'Yield, least', unit: 'ksi' },
    { key: 'tensile_ksi', title: 'Tensile strength, least', unit: 'ksi' },
    { key: 'modulus_ksi', title: 'Modulus of elasticity', unit: 'ksi' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    {
      id: '1020 DOM',
      grade: '1020',
      condition: 'mandrel-drawn',
      specification: 'ASTM A513',
      yield_ksi: 60,
      tensile_ksi: 70,
      modulus_ksi: 29000,
      source: 'a513',
    },
    {
      id: '1020 DOM stress-relieved',
      grade: '1020',
      condition: 'mandrel-drawn, stress-relieved',
      specification: 'ASTM A513',
      yield_ksi: 55,
      tensile_ksi: 65,
      modulus_ksi: 29000,
      source: 'a513-type-5',
    },
    {
      id: '1020 normalised',
      grade: '1020',
      condition: 'normalised',
      specification: 'ASTM A513',
      yield_ksi: 35,
      tensile_ksi: 50,
      modulus_ksi: 29000,
      source: 'a513',
    },
    {
      id: '1020 DOM, mill page',
      grade: '1020',
      condition: 'mandrel-drawn',
      specification: 'ASTM A513',
      yield_ksi: 60,
      tensile_ksi: 70,
      modulus_ksi: 29000,
      source: 'mill',
    },
    {
      id: '1026 DOM',
      grade: '1026',
      condition: 'mandrel-drawn',
      specification: 'ASTM A513',
      yield_ksi: 70,
      tensile_ksi: 80,
      modulus_ksi: 29000,
      source: 'a513',
    },
    {
      id: '1026 DOM stress-relieved',
      grade: '1026',
      condition: 'mandrel-drawn, stress-relieved',
      specification: 'ASTM A513',
      yield_ksi: 65,
      tensile_ksi: 75,
      modulus_ksi: 29000,
      source: 'a513-type-5',
    },
    {
      id: '1026 normalised',
      grade: '1026',
      condition: 'normalised',
      specification: 'ASTM A513',
      yield_ksi: 40,
      tensile_ksi: 60,
      modulus_ksi: 29000,
      source: 'a513',
    },
    {
      id: '1026 DOM, mill page',
      grade: '1026',
      condition: 'mandrel-drawn',
      specification: 'ASTM A513',
      yield_ksi: 75,
      tensile_ksi: 85,
      modulus_ksi: 29000,
      source: 'mill',
    },
    {
      id: '4130 DOM',
      grade: '4130',
      condition: 'mandrel-drawn',
      specification: 'ASTM A513',
      yield_ksi: 85,
      tensile_ksi: 95,
      modulus_ksi: 29000,
      source: 'a513',
    },
    {
      id: '4130 normalised',
      grade: '4130',
      condition: 'normalised',
      specification: 'ASTM A513',
      yield_ksi: 50,
      tensile_ksi: 70,
      modulus_ksi: 29000,
      source: 'a513',
    },
    {
      id: '4130 aircraft, to 0.188 wall',
      grade: '4130',
      condition: 'condition N, wall to 0.188 in',
      specification: 'MIL-T-6736B / AMS-T-6736',
      yield_ksi: 75,
      tensile_ksi: 95,
      modulus_ksi: 29000,
      source: 'aircraft',
    },
    {
      id: '4130 aircraft, over 0.188 wall',
      grade: '4130',
      condition: 'condition N, wall over 0.188 in',
      specification: 'MIL-T-6736B / AMS-T-6736',
      yield_ksi: 70,
      tensile_ksi: 90,
      modulus_ksi: 29000,
      source: 'aircraft',
    },
  ],
})
