import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../src/main/procedures/demo.ts'
import type { PartFile } from '../../src/shared/model/part.ts'
import { launchBrowser } from './browser.ts'
import { downloadOf, expectAccessible, expectNoSidewaysScroll, openPage, tabTo, textOf, type Watched } from './page.ts'
import { given, type Running, startProgram } from './program.ts'

let browser: Browser
let program: Running
let watched: Watched
let page: Page

beforeAll(async () => {
  browser = await launchBrowser()
})
afterAll(() => browser.close())
beforeEach(async () => {
  program = await startProgram()
  watched = await openPage(browser, program.address)
  page = watched.page
})
afterEach(async () => {
  const { errors } = watched
  await watched.close()
  await program.close()
  expect(errors).toEqual([])
  expect(program.faults).toEqual([])
})

const BOX: PartFile = {
  kind: 'steering box',
  id: 'box',
  name: 'Steering box',
  state: 'here',
  ends: [{ name: 'assist', connection: '-6 O-ring boss female' }],
}
const RAM: PartFile = {
  kind: 'ram',
  id: 'ram',
  name: 'Assist ram',
  state: 'here',
  ends: [{ name: 'port', connection: '-6 37° flare male' }],
}

const fileOf = async (id: string) => given(await program.procedures['builds.read']({ id })).file
const button = (name: string | RegExp) => page.getByRole('button', { name })
const heading = (name: string) => page.getByRole('heading', { level: 1, name, exact: true })
const go = (path: string) => page.evaluate((to) => window.location.assign(to), path)
const place = (name: string) => page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name, exact: true })

