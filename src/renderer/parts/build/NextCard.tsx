import type { FindingText } from '../../../shared/report/document.ts'
import { GoThere } from '../GoThere.tsx'
import { StateTag } from '../Mark.tsx'

/** The next thing to do: the first finding that stops the build, else the first to look at, else that the way is free. */
export function NextCard({ findings }: { readonly findings: readonly FindingText[] }) {
  const next = findings.find((finding) => finding.severity === 'stops') ?? findings.find((finding) => finding.severity === 'look')
  return (
    <section className={`next state-${next?.severity ?? 'good'}`} aria-labelledby="next">
      <h2 id="next">Next</h2>
      {next === undefined ? (
        <p>
          <StateTag state="good" text="nothing found that stops it" /> That is no proof: what was not measured or entered was not checked.
          Read what is for information, then print the sheet.
        </p>
      ) : (
        <>
          <p className="next-title">
            <StateTag state={next.severity} /> {next.title}
          </p>
          {next.aboutText !== '' && <p className="quiet">{next.aboutText}</p>}
          <p>{next.why}</p>
          <p className="next-todo">
            {next.todo} <GoThere finding={next} />
          </p>
        </>
      )}
    </section>
  )
}
