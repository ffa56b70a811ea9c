/** The list to buy: gathered over all sheets, put on by one edit, ticked off for the figures of now. */
import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../src/app/demo.ts';
import { shippedTemplate } from '../../../src/app/shipped.ts';
import { tickEdit, ticksOf } from '../../../src/app/ticks.ts';
import { figuresToTick, shoppingList } from '../../../src/app/to-buy-list.ts';
import { isOnList, putOnList, type Wish } from '../../../src/app/to-buy-put.ts';
import { shoppingTable, shoppingText } from '../../../src/app/to-buy-text.ts';
import { readArea } from '../../../src/formula/index.ts';
import type { ShoppingItem, ShoppingList } from '../../../src/panels/index.ts';
import type { ShowAs } from '../../../src/quantities/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { apply, cellAt, emptyBook, recordsOf, sheetFromTemplate, sheetNamed, type Book, type CellAddress } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const OWN: ShowAs = { system: 'own', inchStep: 8 };
const template = () => shippedTemplate('cloth-to-buy');
const WISH: Wish = { what: 'Wool', purpose: 'skirt', width: '150 cm', by: 'length', step: '10 cm', unit: 'm' };

const resultsOf = (book: Book): Results => {
  const results = new Results();
  results.apply(new Engine().open(1, book));
  return results;
};
const listOf = (book: Book, as = OWN): ShoppingList => shoppingList(book, resultsOf(book), as);
const itemOf = (book: Book, what: string): ShoppingItem => listOf(book).items.find((item) => item.what === what)!;
const placed = (book: Book, sheet: string, place: string): CellAddress => {
  const { top: row, left: col } = readArea(place)!;
  return { sheet: sheetNamed(book, sheet)!.id, row, col };
};
const typed = (book: Book, sheet: string, cells: Readonly<Record<string, string>>): Book => apply({
  do: 'setCells', sheet: sheetNamed(book, sheet)!.id,
  cells: Object.entries(cells).map(([place, raw]) => {
    const { row, col } = placed(book, sheet, place);
    return { row, col, cell: raw === '' ? null : { ...cellAt(sheetNamed(book, sheet)!, row, col), raw } };
  }),
}, book).book;

const demo = demoBook('demo');

