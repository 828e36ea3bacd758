import type { Build } from '../../model/build.ts'
import type { Step } from '../../planner/plan.ts'

const STEPS: Readonly<Record<string, string>> = {
  inspect:
    'Look over the front end first: ball joints or kingpins, wheel bearings, bushes, track bar, tyre wear. Neither damper nor ram cures a shimmy.',
  'dry-fit':
    'Put every joint together by hand on the bench, before anything is welded or bought again. Tick each off against the fit check.',
  raise: 'Chock the rear wheels, raise the front, set it on stands, shake it.',
  'relieve-pressure': 'Engine off and cold. Turn the hand wheel lock to lock a few times, then open the lines into a tray.',
  weld: 'Tack, check by the dry fit, then weld the brackets and bungs.',
  axle: 'Set the axle in, with its caster as drawn.',
  arms: 'Fit the steering arms.',
  'clean-tapers':
    'Clean every taper, blue it and check that it bears over at least three quarters of its length, heavier at the large end.',
  'tie-rod': 'Hang the tie rod; screw both ends in by the same number of turns.',
  box: 'Bolt up the steering box; centre it, and set the pitman arm on its splines at centre.',
  'drag-link': 'Hang the drag link with the hand wheel and the road wheels straight ahead.',
  'measure-travel':
    'With the ram off, measure the travel again: centre, full left, full right, each three times, straight edge in the same seat. Write it in the survey.',
  'knuckle-stops': 'Set the knuckle stops so that they, not the tyre, the box or the ram, end the travel on both sides.',
  ram: 'Mount the ram: bracket on the axle, clamp on the tie rod, both pins free to turn.',
  'ram-through-travel':
    'Ports open over a tray, turn the wheels from stop to stop by hand: the ram must neither bottom nor run out, nor touch anything.',
  hoses: 'Fit adapters and hoses. Turn the wheels from stop to stop and move the axle up and down: no hose may stretch, kink or rub.',
  torque: 'Tighten everything in the torque table, in its order, and write down what was applied.',
  cotters: 'Fit new cotter pins and bend them over.',
  'jam-nuts': 'Lock the jam nuts, both ball joints held in the middle of their swing.',
  fill: 'Fill the reservoir with the fluid named in the parts list.',
  'ram-direction':
    'Find out whether the ram helps or fights: wheels off the ground, nobody near them, hands off the wheel, start the engine for a moment. If the steering runs to one side by itself, engine off at once: the two ram hoses are the wrong way round. Swap them at the box and try again.',
  purge:
    'Purge: wheels off the ground, engine off, turn slowly from stop to stop twenty times, topping up; then idle, and again until no bubbles rise. Never hold it at the stop.',
  'leak-check': 'Look for leaks at idle and with the wheel turned, with a piece of card.',
  'full-lock-check':
    'Turn to each lock with the engine running: the knuckle stops touch first, and the ram has room on both sides. Write down the room.',
  lower: 'Wheels on, lower the vehicle, bounce it, and check every clearance again on its own weight.',
  toe: 'Set the toe with the wheels on the ground and write it in the alignment record.',
  'jam-nuts-after-toe': 'Lock the jam nuts again after the toe is set.',
  'first-drive':
    'First drive: walking pace on private ground, then slowly, no traffic. Listen, look, feel; check that it comes back to straight ahead.',
  're-torque':
    'Tighten again after the first drive and after the distance in the torque table (50 to 100 miles is common practice), and write it down.',
}

/** A step in words, with the names of what it deals with. */
export function stepWords(step: Step, build: Build): { text: string; details: string[] } {
  const names = new Map<string, string>([
    ...build.parts.map((p) => [p.id, p.name] as const),
    ...build.joints.map((j) => [j.id, j.name ?? `${j.a} – ${j.b}`] as const),
    ...(build.torqueSpecs ?? []).map((s) => [s.id, s.what] as const),
  ])
  const task = step.typed === undefined ? undefined : (build.tasks ?? []).find((t) => t.id === step.about[0])
  // the lines to be emptied are those of the old system; the build lists the new one
  const details = step.code === 'relieve-pressure' ? [] : [...new Set(step.about.flatMap((id) => names.get(id) ?? []))]
  return {
    text: step.typed ?? STEPS[step.code] ?? step.code,
    details: task?.note === undefined ? details : [...details, task.note],
  }
}

/** Codes that have words: for the test that no step is without. */
export const STEP_CODES: readonly string[] = Object.keys(STEPS)
