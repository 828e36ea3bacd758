import { keepPreviousData, useQuery } from '@tanstack/react-query'
import type { BuildSource } from '../../shared/contract/contract.ts'
import type { PartFile } from '../../shared/model/part.ts'
import type { Dimension } from '../../shared/quantities/dimension.ts'
import { call } from './client.ts'
import { useSettled } from './later.ts'
import type { Units } from './queries.ts'

/*
 * Questions the window asks while somebody types. The answer to a text never changes, so each is asked once.
 */

/** A quantity in the units of both systems, or what is wrong with it; nothing while nothing is typed. */
export function useQuantity(typed: string, dimension: Dimension) {
  const settled = useSettled(typed.trim())
  return useQuery({
    queryKey: ['quantity', dimension, settled],
    queryFn: () => call('quantity.read', { typed: settled.slice(0, 80), dimension }),
    enabled: settled !== '',
  })
}

/** An end as it is understood, or why it is not. */
export function useEnd(typed: string, units: Units) {
  const settled = useSettled(typed.trim())
  return useQuery({
    queryKey: ['end', units, settled],
    queryFn: () => call('end.read', { typed: settled.slice(0, 160), units }),
    enabled: settled !== '',
    placeholderData: keepPreviousData,
  })
}

/** Everything wrong with a part, as it is typed. */
export function usePartCheck(part: PartFile, units: Units) {
  const settled = useSettled(JSON.stringify(part), 250)
  return useQuery({
    queryKey: ['part', units, settled],
    queryFn: () => call('part.check', { part: JSON.parse(settled) as PartFile, units }),
    placeholderData: keepPreviousData,
    gcTime: 10_000,
  })
}

/** The verdict on two ends as typed. */
export const useVerdict = (a: string, b: string, units: Units) =>
  useQuery({ queryKey: ['verdict', units, a, b], queryFn: () => call('fit.ends', { a, b, units }) })

/** The ends that may go on one end of a build, with the verdict on each, what fits first. */
export const useCandidates = (build: string, revision: number, end: string, units: Units) =>
  useQuery({
    queryKey: ['candidates', build, revision, end, units],
    queryFn: () => call('fit.candidates', { build: { id: build } satisfies BuildSource, end, units }),
  })