describe('from nothing to a sheet', () => {
  it('begins a build, takes parts from the shelf and by hand, joins, finds the way across and prints', async () => {
    for (const part of [BOX, RAM]) given(await program.procedures['shelf.save']({ part, replace: false }))

    await button('New build…').click()
    const sheet = page.getByRole('dialog', { name: 'New build' })
    await sheet.getByRole('button', { name: 'Begin' }).click()
    await sheet.getByText('Give the build a name.').waitFor()
    await sheet.getByLabel('Name of the build').fill('Assist for Alder')
    await sheet.getByLabel('Vehicle').fill('Alder')
    await sheet.getByRole('button', { name: 'Begin' }).click()
    await heading('Parts').waitFor()
    const [summary] = given(await program.procedures['builds.list']({}))
    const id = summary?.id ?? ''

    await button('Add from the shelf…').click()
    const shelf = page.getByRole('dialog', { name: 'Add from the shelf' })
    await shelf.getByRole('checkbox', { name: /Steering box/ }).check()
    await shelf.getByRole('checkbox', { name: /Assist ram/ }).check()
    await shelf.getByRole('button', { name: 'Put 2 into the build' }).click()
    await page.getByRole('link', { name: 'Assist ram' }).waitFor()

    await page.getByRole('link', { name: 'New part' }).click()
    await page.getByLabel('Kind').selectOption('hose')
    await page.getByLabel('Name', { exact: true }).fill('Ram hose')
    await page.getByLabel('Bore').fill('3/8 in')
    await page.getByText('= 0.375 in = 9.525 mm').waitFor()
    for (const [at, name] of [
      [1, 'at-box'],
      [2, 'at-ram'],
    ] as const) {
      await button('Add an end').click()
      const end = page.getByRole('group', { name: new RegExp(`^End ${at}`) })
      await end.getByLabel('Name of the end').fill(name)
      await end.getByLabel('How it joins').fill('-6 37° flare female')
      await end.getByText(/^understood as 37° flare, -6, female/).waitFor()
    }
    await button('Save into the build').click()
    await heading('Ram hose').waitFor()
    expect((await fileOf(id)).parts.map((part) => part.id)).toEqual(['box', 'ram', 'ram-hose'])

    await place('Joints').click()
    await page.getByText('Every end is joined').waitFor({ state: 'hidden' })
    await button('Join… Ram hose, at-ram').click()
    const first = page.getByRole('dialog').getByRole('button', { name: /Assist ram, port/ })
    expect(await textOf(first)).toContain('fits')
    await first.click()
    await button('Join these two').click()
    await page
      .getByRole('article', { name: /Ram hose with Assist ram/ })
      .getByText('fits', { exact: true })
      .waitFor()

    // the bad pair: told before it is made, made all the same, and put right where it stands
    await button('Join… Ram hose, at-box').click()
    await button(/does not fit.*Steering box, assist/).click()
    await button('Join them all the same').click()
    const bad = page.getByRole('article', { name: /Ram hose with Steering box/ })
    await bad.getByText('does not fit', { exact: true }).waitFor()
    await bad.getByRole('button', { name: /Find a way across/ }).click()
    const across = bad.getByRole('region', { name: /^Way across/ })
    await across.getByText('there is a way').waitFor()
    expect(await textOf(across)).toMatch(/2 leak points/)
    await across.getByRole('button', { name: /Change this hose end instead/ }).waitFor()
    await across
      .getByRole('button', { name: /Put this chain into the build/ })
      .first()
      .click()
    await bad.waitFor({ state: 'detached' })
    await expect.poll(async () => (await fileOf(id)).joints.length).toBe(3)
    await expect.poll(() => page.locator('.joint .state-stops').count()).toBe(0)
    await page.getByText('Every end is joined or left open on purpose.').waitFor()

    await place('Sheet').click()
    await button('Print shop sheet').click()
    const printed = await downloadOf(page, () => page.getByRole('menuitem', { name: 'A4' }).click())
    expect(printed.bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-')
    const after = given(await program.procedures['builds.open']({ id }))
    expect(after.findings.filter((finding) => finding.code.startsWith('fit.'))).toEqual([])
  }, 120_000)
})

describe('the joints of the demo build', () => {
  const { bought } = DEMO_FILES
  const id = bought.build.id
  beforeEach(async () => {
    given(await program.procedures['demo.add']({ which: 'bought' }))
    await go(`#/build/${id}/edit/joints`)
    await heading('Joints').waitFor()
    await page.getByRole('article').first().waitFor()
  })

  it('shows every verdict as the plan has it, and picks out those with something to put right', async () => {
    const { findings } = given(await program.procedures['builds.open']({ id }))
    const troubled = new Set(findings.filter((finding) => finding.about[0] === 'joints').map((finding) => finding.about[1]))
    expect(await page.getByRole('article').count()).toBe(bought.joints.length)
    await page.getByLabel(`only the ${troubled.size} with something to put right`).check()
    await expect.poll(() => page.getByRole('article').count()).toBe(troubled.size)
    for (const finding of findings.filter((one) => one.about[0] === 'joints' && one.severity === 'stops')) {
      const joint = bought.joints[Number(finding.about[1])]
      const card = page.locator('.joint').filter({ has: page.locator(`#joint-${joint?.id}`) })
      expect(await textOf(card)).toContain(finding.todo)
      expect(await card.locator('.verdict').getAttribute('class')).toMatch(/state-(stops|unknown)/)
    }
  })

  it('names what goes with a joint, takes one apart after asking, and the sheet follows', async () => {
    const [joint] = bought.joints
    const card = page.locator('.joint').first()
    await card.locator('.joint-aids summary').click()
    await card.getByLabel('sealant').check()
    await expect.poll(async () => (await fileOf(id)).joints[0]?.with).toEqual([...(joint?.with ?? []), 'sealant'])
    await card.getByLabel('sealant').uncheck()
    await expect.poll(async () => (await fileOf(id)).joints[0]?.with).toEqual(joint?.with)

    await card.getByRole('button', { name: /^Take apart/ }).click()
    await button('Keep it').click()
    expect((await fileOf(id)).joints).toHaveLength(bought.joints.length)
    await card.getByRole('button', { name: /^Take apart/ }).click()
    await button('Take it apart').click()
    await expect.poll(async () => (await fileOf(id)).joints.length).toBe(bought.joints.length - 1)
    await expect.poll(() => page.locator('.ends-waiting li').count()).toBeGreaterThanOrEqual(2)

    // left open on purpose, and not
    await page
      .getByRole('button', { name: /^Leave open/ })
      .first()
      .click()
    await page.getByText('left open on purpose', { exact: false }).first().waitFor()
    const open = (await fileOf(id)).parts.flatMap((part) => part.ends.filter((end) => end.leftOpen)).length
    expect(open).toBe(bought.parts.flatMap((part) => part.ends.filter((end) => end.leftOpen)).length + 1)
  })

  it('tells of a change made elsewhere, overwrites nothing, and shows it', async () => {
    const read = given(await program.procedures['builds.read']({ id }))
    const file = { ...read.file, build: { ...read.file.build, notes: 'changed elsewhere' } }
    given(await program.procedures['builds.write']({ file, basedOn: read.revision }))
    const card = page.locator('.joint').first()
    await card.locator('.joint-aids summary').click()
    await card.getByLabel('sealant').click()
    await page
      .getByRole('status')
      .getByText(/was changed meanwhile/)
      .waitFor()
    expect((await fileOf(id)).build.notes).toBe('changed elsewhere')
    await page
      .getByRole('status')
      .getByText(/shown as it is now/)
      .waitFor()
    await card.getByLabel('sealant').click()
    await expect.poll(async () => (await fileOf(id)).joints[0]?.with).toContain('sealant')
    expect((await fileOf(id)).build.notes).toBe('changed elsewhere')
  })

  it('works by keyboard: an end is picked, judged and joined, and the focus goes to the joint', async () => {
    const card = page.locator('.joint').first()
    await tabTo(page, card.getByRole('button', { name: /^Take apart/ }))
    await page.keyboard.press('Enter')
    await tabTo(page, button('Take it apart'))
    await page.keyboard.press('Enter')
    await expect.poll(async () => (await fileOf(id)).joints.length).toBe(bought.joints.length - 1)
    const join = page.getByRole('button', { name: /^Join…/ }).first()
    await tabTo(page, join)
    await page.keyboard.press('Enter')
    const candidate = page.locator('.candidate').first()
    await candidate.waitFor()
    await tabTo(page, candidate)
    await page.keyboard.press('Enter')
    await tabTo(page, button('Join these two'))
    await page.keyboard.press('Enter')
    await expect.poll(async () => (await fileOf(id)).joints.length).toBe(bought.joints.length)
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest('.joint') !== null)).toBe(true)
  }, 60_000)
})

