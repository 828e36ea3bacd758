import type { Build } from '../model/build.ts'
import type { Part, PartEnd } from '../model/part.ts'

/** An end with the part it is on, and where both stand in the file. */
export interface PlacedEnd {
  readonly part: Part
  readonly end: PartEnd
  readonly partIndex: number
  readonly endIndex: number
}

/** Every end of a build by "part/end": what a joint names. */
export function indexEnds(build: Build): ReadonlyMap<string, PlacedEnd> {
  const ends = new Map<string, PlacedEnd>()
  build.parts.forEach((part, partIndex) => {
    part.ends.forEach((end, endIndex) => {
      ends.set(`${part.id}/${end.name}`, { part, end, partIndex, endIndex })
    })
  })
  return ends
}
