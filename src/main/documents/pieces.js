import { newPage } from './sheet.ts';
/** Places pieces one below another and breaks pages between them, so that what is to be kept together is. */
export function place(sheet, pieces) {
    let i = 0;
    while (i < pieces.length) {
        const group = keptTogether(pieces, i);
        const first = group[0];
        const wanted = group.reduce((sum, p) => sum + p.height + (p.gap ?? 0), 0);
        if (sheet.y > sheet.top && sheet.y + wanted > sheet.bottom)
            breakBefore(sheet, first);
        for (const piece of group) {
            if (sheet.y > sheet.top)
                sheet.y += piece.gap ?? 0;
            if (sheet.y > sheet.top && sheet.y + piece.height > sheet.bottom)
                breakBefore(sheet, piece);
            piece.draw(sheet.y);
            sheet.y += piece.height;
        }
        i += group.length;
    }
}
function keptTogether(pieces, from) {
    let end = from;
    while (end < pieces.length - 1 && pieces[end]?.keep)
        end += 1;
    return pieces.slice(from, end + 1);
}
function breakBefore(sheet, piece) {
    newPage(sheet);
    if (!piece.again)
        return;
    piece.again.draw(sheet.y);
    sheet.y += piece.again.height;
}
/** The room a single page offers. */
export const pageRoom = (sheet) => sheet.bottom - sheet.top;
