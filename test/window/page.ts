import { readFile } from 'node:fs/promises'
import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, Locator, Page } from 'playwright-core'
import { expect } from 'vitest'

export interface Watched {
  readonly page: Page
  /** errors the browser's console showed: a broken content policy shows up here, too */
  readonly errors: readonly string[]
  readonly close: () => Promise<void>
}

export interface Looks {
  readonly scheme?: 'light' | 'dark'
  readonly width?: number
  readonly height?: number
}

/** Opens an address in a window of its own and takes down everything that goes wrong in it. */
export async function openPage(browser: Browser, address: string, looks: Looks = {}): Promise<Watched> {
  const context = await browser.newContext({
    viewport: { width: looks.width ?? 1280, height: looks.height ?? 800 },
    colorScheme: looks.scheme ?? 'light',
    reducedMotion: 'reduce',
    acceptDownloads: true,
  })
  const page = await context.newPage()
  page.setDefaultTimeout(10_000)
  const errors: string[] = []
  page.on('console', (message) => {
    // Which features a browser knows differs by kind and version, and it reports the ones it does not know.
    if (message.text().includes('Permissions-Policy header: Unrecognized feature')) return
    if (message.type() === 'error' || message.type() === 'warning') errors.push(message.text())
  })
  page.on('pageerror', (error) => errors.push(String(error)))
  // Playwright catches the browser's file dialog only while somebody listens; a listener that comes with the key press comes late
  // on a busy machine.
  page.on('filechooser', () => undefined)
  await page.goto(address)
  return { page, errors, close: () => context.close() }
}

/** Holds what is shown now against the axe rules: every one of them, or only those named. */
export async function expectAccessible(page: Page, what: string, only?: readonly string[]): Promise<void> {
  const axe = new AxeBuilder({ page })
  const { violations } = await (only === undefined ? axe : axe.withRules([...only])).analyze()
  const found = violations.flatMap(({ id, nodes }) => nodes.map((node) => `${what}: ${id}: ${node.html.slice(0, 200)}`))
  expect(found).toEqual([])
}

/** Nothing may be wider than the window: a person with a large zoom would have to scroll every line. */
export async function expectNoSidewaysScroll(page: Page, what: string): Promise<void> {
  const beyond = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(beyond, `${what}: px wider than the window`).toBeLessThanOrEqual(0)
}

/** The bytes of the file that an action made the browser download. */
export async function downloadOf(page: Page, act: () => Promise<void>): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()])
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) }
}

/**
 * Goes to something with Tab alone, as a person without a mouse does, and checks on arrival that the focus can be seen.
 * @throws where 400 presses do not lead there: a sheet with all its numbers has some 200 stops
 */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  const name = String(target)
  for (let presses = 0; presses < 400; presses += 1) {
    await page.keyboard.press('Tab')
    const arrived = await target.evaluate((element) => element === document.activeElement)
    if (!arrived) continue
    const outlined = await target.evaluate((element) =>
      [getComputedStyle(element), getComputedStyle(element, '::after')].some(
        (style) => style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2,
      ),
    )
    expect(outlined, `the focus shows on ${name}`).toBe(true)
    return
  }
  throw new Error(`Tab does not lead to ${name}`)
}

/** Gives a file to the picker that an action opens. */
export async function chooseFile(page: Page, name: string, text: string, act: () => Promise<void>): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), act()])
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text, 'utf8') })
}

/** All the words in something, seen or only read out. */
export const textOf = async (what: Locator): Promise<string> => (await what.textContent()) ?? ''
