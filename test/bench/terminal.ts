import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { middleOf, ms, times } from './measure.ts'

/** The terminal program's whole run, against a bare `node -e 0` of the same Node. */
export async function bench(): Promise<readonly string[]> {
  const root = join(import.meta.dirname, '../..')
  const run =
    (...args: string[]) =>
    () =>
      spawnSync(process.execPath, args, { cwd: root, stdio: 'ignore' })
  const demo = join(root, 'src/main/procedures/demo/bought.json')
  const launcher = join(root, 'src/main/launch/cli.mjs')
  const bare = await middleOf(15, run('-e', '0'))
  const lines = [`floor, bare node -e 0: ${ms(bare)}`]
  for (const args of [['plan', demo], ['fit', '7/8-18 LH male', '7/8-18 LH female'], ['schema']]) {
    const whole = await middleOf(15, run(launcher, ...args))
    lines.push(`cli ${args[0]}: ${ms(whole)}, ${ms(whole - bare)} over the floor, ${times(whole / bare)} (wanted: under 150 ms over)`)
  }
  return lines
}
