/** Errors say what is wrong, where it began, and stay true when rows come and go. */
import { describe, expect, test } from 'vitest';
import { sentenceOf } from '../../../workers/reckon/sentences.ts';
import { CellError, ErrorMessage, ErrorType } from '../../../workers/reckon/internals.ts';
import { Desk } from './desk.ts';

describe('the first cause', () => {
  test('is told at the end of a chain of ten cells', () => {
    const desk = new Desk({ A1: '10 cm', B1: '=A1+A9', ...Object.fromEntries(Array.from({ length: 9 }, (_, i) => [`B${i + 2}`, `=B${i + 1}*2`])) });
    expect([desk.show('B1'), desk.show('B2'), desk.show('B10')]).toEqual(['! A9 has no value yet.', '! A9 has no value yet.', '! A9 has no value yet.']);
    desk.type({ A9: '1 cm' });
    expect(desk.show('B10')).toBe('5632 cm');
  });

  test('is named with its sheet from another', () => {
    const desk = new Desk(['Fit', { A1: '=1/0' }], ['My measures', { A1: '=Fit!A1', B1: "='Fit'!A1+1" }]);
    expect([desk.show('A1', 1), desk.show('B1', 1)]).toEqual(['! Fit!A1: Divides by 0.', '! Fit!A1: Divides by 0.']);
    desk.edit({ do: 'renameSheet', sheet: 1, name: "Aunt's fit" });
    expect(desk.show('A1', 1)).toBe("! 'Aunt''s fit'!A1: Divides by 0.");
  });

  test('goes through functions, blocks and names', () => {
    const desk = new Desk({ A1: '1/0', A2: '2', B1: '=SUM(A1:A2)', B2: '=MAX(A2;A1)', B3: '=ROUND(A1;1)', B4: '=EASE(A1;A2)', B5: '=IF(TRUE;A1;1)' });
    desk.name('waist', 'A1');
    desk.type({ B6: '=waist*2' });
    const typed = desk.show('A1').slice(2);
    for (const cell of ['B1', 'B2', 'B3', 'B4', 'B5']) expect(desk.show(cell), cell).toBe(`! A1: ${typed}`);
    expect(desk.show('B6')).toContain(typed);
  });

  test('is caught by IFERROR', () => {
    expect(new Desk({ A1: '=IFERROR(10 cm+2;"no")' }).show('A1')).toBe('no');
  });
});

describe('cells named in sentences', () => {
  test('follow inserted and removed rows and columns', () => {
    const desk = new Desk({ B2: '10 cm', B3: '=B2+B9', B4: '=B3+1', B5: '=B2+C2', C2: '5' });
    desk.edit({ do: 'insertRows', sheet: 1, at: 0, count: 2 });
    expect([desk.show('B5'), desk.show('B6'), desk.show('B7')]).toEqual(['! B11 has no value yet.', '! B11 has no value yet.', '! C4: 5 has no unit: write 5 cm or 5 in.']);
    desk.edit({ do: 'insertColumns', sheet: 1, at: 1, count: 1 });
    expect(desk.show('C7')).toBe('! D4: 5 has no unit: write 5 cm or 5 in.');
    desk.edit({ do: 'removeRows', sheet: 1, at: 0, count: 2 });
    expect(desk.show('C4')).toBe('! C9 has no value yet.');
  });

  test('in a formula that could not be read, too', () => {
    const desk = new Desk({ A1: '=B1 B2', C1: '=A1' });
    expect(desk.show('A1')).toContain('‘B1’ and ‘B2’');
    desk.edit({ do: 'insertRows', sheet: 1, at: 0, count: 1 });
    expect([desk.show('A2'), desk.show('C2')]).toEqual(["! An operator (+ - * /) is missing between ‘B2’ and ‘B3’.", '! A2: An operator (+ - * /) is missing between ‘B2’ and ‘B3’.']);
  });
});

