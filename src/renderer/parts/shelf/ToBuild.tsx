import { useQueryClient } from '@tanstack/react-query'
import { Button } from 'react-aria-components'
import type { BuildSummary } from '../../../shared/contract/contract.ts'
import { call } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'
import { useBuilds } from '../../app/queries.ts'
import { useDoing } from '../desk/useDoing.ts'
import { ProblemList } from '../ProblemList.tsx'
import { Sheet } from '../Sheet.tsx'
import { Waiting } from '../Waiting.tsx'

/** Copies parts of the shelf into one of the builds. */
export function ToBuild(props: { readonly ids: readonly string[]; readonly names: string; readonly onClose: () => void }) {
  const builds = useBuilds()
  const { busy, run } = useDoing()
  const tell = useNotice()
  const client = useQueryClient()
  const add = async (build: BuildSummary) => {
    const done = await run(() => call('shelf.toBuild', { ids: [...props.ids], build: build.id, basedOn: build.revision }))
    await client.invalidateQueries()
    if (done === null) return
    tell(`${props.names} went into ${build.name}.`)
    props.onClose()
  }
  return (
    <Sheet title="Add to a build" onClose={props.onClose}>
      <p>{props.names}: into which build? The part stays on the shelf; the build gets a copy.</p>
      {builds.isPending && <Waiting what="Reading the builds" />}
      {builds.data?.ok === false && <ProblemList problems={builds.data.problems} />}
      {builds.data?.ok === true &&
        (builds.data.value.length === 0 ? (
          <p>There is no build yet. Begin one on the first screen.</p>
        ) : (
          <ul className="choices">
            {builds.data.value.map((build) => (
              <li key={build.id}>
                <Button className="choice" isDisabled={busy} onPress={() => void add(build)}>
                  <span>{build.name}</span>
                  <span className="quiet">{build.vehicle}</span>
                </Button>
              </li>
            ))}
          </ul>
        ))}
      <div className="sheet-foot">
        <Button className="button" onPress={props.onClose}>
          Close
        </Button>
      </div>
    </Sheet>
  )
}
