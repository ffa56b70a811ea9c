/** Random texts for property tests. */
import fc from 'fast-check';

/** Texts made of what formulas are made of, so that odd meetings of them occur. */
export const formulaLike = fc.array(fc.oneof(
  fc.constantFrom(
    '=', '+', '-', '*', '/', '^', '&', '<', '<=', '<>', '>', '%', ':', '×', '÷', '−', '≤', '≥', '≠', '(', ')', '{', '}', ',', ';', '|',
    'A1', '$B$2', 'c3', 'A1:B2', 'B:B', '3:5', 'Hem!A1', "'My sheet'!A1:B2", 'ALL1000000', 'AMM1', '#REF!', '#N/A', '"text"', '"a""b"', '"', "'", '“x”',
    '5', '2.5', '.5', '1e3', '½', '2¼', '1/4', '3/5', '5⁄16', ' ', '\u00a0', ' in', 'cm', ' cm2', '"', "'", '″', '°', ' yd ', 'SUM(', 'PLEAT.DEPTH(', 'TRUE',
    'full', 'bust', 'full bust', 'é', '@', '#', '$', '!', '\\', '\n', '😀', 'ς',
  ),
  fc.string({ unit: 'binary', maxLength: 3 }),
), { maxLength: 24 }).map((parts) => `=${parts.join('')}`);
