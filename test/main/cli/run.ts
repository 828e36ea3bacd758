import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { onTestFinished } from 'vitest'

const CLI = resolve(import.meta.dirname, '../../../src/main/launch/cli.mjs')

export interface Run {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs the terminal program as `npm run -s cli -- …` does: a process of its own, on this Node. */
export function cli(args: readonly string[], { input = '', cwd }: { input?: string; cwd?: string } = {}): Promise<Run> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [CLI, ...args], cwd === undefined ? {} : { cwd })
    const out: Buffer[] = []
    const err: Buffer[] = []
    child.stdout.on('data', (chunk: Buffer) => out.push(chunk))
    child.stderr.on('data', (chunk: Buffer) => err.push(chunk))
    child.once('error', failed)
    child.once('close', (code) => done({ code, out: Buffer.concat(out).toString('utf8'), err: Buffer.concat(err).toString('utf8') }))
    // a command that reads nothing may be gone before all of it is written
    child.stdin.on('error', () => {})
    child.stdin.end(input)
  })
}

/** Runs with stdout closed by the reader after the first bytes, as `| head -1` does. */
export function cliIntoClosedPipe(args: readonly string[]): Promise<Run> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [CLI, ...args])
    const err: Buffer[] = []
    child.stdout.once('data', () => child.stdout.destroy())
    child.stderr.on('data', (chunk: Buffer) => err.push(chunk))
    child.once('error', failed)
    child.once('exit', (code) => done({ code, out: '', err: Buffer.concat(err).toString('utf8') }))
    child.stdin.end()
  })
}

/** The value that was printed, and nothing but it. */
export async function json(args: readonly string[], options?: { input?: string }): Promise<Record<string, unknown>> {
  const run = await cli([...args, '--json'], options)
  if (run.err !== '') throw new Error(run.err)
  return JSON.parse(run.out) as Record<string, unknown>
}

/** An empty folder that goes when the test ends. */
export function folder(): string {
  const made = mkdtempSync(join(tmpdir(), 'steerwright-cli-'))
  onTestFinished(() => rmSync(made, { recursive: true, force: true }))
  return made
}

/** Every key that occurs, as paths: lists as [], the keys of a record whose keys are names as {}. */
export function keysOf(value: unknown, records: readonly RegExp[] = [], path = ''): string[] {
  const all = new Set<string>()
  const walk = (v: unknown, here: string): void => {
    if (Array.isArray(v)) for (const item of v) walk(item, `${here}[]`)
    else if (typeof v === 'object' && v !== null) {
      const named = records.some((r) => r.test(here))
      for (const [key, inner] of Object.entries(v)) {
        const next = named ? `${here}{}` : `${here}${here === '' ? '' : '.'}${key}`
        all.add(next)
        walk(inner, next)
      }
    }
  }
  walk(value, path)
  return [...all].sort()
}
