import { type Import, packageOf, target } from './imports.ts'

/** A room of the house: what it may see of the others, and which packages it may use. */
interface Room {
  readonly sees: readonly string[]
  /** rooms of which it may know the types only */
  readonly seesTypesOf?: readonly string[]
  readonly uses: readonly string[]
}

const SHARED_BELOW_PLANNER = [
  'src/shared/quantities',
  'src/shared/result',
  'src/shared/standards',
  'src/shared/formulas',
  'src/shared/model',
]
const SHARED = [...SHARED_BELOW_PLANNER, 'src/shared/planner', 'src/shared/report', 'src/shared/contract']

/** The plan of the house, as DESIGN tells it. A file belongs to the longest name that its path begins with. */
export const ROOMS: Readonly<Record<string, Room>> = {
  'src/shared/result': { sees: [], uses: [] },
  'src/shared/quantities': { sees: ['src/shared/result'], uses: [] },
  'src/shared/standards': { sees: ['src/shared/quantities', 'src/shared/result'], uses: [] },
  'src/shared/formulas': { sees: ['src/shared/quantities', 'src/shared/result', 'src/shared/standards'], uses: [] },
  'src/shared/model': { sees: ['src/shared/quantities', 'src/shared/result', 'src/shared/standards'], uses: ['zod'] },
  'src/shared/planner': {
    sees: SHARED_BELOW_PLANNER,
    uses: ['graphology', 'graphology-dag', 'graphology-shortest-path', 'graphology-types'],
  },
  'src/shared/report': { sees: [...SHARED_BELOW_PLANNER, 'src/shared/planner'], uses: [] },
  'src/shared/contract': {
    sees: ['src/shared/quantities', 'src/shared/result', 'src/shared/model'],
    seesTypesOf: ['src/shared/report', 'src/shared/planner'],
    uses: ['zod'],
  },
  'src/main/database': { sees: SHARED, uses: ['node:*', 'better-sqlite3', 'drizzle-orm', 'zod'] },
  'src/main/documents': { sees: SHARED, uses: ['node:*', 'pdfkit', 'fontkit', 'dejavu-fonts-ttf'] },
  'src/main/procedures': { sees: [...SHARED, 'src/main/documents', 'src/main/database'], uses: ['node:*', 'papaparse'] },
  'src/main/hosts': { sees: [...SHARED, 'src/main/procedures', 'src/main/database'], uses: ['node:*'] },
  'src/main/hosts/electron-ipc.ts': { sees: ['src/shared/contract', 'src/main/hosts', 'src/main/window'], uses: ['electron'] },
  'src/main/window': { sees: ['src/main/hosts'], uses: ['node:*', 'electron'] },
  'src/main/cli': { sees: [...SHARED, 'src/main/procedures', 'src/main/documents', 'src/main/hosts'], uses: ['node:*', 'zod'] },
  'src/main/index.ts': { sees: ['src/main/hosts', 'src/main/hosts/electron-ipc.ts', 'src/main/window'], uses: ['node:*', 'electron'] },
  'src/main/preload.ts': { sees: [], seesTypesOf: ['src/shared/contract'], uses: ['electron'] },
  'src/main/launch': { sees: ['out/main'], uses: ['node:*'] },
  'src/renderer': {
    sees: SHARED,
    uses: ['react', 'react-dom', 'react-aria-components', '@tanstack/react-query', '@tanstack/react-virtual', 'wouter', 'zod'],
  },
}

/** The room that a path lies in; undefined for a path outside the house. */
export const roomOf = (path: string): string | undefined =>
  Object.keys(ROOMS)
    .filter((room) => path === room || path.startsWith(`${room}/`))
    .sort((a, b) => b.length - a.length)[0]

/** What is wrong with an import, or undefined when it goes the right way. */
export function wrongWith(one: Import): string | undefined {
  const room = roomOf(one.from)
  if (room === undefined) return `${one.from} lies in no room of the house`
  const { sees, seesTypesOf = [], uses } = ROOMS[room] as Room
  const name = packageOf(one)
  if (name !== undefined) {
    const allowed = uses.includes(name) || (name.startsWith('node:') && uses.includes('node:*'))
    return allowed ? undefined : `${one.from} must not use the package ${name}`
  }
  const path = target(one) as string
  const other = roomOf(path) ?? path.split('/').slice(0, 2).join('/')
  if (other === room || sees.includes(other) || (one.typeOnly && seesTypesOf.includes(other))) return undefined
  return `${one.from} must not see ${path}`
}

/** The packages that running a file can bring in, by whatever road: what only types name is erased and does not count. */
export function reachable(from: string, imports: readonly Import[]): Set<string> {
  const byFile = Map.groupBy(
    imports.filter(({ typeOnly }) => !typeOnly),
    (one) => one.from,
  )
  const seen = new Set([from])
  const packages = new Set<string>()
  for (const file of seen) {
    for (const one of byFile.get(file) ?? []) {
      const path = target(one)
      if (path === undefined) packages.add(packageOf(one) as string)
      else seen.add(path)
    }
  }
  return packages
}
