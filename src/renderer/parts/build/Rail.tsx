import { Link } from 'wouter'
import type { Section } from '../../../shared/report/document.ts'
import { Mark } from '../Mark.tsx'
import { standing } from '../sections.ts'

/** The sections of the report in order, each with how it stands. */
export function Rail(props: { readonly id: string; readonly sections: readonly Section[]; readonly shown: string | null }) {
  return (
    <nav className="rail" aria-label="Sections">
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
  )
}
