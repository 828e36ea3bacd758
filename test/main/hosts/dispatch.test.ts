import { describe, expect, it } from 'vitest'
import { makeDispatch } from '../../../src/main/hosts/dispatch.ts'
import type { Procedures } from '../../../src/shared/contract/contract.ts'
import { stubProcedures } from './stub.ts'

function dispatching(own: Partial<Procedures> = {}) {
  const logged: { where: string; error: unknown }[] = []
  return { logged, dispatch: makeDispatch(stubProcedures(own), (where, error) => logged.push({ where, error })) }
}

const sentences = (body: unknown): string[] => (body as { problems: { sentence: string }[] }).problems.map(({ sentence }) => sentence)

describe('dispatch', () => {
  it('hands the checked input on and gives the output back', async () => {
    const asked: unknown[] = []
    const { dispatch } = dispatching({
      'builds.export': async (input) => {
        asked.push(input)
        return { ok: true, value: { fileName: 'a.json', mediaType: 'application/json', base64: 'e30=' } }
      },
    })
    const answer = await dispatch('builds.export', { id: 'larch' })
    expect(asked).toEqual([{ id: 'larch' }])
    expect(answer).toEqual({
      kind: 'done',
      body: { ok: true, value: { fileName: 'a.json', mediaType: 'application/json', base64: 'e30=' } },
    })
  })

  it.each(['builds.destroy', '', 'toString', '__proto__', 'constructor', 'hasOwnProperty'])(
    'knows no procedure called "%s"',
    async (name) => {
      const answer = await dispatching().dispatch(name, {})
      expect(answer.kind).toBe('unknown')
      expect(sentences(answer.body)).toHaveLength(1)
    },
  )

  it.each([
    ['nothing at all', undefined],
    ['null', null],
    ['a text', 'larch'],
    ['a missing key', {}],
    ['a key too many', { id: 'larch', admin: true }],
    ['an id of the wrong kind', { id: 7 }],
    ['an empty id', { id: '' }],
    ['an endless id', { id: 'x'.repeat(65) }],
  ])('refuses %s before the procedure sees it', async (_what, input) => {
    let called = false
    const { dispatch } = dispatching({
      'builds.export': async () => {
        called = true
        return { ok: false, problems: [] }
      },
    })
    const answer = await dispatch('builds.export', input)
    expect(answer.kind).toBe('input')
    expect(sentences(answer.body)[0]).toContain('builds.export')
    expect(called).toBe(false)
  })

  it('names the place of a fault in the input', async () => {
    const answer = await dispatching().dispatch('sheet.print', { id: 'larch', paper: 'foolscap' })
    expect(answer.body).toMatchObject({ problems: [{ code: 'input', place: 'paper' }] })
  })

  it('catches a bug, logs it, and says so without its message', async () => {
    const bug = new Error('the user typed "secret"')
    const { dispatch, logged } = dispatching({
      'builds.list': async () => {
        throw bug
      },
    })
    const answer = await dispatch('builds.list', {})
    expect(answer.kind).toBe('bug')
    expect(logged).toEqual([{ where: 'builds.list', error: bug }])
    expect(JSON.stringify(answer)).not.toContain('secret')
  })

  it('takes an output that is not in the contract for a bug', async () => {
    const { dispatch, logged } = dispatching({ 'builds.list': (async () => ({ ok: true, value: [{ id: 7 }] })) as never })
    expect((await dispatch('builds.list', {})).kind).toBe('bug')
    expect(logged).toHaveLength(1)
  })
})
