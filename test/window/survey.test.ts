import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../src/main/procedures/demo.ts'
import type { BuildFile } from '../../src/shared/model/build.ts'
import { launchBrowser } from './browser.ts'
import { expectAccessible, expectNoSidewaysScroll, openPage, tabTo, textOf, type Watched } from './page.ts'
import { given, type Running, startProgram } from './program.ts'

let browser: Browser
let program: Running
let watched: Watched
let page: Page
let id: string

beforeAll(async () => {
  browser = await launchBrowser()
})
afterAll(() => browser.close())
beforeEach(async () => {
  program = await startProgram()
  id = given(await program.procedures['builds.create']({ name: 'Assist for Alder', vehicle: 'Alder', units: 'inch' })).id
})
afterEach(async () => {
  const { errors } = watched
  await watched.close()
  await program.close()
  expect(errors).toEqual([])
  expect(program.faults).toEqual([])
})

async function open(width = 390, height = 800, scheme: 'light' | 'dark' = 'light'): Promise<void> {
  watched = await openPage(browser, program.address, { width, height, scheme })
  page = watched.page
  await page.getByRole('heading', { level: 1, name: 'Steerwright' }).waitFor()
  await page.evaluate((to) => window.location.assign(to), `#/build/${id}/edit/survey`)
  await page.getByRole('heading', { level: 1, name: 'Travel survey' }).waitFor()
}

const fileOf = async (): Promise<BuildFile> => given(await program.procedures['builds.read']({ id })).file
const step = (name: string) => page.getByRole('heading', { level: 2, name, exact: true })
const next = () => page.getByRole('button', { name: /^Next: / })
const field = () => page.getByRole('textbox', { name: /: reading$/ })
const pad = (key: string) => page.getByRole('group', { name: 'Keys for the thumb' }).getByRole('button', { name: key, exact: true })
const running = (number: string) => page.locator(`.running-line [data-number="survey.${number}"] dd`)

/** What the demo's surveyors read, and what follows: 4 3/32 in to the left, 4 1/16 in to the right, 8 5/32 in in all. */
const READINGS = { centre: ['12 1/16', '12 1/16', '12 1/8'], left: ['8', '8'], right: ['16 1/8', '16 1/4'] } as const
const AT = (mark: 'centre' | 'left' | 'right') => READINGS[mark].map((at) => `${at} in`)

const expectWhole = async () => {
  await expect.poll(async () => (await fileOf()).survey?.note).toBe('Datum: left jam nut.')
  const { survey } = await fileOf()
  expect(survey).toMatchObject({
    resolution: '1/16 in',
    method: 'to the stops',
    endedBy: { left: 'knuckle stop', right: 'tyre contact' },
    ramAngle: '4°',
  })
  expect(survey?.madeSure).toHaveLength(5)
  for (const mark of ['centre', 'left', 'right'] as const)
    expect(survey?.readings.filter((one) => one.mark === mark).map((one) => one.at)).toEqual(AT(mark))
  const { numbers } = given(await program.procedures['builds.open']({ id }))
  for (const number of ['left', 'right', 'total', 'off-centre', 'stroke'])
    expect(await textOf(running(number))).toBe(numbers.find((one) => one.id === `survey.${number}`)?.value)
}

