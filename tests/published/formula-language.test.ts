/** Rules of OpenFormula, worked out as cells. */
import { expect, it } from 'vitest';
import { LANGUAGE } from './data/formula-language.ts';
import { amountOf, cellsOf, reckon } from './reckon.ts';

const opened = reckon(cellsOf(LANGUAGE.map(({ formula }) => ({ cells: [], formula }))));

it.each(LANGUAGE.map((check, i) => ({ ...check, cell: `J${i + 1}` })))('$formula: $about', async ({ cell, expected, source, obtained }) => {
  const result = (await opened)(cell);
  if (expected === 'error') expect(result.kind, `${source} (${obtained})`).toBe('error');
  else expect(Math.abs(amountOf(result, '') - expected), `${source} (${obtained})`).toBeLessThanOrEqual(1e-12);
});
