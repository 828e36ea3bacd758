import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../src/main/procedures/demo.ts'
import { launchBrowser } from './browser.ts'
import { expectAccessible, expectNoSidewaysScroll, type Looks, openPage, tabTo, textOf, type Watched } from './page.ts'
import { given, type Running, startProgram } from './program.ts'

const demo = DEMO_FILES.corrected
const { id } = demo.build

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
  given(await program.procedures['demo.add']({ which: 'corrected' }))
})
afterEach(async () => {
  const { errors } = watched
  await watched.close()
  await program.close()
  expect(errors).toEqual([])
  expect(program.faults).toEqual([])
})

async function open(path: string, looks: Looks = {}): Promise<void> {
  watched = await openPage(browser, program.address, looks)
  page = watched.page
  await page.getByRole('heading', { level: 1, name: 'Steerwright' }).waitFor()
  await page.evaluate((to) => window.location.assign(to), `#/build/${id}/edit/${path}`)
}
const openRam = async (looks?: Looks) => {
  await open('parts/ram', looks)
  await page.getByLabel('Bore').waitFor()
}
const storedRam = async () => given(await program.procedures['builds.read']({ id })).file.parts.find((part) => part.id === 'ram')
const ask = () => page.getByRole('button', { name: 'What would change?' })
const sheet = () => page.getByRole('dialog', { name: 'What would change' })
const focused = () => page.evaluate(() => document.activeElement?.id)

describe('a change of a part, looked at before it is kept', () => {
  it('is shown before and after side by side, gone back from, and kept, by keyboard alone', async () => {
    await openRam()
    expect(await ask().count()).toBe(0)
    await page.getByLabel('Bore').fill('1 1/4 in')
    await tabTo(page, ask())
    await page.keyboard.press('Enter')
    await sheet().waitFor()
    // π/4·(1.75 in)² and π/4·(1.25 in)²
    const area = sheet().getByRole('row').filter({ hasText: 'Area of the bore' })
    expect(await textOf(area)).toMatch(/2\.405 in².*1\.227 in²/)
    await sheet().getByText('nothing stops the build').first().waitFor()
    await expectAccessible(page, 'what would change')
    expect(await storedRam()).toMatchObject({ bore: '1 3/4 in' })

    await tabTo(page, sheet().getByRole('button', { name: 'Back to editing' }))
    await page.keyboard.press('Enter')
    await sheet().waitFor({ state: 'detached' })
    expect(await page.getByLabel('Bore').inputValue()).toBe('1 1/4 in')
    await expect.poll(() => ask().evaluate((button) => button === document.activeElement)).toBe(true)
    expect(await storedRam()).toMatchObject({ bore: '1 3/4 in' })

    await page.keyboard.press('Enter')
    await tabTo(page, sheet().getByRole('button', { name: 'Keep the change: save' }))
    await page.keyboard.press('Enter')
    await expect.poll(storedRam).toMatchObject({ bore: '1 1/4 in' })
    await sheet().waitFor({ state: 'detached' })
    await expect.poll(focused).toBe('desk')
    await expect.poll(() => ask().count()).toBe(0)
  })

  it('says by shape and word what would stop the build, and is dropped', async () => {
    await openRam()
    await page.getByLabel('Stroke').fill('4 in')
    await ask().click()
    const after = sheet().locator('.what-if-stops div').filter({ hasText: 'After' })
    expect(await textOf(after)).toMatch(/points? stops? the build/)
    expect(await after.locator('svg.state-stops').count()).toBe(1)
    await sheet().getByRole('table').filter({ hasText: 'Judgements' }).waitFor()
    await sheet().getByRole('button', { name: 'Drop the change' }).click()
    await sheet().waitFor({ state: 'detached' })
    expect(await page.getByLabel('Stroke').inputValue()).toBe('9 in')
    expect(await storedRam()).toMatchObject({ stroke: '9 in' })
    await expect.poll(focused).toBe('desk')
  })

  it('leads to the field that keeps the plan from being made', async () => {
    await openRam()
    await page.getByLabel('Bore').fill('1 3/8')
    await ask().click()
    await page
      .getByRole('status')
      .getByText(/Not compared/)
      .waitFor()
    await expect.poll(() => page.getByLabel('Bore').evaluate((field) => field === document.activeElement)).toBe(true)
    expect(await sheet().count()).toBe(0)
  })
})

describe('a change of the geometry', () => {
  it('is looked at and kept the same way', async () => {
    await open('geometry')
    await page.locator('[data-place="geometry.pitman.length"] input').fill('7 in')
    await ask().click()
    await sheet().getByRole('table').filter({ hasText: 'Numbers' }).waitFor()
    await sheet().getByRole('button', { name: 'Keep the change: save' }).click()
    await page.getByRole('status').getByText('The geometry is saved.').waitFor()
    await expect.poll(focused).toBe('desk')
    expect(given(await program.procedures['builds.read']({ id })).revision).toBe(demo.build.revision + 1)
  })
})

describe('the working of a margin', () => {
  it('says which inputs move it most, and by how much', async () => {
    watched = await openPage(browser, program.address)
    page = watched.page
    const { workings } = given(await program.procedures['builds.open']({ id }))
    const margin = workings.find((one) => one.id === 'margin.left') ?? expect.fail('no margin')
    await page.getByRole('link', { name: demo.build.name, exact: true }).click()
    await page
      .getByRole('button', { name: `, ${margin.label}: how it came about` })
      .first()
      .click()
    const working = page.getByRole('dialog', { name: margin.label, exact: true })
    const rows = working.getByRole('table', { name: 'What moves it most' }).getByRole('row')
    expect(margin.movedBy).toHaveLength(5)
    await expect.poll(() => rows.count()).toBe(1 + 5)
    for (const [i, moved] of (margin.movedBy ?? []).entries())
      for (const words of Object.values(moved)) expect(await textOf(rows.nth(i + 1))).toContain(words)
    await expectAccessible(page, 'the working of a margin')
  })
})

describe.each([
  ['dark', 390],
  ['light', 320],
] as const)('in %s at %i px', (scheme, width) => {
  it('the sheet keeps every axe rule, and nothing is wider than the window', async () => {
    await openRam({ scheme, width, height: 800 })
    await page.getByLabel('Bore').fill('1 1/4 in')
    await ask().click()
    await sheet().waitFor()
    await expectAccessible(page, 'what would change')
    await expectNoSidewaysScroll(page, 'what would change')
  })
})
