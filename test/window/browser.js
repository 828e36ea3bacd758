import { execFileSync } from 'node:child_process';
import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rename, rm } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { createBrotliDecompress } from 'node:zlib';
import { chromium } from 'playwright-core';
const cache = resolve(import.meta.dirname, '../../node_modules/.cache/chromium');
/** Where Chrome, Edge and Chromium are put by their own installers. Windows and macOS paths are not tried by us. */
const INSTALLED = {
    linux: [
        '/usr/bin/google-chrome',
        '/usr/bin/google-chrome-stable',
        '/usr/bin/chromium',
        '/usr/bin/chromium-browser',
        '/usr/bin/microsoft-edge',
        '/snap/bin/chromium',
    ],
    darwin: [
        '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
        '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
        '/Applications/Chromium.app/Contents/MacOS/Chromium',
    ],
    win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA']
        .flatMap((name) => process.env[name] ?? [])
        .flatMap((folder) => [
        join(folder, 'Google/Chrome/Application/chrome.exe'),
        join(folder, 'Microsoft/Edge/Application/msedge.exe'),
        join(folder, 'Chromium/Application/chrome.exe'),
    ]),
};
/**
 * The npm package holds the browser compressed. Its own unpacker trusts any file called "chromium" in the shared temporary
 * folder, so it is unpacked here instead: into a private folder first, then moved into place whole, so that two test
 * processes at once never see half a file.
 */
async function place(name, fill) {
    const target = join(cache, name);
    if (existsSync(target))
        return target;
    await mkdir(cache, { recursive: true });
    const draft = await mkdtemp(join(cache, 'unpacking-'));
    try {
        await fill(draft);
        await rename(draft, target).catch((error) => {
            if (!existsSync(target))
                throw error;
        });
    }
    finally {
        await rm(draft, { recursive: true, force: true });
    }
    return target;
}
async function packaged() {
    const folder = join(dirname(fileURLToPath(import.meta.resolve('@sparticuz/chromium'))), '..');
    const { version } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
    return { folder, version };
}
async function unpackBrowser() {
    const { folder, version } = await packaged();
    const placed = await place(`chromium-${version}`, async (draft) => {
        const file = createWriteStream(join(draft, 'chromium'), { mode: 0o755 });
        await pipeline(createReadStream(join(folder, 'bin/chromium.br')), createBrotliDecompress(), file);
    });
    return join(placed, 'chromium');
}
/** The libraries the packaged browser links, for a machine that lacks them. */
async function unpackLibraries() {
    const { folder, version } = await packaged();
    const placed = await place(`libraries-${version}`, async (draft) => {
        const archive = join(draft, 'libraries.tar');
        await pipeline(createReadStream(join(folder, 'bin/al2023.tar.br')), createBrotliDecompress(), createWriteStream(archive));
        execFileSync('tar', ['-xf', archive, '-C', draft]);
        await rm(archive);
    });
    return join(placed, 'lib');
}
/**
 * A headless Chromium: the one CHROME_PATH names, or one installed on the machine, or (Linux x64) the one from npm.
 * @throws Error where none of the three is there, saying how to name one
 */
export async function launchBrowser() {
    const named = process.env.CHROME_PATH;
    if (named !== undefined && named !== '')
        return await chromium.launch({ executablePath: named });
    const installed = INSTALLED[process.platform]?.find((path) => existsSync(path));
    if (installed !== undefined)
        return await chromium.launch({ executablePath: installed });
    if (process.platform !== 'linux' || process.arch !== 'x64') {
        throw new Error('No Chrome, Edge or Chromium found: set CHROME_PATH to the program file of one.');
    }
    const executablePath = await unpackBrowser();
    try {
        return await chromium.launch({ executablePath });
    }
    catch (error) {
        if (!String(error).includes('shared libraries'))
            throw error;
        const libraries = [await unpackLibraries(), process.env.LD_LIBRARY_PATH ?? ''].filter((path) => path !== '').join(':');
        return await chromium.launch({ executablePath, env: { ...process.env, LD_LIBRARY_PATH: libraries } });
    }
}