describe('the list', () => {
  it('adds up what several rows need, takes the cupboard off, and totals as the sheet does', () => {
    const main = itemOf(demo, 'Main cloth');
    expect([main.needed.main, main.buy.main, main.buy.also, main.cost]).toEqual(['319.5 cm', '330.0 cm', '129 ⅞ in', '61.05']);
    expect(main.needs.map(({ words, main: figure }) => `${words} ${figure}`)).toEqual(['skirt 229.5 cm', 'bodice 0.90 m']);
    const buttons = itemOf(demo, 'Buttons');
    expect([buttons.needed.main, buttons.home?.main, buttons.buy.main, buttons.by]).toEqual(['11', '3', '8', 'card or piece']);
    expect(itemOf(demo, 'Thread').by).toBe('reel, 100.00 m each');
    const total = resultsOf(demo).at(...(Object.values(placed(demo, 'To buy', 'J22')) as [number, number, number]));
    expect(total.kind === 'quantity' && total.value.toFixed(2)).toBe(listOf(demo).total);
  });

  it('says what there is enough of, what has no price, and what nobody works out', () => {
    const book = typed(demo, 'To buy', { A26: 'Lining', C26: '2 m', H17: '', A10: 'Zip', C10: '1' });
    expect(itemOf(book, 'Lining').enough).toBe(true);
    expect(itemOf(book, 'Interfacing').cost).toBe('');
    const { unpriced, unlisted, total } = listOf(book);
    expect(unpriced).toBe(1);
    expect(unlisted.map(({ what }) => what)).toEqual(['Zip']);
    // Without the lining, the interfacing and the 3 buttons at home no longer: 61.05 + 3.20 + 0.96 + 9.90 + 3.40.
    expect(total).toBe('78.51');
  });

  it('leaves out what is neither needed nor at home, and needs of nothing', () => {
    const book = typed(demo, 'To buy', { C3: '0 m', C5: '0 m' });
    expect(listOf(book).items.map(({ what }) => what)).not.toContain('Lining');
    expect(itemOf(book, 'Main cloth').needs.map(({ words }) => words)).toEqual(['skirt']);
    expect(itemOf(typed(book, 'To buy', { A26: 'Lining', C26: '2 m' }), 'Lining').enough).toBe(true);
  });

  it('shows the cautions of a row, and a cell without a result as its sentence', () => {
    expect(itemOf(typed(demo, 'To buy', { E16: '' }), 'Lining').cautions).toEqual(['No shrinkage is allowed for: wash a marked piece first and put in what it loses, or 0 % for cloth that was washed.']);
    const wrong = itemOf(typed(demo, 'To buy', { C5: '' }), 'Lining');
    expect([wrong.fault, wrong.buy.main]).toEqual([true, expect.stringContaining('no figure yet for Lining, skirt')]);
  });

  it('warns of a thing that stands twice in one list', () => {
    const item = itemOf(typed(demo, 'To buy', { A15: 'main cloth' }), 'Main cloth');
    expect(item.cautions[0]).toBe('“main cloth” stands more than once in the list of To buy, so it would be bought as often: take a row out.');
  });

  it('joins the same cloth of several lists', () => {
    const second = apply(sheetFromTemplate(template(), demo).edit, demo).book;
    const main = listOf(second).items.find(({ what }) => what === 'Main cloth')!;
    // 330 cm of the dress and 2.30 m of the template’s own figures.
    expect([main.buy.main, main.cells.map(({ place }) => place)]).toEqual(['560.0 cm', ['To buy G14', 'To buy 2 G14']]);
    expect(listOf(second).items.filter(({ what }) => what === 'Main cloth')).toHaveLength(1);
  });

  it('goes out as text and as a table', () => {
    const list = listOf(demo);
    expect(shoppingText(list, 'Linden tea dress')).toBe([
      'To buy: Linden tea dress',
      '- Main cloth, 140.0 cm (55 ⅛ in) wide: 330.0 cm (129 ⅞ in); 61.05',
      '- Contrast, 140.0 cm (55 ⅛ in) wide: 20.0 cm (7 ⅞ in); 3.20',
      '- Lining, 140.0 cm (55 ⅛ in) wide: 1.30 m (1 yd 15 ⅛ in); 9.36',
      '- Interfacing, 90.0 cm (35 ⅜ in) wide: 10.0 cm (3 ⅞ in); 0.58',
      '- Twill tape: 0.80 m (31 ½ in); 0.96',
      '- Buttons: 8 × card or piece; 7.20',
      '- Thread: 1 × reel, 100.00 m each; 3.40',
      'Together: 85.75',
    ].join('\n'));
    expect(shoppingTable(list)).toHaveLength(9);
  });
});

