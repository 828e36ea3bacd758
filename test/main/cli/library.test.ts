import { describe, expect, it } from 'vitest'
import bought from '../../../src/main/procedures/demo/bought.json' with { type: 'json' }
import { FORMULAS } from '../../../src/shared/formulas/index.ts'
import { TABLES } from '../../../src/shared/standards/index.ts'
import { faults } from '../../shared/model/json-schema.ts'
import { cli, json, keysOf } from './run.ts'

describe('fit', () => {
  it.each([
    ['fits', ['-6 37° flare male', '-6 37° flare female'], 0, /^ {2}fits$/m],
    ['fits on a condition', ['3/8 NPT male', '3/8 NPT female'], 0, /on condition: sealant/],
    ['does not fit', ['7/8-18 LH male', '7/8-18 female'], 1, /^ {2}does not fit$/m],
    ['goes together and is wrong', ['-6 JIC male', '-6 ORB female'], 1, /^ {2}goes together and is wrong$/m],
    ['not known', ['taper 1:8 stud', 'taper hole, large 0.85 in'], 1, /measure: taper of the hole/],
  ])('%s', async (_what, ends, code, words) => {
    const run = await cli(['fit', ...ends])
    expect({ code: run.code, err: run.err }).toEqual({ code, err: '' })
    expect(run.out).toMatch(words)
    expect(run.out).toContain(ends[0])
    // the same, whichever is named first
    const turned = await cli(['fit', ...ends.toReversed()])
    expect(turned.code).toBe(code)
    expect(turned.out.split('\n').slice(1)).toEqual(run.out.split('\n').slice(1))
  })

  it('says by what rule and source', async () => {
    expect((await cli(['fit', '-6 37° flare male', '-6 37° flare female'])).out).toContain('rule: SAE J514')
  })

  it('shows numbers in the units asked for', async () => {
    const ends = ['clamp 1 1/4 in', 'tube 1 1/2 in']
    expect((await cli(['fit', ...ends])).out).toContain('1.25 in')
    expect((await cli(['fit', ...ends, '--units', 'metric'])).out).toContain('31.75 mm')
  })

  it.each([
    ['M22x1.75 male', /not in ISO 261\. A pitch of 1\.75 mm is 14\.5 per inch\. Look at: 7\/8-14, .*G 5\/8\./],
    ['-6', /a dash number alone does not say how it seals/],
    ['taper 7° stud', /half angle or the included one/],
    ['clamp 12', /has no unit/],
    ['', /is not understood as an end/],
  ])('%j is told what is wrong with it: exit 2', async (end, message) => {
    const run = await cli(['fit', end, '7/8-14 female'])
    expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
    expect(run.err).toMatch(message)
  })

  it('tells of both ends at once', async () => {
    expect((await cli(['fit', 'this', 'that'])).err.trimEnd().split('\n')).toHaveLength(2)
  })

  it('--json keeps its keys', async () => {
    const value = await json(['fit', '-6 37° flare male', '-6 O-ring boss female'])
    expect(value).toMatchObject({
      format: 'steerwright fit',
      version: 1,
      a: { typed: '-6 37° flare male', end: { kind: 'port', size: '-6' } },
    })
    expect(keysOf(value, [/facts$/])).toMatchInlineSnapshot(`
      [
        "a",
        "a.end",
        "a.end.family",
        "a.end.kind",
        "a.end.sex",
        "a.end.size",
        "a.end.thread",
        "a.end.thread.designation",
        "a.end.thread.family",
        "a.end.thread.flankAngle",
        "a.end.thread.major",
        "a.end.thread.pitch",
        "a.end.thread.tapered",
        "a.typed",
        "b",
        "b.end",
        "b.end.family",
        "b.end.kind",
        "b.end.sex",
        "b.end.size",
        "b.end.thread",
        "b.end.thread.designation",
        "b.end.thread.family",
        "b.end.thread.flankAngle",
        "b.end.thread.major",
        "b.end.thread.pitch",
        "b.end.thread.tapered",
        "b.typed",
        "format",
        "verdict",
        "verdict.conditions",
        "verdict.kind",
        "verdict.measure",
        "verdict.reasons",
        "verdict.reasons[].code",
        "verdict.reasons[].evidence",
        "verdict.reasons[].facts",
        "verdict.reasons[].facts{}",
        "verdict.reasons[].source",
        "verdict.reasons[].source.cites",
        "verdict.reasons[].source.id",
        "verdict.reasons[].source.mark",
        "verdict.rule",
        "version",
        "words",
        "words.conditions",
        "words.measure",
        "words.reasons",
        "words.state",
        "words.word",
      ]
    `)
  })
})

