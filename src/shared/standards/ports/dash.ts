import { defineTable } from '../table.ts'

export interface DashPortRow {
  /** sixteenths of an inch of tube outside diameter: "-6" */
  readonly dash: string
  readonly tube_in: string
  readonly flare_37: string | null
  readonly o_ring_boss: string | null
  readonly face_seal: string | null
  readonly flare_45: string | null
  readonly inverted_flare: string | null
}

/** Thread of each inch tube-fitting family by dash size. Null where the family has no such size here. */
export const DASH_PORTS = defineTable<DashPortRow>({
  name: 'dash-ports',
  title: 'Threads of the dash-size fitting families',
  sources: [
    {
      id: 'flare-37-orb',
      cites: 'SAE J514 / ISO 8434-2 and SAE J1926 / ISO 11926, thread by dash size',
      mark: 'published',
      read: 'windrower setup manual, form 169558 rev D, page 8; diesel-engine workshop manual TSD3450E issue 1, pages 21 and 23',
    },
    {
      id: 'face-seal',
      cites: 'SAE J1453 / ISO 8434-3, thread by dash size',
      mark: 'published',
      read: 'windrower setup manual, form 169558 rev D, page 8; excavator shop manual SEN00094-05, page 34',
    },
    {
      id: 'flare-45-inverted',
      cites: 'SAE J512, diameters and threads per inch of the flare and inverted-flare nuts',
      mark: 'published',
      read: 'a reproduction of a flare-thread chart',
    },
    {
      id: 'flare-45-inverted-tubes',
      cites: 'SAE J512, which tube size each of those threads belongs to, from memory (3/8 tube = 5/8-18 was seen in print)',
      mark: 'memory',
    },
  ],
  key: 'dash',
  columns: [
    { key: 'dash', title: 'Dash' },
    { key: 'tube_in', title: 'Tube outside diameter', unit: 'in' },
    { key: 'flare_37', title: '37° flare' },
    { key: 'o_ring_boss', title: 'O-ring boss' },
    { key: 'face_seal', title: 'O-ring face seal' },
    { key: 'flare_45', title: '45° flare' },
    { key: 'inverted_flare', title: 'Inverted flare' },
  ],
  rows: [
    {
      dash: '-2',
      tube_in: '1/8',
      flare_37: '5/16-24',
      o_ring_boss: '5/16-24',
      face_seal: null,
      flare_45: '5/16-24',
      inverted_flare: '5/16-28',
    },
    {
      dash: '-3',
      tube_in: '3/16',
      flare_37: '3/8-24',
      o_ring_boss: '3/8-24',
      face_seal: null,
      flare_45: '3/8-24',
      inverted_flare: '3/8-24',
    },
    {
      dash: '-4',
      tube_in: '1/4',
      flare_37: '7/16-20',
      o_ring_boss: '7/16-20',
      face_seal: '9/16-18',
      flare_45: '7/16-20',
      inverted_flare: '7/16-24',
    },
    {
      dash: '-5',
      tube_in: '5/16',
      flare_37: '1/2-20',
      o_ring_boss: '1/2-20',
      face_seal: null,
      flare_45: '1/2-20',
      inverted_flare: '1/2-20',
    },
    {
      dash: '-6',
      tube_in: '3/8',
      flare_37: '9/16-18',
      o_ring_boss: '9/16-18',
      face_seal: '11/16-16',
      flare_45: '5/8-18',
      inverted_flare: '5/8-18',
    },
    { dash: '-7', tube_in: '7/16', flare_37: null, o_ring_boss: null, face_seal: null, flare_45: '11/16-16', inverted_flare: '11/16-18' },
    {
      dash: '-8',
      tube_in: '1/2',
      flare_37: '3/4-16',
      o_ring_boss: '3/4-16',
      face_seal: '13/16-16',
      flare_45: '3/4-16',
      inverted_flare: '3/4-18',
    },
    {
      dash: '-10',
      tube_in: '5/8',
      flare_37: '7/8-14',
      o_ring_boss: '7/8-14',
      face_seal: '1-14',
      flare_45: '7/8-14',
      inverted_flare: '7/8-18',
    },
    {
      dash: '-12',
      tube_in: '3/4',
      flare_37: '1-1/16-12',
      o_ring_boss: '1-1/16-12',
      face_seal: '1-3/16-12',
      flare_45: '1-1/16-14',
      inverted_flare: '1-1/16-16',
    },
    { dash: '-14', tube_in: '7/8', flare_37: '1-3/16-12', o_ring_boss: '1-3/16-12', face_seal: null, flare_45: null, inverted_flare: null },
    {
      dash: '-16',
      tube_in: '1',
      flare_37: '1-5/16-12',
      o_ring_boss: '1-5/16-12',
      face_seal: '1-7/16-12',
      flare_45: null,
      inverted_flare: null,
    },
    {
      dash: '-20',
      tube_in: '1-1/4',
      flare_37: '1-5/8-12',
      o_ring_boss: '1-5/8-12',
      face_seal: '1-11/16-12',
      flare_45: null,
      inverted_flare: null,
    },
    {
      dash: '-24',
      tube_in: '1-1/2',
      flare_37: '1-7/8-12',
      o_ring_boss: '1-7/8-12',
      face_seal: '2-12',
      flare_45: null,
      inverted_flare: null,
    },
    { dash: '-32', tube_in: '2', flare_37: '2-1/2-12', o_ring_boss: '2-1/2-12', face_seal: null, flare_45: null, inverted_flare: null },
  ],
})
