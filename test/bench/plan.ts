import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readBuild } from '../../src/shared/model/exchange.ts'
import { plan } from '../../src/shared/planner/index.ts'
import { middleOf, ms, times } from './measure.ts'

/** The whole plan of the demo, against the reading of its file and against bare JSON.parse of the same text. */
export async function bench(): Promise<readonly string[]> {
  const text = readFileSync(join(import.meta.dirname, '../../src/main/procedures/demo/bought.json'), 'utf8')
  const read = readBuild(text)
  if (!read.ok) throw new Error('the demo file is faulty')
  const floor = await middleOf(200, () => JSON.parse(text))
  const reading = await middleOf(100, () => readBuild(text))
  const planning = await middleOf(200, () => plan(read.value.build), 20)
  return [
    `floor, JSON.parse of the demo file: ${ms(floor)}`,
    `read and check the file: ${ms(reading)}, ${times(reading / floor)} the floor`,
    `plan, warm: ${ms(planning)}, ${times(planning / floor)} the floor (wanted: under 20 ms)`,
  ]
}
