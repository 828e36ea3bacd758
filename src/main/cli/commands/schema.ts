import { buildFileJsonSchema } from '../../../shared/model/exchange.ts'
import { readArguments } from '../arguments.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printJson, printProblems } from '../output.ts'

/** `schema`: JSON Schema of the exchange file. */
export async function schemaCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, { flags: ['json'], least: 0, most: 0, usage: 'schema' })
  if (!read.ok) return printProblems(read)
  printJson(buildFileJsonSchema())
  return EXIT.clean
}
