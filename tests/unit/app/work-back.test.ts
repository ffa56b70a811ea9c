/** Working back in words: what is offered as limits, and what is said of every kind of answer. */
import { describe, expect, test } from 'vitest';
import { readLimits, typedText, usualLimits } from '../../../src/app/work-back-limits.ts';
import { foundInWords, type BackQuestion } from '../../../src/app/work-back-words.ts';
import { quantity, readQuantity, type ShowAs, type UnitCode } from '../../../src/quantities/index.ts';
import type { BackAnswer, BackPoint, TrialPin } from '../../../src/reckoning/index.ts';

const AS: ShowAs = { system: 'own', inchStep: 8 };

describe('limits', () => {
  test.each([
    [quantity(62, 'cm'), { from: '31 cm', to: '124 cm', step: '0.5 cm' }],
    [quantity(1.5, 'cm'), { from: '0.8 cm', to: '3 cm', step: '0.1 cm' }],
    [quantity(2.25, 'in'), { from: '1 1/8 in', to: '4 1/2 in', step: '1/16 in' }],
    [quantity(24, 'in'), { from: '12 in', to: '48 in', step: '1/8 in' }],
    [quantity(8, ''), { from: '1', to: '16', step: '1' }],
    [quantity(1.5, ''), { from: '0.8', to: '3', step: '0.1' }],
    [quantity(10, '%'), { from: '5%', to: '20%', step: '1%' }],
    [quantity(-2, 'cm'), { from: '-4 cm', to: '-1 cm', step: '0.1 cm' }],
    [quantity(0, 'cm'), { from: '0 cm', to: '10 cm', step: '0.1 cm' }],
  ])('usual ones for %o', (now, expected) => {
    const usual = usualLimits(now);
    expect(Object.fromEntries(Object.entries(usual).map(([key, text]: [string, string]) => [key, text.replace(/\s(?=%)/g, '').replace(/\s/g, ' ')]))).toEqual(expected);
    expect(readLimits(usual, now.unit)).not.toHaveProperty('sentence');
  });

  test('a count goes in whole numbers; without a step any value can be cut', () => {
    expect(readLimits({ from: '4', to: '20', step: '1' }, '')).toMatchObject({ whole: true, step: 1 });
    expect(readLimits({ from: '4', to: '20', step: '0.5' }, '')).toMatchObject({ whole: false });
    expect(readLimits({ from: '4 cm', to: '20 cm', step: ' ' }, 'cm')).toEqual({ low: 40, high: 200, step: null, whole: false });
    expect(readLimits({ from: '4 in', to: '20 cm', step: '5 mm' }, 'cm')).toMatchObject({ low: 101.6, high: 200, step: 5 });
  });

  test('figures are typed as they are read, inches as fractions', () => {
    for (const [figure, text] of [[quantity(2.125, 'in'), '2 1/8 in'], [quantity(2.1, 'in'), '2.1 in'], [quantity(62.5, 'cm'), '62.5 cm'], [quantity(8, ''), '8']] as const) {
      const typed = typedText(figure).replace(/\u00a0/g, ' ');
      expect(typed).toBe(text);
      expect(readQuantity(typed)).toMatchObject({ quantity: { value: figure.value } });
    }
  });
});

const point = (input: number, result: number, pins: readonly TrialPin[] = [], unit: UnitCode = 'cm'): BackPoint => ({
  input, pins, result: { kind: 'quantity', value: result, unit }, working: { result: { kind: 'quantity', value: result, unit }, uses: [] },
});
const answer = (change: Partial<BackAnswer>): BackAnswer => ({ why: 'reached', exact: null, cut: null, best: null, gaps: [], depends: true, tried: 10, ...change });
const PIN: TrialPin = { cell: { sheet: 1, row: 4, col: 1 }, caution: { by: 'EASE', sentence: 'Too tight.', print: 'x' } };

const question = (change: Partial<BackQuestion> = {}): BackQuestion => ({
  result: 'Flat width', input: 'Pleat depth', wanted: { value: 2900, unit: 'cm' }, bound: 'exactly', unit: 'cm',
  limits: { low: 10, high: 100, step: 5, whole: false }, resultAs: AS, inputAs: AS, pinsNow: [], placeOf: ({ cell }) => `Fit B${cell.row + 1}`, ...change,
});
const said = (given: BackAnswer, asked = question()) => {
  const { sentences, offers } = foundInWords(given, asked);
  return [...sentences, ...offers.map(({ sentence, input, result, raw, sound }) => `${input.main} (${input.also}): ${sentence} → ${result.main}${sound ? ` [${raw}]` : ''}`)].map((text) => text.replace(/\u00a0/g, ' '));
};

