/**
 * Rules of OpenFormula, worked out as cells. Where the workbook differs, the
 * reference says so, and what it gives instead is held fast here: a check that
 * comes right fails until its difference is taken out of the list.
 */
import { expect, it } from 'vitest';
import { DIFFERENCES } from '../../src/formula/standard/index.ts';
import { LANGUAGE } from './data/formula-language.ts';
import { amountOf, cellsOf, reckon } from './reckon.ts';

const differing = new Set(DIFFERENCES.flatMap(({ shown }) => shown.map(({ formula }) => formula.replaceAll(' ', ''))));
const opened = reckon(cellsOf(LANGUAGE.map(({ formula }) => ({ cells: [], formula }))));
const numbered = LANGUAGE.map((check, i) => ({ ...check, cell: `J${i + 1}` }));
const agrees = async ({ cell, expected }: (typeof numbered)[number]): Promise<boolean> => {
  const result = (await opened)(cell);
  if (expected === 'error' || result.kind === 'error') return expected === 'error' && result.kind === 'error';
  return Math.abs(amountOf(result, '') - expected) <= 1e-12;
};

it.each(numbered.filter(({ formula }) => !differing.has(formula)))('$formula: $about', async (check) => {
  expect(await agrees(check), `${check.source} (${check.obtained})`).toBe(true);
});

it.each(numbered.filter(({ formula }) => differing.has(formula)))('$formula differs, and the reference says so: $about', async (check) => {
  expect(await agrees(check), `${check.source} (${check.obtained})`).toBe(false);
});
