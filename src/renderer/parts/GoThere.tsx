import { Link, useParams } from 'wouter'
import type { FindingText } from '../../shared/report/document.ts'
import { geometryAddress, surveyAddress } from './desk/Desk.tsx'

/** Places of the build file that the geometry screen has fields for. */
const GEOMETRY = ['axle', 'geometry', 'limits']

/** From a finding to the field that it asks for; nothing where nothing is to be done, there is no such field, or no build is shown. */
export function GoThere({ finding }: { readonly finding: FindingText }) {
  const { id } = useParams<{ readonly id?: string }>()
  const [room] = finding.about
  if (id === undefined || room === undefined || finding.severity === 'noted') return null
  const measure = finding.code === 'measure'
  if (room === 'survey') {
    return (
      <Link href={surveyAddress(id)} className="go-there">
        {measure ? 'Enter it in the survey' : 'To the survey'}
      </Link>
    )
  }
  if (!GEOMETRY.includes(String(room))) return null
  return (
    <Link href={geometryAddress(id, finding.about.join('.'))} className="go-there">
      {measure ? 'Enter it' : 'To its field'}
      <span className="unseen">: {finding.title}</span>
    </Link>
  )
}
