import { useCallback, useState } from 'react'
import { useShortcut } from './keys.ts'
import { useNotice } from './notice.tsx'
import type { Units } from './queries.ts'

const KEY = 'steerwright-units'

/** The units chosen last on a screen that belongs to no build; inch where none were, or where the browser keeps nothing. */
function readUnits(): Units {
  try {
    return localStorage.getItem(KEY) === 'metric' ? 'metric' : 'inch'
  } catch {
    return 'inch'
  }
}

function keepUnits(units: Units): void {
  try {
    localStorage.setItem(KEY, units)
  } catch (error) {
    console.info('The units are not kept:', error)
  }
}

/**
 * The units a screen shows first, changed by its switch or by Ctrl+U.
 * @param own the units of the build shown; absent on screens of no build, which keep the last choice
 */
export function useUnits(own?: Units): readonly [units: Units, choose: (units: Units) => void] {
  const [chosen, setChosen] = useState<Units | null>(own === undefined ? readUnits() : null)
  const tell = useNotice()
  const units = chosen ?? own ?? 'inch'
  const choose = useCallback(
    (next: Units) => {
      setChosen(next)
      if (own === undefined) keepUnits(next)
      tell(next === 'inch' ? 'Numbers are in inch units.' : 'Numbers are in metric units.')
    },
    [own, tell],
  )
  useShortcut(
    'u',
    useCallback(() => choose(units === 'inch' ? 'metric' : 'inch'), [choose, units]),
  )
  return [units, choose]
}
