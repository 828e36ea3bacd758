import type { IdentifyWords } from '../../../shared/report/text/identify.ts'
import { useNotice } from '../../app/notice.tsx'
import { carry } from '../editor/carried.ts'
import { keyed } from '../keyed.ts'
import { StateTag } from '../Mark.tsx'

/** What it can be, the likeliest first, and the one measurement that would tell the likeliest apart. */
export function Answer({ words }: { readonly words: IdentifyWords }) {
  const tell = useNotice()
  const use = (end: string) => {
    void carry(end).then(() => tell(`“${end}” is copied. Any field “How it joins” offers it.`))
  }
  return (
    <>
      <p className="answer">{words.answer}</p>
      {words.further !== null && (
        <section className="further" aria-labelledby="further">
          <h3 id="further">Measure one thing more</h3>
          <p className="strong">{words.further.measure}</p>
          <ul className="plain">
            {keyed(words.further.expected, (line) => line).map(({ key, item }) => (
              <li key={key}>{item}</li>
            ))}
          </ul>
        </section>
      )}
      <ol className="candidates">
        {keyed(words.candidates, (candidate) => candidate.name).map(({ key, item: candidate }) => (
          <li key={key} className="can-be">
            <h3>
              <span className="quiet">{candidate.rank}.</span> {candidate.name} <StateTag state={candidate.state} text={candidate.word} />
            </h3>
            <ul className="plain quiet">
              {candidate.says.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            {candidate.ends.length > 0 && (
              <div className="uses">
                <span>Use as an end:</span>
                {candidate.ends.map((end) => (
                  <button key={end} type="button" className="button button-small" onClick={() => use(end)}>
                    {end}
                  </button>
                ))}
              </div>
            )}
          </li>
        ))}
      </ol>
      <details className="quiet">
        <summary>The readings as they were taken</summary>
        <ul className="plain">
          {words.readings.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    </>
  )
}
