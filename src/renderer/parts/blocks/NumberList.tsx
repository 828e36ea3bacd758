import type { NumberText } from '../../../shared/report/document.ts'
import { NumberButton } from '../NumberButton.tsx'

/** Numbers with their names; each opens its working. */
export function NumberList({ items }: { readonly items: readonly NumberText[] }) {
  return (
    <dl className="numbers">
      {items.map((item) => (
        <div key={item.id}>
          <dt>{item.label}</dt>
          <dd>
            <NumberButton id={item.id} label={item.label}>
              {item.value}
            </NumberButton>
            {(item.second !== null || item.uncertainty !== null) && (
              <span className="second">{[item.uncertainty, item.second].filter((text) => text !== null).join(' · ')}</span>
            )}
          </dd>
        </div>
      ))}
    </dl>
  )
}
