import { type ReactNode, useCallback, useState } from 'react'
import { Link } from 'wouter'
import type { OpenBuild } from '../../shared/contract/contract.ts'
import { messageOf } from '../app/client.ts'
import { useFocusOnChange, usePageTitle } from '../app/focus.ts'
import { useShortcut } from '../app/keys.ts'
import { useNotice } from '../app/notice.tsx'
import { type Units, useBuild } from '../app/queries.ts'
import { BlockView } from '../parts/blocks/BlockView.tsx'
import { Panel } from '../parts/build/Panel.tsx'
import { Rail } from '../parts/build/Rail.tsx'
import { Stepper } from '../parts/build/Stepper.tsx'
import { TitleBar } from '../parts/build/TitleBar.tsx'
import { TitleBlock } from '../parts/build/TitleBlock.tsx'
import { keyed } from '../parts/keyed.ts'
import { ProblemList } from '../parts/ProblemList.tsx'
import { SkipLink } from '../parts/SkipLink.tsx'
import { Waiting } from '../parts/Waiting.tsx'
import { WorkingProvider } from '../parts/working/WorkingProvider.tsx'

/** One build: its report section by section, what to do next, and its numbers. */
export function Build({ id, section }: { readonly id: string; readonly section: string | null }) {
  const [units, setUnits] = useState<Units | null>(null)
  const build = useBuild(id, units)
  if (build.isPending)
    return (
      <Alone title="Opening">
        <Waiting what="Opening the build" />
      </Alone>
    )
  if (build.isError) {
    return (
      <Alone title="Not opened">
        <h1>The build does not open</h1>
        <p role="alert">{messageOf(build.error)}</p>
        <button type="button" className="button button-strong" onClick={() => void build.refetch()}>
          Try again
        </button>
      </Alone>
    )
  }
  if (!build.data.ok) {
    return (
      <Alone title="Not opened">
        <h1>The build does not open</h1>
        <ProblemList problems={build.data.problems} />
      </Alone>
    )
  }
  return <Opened open={build.data.value} section={section} onUnits={setUnits} />
}

/** A page with nothing on it but a message and the way back. */
function Alone({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  usePageTitle(title)
  return (
    <main className="lost">
      {children}
      <p>
        <Link href="/">All builds</Link>
      </p>
    </main>
  )
}

function Opened(props: { readonly open: OpenBuild; readonly section: string | null; readonly onUnits: (units: Units) => void }) {
  const { open, onUnits } = props
  const tell = useNotice()
  const sections = open.document.sections
  const shown = sections.find((section) => section.id === props.section) ?? sections[0]
  usePageTitle(shown === undefined ? open.summary.name : `${open.summary.name}: ${shown.heading}`)
  const heading = useFocusOnChange<HTMLHeadingElement>(shown?.id ?? '')

  const choose = useCallback(
    (units: Units) => {
      onUnits(units)
      tell(units === 'inch' ? 'Numbers are in inch units.' : 'Numbers are in metric units.')
    },
    [onUnits, tell],
  )
  useShortcut(
    'u',
    useCallback(() => choose(open.units === 'inch' ? 'metric' : 'inch'), [choose, open.units]),
  )

  return (
    <WorkingProvider numbers={open.numbers} workings={open.workings}>
      <div className="bench">
        <SkipLink to="sheet">Skip to the sheet</SkipLink>
        <TitleBar open={open} onUnits={choose} />
        <Rail id={open.summary.id} sections={sections} shown={shown?.id ?? null} />
        <main id="sheet" className="paper" tabIndex={-1}>
          {shown === undefined ? (
            <p>This build’s report has no sections.</p>
          ) : (
            <>
              <h2 ref={heading} tabIndex={-1} className="paper-heading">
                {shown.heading}
              </h2>
              {keyed(shown.blocks, (block) => `${shown.id} ${block.kind}`).map(({ key, item }) => (
                <BlockView key={key} block={item} />
              ))}
              <Stepper id={open.summary.id} sections={sections} shown={shown} />
              <TitleBlock document={open.document} section={shown.heading} units={open.units} />
            </>
          )}
        </main>
        <Panel open={open} shown={shown} />
      </div>
    </WorkingProvider>
  )
}
