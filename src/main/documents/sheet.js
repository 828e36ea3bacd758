import PDFDocument from 'pdfkit';
/** Points in a millimetre. */
export const MM = 72 / 25.4;
const SIZES = { a4: [210 * MM, 297 * MM], letter: [8.5 * 72, 11 * 72] };
const MARGIN = { top: 14 * MM, bottom: 24 * MM };
/** So wide that a drawing of 180 mm stands on paper in its true scale. */
const BODY_WIDTH = 180 * MM;
export const INK = '#111111';
export const QUIET = '#444444';
export const RULE = '#767676';
export const TINT = '#ececec';
/** Sizes in points: legible in black and white at arm's length under a vehicle. */
export const SIZE = { title: 20, heading: 15, subheading: 12, body: 10.5, checklist: 12, footer: 9 };
/** A blank tagged document whose dates come from the day of printing alone, so that the same report gives the same bytes. */
export function startSheet(document, paper, fonts) {
    const day = new Date(`${document.printedOn}T12:00:00Z`);
    const [pageWidth, pageHeight] = SIZES[paper];
    const doc = new PDFDocument({
        size: [pageWidth, pageHeight],
        margins: { top: 0, bottom: 0, left: 0, right: 0 },
        autoFirstPage: false,
        bufferPages: true,
        pdfVersion: '1.7',
        tagged: true,
        lang: document.language,
        displayTitle: true,
        info: {
            Title: document.title,
            Subject: document.subject,
            Creator: 'Steerwright',
            Producer: 'Steerwright',
            CreationDate: day,
            ModDate: day,
        },
    });
    for (const [name, font] of Object.entries(fonts))
        doc.registerFont(name, font);
    doc.font('body');
    doc.addPage();
    const left = (pageWidth - BODY_WIDTH) / 2;
    return { doc, left, width: BODY_WIDTH, top: MARGIN.top, bottom: pageHeight - MARGIN.bottom, y: MARGIN.top, widths: new Map() };
}
export function newPage(sheet) {
    sheet.doc.addPage();
    sheet.y = sheet.top;
}
/** A new structure element under `parent`, to be filled in reading order. */
export function element(sheet, parent, type, options = {}) {
    const made = sheet.doc.struct(type, options);
    parent.add(made);
    return made;
}
/** Draws something that carries no meaning of its own (a rule, a box, a shape beside its word): readers aloud skip it. */
export function artifact(sheet, draw, type = 'Layout') {
    sheet.doc.markContent('Artifact', { type });
    sheet.doc.save();
    draw(sheet.doc);
    sheet.doc.restore();
    sheet.doc.endMarkedContent();
}
/** A straight rule, as decoration. */
export function rule(sheet, y, weight, colour = INK, left = sheet.left, width = sheet.width) {
    artifact(sheet, (doc) => doc
        .moveTo(left, y)
        .lineTo(left + width, y)
        .lineWidth(weight)
        .stroke(colour));
}
