import * as z from 'zod'
import { END_FAMILIES } from '../model/end/family.ts'
import { PART_KINDS, PART_STATES } from '../model/part.ts'
import { id, ids, partJson, problem, refusable, revision, savedFile } from './shapes.ts'

const kind = z.enum(PART_KINDS)
const partState = z.enum(PART_STATES)

export const SHELF_SORTS = ['name', 'kind', 'maker', 'part number', 'supplier', 'price', 'state', 'changed'] as const
export type ShelfSort = (typeof SHELF_SORTS)[number]

/** A part of the shelf as a list shows it. */
export const shelfRow = z.strictObject({
  id,
  kind,
  name: z.string(),
  maker: z.string().nullable(),
  partNumber: z.string().nullable(),
  supplier: z.string().nullable(),
  price: z.string().nullable(),
  quantity: z.int().nullable(),
  state: partState,
  ends: z.array(z.strictObject({ name: z.string(), connection: z.string() })),
})
export type ShelfRow = z.output<typeof shelfRow>

const csvProblem = z.strictObject({
  /** line of the table, as a spreadsheet counts them: 1 holds the names of the columns */
  row: z.int(),
  ...problem.shape,
})
const csvChange = z.strictObject({ row: z.int(), id, name: z.string(), what: z.enum(['added', 'changed']) })
const csvAnswer = z.strictObject({
  /** whether it is on the shelf now: never on a dry run, never while there are problems */
  imported: z.boolean(),
  added: z.int(),
  changed: z.int(),
  unchanged: z.int(),
  /** the first changes, at most 200 */
  changes: z.array(csvChange),
  /** the first problems, at most 200, and how many there are; their place is a column */
  problems: z.array(csvProblem),
  problemCount: z.int(),
})
export type CsvAnswer = z.output<typeof csvAnswer>

/** Parts that the user has or knows, whatever build they may go into. */
export const SHELF = {
  /**
   * A page of the parts that match: every word of `query` begins a word of the name, maker, part number, supplier or an end.
   * Absent lists do not filter; `families` keeps parts with an end of one of them.
   */
  'shelf.search': {
    input: z.strictObject({
      query: z.string().max(200),
      kinds: z.array(kind).optional(),
      states: z.array(partState).optional(),
      families: z.array(z.enum(END_FAMILIES)).optional(),
      offset: z.int().min(0),
      limit: z.int().min(1).max(200),
      sort: z.enum(SHELF_SORTS),
      descending: z.boolean().optional(),
    }),
    output: refusable(z.strictObject({ total: z.int(), parts: z.array(shelfRow) })),
  },
  'shelf.read': { input: z.strictObject({ id }), output: refusable(z.strictObject({ part: partJson })) },
  /** puts a part on the shelf; one with the same id is left alone (`shelf.exists`) unless `replace` is set, and handed over if so */
  'shelf.save': {
    input: z.strictObject({ part: partJson, replace: z.boolean() }),
    output: refusable(z.strictObject({ id, before: partJson.nullable() })),
  },
  /** the same part once more under an id of its own */
  'shelf.duplicate': { input: z.strictObject({ id }), output: refusable(z.strictObject({ part: partJson })) },
  /** takes a part off the shelf and hands it over, so that it can be put back */
  'shelf.remove': { input: z.strictObject({ id }), output: refusable(z.strictObject({ part: partJson })) },
  /** copies parts into a build, refused as `builds.write` is; an id that the build has already gets a number behind it */
  'shelf.toBuild': {
    input: z.strictObject({ ids, build: id, basedOn: revision }),
    output: refusable(z.strictObject({ revision, changedAt: z.string(), copies: z.array(z.strictObject({ from: id, to: id })) })),
  },
  /** copies parts of a build onto the shelf, likewise */
  'shelf.fromBuild': {
    input: z.strictObject({ build: id, ids }),
    output: refusable(z.strictObject({ copies: z.array(z.strictObject({ from: id, to: id })) })),
  },
  /** reads a table of parts: all of it or nothing. A part whose id is on the shelf takes the place of the one there */
  'shelf.importCsv': {
    input: z.strictObject({ text: z.string().max(30_000_000), dryRun: z.boolean() }),
    output: refusable(csvAnswer),
  },
  'shelf.exportCsv': { input: z.strictObject({}), output: refusable(savedFile) },
} as const
