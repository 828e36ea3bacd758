import { type Quantity, si, type Time } from '../../quantities/dimension.ts'
import { fail, type Issue, issue, ok, type Result } from '../../result/result.ts'

/** One activity: how long it takes, and which others must be finished before it. */
export interface Activity {
  readonly id: string
  readonly duration: Time
  readonly after: readonly string[]
}

/** Times of one activity, in seconds from the start of the whole. */
export interface ActivityTimes {
  readonly id: string
  readonly earliestStart: Time
  readonly earliestFinish: Time
  readonly latestStart: Time
  readonly latestFinish: Time
  /** how far it may slip without moving the end of the whole */
  readonly slack: Time
  readonly critical: boolean
}

export interface CriticalPath {
  readonly duration: Time
  /** in the order given */
  readonly activities: readonly ActivityTimes[]
}

/** Sums of doubles: a slack below this part of the whole is rounding, and the activity is critical. */
const ROUNDING = 1e-9

/**
 * Critical path by a forward and a backward pass: ES = latest EF of what comes before, LF = earliest LS of what comes
 * after, slack = LS - ES. Pure precedence in hours of work: calendars, helpers and deliveries come elsewhere.
 * Source: any text on network planning, for instance Taylor, Introduction to Management Science, chapter 8.
 *
 * @returns times in the order given, or every fault at once: `schedule.duplicate`, `schedule.duration` (negative or not
 *   finite), `schedule.unknown` (something after what is not there), `schedule.circle` (facts: ids that wait for each other)
 */
export function criticalPath(activities: readonly Activity[]): Result<CriticalPath> {
  const index = new Map<string, number>()
  const issues: Issue[] = []
  for (const [i, { id, duration }] of activities.entries()) {
    if (index.has(id)) issues.push(issue('schedule.duplicate', [i, 'id'], { id }))
    else index.set(id, i)
    if (!(duration >= 0 && Number.isFinite(duration))) issues.push(issue('schedule.duration', [i, 'duration'], { id, duration }))
  }
  const before = activities.map(({ id, after }, i) =>
    [...new Set(after)].flatMap((other) => {
      const found = index.get(other)
      if (found === undefined) issues.push(issue('schedule.unknown', [i, 'after'], { id, after: other }))
      return found === undefined ? [] : [found]
    }),
  )
  if (issues.length > 0) return fail(...issues)

  const following = inverse(before)
  const order = sorted(before, following)
  if (order.length < activities.length) {
    const circle = inCircles(before, following).map((i) => activities[i]?.id ?? '')
    return fail(issue('schedule.circle', [], { ids: circle }))
  }

  const duration = (i: number): number => activities[i]?.duration ?? 0
  const start = new Array<number>(activities.length).fill(0)
  const finish = [...start]
  for (const i of order) {
    start[i] = (before[i] ?? []).reduce((latest, j) => Math.max(latest, finish[j] ?? 0), 0)
    finish[i] = (start[i] ?? 0) + duration(i)
  }
  const whole = finish.reduce((latest, f) => Math.max(latest, f), 0)
  const latest = new Array<number>(activities.length).fill(whole)
  for (const i of order.toReversed()) {
    latest[i] = (following[i] ?? []).reduce((earliest, j) => Math.min(earliest, (latest[j] ?? 0) - duration(j)), whole)
  }
  const time = (value: number): Quantity<'time'> => si(value, 'time')
  return ok({
    duration: time(whole),
    activities: activities.map(({ id }, i) => {
      const [es, ef, lf] = [start[i] ?? 0, finish[i] ?? 0, latest[i] ?? 0]
      const slack = Math.abs(lf - ef) <= ROUNDING * whole ? 0 : lf - ef
      return {
        id,
        earliestStart: time(es),
        earliestFinish: time(ef),
        latestStart: time(slack === 0 ? es : lf - duration(i)),
        latestFinish: time(slack === 0 ? ef : lf),
        slack: time(slack),
        critical: slack === 0,
      }
    }),
  })
}

type Graph = readonly (readonly number[])[]

function inverse(graph: Graph): number[][] {
  const turned: number[][] = graph.map(() => [])
  for (const [i, others] of graph.entries()) for (const j of others) turned[j]?.push(i)
  return turned
}

/** Everything in an order in which nothing comes before what it waits for; what waits in a circle is left out. */
function sorted(before: Graph, following: Graph): number[] {
  const waiting = before.map((others) => others.length)
  const order = waiting.flatMap((n, i) => (n === 0 ? [i] : []))
  for (const done of order) {
    for (const next of following[done] ?? []) {
      const left = (waiting[next] ?? 0) - 1
      waiting[next] = left
      if (left === 0) order.push(next)
    }
  }
  return order
}

/** What is left when all that can be done from either end is taken away: the circles and what lies between them. */
function inCircles(before: Graph, following: Graph): number[] {
  const free = new Set([...sorted(before, following), ...sorted(following, before)])
  return before.flatMap((_, i) => (free.has(i) ? [] : [i]))
}
