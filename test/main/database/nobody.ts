import { openDatabase } from '../../../src/main/database/index.ts'
import { fullBuild } from './full-build.ts'

/*
 * Run by the tests as a process of its own, without root's leave to write everywhere: opens the database in a folder, tries
 * to save, and prints what came of it.
 */
const [folder = '', migrationsFolder = ''] = process.argv.slice(2)
const opened = openDatabase(folder, { migrationsFolder, now: '2026-03-01T09:30:00.000Z', busyTimeout: 50 })
if (!opened.ok) console.log(JSON.stringify({ step: 'open', codes: opened.issues.map((i) => i.code) }))
else {
  const saved = opened.value.saveBuild(fullBuild(), { replace: true, changedAt: '2026-03-01T09:30:00.000Z' })
  console.log(JSON.stringify({ step: 'save', codes: saved.ok ? [] : saved.issues.map((i) => i.code) }))
}
