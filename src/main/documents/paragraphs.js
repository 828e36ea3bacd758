import { breakLines, lineHeight, writeLines } from './lines.ts';
import { element } from './sheet.ts';
/** A paragraph as pieces of one line each, the first two and the last two lines kept together. */
export function paragraph(sheet, parent, text, face, at) {
    const lines = breakLines(sheet, text, face, at.width);
    const own = element(sheet, parent, at.type ?? 'P');
    return lines.map((line, i) => ({
        height: lineHeight(face),
        gap: i === 0 ? (at.gap ?? 0) : 0,
        keep: i === lines.length - 1 ? (at.keep ?? false) : i === 0 || i === lines.length - 2,
        draw: (y) => writeLines(sheet, own, [i < lines.length - 1 ? `${line} ` : line], face, { x: at.x, y, width: at.width }),
    }));
}
/** Several pieces as one that is never cut; for what must be read in one look. */
export function together(pieces, gap = 0, keep = false) {
    const height = pieces.reduce((sum, p, i) => sum + p.height + (i === 0 ? 0 : (p.gap ?? 0)), 0);
    return {
        height,
        gap,
        keep,
        draw: (y) => {
            let at = y;
            pieces.forEach((p, i) => {
                at += i === 0 ? 0 : (p.gap ?? 0);
                p.draw(at);
                at += p.height;
            });
        },
    };
}
