import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { BuildFile } from '../../src/shared/model/build.ts'
import { allPortSizes } from '../../src/shared/model/end/ports.ts'
import { allThreads } from '../../src/shared/model/end/threads.ts'
import type { End } from '../../src/shared/model/end/types.ts'
import { checkBuild } from '../../src/shared/model/exchange.ts'
import { fitEnds } from '../../src/shared/planner/fit/fit.ts'
import { plan } from '../../src/shared/planner/index.ts'
import { middleOf, ms, times } from './measure.ts'

/** Every thread and port end, both sexes. */
function everyEnd(): readonly End[] {
  const sexes = ['male', 'female'] as const
  const threads = allThreads().flatMap((thread) => sexes.map((sex): End => ({ kind: 'thread', hand: 'right', sex, thread })))
  const ports = allPortSizes().flatMap(({ family, size, thread }) => sexes.map((sex): End => ({ kind: 'port', family, size, thread, sex })))
  return [...threads, ...ports]
}

/** The demo's joints over and over, each on parts of its own, until there are 500. */
function manyJoints(file: BuildFile, wanted: number): BuildFile {
  const copies = Math.ceil(wanted / file.joints.length)
  const named = (id: string, copy: number) => (copy === 0 ? id : `${id}-c${copy}`)
  const ref = (end: string, copy: number) => end.replace(/^[^/]+/, (id) => named(id, copy))
  const range = Array.from({ length: copies }, (_, copy) => copy)
  const parts = range.flatMap((copy) =>
    file.parts.filter((p) => copy === 0 || p.kind !== 'ram').map((p) => ({ ...p, id: named(p.id, copy) })),
  )
  const has = new Set(parts.map((p) => p.id))
  const joints = range
    .flatMap((copy) => file.joints.map((j) => ({ ...j, id: named(j.id, copy), a: ref(j.a, copy), b: ref(j.b, copy) })))
    .filter((j) => has.has(j.a.split('/')[0] ?? '') && has.has(j.b.split('/')[0] ?? ''))
  return { ...file, parts, joints: joints.slice(0, wanted) }
}

/** Verdicts a second, and the plan of a build with 500 joints against the reading of its own file, which it cannot do without. */
export async function bench(): Promise<readonly string[]> {
  const ends = everyEnd()
  let asked = 0
  const verdicts = await middleOf(5, () => {
    for (let i = 0; i < 200_000; i++) {
      asked++
      fitEnds(ends[(i * 7919) % ends.length] as End, ends[(i * 104_729) % ends.length] as End)
    }
  })
  const demo = JSON.parse(readFileSync(join(import.meta.dirname, '../../src/main/procedures/demo/bought.json'), 'utf8')) as BuildFile
  const file = manyJoints(demo, 500)
  const text = JSON.stringify(file)
  const checked = checkBuild(JSON.parse(text))
  if (!checked.ok) throw new Error(`the larger demo is faulty: ${JSON.stringify(checked.issues[0])}`)
  const reading = await middleOf(10, () => checkBuild(JSON.parse(text)))
  const planning = await middleOf(20, () => plan(checked.value.build))
  return [
    `verdicts: ${Math.round(200_000 / verdicts)} a millisecond over ${ends.length} ends (${asked} asked)`,
    `floor, reading and checking a file of ${file.joints.length} joints: ${ms(reading)}`,
    `plan of it, warm: ${ms(planning)}, ${times(planning / reading)} the floor (wanted: under 50 ms)`,
  ]
}
