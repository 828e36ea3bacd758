import { resolve } from 'node:path'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'electron-vite'

const here = (path: string): string => resolve(import.meta.dirname, path)

/**
 * Three builds: the programs that touch the world (Electron's main process, the loopback host, the terminal), the preload, and
 * the window's page. What stands under `dependencies` in package.json stays outside the bundle; everything else is bundled in.
 */
export default defineConfig({
  main: {
    build: {
      rolldownOptions: {
        // less to read at every start of the terminal program; names stay, so that a bug's stack can be read
        output: { minify: { compress: true, mangle: false, codegen: true } },
        input: {
          index: here('src/main/index.ts'),
          host: here('src/main/hosts/loopback-main.ts'),
          cli: here('src/main/cli/main.ts'),
        },
      },
    },
  },
  preload: {
    build: {
      rolldownOptions: {
        input: { preload: here('src/main/preload.ts') },
        // a sandboxed preload cannot be an ES module
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: here('src/renderer'),
    plugins: [react()],
    build: {
      minify: true,
      // the same page is served to the user's own browser, which may be older than the Chromium inside Electron
      target: 'es2022',
      rolldownOptions: { input: here('src/renderer/index.html') },
    },
  },
})
