import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { openLog } from '../../../src/main/hosts/log.ts'

describe('openLog', () => {
  let folder: string
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'steerwright-log-'))
  })
  afterEach(() => rmSync(folder, { recursive: true }))

  const now = () => new Date('2030-02-03T04:05:06Z')
  const text = () => readFileSync(join(folder, 'steerwright.log'), 'utf8')

  it('notes when, where, what kind of error and through which lines, also of its cause', () => {
    const cause = Object.assign(new TypeError('inner'), { code: 'SQLITE_FULL' })
    openLog(folder, now)('builds.list', new RangeError('outer', { cause }))
    expect(text()).toMatch(/^2030-02-03T04:05:06\.000Z builds\.list: RangeError .*log\.test\.ts:\d+:\d+.* <- TypeError SQLITE_FULL /)
  })

  it('never writes a message, a folder or a thrown text, which may hold what somebody typed', () => {
    const log = openLog(folder, now)
    log('builds.import', new Error('Unexpected token in "Larch of Ann"\n    at Ann (Larch:1:2)'))
    log('builds.import', 'Larch of Ann')
    expect(text()).not.toMatch(/Larch|Ann|[/\\]/)
  })

  it('makes the folder when it is not there yet, closed to others', () => {
    const deep = join(folder, 'a', 'b')
    openLog(deep, now)('x', new Error())
    expect(readFileSync(join(deep, 'steerwright.log'), 'utf8')).toContain('x: Error')
    if (process.platform !== 'win32') expect(statSync(join(deep, 'steerwright.log')).mode & 0o077).toBe(0)
  })

  it('starts anew at 1 MB and keeps the one before', () => {
    writeFileSync(join(folder, 'steerwright.log'), 'y'.repeat(1_000_001))
    openLog(folder, now)('x', new Error())
    expect(text().length).toBeLessThan(10_000)
    expect(readFileSync(join(folder, 'steerwright.log.1'), 'utf8')).toHaveLength(1_000_001)
  })

  it('does not throw where nothing can be written', () => {
    writeFileSync(join(folder, 'file'), '')
    const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    expect(() => openLog(join(folder, 'file', 'below'), now)('x', new Error())).not.toThrow()
    expect(said).toHaveBeenCalledWith(expect.stringContaining('x: Error'))
    said.mockRestore()
  })
})
