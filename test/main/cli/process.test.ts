import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../src/main/procedures/demo.ts'
import { writeBuild } from '../../../src/shared/model/exchange.ts'
import { readPdf } from '../documents/read-pdf.ts'
import { cli, cliIntoClosedPipe, folder } from './run.ts'

describe('the program at a terminal', () => {
  it('says what it can do when asked, or when nothing is asked', async () => {
    const [bare, help, dashed, short, late] = await Promise.all([
      cli([]),
      cli(['help']),
      cli(['--help']),
      cli(['-h']),
      cli(['plan', '--help']),
    ])
    expect({ code: bare.code, err: bare.err }).toEqual({ code: 0, err: '' })
    for (const command of ['plan FILE', 'sheet FILE', 'fit "END" "END"', 'formula', 'table', 'schema', 'demo'])
      expect(bare.out).toContain(`  ${command}`)
    for (const other of [help, dashed, short, late]) expect(other).toEqual(bare)
  })

  it.each(['frobnicate', 'constructor', '__proto__', 'toString', '--json'])(
    'does not know the command %s: exit 2, and names those it knows',
    async (name) => {
      const run = await cli([name])
      expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
      expect(run.err).toMatch(new RegExp(`^There is no command "${name}"\\. There are: plan, sheet, fit, .*demo`))
    },
  )

  it.each([[['schema']], [['demo']], [['formula', '--json']]])('%j into a reader that has seen enough: no complaint', async (args) => {
    const run = await cliIntoClosedPipe(args)
    expect({ code: run.code, err: run.err }).toEqual({ code: 0, err: '' })
  })
})

describe('demo', () => {
  it('prints the demo as bought, or as corrected', async () => {
    const [plain, bought, corrected] = await Promise.all([
      cli(['demo']),
      cli(['demo', '--as', 'bought']),
      cli(['demo', '--as', 'corrected']),
    ])
    expect(plain).toEqual({ code: 0, out: writeBuild(DEMO_FILES.bought), err: '' })
    expect(bought).toEqual(plain)
    expect(corrected.out).toBe(writeBuild(DEMO_FILES.corrected))
    expect((await cli(['demo', '--as', 'found'])).code).toBe(2)
  })

  it('is a file that plan reads back', async () => {
    const where = folder()
    expect(await cli(['demo', '-o', 'larch.json', '--as', 'corrected'], { cwd: where })).toEqual({
      code: 0,
      out: 'Wrote larch.json.\n',
      err: '',
    })
    expect(readFileSync(join(where, 'larch.json'), 'utf8')).toBe(writeBuild(DEMO_FILES.corrected))
    expect(readdirSync(where)).toEqual(['larch.json'])
    expect((await cli(['plan', 'larch.json'], { cwd: where })).code).toBe(0)
  })

  it('cannot be written where there is no folder: exit 2', async () => {
    const run = await cli(['demo', '-o', 'no/such/place.json'], { cwd: folder() })
    expect(run).toEqual({ code: 2, out: '', err: '"no/such/place.json" was not written: that folder does not exist.\n' })
  })

  it('of `npm run demo` plans both, prints what stops them, and writes files and sheets', async () => {
    const where = folder()
    const run = await cli(['demo-run'], { cwd: where })
    expect({ code: run.code, err: run.err }).toEqual({ code: 0, err: '' })
    expect(run.out).toContain('Nothing stops the build.')
    expect(run.out.match(/■/g)).toHaveLength(6)
    const files = readdirSync(join(where, 'demo-out')).sort()
    expect(files).toEqual(['bought', 'corrected'].flatMap((n) => [`larch-${n}-a4.pdf`, `larch-${n}-letter.pdf`, `larch-${n}.json`]).sort())
    for (const name of files.filter((f) => f.endsWith('.pdf')))
      expect(readPdf(readFileSync(join(where, 'demo-out', name))).pages.length).toBeGreaterThan(3)
  })
})
