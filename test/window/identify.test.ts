import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { launchBrowser } from './browser.ts'
import { expectAccessible, expectNoSidewaysScroll, openPage, tabTo, textOf, type Watched } from './page.ts'
import { given, type Running, startProgram } from './program.ts'

let browser: Browser
let program: Running
let watched: Watched
let page: Page

beforeAll(async () => {
  browser = await launchBrowser()
  program = await startProgram()
})
afterAll(async () => {
  await browser.close()
  await program.close()
})
beforeEach(async () => {
  watched = await openPage(browser, program.address)
  page = watched.page
  await page.getByRole('link', { name: 'What is this?' }).click()
  await page.getByRole('heading', { level: 1, name: 'What is this?' }).waitFor()
})
afterEach(async () => {
  const { errors } = watched
  await watched.close()
  expect(errors).toEqual([])
  expect(program.faults).toEqual([])
})

const answer = () => page.getByRole('region', { name: 'It can be' })
const names = () => page.locator('.can-be h3').allTextContents()

describe('what is this?', () => {
  it('ranks what a measured thread can be, as the program does, and says what would tell them apart', async () => {
    await page.getByLabel('Diameter outside, at the crests').fill('22.1 mm')
    await page.getByLabel('Pitch', { exact: true }).fill('1.81 mm')
    const words = given(await program.procedures.identify({ readings: ['thread', 'od=22.1 mm', 'pitch=1.81 mm'], units: 'inch' }))
    await answer().getByText(words.answer).waitFor()
    const shown = await names()
    expect(shown).toHaveLength(words.candidates.length)
    for (const [at, candidate] of words.candidates.entries()) {
      expect(shown[at]).toContain(candidate.name)
      expect(shown[at]).toContain(candidate.word)
    }
    expect(words.further).not.toBeNull()
    expect(await textOf(answer())).toContain(words.further?.measure)
    for (const line of words.further?.expected ?? []) expect(await textOf(answer())).toContain(line)
  })

  it('narrows down with every reading more, and understands a spread typed behind a reading', async () => {
    await page.getByLabel('Diameter outside, at the crests').fill('9/16 in')
    await page.locator('.can-be').first().waitFor()
    await page.getByLabel('threads per inch').check()
    await page.getByRole('textbox', { name: 'Threads per inch' }).fill('18')
    await page.getByLabel('How it seals').selectOption('cone 37')
    await expect.poll(async () => (await names())[0]).toContain('9/16-18')
    await answer().getByRole('button', { name: '-6 37° flare male' }).waitFor()
    await page.getByLabel('Diameter outside, at the crests').fill('14.2 ± 0.05 mm')
    await expect.poll(async () => (await names())[0]).toContain('9/16-18')
    await answer().getByText('The readings as they were taken').click()
    expect(await textOf(answer())).toMatch(/± 0\.00197 in/)
  })

  it('says at the field what is wrong with a reading, and what is missing', async () => {
    await page.getByLabel('Diameter outside, at the crests').fill('22.1')
    await page.locator('.field-wrong').first().waitFor()
    expect(await textOf(page.locator('.field-wrong').first())).toMatch(/no unit/)
    await page.getByLabel('Diameter outside, at the crests').fill('220 mm')
    await answer()
      .getByText(/in the tables explains these readings/)
      .waitFor()
    await page.getByLabel('a ball stud or its hole').check()
    await answer().getByText('Type two diameters and the distance between them.', { exact: false }).waitFor()
  })

  it('carries an end that was found to the part it belongs to, by keyboard', async () => {
    await tabTo(page, page.getByLabel('Diameter outside, at the crests'))
    await page.keyboard.type('22.1 mm')
    await tabTo(page, page.getByLabel('Pitch', { exact: true }))
    await page.keyboard.type('1.81 mm')
    const use = answer().getByRole('button', { name: '7/8-14 male' })
    await use.waitFor()
    await tabTo(page, use)
    await page.keyboard.press('Enter')
    await page
      .getByRole('status')
      .getByText(/is copied/)
      .waitFor()
    await page.evaluate(() => window.location.assign('#/shelf/new'))
    await page.getByRole('button', { name: 'Add an end' }).click()
    await page.getByRole('button', { name: 'Use “7/8-14 male”' }).click()
    expect(await page.getByLabel('How it joins').inputValue()).toBe('7/8-14 male')
    await page.getByText(/^understood as Unified thread, 7\/8-14/).waitFor()

    // the readings are still there
    await page.evaluate(() => window.location.assign('#/identify'))
    expect(await page.getByLabel('Pitch', { exact: true }).inputValue()).toBe('1.81 mm')
  })

  it.each([
    ['a ball stud or its hole', { 'One diameter (d1)': '22 mm', 'The other (d2)': '20 mm', 'Distance between': '20 mm' }, '1:10'],
    ['a tube', { 'Outside diameter': '1 1/2 in', Wall: '0.250 in' }, '1.500x0.250'],
    ['a splined shaft', { 'Number of splines': '36', 'Over the tips': '3/4 in' }, '3/4-36'],
  ])('%s', async (what, typed, name) => {
    await page.getByLabel(what).check()
    for (const [label, value] of Object.entries(typed)) await page.getByLabel(label, { exact: true }).fill(value)
    await expect.poll(async () => (await names()).join()).toContain(name)
  })
})

describe.each([
  ['light', 1280, undefined],
  ['dark', 1280, ['color-contrast', 'link-in-text-block']],
  ['light', 390, ['color-contrast']],
  ['light', 320, ['color-contrast']],
] as const)('in %s at %i px', (scheme, width, only) => {
  it('every picture and answer keeps every axe rule, and nothing is wider than the window', async () => {
    const other = await openPage(browser, program.address, { scheme, width, height: 800 })
    await other.page.getByRole('link', { name: 'What is this?' }).click()
    await other.page.getByLabel('Diameter outside, at the crests').fill('22.1 mm')
    await other.page.locator('.can-be').first().waitFor()
    for (const what of ['a thread or fitting', 'a ball stud or its hole', 'a tube', 'a splined shaft']) {
      await other.page.getByLabel(what).check()
      expect(await other.page.getByRole('img').count()).toBeGreaterThan(0)
      await expectAccessible(other.page, what, only)
      await expectNoSidewaysScroll(other.page, what)
    }
    await other.page.getByLabel('a thread or fitting').check()
    await other.page.getByLabel('inside (female)').check()
    await expectAccessible(other.page, 'inside', only)
    await other.close()
    expect(other.errors).toEqual([])
  }, 60_000)
})
