import { resolve } from 'node:path'
/**
 * The packager's own check of its configuration, which needs neither network nor Electron. It refuses a key it does not know.
 * The path is internal to it: when an upgrade moves it, this test fails on the import and is to be mended.
 */
import { getConfig, validateConfiguration } from 'app-builder-lib/out/util/config/config.js'
import { describe, expect, it } from 'vitest'

const root = resolve(import.meta.dirname, '../../..')
const quiet = { isEnabled: false, add: () => {} } as never
const read = () => getConfig(root, '.config/electron-builder.yml', null)

describe('the packaging', () => {
  it('has a configuration that the packager accepts', async () => {
    await expect(validateConfiguration(await read(), quiet)).resolves.toBeUndefined()
  })

  it('would be refused with a wrong key, so the check above can fail', async () => {
    const wrong = { ...(await read()), electronFuses: { runAsNodee: false } } as never
    await expect(validateConfiguration(wrong, quiet)).rejects.toThrow('configuration.electronFuses should be')
  })

  it('takes the build and the migrations along, and rebuilds nothing', async () => {
    const { files, npmRebuild, asar, asarUnpack } = await read()
    for (const pattern of ['out/**', 'migrations/**', 'package.json']) expect(JSON.stringify(files)).toContain(JSON.stringify(pattern))
    expect({ npmRebuild, asar, asarUnpack }).toEqual({ npmRebuild: false, asar: true, asarUnpack: ['node_modules/better-sqlite3/**'] })
  })
})
