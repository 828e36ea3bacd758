import { readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { DEMO_FILES } from '../../src/main/procedures/demo.ts';
import { launchBrowser } from './browser.ts';
import { chooseFile, downloadOf, openPage, textOf } from './page.ts';
import { given, startProgram } from './program.ts';
import { spoil } from './spoil.ts';
let browser;
let program;
let watched;
let page;
beforeAll(async () => {
    browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
    program = await startProgram();
    watched = await openPage(browser, program.address);
    page = watched.page;
});
afterEach(async () => {
    const { errors } = watched;
    await watched.close();
    await program.close();
    expect(errors).toEqual([]);
    expect(program.faults).toEqual([]);
});
const bought = DEMO_FILES.bought;
const corrected = DEMO_FILES.corrected;
const opened = async (id, units) => given(await program.procedures['builds.open'](units === undefined ? { id } : { id, units }));
const addBought = async () => {
    await page.getByRole('button', { name: 'Add Larch as first bought' }).click();
    await page.getByRole('heading', { level: 1, name: bought.build.name }).waitFor();
};
/** A line of mathematics as the page sets it: what follows an underscore stands below the line, without the underscore. */
const asSet = (line) => line.replace(/(?<=\p{L})_(?=[\p{L}\p{N}])/gu, '');
const importing = () => page.getByRole('button', { name: 'Import a build file' }).click();
const section = (heading) => page.getByRole('navigation', { name: 'Sections' }).getByRole('link', { name: heading }).click();
const toStart = () => page.getByRole('link', { name: 'All builds' }).click();
describe('an empty start', () => {
    it('says what the program does, warns, offers the demo, and hides the token', async () => {
        await page.getByRole('heading', { name: 'From the first tape mark to the road test' }).waitFor();
        await page.getByText('Steering failure kills.').waitFor();
        await page.getByText(/never on a jack/).waitFor();
        expect(await page.getByRole('button', { name: /^Add Larch/ }).count()).toBe(2);
        expect(page.url()).toBe(`${program.origin}/#/`);
        expect(await page.title()).toBe('Builds · Steerwright');
    });
});
describe('the demo build as first bought', () => {
    it('shows every finding of the plan, word for word, and puts the first that stops it under Next', async () => {
        await addBought();
        const { findings, document } = await opened(bought.build.id);
        const stops = findings.filter((finding) => finding.severity === 'stops');
        expect(stops.length).toBeGreaterThanOrEqual(5);
        const stopping = document.sections.find((one) => one.id === 'stops');
        await section(stopping?.heading ?? '');
        for (const { title, why, todo } of stops) {
            const card = page.getByRole('article').filter({ has: page.getByRole('heading', { name: title, exact: true }) });
            await card.first().waitFor();
            const text = await textOf(card.first());
            expect(text).toContain(why);
            expect(text).toContain(todo);
            expect(text).toContain('stops');
        }
        const next = page.getByRole('region', { name: 'Next', exact: true });
        expect(await textOf(next)).toContain(stops[0]?.title);
        expect(await page.title()).toContain(stopping?.heading);
    });
    it('shows each section of the report in its order', async () => {
        await addBought();
        const { document } = await opened(bought.build.id);
        const headings = document.sections.map((one) => one.heading);
        expect(await page.locator('.rail-heading').allInnerTexts()).toEqual(headings);
        for (const heading of headings) {
            await section(heading);
            await page.getByRole('heading', { level: 2, name: heading, exact: true }).waitFor();
        }
    });
    it('opens a number’s working, and from there the working of a value that was itself computed', async () => {
        await addBought();
        const { workings } = await opened(bought.build.id);
        const working = workings.find((one) => one.inputs.some((input) => input.opens !== null) && one.id.startsWith('ram.'));
        const input = working?.inputs.find((one) => one.opens !== null);
        const inner = workings.find((one) => one.id === input?.opens);
        if (working === undefined || inner === undefined)
            throw new Error('the demo has no ram number that rests on another');
        await section('At a glance');
        const number = page.getByRole('complementary').getByRole('button', { name: `, ${working.label}: how it came about` });
        await number.click();
        const sheet = page.getByRole('dialog', { name: working.label, exact: true });
        await sheet.getByText(asSet(working.equation), { exact: true }).waitFor();
        for (const line of [working.equation, working.withValues, working.result])
            expect(await textOf(sheet)).toContain(asSet(line));
        expect(await textOf(sheet)).toContain(working.source);
        await sheet
            .getByRole('button', { name: input?.from ?? '', exact: true })
            .first()
            .click();
        const innerSheet = page.getByRole('dialog', { name: inner.label, exact: true });
        await innerSheet.getByText(asSet(inner.equation), { exact: true }).waitFor();
        await innerSheet.getByRole('button', { name: `Back to ${working.label}` }).click();
        await sheet.getByText(asSet(working.equation), { exact: true }).waitFor();
        await page.keyboard.press('Escape');
        await page.getByRole('dialog').waitFor({ state: 'detached' });
        await expect.poll(() => number.evaluate((element) => element === document.activeElement)).toBe(true);
    });
    it('switches every number between inch and metric', async () => {
        await addBought();
        const shown = async () => page.getByRole('complementary').locator('.numbers .number-button').allInnerTexts();
        const wanted = async (units) => {
            const { numbers } = await opened(bought.build.id, units);
            return new Set(numbers.map((number) => number.value));
        };
        await page.getByRole('radio', { name: 'mm' }).click();
        await page.getByRole('status').getByText('Numbers are in metric units.').waitFor();
        const metric = await wanted('metric');
        expect((await shown()).length).toBeGreaterThan(3);
        for (const value of await shown())
            expect(metric, value).toContain(value.split('\n')[0]?.split(', ')[0]);
        const before = await shown();
        await page.getByRole('radio', { name: 'inch' }).click();
        await page.getByRole('status').getByText('Numbers are in inch units.').waitFor();
        expect(await shown()).not.toEqual(before);
    });
    it('prints the sheet as a PDF on the paper chosen', async () => {
        await addBought();
        const sizes = [];
        for (const paper of ['A4', 'Letter']) {
            await page.getByRole('button', { name: 'Print shop sheet' }).click();
            const { name, bytes } = await downloadOf(page, () => page.getByRole('menuitem', { name: paper }).click());
            expect(name).toMatch(/\.pdf$/);
            expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
            expect(bytes.toString('latin1')).toContain('%%EOF');
            const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(bytes.toString('latin1'));
            sizes.push([Number(box?.[1]), Number(box?.[2])]);
            await page.getByRole('status').getByText(name).waitFor();
        }
        // A4 (ISO 216) is 210 × 297 mm and Letter 8.5 × 11 in; a hundredth of a point is far finer than any printer
        const points = [
            [(210 / 25.4) * 72, (297 / 25.4) * 72],
            [612, 792],
        ];
        for (const [at, size] of points.entries())
            for (const [side, wanted] of size.entries())
                expect(sizes[at]?.[side]).toBeCloseTo(wanted, 2);
    });
    it('exports the build’s file, the same to the byte as the program writes it and the same build as came in', async () => {
        await addBought();
        const { name, bytes } = await downloadOf(page, () => page.getByRole('button', { name: 'Export file' }).click());
        const file = given(await program.procedures['builds.export']({ id: bought.build.id }));
        expect(name).toBe(file.fileName);
        expect(bytes.equals(Buffer.from(file.base64, 'base64'))).toBe(true);
        expect(JSON.parse(bytes.toString('utf8'))).toEqual(bought);
    });
});
describe('importing', () => {
    it('shows everything that is wrong with a file at once, and changes nothing', async () => {
        const text = spoil(bought);
        const answer = await program.procedures['builds.import']({ text, replace: false });
        if (answer.ok)
            throw new Error('the spoiled file was taken in');
        expect(answer.problems.length).toBeGreaterThanOrEqual(3);
        await chooseFile(page, 'spoiled.json', text, importing);
        const sheet = page.getByRole('dialog', { name: 'Not taken in' });
        await sheet.waitFor();
        const lines = await sheet.getByRole('listitem').allInnerTexts();
        expect(lines).toHaveLength(answer.problems.length);
        for (const [at, { place, sentence }] of answer.problems.entries()) {
            expect(lines[at]).toContain(place);
            expect(lines[at]).toContain(sentence);
        }
        await page.keyboard.press('Escape');
        await sheet.waitFor({ state: 'detached' });
        expect(given(await program.procedures['builds.list']({}))).toEqual([]);
    });
    it('takes the corrected build in, which nothing stops', async () => {
        await chooseFile(page, 'corrected.json', JSON.stringify(corrected), importing);
        await page.getByRole('heading', { level: 1, name: corrected.build.name }).waitFor();
        expect((await opened(corrected.build.id)).summary.stops).toBe(0);
        expect(await textOf(page.getByRole('region', { name: 'Next', exact: true }))).not.toMatch(/\bstops\b/);
        await toStart();
        expect(await textOf(page.getByRole('row').filter({ hasText: corrected.build.name }))).not.toMatch(/stops? it/);
    });
    it('asks before it replaces a build of the same id', async () => {
        await addBought();
        await toStart();
        const changed = { ...bought, build: { ...bought.build, name: 'Larch, second thoughts', revision: bought.build.revision + 1 } };
        const choose = () => chooseFile(page, 'changed.json', JSON.stringify(changed), importing);
        await choose();
        const question = page.getByRole('alertdialog', { name: 'This build is here already' });
        await question.getByRole('button', { name: 'Keep what is here' }).click();
        await question.waitFor({ state: 'detached' });
        expect((await opened(bought.build.id)).summary.name).toBe(bought.build.name);
        await choose();
        await question.getByRole('button', { name: 'Replace it' }).click();
        await page.getByRole('heading', { level: 1, name: 'Larch, second thoughts' }).waitFor();
        expect((await opened(bought.build.id)).summary.revision).toBe(changed.build.revision);
    });
    it('takes a file dropped on the window, and text pasted into it', async () => {
        await page.getByRole('button', { name: 'Import a build file' }).waitFor();
        await page.evaluate((text) => {
            const dataTransfer = new DataTransfer();
            dataTransfer.items.add(new File([text], 'larch.json', { type: 'application/json' }));
            window.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
        }, JSON.stringify(corrected));
        await page.getByRole('heading', { level: 1, name: corrected.build.name }).waitFor();
        await toStart();
        const other = { ...corrected, build: { ...corrected.build, id: 'pasted', name: 'Pasted in' } };
        await page.getByRole('heading', { level: 2, name: 'Builds' }).waitFor();
        await page.evaluate((text) => {
            const clipboardData = new DataTransfer();
            clipboardData.setData('text/plain', text);
            document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
        }, JSON.stringify(other));
        await page.getByRole('heading', { level: 1, name: 'Pasted in' }).waitFor();
    });
});
describe('the page', () => {
    it('carries nothing that the content policy would have to allow', () => {
        const html = readFileSync(new URL('../../out/renderer/index.html', import.meta.url), 'utf8');
        expect(html).not.toMatch(/<style|<script(?![^>]*\bsrc=)|\sstyle=|\son\w+=|https?:\/\//);
    });
});