describe('formula', () => {
  it('lists every card', async () => {
    const run = await cli(['formula'])
    expect({ code: run.code, err: run.err }).toEqual({ code: 0, err: '' })
    expect(run.out.trimEnd().split('\n')).toHaveLength(FORMULAS.length)
    const lines = run.out.split('\n')
    for (const { id, title } of FORMULAS) expect(lines.filter((l) => l.startsWith(`${id} `) && l.endsWith(` ${title}`))).toHaveLength(1)
  })

  it('shows one, with its symbols, source and example', async () => {
    const run = await cli(['formula', 'ram.annulus-area'])
    expect(run.code).toBe(0)
    for (const words of ['D: ', 'd: ', '[m]', 'holds where', 'source: ', 'example: ']) expect(run.out).toContain(words)
  })

  it('evaluates one, inputs as a person types them', async () => {
    const run = await cli(['formula', 'ram.cap-area', 'D=1 3/4 in'])
    expect({ code: run.code, err: run.err }).toEqual({ code: 0, err: '' })
    // π/4 · 1.75² = 2.4053 in² = 1551.8 mm²
    expect(run.out).toContain('2.405 in²')
    expect(run.out).toContain('1552 mm²')
    expect(run.out).toContain('(1 3/4 in)²')
    // the row of the reference table: 1.75 in bore at 1500 psi pushes 3608 lbf
    expect((await cli(['formula', 'ram.force', 'p=1500 psi', 'A=2.4053 in2'])).out).toContain('3608 lbf')
  })

  it.each([
    [['formula', 'nothing.like-it'], /There is no formula "nothing\.like-it"/],
    [
      ['formula', 'ram.cap-area', 'x=3'],
      /"x" is not a symbol of this formula\. It has: D\.[\s\S]*A value for D \(bore of the ram\) is missing/,
    ],
    [['formula', 'ram.cap-area', 'D'], /"D" is not a symbol|A value for D/],
    [['formula', 'ram.cap-area', 'D=3'], /^D: "3" has no unit/],
    [['formula', 'ram.cap-area', 'D=3 psi'], /^D: "3 psi" is a pressure, but a length is asked for/],
    [['formula', 'ram.cap-area', 'D=-1 in'], /outside the range/],
    [['formula', 'ram.annulus-area', 'D=1 in', 'd=2 in'], /the rod is thinner than the bore/],
    [['formula', 'ram.cap-area', 'D=1 in', 'D=2 in'], /"D" is not a symbol|twice/],
    [['formula', 'constructor'], /There is no formula/],
  ])('%j: exit 2 and why', async (args, message) => {
    const run = await cli(args)
    expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
    expect(run.err).toMatch(message)
  })

  it('--json keeps its keys: list, card, answer', async () => {
    const list = await json(['formula'])
    expect(list.formulas).toHaveLength(FORMULAS.length)
    expect(Object.keys(list)).toEqual(['format', 'version', 'formulas'])
    const sure = ['id', 'title', 'equation', 'symbols', 'result', 'source', 'examples', 'requires']
    for (const card of list.formulas as readonly object[]) expect(Object.keys(card)).toEqual(expect.arrayContaining(sure))
    expect(keysOf(await json(['formula', 'ram.cap-area']), [/symbols$/, /given$/])).toMatchInlineSnapshot(`
      [
        "card",
        "card.equation",
        "card.examples",
        "card.examples[].because",
        "card.examples[].given",
        "card.examples[].given{}",
        "card.examples[].gives",
        "card.examples[].source",
        "card.examples[].source.cites",
        "card.examples[].source.id",
        "card.examples[].source.mark",
        "card.examples[].tolerance",
        "card.id",
        "card.requires",
        "card.result",
        "card.result.dimension",
        "card.result.meaning",
        "card.result.symbol",
        "card.source",
        "card.source.cites",
        "card.source.id",
        "card.source.mark",
        "card.symbols",
        "card.symbols{}",
        "card.symbols{}.above",
        "card.symbols{}.dimension",
        "card.symbols{}.meaning",
        "card.title",
        "format",
        "version",
      ]
    `)
    const answer = await json(['formula', 'ram.cap-area', 'D=1 3/4 in'])
    expect(answer).toMatchObject({ inputs: { D: { typed: '1 3/4 in', si: 0.04445 } }, result: { unit: 'm²' } })
    expect(keysOf(answer, [/inputs$/])).toMatchInlineSnapshot(`
      [
        "equation",
        "format",
        "id",
        "inputs",
        "inputs{}",
        "inputs{}.dimension",
        "inputs{}.si",
        "inputs{}.typed",
        "inputs{}.unit",
        "result",
        "result.dimension",
        "result.printed",
        "result.printed.inch",
        "result.printed.metric",
        "result.si",
        "result.symbol",
        "result.unit",
        "version",
      ]
    `)
  })
})

