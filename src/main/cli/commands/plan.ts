import { plan } from '../../../shared/planner/index.ts'
import { findingTexts, makeDocument, summaryText, type UnitSystem } from '../../../shared/report/index.ts'
import { readArguments } from '../arguments.ts'
import { readBuildFile, today } from '../build-file.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printJson, printProblems } from '../output.ts'

/** `plan FILE [--json]`: the plan of a build as text, or as JSON (see DEVELOPERS.md for its shape). */
export async function planCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, {
    flags: ['json', 'workings'],
    values: { units: ['inch', 'metric'] },
    least: 1,
    most: 1,
    usage: 'plan FILE [--json] [--workings] [--units inch|metric]',
  })
  if (!read.ok) return printProblems(read)
  const file = await readBuildFile(read.value.plain[0] as string)
  if (!file.ok) return printProblems(file)
  const { build } = file.value
  const planned = plan(build)
  const units = (read.value.value('units') ?? build.build.units) as UnitSystem
  if (read.value.flag('json')) {
    printJson({ format: 'steerwright plan', version: 1, plan: planned, findings: findingTexts(build, planned, units) })
  } else {
    process.stdout.write(
      summaryText(makeDocument(build, planned, { units, printedOn: today(), withoutWorkings: !read.value.flag('workings') })),
    )
  }
  return planned.findings.some((f) => f.severity === 'stops') ? EXIT.stops : EXIT.clean
}
