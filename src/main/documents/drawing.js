import { INK, MM } from './sheet.ts';
/** Line widths in mm after ISO 128-2, wide to narrow as 2 to 1. */
const WIDTHS = { visible: 0.5, thin: 0.25, hidden: 0.25, axis: 0.25 };
/** A capital's height as a share of the size of DejaVu Sans, so that lettering has the height it is asked for. */
const CAPITAL = 0.729;
const ARROW = { length: 3, halfWidth: 0.5 };
const FILLS = { part: '#ececec', paper: '#ffffff' };
/** Paints a drawing in its true size, with its upper left corner at `origin` (points). Lines and lettering follow ISO 128-2 and ISO 3098. */
export function paintDrawing(doc, drawing, origin) {
    doc.save();
    doc.translate(origin.x, origin.y);
    for (const item of drawing.items)
        paintItem(doc, item);
    doc.restore();
}
function paintItem(doc, item) {
    switch (item.kind) {
        case 'line':
            doc.moveTo(item.from.x * MM, item.from.y * MM).lineTo(item.to.x * MM, item.to.y * MM);
            inkPath(doc, item.ink);
            return;
        case 'polyline': {
            const [first, ...rest] = item.points;
            if (!first)
                return;
            doc.moveTo(first.x * MM, first.y * MM);
            for (const p of rest)
                doc.lineTo(p.x * MM, p.y * MM);
            if (item.closed)
                doc.closePath();
            inkPath(doc, item.ink);
            return;
        }
        case 'circle':
            doc.circle(item.centre.x * MM, item.centre.y * MM, item.radius * MM);
            inkPath(doc, item.ink);
            return;
        case 'arrow':
            paintArrow(doc, item);
            return;
        case 'text': {
            const size = (item.size * MM) / CAPITAL;
            doc.font('body').fontSize(size).fillColor(INK);
            const width = doc.widthOfString(item.text);
            const shift = item.anchor === 'start' ? 0 : item.anchor === 'middle' ? width / 2 : width;
            doc.text(item.text, item.at.x * MM - shift, item.at.y * MM, { lineBreak: false, baseline: 'alphabetic' });
        }
    }
}
function inkPath(doc, ink) {
    const width = WIDTHS[ink.line] * MM;
    doc.lineWidth(width).lineCap('butt').lineJoin('round');
    if (ink.line === 'hidden')
        doc.dash(12 * width, { space: 3 * width });
    else if (ink.line === 'axis')
        dashPattern(doc, [24, 3, 0.5, 3].map((n) => n * width));
    else
        doc.undash();
    if (ink.fill === 'part' || ink.fill === 'paper')
        doc.fillAndStroke(FILLS[ink.fill], INK);
    else
        doc.stroke(INK);
    doc.undash();
}
/** Chain lines need four lengths where pdfkit's own call takes two. */
function dashPattern(doc, lengths) {
    doc.addContent(`[${lengths.map((l) => l.toFixed(3)).join(' ')}] 0 d`);
}
/** A filled head with its tip at the point, pointing along the angle. */
function paintArrow(doc, { at, angle }) {
    const corner = (along, across) => [
        (at.x + along * Math.cos(angle) - across * Math.sin(angle)) * MM,
        (at.y + along * Math.sin(angle) + across * Math.cos(angle)) * MM,
    ];
    doc.polygon(corner(0, 0), corner(-ARROW.length, ARROW.halfWidth), corner(-ARROW.length, -ARROW.halfWidth)).fill(INK);
}
