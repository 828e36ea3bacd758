import { Link } from 'wouter'
import type { Section } from '../../../shared/report/document.ts'
import { geometryAddress, jointsAddress, limitsAddress, partsAddress, surveyAddress } from '../desk/Desk.tsx'
import { Mark } from '../Mark.tsx'
import { standing } from '../sections.ts'

/** The sections of the report in order, each with how it stands. */
export function Rail(props: { readonly id: string; readonly sections: readonly Section[]; readonly shown: string | null }) {
  return (
    <div className="rail">
      <nav className="rail-work" aria-label="Change the build">
        <span className="quiet">Change</span>
        <Link href={partsAddress(props.id)} className="place">
          Parts
        </Link>
        <Link href={jointsAddress(props.id)} className="place">
          Joints
        </Link>
        <Link href={surveyAddress(props.id)} className="place">
          Survey
        </Link>
        <Link href={geometryAddress(props.id)} className="place">
          Geometry
        </Link>
        <Link href={limitsAddress(props.id)} className="place">
          Limits
        </Link>
      </nav>
      <nav aria-label="Sections">
        <ol>
          {props.sections.map((section) => {
            const { state, note } = standing(section)
            return (
              <li key={section.id}>
                <Link
                  href={`/build/${encodeURIComponent(props.id)}/${section.id}`}
                  aria-current={section.id === props.shown ? 'page' : undefined}
                >
                  <Mark state={state} />
                  <span className="rail-text">
                    <span className="rail-heading">{section.heading}</span>
                    {note !== '' && <span className="rail-note">{note}</span>}
                  </span>
                </Link>
              </li>
            )
          })}
        </ol>
      </nav>
    </div>
  )
}
