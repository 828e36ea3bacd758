import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type Import, importsOf, readImports, sourcesUnder } from './imports.ts'
import { reachable, roomOf, wrongWith } from './walls.ts'

const root = resolve(import.meta.dirname, '../..')
const files = sourcesUnder(root, 'src')
const imports = readImports(root, files)

describe('the walls of the house', () => {
  it('stand: no file sees what it should not', () => {
    expect(imports.map(wrongWith).filter((wrong) => wrong !== undefined)).toEqual([])
  })

  it('enclose every file', () => {
    expect(files.filter((file) => roomOf(file) === undefined)).toEqual([])
    // a scan that finds next to nothing would pass the test above
    expect(files.length).toBeGreaterThan(60)
    expect(imports.length).toBeGreaterThan(150)
  })

  it('keep electron away from the terminal and the loopback host, by whatever road', () => {
    for (const start of ['src/main/cli/main.ts', 'src/main/hosts/loopback-main.ts', 'src/main/procedures/index.ts']) {
      expect([...reachable(start, imports)], start).not.toContain('electron')
    }
    expect([...reachable('src/main/index.ts', imports)]).toContain('electron')
    expect([...reachable('src/main/hosts/loopback-main.ts', imports)]).toContain('better-sqlite3')
  })
})

describe('the check of the walls itself', () => {
  const plant = (from: string, source: string): (string | undefined)[] => importsOf(from, source).map(wrongWith)

  it.each([
    ['quantities that see standards', 'src/shared/quantities/print.ts', `import { ROWS } from '../standards/tapers.ts'`],
    ['a result that sees quantities', 'src/shared/result/result.ts', `import type { Metre } from '../quantities/units.ts'`],
    ['a standard that sees a formula', 'src/shared/standards/tapers.ts', `export * from '../formulas/tapers/ratio.ts'`],
    ['a formula that sees the model', 'src/shared/formulas/tapers/ratio.ts', `import type { Part } from '../../model/part.ts'`],
    ['a formula that sees the model in a type', 'src/shared/formulas/card.ts', `export type P = import('../model/part.ts').Part`],
    ['a model that sees a formula', 'src/shared/model/part.ts', `import { area } from '../formulas/index.ts'`],
    ['a planner that sees the report', 'src/shared/planner/index.ts', `export { makeDocument } from '../report/index.ts'`],
    ['a report that sees the contract', 'src/shared/report/index.ts', `import { CONTRACT } from '../contract/contract.ts'`],
    ['a contract that runs the report', 'src/shared/contract/contract.ts', `import { makeDocument } from '../report/index.ts'`],
    ['shared code that reads a file', 'src/shared/model/exchange.ts', `import { readFileSync } from 'node:fs'`],
    ['the same without "node:"', 'src/shared/model/exchange.ts', `import fs = require('fs')`],
    ['shared code that sees main', 'src/shared/planner/index.ts', `const x = () => import('../../main/database/index.ts')`],
    ['shared code that draws', 'src/shared/report/index.ts', `import { createElement } from 'react'`],
    ['a window that sees main', 'src/renderer/app/client.ts', `import type { Database } from '../../main/database/index.ts'`],
    ['a window that uses electron', 'src/renderer/app/client.ts', `const { ipcRenderer } = require('electron')`],
    ['a window that uses Node', 'src/renderer/app/client.ts', `import { join } from 'path'`],
    ['a terminal that uses electron', 'src/main/cli/main.ts', `import { app } from 'electron'`],
    ['a terminal that sees the window', 'src/main/cli/main.ts', `await import('../window/window.ts')`],
    ['a host that says SQL', 'src/main/hosts/open.ts', `import { sql } from 'drizzle-orm'`],
    ['a host that uses electron', 'src/main/hosts/open.ts', `import { app } from 'electron'`],
    ['a database that prints', 'src/main/database/open.ts', `import PDFDocument from 'pdfkit'`],
    ['a PDF painter that sees the database', 'src/main/documents/index.ts', `import { openDatabase } from '../database/index.ts'`],
    ['a preload that brings code of the contract', 'src/main/preload.ts', `import { CONTRACT } from '../shared/contract/contract.ts'`],
    ['a launcher that sees sources', 'src/main/launch/cli.mjs', `await import('../cli/main.ts')`],
    ['a package nobody chose', 'src/renderer/app/main.tsx', `import _ from 'left-pad'`],
    ['a part of a package nobody chose', 'src/renderer/app/main.tsx', `import x from '@scope/left-pad/deep.js'`],
    ['a file that lies in no room', 'src/elsewhere/a.ts', `import { z } from 'zod'`],
  ])('catches %s', (_what, from, source) => {
    expect(plant(from, source)).toEqual([expect.stringContaining(from)])
  })

  it.each([
    ['types of the report in the contract', 'src/shared/contract/contract.ts', `type D = import('../report/document.ts').Document`],
    ['a file of the same room', 'src/shared/model/build.ts', `import { part } from './part.ts'`],
    ['a part of an allowed package', 'src/main/database/open.ts', `import { migrate } from 'drizzle-orm/better-sqlite3/migrator'`],
    ['an import that stands in a comment or a text', 'src/shared/model/a.ts', `// import 'electron'\nexport const a = "import 'electron'"`],
  ])('lets pass %s', (_what, from, source) => {
    expect(plant(from, source).filter((wrong) => wrong !== undefined)).toEqual([])
  })

  it('refuses an import that only shows at run time, and a file it cannot read', () => {
    expect(() => importsOf('src/main/cli/main.ts', 'await import(name)')).toThrow('run time')
    expect(() => importsOf('src/main/cli/main.ts', 'import {')).toThrow('cannot be parsed')
  })

  it('finds electron behind other files, but not behind a type', () => {
    const chain = (typeOnly: boolean): Import[] => [
      { from: 'src/a.ts', specifier: './b.ts', typeOnly: false },
      { from: 'src/b.ts', specifier: '../lib/c.ts', typeOnly },
      { from: 'lib/c.ts', specifier: 'electron', typeOnly: false },
      { from: 'lib/c.ts', specifier: '../src/a.ts', typeOnly: false },
    ]
    expect([...reachable('src/a.ts', chain(false))]).toEqual(['electron'])
    expect([...reachable('src/a.ts', chain(true))]).toEqual([])
  })
})
