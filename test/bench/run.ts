/**
 * Speed, as ratios to a floor measured in the same run. No timed tests: what is printed is for a reader, who knows how busy the
 * computer was. Runs straight from the sources on the program's own Node.
 */
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

interface BenchModule {
  readonly bench: () => Promise<readonly string[]>
}

const folder = import.meta.dirname
const wanted = process.argv.slice(2)
const files = readdirSync(folder)
  .filter((f) => f.endsWith('.ts') && f !== 'run.ts' && f !== 'measure.ts')
  .filter((f) => wanted.length === 0 || wanted.includes(f.replace(/\.ts$/, '')))
  .sort()

for (const file of files) {
  const { bench } = (await import(pathToFileURL(join(folder, file)).href)) as BenchModule
  console.log(`\n${file.replace(/\.ts$/, '')}`)
  for (const line of await bench()) console.log(`  ${line}`)
}
