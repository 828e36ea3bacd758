import { plan } from '../../../shared/planner/index.ts'
import { makeDocument, type UnitSystem } from '../../../shared/report/index.ts'
import { fail, issue } from '../../../shared/result/result.ts'
import { writeWhole } from '../../procedures/write-whole.ts'
import { readArguments } from '../arguments.ts'
import { readBuildFile, today } from '../build-file.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printLines, printProblems } from '../output.ts'

/** `sheet FILE -o OUT.pdf`: the shop sheet as PDF. Bad input writes nothing. */
export async function sheetCommand(args: readonly string[]): Promise<Exit> {
  const usage = 'sheet FILE -o OUT.pdf [--paper a4|letter] [--units inch|metric] [--workings]'
  const read = readArguments(args, {
    values: { output: undefined, paper: ['a4', 'letter'], units: ['inch', 'metric'] },
    flags: ['workings'],
    short: { o: 'output' },
    least: 1,
    most: 1,
    usage,
  })
  if (!read.ok) return printProblems(read)
  const output = read.value.value('output')
  if (output === undefined) return printProblems(fail(issue('cli.usage', [], { says: 'Say where to write it with -o', usage })))
  if (!/\.pdf$/i.test(output))
    return printProblems(fail(issue('cli.cannot_write', [], { file: output, says: 'the name of a sheet ends in .pdf' })))
  const file = await readBuildFile(read.value.plain[0] as string)
  if (!file.ok) return printProblems(file)
  const { build } = file.value
  const planned = plan(build)
  const document = makeDocument(build, planned, {
    units: (read.value.value('units') ?? build.build.units) as UnitSystem,
    printedOn: today(),
    withoutWorkings: !read.value.flag('workings'),
  })
  const { renderPdf } = await import('../../documents/index.ts')
  const trouble = await writeWhole(output, await renderPdf(document, { paper: read.value.value('paper') === 'letter' ? 'letter' : 'a4' }))
  if (trouble !== undefined) return printProblems(fail(issue('cli.cannot_write', [], { file: output, says: trouble })))
  const stops = planned.findings.filter((f) => f.severity === 'stops').length
  printLines([`Wrote ${output}.${stops > 0 ? ` The sheet says what stops the build: ${stops} finding${stops === 1 ? '' : 's'}.` : ''}`])
  return stops > 0 ? EXIT.stops : EXIT.clean
}
