import { readdirSync, readFileSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { join, posix } from 'node:path'
import { parseSync } from 'vite'

/** One import statement: who asks for what. */
export interface Import {
  /** path inside the repository, with slashes */
  readonly from: string
  readonly specifier: string
  /** erased before anything runs */
  readonly typeOnly: boolean
}

/** Every import of a source text: static, re-exported, dynamic, required, and those hidden in types. */
export function importsOf(from: string, source: string): Import[] {
  const { program, errors } = parseSync(from, source)
  if (errors.length > 0) throw new Error(`${from} cannot be parsed: ${errors[0]?.message}`)
  const found: Import[] = []
  const add = (source: unknown, typeOnly: boolean): void => {
    const specifier = isNode(source) && source.type === 'Literal' ? source.value : undefined
    if (typeof specifier !== 'string') throw new Error(`${from} imports something that only shows at run time`)
    found.push({ from, specifier, typeOnly })
  }
  walk(program, (node) => {
    switch (node.type) {
      case 'ImportDeclaration':
        return add(node.source, node.importKind === 'type')
      case 'ExportNamedDeclaration':
      case 'ExportAllDeclaration':
        if (node.source !== null && node.source !== undefined) add(node.source, node.exportKind === 'type')
        return
      case 'ImportExpression':
        return add(node.source, false)
      case 'TSImportType':
        return add(node.source, true)
      case 'TSExternalModuleReference':
        return add(node.expression, false)
      case 'CallExpression': {
        const { callee, arguments: given } = node
        if (isNode(callee) && callee.type === 'Identifier' && callee.name === 'require' && Array.isArray(given)) add(given[0], false)
      }
    }
  })
  return found
}

type Node = Readonly<Record<string, unknown>> & { readonly type: string }

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'

function walk(value: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(value)) for (const one of value) walk(one, visit)
  else if (isNode(value)) {
    visit(value)
    for (const part of Object.values(value)) if (typeof part === 'object') walk(part, visit)
  }
}

/** Every source file under a folder of the repository, as a path inside it. */
export const sourcesUnder = (root: string, folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => posix.join(folder, name.replaceAll('\\', '/')))
    .filter((name) => /\.(?:ts|tsx|mjs)$/.test(name))
    .sort()

export const readImports = (root: string, files: readonly string[]): Import[] =>
  files.flatMap((file) => importsOf(file, readFileSync(join(root, file), 'utf8')))

/** The path inside the repository that a relative import names; undefined for a package. */
export const target = ({ from, specifier }: Import): string | undefined =>
  specifier.startsWith('.') ? posix.join(posix.dirname(from), specifier) : undefined

/** The package that an import names: "node:fs" for Node's own, "@scope/name" or "name" for others. */
export function packageOf({ specifier }: Import): string | undefined {
  if (specifier.startsWith('.')) return undefined
  if (isBuiltin(specifier)) return specifier.startsWith('node:') ? specifier : `node:${specifier}`
  const [first = '', second = ''] = specifier.split('/')
  return first.startsWith('@') ? `${first}/${second}` : first
}
