import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { create } from 'fontkit';
/** DejaVu Sans holds every sign the sheet uses (Ø ° ± ½ × ✓ → ≥ and Greek) in one file; the condensed cut goes into tables. */
const FILES = {
    body: 'DejaVuSans.ttf',
    bold: 'DejaVuSans-Bold.ttf',
    table: 'DejaVuSansCondensed.ttf',
    tableBold: 'DejaVuSansCondensed-Bold.ttf',
};
let opened;
/** The sheet's fonts, read and parsed once for the life of the program. */
export function openFonts() {
    opened ??= readAll();
    return opened;
}
async function readAll() {
    const resolve = createRequire(import.meta.url).resolve;
    const open = async (name) => create(await readFile(resolve(`dejavu-fonts-ttf/ttf/${FILES[name]}`)));
    const [body, bold, table, tableBold] = await Promise.all([open('body'), open('bold'), open('table'), open('tableBold')]);
    return { body, bold, table, tableBold };
}
