/** Works formulas out through the engine, as a workbook's cells. */
import { describe, expect, it } from 'vitest';
import { columnName, readArea } from '../../src/formula/index.ts';
import { amountIn, inBase, showText } from '../../src/quantities/index.ts';
import type { Result } from '../../src/reckoning/protocol.ts';
import { Results } from '../../src/reckoning/results.ts';
import type { Book, Cell, NamedArea, Sheet } from '../../src/workbook/types.ts';
import { Engine } from '../../workers/reckon/engine.ts';
import type { Check } from './data/check.ts';

/** Named size charts as rows of typed cells; each gets a sheet of its own. */
export type Charts = Readonly<Record<string, readonly (readonly string[])[]>>;

/** Opens a workbook with these cells (`A1` and so on) and charts; gives what a cell's result is. */
export async function reckon(cells: Readonly<Record<string, string>>, charts: Charts = {}): Promise<(cell: string) => Result> {
  const results = new Results();
  results.apply(new Engine().open(1, bookOf(cells, charts)));
  return (cell) => {
    const { top, left } = placeOf(cell);
    return results.at(1, top, left);
  };
}

function placeOf(cell: string): { readonly top: number; readonly left: number } {
  const area = readArea(cell);
  if (area === undefined) throw new Error(`${cell} is no cell`);
  return area;
}

function bookOf(cells: Readonly<Record<string, string>>, charts: Charts): Book {
  const rows: (Cell | undefined)[][] = [];
  for (const [cell, raw] of Object.entries(cells)) {
    const { top, left } = placeOf(cell);
    (rows[top] ??= [])[left] = { raw };
  }
  const sheets: Sheet[] = [{ id: 1, name: 'Checks', rows, widths: {} }];
  const names: NamedArea[] = [];
  for (const [name, grid] of Object.entries(charts)) {
    const id = sheets.length + 1;
    sheets.push({ id, name: `Chart ${id}`, rows: grid.map((row) => row.map((raw) => (raw === '' ? undefined : { raw }))), widths: {} });
    names.push({ name, kind: 'chart', area: { sheet: id, top: 0, left: 0, bottom: grid.length - 1, right: Math.max(...grid.map((row) => row.length)) - 1 } });
  }
  return { id: 'checks', title: '', person: '', settings: { show: 'own', inchStep: 8 }, sheets, names, nextSheetId: sheets.length + 1 };
}

/** Column that holds the formulas, past all the inputs. */
const RESULT = 'J';

/** The cells of the checks, one row each. */
export function cellsOf(checks: readonly Pick<Check, 'cells' | 'formula'>[]): Record<string, string> {
  const cells: Record<string, string> = {};
  for (const [i, { cells: inputs, formula }] of checks.entries()) {
    for (const [col, raw] of inputs.entries()) cells[`${columnName(col)}${i + 1}`] = raw;
    cells[`${RESULT}${i + 1}`] = formula.replaceAll('#', String(i + 1));
  }
  return cells;
}

/** A result in the unit that a check counts in. */
export function amountOf(result: Result, unit: Check['unit']): number {
  if (result.kind !== 'quantity') throw new Error(result.kind === 'error' ? result.sentence : `the result is ${result.kind}`);
  return amountIn(inBase(result.value, result.unit), unit);
}

/** Both ends of a result in the unit that a check counts in. */
function endsOf(result: Result, unit: Check['unit']): readonly number[] {
  if (result.kind !== 'span') return [amountOf(result, unit)];
  return [amountIn(inBase(result.low, result.unit), unit), amountIn(inBase(result.high, result.unit), unit)];
}

/** What must come out, and what did. */
function compare(check: Check, result: Result): void {
  const source = `${check.source}${check.obtained === undefined ? '' : ` (${check.obtained})`}`;
  if (typeof check.expected === 'string') {
    expect(result, source).toEqual({ kind: 'text', text: check.expected });
    return;
  }
  const expected = typeof check.expected === 'number' ? [check.expected] : check.expected;
  const got = endsOf(result, check.unit);
  expect(got, source).toHaveLength(expected.length);
  // A sum of doubles may miss its decimal by its last digits.
  for (const [i, end] of expected.entries()) expect(Math.abs((got[i] as number) - end), source).toBeLessThanOrEqual(Math.max(check.tolerance, 1e-9));
  if (check.shown !== undefined && result.kind === 'quantity') {
    const { text, inchStep, system = 'own' } = check.shown;
    expect(showText(inBase(result.value, result.unit), { system, inchStep, plain: true }), source).toBe(text);
  }
}

/** A test for each check: its inputs in cells, its formula in another, the result from the engine. */
export function checkAll(topic: string, checks: readonly Check[], charts: Charts = {}): void {
  describe(topic, () => {
    it.each(checks.map((check, i) => [check.about, check, i] as const))('%s', async (_, check, i) => {
      compare(check, (await opened)(`${RESULT}${i + 1}`));
    });
    const opened = reckon(cellsOf(checks), charts);
  });
}

/** The same for what is known from memory only: it is reported, and holds nothing up. */
export function reportAll(topic: string, checks: readonly Check[], charts: Charts = {}): void {
  it(`${topic}: reports, without judging, what is known from memory only`, async () => {
    const at = await reckon(cellsOf(checks), charts);
    for (const [i, check] of checks.entries()) {
      const result = at(`${RESULT}${i + 1}`);
      expect(result.kind).not.toBe('error');
      console.info(`from memory: ${check.about}: ${String(check.expected)} ${check.unit}; this workbook has ${endsOf(result, check.unit).join(' to ')}`);
    }
  });
}
