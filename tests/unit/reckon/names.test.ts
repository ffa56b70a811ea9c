/** Names are what people write, and go where their cells go. */
import { expect, test } from 'vitest';
import { apply, namesLost } from '../../../src/workbook/index.ts';
import { Desk } from './desk.ts';

test('names of several words, with digits and accents, follow their cells, their new spelling and their copies', () => {
  const desk = new Desk({ B2: '94 cm', B3: '98 cm', B4: '70 cm' });
  desk.name('full bust', 'B2');
  desk.name('Hüfte', 'B3');
  desk.name('bust1', 'B4');
  desk.type({ D1: '=full bust-bust1', D2: '=Full  Bust*2', D3: '=hüfte', D4: '=SUM(HÜFTE; bust1)' });
  const shown = () => ['D1', 'D2', 'D3', 'D4'].map((cell) => desk.show(cell));
  expect(shown()).toEqual(['24 cm', '188 cm', '98 cm', '168 cm']);
  desk.edit({ do: 'insertColumns', sheet: 1, at: 1, count: 2 });
  expect(['F1', 'F2', 'F3', 'F4'].map((cell) => desk.show(cell))).toEqual(['24 cm', '188 cm', '98 cm', '168 cm']);
  desk.edit({ do: 'renameName', name: 'full bust', to: 'bust over blouse' });
  expect(desk.book.sheets[0]!.rows[0]![5]!.raw).toBe('=bust over blouse-bust1');
  expect(desk.show('F1')).toBe('24 cm');
  desk.edit({ do: 'moveCells', from: desk.area('D2'), to: desk.cell('A9') });
  expect([desk.show('F1'), desk.book.names.find(({ name }) => name === 'bust over blouse')!.area!.top]).toEqual(['24 cm', 8]);
  desk.type({ A9: '95 cm' });
  expect(desk.show('F1')).toBe('25 cm');
});

test('cells that a name stands for can be removed, known before and undone to the letter', () => {
  const desk = new Desk({ A1: '94 cm', A2: '=full bust*2' });
  desk.name('full bust', 'A1');
  const edit = { do: 'removeRows', sheet: 1, at: 0, count: 1 } as const;
  expect(namesLost(edit, desk.book)).toEqual([{ name: 'full bust', kind: 'cells', uses: 1 }]);
  const { inverse } = apply(edit, desk.book);
  const before = desk.book;
  desk.edit(edit);
  expect(desk.show('A1')).toBe('! The cells that ‘full bust’ stood for were removed.');
  desk.edit(inverse);
  expect([desk.book, desk.show('A2')]).toEqual([before, '188 cm']);
});
