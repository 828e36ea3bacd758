import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../src/main/procedures/demo.ts'
import { launchBrowser } from './browser.ts'
import { chooseFile, downloadOf, openPage, tabTo, textOf } from './page.ts'
import { given, startProgram } from './program.ts'
import { spoil } from './spoil.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launchBrowser()
})
afterAll(() => browser.close())

describe('the main job without a mouse', () => {
  it('goes from the empty start to the printed sheet and the exported file', async () => {
    const program = await startProgram()
    const { page, errors, close } = await openPage(browser, program.address)
    const press = (key: string) => page.keyboard.press(key)
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '')

    // the skip link is the first stop, and leads past the heading
    await page.getByRole('button', { name: 'Add Larch as first bought' }).waitFor()
    await press('Tab')
    expect(await focused()).toBe('Skip to the builds')
    await press('Enter')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('builds')

    await tabTo(page, page.getByRole('button', { name: 'Add Larch as first bought' }))
    await press('Enter')
    await page.getByRole('heading', { level: 1, name: DEMO_FILES.bought.build.name }).waitFor()

    // a section opened from the rail takes the focus to its heading
    const report = given(await program.procedures['builds.open']({ id: DEMO_FILES.bought.build.id }))
    const stops = report.document.sections.find((section) => section.id === 'stops')?.heading ?? ''
    await tabTo(page, page.getByRole('navigation', { name: 'Sections' }).getByRole('link', { name: stops }))
    await press('Enter')
    await page.getByRole('heading', { level: 2, name: stops, exact: true }).waitFor()
    await expect.poll(focused).toBe(stops)

    // a number, its working, and back to the number
    const number = page.getByRole('complementary').locator('.number-button').first()
    await tabTo(page, number)
    await press('Enter')
    await page.getByRole('dialog').waitFor()
    await press('Tab')
    expect(await page.evaluate(() => document.activeElement?.closest('[role="dialog"]') !== null)).toBe(true)
    await press('Escape')
    await page.getByRole('dialog').waitFor({ state: 'detached' })
    await expect.poll(() => number.evaluate((element) => element === document.activeElement)).toBe(true)

    // units at a keystroke
    const units = () => textOf(page.getByRole('radio', { checked: true }))
    const first = await units()
    await press('Control+u')
    await expect.poll(units).not.toBe(first)
    await press('Control+u')
    await expect.poll(units).toBe(first)

    // the sheet: Ctrl+P opens the choice of paper, arrows and Enter choose
    await press('Control+p')
    await page.getByRole('menu').waitFor()
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('role'))).toMatch(/^menu(item)?$/)
    await press('End')
    const sheet = await downloadOf(page, () => press('Enter'))
    expect(sheet.bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-')
    expect(sheet.name).toMatch(/letter.*\.pdf$/i)

    await tabTo(page, page.getByRole('button', { name: 'Export file' }))
    const file = await downloadOf(page, () => press('Enter'))
    expect(JSON.parse(file.bytes.toString('utf8'))).toEqual(DEMO_FILES.bought)
    expect(await focused()).toBe('Export file')

    // back, a wrong file, then the corrected one
    await tabTo(page, page.getByRole('link', { name: 'All builds' }))
    await press('Enter')
    const importing = page.getByRole('button', { name: 'Import a build file' })
    await importing.waitFor()
    await tabTo(page, importing)
    await chooseFile(page, 'spoiled.json', spoil(DEMO_FILES.bought), () => press('Enter'))
    await page.getByRole('dialog', { name: 'Not taken in' }).waitFor()
    await press('Escape')
    await page.getByRole('dialog').waitFor({ state: 'detached' })
    // the focus is back where it was, so the mended file is one key away
    await expect.poll(() => importing.evaluate((element) => element === document.activeElement)).toBe(true)
    await chooseFile(page, 'corrected.json', JSON.stringify(DEMO_FILES.corrected), () => press('Enter'))
    const question = page.getByRole('alertdialog')
    const heading = page.getByRole('heading', { level: 1, name: DEMO_FILES.corrected.build.name })
    await question
      .or(heading.and(page.locator('.bench h1')))
      .first()
      .waitFor()
    if (await question.isVisible()) {
      await tabTo(page, question.getByRole('button', { name: 'Replace it' }))
      await press('Enter')
    }
    await page.locator('.bench').waitFor()
    expect(await textOf(page.getByRole('region', { name: 'Next', exact: true }))).not.toMatch(/\bstops\b/)

    // a row of the list opens with Enter
    await tabTo(page, page.getByRole('link', { name: 'All builds' }))
    await press('Enter')
    await page.locator('.builds-open').first().waitFor()
    await tabTo(page, page.locator('.builds-open').first())
    await press('Enter')
    await page.locator('.bench').waitFor()

    await close()
    await program.close()
    expect(errors).toEqual([])
    expect(program.faults).toEqual([])
  }, 120_000)
})
