// first, before any schema is made
import './one-run.ts'

import { fail as failure, type Issue } from '../../shared/result/result.ts'
import type { Exit } from './exit.ts'
import { EXIT } from './exit.ts'
import { HELP } from './help.ts'
import { printProblems } from './output.ts'

type Command = (args: readonly string[]) => Promise<Exit>

/** Each command is loaded only when it is called, so that the quick ones stay quick. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  plan: async () => (await import('./commands/plan.ts')).planCommand,
  sheet: async () => (await import('./commands/sheet.ts')).sheetCommand,
  fit: async () => (await import('./commands/fit.ts')).fitCommand,
  across: async () => (await import('./commands/across.ts')).acrossCommand,
  identify: async () => (await import('./commands/identify.ts')).identifyCommand,
  formula: async () => (await import('./commands/formula.ts')).formulaCommand,
  table: async () => (await import('./commands/table.ts')).tableCommand,
  schema: async () => (await import('./commands/schema.ts')).schemaCommand,
  demo: async () => (await import('./commands/demo.ts')).demoCommand,
  'demo-run': async () => (await import('./commands/demo-run.ts')).demoRunCommand,
}

/** Runs one command and gives its exit code: 0 clean, 1 something stops the build, 2 bad input. */
async function run([name, ...args]: readonly string[]): Promise<Exit> {
  const asked = (word: string | undefined) => word === '--help' || word === '-h'
  if (name === undefined || name === 'help' || asked(name) || args.some(asked)) {
    process.stdout.write(HELP)
    return EXIT.clean
  }
  const load = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined
  if (!load)
    return printProblems(
      failure({
        code: 'cli.unknown_command',
        path: [],
        facts: { name, commands: Object.keys(COMMANDS).filter((c) => c !== 'demo-run') },
      } satisfies Issue),
    )
  return (await load())(args)
}

// a reader that has seen enough (`| head`) closes the pipe: that is no fault
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})

try {
  process.exitCode = await run(process.argv.slice(2))
} catch (error) {
  process.stderr.write(
    `Steerwright made a mistake of its own: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
  )
  process.exitCode = EXIT.bug
}
