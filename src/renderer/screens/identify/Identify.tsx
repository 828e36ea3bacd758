import { useUnits } from '../../app/units.ts'
import { Desk } from '../../parts/desk/Desk.tsx'

export function Identify() {
  const [units, setUnits] = useUnits()
  return (
    <Desk title="What is this?" here="identify" units={units} onUnits={setUnits}>
      <p>…</p>
    </Desk>
  )
}
