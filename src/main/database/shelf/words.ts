import { familyOf } from '../../../shared/model/end/family.ts'
import { readEnd } from '../../../shared/model/end/read.ts'
import type { End } from '../../../shared/model/end/types.ts'
import type { PartFile } from '../../../shared/model/part.ts'

/**
 * The words a part is found by: name, kind, maker, part number, supplier, and each end as typed, as the standard writes it and
 * by its family, so that "flare" finds a JIC end.
 */
export function wordsOf(part: PartFile): string {
  const ends = part.ends.flatMap(({ connection }) => {
    const read = readEnd(connection)
    return read.ok ? [connection, ...standardWords(read.value)] : [connection]
  })
  return foldText([part.name, part.kind, part.maker, part.partNumber, part.supplier, ...ends].filter((w) => w !== undefined).join(' '))
}

function standardWords(end: End): readonly string[] {
  switch (end.kind) {
    case 'thread':
      return [end.thread.designation, end.hand === 'left' ? 'left LH' : '']
    case 'port':
      return [end.size, end.thread.designation, familyOf(end)]
    case 'taper':
    case 'spline':
      return [end.kind, end.sex ?? '']
    default:
      return [end.kind]
  }
}

/**
 * What is typed, as an FTS5 query: each word begins a word of the part, whatever stands before it; signs within a word count
 * as they stand in a row ("7/8-18"). Undefined where there is nothing to look for.
 */
export function queryOf(typed: string): string | undefined {
  const words = foldText(typed)
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}\p{Co}]/u.test(word))
  return words.length === 0 ? undefined : words.map((word) => `"${word.replaceAll('"', '')}"*`).join(' ')
}

/** One way of writing for what people write in several: fractions, the sign between a thread's size and pitch, degrees. */
const foldText = (text: string): string =>
  text
    .normalize('NFC')
    .replaceAll('\0', ' ')
    .replace(/[¼-¾⅐-⅞]/g, (fraction) => ` ${fraction.normalize('NFKD').replace('⁄', '/')}`)
    .replace(/(\d)\s*[x×]\s*(?=\d)/gi, '$1x')
    .replace(/[°º˚]/g, ' ')
