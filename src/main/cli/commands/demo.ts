import { readFile } from 'node:fs/promises'
import { writeBuild } from '../../../shared/model/exchange.ts'
import { fail, issue } from '../../../shared/result/result.ts'
import { DEMO_FILES } from '../../procedures/demo.ts'
import { writeWhole } from '../../procedures/write-whole.ts'
import { readArguments } from '../arguments.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printLines, printProblems } from '../output.ts'

/** A file that is there and is no demo build of ours is somebody's work. */
async function holdsSomethingElse(path: string, text: string): Promise<boolean> {
  const found = await readFile(path, 'utf8').catch(() => text)
  return found !== text && !Object.values(DEMO_FILES).some((demo) => writeBuild(demo) === found)
}

/** `demo [-o FILE] [--as bought|corrected]`: the demo build as a file, to standard output without -o. */
export async function demoCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, {
    values: { output: undefined, as: ['bought', 'corrected'] },
    short: { o: 'output' },
    least: 0,
    most: 0,
    usage: 'demo [-o FILE] [--as bought|corrected]',
  })
  if (!read.ok) return printProblems(read)
  const text = writeBuild(DEMO_FILES[read.value.value('as') === 'corrected' ? 'corrected' : 'bought'])
  const output = read.value.value('output')
  if (output === undefined) {
    process.stdout.write(text)
    return EXIT.clean
  }
  if (await holdsSomethingElse(output, text)) {
    return printProblems(fail(issue('cli.cannot_write', [], { file: output, says: 'a file is there already; choose another name' })))
  }
  const trouble = await writeWhole(output, new TextEncoder().encode(text))
  if (trouble !== undefined) return printProblems(fail(issue('cli.cannot_write', [], { file: output, says: trouble })))
  printLines([`Wrote ${output}.`])
  return EXIT.clean
}
