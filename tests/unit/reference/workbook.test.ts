/** The reference and the open workbook: what an example becomes in it, and which function is meant. */
import { describe, expect, it } from 'vitest';
import { fitted, functionIn, tryExample } from '../../../src/app/function-reference.ts';
import type { Sample } from '../../../src/reckoning/protocol.ts';
import type { Supervisor } from '../../../src/reckoning/index.ts';
import type { Book, NamedArea } from '../../../src/workbook/types.ts';

const book = (...names: NamedArea[]): Book => ({ id: 'b', title: '', person: '', settings: { show: 'own', inchStep: 8 }, sheets: [{ id: 1, name: 'Fit', rows: [], widths: {} }], names, nextSheetId: 2 });
const area = { sheet: 1, top: 0, left: 0, bottom: 3, right: 3 };
const CHART: Sample = { name: 'chart', kind: 'chart', rows: [] };
const MEASURES: Sample = { name: 'measures', kind: 'cells', rows: [] };
const FIT = '=SIZE.FIT(chart, measures)';

describe('an example put into a cell', () => {
  it('uses the workbook’s own chart', () => {
    expect(fitted(FIT, [CHART, MEASURES], book({ name: 'misses sizes', kind: 'chart', area }))).toBe('=SIZE.FIT(misses sizes, measures)');
  });
  it('keeps a name that the workbook has', () => {
    expect(fitted(FIT, [CHART], book({ name: 'Chart', kind: 'cells', area }, { name: 'other', kind: 'chart', area }))).toBe(FIT);
  });
  it('stays as it is where there is no chart, or only one whose cells were removed', () => {
    expect(fitted(FIT, [CHART], book())).toBe(FIT);
    expect(fitted(FIT, [CHART], book({ name: 'gone', kind: 'chart', area: null }))).toBe(FIT);
  });
  it('changes no text and no function', () => {
    expect(fitted('=SIZE.AT(chart, "chart", 2 in)', [CHART], book({ name: 'mine', kind: 'chart', area }))).toBe('=SIZE.AT(mine, "chart", 2 in)');
    expect(fitted('=SUM(1; 2)', [], book({ name: 'mine', kind: 'chart', area }))).toBe('=SUM(1; 2)');
  });
});

it('the function meant is the first that a formula calls', () => {
  expect(functionIn('=2 * pleat.depth(B2, ROUND(B3))')).toBe('PLEAT.DEPTH');
  expect([functionIn('=B2 + B3'), functionIn('SUM(1)'), functionIn('')]).toEqual([undefined, undefined, undefined]);
});

it('an example that could not be worked out says why', async () => {
  const engine = (example: Supervisor['example']): Supervisor => ({ example }) as Supervisor;
  expect(await tryExample(null, '=1')).toMatchObject({ formula: '=1', sentence: expect.stringContaining('not ready') as string });
  expect(await tryExample(engine(() => Promise.reject(new Error('It was tried twice.'))), '=1')).toEqual({ formula: '=1', sentence: 'It was tried twice.' });
  const example = { results: [[{ kind: 'empty' as const }]], height: 1, width: 1 };
  expect(await tryExample(engine(() => Promise.resolve(example)), '=1')).toEqual({ formula: '=1', example });
});
