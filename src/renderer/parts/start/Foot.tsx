import { useState } from 'react'
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components'
import type { ProcedureOutput } from '../../../shared/contract/contract.ts'
import { keepTheme, readTheme, type Theme } from '../../app/theme.ts'

const THEMES: readonly (readonly [Theme, string])[] = [
  ['system', 'as the machine'],
  ['light', 'light'],
  ['dark', 'dark'],
]

/** What program this is, where its data lie, and the look of the window. */
export function Foot({ about }: { readonly about: ProcedureOutput<'program.about'> | undefined }) {
  const [theme, setTheme] = useState(readTheme)
  return (
    <footer className="foot">
      {about !== undefined && (
        <p>
          Version {about.version}. Builds are kept in <code>{about.dataFolder}</code>
        </p>
      )}
      <div className="foot-look">
        <span id="look">Look</span>
        <ToggleButtonGroup
          aria-labelledby="look"
          className="switch"
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[theme]}
          onSelectionChange={(keys) => {
            const next = THEMES.find(([name]) => keys.has(name))?.[0] ?? 'system'
            setTheme(next)
            keepTheme(next)
          }}
        >
          {THEMES.map(([name, label]) => (
            <ToggleButton key={name} id={name} className="switch-part">
              {label}
            </ToggleButton>
          ))}
        </ToggleButtonGroup>
      </div>
    </footer>
  )
}
