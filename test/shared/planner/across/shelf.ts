import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import type { Connection, End } from '../../../../src/shared/model/end/types.ts'
import type { ShelfAdapter } from '../../../../src/shared/planner/across/types.ts'
import { mm } from '../../../../src/shared/quantities/make.ts'

export const end = (typed: string): End => {
  const read = parseEnd(typed)
  if (!read.ok) throw new Error(`${typed}: ${JSON.stringify(read.issues)}`)
  return read.value
}
export const connection = (typed: string): Connection => ({ typed, end: end(typed) })

/** An adapter of the ends given; price as typed, length in millimetres. */
export const adapter = (
  id: string,
  ends: readonly string[],
  more: { price?: string; length?: number; quantity?: number } = {},
): ShelfAdapter => ({
  id,
  name: `Adapter ${id}`,
  ends: ends.map((typed, i) => ({ name: `end-${i + 1}`, connection: connection(typed) })),
  ...(more.price === undefined ? {} : { price: more.price }),
  ...(more.length === undefined ? {} : { length: mm(more.length) }),
  ...(more.quantity === undefined ? {} : { quantity: more.quantity }),
})
