import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../src/main/procedures/demo.ts'
import { checkBuild, writeBuild } from '../../../src/shared/model/exchange.ts'
import { plan } from '../../../src/shared/planner/index.ts'
import { readPdf } from '../documents/read-pdf.ts'
import { cli, folder, json, keysOf } from './run.ts'

const text = { bought: writeBuild(DEMO_FILES.bought), corrected: writeBuild(DEMO_FILES.corrected) }

function file(content: string, name = 'build.json'): string {
  const path = join(folder(), name)
  writeFileSync(path, content)
  return path
}

describe('plan', () => {
  it('prints the plan of a build that something stops: exit 1, nothing on stderr', async () => {
    const run = await cli(['plan', file(text.bought)])
    expect({ code: run.code, err: run.err }).toEqual({ code: 1, err: '' })
    for (const words of ['Larch', 'What stops the build', 'binds after less than one turn', 'a 37° flare has nothing to seal on']) {
      expect(run.out.replace(/\s+/g, ' ')).toContain(words)
    }
    expect(Math.max(...run.out.split('\n').map((l) => l.length))).toBeLessThanOrEqual(100)
    expect(run.out).not.toMatch(/undefined|NaN|\[object/)
  })

  it('of a build that nothing stops: exit 0', async () => {
    const run = await cli(['plan', file(text.corrected)])
    expect({ code: run.code, err: run.err }).toEqual({ code: 0, err: '' })
    expect(run.out.replace(/\s+/g, ' ')).not.toContain('Stops the build:')
  })

  it('reads standard input where the file is "-", to the same effect', async () => {
    const path = file(text.corrected)
    const [fromFile, fromInput] = await Promise.all([cli(['plan', path]), cli(['plan', '-'], { input: text.corrected })])
    expect(fromInput).toEqual(fromFile)
  })

  it('shows the units asked for', async () => {
    const [inch, metric] = await Promise.all([
      cli(['plan', '-', '--units', 'inch'], { input: text.bought }),
      cli(['plan', '-', '--units=metric'], { input: text.bought }),
    ])
    expect(inch.out).toMatch(/\d lbf\b/)
    expect(inch.out).toContain('shown in inch units')
    expect(metric.out).toContain('shown in metric units')
    expect(metric.out).toMatch(/\d kN\b/)
    expect(metric.out).not.toBe(inch.out)
  })

  it('--json is the plan itself, with the findings in words, and says so by the exit code too', async () => {
    const run = await cli(['plan', '-', '--json'], { input: text.bought })
    expect({ code: run.code, err: run.err }).toEqual({ code: 1, err: '' })
    const value = JSON.parse(run.out)
    const checked = checkBuild(DEMO_FILES.bought)
    expect(checked.ok && JSON.parse(JSON.stringify(plan(checked.value.build)))).toEqual(value.plan)
    expect(value.findings).toHaveLength(value.plan.findings.length)
    for (const f of value.findings)
      expect({ code: f.code, words: f.title.length > 5 && f.why.length > 5 && f.todo.length > 5 }).toEqual({ code: f.code, words: true })
  })

  it('--json keeps its keys', async () => {
    const value = await json(['plan', '-'], { input: text.corrected })
    expect(keysOf(value, [/inputs$/, /facts$/])).toMatchInlineSnapshot(`
      [
        "findings",
        "findings[].about",
        "findings[].aboutText",
        "findings[].code",
        "findings[].evidence",
        "findings[].numbers",
        "findings[].severity",
        "findings[].title",
        "findings[].todo",
        "findings[].why",
        "format",
        "plan",
        "plan.build",
        "plan.build.id",
        "plan.build.name",
        "plan.build.revision",
        "plan.build.vehicle",
        "plan.bumpSteer",
        "plan.bumpSteer.best",
        "plan.bumpSteer.best.height",
        "plan.bumpSteer.best.worst",
        "plan.bumpSteer.curves",
        "plan.bumpSteer.curves[].error",
        "plan.bumpSteer.curves[].travel",
        "plan.bumpSteer.rise",
        "plan.findings",
        "plan.findings[].about",
        "plan.findings[].code",
        "plan.findings[].evidence",
        "plan.findings[].evidence[].dimension",
        "plan.findings[].evidence[].name",
        "plan.findings[].evidence[].si",
        "plan.findings[].facts",
        "plan.findings[].facts{}",
        "plan.findings[].numbers",
        "plan.findings[].severity",
        "plan.forces",
        "plan.forces.candidates",
        "plan.forces.candidates[].bore",
        "plan.forces.candidates[].closed",
        "plan.forces.candidates[].ended",
        "plan.forces.candidates[].lost",
        "plan.forces.candidates[].margin",
        "plan.forces.candidates[].own",
        "plan.forces.candidates[].pull",
        "plan.forces.candidates[].push",
        "plan.forces.candidates[].rockMargin",
        "plan.forces.candidates[].rod",
        "plan.forces.candidates[].rodFactor",
        "plan.forces.candidates[].smallest",
        "plan.forces.candidates[].stroke",
        "plan.forces.candidates[].strokeOver",
        "plan.forces.candidates[].tieRodFactor",
        "plan.forces.candidates[].time",
        "plan.forces.demand",
        "plan.forces.demand.chosenByUser",
        "plan.forces.demand.curve",
        "plan.forces.demand.curve.demandLeft",
        "plan.forces.demand.curve.demandRight",
        "plan.forces.demand.curve.supplyLeft",
        "plan.forces.demand.curve.supplyRight",
        "plan.forces.demand.curve.travel",
        "plan.forces.demand.routes",
        "plan.forces.demand.routes[].bothWheels",
        "plan.forces.demand.routes[].number",
        "plan.forces.demand.routes[].perWheel",
        "plan.forces.demand.routes[].route",
        "plan.forces.demand.used",
        "plan.forces.demand.worst",
        "plan.forces.demand.worst[].demand",
        "plan.forces.demand.worst[].margin",
        "plan.forces.demand.worst[].rock",
        "plan.forces.demand.worst[].rockMargin",
        "plan.forces.demand.worst[].side",
        "plan.forces.demand.worst[].supply",
        "plan.forces.demand.worst[].travel",
        "plan.forces.demand.worst[].turn",
        "plan.forces.flow",
        "plan.forces.flow[].cold",
        "plan.forces.flow[].cold.drop",
        "plan.forces.flow[].cold.regime",
        "plan.forces.flow[].cold.reynolds",
        "plan.forces.flow[].flow",
        "plan.forces.flow[].hose",
        "plan.forces.flow[].hot",
        "plan.forces.flow[].hot.drop",
        "plan.forces.flow[].hot.regime",
        "plan.forces.flow[].hot.reynolds",
        "plan.forces.flow[].line",
        "plan.forces.flow[].name",
        "plan.forces.flow[].velocity",
        "plan.forces.flow[].velocityMost",
        "plan.forces.sensitivities",
        "plan.forces.sensitivities[].inputs",
        "plan.forces.sensitivities[].inputs[].dimension",
        "plan.forces.sensitivities[].inputs[].greater",
        "plan.forces.sensitivities[].inputs[].name",
        "plan.forces.sensitivities[].inputs[].origin",
        "plan.forces.sensitivities[].inputs[].origin.column",
        "plan.forces.sensitivities[].inputs[].origin.kind",
        "plan.forces.sensitivities[].inputs[].origin.path",
        "plan.forces.sensitivities[].inputs[].origin.row",
        "plan.forces.sensitivities[].inputs[].origin.table",
        "plan.forces.sensitivities[].inputs[].origin.typed",
        "plan.forces.sensitivities[].inputs[].origin.why",
        "plan.forces.sensitivities[].inputs[].si",
        "plan.forces.sensitivities[].inputs[].smaller",
        "plan.forces.sensitivities[].margin",
        "plan.forces.speed",
        "plan.forces.speed[].at",
        "plan.forces.speed[].flow",
        "plan.forces.speed[].handWheel",
        "plan.forces.speed[].heat",
        "plan.forces.speed[].timeLeft",
        "plan.forces.speed[].timeRight",
        "plan.forces.strength",
        "plan.forces.strength[].factor",
        "plan.forces.strength[].mode",
        "plan.forces.strength[].number",
        "plan.forces.strength[].part",
        "plan.forces.strength[].wanted",
        "plan.forces.tightening",
        "plan.forces.tightening[].bolts",
        "plan.forces.tightening[].difference",
        "plan.forces.tightening[].joints",
        "plan.forces.tightening[].kind",
        "plan.forces.tightening[].maker",
        "plan.forces.tightening[].size",
        "plan.forces.tightening[].turnOn",
        "plan.forces.tightening[].values",
        "plan.forces.tightening[].values[].from",
        "plan.forces.tightening[].values[].from.convention",
        "plan.forces.tightening[].values[].from.k",
        "plan.forces.tightening[].values[].from.number",
        "plan.forces.tightening[].values[].from.row",
        "plan.forces.tightening[].values[].from.table",
        "plan.forces.tightening[].values[].high",
        "plan.forces.tightening[].values[].low",
        "plan.forces.tightening[].what",
        "plan.joints",
        "plan.joints[].a",
        "plan.joints[].b",
        "plan.joints[].joint",
        "plan.joints[].unmet",
        "plan.joints[].verdict",
        "plan.joints[].verdict.conditions",
        "plan.joints[].verdict.kind",
        "plan.joints[].verdict.measure",
        "plan.joints[].verdict.reasons",
        "plan.joints[].verdict.reasons[].code",
        "plan.joints[].verdict.reasons[].evidence",
        "plan.joints[].verdict.reasons[].evidence[].dimension",
        "plan.joints[].verdict.reasons[].evidence[].name",
        "plan.joints[].verdict.reasons[].evidence[].si",
        "plan.joints[].verdict.reasons[].facts",
        "plan.joints[].verdict.reasons[].facts{}",
        "plan.joints[].verdict.reasons[].source",
        "plan.joints[].verdict.reasons[].source.cites",
        "plan.joints[].verdict.reasons[].source.id",
        "plan.joints[].verdict.reasons[].source.mark",
        "plan.joints[].verdict.reasons[].source.read",
        "plan.joints[].verdict.rule",
        "plan.limits",
        "plan.limits.left",
        "plan.limits.left.angles",
        "plan.limits.left.angles.left",
        "plan.limits.left.angles.right",
        "plan.limits.left.lines",
        "plan.limits.left.lines[].from",
        "plan.limits.left.lines[].id",
        "plan.limits.left.lines[].number",
        "plan.limits.left.lines[].radius",
        "plan.limits.left.lines[].side",
        "plan.limits.left.lines[].travel",
        "plan.limits.left.lines[].u",
        "plan.limits.left.lines[].what",
        "plan.limits.left.margin",
        "plan.limits.left.next",
        "plan.limits.left.side",
        "plan.limits.left.wrongOrder",
        "plan.limits.right",
        "plan.limits.right.angles",
        "plan.limits.right.angles.left",
        "plan.limits.right.angles.right",
        "plan.limits.right.lines",
        "plan.limits.right.lines[].from",
        "plan.limits.right.lines[].id",
        "plan.limits.right.lines[].number",
        "plan.limits.right.lines[].radius",
        "plan.limits.right.lines[].side",
        "plan.limits.right.lines[].travel",
        "plan.limits.right.lines[].u",
        "plan.limits.right.lines[].what",
        "plan.limits.right.margin",
        "plan.limits.right.next",
        "plan.limits.right.side",
        "plan.limits.right.wrongOrder",
        "plan.limits.room",
        "plan.linkage",
        "plan.linkage.curve",
        "plan.linkage.curve.ackermann",
        "plan.linkage.curve.left",
        "plan.linkage.curve.pitman",
        "plan.linkage.curve.ramClearance",
        "plan.linkage.curve.ramLength",
        "plan.linkage.curve.ratio",
        "plan.linkage.curve.right",
        "plan.linkage.curve.travel",
        "plan.linkage.geometry",
        "plan.linkage.geometry.box",
        "plan.linkage.geometry.box.sweep",
        "plan.linkage.geometry.box.turns",
        "plan.linkage.geometry.chain",
        "plan.linkage.geometry.chain.branch",
        "plan.linkage.geometry.chain.centre",
        "plan.linkage.geometry.chain.end",
        "plan.linkage.geometry.chain.end.arm",
        "plan.linkage.geometry.chain.end.arm.x",
        "plan.linkage.geometry.chain.end.arm.y",
        "plan.linkage.geometry.chain.end.kind",
        "plan.linkage.geometry.chain.end.side",
        "plan.linkage.geometry.chain.link",
        "plan.linkage.geometry.chain.offCentre",
        "plan.linkage.geometry.chain.pitman",
        "plan.linkage.geometry.chain.pivot",
        "plan.linkage.geometry.chain.pivot.x",
        "plan.linkage.geometry.chain.pivot.y",
        "plan.linkage.geometry.groundSpacing",
        "plan.linkage.geometry.linkage",
        "plan.linkage.geometry.linkage.branch",
        "plan.linkage.geometry.linkage.branch.left",
        "plan.linkage.geometry.linkage.branch.right",
        "plan.linkage.geometry.linkage.left",
        "plan.linkage.geometry.linkage.left.lean",
        "plan.linkage.geometry.linkage.left.length",
        "plan.linkage.geometry.linkage.middle",
        "plan.linkage.geometry.linkage.right",
        "plan.linkage.geometry.linkage.right.lean",
        "plan.linkage.geometry.linkage.right.length",
        "plan.linkage.geometry.linkage.rod",
        "plan.linkage.geometry.linkage.spacing",
        "plan.linkage.geometry.linkage.tieRod",
        "plan.linkage.geometry.linkage.toe",
        "plan.linkage.geometry.ram",
        "plan.linkage.geometry.ram.above",
        "plan.linkage.geometry.ram.ahead",
        "plan.linkage.geometry.ram.along",
        "plan.linkage.geometry.ram.base",
        "plan.linkage.geometry.ram.base.x",
        "plan.linkage.geometry.ram.base.y",
        "plan.linkage.geometry.ram.base.z",
        "plan.linkage.geometry.ram.bodyDiameter",
        "plan.linkage.geometry.ram.bodyLength",
        "plan.linkage.geometry.ram.closed",
        "plan.linkage.geometry.ram.ended",
        "plan.linkage.geometry.ram.stroke",
        "plan.linkage.geometry.range",
        "plan.linkage.geometry.range.left",
        "plan.linkage.geometry.range.left.angle",
        "plan.linkage.geometry.range.left.travel",
        "plan.linkage.geometry.range.left.why",
        "plan.linkage.geometry.range.right",
        "plan.linkage.geometry.range.right.angle",
        "plan.linkage.geometry.range.right.travel",
        "plan.linkage.geometry.range.right.why",
        "plan.linkage.geometry.rodDiameter",
        "plan.linkage.geometry.rodHeight",
        "plan.linkage.geometry.suspension",
        "plan.linkage.geometry.suspension.ballHeight",
        "plan.linkage.geometry.suspension.jointHeight",
        "plan.linkage.geometry.suspension.trackBar",
        "plan.linkage.geometry.suspension.trackBar.above",
        "plan.linkage.geometry.suspension.trackBar.frameEnd",
        "plan.linkage.geometry.suspension.trackBar.length",
        "plan.linkage.geometry.wheel",
        "plan.linkage.geometry.wheel.diameter",
        "plan.linkage.geometry.wheel.outset",
        "plan.linkage.geometry.wheel.width",
        "plan.linkage.geometry.wheelbase",
        "plan.numbers",
        "plan.numbers[].card",
        "plan.numbers[].dimension",
        "plan.numbers[].id",
        "plan.numbers[].inputs",
        "plan.numbers[].inputs{}",
        "plan.numbers[].inputs{}.dimension",
        "plan.numbers[].inputs{}.origin",
        "plan.numbers[].inputs{}.origin.column",
        "plan.numbers[].inputs{}.origin.id",
        "plan.numbers[].inputs{}.origin.kind",
        "plan.numbers[].inputs{}.origin.mark",
        "plan.numbers[].inputs{}.origin.path",
        "plan.numbers[].inputs{}.origin.row",
        "plan.numbers[].inputs{}.origin.statistic",
        "plan.numbers[].inputs{}.origin.table",
        "plan.numbers[].inputs{}.origin.typed",
        "plan.numbers[].inputs{}.origin.why",
        "plan.numbers[].inputs{}.si",
        "plan.numbers[].si",
        "plan.numbers[].uncertainty",
        "plan.parts",
        "plan.parts.currency",
        "plan.parts.lines",
        "plan.parts.lines[].eachMinor",
        "plan.parts.lines[].maker",
        "plan.parts.lines[].name",
        "plan.parts.lines[].partNumber",
        "plan.parts.lines[].parts",
        "plan.parts.lines[].quantity",
        "plan.parts.lines[].state",
        "plan.parts.lines[].supplier",
        "plan.parts.lines[].totalMinor",
        "plan.parts.toOrderMinor",
        "plan.parts.totalMinor",
        "plan.parts.unpriced",
        "plan.steps",
        "plan.steps[].about",
        "plan.steps[].after",
        "plan.steps[].cautions",
        "plan.steps[].code",
        "plan.steps[].typed",
        "plan.strokes",
        "plan.strokes[].closed",
        "plan.strokes[].margin",
        "plan.strokes[].series",
        "plan.strokes[].shift",
        "plan.strokes[].size",
        "plan.strokes[].stroke",
        "plan.strokes[].verdict",
        "plan.survey",
        "plan.survey.left",
        "plan.survey.readings",
        "plan.survey.readings[].at",
        "plan.survey.readings[].mark",
        "plan.survey.right",
        "plan.torques",
        "plan.torques[].angle",
        "plan.torques[].from",
        "plan.torques[].joints",
        "plan.torques[].lastRecord",
        "plan.torques[].lastRecord.on",
        "plan.torques[].lastRecord.value",
        "plan.torques[].lastRecord.within",
        "plan.torques[].recheckAfter",
        "plan.torques[].source",
        "plan.torques[].spec",
        "plan.torques[].tolerance",
        "plan.torques[].typedTolerance",
        "plan.torques[].typedValue",
        "plan.torques[].value",
        "plan.torques[].what",
        "version",
      ]
    `)
  })

  it('twice gives the same', async () => {
    const [one, other] = await Promise.all([json(['plan', '-'], { input: text.bought }), json(['plan', '-'], { input: text.bought })])
    expect(one).toEqual(other)
  })
})

describe('bad input', () => {
  it.each([
    ['no file', ['plan', 'not-there.json'], '"not-there.json" cannot be read: there is no such file.\n'],
    ['a folder', ['plan', '.'], '"." cannot be read: it is a folder.\n'],
    ['nothing named', ['plan'], 'Something is missing. Use: plan FILE [--json] [--workings] [--units inch|metric]\n'],
    ['two files', ['plan', 'a', 'b'], '"b" is one too many. Use: plan FILE [--json] [--workings] [--units inch|metric]\n'],
    ['an option that there is not', ['plan', 'a', '--colour'], /^Unknown option '--colour'\. Use: plan FILE/],
    ['units that there are not', ['plan', 'a', '--units', 'cubits'], '--units takes inch, metric, not "cubits".\n'],
  ])('%s: exit 2, a message on stderr, nothing on stdout', async (_what, args, message) => {
    const run = await cli(args, { cwd: folder() })
    expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
    if (typeof message === 'string') expect(run.err).toBe(message)
    else expect(run.err).toMatch(message)
  })

  it('a file with faults: every one on a line of its own, its place first', async () => {
    const spoilt = {
      ...structuredClone(DEMO_FILES.bought),
      colour: 'red',
      version: 2,
      vehicle: { id: 'v', name: 'V', wheelbase: '112 psi' },
    }
    for (const args of [
      ['plan', '-'],
      ['plan', '-', '--json'],
      ['sheet', '-', '-o', 'out.pdf'],
    ]) {
      const where = folder()
      const run = await cli(args, { input: JSON.stringify(spoilt), cwd: where })
      expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
      expect(run.err.trimEnd().split('\n').sort()).toEqual([
        'colour: "colour" is not known here. Is it misspelt?',
        'vehicle.wheelbase: "112 psi" is a pressure, but a length is asked for.',
        'version: This file is of version 2, written by a newer program; this one reads version 1.',
      ])
      expect(readdirSync(where)).toEqual([])
    }
  })

  it.each([
    ['no JSON', 'nonsense'],
    ['an empty input', ''],
    ['NaN', '{"format": NaN}'],
  ])('%s: one plain line', async (_what, input) => {
    const run = await cli(['plan', '-'], { input })
    expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
    expect(run.err).toMatch(/^This is not a build file \(.+\)\. A build file comes from Export .+\n$/)
  })
})

describe('sheet', () => {
  it.each([
    ['a4', [595.28, 841.89]],
    ['letter', [612, 792]],
  ] as const)('writes a PDF on %s, and says what stops the build', async (paper, [width, height]) => {
    const out = join(folder(), 'sheet.pdf')
    const run = await cli(['sheet', '-', '-o', out, '--paper', paper], { input: text.bought })
    expect({ code: run.code, err: run.err }).toEqual({ code: 1, err: '' })
    expect(run.out).toBe(`Wrote ${out}. The sheet says what stops the build: 6 findings.\n`)
    const pdf = readPdf(readFileSync(out))
    expect(pdf.pages.length).toBeGreaterThan(3)
    for (const page of pdf.pages) {
      expect(page.width).toBeCloseTo(width, 1)
      expect(page.height).toBeCloseTo(height, 1)
    }
    expect(pdf.tagged).toBe(true)
    expect(pdf.pages.map((p) => p.text).join(' ')).toContain('Larch')
  })

  it('of a build that nothing stops: exit 0; A4 where nothing is said; --output is -o', async () => {
    const out = join(folder(), 'sheet.pdf')
    const run = await cli(['sheet', file(text.corrected), '--output', out])
    expect(run).toEqual({ code: 0, out: `Wrote ${out}.\n`, err: '' })
    expect(readPdf(readFileSync(out)).pages[0]?.width).toBeCloseTo(595.28, 1)
  })

  it('takes the place of an older one whole, and leaves nothing else behind', async () => {
    const where = folder()
    writeFileSync(join(where, 'sheet.pdf'), 'old')
    expect((await cli(['sheet', '-', '-o', 'sheet.pdf'], { input: text.corrected, cwd: where })).code).toBe(0)
    expect(readdirSync(where)).toEqual(['sheet.pdf'])
    expect(readFileSync(join(where, 'sheet.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
  })

  it('may be written to a name that begins with a hyphen and a figure', async () => {
    const where = folder()
    expect((await cli(['sheet', '-', '-o', '-6.pdf'], { input: text.corrected, cwd: where })).code).toBe(0)
    expect(readdirSync(where)).toEqual(['-6.pdf'])
  })

  it.each([
    ['no place to write to', ['sheet', '-'], /^Say where to write it with -o\. Use: sheet/],
    ['-o without a name', ['sheet', '-', '-o'], /argument missing\. Use: sheet/],
    ['a paper that there is not', ['sheet', '-', '-o', 'x.pdf', '--paper', 'a5'], /^--paper takes a4, letter, not "a5"\.$/],
    [
      'a folder that there is not',
      ['sheet', '-', '-o', 'not/there/x.pdf'],
      /^"not\/there\/x\.pdf" was not written: that folder does not exist\.$/,
    ],
    ['a folder in the place of the file', ['sheet', '-', '-o', 'taken.pdf'], /^"taken\.pdf" was not written: a folder has that name\.$/],
    [
      'a name that is not a sheet’s',
      ['sheet', '-', '-o', 'larch.json'],
      /^"larch\.json" was not written: the name of a sheet ends in \.pdf\.$/,
    ],
  ])('%s: exit 2, and nothing written', async (_what, args, message) => {
    const where = folder()
    mkdirSync(join(where, 'taken.pdf'))
    const run = await cli(args, { input: text.bought, cwd: where })
    expect({ code: run.code, out: run.out }).toEqual({ code: 2, out: '' })
    expect(run.err.trimEnd()).toMatch(message)
    expect(readdirSync(where)).toEqual(['taken.pdf'])
    expect(existsSync(join(where, 'not'))).toBe(false)
  })
})
