import { Link } from 'wouter'
import type { BuildSummary } from '../../../shared/contract/contract.ts'
import { StateTag } from '../Mark.tsx'
import { Scroller } from '../Scroller.tsx'

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' })

/** The day a build was changed; what cannot be read as a day is shown as it came. */
function dayOf(changedAt: string): string {
  const date = new Date(changedAt)
  return Number.isNaN(date.getTime()) ? changedAt : DAY.format(date)
}

/** How a build stands, in shapes and words. */
function Standing({ build }: { readonly build: BuildSummary }) {
  if (build.stops === 0 && build.looks === 0) return <StateTag state="good" text="nothing found that stops it" />
  return (
    <span className="standing">
      {build.stops > 0 && <StateTag state="stops" text={`${build.stops} ${build.stops === 1 ? 'stops' : 'stop'} it`} />}
      {build.looks > 0 && <StateTag state="look" text={`${build.looks} to look at`} />}
    </span>
  )
}

/** The builds there are; the whole row opens one. */
export function BuildList({ builds }: { readonly builds: readonly BuildSummary[] }) {
  return (
    <Scroller label="Builds" className="builds">
      <table>
        <thead>
          <tr>
            <th scope="col">Build</th>
            <th scope="col">Vehicle</th>
            <th scope="col">Revision</th>
            <th scope="col">How it stands</th>
            <th scope="col">Changed</th>
          </tr>
        </thead>
        <tbody>
          {builds.map((build) => (
            <tr key={build.id}>
              <th scope="row">
                <Link href={`/build/${encodeURIComponent(build.id)}`} className="builds-open">
                  {build.name}
                </Link>
              </th>
              <td>{build.vehicle}</td>
              <td className="builds-revision">{build.revision}</td>
              <td>
                <Standing build={build} />
              </td>
              <td>{dayOf(build.changedAt)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  )
}
