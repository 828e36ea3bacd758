import type { PartFile } from '../../../shared/model/part.ts'

type EndFile = PartFile['ends'][number]

/*
 * All ends of a part in one cell: "left: 7/8-18 LH female; stud: taper 1.5 in/ft stud | left open | note: greased". A backslash
 * makes the sign behind it part of the text, and so a space that would be trimmed.
 */
const OPEN = 'left open'

export const writeEnds = (ends: readonly EndFile[]): string => ends.map(writeEnd).join('; ')

function writeEnd({ name, connection, leftOpen, note }: EndFile): string {
  const pieces = [
    `${name}: ${keepSigns(connection)}`,
    ...(leftOpen ? [OPEN] : []),
    ...(note === undefined ? [] : [`note: ${keepSigns(note)}`]),
  ]
  return pieces.join(' | ')
}

const keepSigns = (text: string): string => text.replace(/[\\;|]|^\s|\s$/g, (sign) => `\\${sign}`)

/**
 * The ends that a cell holds, as plain values for the check of the part; a piece that is none of ours becomes a key that
 * the check does not know, and so says.
 */
export function readEnds(cell: string): readonly Record<string, unknown>[] {
  if (cell.trim() === '') return []
  return split(cell, ';')
    .filter((piece, i, all) => piece.trim() !== '' || i < all.length - 1)
    .map(readEnd)
}

function readEnd(text: string): Record<string, unknown> {
  const [first = '', ...more] = split(text, '|')
  const [name, connection] = atColon(first)
  const end: Record<string, unknown> = { name: plain(name), connection: plain(connection) }
  for (const piece of more) {
    const [word, value] = atColon(piece)
    if (word.trim() === 'note') end.note = plain(value)
    else if (piece.trim() === OPEN) end.leftOpen = true
    else end[`| ${plain(piece)}`] = true
  }
  return end
}

function atColon(text: string): [string, string] {
  const at = text.indexOf(':')
  return at < 0 ? ['', text] : [text.slice(0, at), text.slice(at + 1)]
}

/** The pieces between a sign, where no backslash stands before it. */
function split(text: string, sign: string): readonly string[] {
  if (!text.includes('\\')) return text.split(sign)
  const pieces = ['']
  for (let i = 0; i < text.length; i++) {
    const c = text[i] as string
    if (c === sign) pieces.push('')
    else pieces[pieces.length - 1] += c === '\\' ? c + (text[++i] ?? '') : c
  }
  return pieces
}

/** Without the spaces around it, and without backslashes before what they kept. */
function plain(text: string): string {
  if (!text.includes('\\')) return text.trim()
  let out = ''
  let kept = 0
  const from = text.replace(/^\s+/, '')
  for (let i = 0; i < from.length; i++) {
    const escaped = from[i] === '\\' && i + 1 < from.length
    const c = from[escaped ? ++i : i] as string
    out += c
    if (escaped || !/\s/.test(c)) kept = out.length
  }
  return out.slice(0, kept)
}
