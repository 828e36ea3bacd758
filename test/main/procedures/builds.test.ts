import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { fullBuild } from '../database/full-build.ts'
import { got, openedDatabase, problems, proceduresOn } from './made.ts'

const own = () => proceduresOn(openedDatabase())

async function withBuild() {
  const procedures = own()
  await procedures['builds.import']({ text: JSON.stringify(fullBuild()), replace: false })
  return procedures
}
const renamed = (file: BuildFile, name: string): BuildFile => ({ ...file, build: { ...file.build, name } })

describe('a build', () => {
  it('is created with nothing in it, under an id made from its name that is free', async () => {
    const procedures = own()
    const first = got(await procedures['builds.create']({ name: 'Larch, front é', vehicle: 'Crew truck', units: 'metric' }))
    expect(first).toMatchObject({ id: 'larch-front-e', revision: 1 })
    expect(got(await procedures['builds.create']({ name: 'Larch front E', vehicle: '!', units: 'inch' })).id).toBe('larch-front-e-2')
    const { file, revision, changedAt } = got(await procedures['builds.read']({ id: 'larch-front-e' }))
    expect({ revision, changedAt }).toEqual({ revision: 1, changedAt: first.changedAt })
    expect(file).toEqual({
      format: 'steerwright build',
      version: 1,
      build: { id: 'larch-front-e', name: 'Larch, front é', revision: 1, units: 'metric' },
      vehicle: { id: 'crew-truck', name: 'Crew truck' },
      parts: [],
      joints: [],
    })
    expect(problems(await procedures['builds.create']({ name: '', vehicle: 'x\0', units: 'inch' }))).toEqual([
      'build.name: file.too_small',
      'vehicle.name: text.not_kept',
    ])
    expect(got(await procedures['builds.list']({}))).toHaveLength(2)
  })

  it('is written back as the next revision, whatever the file says of its revision', async () => {
    const procedures = await withBuild()
    const { file, revision, changedAt } = got(await procedures['builds.read']({ id: 'larch' }))
    expect({ file, revision }).toEqual({ file: fullBuild(), revision: 3 })
    const changed = { ...renamed(file, 'Tamarack'), build: { ...file.build, name: 'Tamarack', revision: 77 } }
    const saved = got(await procedures['builds.write']({ file: changed, basedOn: 3, changedAt }))
    expect(saved).toMatchObject({ id: 'larch', revision: 4 })
    const again = got(await procedures['builds.read']({ id: 'larch' }))
    expect(again.file).toEqual({ ...changed, build: { ...changed.build, revision: 4 } })
    expect(again).toMatchObject({ revision: 4, changedAt: saved.changedAt })
  })

  it('is not overwritten by a change that was made from an older state', async () => {
    const procedures = await withBuild()
    const { file, changedAt } = got(await procedures['builds.read']({ id: 'larch' }))
    got(await procedures['builds.write']({ file: renamed(file, 'first'), basedOn: 3 }))
    const late = await procedures['builds.write']({ file: renamed(file, 'second'), basedOn: 3 })
    expect(problems(late)).toEqual(['build.changed_meanwhile'])
    expect(late).toMatchObject({ problems: [{ sentence: expect.stringContaining('revision 4') }] })
    expect(got(await procedures['builds.read']({ id: 'larch' })).file.build.name).toBe('first')

    // an import may bring another file of the same revision: then the time tells them apart
    await procedures['builds.import']({ text: JSON.stringify(renamed(file, 'third')), replace: true })
    expect(problems(await procedures['builds.write']({ file, basedOn: 3, changedAt }))).toEqual(['build.changed_meanwhile'])
    expect(got(await procedures['builds.read']({ id: 'larch' })).file.build.name).toBe('third')
  })

  it('is refused with every fault and its place, and then is as it was', async () => {
    const procedures = await withBuild()
    const { file } = got(await procedures['builds.read']({ id: 'larch' }))
    const faulty = { ...file, parts: [{ ...file.parts[0], price: 'dear' }, ...file.parts.slice(1)], colour: 'red' } as unknown as BuildFile
    expect(problems(await procedures['builds.write']({ file: faulty, basedOn: 3 }))).toEqual([
      'parts[0].price: file.wrong_form',
      'colour: file.unknown_key',
    ])
    expect(got(await procedures['builds.read']({ id: 'larch' })).file).toEqual(fullBuild())
  })

  it('is handed over when it is taken out, and can be put back', async () => {
    const procedures = await withBuild()
    expect(problems(await procedures['builds.remove']({ id: 'larch', revision: 2 }))).toEqual(['build.changed_meanwhile'])
    const { file } = got(await procedures['builds.remove']({ id: 'larch', revision: 3 }))
    expect(got(await procedures['builds.list']({}))).toEqual([])
    got(await procedures['builds.import']({ text: JSON.stringify(file), replace: false }))
    expect(got(await procedures['builds.read']({ id: 'larch' })).file).toEqual(fullBuild())
  })

  it('that is not there is told of', async () => {
    const procedures = own()
    const file = fullBuild()
    for (const answer of [
      await procedures['builds.read']({ id: 'larch' }),
      await procedures['builds.write']({ file, basedOn: 3 }),
      await procedures['builds.remove']({ id: 'larch', revision: 3 }),
    ]) {
      expect(problems(answer)).toEqual(['build.unknown'])
    }
    expect(got(await procedures['builds.list']({}))).toEqual([])
  })
})
