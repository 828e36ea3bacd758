import { BLOCK_WORDS } from '../../shared/report/words.ts';
import { drawLines, widthOf } from './lines.ts';
import { artifact, INK, MM, SIZE } from './sheet.ts';
const FACE = { font: 'table', size: SIZE.footer };
const STRONG = { font: 'tableBold', size: SIZE.footer };
const HEIGHT = 20;
const PAGE_CELL = 92;
/** The title block at the foot of every page, as on a drawing: what the sheet belongs to, and which page of how many. */
export function paintFooters(sheet, text) {
    const { start, count } = sheet.doc.bufferedPageRange();
    const room = sheet.width - PAGE_CELL - 12;
    const short = shorten(sheet, text.replace(/\s+/g, ' '), room);
    for (let i = 0; i < count; i += 1) {
        sheet.doc.switchToPage(start + i);
        const y = sheet.doc.page.height - 10 * MM - HEIGHT;
        artifact(sheet, (doc) => {
            doc.rect(sheet.left, y, sheet.width, HEIGHT);
            doc.moveTo(sheet.left + sheet.width - PAGE_CELL, y).lineTo(sheet.left + sheet.width - PAGE_CELL, y + HEIGHT);
            doc.lineWidth(0.7).stroke(INK);
            drawLines(sheet, [short], FACE, { x: sheet.left + 6, y: y + 4, width: room });
            const page = `${BLOCK_WORDS.page} ${i + 1} ${BLOCK_WORDS.of} ${count}`;
            drawLines(sheet, [page], STRONG, { x: sheet.left + sheet.width - PAGE_CELL, y: y + 4, width: PAGE_CELL, align: 'centre' });
        }, 'Pagination');
    }
}
/** A text cut in its middle, so that both the vehicle and the day of printing stay in sight. */
function shorten(sheet, text, room) {
    if (widthOf(sheet, text, FACE) <= room)
        return text;
    const characters = Array.from(text);
    let keep = characters.length - 1;
    while (keep > 2) {
        const half = Math.floor(keep / 2);
        const cut = `${characters.slice(0, half).join('')} … ${characters.slice(characters.length - half).join('')}`;
        if (widthOf(sheet, cut, FACE) <= room)
            return cut;
        keep -= Math.max(1, Math.floor(keep / 20));
    }
    return '…';
}
