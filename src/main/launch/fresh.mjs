import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** What a build is made from, as paths inside the program's folder. */
export const SOURCES = ['src', 'migrations', 'electron.vite.config.ts', 'package.json', 'package-lock.json']

/** Written into `out/` when a build has succeeded; holds the state of the sources it was made from. */
export const STAMP = 'out/built-from'

/**
 * The state of a set of files and folders as one short text: newest change, number of entries, bytes. Folders count too, so
 * that a file taken away or renamed shows.
 *
 * @param {string} root
 * @param {readonly string[]} paths
 * @returns {string}
 */
export function stateOf(root, paths = SOURCES) {
  let newest = 0
  let entries = 0
  let bytes = 0
  /** @param {string} path */
  const walk = (path) => {
    const stats = statSync(path, { throwIfNoEntry: false })
    if (stats === undefined) return
    newest = Math.max(newest, stats.mtimeMs)
    entries += 1
    if (stats.isDirectory()) for (const name of readdirSync(path)) walk(join(path, name))
    else bytes += stats.size
  }
  for (const path of paths) walk(join(root, path))
  return `${newest} ${entries} ${bytes}`
}

/**
 * Whether `out/` was built from the sources as they are now.
 *
 * @param {string} root
 * @returns {boolean}
 */
export function isFresh(root) {
  try {
    return readFileSync(join(root, STAMP), 'utf8') === stateOf(root)
  } catch {
    // no stamp: never built, or the last build failed
    return false
  }
}
