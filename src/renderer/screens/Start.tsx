import { useState } from 'react'
import { Link } from 'wouter'
import { messageOf } from '../app/client.ts'
import { usePageTitle } from '../app/focus.ts'
import { useAbout, useBuilds } from '../app/queries.ts'
import { useImport } from '../parts/import/ImportProvider.tsx'
import { ProblemList } from '../parts/ProblemList.tsx'
import { SkipLink } from '../parts/SkipLink.tsx'
import { BuildList } from '../parts/start/BuildList.tsx'
import { DemoOffer } from '../parts/start/DemoOffer.tsx'
import { Foot } from '../parts/start/Foot.tsx'
import { NewBuild } from '../parts/start/NewBuild.tsx'
import { SafetyNote } from '../parts/start/SafetyNote.tsx'
import { Welcome } from '../parts/start/Welcome.tsx'
import { Waiting } from '../parts/Waiting.tsx'

/** The first screen: the builds there are, or what the program is for and a build to try it on. */
export function Start() {
  usePageTitle('Builds')
  const about = useAbout()
  const builds = useBuilds()
  const { pick, reading } = useImport()
  const [creating, setCreating] = useState(false)
  const empty = builds.data?.ok === true && builds.data.value.length === 0
  return (
    <div className="start">
      <SkipLink to="builds">Skip to the builds</SkipLink>
      <header className="start-head">
        <h1>Steerwright</h1>
        <p>Steering upgrades on solid front axles: measured, checked, planned and recorded.</p>
        <nav className="places" aria-label="Places">
          <Link href="/shelf" className="place">
            Shelf
          </Link>
          <Link href="/identify" className="place">
            What is this?
          </Link>
        </nav>
      </header>
      <main id="builds" tabIndex={-1} className="start-main">
        {about.data?.database.ok === false && <DatabaseTrouble problems={about.data.database.problems} folder={about.data.dataFolder} />}
        {empty && <Welcome />}
        <div className="start-bar">
          <h2>{empty ? 'Begin' : 'Builds'}</h2>
          <button type="button" className="button" aria-haspopup="dialog" onClick={() => setCreating(true)}>
            New build…
          </button>
          <button type="button" className={empty ? 'button' : 'button button-strong'} onClick={pick} aria-disabled={reading}>
            {reading ? 'Reading…' : 'Import a build file…'}
          </button>
          <p className="quiet">or drop it on this window, or paste its text.</p>
        </div>
        <BuildsShown builds={builds} />
        {builds.data?.ok === true && <DemoOffer quiet={!empty} />}
      </main>
      <SafetyNote />
      {creating && <NewBuild onClose={() => setCreating(false)} />}
      <Foot about={about.data} />
    </div>
  )
}

function BuildsShown({ builds }: { readonly builds: ReturnType<typeof useBuilds> }) {
  if (builds.isPending) return <Waiting what="Reading the builds" />
  if (builds.isError) {
    return (
      <div className="trouble" role="alert">
        <p>{messageOf(builds.error)}</p>
        <button type="button" className="button" onClick={() => void builds.refetch()}>
          Try again
        </button>
      </div>
    )
  }
  if (!builds.data.ok) return <ProblemList problems={builds.data.problems} />
  return builds.data.value.length === 0 ? null : <BuildList builds={builds.data.value} />
}

function DatabaseTrouble(props: { readonly problems: Parameters<typeof ProblemList>[0]['problems']; readonly folder: string }) {
  return (
    <section className="trouble" role="alert" aria-labelledby="database-trouble">
      <h2 id="database-trouble">The builds cannot be opened</h2>
      <ProblemList problems={props.problems} />
      <p className="quiet">
        Data folder: <code>{props.folder}</code>
      </p>
    </section>
  )
}