describe('on a telephone, from nothing to the result', () => {
  /** A thumb needs this much, px; WCAG 2.5.5 (AAA) asks for 44. */
  const THUMB = 44
  const thumb = async (target: Locator) => {
    const box = await target.boundingBox()
    expect(Math.min(box?.width ?? 0, box?.height ?? 0), `${target}`).toBeGreaterThanOrEqual(THUMB)
    await target.click()
  }
  const type = async (text: string) => {
    for (const part of text.split(' ')) {
      const key = /^\d\/\d$/.test(part) && (await pad(part).count()) > 0
      if (key) await thumb(pad(part))
      else for (const figure of part) await thumb(pad(figure))
      if (!key && text.includes(' ') && part !== text.split(' ').at(-1) && part.includes('/')) await thumb(pad('space'))
    }
  }

  it('with taps alone, each on something a thumb can hit', async () => {
    await open()
    for (const sure of ['Axle on stands', 'Tyres straight', 'Hand wheel', 'Alignment good', 'Straight edge'])
      await thumb(page.locator('.big-choice').filter({ hasText: sure }))
    await thumb(next())
    await thumb(page.locator('.big-choice').filter({ hasText: 'To the stops' }))
    await thumb(next())
    await thumb(page.locator('.big-choice').filter({ hasText: '1/16 in' }))
    for (const [mark, name] of [
      ['centre', 'Centre mark'],
      ['left', 'Full left'],
      ['right', 'Full right'],
    ] as const) {
      await thumb(next())
      await step(name).waitFor()
      for (const reading of READINGS[mark]) {
        const [whole = '', part] = reading.split(' ')
        await type(whole)
        // sixteenths have no key of their own: they are written out
        if (part !== undefined) {
          if ((await pad(part).count()) === 0) await thumb(pad('space'))
          await type(part)
        }
        expect(await field().inputValue()).toBe(reading)
        // all of the keys are in sight above the foot
        expect(((await pad('0').boundingBox())?.y ?? 0) + 48).toBeLessThanOrEqual(800)
        await thumb(pad('Add this reading'))
        await page
          .locator('.reading')
          .filter({ hasText: `${reading} in` })
          .last()
          .waitFor()
      }
      await expect.poll(async () => (await fileOf()).survey?.readings.filter((one) => one.mark === mark).length).toBe(READINGS[mark].length)
    }
    await page.getByRole('img', { name: /marks on the tie rod/ }).waitFor()
    await thumb(next())
    await thumb(page.getByRole('group', { name: 'On the left' }).locator('.big-choice').filter({ hasText: 'knuckle stop' }))
    await thumb(page.getByRole('group', { name: 'On the right' }).locator('.big-choice').filter({ hasText: 'tyre contact' }))
    await thumb(next())
    await page.getByRole('textbox', { name: 'Angle of the ram' }).fill('4')
    await thumb(next())
    await page.getByRole('textbox', { name: 'Note' }).fill('Datum: left jam nut.')
    await thumb(next())
    await step('Result').waitFor()
    await expect.poll(() => textOf(running('stroke')).catch(() => '')).not.toBe('')
    await expectWhole()
  }, 120_000)

  it('with the keyboard alone, and the focus always where the next thing is', async () => {
    await open()
    const { keyboard } = page
    const forward = async (name: string) => {
      await tabTo(page, next())
      await keyboard.press('Enter')
      await step(name).waitFor()
    }
    for (const sure of ['Axle on stands', 'Tyres straight', 'Hand wheel', 'Alignment good', 'Straight edge']) {
      await tabTo(page, page.getByRole('checkbox', { name: new RegExp(`^${sure}`) }))
      await keyboard.press('Space')
    }
    await forward('How it is measured')
    await tabTo(page, page.getByRole('radio', { name: /^To the stops/ }))
    await keyboard.press('Space')
    await forward('The tape')
    await tabTo(page, page.getByRole('radio', { name: '1/16 in' }))
    await keyboard.press('Space')
    await forward('Centre mark')
    for (const [mark, after] of [
      ['centre', 'Full left'],
      ['left', 'Full right'],
      ['right', 'What ended each side'],
    ] as const) {
      await expect.poll(() => field().evaluate((element) => element === document.activeElement)).toBe(true)
      for (const [at, reading] of READINGS[mark].entries()) {
        await keyboard.type(reading)
        await keyboard.press('Enter')
        await expect.poll(() => page.locator('.reading').count()).toBe(at + 1)
      }
      // Enter on the empty field goes on
      await keyboard.press('Enter')
      await step(after).waitFor()
    }
    await tabTo(page, page.getByRole('group', { name: 'On the left' }).getByRole('radio', { name: 'not known' }))
    for (let presses = 0; presses < 5; presses += 1) await keyboard.press('ArrowUp')
    await tabTo(page, page.getByRole('group', { name: 'On the right' }).getByRole('radio', { name: 'not known' }))
    for (let presses = 0; presses < 4; presses += 1) await keyboard.press('ArrowUp')
    await forward('Angle of the ram')
    await tabTo(page, page.getByRole('textbox', { name: 'Angle of the ram' }))
    await keyboard.type('4')
    await forward('Day and note')
    await tabTo(page, page.getByRole('textbox', { name: 'Note' }))
    await keyboard.type('Datum: left jam nut.')
    await forward('Result')
    await expectWhole()
  }, 120_000)
})

