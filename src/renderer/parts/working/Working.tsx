import type { MovedText, WorkingText } from '../../../shared/report/document.ts'
import { BLOCK_WORDS } from '../../../shared/report/words.ts'
import { keyed } from '../keyed.ts'
import { Scroller } from '../Scroller.tsx'
import { Formula } from './Formula.tsx'
import { useNumbers } from './WorkingProvider.tsx'

/** A number written out as a hand calculation: formula, formula with the values in it, result, where each value is from. */
export function Working({ working }: { readonly working: WorkingText }) {
  const numbers = useNumbers()
  return (
    <div className="working">
      <p className="working-title">{working.title}</p>
      <Scroller label={`Calculation: ${working.label}`} className="calculation">
        <p className="equation">
          <Formula text={working.equation} />
        </p>
        <p className="equation">
          <Formula text={working.withValues} />
        </p>
        <p className="equation equation-result">
          <Formula text={working.result} />
        </p>
      </Scroller>
      {working.inputs.length > 0 && (
        <Scroller label={`Values of ${working.label}`}>
          <table className="grid">
            <caption>Where the values come from</caption>
            <thead>
              <tr>
                <th scope="col">Symbol</th>
                <th scope="col">Meaning</th>
                <th scope="col">Value</th>
                <th scope="col">From</th>
              </tr>
            </thead>
            <tbody>
              {working.inputs.map((input) => (
                <tr key={input.symbol}>
                  <th scope="row" className="symbol">
                    <Formula text={input.symbol} />
                  </th>
                  <td>{input.meaning}</td>
                  <td className="value">{input.value}</td>
                  <td>
                    {input.opens !== null && numbers.has(input.opens) ? <OpenButton id={input.opens} text={input.from} /> : input.from}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
      {working.movedBy !== undefined && <MovedBy label={working.label} inputs={working.movedBy} />}
      {working.remark !== null && <p className="working-remark">{working.remark}</p>}
      <p className="working-source">
        <span className="label">Source</span> {working.source}
      </p>
    </div>
  )
}

/** The inputs that move a margin most, with what a tenth more and a tenth less of each does to it. */
function MovedBy({ label, inputs }: { readonly label: string; readonly inputs: readonly MovedText[] }) {
  const [input, ...figures] = BLOCK_WORDS.movedColumns
  return (
    <Scroller label={`${BLOCK_WORDS.movedBy}: ${label}`}>
      <table className="grid">
        <caption>{BLOCK_WORDS.movedBy}</caption>
        <thead>
          <tr>
            <th scope="col">{input}</th>
            {figures.map((title) => (
              <th key={title} scope="col" className="align-right">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {keyed(inputs, ({ name }) => name).map(({ key, item }) => (
            <tr key={key}>
              <th scope="row">{item.name}</th>
              <td className="align-right value">{item.value}</td>
              <td className="align-right value">{item.greater}</td>
              <td className="align-right value">{item.smaller}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  )
}

function OpenButton({ id, text }: { readonly id: string; readonly text: string }) {
  const numbers = useNumbers()
  return (
    <button type="button" className="number-button" aria-haspopup="dialog" onClick={() => numbers.open(id)}>
      {text}
    </button>
  )
}
