/** The shipped tables of usual values, by name, as rows of typed cells. */
import usual from '../../../sheets/templates/usual-values.json';

function rowsOf([top, left, bottom, right]: readonly number[]): readonly (readonly string[])[] {
  const rows = Array.from({ length: (bottom as number) - (top as number) + 1 }, () => Array.from({ length: (right as number) - (left as number) + 1 }, () => ''));
  for (const [row, col, raw] of usual.sheet.cells as unknown as readonly (readonly [number, number, string])[]) {
    const line = rows[row - (top as number)];
    if (line !== undefined && col >= (left as number) && col <= (right as number)) line[col - (left as number)] = raw;
  }
  return rows;
}

export const USUAL_TABLES: Readonly<Record<string, readonly (readonly string[])[]>> = Object.fromEntries(usual.names.map(({ name, area }) => [name, rowsOf(area)]));
