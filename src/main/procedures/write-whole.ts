import { randomBytes } from 'node:crypto'
import { rename, rm, writeFile } from 'node:fs/promises'

/**
 * Writes a file whole or not at all: beside it first, then in its place, so that a full disk never leaves half a file where a
 * good one was. Gives the reason in plain words when it could not.
 */
export async function writeWhole(path: string, bytes: Uint8Array): Promise<string | undefined> {
  const beside = `${path}.${randomBytes(4).toString('hex')}.part`
  try {
    await writeFile(beside, bytes, { flag: 'wx' })
    await rename(beside, path)
    return undefined
  } catch (error) {
    await rm(beside, { force: true })
    const code = error instanceof Error && 'code' in error ? String(error.code) : ''
    return REASONS[code] ?? `the system says ${code === '' ? 'no' : code}`
  }
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'writing there is not allowed',
  EPERM: 'writing there is not allowed',
  EROFS: 'that place is read-only',
  ENOSPC: 'the disk is full',
  ENOENT: 'that folder does not exist',
  EISDIR: 'a folder has that name',
  EBUSY: 'another program is using that file',
}
