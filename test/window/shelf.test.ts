import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
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
})
afterEach(async () => {
  const { errors } = watched
  await watched.close()
  await program.close()
  expect(errors).toEqual([])
  expect(program.faults).toEqual([])
})

const go = (path: string) => page.evaluate((to) => window.location.assign(to), path)
const heading = (name: string) => page.getByRole('heading', { level: 1, name, exact: true })
const button = (name: string | RegExp) => page.getByRole('button', { name })
const grid = () => page.getByRole('grid', { name: 'Parts on the shelf' })
const rows = () =>
  grid()
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') })
const active = () => grid().locator('tr[data-active="true"] th')

async function openShelf(): Promise<void> {
  watched = await openPage(browser, program.address)
  page = watched.page
  await page.getByRole('link', { name: 'Shelf', exact: true }).click()
  await heading('Shelf').waitFor()
}

const CONNECTIONS = ['-6 37° flare male', '3/8 NPT female', '7/8-18 LH male', 'M18x1.5 female', '-8 O-ring boss male']

const partAt = (at: number): PartFile => ({
  kind: at % 3 === 0 ? 'adapter' : at % 3 === 1 ? 'fastener' : 'bracket',
  id: `part-${at}`,
  name: `Part ${String(at).padStart(5, '0')}`,
  supplier: at % 2 === 0 ? 'the counter' : 'by post',
  price: `${at}.50`,
  state: at % 4 === 0 ? 'here' : 'to order',
  ends: [{ name: 'one', connection: CONNECTIONS[at % CONNECTIONS.length] ?? '' }],
})

/** Puts many parts on the shelf the way a person does: as a table with the columns of an exported one. */
async function fill(count: number): Promise<void> {
  for (let at = 0; at < count; at += 500) {
    await Promise.all(
      Array.from({ length: Math.min(500, count - at) }, (_, i) =>
        program.procedures['shelf.save']({ part: partAt(at + i), replace: false }),
      ),
    )
  }
}

describe('a shelf of 5,000 parts', () => {
  beforeEach(async () => {
    await fill(5000)
    await openShelf()
    await rows().first().waitFor()
  }, 120_000)

  it('holds only the rows in sight, says how many there are, and scrolls to any of them', async () => {
    expect(await grid().getAttribute('aria-rowcount')).toBe('5001')
    expect(await rows().count()).toBeLessThan(60)
    await grid().focus()
    await page.keyboard.press('End')
    await grid().getByText('Part 04999').waitFor()
    expect(await rows().count()).toBeLessThan(60)
    await page.locator('.shelf-scroll').evaluate((box) => box.scrollTo({ top: box.scrollHeight / 2 }))
    await grid()
      .getByText(/^Part 02(4|5)\d\d$/)
      .first()
      .waitFor()
    const index = await rows().first().getAttribute('aria-rowindex')
    expect(Number(index)).toBeGreaterThan(2000)
  }, 60_000)

  it('answers each key of the search with less than 50 ms of work in the page', async () => {
    await page.evaluate(() => {
      const marks: number[] = []
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as PerformanceEventTiming[]) marks.push(entry.processingEnd - entry.processingStart)
      }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit)
      Object.assign(window, { marks })
    })
    const search = page.getByRole('searchbox', { name: 'Search' })
    await search.pressSequentially('part 0412', { delay: 60 })
    await page.getByText('10 parts found').waitFor()
    await grid().getByText('Part 04129').waitFor()
    const marks = await page.evaluate(() => (window as unknown as { marks: number[] }).marks)
    // the keys and what they set off; the slowest fifth is the other tests' that run on the same cores
    marks.sort((a, b) => a - b)
    expect(marks[Math.floor(marks.length * 0.8)] ?? 0).toBeLessThan(50)
  }, 60_000)

  it('filters, sorts and starts again at the top', async () => {
    await page.getByLabel('Kind').selectOption('bracket')
    await page.getByText('1666 parts found').waitFor()
    await page.getByLabel('State').selectOption('here')
    await page.getByLabel('With an end').selectOption('npt')
    const expected = Array.from({ length: 5000 }, (_, at) => at).filter((at) => at % 3 === 2 && at % 4 === 0 && at % 5 === 1)
    await page.getByText(`${expected.length} parts found`).waitFor()
    await page.getByLabel('Sorted by').selectOption('price')
    await page.getByLabel('backwards').check()
    await expect.poll(() => textOf(rows().first())).toContain(`Part ${String(expected.at(-1)).padStart(5, '0')}`)
    await page.getByRole('searchbox', { name: 'Search' }).fill('no such thing')
    await page.getByText('No part is like that.').waitFor()
  }, 60_000)
})

describe('the shelf by keyboard', () => {
  it('moves, marks, searches, opens, duplicates, deletes and begins, and is found as it was left', async () => {
    await fill(40)
    await openShelf()
    await rows().first().waitFor()
    await tabTo(page, page.getByRole('searchbox', { name: 'Search' }))
    await page.keyboard.press('ArrowDown')
    expect(await grid().evaluate((element) => element === document.activeElement)).toBe(true)
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => textOf(active())).toContain('Part 00002')
    expect(await grid().getAttribute('aria-activedescendant')).toBe(await active().locator('..').getAttribute('id'))
    await page.keyboard.press(' ')
    await page.getByText('1 marked').waitFor()
    await page.keyboard.press(' ')
    await page.keyboard.press('/')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('shelf-search')
    await page.keyboard.type('00007')
    await page.getByText('1 part found').waitFor()
    await page.keyboard.press('Enter')
    await page.keyboard.press('Enter')
    await heading('Part 00007').waitFor()

    // back: the question is still there
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Shelf' }).click()
    expect(await page.getByRole('searchbox', { name: 'Search' }).inputValue()).toBe('00007')
    await rows().first().waitFor()
    await grid().focus()
    await page.keyboard.press('Control+d')
    await page.getByRole('status').getByText('This is the copy.').waitFor()
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Shelf' }).click()
    await page.getByText('2 parts found').waitFor()
    await grid().focus()
    await page.keyboard.press('Delete')
    await page.getByRole('alertdialog').waitFor()
    await tabTo(page, button('Delete').last())
    await page.keyboard.press('Enter')
    await page.getByText('1 part found').waitFor()
    await grid().focus()
    await page.keyboard.press('n')
    await heading('New part').waitFor()
    expect(given(await program.procedures['shelf.search']({ query: '', offset: 0, limit: 1, sort: 'name' })).total).toBe(40)
  }, 60_000)
})

