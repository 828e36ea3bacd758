import type { Procedures } from '../../../src/shared/contract/contract.ts'

/** Procedures without a database behind them, for tests of the doors alone. */
export function stubProcedures(own: Partial<Procedures> = {}): Procedures {
  const refused = async () => ({ ok: false as const, problems: [{ code: 'stub', place: '', sentence: 'A stub has no builds.' }] })
  return {
    'program.about': async () => ({ version: '0.0.0', host: 'browser', dataFolder: 'nowhere', database: { ok: true, value: null } }),
    'builds.list': async () => ({ ok: true, value: [] }),
    'builds.open': refused,
    'builds.import': refused,
    'builds.export': refused,
    'builds.read': refused,
    'builds.write': refused,
    'builds.create': refused,
    'builds.remove': refused,
    'demo.add': refused,
    'sheet.print': refused,
    'end.read': refused,
    'plan.compare': refused,
    'plan.steering': refused,
    'quantity.read': refused,
    'part.check': refused,
    'fit.ends': refused,
    'fit.candidates': refused,
    'fit.across': refused,
    identify: refused,
    'shelf.search': refused,
    'shelf.read': refused,
    'shelf.save': refused,
    'shelf.duplicate': refused,
    'shelf.remove': refused,
    'shelf.toBuild': refused,
    'shelf.fromBuild': refused,
    'shelf.importCsv': refused,
    'shelf.exportCsv': refused,
    'files.save': refused,
    ...own,
  }
}