describe('a reading', () => {
  beforeEach(async () => {
    given(await program.procedures['demo.add']({ which: 'corrected' }))
    id = DEMO_FILES.corrected.build.id
  })
  const to = (name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) }).click()

  it('that does not belong is pointed out and taken out by a press; marks that cannot be are refused in words', async () => {
    await open()
    await to('Full left')
    await field().fill('9 1/2')
    await field().press('Enter')
    const apart = page.locator('[data-apart="true"]')
    await apart.getByText('lies apart').waitFor()
    expect(await textOf(apart)).toContain('9 1/2 in')
    await apart.getByRole('button').click()
    await apart.waitFor({ state: 'detached' })
    // what was taken out stands in the field, to be put right
    expect(await field().inputValue()).toBe('9 1/2 in')
    await field().fill('20')
    for (const at of ['20', '20', '20', '20', '20', '20', '20']) {
      await field().fill(at)
      await field().press('Enter')
    }
    await page.locator('.running-line').getByText('an order that cannot be').waitFor()
  })

  it('that is not understood stays in the field, says why, and holds the way on', async () => {
    await open()
    await to('Full left')
    await field().fill('8 1/x')
    await next().click()
    await page.getByRole('alert').filter({ hasText: '1/x' }).waitFor()
    expect(await field().inputValue()).toBe('8 1/x')
    await step('Full left').waitFor()
    expect((await fileOf()).survey?.readings).toHaveLength(9)
    // and a page loaded anew finds it again
    page.on('dialog', (dialog) => void dialog.accept())
    await page.reload()
    await step('Result').waitFor()
    await to('Full left')
    expect(await field().inputValue()).toBe('8 1/x')
    await field().fill('')
  })

  it('is put to a build that was changed elsewhere; a survey that was changed elsewhere is asked about', async () => {
    await open()
    await to('Full left')
    const elsewhere = async (change: (file: BuildFile) => BuildFile) => {
      const read = given(await program.procedures['builds.read']({ id }))
      given(await program.procedures['builds.write']({ file: change(read.file), basedOn: read.revision }))
    }
    await elsewhere((file) => ({ ...file, build: { ...file.build, notes: 'changed elsewhere' } }))
    await field().fill('8')
    await field().press('Enter')
    await page.getByRole('status').getByText('changed elsewhere meanwhile').waitFor()
    await expect.poll(async () => (await fileOf()).survey?.readings.length).toBe(10)
    expect((await fileOf()).build.notes).toBe('changed elsewhere')

    await elsewhere((file) => (file.survey === undefined ? file : { ...file, survey: { ...file.survey, note: 'theirs' } }))
    await field().fill('7 15/16')
    await field().press('Enter')
    const asked = page.getByRole('alert').filter({ hasText: 'Which one shall stand?' })
    await asked.waitFor()
    expect((await fileOf()).survey?.note).toBe('theirs')
    expect((await fileOf()).survey?.readings).toHaveLength(10)
    await expectAccessible(page, 'two surveys')
    await asked.getByRole('button', { name: 'Mine, over the other' }).click()
    await expect.poll(async () => (await fileOf()).survey?.readings.length).toBe(11)
    expect((await fileOf()).survey?.note).toBe(DEMO_FILES.corrected.survey?.note)
    await asked.waitFor({ state: 'detached' })
  })
})

describe.each(['light', 'dark'] as const)('in %s', (scheme) => {
  it('every step keeps every axe rule, and nothing is wider than the window', async () => {
    given(await program.procedures['demo.add']({ which: 'corrected' }))
    id = DEMO_FILES.corrected.build.id
    await open(scheme === 'light' ? 390 : 1280, 800, scheme)
    const steps = page.locator('.survey-step')
    await steps.first().waitFor()
    await page.getByRole('img', { name: /marks on the tie rod/ }).waitFor()
    for (let at = 0; at < (await steps.count()); at += 1) {
      await steps.nth(at).click()
      await expect.poll(() => steps.nth(at).getAttribute('aria-current')).toBe('step')
      await expectAccessible(page, `${scheme}, step ${at + 1}`)
      await expectNoSidewaysScroll(page, `step ${at + 1}`)
    }
    if (scheme === 'light') {
      await page.setViewportSize({ width: 320, height: 256 })
      await expectNoSidewaysScroll(page, 'at 400 %')
    }
  }, 120_000)
})
