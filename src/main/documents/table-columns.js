/**
 * Widths of a table's columns: each its share by weight, but none narrower than its `least` (its longest word), as far as
 * the page allows. What the narrow ones need is taken from the others in proportion to what those can spare.
 */
export function columnWidths(total, weights, least) {
    const sum = weights.reduce((a, b) => a + b, 0);
    const shares = weights.map((w) => (total * w) / sum);
    const wanted = least.reduce((a, b) => a + b, 0);
    if (wanted >= total)
        return least.map((l) => (l * total) / wanted);
    const missing = shares.reduce((need, s, i) => need + Math.max(0, least[i] - s), 0);
    const spare = shares.reduce((have, s, i) => have + Math.max(0, s - least[i]), 0);
    return shares.map((s, i) => {
        const l = least[i];
        return s <= l ? l : s - ((s - l) * missing) / spare;
    });
}
