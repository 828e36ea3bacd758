import { memo } from 'react'
import { Link } from 'wouter'
import type { OpenBuild, ProcedureOutput } from '../../../shared/contract/contract.ts'
import { useBuildFile } from '../../app/build-file.ts'
import { useBuild } from '../../app/queries.ts'
import { useSteering } from '../../app/steering.ts'
import { useUnits } from '../../app/units.ts'
import { BlockView } from '../../parts/blocks/BlockView.tsx'
import { Finding } from '../../parts/blocks/Finding.tsx'
import { Arrived } from '../../parts/desk/Arrived.tsx'
import { Desk, geometryAddress, surveyAddress } from '../../parts/desk/Desk.tsx'
import { keyed } from '../../parts/keyed.ts'
import { BumpBench } from '../../parts/planview/BumpBench.tsx'
import { Picture } from '../../parts/planview/Picture.tsx'
import { SteeringBench } from '../../parts/planview/SteeringBench.tsx'
import { WorkingProvider } from '../../parts/working/WorkingProvider.tsx'

type Steering = Extract<ProcedureOutput<'plan.steering'>, { ok: true }>['value']

/** What stops the wheels: the steering moved by hand, the ledger beside it, the strokes that would do, and bump steer. */
export function Limits({ id }: { readonly id: string }) {
  const read = useBuildFile(id)
  const [units, setUnits] = useUnits(read.data?.ok === true ? read.data.value.file.build.units : 'inch')
  const build = useBuild(id, units)
  const open = build.data?.ok === true ? build.data.value : undefined
  const steering = useSteering(id, open?.summary.revision)
  return (
    <Desk
      title="What stops the wheels"
      {...(open === undefined ? {} : { below: `${open.summary.name} · revision ${open.summary.revision}` })}
      here="limits"
      slim
      build={{ id, name: open?.summary.name ?? 'Build' }}
      units={units}
      onUnits={setUnits}
    >
      <Arrived of={build} what="Opening the build">
        {(value) => (
          <WorkingProvider numbers={value.numbers} workings={value.workings}>
            <Arrived of={steering} what="Working out the steering">
              {(known) => <Shown open={value} steering={known} />}
            </Arrived>
          </WorkingProvider>
        )}
      </Arrived>
    </Desk>
  )
}

function Shown({ open, steering }: { readonly open: OpenBuild; readonly steering: Steering }) {
  const { linkage, limits, bumpSteer } = steering
  const { units, summary } = open
  return (
    <div className="work limits-page">
      {linkage === null ? (
        <section className="trouble" aria-label="Not drawn yet">
          <p>Too little of the steering is measured to draw it.</p>
          <p>
            <Link href={geometryAddress(summary.id)} className="button button-strong">
              Enter where the joints are
            </Link>
          </p>
        </section>
      ) : (
        <SteeringBench linkage={linkage} limits={limits} units={units} of={summary.name} />
      )}
      <Judged open={open} />
      {linkage !== null && bumpSteer !== null && <BumpBench linkage={linkage} plan={bumpSteer} units={units} of={summary.name} />}
      <p className="tools">
        <Link href={surveyAddress(summary.id)} className="button">
          Travel survey
        </Link>
        <Link href={geometryAddress(summary.id)} className="button">
          Geometry and limits
        </Link>
      </p>
    </div>
  )
}

/** Findings that belong to this screen: what they are about, or rest on. */
const ABOUT = ['limits', 'geometry', 'axle']

/** What the plan says of it all; stands still while the picture moves. */
const Judged = memo(function Judged({ open }: { readonly open: OpenBuild }) {
  const findings = open.findings.filter(
    (finding) => ABOUT.includes(String(finding.about[0])) || finding.numbers.some((id) => id.startsWith('ram-space.')),
  )
  const blocks = open.document.sections.find((section) => section.id === 'limits')?.blocks ?? []
  const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block] : []))
  const numbers = blocks.filter((block) => block.kind === 'numbers')
  const [ofLimits, ...others] = tables
  return (
    <>
      {findings.length > 0 && (
        <section aria-labelledby="judged" className="limits-findings">
          <h2 id="judged">What was found, and what puts it right</h2>
          <ul className="findings">
            {keyed(findings, (finding) => finding.title).map(({ key, item }) => (
              <li key={key}>
                <Finding finding={item} />
              </li>
            ))}
          </ul>
        </section>
      )}
      <section aria-labelledby="order" className="limits-order">
        <h2 id="order">Order, strokes and numbers</h2>
        {blocks.map((block) =>
          block.kind === 'figure' && block.drawing.id === 'limits-ledger' ? (
            <Picture key={block.drawing.id} drawing={block.drawing} caption={block.caption} of={open.summary.name} table={ofLimits} />
          ) : null,
        )}
        {keyed(others, (table) => table.caption).map(({ key, item }) => (
          <BlockView key={key} block={item} />
        ))}
        {keyed(numbers, () => 'numbers').map(({ key, item }) => (
          <BlockView key={key} block={item} />
        ))}
      </section>
    </>
  )
})
