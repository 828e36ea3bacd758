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
  'builds.read': ask('builds.read'),
  'builds.write': ask('builds.write'),
  'builds.create': ask('builds.create'),
  'builds.remove': ask('builds.remove'),
  'builds.import': ask('builds.import'),
  'builds.export': ask('builds.export'),
  'demo.add': ask('demo.add'),
  'sheet.print': ask('sheet.print'),
  'plan.compare': ask('plan.compare'),
  'end.read': ask('end.read'),
  'part.check': ask('part.check'),
  'fit.ends': ask('fit.ends'),
  'fit.candidates': ask('fit.candidates'),
  'fit.across': ask('fit.across'),
  identify: ask('identify'),
  'quantity.read': ask('quantity.read'),
  'shelf.search': ask('shelf.search'),
  'shelf.read': ask('shelf.read'),
  'shelf.save': ask('shelf.save'),
  'shelf.duplicate': ask('shelf.duplicate'),
  'shelf.remove': ask('shelf.remove'),
  'shelf.toBuild': ask('shelf.toBuild'),
  'shelf.fromBuild': ask('shelf.fromBuild'),
  'shelf.importCsv': ask('shelf.importCsv'),
  'shelf.exportCsv': ask('shelf.exportCsv'),
  'plan.steering': ask('plan.steering'),
  'files.save': ask('files.save'),
} satisfies Procedures)
