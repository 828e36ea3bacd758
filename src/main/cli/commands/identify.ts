import { identify } from '../../../shared/planner/identify/identify.ts'
import { readReadings } from '../../../shared/planner/identify/read.ts'
import { identifyWords } from '../../../shared/report/text/identify.ts'
import { showIn } from '../../../shared/report/units.ts'
import { readArguments } from '../arguments.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printJson, printLines, printProblems } from '../output.ts'

const USAGE =
  'identify od=22.1mm pitch=1.81mm [id=…] [tpi=…] [u=0.05mm] [upitch=…] [taper=yes|no] [seal=…] [sex=…] [hand=…] [angle=55|60], ' +
  'identify d1=… d2=… length=…, identify tube od=… wall=…, identify splines=… od=… [--json] [--units inch|metric]'

/** `identify NAME=VALUE …`: what can this be? Exit 0 when something explains the readings, 1 when nothing does. */
export async function identifyCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, { flags: ['json'], values: { units: ['inch', 'metric'] }, least: 1, most: 20, usage: USAGE })
  if (!read.ok) return printProblems(read)
  const readings = readReadings(read.value.plain)
  if (!readings.ok) return printProblems(readings)
  const result = identify(readings.value)
  const words = identifyWords(result, showIn(read.value.value('units') === 'inch' ? 'inch' : 'metric'))
  if (read.value.flag('json')) printJson({ format: 'steerwright identify', version: 1, ...result, words })
  else {
    printLines([
      ...words.readings,
      '',
      words.answer,
      ...words.candidates.flatMap((c) => [`  ${c.rank}. ${c.name}: ${c.word}`, ...c.says.map((s) => `       ${s}`)]),
      ...(words.further === null ? [] : ['', words.further.measure, ...words.further.expected.map((e) => `  ${e}`)]),
    ])
  }
  return result.candidates.length > 0 ? EXIT.clean : EXIT.stops
}
