import type { Connection, PortEnd, PortFamily, Sex, ThreadEnd } from '../../model/end/types.ts'

const FAMILY: Readonly<Record<PortFamily, string>> = {
  'flare 37': '37° flare',
  'o-ring boss': 'O-ring boss',
  'flare 45': '45° flare',
  'inverted flare': 'inverted flare',
  'face seal': 'face seal',
  'iso 6149': 'ISO 6149',
  'iso 9974': 'ISO 9974',
  'iso 1179': 'ISO 1179',
  'cone 24 light': '24° cone',
  'cone 24 heavy': '24° cone',
  'bsp cone 60': '60° cone',
  banjo: 'banjo',
  'tube o-ring': 'O-ring tube nut',
}

/** A screwed end as the trade writes it and `parseEnd` reads it: "-6 37° flare male", "3/8-18 NPT female". */
export function write(end: PortEnd | ThreadEnd): Connection {
  const sex = end.sex === null ? '' : ` ${end.sex}`
  if (end.kind === 'port') return { typed: `${end.size} ${FAMILY[end.family]}${sex}`, end }
  return { typed: `${end.thread.designation}${end.hand === 'left' ? ' LH' : ''}${sex}`, end }
}

export const otherSex = (sex: Sex): Sex => (sex === 'male' ? 'female' : 'male')
