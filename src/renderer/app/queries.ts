import { QueryClient, useQuery } from '@tanstack/react-query'
import type { OpenBuild } from '../../shared/contract/contract.ts'
import { call } from './client.ts'

export type Units = OpenBuild['units']

/** Nothing changes behind the window's back, so nothing is fetched twice unasked; a refusal is shown, not tried again. */
export const queryClient = new QueryClient({
  defaultOptions: { queries: { retry: false, staleTime: Number.POSITIVE_INFINITY, refetchOnWindowFocus: false } },
})

export const useAbout = () => useQuery({ queryKey: ['about'], queryFn: () => call('program.about', {}) })

export const useBuilds = () => useQuery({ queryKey: ['builds'], queryFn: () => call('builds.list', {}), refetchOnMount: 'always' })

/** A build's report in the units asked for (null: the build's own). While other units come in, the report stays as it was. */
export const useBuild = (id: string, units: Units | null) =>
  useQuery({
    queryKey: ['build', id, units],
    queryFn: () => call('builds.open', units === null ? { id } : { id, units }),
    placeholderData: (previous, query) => (query?.queryKey[1] === id ? previous : undefined),
  })

/** After a build came in or was replaced: everything shown is read anew. */
export const forgetAll = () => queryClient.invalidateQueries()
