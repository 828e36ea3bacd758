import { keepPreviousData, type QueryClient, useQueries, useQueryClient } from '@tanstack/react-query'
import { useCallback, useMemo } from 'react'
import type { ProcedureInput, ShelfRow } from '../../../shared/contract/contract.ts'
import { call } from '../../app/client.ts'

/** What is looked for, and in which order it is shown. */
export type Ask = Omit<ProcedureInput<'shelf.search'>, 'offset' | 'limit'>

/** Rows fetched at a time. */
export const PAGE = 100

const pageQuery = (ask: Ask, page: number) => ({
  queryKey: ['shelf', ask, page] as const,
  queryFn: () => call('shelf.search', { ...ask, offset: page * PAGE, limit: PAGE }),
  placeholderData: keepPreviousData,
})

export interface Pages {
  /** null until the first answer */
  readonly total: number | null
  readonly refused: string | null
  readonly fetching: boolean
  /** the row at a place; undefined while it is on its way */
  readonly rowAt: (at: number) => ShelfRow | undefined
}

/** The pages of the shelf that rows `from` to `to` and row `also` lie on. The first page is always there: it says how many there are. */
export function usePages(ask: Ask, from: number, to: number, also = 0): Pages {
  const pages = useMemo(() => {
    const first = Math.floor(from / PAGE)
    const last = Math.floor(Math.max(from, to) / PAGE)
    const seen = Array.from({ length: last - first + 1 }, (_, at) => first + at)
    return [...new Set([0, Math.floor(also / PAGE), ...seen])]
  }, [from, to, also])
  const answers = useQueries({ queries: pages.map((page) => pageQuery(ask, page)) })
  const heads = answers.flatMap(({ data }) => (data?.ok === true ? [data.value.total] : []))
  const wrong = answers.flatMap(({ data, error }) =>
    data?.ok === false ? data.problems.map((problem) => problem.sentence) : error === null ? [] : [error.message],
  )
  const rowAt = (at: number): ShelfRow | undefined => {
    const answer = answers[pages.indexOf(Math.floor(at / PAGE))]
    return answer?.data?.ok === true ? answer.data.value.parts[at % PAGE] : undefined
  }
  return { total: heads[0] ?? null, refused: wrong[0] ?? null, fetching: answers.some((answer) => answer.isPlaceholderData), rowAt }
}

export const forgetShelf = (client: QueryClient): Promise<void> => client.invalidateQueries({ queryKey: ['shelf'] })

/** After the shelf changed: what is shown of it is read anew. */
export function useForgetShelf(): () => Promise<void> {
  const client = useQueryClient()
  return useCallback(async () => {
    await Promise.all([forgetShelf(client), client.invalidateQueries({ queryKey: ['shelf part'] })])
  }, [client])
}
