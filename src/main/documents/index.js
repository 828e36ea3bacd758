import { blockPieces } from './blocks.ts';
import { openFonts } from './fonts.ts';
import { paintFooters } from './footer.ts';
import { paragraph, together } from './paragraphs.ts';
import { place } from './pieces.ts';
import { element, INK, newPage, QUIET, rule, SIZE, startSheet } from './sheet.ts';
/** A report as a tagged PDF of the paper asked for; the same report gives the same bytes. */
export async function renderPdf(document, { paper }) {
    const sheet = startSheet(document, paper, await openFonts());
    const bytes = collect(sheet.doc);
    const root = sheet.doc.struct('Document', { title: document.title, lang: document.language });
    sheet.doc.addStructure(root);
    place(sheet, titlePieces(sheet, root, document));
    for (const section of document.sections)
        paintSection(sheet, root, section);
    root.end();
    paintFooters(sheet, document.footer);
    sheet.doc.end();
    return bytes;
}
function collect(doc) {
    const chunks = [];
    return new Promise((resolve, reject) => {
        doc.on('data', (chunk) => chunks.push(chunk));
        doc.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
        doc.on('error', reject);
    });
}
function titlePieces(sheet, root, document) {
    const at = { x: sheet.left, width: sheet.width, keep: true };
    return [
        ...paragraph(sheet, root, document.title, { font: 'bold', size: SIZE.title }, { ...at, type: 'H1' }),
        ...paragraph(sheet, root, document.subject, { font: 'body', size: SIZE.subheading, colour: QUIET }, { ...at, gap: 2 }),
        { height: 8, draw: (y) => rule(sheet, y + 6, 1.4, INK) },
    ];
}
function paintSection(sheet, root, section) {
    if (section.startsPage && sheet.y > sheet.top)
        newPage(sheet);
    const own = element(sheet, root, 'Sect', { title: section.heading });
    const heading = together(paragraph(sheet, own, section.heading, { font: 'bold', size: SIZE.heading }, { x: sheet.left, width: sheet.width, type: 'H2' }));
    const bookmarked = {
        height: heading.height + 3,
        gap: 20,
        keep: section.blocks.length > 0,
        draw: (y) => {
            sheet.doc.outline.addItem(section.heading, { top: y - 4, left: sheet.doc.page.width });
            heading.draw(y);
        },
    };
    place(sheet, [bookmarked, ...section.blocks.flatMap((block) => blockPieces(sheet, own, block))]);
}
