import type { SavedFile } from '../../shared/contract/contract.ts'
import { call, inOwnWindow } from './client.ts'

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  const text = atob(base64)
  const bytes = new Uint8Array(text.length)
  for (let i = 0; i < text.length; i += 1) bytes[i] = text.charCodeAt(i)
  return bytes
}

function download(file: SavedFile): void {
  const address = URL.createObjectURL(new Blob([bytesOf(file.base64)], { type: file.mediaType }))
  const link = document.createElement('a')
  link.href = address
  link.download = file.fileName
  link.click()
  // The browser reads the address after this turn; ten seconds are ample for a file already in memory.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}

/**
 * Hands a file to the user: the program's own window asks where to save it, a browser downloads it.
 * @returns a sentence on what happened, for the live region
 */
export async function keep(file: SavedFile): Promise<string> {
  if (!inOwnWindow()) {
    download(file)
    return `${file.fileName} went to the browser's downloads.`
  }
  const kept = await call('files.save', file)
  if (!kept.ok) return kept.problems.map((problem) => problem.sentence).join(' ')
  return kept.value.saved ? `${file.fileName} is saved.` : 'Nothing was saved.'
}
