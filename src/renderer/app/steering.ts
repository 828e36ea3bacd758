import { useQuery } from '@tanstack/react-query'
import { call } from './client.ts'

/** The steering of a build as numbers; asked for anew for each revision. */
export const useSteering = (id: string, revision: number | undefined) =>
  useQuery({
    queryKey: ['build', id, 'steering', revision],
    queryFn: () => call('plan.steering', { id }),
    enabled: revision !== undefined,
  })
