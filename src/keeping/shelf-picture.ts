/** What of a workbook stands on its card, so that she knows it again: the first rows of its first sheet with something in them. */
import { cellAt, type Book } from '../workbook/index.ts';

const ROWS = 6;
const COLUMNS = 3;
const CHARACTERS = 28;

export function pictureOf({ sheets }: Book): string[][] {
  const sheet = sheets.find(({ rows }) => rows.length > 0);
  if (!sheet) return [];
  const lines: string[][] = [];
  for (let row = 0; row < sheet.rows.length && row < 4 * ROWS && lines.length < ROWS; row++) {
    if (!sheet.rows[row]) continue;
    lines.push(Array.from({ length: COLUMNS }, (_, col) => cellAt(sheet, row, col)?.raw.slice(0, CHARACTERS) ?? ''));
  }
  return lines;
}
