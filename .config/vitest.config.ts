import { resolve } from 'node:path'
import { defineConfig } from 'vitest/config'

const root = resolve(import.meta.dirname, '..')

export default defineConfig({
  root,
  cacheDir: resolve(root, 'node_modules/.cache/vitest'),
  test: {
    include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
    environment: 'node',
    testTimeout: 30_000,
    hookTimeout: 60_000,
    pool: 'forks',
    fileParallelism: true,
    reporters: ['default'],
  },
})
