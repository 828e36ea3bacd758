import type { OpenBuild } from '../../../shared/contract/contract.ts'
import type { FindingText } from '../../../shared/report/document.ts'
import { FindingDetail } from '../../parts/blocks/Finding.tsx'
import { NumberList } from '../../parts/blocks/NumberList.tsx'
import { keyed } from '../../parts/keyed.ts'
import { StateTag } from '../../parts/Mark.tsx'
import { Picture } from '../../parts/planview/Picture.tsx'

/** In the order in which a person asks for them. */
const SHOWN = ['survey.left', 'survey.right', 'survey.total', 'survey.off-centre', 'survey.stroke'] as const
const SHORT: Readonly<Record<string, string>> = {
  'survey.left': 'Left',
  'survey.right': 'Right',
  'survey.total': 'Total',
  'survey.off-centre': 'Off centre',
  'survey.stroke': 'Stroke wanted',
}

/** Findings about the survey. */
export const surveyFindings = (open: OpenBuild | undefined): readonly FindingText[] =>
  open?.findings.filter((finding) => finding.about[0] === 'survey') ?? []

const numbersOf = (open: OpenBuild | undefined) => SHOWN.flatMap((id) => open?.numbers.find((number) => number.id === id) ?? [])

/** The result so far on one line, read out when it changes. */
export function RunningLine({ open }: { readonly open: OpenBuild | undefined }) {
  const numbers = numbersOf(open)
  const wrong = surveyFindings(open).find((finding) => finding.severity === 'stops')
  return (
    <div className="running-line" role="status">
      {wrong !== undefined ? (
        <StateTag state="stops" text={wrong.title} />
      ) : numbers.length === 0 ? (
        <span className="quiet">The result comes with the third mark.</span>
      ) : (
        <dl>
          {numbers.map(({ id, value }) => (
            <div key={id} data-number={id}>
              <dt>{SHORT[id]}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
    </div>
  )
}

/** The marks to scale, the numbers with how sure they are, and what was found. */
export function Result({ open }: { readonly open: OpenBuild | undefined }) {
  const blocks = open?.document.sections.find((section) => section.id === 'survey')?.blocks ?? []
  const table = blocks.flatMap((block) => (block.kind === 'table' ? [block] : []))[0]
  const findings = surveyFindings(open)
  return (
    <div className="running">
      {blocks.map((block) =>
        block.kind === 'figure' ? (
          <Picture key={block.drawing.id} drawing={block.drawing} caption={block.caption} of={open?.summary.name ?? ''} table={table} />
        ) : null,
      )}
      <NumberList items={numbersOf(open)} />
      {findings.length > 0 && (
        <ul className="beside" aria-label="Findings on the survey">
          {keyed(findings, (finding) => finding.title).map(({ key, item: finding }) => (
            <li key={key}>
              <details>
                <summary>
                  <StateTag state={finding.severity} />
                  <span>{finding.title}</span>
                </summary>
                <FindingDetail finding={finding} />
              </details>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
