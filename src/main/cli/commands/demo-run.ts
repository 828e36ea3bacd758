import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { checkBuild, writeBuild } from '../../../shared/model/exchange.ts'
import { plan } from '../../../shared/planner/index.ts'
import { findingTexts, makeDocument, numberTexts } from '../../../shared/report/index.ts'
import { renderPdf } from '../../documents/index.ts'
import { DEMO_FILES, type DemoName } from '../../procedures/demo.ts'
import { writeWhole } from '../../procedures/write-whole.ts'
import { today } from '../build-file.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printLines, printProblems } from '../output.ts'

const FOLDER = 'demo-out'

/** What `npm run demo` does: plans the demo build as bought and as corrected, prints both summaries and writes files and sheets. */
export async function demoRunCommand(): Promise<Exit> {
  await mkdir(FOLDER, { recursive: true })
  for (const name of Object.keys(DEMO_FILES) as DemoName[]) {
    const checked = checkBuild(DEMO_FILES[name])
    if (!checked.ok) return printProblems(checked)
    const { build, file } = checked.value
    const planned = plan(build)
    const { units } = build.build
    const stops = findingTexts(build, planned, units).filter((f) => f.severity === 'stops')
    const told = ['survey.total', 'survey.stroke', 'ram.push', 'ram.pull', 'fluid.to-buy', 'fluid.bottles']
    printLines([
      `${build.vehicle.name}: ${build.build.name}, revision ${build.build.revision} (as ${name})`,
      ...(stops.length === 0 ? ['  Nothing stops the build.'] : stops.map((f) => `  ■ ${f.title}\n      ${f.todo}`)),
      ...numberTexts(build, planned, units)
        .filter((n) => told.includes(n.id))
        .map((n) => `  ${n.label}: ${n.value}${n.uncertainty === null ? '' : ` ${n.uncertainty}`}`),
    ])
    const sheets = (['a4', 'letter'] as const).map(async (paper) => {
      const document = makeDocument(build, planned, { units, printedOn: today(), withoutWorkings: true })
      return [`larch-${name}-${paper}.pdf`, await renderPdf(document, { paper })] as const
    })
    const files = [[`larch-${name}.json`, new TextEncoder().encode(writeBuild(file))] as const, ...(await Promise.all(sheets))]
    for (const [fileName, bytes] of files) {
      const path = join(FOLDER, fileName)
      const trouble = await writeWhole(path, bytes)
      printLines([trouble === undefined ? `  Wrote ${path}` : `  Could not write ${path}: ${trouble}`])
      if (trouble !== undefined) return EXIT.badInput
    }
  }
  return EXIT.clean
}