describe('table', () => {
  it('lists every table', async () => {
    const run = await cli(['table'])
    expect({ code: run.code, err: run.err }).toEqual({ code: 0, err: '' })
    expect(
      run.out
        .trimEnd()
        .split('\n')
        .map((l) => l.split(' ')[0]),
    ).toEqual(TABLES.map((t) => t.name))
  })

  it('prints each with all its rows and sources', async () => {
    for (const name of ['dash-ports', 'unified-threads']) {
      const table = TABLES.find((t) => t.name === name)
      const run = await cli(['table', name])
      expect(run.code).toBe(0)
      const lines = run.out.split('\n')
      const [from, to] = [lines.findIndex((l) => l.startsWith('---')) + 1, lines.indexOf('', 3)]
      expect(to - from).toBe(table?.rows.length)
      expect(lines.filter((l) => l.startsWith('source: '))).toHaveLength(table?.sources.length ?? 0)
    }
  })

  it('shows a figure that nobody has seen as a dash, not as a nought', async () => {
    expect((await cli(['table', 'dash-ports'])).out).toMatch(/^-3 .* – /m)
  })

  it('that there is not: exit 2', async () => {
    const run = await cli(['table', 'nothing'])
    expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
    expect(run.err).toContain('There is no table "nothing"')
  })

  it('--json keeps its keys', async () => {
    expect(keysOf(await json(['table']))).toMatchInlineSnapshot(`
      [
        "format",
        "tables",
        "tables[].name",
        "tables[].rows",
        "tables[].title",
        "version",
      ]
    `)
    const value = await json(['table', 'dash-ports'])
    expect(keysOf(value, [/rows\[\]$/])).toMatchInlineSnapshot(`
      [
        "format",
        "table",
        "table.columns",
        "table.columns[].key",
        "table.columns[].title",
        "table.columns[].unit",
        "table.key",
        "table.name",
        "table.rows",
        "table.rows[]{}",
        "table.sources",
        "table.sources[].cites",
        "table.sources[].id",
        "table.sources[].mark",
        "table.sources[].read",
        "table.title",
        "version",
      ]
    `)
    expect(value.table).toMatchObject({ name: 'dash-ports', key: 'dash' })
  })
})

describe('schema', () => {
  it('is the JSON Schema that the demo keeps', async () => {
    const run = await cli(['schema'])
    expect({ code: run.code, err: run.err }).toEqual({ code: 0, err: '' })
    expect(faults(JSON.parse(run.out), bought)).toEqual([])
    expect((await cli(['schema', '--json'])).out).toBe(run.out)
    expect((await cli(['schema', 'more'])).code).toBe(2)
  })
})
