import { INK } from './sheet.ts';
const LEADING = 1.32;
export const lineHeight = (face) => face.size * LEADING;
/** Width of a text, remembered: a sheet says the same words many times over. */
export function widthOf(sheet, text, face) {
    const key = `${face.font} ${face.size} ${text}`;
    const known = sheet.widths.get(key);
    if (known !== undefined)
        return known;
    const width = sheet.doc.font(face.font).fontSize(face.size).widthOfString(text);
    sheet.widths.set(key, width);
    return width;
}
/** Text broken to lines of `width` points: at spaces, and inside a word that is longer than a line. New lines as typed are kept. */
export function breakLines(sheet, text, face, width) {
    const lines = printable(text)
        .split('\n')
        .flatMap((paragraph) => breakParagraph(sheet, paragraph, face, width));
    return lines.length > 0 ? lines : [''];
}
function breakParagraph(sheet, paragraph, face, width) {
    const fits = (t) => widthOf(sheet, t, face) <= width;
    const space = widthOf(sheet, ' ', face);
    const lines = [];
    let line = '';
    let filled = 0;
    for (const word of paragraph.split(' ').filter((w) => w !== '')) {
        const longer = filled + space + widthOf(sheet, word, face);
        if (line !== '' && longer <= width) {
            line = `${line} ${word}`;
            filled = longer;
            continue;
        }
        if (line !== '')
            lines.push(line);
        const pieces = fits(word) ? [word] : breakWord(word, fits);
        lines.push(...pieces.slice(0, -1));
        line = pieces.at(-1) ?? '';
        filled = widthOf(sheet, line, face);
    }
    return [...lines, line];
}
function breakWord(word, fits) {
    const pieces = [];
    let piece = '';
    for (const character of word) {
        if (piece !== '' && !fits(piece + character)) {
            pieces.push(piece);
            piece = '';
        }
        piece += character;
    }
    return [...pieces, piece];
}
/** Control characters have no shape on paper; a tab or a carriage return is a space. */
const printable = (text) => Array.from(text, (c) => (c < ' ' && c !== '\n' ? ' ' : c)).join('');
/** Writes lines one below another inside the element given; all of them must fit on this page. */
export function writeLines(sheet, parent, lines, face, at) {
    parent.add(() => drawLines(sheet, lines, face, at));
}
/** The same without a place in the structure: for what is already marked otherwise. */
export function drawLines(sheet, lines, face, at) {
    const { doc } = sheet;
    doc
        .font(face.font)
        .fontSize(face.size)
        .fillColor(face.colour ?? INK);
    lines.forEach((line, i) => {
        if (line === '')
            return;
        const slack = at.align === undefined || at.align === 'left' ? 0 : at.width - widthOf(sheet, line, face);
        const x = at.x + (at.align === 'centre' ? slack / 2 : slack);
        doc.font(face.font).fontSize(face.size);
        doc.text(i < lines.length - 1 ? `${line} ` : line, x, at.y + i * lineHeight(face) + face.size * 0.08, { lineBreak: false });
    });
}