describe('circles', () => {
  test.each([
    [{ A1: '=A1' }, 'A1', 'Goes round in a circle: A1 needs itself.'],
    [{ A1: '=B1', B1: '=A1+1' }, 'B1', 'Goes round in a circle: B1 needs A1, A1 needs B1.'],
    [{ A1: '=SUM(A1:A3)' }, 'A1', 'Goes round in a circle: A1 needs itself.'],
    [{ A1: '=C1', B1: '=A1', C1: '=B1' }, 'A1', 'Goes round in a circle: A1 needs C1, C1 needs B1, B1 needs A1.'],
    [{ A1: '=B1', B1: '=A1', D1: '=B1*2' }, 'D1', 'B1: Goes round in a circle: B1 needs A1, A1 needs B1.'],
    [{ A1: '=SUM(B1:B2)', B2: '=A1' }, 'A1', 'Goes round in a circle: A1 needs B2, B2 needs A1.'],
  ] as const)('%j', (cells, cell, sentence) => expect(new Desk(cells as never).show(cell)).toBe(`! ${sentence}`));

  test('long ones name their beginning, very long ones none', () => {
    const ring = (n: number): Record<string, string> => Object.fromEntries(Array.from({ length: n }, (_, i) => [`A${i + 1}`, `=A${i === n - 1 ? 1 : i + 2}`]));
    expect(new Desk(ring(10)).show('A1')).toBe('! Goes round in a circle of 10 cells: A1 needs A2, A2 needs A3, A3 needs A4, A4 needs A5, A5 needs A6, A6 needs A7, and so on back to A1.');
    expect(new Desk(ring(500)).show('A7')).toBe('! Goes round in a circle: it needs its own result.');
  });

  test('end when they are cut', () => {
    const desk = new Desk({ A1: '=B1', B1: '=A1+1 cm', C1: '=A1' });
    desk.type({ A1: '2 cm' });
    expect([desk.show('B1'), desk.show('C1')]).toEqual(['3 cm', '2 cm']);
  });

  test('are told anew by what only uses them when they go another way', () => {
    const desk = new Desk({ A1: '=SUM(B1:C1)', B1: '=A1', C1: '=A1', E1: '=A1' });
    expect(desk.show('E1')).toBe('! A1: Goes round in a circle: A1 needs B1, B1 needs A1.');
    desk.type({ B1: '2' });
    expect(desk.show('E1')).toBe('! A1: Goes round in a circle: A1 needs C1, C1 needs A1.');
  });

  test('through a name', () => {
    const desk = new Desk({ A1: '1' });
    desk.name('waist', 'A1');
    desk.type({ A1: '=waist+1' });
    expect(desk.show('A1')).toBe('! Goes round in a circle: A1 needs itself.');
  });

  test('of 100,000 cells do not run out of stack', () => {
    const n = 100_000;
    const desk = new Desk({});
    desk.edit({ do: 'setCells', sheet: 1, cells: Array.from({ length: n }, (_, row) => ({ row, col: 0, cell: { raw: row === 0 ? `=A${n}` : `=A${row}+1` } })) });
    expect(desk.show(`A${n}`)).toMatch(/Goes round in a circle/);
    desk.type({ A1: '1' });
    expect(desk.show(`A${n}`)).toBe(String(n));
  }, 30_000);
});

describe('every error of the library', () => {
  test.each(Object.values(ErrorType))('%s has a sentence', (type) => {
    const sentence = sentenceOf(new CellError(type));
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence).not.toMatch(/#|licen|undefined/i);
  });

  test('its own words never reach the screen', () => {
    const own = Object.values(ErrorMessage).filter((message): message is string => typeof message === 'string');
    expect(own.length).toBeGreaterThan(60);
    for (const type of Object.values(ErrorType)) for (const message of own) expect(own).not.toContain(sentenceOf(new CellError(type, message)));
  });
});
