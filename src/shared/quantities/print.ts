import type { Dimension, Quantity } from './dimension.ts'
import { unitBySymbol, unitSize } from './units.ts'

/** Value of a quantity in the unit named, as a plain number. */
export function inUnit<D extends Dimension>(q: Quantity<D>, symbol: string, dimension: D): number {
  const u = unitBySymbol(symbol, dimension)
  return u.offset === undefined ? q / unitSize(u) : q / unitSize(u) - u.offset / unitSize(u)
}

/** A number to so many significant digits without exponent or trailing zeros after the point: 3608, 2.405, 0.0132. */
export function significant(value: number, digits: number): string {
  if (!Number.isFinite(value)) return String(value)
  if (value === 0) return '0'
  const magnitude = Math.floor(Math.log10(Math.abs(value)))
  const decimals = Math.max(0, digits - 1 - magnitude)
  const text = decimals <= 12 ? value.toFixed(decimals) : value.toExponential(digits - 1)
  const trimmed = text.includes('.') && !text.includes('e') ? text.replace(/\.?0+$/, '') : text
  return trimmed === '-0' ? '0' : trimmed
}

/** A number to so many decimals, true minus sign, no negative zero. */
export function decimals(value: number, places: number): string {
  const text = value.toFixed(places)
  return /^-0(?:\.0+)?$/.test(text) ? text.slice(1) : text.replace('-', '−')
}

/** "3608 lbf": a quantity in the unit named, to significant digits. */
export function printQuantity<D extends Dimension>(q: Quantity<D>, symbol: string, dimension: D, digits = 4): string {
  const number = significant(inUnit(q, symbol, dimension), digits).replace(/^-/, '−')
  if (symbol === '1') return number
  return symbol === '°' || symbol === '′' ? `${number}${symbol}` : `${number} ${symbol}`
}

/** "8 3/16 in": a length to the nearest fraction of an inch, as a tape is read. `denominator` is a power of two, 64 at most. */
export function printInchFraction(q: Quantity<'length'>, denominator = 32): string {
  const units = Math.round((q / 0.0254) * denominator)
  const sign = units < 0 ? '−' : ''
  let top = Math.abs(units)
  const whole = Math.floor(top / denominator)
  top -= whole * denominator
  let bottom = denominator
  while (top > 0 && top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  if (top === 0) return `${sign}${whole} in`
  return whole === 0 ? `${sign}${top}/${bottom} in` : `${sign}${whole} ${top}/${bottom} in`
}
