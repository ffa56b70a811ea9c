import { topic } from './entry.ts';

const ARGS = 'table: a block of cells with headings in its first row | column: a heading or a number, 1 for the first | conditions: a block with headings, and below each what to look for';
/** Two sorts of cloth with their lengths, and the condition that picks the first. */
const EXAMPLE = '({"cloth";"pieces"|"wool";3|"silk";2|"wool";5}, "pieces", {"cloth"|"wool"})';

export const TABLES = topic('Tables with headings', [
  ['DSUM', ARGS, 'Adds up a column, in the rows that fit.', `DSUM${EXAMPLE}`, 'add up rows of a table'],
  ['DAVERAGE', ARGS, 'The average of a column, in the rows that fit.', `DAVERAGE${EXAMPLE}`],
  ['DCOUNT', ARGS, 'Counts the figures of a column, in the rows that fit.', `DCOUNT${EXAMPLE}`],
  ['DCOUNTA', ARGS, 'Counts the filled cells of a column, in the rows that fit.', `DCOUNTA${EXAMPLE}`],
  ['DGET', ARGS, 'The cell of a column in the one row that fits.', 'DGET({"cloth";"pieces"|"wool";3|"silk";2}, "pieces", {"cloth"|"silk"})'],
  ['DMAX', ARGS, 'The greatest figure of a column, in the rows that fit.', `DMAX${EXAMPLE}`],
  ['DMIN', ARGS, 'The least figure of a column, in the rows that fit.', `DMIN${EXAMPLE}`],
  ['DPRODUCT', ARGS, 'The product of a column, in the rows that fit.', `DPRODUCT${EXAMPLE}`],
  ['DSTDEV', ARGS, 'The standard deviation of a column, in the rows that fit, as a sample of more.', `DSTDEV${EXAMPLE}`],
  ['DSTDEVP', ARGS, 'The standard deviation of a column, in the rows that fit, as all that there are.', `DSTDEVP${EXAMPLE}`],
  ['DVAR', ARGS, 'The variance of a column, in the rows that fit, as a sample of more.', `DVAR${EXAMPLE}`],
  ['DVARP', ARGS, 'The variance of a column, in the rows that fit, as all that there are.', `DVARP${EXAMPLE}`],
]);
