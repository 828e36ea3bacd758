import type { OpenBuild } from '../../../shared/contract/contract.ts'
import type { Section } from '../../../shared/report/document.ts'
import { FindingDetail } from '../blocks/Finding.tsx'
import { NumberList } from '../blocks/NumberList.tsx'
import { keyed } from '../keyed.ts'
import { StateTag } from '../Mark.tsx'
import { findingsBeside, numbersBeside } from '../sections.ts'
import { NextCard } from './NextCard.tsx'

/** Beside the sheet: the one thing to do next, what was found where the reader is, and the numbers. */
export function Panel({ open, shown }: { readonly open: OpenBuild; readonly shown: Section | undefined }) {
  const beside = shown === undefined ? [] : findingsBeside(shown, open.findings)
  const numbers = shown === undefined ? [] : numbersBeside(shown, open.document.sections, open.numbers)
  return (
    <aside className="panel" aria-label="Next step, findings and numbers">
      <NextCard findings={open.findings} />
      <div className="panel-rest">
        {beside.length > 0 && (
          <section aria-labelledby="beside">
            <h2 id="beside">Findings here</h2>
            <ul className="beside">
              {keyed(beside, (finding) => finding.title).map(({ key, item: finding }) => (
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
          </section>
        )}
        {open.numbers.length === 0 && <p className="quiet">No number can be worked out yet: too little is measured.</p>}
        {numbers.length > 0 && (
          <section aria-labelledby="numbers">
            <h2 id="numbers">Numbers</h2>
            <p className="quiet">Any number opens its working.</p>
            <NumberList items={numbers} />
          </section>
        )}
      </div>
    </aside>
  )
}
