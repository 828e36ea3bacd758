import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { dataFolder } from '../../../src/main/hosts/data-folder.ts'

describe('dataFolder', () => {
  const home = '/home/somebody'

  it.each(['linux', 'darwin', 'win32'] as const)('is STEERWRIGHT_DATA wherever that is set (%s)', (platform) => {
    expect(dataFolder({ platform, home, env: { STEERWRIGHT_DATA: 'here/data', XDG_DATA_HOME: '/x', APPDATA: 'C:\\x' } })).toBe(
      resolve('here/data'),
    )
  })

  it('takes an empty STEERWRIGHT_DATA as not set', () => {
    expect(dataFolder({ platform: 'linux', home, env: { STEERWRIGHT_DATA: '' } })).toBe(join(home, '.local', 'share', 'steerwright'))
  })

  it('follows the XDG base directories on Linux, an absolute one only', () => {
    expect(dataFolder({ platform: 'linux', home, env: { XDG_DATA_HOME: '/data' } })).toBe(join('/data', 'steerwright'))
    expect(dataFolder({ platform: 'linux', home, env: { XDG_DATA_HOME: 'data' } })).toBe(join(home, '.local', 'share', 'steerwright'))
    expect(dataFolder({ platform: 'linux', home, env: {} })).toBe(join(home, '.local', 'share', 'steerwright'))
  })

  it('follows the custom of the others', () => {
    expect(dataFolder({ platform: 'darwin', home, env: {} })).toBe(join(home, 'Library', 'Application Support', 'Steerwright'))
    expect(dataFolder({ platform: 'win32', home, env: { APPDATA: '/roaming' } })).toBe(join('/roaming', 'Steerwright'))
    expect(dataFolder({ platform: 'win32', home, env: {} })).toBe(join(home, 'AppData', 'Roaming', 'Steerwright'))
  })
})
