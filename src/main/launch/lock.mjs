import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'

/** A lock folder without its owner's number is one being made; after this long its maker has died in between. */
const NAMELESS_MS = 2_000

/**
 * Runs `work` while no other process does, by way of a folder that only one can make. A lock whose owner has died is taken over.
 *
 * @template T
 * @param {string} folder
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function alone(folder, work) {
  const ownerFile = join(folder, 'owner')
  let namelessSince = 0
  for (;;) {
    try {
      mkdirSync(folder)
      break
    } catch (error) {
      if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'EEXIST') throw error
    }
    const owner = readOwner(ownerFile)
    if (owner === undefined) namelessSince ||= Date.now()
    else namelessSince = 0
    const dead = owner === undefined ? Date.now() - namelessSince > NAMELESS_MS : !isAlive(owner)
    if (dead) takeAway(folder)
    else await wait(50)
  }
  try {
    writeFileSync(ownerFile, String(process.pid))
    return await work()
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** @param {string} file */
function readOwner(file) {
  try {
    const pid = Number(readFileSync(file, 'utf8'))
    return Number.isInteger(pid) && pid > 0 ? pid : undefined
  } catch {
    return undefined
  }
}

/** @param {number} pid */
function isAlive(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'EPERM'
  }
}

/** Renaming succeeds for one process only, so two that wait do not both remove. @param {string} folder */
function takeAway(folder) {
  const aside = `${folder}.${process.pid}.${Date.now()}`
  try {
    renameSync(folder, aside)
  } catch {
    return
  }
  rmSync(aside, { recursive: true, force: true })
}
