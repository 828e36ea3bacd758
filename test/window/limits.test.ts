import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../src/main/procedures/demo.ts'
import { launchBrowser } from './browser.ts'
import { downloadOf, expectAccessible, expectNoSidewaysScroll, openPage, tabTo, textOf, type Watched } from './page.ts'
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

async function open(path: string, looks: Parameters<typeof openPage>[2] = {}): Promise<void> {
  watched = await openPage(browser, program.address, looks)
  page = watched.page
  await page.getByRole('heading', { level: 1, name: 'Steerwright' }).waitFor()
  await go(path)
}
const go = (path: string) => page.evaluate((to) => window.location.assign(to), `#/build/${id}/${path}`)
const openLimits = async (looks?: Parameters<typeof openPage>[2]) => {
  await open('edit/limits', looks)
  await slider().waitFor()
}
const slider = () => page.getByRole('slider', { name: 'Travel' })
const read = (what: string) => page.locator(`[data-read="${what}"]`)
const limit = (key: string) => page.locator(`[data-limit="${key}"]`)
const stateOf = (key: string) => limit(key).getAttribute('data-state')
const picture = () => page.getByRole('img', { name: 'Steering, seen from above' })

describe('the steering under a hand', () => {
  /** Drags from the middle of something held by `from` px. */
  const drag = async (grip: string, by: { readonly x: number; readonly y: number }) => {
    const box = await page.locator(`[data-grip="${grip}"]`).boundingBox()
    if (box === null) throw new Error(`no ${grip}`)
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 4]
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x + by.x, y + by.y, { steps: 12 })
    await page.mouse.up()
  }

  it('a wheel dragged with the mouse turns both, moves the ram, and lights its limits by shape and word', async () => {
    await openLimits()
    expect(await textOf(read('travel'))).toBe('straight ahead')
    expect(await stateOf('stop-left left')).toBe('none')
    const ram = await textOf(read('ram'))
    // the front of the wheel to the left
    await drag('left wheel', { x: -40, y: 0 })
    expect(await textOf(read('travel'))).toMatch(/to the left$/)
    expect(await textOf(read('left'))).toMatch(/° left$/)
    expect(await textOf(read('right'))).toMatch(/° left$/)
    expect(await textOf(read('ram'))).not.toBe(ram)
    // far beyond: it stays at the end of the reach, all of this side lit, the other dark
    await drag('left wheel', { x: -300, y: 160 })
    expect(await stateOf('stop-left left')).toBe('look')
    expect(await stateOf('ram left')).toBe('stops')
    expect(await textOf(limit('ram left'))).toMatch(/passed by/)
    expect(await limit('ram left').locator('.mark-solid').count()).toBe(1)
    expect(await stateOf('stop-right right')).toBe('none')
    expect(await textOf(page.locator('.steering-line'))).toMatch(/To the left, ram: passed by/)
    // the tie rod to the left turns the wheels to the right, since it lies behind the axle
    await drag('tie rod', { x: -500, y: 0 })
    expect(await textOf(read('travel'))).toMatch(/to the right$/)
    expect(await stateOf('stop-left left')).toBe('none')
    expect(await stateOf('stop-right right')).toBe('look')
  })

  it('keys, the field and the buttons do the same', async () => {
    await openLimits()
    await tabTo(page, slider())
    await page.keyboard.press('ArrowLeft')
    expect(await textOf(read('travel'))).toBe('1/16 in to the left')
    expect(await slider().getAttribute('aria-valuetext')).toBe('1/16 in to the left')
    await page.keyboard.press('PageDown')
    expect(await textOf(read('travel'))).toBe('7/16 in to the right')
    await page.keyboard.press('Home')
    expect(await stateOf('ram left')).toBe('stops')
    await page.keyboard.press('End')
    expect(await stateOf('ram right')).toBe('stops')
    await page.keyboard.press('Control+u')
    await page.getByText('Arrow keys go by 1 mm').waitFor()
    await page.keyboard.press('Control+u')

    await tabTo(page, page.getByRole('button', { name: 'left: knuckle stop' }))
    await page.keyboard.press('Enter')
    expect(await stateOf('stop-left left')).toBe('good')
    expect(await textOf(read('travel'))).toBe('4 3/32 in to the left')

    await tabTo(page, page.getByRole('textbox', { name: 'Go to' }))
    await page.keyboard.type('20°')
    await page.getByRole('combobox', { name: 'To which side' }).selectOption('right')
    await page.getByRole('button', { name: 'Go', exact: true }).click()
    expect(await textOf(read('right'))).toBe('20° right')
    await page.getByRole('textbox', { name: 'Go to' }).fill('9')
    await page.keyboard.press('Enter')
    await page.getByText('The wheels do not go so far to the right.').waitFor()
    expect(await textOf(read('right'))).toBe('20° right')
  })

  it('a step from key to laid-out picture is quick: under 8 ms in the middle of many', async () => {
    await openLimits()
    await slider().focus()
    const times = await page.evaluate(async () => {
      const input = document.querySelector<HTMLInputElement>('.travel-slider input')
      const svg = document.querySelector<SVGSVGElement>('.steering svg')
      if (input === null || svg === null) throw new Error('nothing to move')
      const took: number[] = []
      for (let i = 0; i < 240; i += 1) {
        // there and back through the whole travel
        const key = i % 120 < 60 ? 'ArrowLeft' : 'ArrowRight'
        const begun = performance.now()
        input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))
        // React carries out what a key asks for before this turn ends; reading a box makes the browser lay it out
        await Promise.resolve()
        svg.getBoundingClientRect()
        took.push(performance.now() - begun)
        await new Promise((done) => requestAnimationFrame(() => done(null)))
      }
      return took.slice(40).sort((a, b) => a - b)
    })
    const at = (share: number) => times[Math.floor(times.length * share)] ?? Number.NaN
    console.info(`a step on the page: middle ${at(0.5).toFixed(2)} ms, 95th percentile ${at(0.95).toFixed(2)} ms (wanted: under 8 ms)`)
    expect(await textOf(read('travel'))).toBe('straight ahead')
    // a shared machine may be busy: the middle is held strictly, the tail is printed and held loosely
    expect(at(0.5)).toBeLessThan(8)
    expect(at(0.95)).toBeLessThan(40)
  }, 60_000)

  it('is zoomed by buttons and by Ctrl with the wheel, fills the window and comes back', async () => {
    await openLimits()
    const width = async () => (await picture().boundingBox())?.width ?? 0
    const fit = await width()
    await page.getByRole('button', { name: 'Larger: Steering, seen from above' }).click()
    expect(await width()).toBeCloseTo(fit * 1.25, -1)
    const box = await picture().boundingBox()
    await page.mouse.move((box?.x ?? 0) + 200, (box?.y ?? 0) + 100)
    await page.keyboard.down('Control')
    await page.mouse.wheel(0, -100)
    await page.keyboard.up('Control')
    await expect.poll(width).toBeGreaterThan(fit * 1.5)
    await page.getByRole('button', { name: /^Fit.*Steering, seen/ }).click()
    await expect.poll(width).toBeCloseTo(fit, 0)

    await page.getByRole('button', { name: 'Fill the window' }).click()
    await expect.poll(async () => page.locator('.steering').boundingBox()).toMatchObject({ x: 0, y: 0, width: 1280, height: 800 })
    await expectAccessible(page, 'filling the window')
    expect(await page.locator('header.title-bar').getAttribute('inert')).not.toBeNull()
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Fill the window' }).waitFor()
    expect(await page.locator('header.title-bar').getAttribute('inert')).toBeNull()
  })

  it('has its picture as words, as a table and as a file', async () => {
    await openLimits()
    await page.getByRole('button', { name: 'left: knuckle stop' }).click()
    await page.getByText('In words and as a table').first().click()
    await page.getByRole('table', { name: /The steering over its travel/ }).waitFor()
    const saved = await downloadOf(page, () => page.getByRole('button', { name: /^Save as SVG.*Steering, seen/ }).click())
    expect(saved.name).toMatch(/plan-view\.svg$/)
    const text = saved.bytes.toString('utf8')
    expect(text).toContain('width="180mm"')
    expect(text).toContain('4 3/32 in')
    expect(text).not.toContain('grip')
    expect(text).toContain('.line-visible { stroke-width: 0.5 }')
    // an XML reader takes it; the style is left away, since the page's policy forbids one
    const fault = await page.evaluate(
      (svg) => new DOMParser().parseFromString(svg, 'image/svg+xml').querySelector('parsererror')?.textContent ?? null,
      text.replace(/<style>[\s\S]*<\/style>/, ''),
    )
    expect(fault).toBeNull()
  })

  it('bump and droop move the front view, and the strokes stand in their order with their reasons', async () => {
    await openLimits()
    const axle = page.getByRole('slider', { name: 'Axle' })
    await axle.focus()
    await page.keyboard.press('Home')
    expect(await axle.getAttribute('aria-valuetext')).toBe('5 in down')
    const droop = await textOf(page.locator('.bump .read-outs'))
    await page.keyboard.press('End')
    expect(await textOf(page.locator('.bump .read-outs'))).not.toBe(droop)
    await page.getByRole('button', { name: 'Ride height' }).click()
    expect(await textOf(page.locator('.bump .read-outs'))).toContain('none')
    const strokes = page.getByRole('table', { name: /^Standard strokes/ })
    expect(await textOf(strokes.getByRole('row').nth(1))).toMatch(/^9 in.*the one listed/)
  })
})

