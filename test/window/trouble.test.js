import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { FILE_NAME } from '../../src/main/database/index.ts';
import { launchBrowser } from './browser.ts';
import { chooseFile, expectAccessible, openPage, textOf } from './page.ts';
import { startProgram } from './program.ts';
let browser;
beforeAll(async () => {
    browser = await launchBrowser();
});
afterAll(() => browser.close());
describe('when something is wrong', () => {
    it('a damaged database is met with a plain message and left as it is', async () => {
        const garbage = 'this is no database, whatever its name says\n'.repeat(200);
        const program = await startProgram((folder) => writeFile(join(folder, FILE_NAME), garbage));
        const about = await program.procedures['program.about']({});
        if (about.database.ok)
            throw new Error('the garbage was opened');
        const { page, close } = await openPage(browser, program.address);
        await page.getByRole('heading', { name: 'The builds cannot be opened' }).waitFor();
        const trouble = await textOf(page.getByRole('alert').first());
        for (const { sentence } of about.database.problems)
            expect(trouble).toContain(sentence);
        expect(trouble).toContain(program.folder);
        await expectAccessible(page, 'damaged database');
        expect(await readFile(join(program.folder, FILE_NAME), 'utf8')).toBe(garbage);
        await close();
        await program.close();
    });
    it('a page without its token says how to get one', async () => {
        const program = await startProgram();
        const { page, close } = await openPage(browser, `${program.origin}/`);
        await page.getByText('This page was opened without its token.').first().waitFor();
        await expectAccessible(page, 'no token');
        await close();
        await program.close();
    });
    it('a page of an earlier start says that its address is old', async () => {
        const program = await startProgram();
        const { page, close } = await openPage(browser, `${program.origin}/#token=of-yesterday`);
        await page
            .getByText(/an earlier start of the program/)
            .first()
            .waitFor();
        await close();
        await program.close();
    });
    it('a program that was ended is missed in words, not in a blank page', async () => {
        const program = await startProgram();
        const { page, close } = await openPage(browser, program.address);
        const demo = page.getByRole('button', { name: 'Add Larch as first bought' });
        await demo.waitFor();
        await program.close();
        await demo.click();
        await page
            .getByRole('status')
            .getByText(/no longer answers/)
            .waitFor();
        expect(await demo.isEnabled()).toBe(true);
        await close();
    });
    it('an address that leads nowhere and a build that is gone lead back to the list', async () => {
        const program = await startProgram();
        const { page, close } = await openPage(browser, program.address);
        await page.getByRole('heading', { level: 1, name: 'Steerwright' }).waitFor();
        for (const [path, heading] of [
            ['#/nowhere/at/all', 'There is nothing at this address'],
            ['#/build/gone', 'The build does not open'],
            ['#/build/%E0%A4%A', 'The build does not open'],
        ]) {
            await page.evaluate((to) => window.location.assign(to), path);
            await page.getByRole('heading', { level: 1, name: heading }).waitFor();
            await expectAccessible(page, path);
        }
        await page.getByRole('link', { name: /list of builds|All builds/ }).click();
        await page.getByRole('heading', { level: 1, name: 'Steerwright' }).waitFor();
        await close();
        await program.close();
    });
    it('a file that is no build at all is refused in words', async () => {
        const program = await startProgram();
        const { page, close } = await openPage(browser, program.address);
        for (const text of ['', 'hello', '{"format": "some', '[]', '{}']) {
            await chooseFile(page, 'odd.json', text, () => page.getByRole('button', { name: 'Import a build file' }).click());
            const sheet = page.getByRole('dialog', { name: 'Not taken in' });
            await sheet.waitFor();
            expect(await sheet.getByRole('listitem').count(), text).toBeGreaterThan(0);
            await page.keyboard.press('Escape');
            await sheet.waitFor({ state: 'detached' });
        }
        await close();
        await program.close();
        expect(program.faults).toEqual([]);
    });
});
