import { problemSentence } from '../../shared/report/text/issues.ts'
import type { Issue } from '../../shared/result/result.ts'
import { EXIT, type Exit } from './exit.ts'

/** Every fault on a line of its own on stderr, its place first; the exit code of bad input. */
export function printProblems({ issues }: { readonly issues: readonly Issue[] }): Exit {
  for (const issue of issues) {
    const { place, sentence } = problemSentence(issue)
    process.stderr.write(place === '' ? `${sentence}\n` : `${place}: ${sentence}\n`)
  }
  return EXIT.badInput
}

export const printJson = (value: unknown): void => {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`)
}

export const printLines = (lines: readonly string[]): void => {
  process.stdout.write(`${lines.join('\n')}\n`)
}