describe.each([
  ['light', undefined],
  ['dark', ['color-contrast', 'link-in-text-block']],
] as const)('in %s', (scheme, only) => {
  it('joints, candidates and ways across keep every axe rule, and nothing is wider than a telephone', async () => {
    const { id } = DEMO_FILES.bought.build
    given(await program.procedures['demo.add']({ which: 'bought' }))
    const other = await openPage(browser, program.address, { scheme, width: scheme === 'dark' ? 390 : 1280, height: 844 })
    await other.page.evaluate((to) => window.location.assign(to), `#/build/${id}/edit/joints`)
    await other.page
      .getByRole('button', { name: /^Find a way across/ })
      .first()
      .waitFor()
    while ((await other.page.getByRole('button', { name: /^Find a way across/ }).count()) > 0)
      await other.page
        .getByRole('button', { name: /^Find a way across/ })
        .first()
        .click()
    await other.page.locator('.chain').first().waitFor()
    await expectAccessible(other.page, 'joints', only)
    await expectNoSidewaysScroll(other.page, 'joints')
    await other.page
      .getByRole('button', { name: /^Take apart/ })
      .first()
      .click()
    await other.page.getByRole('button', { name: 'Take it apart' }).click()
    await other.page
      .getByRole('button', { name: /^Join…/ })
      .first()
      .click()
    await other.page.locator('.candidate').first().waitFor()
    await expectAccessible(other.page, 'candidates', only)
    await other.page.locator('.candidate').first().click()
    await other.page.locator('.sheet .verdict').waitFor()
    await expectAccessible(other.page, 'a pair', only)
    await expectNoSidewaysScroll(other.page, 'a pair')
    await other.close()
    expect(other.errors).toEqual([])
  }, 90_000)
})
