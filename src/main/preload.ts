import { contextBridge, ipcRenderer } from 'electron'
import type { ProcedureInput, ProcedureName, ProcedureOutput, Procedures } from '../shared/contract/contract.ts'

const ask =
  <N extends ProcedureName>(name: N) =>
  (input: ProcedureInput<N>): Promise<ProcedureOutput<N>> =>
    ipcRenderer.invoke(`steerwright:${name}`, input)

/** All that the page gets to see of the program: one function for each procedure of the contract. */
contextBridge.exposeInMainWorld('steerwright', {
  'program.about': ask('program.about'),
  'builds.list': ask('builds.list'),
  'builds.open': ask('builds.open'),
  'builds.import': ask('builds.import'),
  'builds.export': ask('builds.export'),
  'demo.add': ask('demo.add'),
  'sheet.print': ask('sheet.print'),
  'files.save': ask('files.save'),
} satisfies Procedures)
