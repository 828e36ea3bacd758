import { readFile } from 'node:fs/promises'
import { text } from 'node:stream/consumers'
import { type CheckedBuild, readBuild } from '../../shared/model/exchange.ts'
import { fail, issue, ok, type Result } from '../../shared/result/result.ts'

/** Reads a build file from disk, or from standard input where the name is "-". */
export async function readBuildFile(file: string): Promise<Result<CheckedBuild>> {
  const read = await readText(file)
  return read.ok ? readBuild(read.value) : read
}

/** The text of a file, or of standard input where the name is "-". */
export async function readText(file: string): Promise<Result<string>> {
  try {
    return ok(file === '-' ? await text(process.stdin) : await readFile(file, 'utf8'))
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : ''
    return fail(issue('cli.cannot_read', [], { file, code }))
  }
}

/** Today by the computer's clock, as it is printed on a sheet. */
export const today = (): string => {
  const now = new Date()
  const two = (n: number) => String(n).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
