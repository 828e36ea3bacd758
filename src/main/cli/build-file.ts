import { readFile } from 'node:fs/promises'
import { text } from 'node:stream/consumers'
import { type CheckedBuild, readBuild } from '../../shared/model/exchange.ts'
import { fail, issue, type Result } from '../../shared/result/result.ts'

/** Reads a build file from disk, or from standard input where the name is "-". */
export async function readBuildFile(file: string): Promise<Result<CheckedBuild>> {
  try {
    return readBuild(file === '-' ? await text(process.stdin) : await readFile(file, 'utf8'))
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
