/** The copy of the published chart that the tests carry is the chart itself, where that is at hand. */
import { existsSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readRows } from '../../src/tables/index.ts';

const COPY = new URL('../unit/tables/fixtures/astm-d5585-11e1-misses-in-fractions.csv', import.meta.url);
/** Outside the project: on a clone there is none. */
const ORIGINAL = new URL('../../../shared/reference/sizes/astm-d5585-11e1-misses-in-fractions.csv', import.meta.url);

function rowsOf(file: URL): readonly (readonly string[])[] {
  const table = readRows(new Uint8Array(readFileSync(file)));
  if ('sentence' in table) throw new Error(table.sentence);
  return table.rows;
}

/** ASTM D5585-11e1, Table 1, as on the publisher's catalogue page: nine girths of twelve sizes. */
it('has nine girths of twelve sizes', () => {
  const rows = rowsOf(COPY);
  expect(rows).toHaveLength(10);
  for (const row of rows) expect(row).toHaveLength(13);
  expect(rows[9]).toEqual(['waist_girth_straight', '25 3/8', '26 1/8', '26 7/8', '27 5/8', '28 1/2', '29 1/2', '30 1/2', '32 1/4', '34', '36', '38 1/4', '40 1/2']);
});

it.skipIf(!existsSync(ORIGINAL))('is the same as the original', () => {
  expect(rowsOf(COPY)).toEqual(rowsOf(ORIGINAL));
});
