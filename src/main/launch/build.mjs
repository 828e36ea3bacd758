import { fileURLToPath } from 'node:url'
import { ensureBuilt } from './ensure-built.mjs'
import { onRightNode } from './node.mjs'

if (await onRightNode(fileURLToPath(import.meta.url))) {
  if (!(await ensureBuilt({ always: process.argv.includes('--always') }))) process.exitCode = 1
}
