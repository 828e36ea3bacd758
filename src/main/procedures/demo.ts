import type { BuildFile } from '../../shared/model/build.ts'
import bought from './demo/bought.json' with { type: 'json' }
import corrected from './demo/corrected.json' with { type: 'json' }

export type DemoName = 'bought' | 'corrected'

/** The demo build, all of it invented: as first bought, with its mistakes, and as corrected. */
export const DEMO_FILES: Readonly<Record<DemoName, BuildFile>> = { bought: bought as BuildFile, corrected: corrected as BuildFile }
