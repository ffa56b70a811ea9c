/** Working back over real sheets: what it finds is what typing it gives, and it leaves no trace. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactText, inBase, quantity, type UnitCode } from '../../../src/quantities/index.ts';
import type { BackAnswer, BackSearch, Result } from '../../../src/reckoning/protocol.ts';
import { Desk, said, type Cells } from './desk.ts';

interface Wish extends Partial<Omit<BackSearch, 'result' | 'input' | 'wanted' | 'low' | 'high' | 'now' | 'step'>> {
  readonly result: string;
  readonly input: string;
  readonly wanted: number;
  readonly of?: UnitCode;
  readonly low: number;
  readonly high: number;
  readonly step?: number | null;
}

/** Figures in the units given: `unit` of the input, `of` of the result. */
function searchOf(desk: Desk, { result, input, wanted, of = 'cm', unit = 'cm', low, high, step = 0.5, bound = 'exactly', ...rest }: Wish): BackSearch {
  const figure = (amount: number) => quantity(amount, unit).value;
  const before = desk.result(input) as Extract<Result, { kind: 'quantity' }>;
  return {
    result: desk.cell(result), input: desk.cell(input), wanted: { value: quantity(wanted, of).value, unit: of }, unit, bound,
    low: figure(low), high: figure(high), now: before.value, step: step === null ? null : figure(step), ...rest,
  };
}

async function back(desk: Desk, wish: Wish): Promise<BackAnswer> {
  const answer = await desk.engine.workBack(searchOf(desk, wish));
  if (!answer) throw new Error('It was given up.');
  return answer;
}

const SKIRT: Cells = {
  A1: 'Waist', B1: '72 cm', A2: 'Pleats', B2: '12', A3: 'Pleat depth', B3: '4 cm', A4: 'Seam allowance', B4: '1.5 cm',
  A5: 'Cloth across', B5: '=B1+2*B2*B3+2*B4', A6: 'Share', B6: '=B1/B2', A7: 'Panels', B7: '=ROUNDUP(B5/140 cm,0)', A8: 'Words', B8: '=IF(B2>20,"too many","fine")',
  A9: 'Left over', B9: '=IF(B2>6;300 cm-B5;1/0)',
};

describe('an answer', () => {
  test('exact, and the nearest that can be cut', async () => {
    const desk = new Desk(SKIRT);
    // 72 + 24 × depth + 3 = 180: depth 4.375 cm; on half centimetres 4.5 gives 183, 4 gives 171.
    const { exact, cut, why } = await back(desk, { result: 'B5', input: 'B3', wanted: 180, low: 1, high: 10 });
    expect(why).toBe('reached');
    expect(exactText(inBase(exact!.input, 'cm'))).toBe('4.375 cm');
    expect(said(exact!.result)).toBe('180 cm');
    expect(exactText(inBase(cut!.input, 'cm'))).toBe('4.5 cm');
    expect(said(cut!.result)).toBe('183 cm');
    expect(cut!.working.uses.map(({ text }) => text)).toEqual(['B1', 'B2', 'B3', 'B4']);
  });

  test('on the right side of a bound', async () => {
    const desk = new Desk(SKIRT);
    const cut = async (bound: 'atMost' | 'atLeast') => (await back(desk, { result: 'B5', input: 'B3', wanted: 180, bound, low: 1, high: 10 })).cut!;
    expect(said((await cut('atMost')).result)).toBe('171 cm');
    expect(said((await cut('atLeast')).result)).toBe('183 cm');
  });

  test('in whole numbers for a count', async () => {
    const desk = new Desk(SKIRT);
    const { exact, cut, why, jump } = await back(desk, { result: 'B5', input: 'B2', unit: '', wanted: 180, low: 4, high: 20, step: 1, whole: true });
    expect([why, exact, cut!.input, said(cut!.result)]).toEqual(['jumps', null, 13, '179 cm']);
    expect(jump!.map(({ input }) => input)).toEqual([13, 14]);
  });

  test('in inches for a sheet in centimetres', async () => {
    const desk = new Desk({ ...SKIRT, B3: '1 1/2 in' });
    const { cut } = await back(desk, { result: 'B5', input: 'B3', unit: 'in', wanted: 180, bound: 'atMost', low: 0.5, high: 4, step: 0.125 });
    expect(exactText(inBase(cut!.input, 'in'))).toBe('1.625 in');
    desk.type({ B3: '1 5/8 in' });
    expect(desk.show('B5')).toBe(said(cut!.result));
  });

  test('why there is none', async () => {
    const desk = new Desk(SKIRT);
    const why = async (wish: Partial<Wish>) => (await back(desk, { result: 'B5', input: 'B3', wanted: 180, low: 1, high: 10, ...wish })).why;
    expect(await why({ high: 3 })).toBe('beyond');
    expect(await why({ input: 'B4', result: 'B6' })).toBe('flat');
    expect(await why({ result: 'B7', of: '', wanted: 1.5, low: 1, high: 10 })).toBe('jumps');
    const words = await back(desk, { result: 'B8', input: 'B2', unit: '', of: '', wanted: 3, low: 4, high: 20, step: 1, whole: true });
    expect([words.why, words.without]).toEqual(['nothing', 'The result is the text “fine”.']);
    const gone = await back(desk, { result: 'B9', input: 'B2', unit: '', wanted: 0, low: 1, high: 60, step: 1, whole: true });
    expect(gone.gaps).toEqual([[1, 6]]);
    expect(gone.without).toContain('Divides by 0');
    expect(await back(desk, { result: 'B6', input: 'B4', wanted: 6, low: 1, high: 2 })).toMatchObject({ why: 'reached', depends: false });
    const kind = await back(desk, { result: 'B5', input: 'B3', of: 'deg', wanted: 6, low: 1, high: 2 });
    expect([kind.why, kind.without]).toEqual(['nothing', 'The result is of another kind than what is wanted.']);
  });

  test('the pins that there would be', async () => {
    const desk = new Desk({ A1: '98 cm', A2: '90 cm', A3: '=EASE(A1,A2)' });
    expect((await back(desk, { result: 'A3', input: 'A1', wanted: 4, low: 80, high: 120 })).exact!.pins).toEqual([]);
    const tight = (await back(desk, { result: 'A3', input: 'A1', wanted: -4, low: 80, high: 120 })).exact!;
    expect(tight.pins).toHaveLength(1);
    expect(tight.pins[0]).toMatchObject({ cell: desk.cell('A3'), caution: { by: 'EASE' } });
  });

  test('what it is about must still be there', async () => {
    const desk = new Desk(SKIRT);
    await expect(desk.engine.workBack({ ...searchOf(desk, { result: 'B5', input: 'B3', wanted: 180, low: 1, high: 10 }), input: { sheet: 9, row: 0, col: 0 } })).rejects.toThrow('no longer');
  });
});

