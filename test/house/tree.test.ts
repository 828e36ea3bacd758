import { readdirSync, readFileSync, statSync } from 'node:fs'
import { extname, join, posix, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
const read = (path: string): string => readFileSync(join(root, path), 'utf8')
const json = <T>(path: string): T => JSON.parse(read(path)) as T

interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>
  readonly devDependencies: Readonly<Record<string, string>>
}
interface LockFile {
  readonly packages: Readonly<Record<string, { readonly gypfile?: boolean }>>
}

/** What git ignores, by name; the list of .gitignore has no other kind of line. */
const ignored = new Set([
  '.git',
  ...read('.gitignore')
    .split('\n')
    .map((line) => line.trim().replace(/\/$/, '')),
])

const TOP = [
  '.ci',
  '.config',
  '.gitignore',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'electron.vite.config.ts',
  'migrations',
  'package-lock.json',
  'package.json',
  'src',
  'test',
  'tsconfig.json',
]

function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = posix.join(folder, entry.name)
    if (ignored.has(entry.name) || entry.name.endsWith('.tsbuildinfo')) return []
    return entry.isDirectory() ? filesUnder(path) : [path]
  })
}

const TEXT = new Set(['.ts', '.tsx', '.mjs', '.css', '.html', '.json', '.yml', '.md', '.sql', ''])
const all = filesUnder('.')
const texts = all.filter((path) => TEXT.has(extname(path)) && path !== 'package-lock.json')
/** this file names what it forbids */
const others = texts.filter((path) => path !== 'test/house/tree.test.ts')
const saying = (paths: readonly string[], what: RegExp): string[] => paths.filter((path) => what.test(read(path)))

describe('the top of the tree', () => {
  it('holds the files it must and no others', () => {
    const there = readdirSync(root).filter((name) => !ignored.has(name) && !name.endsWith('.tsbuildinfo'))
    // the builder of the window writes its bundled configuration beside the original for a moment
    expect(there.filter((name) => !name.startsWith('electron.vite.config.') || TOP.includes(name)).sort()).toEqual(TOP)
  })

  it('pins every package to one version', () => {
    const { dependencies, devDependencies } = json<Manifest>('package.json')
    for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies })) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/)
    }
  })

  it('tells npm not to compile the database library, which brings its own prebuilt files', () => {
    // npm drops this line whenever it writes the lock file; without it `npm ci` asks for Python
    const { packages } = json<LockFile>('package-lock.json')
    expect(packages['node_modules/better-sqlite3']?.gypfile).toBe(false)
  })

  it('has a lock file of the same versions', () => {
    const { packages } = json<LockFile>('package-lock.json')
    const { dependencies, devDependencies } = json<Manifest>('package.json')
    expect(packages['']).toMatchObject({ dependencies, devDependencies })
  })

  it('runs in .ci/run what the README tells a newcomer to run', () => {
    const command = 'npm ci && npm test'
    expect(read('README.md')).toContain(command)
    expect(read('.ci/run').split('\n')).toContain(command)
    expect(read('.ci/run')).toMatch(/^#!\/usr\/bin\/env bash\n[\s\S]*\nset -euo pipefail\n/)
    if (process.platform !== 'win32') expect(statSync(join(root, '.ci/run')).mode & 0o111).not.toBe(0)
  })
})

describe('the files', () => {
  it('are many enough for these checks to mean something', () => {
    expect(texts.length).toBeGreaterThan(100)
  })

  it('have no more than 400 lines, but for the tables of a standard', () => {
    const long = all
      .filter((path) => path.startsWith('src/') && !path.startsWith('src/shared/standards/') && extname(path) !== '.json')
      .filter((path) => read(path).split('\n').length > 401)
    expect(long).toEqual([])
  })

  it('hold no JavaScript beside the TypeScript: what is made from a source is not a source', () => {
    expect(all.filter((path) => /^(?:src|test)\/.*\.(?:js|cjs|d\.ts\.map|js\.map)$/.test(path))).toEqual([])
  })

  it('name no folder of anybody’s machine', () => {
    expect(saying(others, /(?:^|[\s"'`(=])\/(?:work|root|tmp|Users|home\/(?!somebody|someone))(?:\/|\b(?=["'`]))/m)).toEqual([])
  })

  it('leave nothing marked as to be done', () => {
    expect(saying(others, /\b(?:TODO|FIXME|XXX|HACK)\b/)).toEqual([])
  })

  it('switch off no check of types or style', () => {
    expect(saying(others, /@ts-(?:ignore|nocheck|expect-error)|biome-ignore|eslint-disable/)).toEqual([])
  })

  it('skip no test and let none run alone', () => {
    const tests = others.filter((path) => path.startsWith('test/'))
    expect(saying(tests, /\b(?:it|test|describe|bench)\.(?:skip|only|todo|fails|skipIf|runIf)\b|\b[xf](?:it|describe)\(/)).toEqual([])
  })

  it('hold no conflict of a merge and end in one line end', () => {
    expect(saying(others, /^(?:<{7}|>{7}) /m)).toEqual([])
    expect(others.filter((path) => path.startsWith('src/') && !/[^\n]\n$/.test(read(path)))).toEqual([])
  })
})
