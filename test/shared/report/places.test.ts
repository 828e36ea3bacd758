import { describe, expect, it } from 'vitest'
import { forces } from '../../../src/shared/model/forces.ts'
import { geometry } from '../../../src/shared/model/geometry.ts'
import { aboutText } from '../../../src/shared/report/text/index.ts'
import { bare, built } from '../planner/builds.ts'

/** Every key of a schema with its path, through optional objects. */
function keysOf(schema: unknown, path: readonly string[]): (readonly string[])[] {
  const inner = (schema as { unwrap?: () => unknown }).unwrap
  if (inner) return keysOf((schema as { unwrap: () => unknown }).unwrap(), path)
  const shape = (schema as { shape?: Record<string, unknown> }).shape
  return shape ? Object.entries(shape).flatMap(([key, value]) => [[...path, key], ...keysOf(value, [...path, key])]) : []
}

describe('places of geometry and forces', () => {
  const build = built(bare())
  it.each([...keysOf(geometry, ['geometry']), ...keysOf(forces, ['forces'])].map((path) => [path.join(' '), path] as const))(
    '%s is told in words',
    (_name, path) => {
      expect(aboutText(build, path)).not.toMatch(/[a-z][A-Z]/)
    },
  )
})
