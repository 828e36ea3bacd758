import type { Block } from '../../../shared/report/document.ts'
import { exhaustive } from '../../../shared/result/result.ts'
import { Figure } from '../../drawings/Figure.tsx'
import { keyed } from '../keyed.ts'
import { Working } from '../working/Working.tsx'
import { Checklist } from './Checklist.tsx'
import { Finding } from './Finding.tsx'
import { NumberList } from './NumberList.tsx'
import { Table } from './Table.tsx'

/** Paints one block of the report. What it says, and in which order, was settled before it came here. */
export function BlockView({ block }: { readonly block: Block }) {
  switch (block.kind) {
    case 'paragraph':
      return (
        <p className={`paragraph tone-${block.tone ?? 'plain'}`}>
          {block.tone === 'caution' && <span className="caution-word">Caution</span>}
          {block.text}
        </p>
      )
    case 'list':
      return (
        <ul className="list">
          {keyed(block.items, (item) => item).map(({ key, item }) => (
            <li key={key}>{item}</li>
          ))}
        </ul>
      )
    case 'table':
      return <Table block={block} />
    case 'findings':
      return (
        <ul className="findings">
          {keyed(block.items, (item) => item.title).map(({ key, item }) => (
            <li key={key}>
              <Finding finding={item} />
            </li>
          ))}
        </ul>
      )
    case 'numbers':
      return <NumberList items={block.items} />
    case 'workings':
      return (
        <div className="workings">
          {block.items.map((item) => (
            <section key={item.id} className="working-entry" aria-label={item.label}>
              <h3>{item.label}</h3>
              <Working working={item} />
            </section>
          ))}
        </div>
      )
    case 'checklist':
      return <Checklist items={block.items} />
    case 'figure':
      return <Figure drawing={block.drawing} caption={block.caption} />
    default:
      return exhaustive(block, 'block')
  }
}