describe('an answer', () => {
  test('that can be cut, and the exact one', () => {
    expect(said(answer({ exact: point(54.5678, 2900), cut: point(55, 2903) }))).toEqual([
      '5.5 cm (2 ⅛ in): The nearest to 290.0 cm that can be cut. → 290.3 cm [5.5 cm]', '5.4568 cm (2 ⅛ in): This gives exactly 290.0 cm. → 290.0 cm [5.45678 cm]',
    ]);
    expect(said(answer({ exact: point(55, 2900), cut: point(55, 2900) }))).toEqual(['5.5 cm (2 ⅛ in): This gives exactly 290.0 cm, and can be cut. → 290.0 cm [5.5 cm]']);
  });
  test('on the right side of a bound', () => {
    expect(said(answer({ exact: point(54.5, 2900), cut: point(50, 2890) }), question({ bound: 'atMost' }))[0]).toContain('The nearest that can be cut with Flat width not above 290.0 cm.');
    expect(said(answer({ exact: point(54.5, 2900), cut: point(55, 2903) }), question({ bound: 'atLeast' }))[0]).toContain('The nearest that can be cut with Flat width not below 290.0 cm.');
    expect(said(answer({ why: 'beyond', cut: point(50, 2500), best: point(50, 2500) }), question({ bound: 'atMost' }))[0]).toBe('Flat width stays on the right side of 290.0 cm from 1.0 cm to 10.0 cm.');
  });
  test('for a count', () => {
    const whole = question({ unit: '', limits: { low: 4, high: 20, step: 1, whole: true }, input: 'Pleats' });
    expect(said(answer({ why: 'jumps', cut: point(8, 2959), best: point(8, 2959), jump: [{ input: 7, result: 2730 }, { input: 8, result: 2959 }] }), whole)).toEqual([
      'No whole number gives exactly 290.0 cm: 7 gives 273.0 cm, and 8 gives 295.9 cm.', '8 (undefined): The nearest to 290.0 cm that can be cut. → 295.9 cm [8]',
    ]);
  });
  test('that there is none, and why', () => {
    expect(said(answer({ why: 'beyond', best: point(100, 2500), cut: point(100, 2500) }))[0]).toBe('290.0 cm cannot be reached from 1.0 cm to 10.0 cm. The nearest is 250.0 cm, with 10.0 cm.');
    expect(said(answer({ why: 'beyond', best: point(10, 3100) }), question({ bound: 'atMost' }))).toEqual([
      'Nothing from 1.0 cm to 10.0 cm keeps to 290.0 cm. The nearest is 310.0 cm, with 1.0 cm.', '1.0 cm (⅜ in): The nearest to 290.0 cm that there is; it is not what was asked for. → 310.0 cm',
    ]);
    expect(said(answer({ why: 'jumps', cut: point(30, 2800), best: point(30, 2800), jump: [{ input: 31, result: 2800 }, { input: 31 + 1e-12, result: 3000 }] }))[0]).toBe('Flat width is never exactly 290.0 cm: at 3.1 cm it goes from 280.0 cm to 300.0 cm at once.');
    expect(said(answer({ why: 'jumps', cut: point(30, 2800), best: point(30, 2800), jump: [{ input: 31, result: 2800 }, { input: 40, result: 3000 }] }))[0]).toContain('has no result in between.');
    expect(said(answer({ why: 'flat', best: point(30, 2800), cut: point(30, 2800) }))).toEqual(['Flat width is 280.0 cm whatever Pleat depth is from 1.0 cm to 10.0 cm.']);
    expect(said(answer({ why: 'flat', depends: false, best: point(30, 2800), cut: point(30, 2800) }))).toEqual(['Flat width does not depend on Pleat depth: nothing that is put there changes it.']);
    expect(said(answer({ why: 'nothing', without: 'Divides by 0.' }))).toEqual(['There is no result anywhere from 1.0 cm to 10.0 cm. Divides by 0.']);
    expect(said(answer({ exact: point(55, 2900), cut: point(55, 2900), gaps: [[10, 20]], without: 'Divides by 0.' }))[0]).toBe('From 1.0 cm to 2.0 cm there is no result: Divides by 0.');
    expect(said(answer({ exact: point(55, 2900), cut: point(55, 2900), gaps: [[10, 10], [30, 40]], without: 'Divides by 0.' }))[0]).toBe('With 1.0 cm, and elsewhere too, there is no result: Divides by 0.');
  });
  test('the pins that come and go with it', () => {
    const [offer] = foundInWords(answer({ exact: point(55, 2900, [PIN]), cut: point(55, 2900, [PIN]) }), question()).offers;
    expect([offer!.pins, offer!.gone]).toEqual([[{ place: 'Fit B5', sentence: 'Too tight.' }], []]);
    const [other] = foundInWords(answer({ exact: point(55, 2900), cut: point(55, 2900) }), question({ pinsNow: [PIN] })).offers;
    expect([other!.pins, other!.gone]).toEqual([[], [{ place: 'Fit B5', sentence: 'Too tight.' }]]);
    const [same] = foundInWords(answer({ exact: point(55, 2900, [PIN]), cut: point(55, 2900, [PIN]) }), question({ pinsNow: [PIN] })).offers;
    expect([same!.pins, same!.gone]).toEqual([[], []]);
  });
});
