import type { Problem, SavedFile } from '../../shared/contract/contract.ts'
import { problemSentence } from '../../shared/report/index.ts'
import type { Issue } from '../../shared/result/result.ts'

export type Refused = { readonly ok: false; readonly problems: Problem[] }
export type Answer<T> = { readonly ok: true; readonly value: T } | Refused

export const done = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })

export const refuse = (issues: readonly Issue[]): Refused => ({ ok: false, problems: issues.map(problemSentence) })

export const refused = (code: string, sentence: string): Refused => ({ ok: false, problems: [{ code, place: '', sentence }] })

export const savedFile = (name: string, mediaType: string, bytes: Uint8Array): SavedFile => ({
  fileName: name,
  mediaType,
  base64: Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('base64'),
})
