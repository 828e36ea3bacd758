import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../src/main/procedures/demo.ts'
import { launchBrowser } from './browser.ts'
import { expectAccessible, expectNoSidewaysScroll, openPage, tabTo, textOf, type Watched } from './page.ts'
import { given, type Running, startProgram } from './program.ts'

const { bought } = DEMO_FILES
const id = bought.build.id

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
  given(await program.procedures['demo.add']({ which: 'bought' }))
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

const fileOf = async () => given(await program.procedures['builds.read']({ id })).file
const partOf = async (part: string) => (await fileOf()).parts.find((one) => one.id === part)
const go = (path: string) => page.evaluate((to) => window.location.assign(to), path)
const heading = (name: string) => page.getByRole('heading', { level: 1, name, exact: true })
const end = (at: number) => page.getByRole('group', { name: new RegExp(`^End ${at}\\b`) })
const openPart = async (part: string, name: string) => {
  await go(`#/build/${id}/edit/parts/${part}`)
  await heading(name).waitFor()
  await page.getByLabel('Kind').waitFor()
}

describe('the parts of a build', () => {
  beforeEach(async () => {
    await page.getByRole('link', { name: bought.build.name, exact: true }).click()
    await page.getByRole('navigation', { name: 'Change the build' }).getByRole('link', { name: 'Parts' }).click()
    await heading('Parts').waitFor()
    await page.getByRole('row').nth(1).waitFor()
  })

  it('lists every part with its ends as they were typed, and its state is set in place', async () => {
    const table = await textOf(page.getByRole('table'))
    for (const part of bought.parts) {
      expect(table).toContain(part.name)
      for (const { connection } of part.ends) expect(table).toContain(connection)
    }
    const [first] = bought.parts
    await page.getByRole('combobox', { name: `State of ${first?.name}`, exact: true }).selectOption('fitted')
    await expect.poll(async () => (await partOf(first?.id ?? ''))?.state).toBe('fitted')
  })

  it('says which joints go with a part before it is removed', async () => {
    await page.getByRole('button', { name: 'Remove… Tie rod', exact: true }).click()
    const question = page.getByRole('alertdialog')
    const joints = bought.joints.filter((joint) => [joint.a, joint.b].some((ref) => ref.startsWith('tie-rod/')))
    expect(await question.getByRole('listitem').count()).toBe(joints.length)
    await question.getByRole('button', { name: 'Remove', exact: true }).click()
    await expect.poll(() => partOf('tie-rod')).toBeUndefined()
    expect((await fileOf()).joints).toHaveLength(bought.joints.length - joints.length)
  })

  it('copies a part to the shelf and back', async () => {
    await page.getByRole('button', { name: 'To the shelf goes Tie rod', exact: true }).click()
    await page.getByRole('status').getByText('Tie rod is on the shelf, too.').waitFor()
    expect(given(await program.procedures['shelf.read']({ id: 'tie-rod' })).part).toEqual(await partOf('tie-rod'))
    await page.getByRole('button', { name: 'Add from the shelf…' }).click()
    const shelf = page.getByRole('dialog', { name: 'Add from the shelf' })
    await shelf.getByLabel('Search the shelf').fill('tie')
    await shelf.getByRole('checkbox', { name: /Tie rod/ }).check()
    await shelf.getByRole('button', { name: 'Put 1 into the build' }).click()
    await expect.poll(async () => (await fileOf()).parts.length).toBe(bought.parts.length + 1)
  })
})

