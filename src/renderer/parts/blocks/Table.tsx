import type { Block, DocumentCell, TableColumn } from '../../../shared/report/document.ts'
import { exhaustive } from '../../../shared/result/result.ts'
import { type Keyed, keyed } from '../keyed.ts'
import { StateTag } from '../Mark.tsx'
import { NumberButton } from '../NumberButton.tsx'
import { Scroller } from '../Scroller.tsx'

type TableBlock = Extract<Block, { kind: 'table' }>

/** Width of a column, rem, below which a table scrolls sideways instead of breaking its words to pieces. */
const NARROWEST = 5.5

/** A table of the report, its columns as wide as their weights say; a narrow window scrolls it sideways. */
export function Table({ block }: { readonly block: TableBlock }) {
  const whole = block.columns.reduce((sum, column) => sum + column.weight, 0)
  const columns = keyed(block.columns, (column) => column.title)
  return (
    <Scroller label={block.caption} className="table">
      <table className="grid" style={{ minWidth: `${block.columns.length * NARROWEST}rem` }}>
        <caption>{block.caption}</caption>
        <colgroup>
          {columns.map(({ key, item }) => (
            <col key={key} style={{ width: `${(100 * item.weight) / whole}%` }} />
          ))}
        </colgroup>
        {block.columns.some((column) => column.title !== '') && <Heads columns={columns} />}
        <tbody>
          {keyed(block.rows, nameOfRow).map(({ key, item: row }) => (
            <tr key={key}>
              {columns.map((column, at) => (
                <Cell key={column.key} cell={row[at]} column={column.item} heads={at === headOf(row)} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  )
}

function Heads({ columns }: { readonly columns: readonly Keyed<TableColumn>[] }) {
  return (
    <thead>
      <tr>
        {columns.map(({ key, item }) =>
          item.title === '' ? (
            <td key={key} />
          ) : (
            <th key={key} scope="col" className={`align-${item.align}`}>
              {item.title}
            </th>
          ),
        )}
      </tr>
    </thead>
  )
}

/** The cell that names its row: the first one with words in it. */
const headOf = (row: readonly DocumentCell[]): number => row.findIndex((cell) => cell.kind === 'text' && cell.text !== '')

const nameOfRow = (row: readonly DocumentCell[]): string => {
  const cell = row[headOf(row)]
  return cell?.kind === 'text' ? cell.text : ''
}

function Cell(props: { readonly cell: DocumentCell | undefined; readonly column: TableColumn; readonly heads: boolean }) {
  const className = `align-${props.column.align}`
  const inner = props.cell === undefined ? null : <CellText cell={props.cell} />
  return props.heads ? (
    <th scope="row" className={className}>
      {inner}
    </th>
  ) : (
    <td className={className}>{inner}</td>
  )
}

function CellText({ cell }: { readonly cell: DocumentCell }) {
  switch (cell.kind) {
    case 'text':
      return (
        <>
          <span className={cell.strong === true ? 'strong' : undefined}>
            {cell.number === undefined ? cell.text : <NumberButton id={cell.number}>{cell.text}</NumberButton>}
          </span>
          {cell.second !== undefined && <span className="second">{cell.second}</span>}
        </>
      )
    case 'state':
      return <StateTag state={cell.state} text={cell.text} />
    case 'box':
      return (
        <span className="box">
          <span className="unseen">to fill in on paper</span>
        </span>
      )
    case 'tick':
      return (
        <span className="tick">
          <span className="unseen">to tick on paper</span>
        </span>
      )
    default:
      return exhaustive(cell, 'cell')
  }
}
