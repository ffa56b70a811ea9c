/**
 * Whatever she does, in whatever order: the screen, the view, the workbook and
 * the engine agree, nothing is shown that is stale, and all of it can be taken back.
 * SEED and LENGTH in the environment play one sequence again.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bookOf } from '../workbook/help.ts';
import { Hands, KINDS, type Action } from './hands.ts';

const LENGTH = Number(process.env['LENGTH'] ?? 2_000);

const text = fc.constantFrom(
  '10 cm', '2 1/4 in', '5', '86–90 cm', '10 %', 'waist', 'two\nlines', '', "'5 cm", '1/0', 'TRUE',
  '=A1', '=B1+B2', '=SUM(A1:A6)', '=A1*2+1/4 in', '=waist', '=hip-waist', '=Fit!A1', '=Skirt!B2+1 cm', '=EASE(B1,B2)', '=IF(A1>B1,"more",A2)', '=C3', '=A1:A4', '=(', '=MAX(1:3)', '=D9&"x"',
);
/** Moving about and typing are most of what anyone does. */
const often: readonly Action['what'][] = ['move', 'move', 'go', 'type', 'type', 'type', 'wait', 'undo', 'paste', 'copy', 'fill', 'select'];
const action: fc.Arbitrary<Action> = fc.record({ what: fc.constantFrom(...KINDS, ...often), n: fc.nat(97), m: fc.nat(89), text }, { noNullPrototype: true });

const START = bookOf(
  [['waist', '70 cm', '=B1*2'], ['bust', '92 cm', '=B2-B1'], ['hip', '98 cm', '=waist+2 cm']],
  [['10 cm', '=Fit!B1'], ['2', '=A1*A2']],
  [{ name: 'waist', area: { sheet: 1, top: 0, left: 1, bottom: 0, right: 1 }, kind: 'cells' }],
);

/** Plays the actions; looks now and then whether all agree. */
function play(actions: readonly Action[]): Hands {
  const hands = new Hands(START);
  actions.forEach((each, at) => {
    hands.do(each);
    if (at % 5 === 4) expect(hands.stale(), `after ${at + 1} actions`).toEqual([]);
    if (at % 199 === 198) expect(hands.disagreements(), `after ${at + 1} actions`).toEqual([]);
  });
  expect(hands.disagreements(), 'at the end').toEqual([]);
  return hands;
}

describe('after any actions', () => {
  test(`of up to ${LENGTH}, the screen, the workbook and the engine agree; all can be undone and done again`, { timeout: 400_000 }, () => {
    fc.assert(fc.property(fc.array(action, { minLength: 1, maxLength: LENGTH, size: 'max' }), (actions) => {
      const hands = play(actions);
      const { desk } = hands;
      const again = (what: 'undo' | 'redo') => hands.do({ what, n: 0, m: 0, text: '' });
      while (desk.history.undone.length) again('redo');
      const end = desk.book;
      while (desk.history.done.length) again('undo');
      expect(desk.book).toEqual({ ...START, nextSheetId: desk.book.nextSheetId });
      expect(hands.disagreements(), 'all undone').toEqual([]);
      while (desk.history.undone.length) again('redo');
      expect(desk.book).toEqual(end);
      expect(hands.disagreements(), 'all done again').toEqual([]);
    }), {
      numRuns: Number(process.env['RUNS'] ?? 8), interruptAfterTimeLimit: 380_000, markInterruptAsFailure: false,
      ...(process.env['SEED'] && { seed: Number(process.env['SEED']) }),
    });
  });

  test('of 2,000, one sequence in full', { timeout: 200_000 }, () => {
    const [actions] = fc.sample(fc.array(action, { minLength: 2_000, maxLength: 2_000 }), { numRuns: 1, seed: 7 });
    play(actions!);
  });
});
