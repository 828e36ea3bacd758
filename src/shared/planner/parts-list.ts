import type { Build } from '../model/build.ts'
import type { Part } from '../model/part.ts'
import type { PartsLine, PartsList } from './plan.ts'

/** Parts that are the same thing bought in the same place and standing in the same state make one line. */
const sameLine = (p: Part): string => JSON.stringify([p.kind, p.name, p.maker, p.partNumber, p.supplier, p.price, p.state])

/** "42.50" as hundredths; the file check has made sure of the form. */
const minor = (price: string | undefined): number | null => {
  if (price === undefined) return null
  const [whole, cents = ''] = price.split('.') as [string, string?]
  return Number(whole) * 100 + Number(cents.padEnd(2, '0'))
}

/** Everything the build is made of, with how many, from whom, at what price and in what state. Prices in hundredths of the build's currency. */
export function planParts(build: Build): PartsList {
  const groups = new Map<string, Part[]>()
  for (const part of build.parts) {
    const key = sameLine(part)
    const group = groups.get(key)
    if (group) group.push(part)
    else groups.set(key, [part])
  }
  const lines = [...groups.values()].map(line)
  const sum = (of: readonly PartsLine[]) => of.reduce((total, l) => total + (l.totalMinor ?? 0), 0)
  return {
    lines,
    currency: build.build.currency ?? null,
    totalMinor: sum(lines),
    toOrderMinor: sum(lines.filter((l) => l.state === 'to order')),
    unpriced: lines.filter((l) => l.eachMinor === null).length,
  }
}

function line(parts: readonly Part[]): PartsLine {
  const first = parts[0] as Part
  const quantity = parts.reduce((n, p) => n + (p.quantity ?? 1), 0)
  const eachMinor = minor(first.price)
  return {
    parts: parts.map((p) => p.id),
    name: first.name,
    maker: first.maker ?? null,
    partNumber: first.partNumber ?? null,
    supplier: first.supplier ?? null,
    quantity,
    state: first.state,
    eachMinor,
    totalMinor: eachMinor === null ? null : eachMinor * quantity,
  }
}