describe('a search', () => {
  test('leaves no trace', async () => {
    const desk = new Desk(SKIRT);
    const all = Object.keys(SKIRT);
    const before = all.map((cell) => desk.show(cell));
    await back(desk, { result: 'B5', input: 'B3', wanted: 180, low: 1, high: 10 });
    desk.type({ Z1: 'x' });
    expect([...desk.last.sheets.flatMap(({ row, col }) => [...row].map((r, i) => [r, col[i]]))]).toEqual([[0, 25]]);
    expect(all.map((cell) => desk.show(cell))).toEqual(before);
    desk.type({ B3: '5 cm' });
    expect(desk.show('B5')).toBe('195 cm');
  });

  test('is given up by an edit, by a cancel and by another search, and the sheet is as it was meanwhile', async () => {
    const rows = 3000;
    const cells: Record<string, string> = { A1: '1 cm', B1: '=A1' };
    for (let row = 2; row <= rows; row++) cells[`B${row}`] = `=B${row - 1}+A1`;
    const desk = new Desk(cells);
    const search = searchOf(desk, { result: `B${rows}`, input: 'A1', wanted: 4.5 * rows + 0.001, low: 1, high: 1000, step: null });
    for (const stop of [() => desk.type({ C1: 'x' }), () => desk.engine.cancelSearch(), () => void desk.engine.workBack(search)]) {
      const given = desk.engine.workBack(search);
      await new Promise((done) => { setImmediate(done); });
      expect(said(desk.engine.working(desk.cell(`B${rows}`)).result)).toBe(`${rows} cm`);
      stop();
      expect(await given).toBeNull();
    }
    desk.engine.cancelSearch();
  }, 30_000);

  test('finds what typing it then gives', async () => {
    await fc.assert(fc.asyncProperty(fc.integer({ min: 60, max: 300 }), fc.constantFrom('exactly', 'atMost', 'atLeast'), fc.constantFrom('B1', 'B3', 'B4'), fc.constantFrom<UnitCode>('cm', 'in'), async (wanted, bound, input, unit) => {
      const desk = new Desk(SKIRT);
      const { exact, cut } = await back(desk, { result: 'B5', input, wanted, bound, unit, low: 0, high: 100, step: unit === 'in' ? 0.125 : 0.5 });
      for (const point of [exact, cut]) {
        if (!point) continue;
        const tried = new Desk({ ...SKIRT, [input]: exactText(inBase(point.input, unit)) });
        expect(tried.show('B5')).toBe(said(point.result));
      }
      if (exact) expect(Math.abs((exact.result as { value: number }).value - wanted * 10)).toBeLessThanOrEqual(1e-9 * wanted * 10);
    }), { numRuns: 60 });
  }, 60_000);
});

test('the figures that a result comes from', () => {
  const desk = new Desk({ ...SKIRT, D1: '=B5+Sheet 2!A1', D2: '=SUM(C1:C60)+B1' }, ['Sheet 2', { A1: '=A2*2', A2: '3 cm' }]);
  const named = (cells: readonly { sheet: number; row: number; col: number }[]) => cells.map(({ sheet, row, col }) => `${sheet}:${'ABCD'[col]}${row + 1}`);
  expect(named(desk.engine.inputsOf(desk.cell('B5')))).toEqual(['1:B1', '1:B2', '1:B3', '1:B4']);
  expect(named(desk.engine.inputsOf(desk.cell('D2')))).toEqual(['1:B1']);
  expect(named(desk.engine.inputsOf(desk.cell('B1')))).toEqual(['1:B1']);
  expect(desk.engine.inputsOf({ sheet: 9, row: 0, col: 0 })).toEqual([]);
});

test('trials tell how a result came about and what pins there are, and differences from any one', () => {
  const desk = new Desk({ A1: '98 cm', A2: '90 cm', A3: '=EASE(A1,A2)' });
  const trials = ['98 cm', '86 cm', '94 cm'].map((raw) => ({ label: raw, values: [{ cell: desk.cell('A1'), raw }] }));
  const { workings, pins, differences } = desk.engine.tryOut(trials, [desk.cell('A3')], { against: 2, workings: [desk.cell('A3')], pins: true });
  expect(workings!.map(([working]) => said(working!.result))).toEqual(['8 cm', '-4 cm', '4 cm']);
  expect(pins!.map((each) => each.length)).toEqual([0, 1, 0]);
  expect(differences.map(([each]) => said(each!))).toEqual(['4 cm', '-8 cm', '0 cm']);
});
