import { inflateSync } from 'node:zlib'

export interface PdfPage {
  readonly width: number
  readonly height: number
  /** what is read aloud: text inside the structure, in the order in which it was drawn */
  readonly text: string
  /** text marked as decoration: footers, repeated table heads, signs beside words */
  readonly artifacts: string
  /** sizes of the text that is read aloud, in points */
  readonly sizes: readonly number[]
  /** width and height of every rectangle, in points */
  readonly boxes: readonly (readonly [number, number])[]
}

export interface Pdf {
  readonly pages: readonly PdfPage[]
  readonly title: string
  readonly language: string | null
  readonly displaysTitle: boolean
  readonly tagged: boolean
  /** how many structure elements there are of each type */
  readonly structure: Readonly<Record<string, number>>
  readonly alternatives: readonly string[]
  readonly bookmarks: readonly string[]
  readonly fontsEmbedded: number
}

/** Reads back what pdfkit writes (flat objects, Flate streams, fonts with ToUnicode maps); no reader of any PDF. */
export function readPdf(bytes: Uint8Array): Pdf {
  const raw = Buffer.from(bytes).toString('latin1')
  const objects = new Map<number, string>()
  for (const m of raw.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) objects.set(Number(m[1]), m[2] as string)
  const all = [...objects.values()]
  const find = (type: string) => all.find((o) => o.includes(`/Type /${type}\n`)) ?? ''
  const get = (ref: string | undefined) => objects.get(Number(ref)) ?? ''
  const info = get(/\/Info (\d+) 0 R/.exec(raw)?.[1])
  const structure: Record<string, number> = {}
  for (const o of all) {
    const type = /\/S \/([A-Z][A-Za-z0-9]*)\n/.exec(o)?.[1]
    if (type && /\/P \d+ 0 R/.test(o)) structure[type] = (structure[type] ?? 0) + 1
  }
  const kids = /\/Kids \[([^\]]*)\]/.exec(find('Pages'))?.[1] ?? ''
  return {
    pages: [...kids.matchAll(/(\d+) 0 R/g)].map((m) => readPage(get(m[1]), get)),
    title: string(get(/\/Title (\d+) 0 R/.exec(info)?.[1])),
    language: string(/\/Lang (\((?:[^()\\]|\\[\s\S])*\))/.exec(find('Catalog'))?.[1] ?? '') || null,
    displaysTitle: all.some((o) => /\/DisplayDocTitle true/.test(o)),
    tagged: all.some((o) => /\/Marked true/.test(o)) && /\/StructTreeRoot/.test(find('Catalog')),
    structure,
    alternatives: strings(
      all.filter((o) => /\/S \/Figure\n/.test(o)),
      'Alt',
    ),
    bookmarks: strings(
      all.filter((o) => /\/Dest \[/.test(o)),
      'Title',
    ),
    fontsEmbedded: all.filter((o) => /\/FontFile2? /.test(o)).length,
  }
}

function strings(objects: readonly string[], key: string): string[] {
  const pattern = new RegExp(`/${key} (\\((?:[^()\\\\]|\\\\[\\s\\S])*\\))`)
  return objects.flatMap((o) => pattern.exec(o)?.[1] ?? []).map(string)
}

function readPage(page: string, get: (ref: string | undefined) => string): PdfPage {
  const box = /\/MediaBox \[([^\]]*)\]/.exec(page)?.[1]?.split(' ').map(Number) ?? []
  const resources = get(/\/Resources (\d+) 0 R/.exec(page)?.[1])
  const fonts = new Map<string, Map<number, string>>()
  for (const m of resources.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    fonts.set(m[1] as string, unicodeMap(stream(get(/\/ToUnicode (\d+) 0 R/.exec(get(m[2]))?.[1]))))
  }
  const content = stream(get(/\/Contents (\d+) 0 R/.exec(page)?.[1]))
  let map = new Map<number, string>()
  const marks: boolean[] = []
  const [inside, outside]: [string[], string[]] = [[], []]
  const sizes = new Set<number>()
  const boxes: [number, number][] = []
  let size = 0
  const operator = /\/(F\d+) ([\d.]+) Tf|\[([^\]]*)\] TJ|\/(\w+) (?:<<[\s\S]*?>> BDC|BMC)|\bEMC\b|(?:[-\d.]+ ){2}([-\d.]+) ([-\d.]+) re/g
  for (const m of content.matchAll(operator)) {
    const [, font, fontSize, array, mark, width, height] = m
    const decoration = marks.includes(true)
    if (font !== undefined) {
      map = fonts.get(font) ?? new Map()
      size = Number(fontSize)
    } else if (array !== undefined) {
      ;(decoration ? outside : inside).push(decode(array, map))
      if (!decoration) sizes.add(size)
    } else if (mark !== undefined) marks.push(mark === 'Artifact')
    else if (width !== undefined) boxes.push([Number(width), Number(height)])
    else marks.pop()
  }
  return { width: box[2] ?? 0, height: box[3] ?? 0, text: join(inside), artifacts: join(outside), sizes: [...sizes], boxes }
}

const join = (runs: readonly string[]): string => runs.join('\n').replace(/\s+/g, ' ').trim()

function decode(array: string, map: ReadonlyMap<number, string>): string {
  return [...array.matchAll(/<([0-9a-f]*)>/gi)]
    .flatMap((m) => (m[1] as string).match(/.{4}/g) ?? [])
    .map((code) => map.get(Number.parseInt(code, 16)) ?? '�')
    .join('')
}

function stream(object: string): string {
  const at = object.indexOf('stream\n')
  if (at < 0) return ''
  const end = object.lastIndexOf('\nendstream')
  const body = Buffer.from(object.slice(at + 'stream\n'.length, end), 'latin1')
  return /\/Filter \/FlateDecode/.test(object.slice(0, at)) ? inflateSync(body).toString('latin1') : body.toString('latin1')
}

function unicodeMap(cmap: string): Map<number, string> {
  const map = new Map<number, string>()
  for (const m of cmap.matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi)) {
    const first = Number.parseInt(m[1] as string, 16)
    const values = [...(m[2] as string).matchAll(/<([0-9a-f ]*)>/gi)]
    for (const [i, v] of values.entries()) {
      const units = (v[1] as string).replace(/ /g, '').match(/.{4}/g) ?? []
      map.set(first + i, String.fromCharCode(...units.map((u) => Number.parseInt(u, 16))))
    }
  }
  return map
}

/** A PDF string in round brackets: UTF-16 where it starts with its mark, else one byte a character. */
function string(literal: string): string {
  const inner = literal
    .replace(/^\(|\)$/g, '')
    .replace(/\\([nrtbf()\\])/g, (_, c: string) => ({ n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' })[c] ?? c)
  if (!inner.startsWith('þÿ')) return inner
  return Buffer.from(inner.slice(2), 'latin1').swap16().toString('utf16le')
}
