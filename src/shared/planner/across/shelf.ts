import type { Part, PartKind } from '../../model/part.ts'
import type { ShelfAdapter } from './types.ts'

/** Kinds of part that may stand between two others. A pump or a ram has two ports as well, and is no way across. */
const ADAPTERS: readonly PartKind[] = ['adapter', 'bung', 'fastener', 'other']

/** The parts of a build or a shelf that can join two ends. */
export const adaptersAmong = (parts: readonly Part[]): readonly ShelfAdapter[] =>
  parts
    .filter((p) => ADAPTERS.includes(p.kind) && p.ends.length >= 2)
    .map((p) => ({
      id: p.id,
      name: p.name,
      ends: p.ends.map(({ name, connection }) => ({ name, connection })),
      ...(p.price === undefined ? {} : { price: p.price }),
      ...('length' in p && p.length !== undefined ? { length: p.length.si } : {}),
      ...(p.quantity === undefined ? {} : { quantity: p.quantity }),
    }))