describe('the editor of a part', () => {
  it('shows each quantity in the other units and keeps what was typed to the letter', async () => {
    await openPart('tie-rod', 'Tie rod')
    await page.getByText('= 1.5 in = 38.1 mm').waitFor()
    await page.getByLabel('Outside diameter').fill('38.10 mm')
    await page.getByRole('button', { name: 'Save into the build' }).click()
    await expect.poll(async () => await partOf('tie-rod')).toHaveProperty('outsideDiameter', '38.10 mm')
    const { outsideDiameter: _, ...before } = bought.parts.find((one) => one.id === 'tie-rod') as { outsideDiameter?: string }
    const { outsideDiameter: __, ...after } = (await partOf('tie-rod')) as { outsideDiameter?: string }
    expect(after).toEqual(before)
  })

  it('explains wrong input at its field, in words, and throws none of it away', async () => {
    await openPart('tie-rod', 'Tie rod')
    await page.getByLabel('Wall').fill('0.250')
    const wall = page.locator('.field').filter({ has: page.getByLabel('Wall') })
    await wall.getByText(/has no unit/).waitFor()
    expect(await page.getByLabel('Wall').getAttribute('aria-invalid')).toBe('true')
    await end(1).getByLabel('How it joins').fill('M22x1.75 male')
    await end(1)
      .getByText(/is not in ISO 261/)
      .waitFor()
    await page.getByLabel('How many').fill('four')
    await page.getByLabel('Price each').fill('about 40')
    await page.getByRole('button', { name: 'Save into the build' }).click()
    await page
      .getByRole('status')
      .getByText(/Not saved/)
      .waitFor()
    for (const [label, typed] of [
      ['Wall', '0.250'],
      ['How many', 'four'],
      ['Price each', 'about 40'],
    ] as const) {
      const field = page.locator('.field').filter({ has: page.getByLabel(label) })
      expect((await textOf(field.locator('.field-wrong'))).length, label).toBeGreaterThan(10)
      expect(await page.getByLabel(label).inputValue()).toBe(typed)
    }
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-invalid'))).toBe('true')
    await expectAccessible(page, 'a part with faults')
    expect(await partOf('tie-rod')).toEqual(bought.parts.find((one) => one.id === 'tie-rod'))
  })

  it('keeps what is not saved while one looks elsewhere and when the page is loaded anew, until it is thrown away', async () => {
    await openPart('tie-rod', 'Tie rod')
    await page.getByLabel('Name', { exact: true }).fill('Tie rod, long')
    await end(1).getByLabel('How it joins').fill('3/4-16 LH fem')
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Parts' }).click()
    await page.getByText('with changes not saved yet').waitFor()
    page.on('dialog', (dialog) => void dialog.accept())
    await page.reload()
    await page.getByRole('link', { name: 'Tie rod', exact: true }).click()
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Tie rod, long')
    expect(await end(1).getByLabel('How it joins').inputValue()).toBe('3/4-16 LH fem')
    await page.getByRole('button', { name: 'Throw away what I typed…' }).click()
    await page.getByRole('button', { name: 'Throw it away' }).click()
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Tie rod')
    expect((await partOf('tie-rod'))?.name).toBe('Tie rod')
  })

  it('keeps the fields of one kind while another is tried', async () => {
    await go(`#/build/${id}/edit/parts/new`)
    await page.getByLabel('Kind').selectOption('ram')
    await page.getByLabel('Stroke').fill('8 in')
    await page.getByLabel('Kind').selectOption('tube')
    expect(await page.getByLabel('Stroke').count()).toBe(0)
    await page.getByLabel('Kind').selectOption('ram')
    expect(await page.getByLabel('Stroke').inputValue()).toBe('8 in')
  })

  it('adds, duplicates, moves, renames and removes ends, and the joints follow', async () => {
    await openPart('tie-rod', 'Tie rod')
    await end(1).getByRole('button', { name: 'Duplicate left' }).click()
    expect(await end(2).getByLabel('Name of the end').inputValue()).toBe('left-2')
    await end(2).getByRole('button', { name: 'Move left-2 up' }).click()
    expect(await end(1).getByLabel('Name of the end').inputValue()).toBe('left-2')
    await end(1).getByLabel('left open on purpose').check()
    await end(2).getByLabel('Name of the end').fill('port-side')
    await page.getByRole('button', { name: 'Remove right', exact: true }).click()
    await page.getByRole('button', { name: 'Save into the build' }).click()
    await expect
      .poll(async () => (await partOf('tie-rod'))?.ends.map((one) => [one.name, one.leftOpen ?? false]))
      .toEqual([
        ['left-2', true],
        ['port-side', false],
        ['body', false],
      ])
    const refs = (await fileOf()).joints.flatMap((joint) => [joint.a, joint.b]).filter((ref) => ref.startsWith('tie-rod/'))
    expect(refs.sort()).toEqual(['tie-rod/body', 'tie-rod/port-side'])
  })

  it('helps to write an end, by keyboard alone', async () => {
    await openPart('tie-rod', 'Tie rod')
    await tabTo(page, end(1).getByRole('button', { name: 'Help me write it…' }))
    await page.keyboard.press('Enter')
    const sheet = page.getByRole('dialog', { name: 'Write an end' })
    await sheet.waitFor()
    await tabTo(page, sheet.getByLabel('What kind of end'))
    await sheet.getByLabel('What kind of end').selectOption('flare 37')
    await tabTo(page, sheet.getByRole('combobox', { name: 'Size' }))
    await page.keyboard.type('-6')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await sheet.getByText('-6 37° flare female', { exact: true }).waitFor()
    await sheet.getByText(/^understood as 37° flare/).waitFor()
    await expectAccessible(page, 'the chooser')
    await tabTo(page, sheet.getByRole('button', { name: 'Use this' }))
    await page.keyboard.press('Enter')
    await sheet.waitFor({ state: 'detached' })
    expect(await end(1).getByLabel('How it joins').inputValue()).toBe('-6 37° flare female')
    await page.keyboard.press('Control+s')
    await expect.poll(async () => (await partOf('tie-rod'))?.ends[0]?.connection).toBe('-6 37° flare female')
  })

  it('tells of a change made elsewhere at the part, keeps what was typed, and saves after reading anew', async () => {
    await openPart('tie-rod', 'Tie rod')
    const read = given(await program.procedures['builds.read']({ id }))
    const file = { ...read.file, build: { ...read.file.build, notes: 'changed elsewhere' } }
    given(await program.procedures['builds.write']({ file, basedOn: read.revision }))
    await page.getByLabel('Name', { exact: true }).fill('Tie rod of mine')
    await page.getByRole('button', { name: 'Save into the build' }).click()
    await page
      .getByRole('alert')
      .getByText(/was changed meanwhile/)
      .waitFor()
    await page.getByRole('button', { name: 'Read the build anew' }).click()
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Tie rod of mine')
    await page.getByRole('button', { name: 'Save into the build' }).click()
    await expect.poll(async () => (await partOf('tie-rod'))?.name).toBe('Tie rod of mine')
    expect((await fileOf()).build.notes).toBe('changed elsewhere')
  })
})

describe.each([
  ['light', 1280, undefined],
  ['dark', 390, ['color-contrast', 'link-in-text-block']],
  ['light', 320, ['color-contrast']],
] as const)('in %s at %i px', (scheme, width, only) => {
  it('parts and their editor keep every axe rule, and nothing is wider than the window', async () => {
    const other = await openPage(browser, program.address, { scheme, width, height: 800 })
    for (const [path, title] of [
      [`#/build/${id}/edit/parts`, 'Parts'],
      [`#/build/${id}/edit/parts/tie-rod`, 'Tie rod'],
      [`#/build/${id}/edit/parts/new`, 'New part'],
    ] as const) {
      await other.page.evaluate((to) => window.location.assign(to), path)
      await other.page.getByRole('heading', { level: 1, name: title, exact: true }).waitFor()
      await other.page.locator('table, .editor').first().waitFor()
      await expectAccessible(other.page, path, only)
      await expectNoSidewaysScroll(other.page, path)
    }
    await other.close()
    expect(other.errors).toEqual([])
  }, 60_000)
})
