import { useState } from 'react'
import { Button } from 'react-aria-components'
import type { CsvAnswer } from '../../../shared/contract/contract.ts'
import { call } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'
import { useDoing } from '../desk/useDoing.ts'
import { keyed } from '../keyed.ts'
import { Scroller } from '../Scroller.tsx'
import { Sheet } from '../Sheet.tsx'
import { useForgetShelf } from './ask.ts'

export interface Table {
  readonly from: string
  readonly text: string
  /** what taking it in would do, tried without doing it */
  readonly tried: CsvAnswer
}

const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`

/** A table of parts before it is taken in: what it would add and change, or every line that is wrong. */
export function CsvImport({ table, onClose }: { readonly table: Table; readonly onClose: () => void }) {
  const { tried } = table
  const { busy, run } = useDoing()
  const [answer, setAnswer] = useState(tried)
  const tell = useNotice()
  const forget = useForgetShelf()
  const nothing = answer.added + answer.changed === 0
  const take = async () => {
    const done = await run(() => call('shelf.importCsv', { text: table.text, dryRun: false }))
    if (done === null) return
    if (!done.imported) {
      setAnswer(done)
      return
    }
    await forget()
    tell(`${table.from} is in: ${many(done.added, 'part', 'parts')} added, ${done.changed} changed.`)
    onClose()
  }
  return (
    <Sheet title={answer.problemCount > 0 ? 'Not taken in' : 'Take this table in?'} wide onClose={onClose}>
      {answer.problemCount > 0 ? (
        <>
          <p>
            <strong>{table.from}</strong> has {many(answer.problemCount, 'thing', 'things')} to put right. Nothing on the shelf was changed.
          </p>
          <Scroller className="csv-rows" label="What is to be put right">
            <table className="grid">
              <thead>
                <tr>
                  <th scope="col">Line</th>
                  <th scope="col">Column</th>
                  <th scope="col">What is wrong</th>
                </tr>
              </thead>
              <tbody>
                {keyed(answer.problems, (one) => `${one.row} ${one.place}`).map(({ key, item: one }) => (
                  <tr key={key}>
                    <th scope="row">{one.row}</th>
                    <td>{one.place}</td>
                    <td>{one.sentence}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroller>
          {answer.problems.length < answer.problemCount && <p className="quiet">The first {answer.problems.length} are shown.</p>}
        </>
      ) : (
        <>
          <p>
            <strong>{table.from}</strong> would add {many(answer.added, 'part', 'parts')} and change {answer.changed}; {answer.unchanged}{' '}
            are on the shelf just so.
          </p>
          {answer.changes.length > 0 && (
            <Scroller className="csv-rows" label="What would change">
              <table className="grid">
                <thead>
                  <tr>
                    <th scope="col">Line</th>
                    <th scope="col">Part</th>
                    <th scope="col">Id</th>
                    <th scope="col">Would be</th>
                  </tr>
                </thead>
                <tbody>
                  {answer.changes.map((one) => (
                    <tr key={one.row}>
                      <th scope="row">{one.row}</th>
                      <td>{one.name}</td>
                      <td>
                        <code>{one.id}</code>
                      </td>
                      <td>{one.what}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </Scroller>
          )}
          {answer.changes.length < answer.added + answer.changed && <p className="quiet">The first {answer.changes.length} are shown.</p>}
        </>
      )}
      <div className="sheet-foot">
        {answer.problemCount === 0 && !nothing && (
          <Button className="button button-strong" isDisabled={busy} onPress={() => void take()}>
            {busy ? 'Taking it in…' : 'Take it in'}
          </Button>
        )}
        <Button className="button" onPress={onClose}>
          Close
        </Button>
      </div>
    </Sheet>
  )
}