describe('a part of the shelf', () => {
  it('is written, refused where its id is taken, saved, changed, and put into a build', async () => {
    given(await program.procedures['builds.create']({ name: 'Alder', vehicle: 'Alder', units: 'inch' }))
    await fill(1)
    await openShelf()
    await page.getByRole('link', { name: 'New part' }).click()
    await button('Save to the shelf').click()
    await page
      .getByRole('status')
      .getByText(/Not saved/)
      .waitFor()
    await page.getByLabel('Name', { exact: true }).fill('Part 0')
    await button('Save to the shelf').click()
    await page.getByText('A part with the id "part-0" is on the shelf already.').first().waitFor()
    await page.getByLabel('Id in files').fill('elbow')
    await button('Save to the shelf').click()
    await expect.poll(() => page.url()).toMatch(/#\/shelf\/part\/elbow$/)
    await page.getByLabel('Price each').fill('9.80')
    await page.keyboard.press('Control+s')
    await expect.poll(async () => (await program.procedures['shelf.read']({ id: 'elbow' })).ok).toBe(true)
    await expect.poll(async () => given(await program.procedures['shelf.read']({ id: 'elbow' })).part.price).toBe('9.80')
    await button('Add to a build…').click()
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Alder/ })
      .click()
    await page.getByRole('status').getByText('Part 0 went into Alder.').waitFor()
    const [build] = given(await program.procedures['builds.list']({}))
    expect(given(await program.procedures['builds.read']({ id: build?.id ?? '' })).file.parts.map((part) => part.id)).toEqual(['elbow'])
  }, 60_000)
})

describe('tables of parts', () => {
  it('go out and come back the same, after a look at what would change', async () => {
    await fill(25)
    await openShelf()
    await rows().first().waitFor()
    const table = await downloadOf(page, () => button('Export as a table').click())
    expect(table.name).toMatch(/\.csv$/)
    for (let at = 0; at < 20; at += 1) given(await program.procedures['shelf.remove']({ id: `part-${at}` }))
    given(await program.procedures['shelf.save']({ part: { ...partAt(21), name: 'Renamed' }, replace: true }))

    const choose = async (text: Buffer | string) => {
      const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button('Import a table…').click()])
      await chooser.setFiles({ name: 'parts.csv', mimeType: 'text/csv', buffer: Buffer.from(text) })
    }
    await choose(table.bytes)
    const sheet = page.getByRole('dialog', { name: 'Take this table in?' })
    await sheet.getByText('would add 20 parts and change 1; 4 are on the shelf just so.', { exact: false }).waitFor()
    await expectAccessible(page, 'a table before it is taken in')
    expect(given(await program.procedures['shelf.search']({ query: '', offset: 0, limit: 1, sort: 'name' })).total).toBe(5)
    await sheet.getByRole('button', { name: 'Take it in' }).click()
    await page.getByText('25 parts', { exact: true }).waitFor()
    for (let at = 0; at < 25; at += 1) {
      expect(given(await program.procedures['shelf.read']({ id: `part-${at}` })).part).toEqual(partAt(at))
    }

    const [first = '', ...lines] = table.bytes.toString('utf8').split('\n')
    await choose([first, ...lines.map((line) => line.replace('7/8-18 LH male', '7/8-19 LH male'))].join('\n'))
    const refused = page.getByRole('dialog', { name: 'Not taken in' })
    await refused
      .getByText(/7\/8-19/)
      .first()
      .waitFor()
    expect(await refused.getByRole('row').count()).toBe(1 + 5)
    await expectAccessible(page, 'a refused table')
    await page.keyboard.press('Escape')
    expect(given(await program.procedures['shelf.read']({ id: 'part-2' })).part).toEqual(partAt(2))
  }, 60_000)
})

describe.each([
  ['light', 1280, undefined],
  ['dark', 390, ['color-contrast', 'link-in-text-block']],
  ['light', 320, ['color-contrast']],
  ['light', 3840, ['color-contrast']],
] as const)('in %s at %i px', (scheme, width, only) => {
  it('the shelf keeps every axe rule, and nothing is wider than the window', async () => {
    await fill(60)
    watched = await openPage(browser, program.address, { scheme, width, height: 800 })
    page = watched.page
    for (const [path, title] of [
      ['#/shelf', 'Shelf'],
      ['#/shelf/part/part-3', 'Part 00003'],
    ] as const) {
      await go(path)
      await heading(title).waitFor()
      await page.locator('.shelf tbody th, .editor').first().waitFor()
      await expectAccessible(page, path, only)
      await expectNoSidewaysScroll(page, path)
    }
    await go('#/shelf')
    await button('Add to a build…').click()
    await page.getByRole('dialog').waitFor()
    await expectAccessible(page, 'add to a build', only)
  }, 60_000)
})
