import module from 'node:module'
import { fileURLToPath } from 'node:url'
import { isFresh } from './fresh.mjs'
import { onRightNode, ROOT } from './node.mjs'

if (await onRightNode(fileURLToPath(import.meta.url))) {
  module.enableCompileCache()
  // the builder is loaded only when there is something to build: a fresh start pays for one walk over the sources
  const ready = isFresh(ROOT) || (await (await import('./ensure-built.mjs')).ensureBuilt())
  if (ready) await import('../../../out/main/cli.js')
  // 1 would say that something stops the build
  else process.exitCode = 3
}