describe('putting a cell on the list', () => {
  const cell = placed(demo, 'Circle skirt', 'B19');

  it('adds a row that points at it, and one that works out how much to buy; undone in one step', () => {
    expect(isOnList(demo, cell)).toBe(false);
    const applied = apply(putOnList(demo, cell, WISH, template).edit, demo);
    const wool = itemOf(applied.book, 'Wool');
    const need = resultsOf(demo).at(cell.sheet, cell.row, cell.col);
    expect(need.kind).toBe('quantity');
    const sheet = sheetNamed(applied.book, 'To buy')!;
    expect(sheet.rows[9]!.map((each) => each?.raw)).toEqual(['Wool', 'skirt', "='Circle skirt'!B19"]);
    expect(wool.fault).toBe(false);
    expect(wool.cautions).toHaveLength(1);
    expect(isOnList(applied.book, cell)).toBe(true);
    expect(listOf(applied.book).unpriced).toBe(1);
    expect(listOf(applied.book).total).toBe(listOf(demo).total);
    expect(apply(applied.inverse, applied.book).book).toStrictEqual(demo);
    // With its price it is in the total.
    const row = sheet.rows.findIndex((each) => each?.[0]?.raw === 'Wool' && each[6]);
    const priced = typed(applied.book, 'To buy', { [`H${row + 1}`]: '10' });
    expect(Number(listOf(priced).total)).toBeGreaterThan(Number(listOf(demo).total));
    const total = resultsOf(priced).at(sheet.id, row + 2, 9);
    expect(total.kind === 'quantity' && total.value.toFixed(2)).toBe(listOf(priced).total);
  });

  it('adds no second row for what is bought already', () => {
    const book = apply(putOnList(demo, cell, { ...WISH, what: 'main CLOTH' }, template).edit, demo).book;
    expect(listOf(book).items).toHaveLength(listOf(demo).items.length);
    expect(itemOf(book, 'Main cloth').needs).toHaveLength(3);
  });

  it('starts an empty list where there is none, whose sums hold what comes', () => {
    const without = apply({ do: 'removeSheet', sheet: sheetNamed(demo, 'To buy')!.id }, demo).book;
    let book = apply(putOnList(without, cell, WISH, template).edit, without).book;
    expect(listOf(book).items.map(({ what }) => what)).toEqual(['Wool']);
    book = apply(putOnList(book, placed(book, 'Front fastening', 'B4'), { what: 'Buttons', purpose: 'front', width: '', by: 'number', step: '4', unit: 'm' }, template).edit, book).book;
    const sheet = book.sheets.at(-1)!;
    const rows = sheet.rows.flatMap((row, at) => (row?.[6] && row[0] && !row[0].look?.heading ? [at] : []));
    for (const row of rows) book = typed(book, sheet.name, { [`H${row + 1}`]: '2' });
    const list = listOf(book);
    expect(list.items.map(({ what, buy }) => `${what} ${buy.main}`)).toEqual([expect.stringMatching(/^Wool \d/), 'Buttons 3']);
    expect(list.unpriced).toBe(0);
    const total = resultsOf(book).at(sheet.id, rows.at(-1)! + 2, 9);
    expect(total.kind === 'quantity' && total.value.toFixed(2)).toBe(list.total);
    expect(Number(list.total)).toBeGreaterThan(6);
  });

  it('keeps words that look like figures or formulas as words', () => {
    const book = apply(putOnList(demo, cell, { ...WISH, what: '10 mm tape', purpose: '=SUM(A1)' }, template).edit, demo).book;
    expect(itemOf(book, '10 mm tape').needs.map(({ words }) => words)).toEqual(['=SUM(A1)']);
  });

  it('takes a cell of the list’s own sheet, which moves when the row comes in', () => {
    const thread = placed(demo, 'To buy', 'B35');
    const book = apply(putOnList(demo, thread, { ...WISH, what: 'Silk thread', width: '' }, template).edit, demo).book;
    expect(itemOf(book, 'Silk thread').needed.main).toBe('69.00 m');
  });

  it('works in a workbook that has nothing yet', () => {
    const blank = emptyBook('new');
    const book = apply({ do: 'setCells', sheet: blank.sheets[0]!.id, cells: [{ row: 0, col: 0, cell: { raw: '2 m' } }] }, blank).book;
    const put = apply(putOnList(book, { sheet: blank.sheets[0]!.id, row: 0, col: 0 }, WISH, template).edit, book).book;
    expect(itemOf(put, 'Wool').buy.main).toBe('2.00 m');
  });
});

describe('ticks', () => {
  const results = resultsOf(demo);
  const main = shoppingList(demo, results, OWN).items[0]!;
  const ticked = apply(tickEdit(demo, 'bought', figuresToTick(main, results)), demo).book;

  it('stand for the figure that was bought', () => {
    expect(itemOf(ticked, 'Main cloth').bought).toEqual({ state: 'yes' });
    expect(itemOf(ticked, 'Contrast').bought).toEqual({ state: 'no' });
    expect(itemOf(typed(ticked, 'To buy', { C3: '2 m' }), 'Main cloth').bought).toEqual({ state: 'changed', was: '330 cm' });
  });

  it('follow their cells, and go with them', () => {
    const sheet = sheetNamed(ticked, 'To buy')!.id;
    const moved = apply({ do: 'insertRows', sheet, at: 0, count: 3 }, ticked).book;
    expect(itemOf(moved, 'Main cloth').bought).toEqual({ state: 'yes' });
    const off = apply(tickEdit(ticked, 'bought', figuresToTick(main, results).map(({ cell }) => ({ cell, now: null }))), ticked).book;
    expect(recordsOf(off, 'ticks')).toEqual([]);
    const gone = apply({ do: 'removeSheet', sheet }, ticked).book;
    const { sheet: other, row, col } = placed(gone, 'Skirt', 'B15');
    const again = apply(tickEdit(gone, 'bought', [{ cell: { sheet: other, row, col }, now: 'x' }]), gone).book;
    expect(recordsOf(again, 'ticks')).toEqual([{ kind: 'ticks', id: 'bought', data: { ticks: [{ cell: '=Skirt!B15', was: 'x' }] } }]);
    expect(ticksOf(again, 'table')({ sheet: other, row, col }, 'x')).toEqual({ state: 'no' });
  });

  it('do not care for digits that only sums make', () => {
    const other = typed(ticked, 'To buy', { C3: '=0.3 m + 0.6 m' });
    expect(itemOf(other, 'Main cloth').bought).toEqual({ state: 'yes' });
  });
});
