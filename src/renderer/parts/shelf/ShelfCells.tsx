import { Link } from 'wouter'
import type { ShelfRow } from '../../../shared/contract/contract.ts'
import { shelfPartAddress } from '../desk/Desk.tsx'

export const COLUMNS = [
  { name: 'mark', title: '' },
  { name: 'part', title: 'Part' },
  { name: 'kind', title: 'Kind' },
  { name: 'maker', title: 'Maker and number' },
  { name: 'supplier', title: 'Supplier' },
  { name: 'price', title: 'Price' },
  { name: 'state', title: 'State' },
] as const

/** The cells of a part, its ends under its name as they were typed. A row still on its way shows that it is. */
export function Cells(props: {
  readonly row: ShelfRow | undefined
  readonly marked: boolean
  readonly onMark: (id: string, name: string) => void
}) {
  const { row } = props
  if (row === undefined) {
    return (
      <>
        <td className="shelf-mark" />
        <td colSpan={COLUMNS.length - 1} className="quiet">
          …
        </td>
      </>
    )
  }
  return (
    <>
      <td className="shelf-mark">
        <input
          type="checkbox"
          tabIndex={-1}
          aria-label={`Mark ${row.name}`}
          checked={props.marked}
          onChange={() => props.onMark(row.id, row.name)}
        />
      </td>
      <th scope="row" className="shelf-part">
        <Link href={shelfPartAddress(row.id)} tabIndex={-1}>
          {row.name}
        </Link>
        <span className="second shelf-ends">{row.ends.map((end) => end.connection).join(' · ') || 'no ends'}</span>
      </th>
      <td className="shelf-kind">{row.kind}</td>
      <td className="shelf-maker">
        {row.maker}
        {row.partNumber !== null && <span className="second">{row.partNumber}</span>}
      </td>
      <td className="shelf-supplier">{row.supplier}</td>
      <td className="shelf-price">{row.price}</td>
      <td className="shelf-state">
        {row.state}
        {row.quantity !== null && row.quantity > 1 && <span className="second">{row.quantity} of them</span>}
      </td>
    </>
  )
}
