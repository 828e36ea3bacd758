import type { Length, Ratio } from '../../quantities/dimension.ts'
import { inches, mm, ratio } from '../../quantities/make.ts'

/** What is moulded on a tyre, understood. Inch sizes name the overall diameter, metric ones the aspect ratio. */
export type TyreSize =
  | { readonly kind: 'inch'; readonly overall: Length; readonly section: Length; readonly rim: Length; readonly lightTruck: boolean }
  | { readonly kind: 'metric'; readonly section: Length; readonly aspect: Ratio; readonly rim: Length; readonly lightTruck: boolean }

const INCH = /^(\d{2}(?:\.\d+)?)\s*[xX×*]\s*(\d{1,2}(?:\.\d+)?)\s*-?\s*(?:R|B|D|-|\s)\s*(\d{2}(?:\.\d)?)\s*(?:LT)?$/
const METRIC = /^(\d{3})\s*\/\s*(\d{2,3})\s*-?\s*(?:ZR|R|B|D|-|\s)\s*(\d{2}(?:\.\d)?)\s*(?:LT|C)?$/

/**
 * Reads a tyre size: "36x12.50R17", "37x12.50R17LT", "31x10.5 R15 LT", "LT315/75R16", "P245/55R18", "315/75 R 16". Load index
 * and speed letter behind it are left out.
 *
 * @returns undefined for anything else, or for sizes that no road tyre has
 */
export function parseTyreSize(typed: string): TyreSize | undefined {
  const bare = typed
    .trim()
    .toUpperCase()
    .replace(/\s+\d{2,3}(?:\/\d{2,3})?\s*[A-Z]\s*$/, '')
  const lightTruck = /^LT|LT$|C$/.test(bare)
  const text = bare.replace(/^(?:LT|P|T|ST)\s*(?=\d)/, '')
  const inch = INCH.exec(text)
  if (inch) {
    const [overall, section, rim] = inch.slice(1).map(Number) as [number, number, number]
    const real = overall > rim + 2 && section < overall && section >= 4 && rim >= 8
    return real ? { kind: 'inch', overall: inches(overall), section: inches(section), rim: inches(rim), lightTruck } : undefined
  }
  const metric = METRIC.exec(text)
  if (!metric) return undefined
  const [width, aspect, rim] = metric.slice(1).map(Number) as [number, number, number]
  const real = width >= 105 && width <= 495 && aspect >= 20 && aspect <= 100 && rim >= 8
  return real ? { kind: 'metric', section: mm(width), aspect: ratio(aspect / 100), rim: inches(rim), lightTruck } : undefined
}
