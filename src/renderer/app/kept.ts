import { useCallback, useSyncExternalStore } from 'react'
import { inOwnWindow } from './client.ts'

const KEY = 'steerwright-kept'

/** As with drafts of parts: only the program's own window finds the same store again at its next start. */
const store = (): Storage => (inOwnWindow() ? localStorage : sessionStorage)

let all: ReadonlyMap<string, unknown> | null = null
const listeners = new Set<() => void>()

function read(): ReadonlyMap<string, unknown> {
  try {
    return new Map(JSON.parse(store().getItem(KEY) ?? '[]') as [string, unknown][])
  } catch (error) {
    console.info('What was typed earlier cannot be read:', error)
    return new Map()
  }
}

const current = (): ReadonlyMap<string, unknown> => {
  all ??= read()
  return all
}

function put(key: string, value: unknown): void {
  const next = new Map(current())
  if (value === null) next.delete(key)
  else next.set(key, value)
  all = next
  for (const listener of listeners) listener()
  try {
    store().setItem(KEY, JSON.stringify([...next]))
  } catch (error) {
    console.info('What is typed lives only as long as this page:', error)
  }
}

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** What was kept at a place, as it is this moment: a write that took a while asks whether more was typed meanwhile. */
export const keptNow = <T>(key: string): T | undefined => current().get(key) as T | undefined
export const keepNow = <T>(key: string, value: T | null): void => put(key, value)

/** Something typed and not in the database yet, by place: going elsewhere or loading the page anew loses none of it (null: done with). */
export function useKept<T>(key: string): readonly [T | undefined, (value: T | null) => void] {
  const kept = useSyncExternalStore(subscribe, current).get(key) as T | undefined
  return [kept, useCallback((value: T | null) => put(key, value), [key])]
}

/** A browser asks before it closes a tab in which something typed is not saved. */
export function guardKept(): void {
  if (inOwnWindow()) return
  window.addEventListener('beforeunload', (event) => {
    if (current().size > 0) event.preventDefault()
  })
}
