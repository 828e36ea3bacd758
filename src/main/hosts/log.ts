import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** Notes a bug with its place in the program. What the user typed never goes in. */
export type Log = (where: string, error: unknown) => void

const LARGEST = 1_000_000

/**
 * A log file in the data folder. An error's message is left out, since it may quote what the user typed; its kind, its code and
 * the lines of the program it came through are what finds a bug. The file starts anew at 1 MB; the one before is kept.
 */
export function openLog(folder: string, now: () => Date): Log {
  const file = join(folder, 'steerwright.log')
  return (where, error) => {
    const entry = `${now().toISOString()} ${where}: ${describe(error)}\n`
    try {
      mkdirSync(folder, { recursive: true, mode: 0o700 })
      if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) > LARGEST) renameSync(file, `${file}.1`)
      appendFileSync(file, entry, { mode: 0o600 })
    } catch {
      // a folder that cannot be written to must not hide the bug
      process.stderr.write(entry)
    }
  }
}

function describe(error: unknown): string {
  if (!(error instanceof Error)) return `thrown: ${typeof error}`
  const code = 'code' in error && typeof error.code === 'string' ? ` ${error.code}` : ''
  const cause = error.cause === undefined ? '' : ` <- ${describe(error.cause)}`
  return `${error.name}${code} ${frames(error).join(' ')}${cause}`
}

/** "at name (file:line:column)" of each step, with only the file's name of each path: where a home folder is called after somebody. */
function frames(error: Error): string[] {
  const stack = error.stack ?? ''
  const lines = stack
    .slice(stack.indexOf(error.message) + error.message.length)
    .split('\n')
    .map((line) => line.trim())
  return lines.filter((line) => /^at .*:\d+:\d+\)?$/.test(line)).map((line) => line.replace(/(?:file:\/\/)?[^\s(]*[/\\]/g, ''))
}
