import { Link } from 'wouter'
import type { Section } from '../../../shared/report/document.ts'

/** The way on at the foot of a section, so that the whole report can be read without going back to the rail. */
export function Stepper(props: { readonly id: string; readonly sections: readonly Section[]; readonly shown: Section }) {
  const at = props.sections.indexOf(props.shown)
  const before = props.sections[at - 1]
  const after = props.sections[at + 1]
  const address = (section: Section) => `/build/${encodeURIComponent(props.id)}/${section.id}`
  return (
    <nav className="stepper" aria-label="Next and previous section">
      {before !== undefined && (
        <Link href={address(before)} rel="prev">
          ← {before.heading}
        </Link>
      )}
      {after !== undefined && (
        <Link href={address(after)} rel="next" className="stepper-next">
          {after.heading} →
        </Link>
      )}
    </nav>
  )
}
