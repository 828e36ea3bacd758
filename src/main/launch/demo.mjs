// The demo is a command of the terminal program, kept out of its help: it plans the demo build and writes both sheets.
process.argv.splice(2, 0, 'demo-run')
await import('./cli.mjs')
