import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../src/main/procedures/demo.ts'
import { launchBrowser } from './browser.ts'
import { chooseFile, expectAccessible, expectNoSidewaysScroll, openPage, textOf } from './page.ts'
import { given, type Running, startProgram } from './program.ts'
import { spoil } from './spoil.ts'

let browser: Browser
let empty: Running
let full: Running

beforeAll(async () => {
  browser = await launchBrowser()
  empty = await startProgram()
  full = await startProgram()
  given(await full.procedures['demo.add']({ which: 'bought' }))
  const second = { ...corrected, build: { ...corrected.build, id: 'second', name: 'Second go' } }
  given(await full.procedures['builds.import']({ text: JSON.stringify(second), replace: false }))
})
afterAll(async () => {
  await browser.close()
  await empty.close()
  await full.close()
})

const { bought, corrected } = DEMO_FILES

/** Walks over every screen, sheet and menu there is, and calls back at each. */
async function everywhere(page: Page, visit: (what: string) => Promise<void>): Promise<void> {
  await page.locator('.builds-open').first().waitFor()
  await visit('start')
  const importing = () => page.getByRole('button', { name: 'Import a build file' }).click()
  await chooseFile(page, 'spoiled.json', spoil(bought), importing)
  await page.getByRole('dialog').waitFor()
  await visit('a refused file')
  await page.keyboard.press('Escape')
  await page.getByRole('dialog').waitFor({ state: 'detached' })
  await chooseFile(page, 'again.json', JSON.stringify(bought), importing)
  await page.getByRole('alertdialog').waitFor()
  await visit('a build that is there')
  await page.keyboard.press('Escape')
  await page.getByRole('alertdialog').waitFor({ state: 'detached' })

  await page.getByRole('link', { name: bought.build.name, exact: true }).click()
  const links = page.getByRole('navigation', { name: 'Sections' }).getByRole('link')
  await links.first().waitFor()
  for (let at = 0; at < (await links.count()); at += 1) {
    await links.nth(at).click()
    await expect.poll(() => links.nth(at).getAttribute('aria-current')).toBe('page')
    await visit(`section ${await textOf(links.nth(at))}`)
  }
  const folded = page.locator('.beside summary')
  if ((await folded.count()) > 0) await folded.first().click()
  await page.locator('.number-button').first().click()
  await page.getByRole('dialog').waitFor()
  await visit('a working')
  await page.keyboard.press('Escape')
  await page.getByRole('dialog').waitFor({ state: 'detached' })
  await page.getByRole('button', { name: 'Print shop sheet' }).click()
  await page.getByRole('menu').waitFor()
  await visit('the choice of paper')
}

// The two looks differ in colour alone, so in the dark one only the rules on colour are asked again.
describe.each([
  ['light', undefined],
  ['dark', ['color-contrast', 'link-in-text-block']],
] as const)('in %s', (scheme, only) => {
  it('the empty start keeps every axe rule', async () => {
    const { page, errors, close } = await openPage(browser, empty.address, { scheme })
    await page.getByRole('button', { name: 'Add Larch as first bought' }).waitFor()
    await expectAccessible(page, 'empty start', only)
    await close()
    expect(errors).toEqual([])
  })

  it('every screen, sheet and menu keeps every axe rule', async () => {
    const { page, errors, close } = await openPage(browser, full.address, { scheme })
    await everywhere(page, (what) => expectAccessible(page, what, only))
    await close()
    expect(errors).toEqual([])
  }, 180_000)
})

describe.each([
  ['a laptop', 1280, 800],
  ['a large screen', 1920, 1080],
  ['a laptop at 200 %', 640, 400],
  ['a telephone', 390, 844],
  ['a laptop at 400 % (WCAG 1.4.10)', 320, 256],
] as const)('on %s', (_, width, height) => {
  it('nothing is wider than the window', async () => {
    const { page, close } = await openPage(browser, full.address, { width, height })
    await everywhere(page, (what) => expectNoSidewaysScroll(page, what))
    await close()
  }, 120_000)
})

describe('the look', () => {
  const background = (page: Page) => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)

  it('follows the machine until another is chosen, and then stays', async () => {
    const { page, close } = await openPage(browser, empty.address, { scheme: 'dark' })
    const dark = await background(page)
    await page.getByRole('radio', { name: 'light', exact: true }).click()
    const light = await background(page)
    expect(light).not.toBe(dark)
    await page.reload()
    await page.getByRole('radio', { name: 'light', exact: true }).waitFor()
    expect(await background(page)).toBe(light)
    await page.getByRole('radio', { name: 'as the machine' }).click()
    expect(await background(page)).toBe(dark)
    await close()
  })

  it('sets the face from the program’s own files', async () => {
    const { page, close } = await openPage(browser, empty.address)
    const loaded = await page.evaluate(async () => {
      await document.fonts.ready
      return [...document.fonts].filter((font) => font.status === 'loaded').map((font) => font.family.replaceAll('"', ''))
    })
    expect(loaded).toContain('DejaVu Sans')
    await close()
  })
})
