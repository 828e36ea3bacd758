import { useCallback, useState } from 'react'
import { Button, Menu, MenuItem, MenuTrigger, Popover, ToggleButton, ToggleButtonGroup } from 'react-aria-components'
import { Link } from 'wouter'
import type { OpenBuild, ProcedureInput, SavedFile } from '../../../shared/contract/contract.ts'
import { call, messageOf } from '../../app/client.ts'
import { keep } from '../../app/download.ts'
import { useShortcut } from '../../app/keys.ts'
import { useNotice } from '../../app/notice.tsx'
import type { Units } from '../../app/queries.ts'

type Paper = ProcedureInput<'sheet.print'>['paper']
type Kept = Awaited<ReturnType<typeof call<'builds.export'>>>

/** Asks for a file, hands it to the user and says how it went. */
function useKeeping() {
  const tell = useNotice()
  const [busy, setBusy] = useState(false)
  const run = useCallback(
    async (ask: () => Promise<Kept>) => {
      setBusy(true)
      try {
        const answer = await ask()
        if (answer.ok) tell(await keep(answer.value satisfies SavedFile))
        else tell(answer.problems.map((problem) => problem.sentence).join(' '), 'trouble')
      } catch (error) {
        tell(messageOf(error), 'trouble')
      }
      setBusy(false)
    },
    [tell],
  )
  return { busy, run }
}

/** The strip along the top: which build this is, in which units, and the ways out of the program for it. */
export function TitleBar({ open, onUnits }: { readonly open: OpenBuild; readonly onUnits: (units: Units) => void }) {
  const { summary, units } = open
  const printing = useKeeping()
  const exporting = useKeeping()
  const [choosing, setChoosing] = useState(false)
  useShortcut(
    'p',
    useCallback(() => setChoosing(true), []),
  )

  const print = (paper: Paper, workings: boolean) =>
    void printing.run(() => call('sheet.print', { id: summary.id, paper, units, workings }))

  return (
    <header className="title-bar">
      <Link href="/" className="title-back">
        <span aria-hidden="true">← </span>All builds
      </Link>
      <div className="title-name">
        <h1>{summary.name}</h1>
        <p>
          {summary.vehicle} · revision {summary.revision}
        </p>
      </div>
      <div className="title-tools">
        <ToggleButtonGroup
          aria-label="Units (Ctrl+U)"
          className="switch"
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[units]}
          onSelectionChange={(keys) => onUnits(keys.has('inch') ? 'inch' : 'metric')}
        >
          <ToggleButton id="inch" className="switch-part">
            inch
          </ToggleButton>
          <ToggleButton id="metric" className="switch-part">
            mm
          </ToggleButton>
        </ToggleButtonGroup>
        <Button
          className="button"
          isPending={exporting.busy}
          onPress={() => void exporting.run(() => call('builds.export', { id: summary.id }))}
        >
          Export file
        </Button>
        <MenuTrigger isOpen={choosing} onOpenChange={setChoosing}>
          <Button className="button button-strong" isPending={printing.busy}>
            {printing.busy ? 'Printing…' : 'Print shop sheet'}
          </Button>
          <Popover className="menu-popover" placement="bottom end">
            <Menu
              className="menu"
              onAction={(key) => print(String(key).startsWith('letter') ? 'letter' : 'a4', String(key).endsWith('workings'))}
            >
              <MenuItem id="a4" className="menu-item" textValue="A4">
                <span>A4</span>
                <span className="quiet">210 × 297 mm</span>
              </MenuItem>
              <MenuItem id="letter" className="menu-item" textValue="Letter">
                <span>Letter</span>
                <span className="quiet">8 1/2 × 11 in</span>
              </MenuItem>
              <MenuItem id="a4 workings" className="menu-item" textValue="With workings, 210 × 297 mm">
                <span>With workings</span>
                <span className="quiet">210 × 297 mm</span>
              </MenuItem>
              <MenuItem id="letter workings" className="menu-item" textValue="With workings, 8 1/2 × 11 in">
                <span>With workings</span>
                <span className="quiet">8 1/2 × 11 in</span>
              </MenuItem>
            </Menu>
          </Popover>
        </MenuTrigger>
      </div>
      <div className="bench-rule" data-units={units} aria-hidden="true" />
    </header>
  )
}