describe('geometry and limits', () => {
  const field = (place: string) => page.locator(`[data-place="${place}"] :is(input, select)`)
  const fileOf = async () => given(await program.procedures['builds.read']({ id })).file

  it('what the plan asks to be measured leads to its field, and what is typed there is saved', async () => {
    const file = await fileOf()
    const { bodyLength: _, ...ram } = file.geometry?.ram ?? {}
    given(
      await program.procedures['builds.write']({ file: { ...file, geometry: { ...file.geometry, ram } }, basedOn: file.build.revision }),
    )
    await open('look')
    await page
      .getByRole('article')
      .filter({ hasText: "length and diameter of the ram's body" })
      .getByRole('link', { name: /^Enter it/ })
      .click()
    await page.getByRole('heading', { level: 1, name: 'Geometry and limits' }).waitFor()
    await expect.poll(() => field('geometry.ram.bodyLength').evaluate((element) => element === document.activeElement)).toBe(true)
    await page.keyboard.type('13 in')
    await page.keyboard.press('Control+s')
    await expect.poll(async () => (await fileOf()).geometry?.ram?.bodyLength).toBe('13 in')
    // nothing else of the file has moved
    expect({ ...(await fileOf()), build: null }).toEqual({ ...demo, build: null })
  })

  it('a wrong value is told at its field, kept, and nothing is saved; limits come and go', async () => {
    await open('edit/geometry')
    await field('geometry.ram.along').fill('nine')
    await page.getByRole('button', { name: 'Add a tyre contact' }).click()
    await field('limits.3.angle').fill('41°')
    await page.keyboard.press('Control+s')
    await expect.poll(() => field('geometry.ram.along').getAttribute('aria-invalid')).toBe('true')
    expect((await fileOf()).limits).toHaveLength(3)
    // elsewhere and back: still there
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Limits' }).click()
    await slider().waitFor()
    await page.goBack()
    expect(await field('geometry.ram.along').inputValue()).toBe('nine')
    await field('geometry.ram.along').fill('9 1/4 in')
    await page.getByRole('button', { name: 'Save', exact: true }).click()
    await expect.poll(async () => (await fileOf()).limits?.length).toBe(4)
    expect((await fileOf()).geometry?.ram?.along).toBe('9 1/4 in')
    expect((await fileOf()).limits?.[3]).toEqual({ id: 'tyre-contact-both', what: 'tyre contact', side: 'both', angle: '41°' })
    await page.getByRole('button', { name: 'Take out limit 4' }).click()
    await page.keyboard.press('Control+s')
    await expect.poll(async () => (await fileOf()).limits?.length).toBe(3)
  })

  it('a change made elsewhere is told and overwritten nowhere', async () => {
    await open('edit/geometry')
    await field('axle.caster').fill('6°')
    const file = await fileOf()
    const other = { ...file, axle: { id: 'a', name: 'A', ...file.axle, track: '70 in' } }
    given(await program.procedures['builds.write']({ file: other, basedOn: file.build.revision }))
    await page.keyboard.press('Control+s')
    await page.getByRole('status').getByText('changed elsewhere meanwhile').waitFor()
    expect(await field('axle.caster').inputValue()).toBe('6°')
    await page.keyboard.press('Control+s')
    await expect.poll(async () => (await fileOf()).axle?.caster).toBe('6°')
    expect((await fileOf()).axle?.track).toBe('70 in')
  })
})

describe.each(['light', 'dark'] as const)('in %s', (scheme) => {
  it('both screens keep every axe rule', async () => {
    await openLimits({ scheme })
    await page.getByRole('button', { name: 'left: ram' }).click()
    await page.getByText('In words and as a table').first().click()
    await expectAccessible(page, 'limits')
    await go('edit/geometry')
    await page.getByRole('heading', { level: 2, name: 'Suspension' }).waitFor()
    await expectAccessible(page, 'geometry')
  }, 60_000)
})

describe.each([
  ['a laptop at 200 %', 640, 400],
  ['a telephone', 390, 844],
  ['a laptop at 400 % (WCAG 1.4.10)', 320, 256],
] as const)('on %s', (_, width, height) => {
  it('nothing is wider than the window', async () => {
    await openLimits({ width, height })
    await expectNoSidewaysScroll(page, 'limits')
    await go('edit/geometry')
    await page.getByRole('heading', { level: 2, name: 'Suspension' }).waitFor()
    await expectNoSidewaysScroll(page, 'geometry')
  })
})
