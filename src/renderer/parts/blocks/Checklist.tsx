import type { ChecklistItem } from '../../../shared/report/document.ts'

/** The steps in order. Their squares are for the printed sheet, so here they are drawn and not pressed. */
export function Checklist({ items }: { readonly items: readonly ChecklistItem[] }) {
  return (
    <ol className="checklist">
      {items.map((item) => (
        <li key={item.number}>
          <span className="tick" aria-hidden="true" />
          <span className="checklist-number">{item.number}</span>
          <div className="checklist-text">
            <p>{item.text}</p>
            {item.details.map((detail) => (
              <p key={detail} className="quiet">
                {detail}
              </p>
            ))}
            {item.cautions.map((caution) => (
              <p key={caution} className="paragraph tone-caution">
                <span className="caution-word">Caution</span>
                {caution}
              </p>
            ))}
          </div>
        </li>
      ))}
    </ol>
  )
}
