import type { BuildFile } from '../../src/shared/model/build.ts'

/** A build file with faults in several places, each of another kind: a wrong unit, an unknown key, a name that is missing, ends of
 * a joint that are no text. */
export function spoil(file: BuildFile): string {
  const [first, ...others] = file.parts
  const joints = [...file.joints, { id: 'to-nowhere', a: 1, b: 2 }]
  const spoiled = {
    ...file,
    colour: 'green',
    vehicle: { ...file.vehicle, wheelbase: '25 psi' },
    parts: [{ ...first, name: undefined }, ...others],
    joints,
  }
  return JSON.stringify(spoiled)
}
