import { artifact, INK } from './sheet.ts';
/** Dark enough to stay apart from the paper in black and white; the shape alone tells the states apart. */
const COLOURS = {
    good: '#1d5c40',
    noted: '#2f4b63',
    look: '#7a4d00',
    stops: '#8a1a10',
    unknown: '#333333',
};
/**
 * A state's shape in a square of `size` points: a tick for good, a ring with a dot for information, a triangle for a look,
 * a filled square with a bar for a stop, an open square with a question mark for not known.
 */
export function stateShape(sheet, state, x, y, size) {
    const colour = COLOURS[state];
    const [cx, cy, r] = [x + size / 2, y + size / 2, size / 2];
    artifact(sheet, (doc) => {
        doc
            .lineWidth(size * 0.12)
            .lineJoin('round')
            .lineCap('butt')
            .strokeColor(colour)
            .fillColor(colour);
        switch (state) {
            case 'good':
                doc
                    .lineWidth(size * 0.17)
                    .moveTo(x + size * 0.08, y + size * 0.55)
                    .lineTo(x + size * 0.38, y + size * 0.85)
                    .lineTo(x + size * 0.92, y + size * 0.14)
                    .stroke();
                break;
            case 'noted':
                doc.circle(cx, cy, r * 0.86).stroke();
                doc.circle(cx, cy, r * 0.34).fill();
                break;
            case 'look':
                doc.polygon([cx, y + size * 0.05], [x + size * 0.97, y + size * 0.92], [x + size * 0.03, y + size * 0.92]).stroke();
                doc.rect(cx - size * 0.055, y + size * 0.34, size * 0.11, size * 0.28).fill();
                doc.rect(cx - size * 0.055, y + size * 0.69, size * 0.11, size * 0.11).fill();
                break;
            case 'stops':
                doc.rect(x, y, size, size).fill();
                doc.rect(x + size * 0.2, cy - size * 0.09, size * 0.6, size * 0.18).fill('#ffffff');
                break;
            case 'unknown':
                doc
                    .lineWidth(size * 0.08)
                    .rect(x + size * 0.04, y + size * 0.04, size * 0.92, size * 0.92)
                    .stroke();
                doc.font('bold').fontSize(size * 0.86);
                doc.text('?', cx - doc.widthOfString('?') / 2, y + size * 0.82, { lineBreak: false, baseline: 'alphabetic' });
                break;
        }
    });
}
/** A bar beside a passage that must not be overlooked; its weight, not its colour, says how much. */
export function sideBar(sheet, x, y, height, weight) {
    artifact(sheet, (doc) => doc.rect(x, y, weight, height).fill(INK));
}
