import { type Issue, issue } from '../result/result.ts'

type Raw = Record<string, unknown>
type Path = readonly (string | number)[]

/**
 * Every id that occurs twice and every reference that leads nowhere. Works on the raw value, so that these faults are told
 * together with all others of the file.
 */
export function referenceIssues(file: Raw): Issue[] {
  const parts = list(file.parts)
  const issues: Issue[] = []

  const ids = (kind: string): Set<string> => {
    const seen = new Set<string>()
    list(file[kind]).forEach((item, i) => {
      const id = text(item.id)
      if (id === undefined) return
      if (seen.has(id)) issues.push(issue('reference.twice', [kind, i, 'id'], { id }))
      seen.add(id)
    })
    return seen
  }
  const partIds = ids('parts')
  const jointIds = ids('joints')
  const specIds = ids('torqueSpecs')
  const recordIds = ids('torqueRecords')
  const readingIds = ids('alignment')
  const taskIds = ids('tasks')
  ids('limits')
  ids('sessions')

  const ends = new Set<string>()
  parts.forEach((part, i) => {
    list(part.ends).forEach((end, j) => {
      const [id, name] = [text(part.id), text(end.name)]
      if (id === undefined || name === undefined) return
      const ref = `${id}/${name}`
      if (ends.has(ref)) issues.push(issue('reference.end_twice', ['parts', i, 'ends', j, 'name'], { part: id, end: name }))
      ends.add(ref)
    })
  })

  const lead = (known: Set<string>, ref: unknown, path: Path, kind: string) => {
    const id = text(ref)
    if (id !== undefined && !known.has(id)) issues.push(issue('reference.nothing_there', path, { id, kind }))
  }

  list(file.joints).forEach((joint, i) => {
    for (const which of ['a', 'b'] as const) {
      const ref = text(joint[which])
      if (ref === undefined || !ref.includes('/')) continue
      const [part, end] = ref.split('/') as [string, string]
      if (!partIds.has(part)) issues.push(issue('reference.nothing_there', ['joints', i, which], { id: part, kind: 'part' }))
      else if (!ends.has(ref)) issues.push(issue('reference.no_such_end', ['joints', i, which], { part, end }))
    }
    if (text(joint.a) !== undefined && joint.a === joint.b)
      issues.push(issue('reference.to_itself', ['joints', i, 'b'], { id: String(joint.a) }))
  })
  list(file.torqueSpecs).forEach((spec, i) => {
    strings(spec.joints).forEach((id, j) => {
      lead(jointIds, id, ['torqueSpecs', i, 'joints', j], 'joint')
    })
  })
  list(file.torqueRecords).forEach((record, i) => {
    lead(specIds, record.spec, ['torqueRecords', i, 'spec'], 'torque spec')
    lead(recordIds, record.corrects, ['torqueRecords', i, 'corrects'], 'torque record')
  })
  list(file.alignment).forEach((reading, i) => {
    lead(readingIds, reading.corrects, ['alignment', i, 'corrects'], 'alignment reading')
  })
  list(file.tasks).forEach((task, i) => {
    strings(task.after).forEach((id, j) => {
      lead(taskIds, id, ['tasks', i, 'after', j], 'task')
    })
    strings(task.needs).forEach((id, j) => {
      lead(partIds, id, ['tasks', i, 'needs', j], 'part')
    })
  })
  return issues
}

const list = (value: unknown): readonly Raw[] =>
  Array.isArray(value) ? value.map((item) => (typeof item === 'object' && item !== null ? (item as Raw) : {})) : []
const strings = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : [])
const text = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined)
