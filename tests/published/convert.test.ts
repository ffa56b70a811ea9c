import { expect, it } from 'vitest';
import { CONVERT, CONVERT_REFUSED } from './data/convert.ts';
import { cellsOf, checkAll, reckon } from './reckon.ts';

checkAll('convert', CONVERT);

it.each(CONVERT_REFUSED.map((check) => [check.about, check] as const))('refused: %s', async (_, check) => {
  const at = await reckon(cellsOf([check]));
  expect(at('J1'), check.source).toEqual({ kind: 'error', sentence: expect.stringMatching(check.sentence) as string });
});
