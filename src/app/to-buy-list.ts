/**
 * Gathers what is to be bought over all sheets: a thing that several lists ask
 * for is one item. Every figure is a cell's result or a sum of such results. Pure.
 */
import { cellName } from '../formula/index.ts';
import { cautionInWords, shownResult, type ShoppingItem, type ShoppingList, type ShoppingNeed, type ShownFigure, type Unlisted } from '../panels/index.ts';
import { UNITS, inBase, show, type ShowAs } from '../quantities/index.ts';
import type { Result, Results } from '../reckoning/index.ts';
import { cellAt, type Book, type CellAddress, type Sheet } from '../workbook/index.ts';
import { acknowledgedOf } from './pin-texts.ts';
import { showAsFor } from './sheet-view.ts';
import { inOtherSystem } from './ticket.ts';
import { printOf, ticksOf } from './ticks.ts';
import { buyColumn, buyTables, fold, listBlocks, type BuyTable, type ListBlock } from './to-buy-tables.ts';

/** One row of one list. */
interface Found {
  readonly table: BuyTable;
  readonly row: number;
  readonly what: string;
  readonly result: Result;
  readonly needs: readonly ShoppingNeed[];
  /** It stands in its list once more, so that as much would be bought again. */
  readonly again: boolean;
}

export function shoppingList(book: Book, results: Results, as: ShowAs): ShoppingList {
  const tick = ticksOf(book, 'bought');
  const blocks = listBlocks(book, 'needed');
  const found = buyTables(book).flatMap((table) => rowsFound(table, blocks, results, as));
  const groups = new Map<string, Found[]>();
  for (const each of found) {
    const { result, what } = each;
    // What has no result is joined to nothing.
    const dimension = result.kind === 'quantity' ? UNITS[result.unit].dimension : `${each.table.sheet.id} ${each.row}`;
    const id = [fold(what), dimension, printOf([atColumn(each, 'width', results)])].join('\n');
    groups.set(id, [...(groups.get(id) ?? []), each]);
  }
  const items = [...groups].filter(([, rows]) => !rows.every((each) => nothingOf(each, results))).map(([id, rows]) => itemOf(id, rows, results, as, tick));
  const costs = found.map((each) => costOf(each, results));
  return {
    items,
    unlisted: blocks.flatMap((block) => unlisted(block, found, results, as)),
    total: show(inBase(costs.reduce<number>((sum, cost) => sum + (cost ?? 0), 0), ''), { ...as, decimals: 2 }).main,
    unpriced: found.filter((each, at) => costs[at] === null && !isNothing(each.result)).length,
  };
}

/** The cells to tick, with the figures that stand in them. */
export function figuresToTick(item: ShoppingItem, results: Results): { readonly cell: CellAddress; readonly now: string }[] {
  return item.cells.map(({ area: { sheet, top: row, left: col } }) => ({ cell: { sheet, row, col }, now: printOf([results.at(sheet, row, col)]) }));
}

function rowsFound(table: BuyTable, blocks: readonly ListBlock[], results: Results, as: ShowAs): Found[] {
  const { sheet, rows, what: column } = table;
  const whats = rows.map((row) => textAt(sheet, row, column, results));
  return rows.map((row, at) => {
    const what = whats[at]!;
    return {
      table, row, what, result: results.at(sheet.id, row, buyColumn(table, row)),
      needs: blocks.filter((block) => block.sheet === sheet).flatMap((block) => needsFor(block, what, results, as)),
      again: whats.findIndex((each) => fold(each) === fold(what)) < at,
    };
  });
}

function needsFor(block: ListBlock, what: string, results: Results, as: ShowAs): ShoppingNeed[] {
  return block.rows.filter((row) => fold(textAt(block.sheet, row, block.area.left, results)) === fold(what) && !isZero(needAtRow(block, row, results))).map((row) => needAt(block, row, results, as));
}

const needAtRow = ({ sheet, columns }: ListBlock, row: number, results: Results): Result => results.at(sheet.id, row, columns.get('needed')!);

function needAt({ sheet, columns, area }: ListBlock, row: number, results: Results, as: ShowAs): ShoppingNeed {
  const [col, purpose] = [columns.get('needed')!, columns.get('for')];
  return {
    ...figureAt(sheet, row, col, results, as),
    words: purpose === undefined ? '' : textAt(sheet, row, purpose, results),
    area: { sheet: area.sheet, top: row, bottom: row, left: col, right: col },
  };
}

function unlisted(block: ListBlock, found: readonly Found[], results: Results, as: ShowAs): Unlisted[] {
  const listed = new Set(found.filter(({ table }) => table.sheet === block.sheet).map(({ what }) => fold(what)));
  return block.rows.flatMap((row): Unlisted[] => {
    const what = textAt(block.sheet, row, block.area.left, results);
    return listed.has(fold(what)) ? [] : [{ ...needAt(block, row, results, as), what }];
  });
}

function itemOf(id: string, rows: readonly Found[], results: Results, as: ShowAs, tick: ReturnType<typeof ticksOf>): ShoppingItem {
  const [first] = rows as [Found];
  const { sheet, columns } = first.table;
  const at = (heading: string): ShownFigure | null => {
    const col = columns.get(heading);
    const figure = col === undefined ? null : figureAt(sheet, first.row, col, results, as);
    return figure && figure.main !== '' ? figure : null;
  };
  const sum = (column: (each: Found) => number): ShownFigure => added(rows.map((each) => ({ sheet: each.table.sheet, row: each.row, col: column(each) })), results, as);
  const headed = (heading: string) => ({ table }: Found): number => table.columns.get(heading) ?? -1;
  const fault = rows.some(({ result }) => result.kind !== 'quantity');
  const counted = first.result.kind === 'quantity' && UNITS[first.result.unit].dimension === 'number';
  const cells = rows.map(({ table, row }) => {
    const col = buyColumn(table, row);
    return { area: { sheet: table.sheet.id, top: row, bottom: row, left: col, right: col }, place: `${table.sheet.name} ${cellName(row, col)}` };
  });
  const states = rows.map(({ table, row, result }) => tick({ sheet: table.sheet.id, row, col: buyColumn(table, row) }, printOf([result])));
  const costs = rows.map((each) => costOf(each, results));
  const home = rows.some((each) => !isNothing(atColumn(each, 'at home', results)));
  return {
    id, what: first.what, fault,
    width: at('width'),
    buy: fault ? { main: rows.map(({ result }) => (result.kind === 'error' ? result.sentence : '')).find((text) => text !== '') ?? 'It is not worked out yet.' } : sum(({ table, row }) => buyColumn(table, row)),
    by: counted ? byWords(at('for 1')?.main ?? '', at('sold by')?.main ?? '') : '',
    enough: rows.every(({ result }) => result.kind === 'quantity' && result.value === 0),
    needed: sum(headed('needed')), home: home ? sum(headed('at home')) : null,
    needs: rows.filter(({ again }) => !again).flatMap(({ needs }) => needs),
    cost: costs.some((cost) => cost === null) ? '' : show(inBase(costs.reduce<number>((all, cost) => all + cost!, 0), ''), { ...as, decimals: 2 }).main,
    cautions: [
      ...rows.filter(({ again }) => again).map(({ what, table }) => `“${what}” stands more than once in the list of ${table.sheet.name}, so it would be bought as often: take a row out.`),
      ...rows.flatMap((each) => cautionsOf(each, results, as)),
    ],
    bought: states.find(({ state }) => state === 'changed') ?? (states.every(({ state }) => state === 'yes') ? { state: 'yes' } : { state: 'no' }),
    cells,
  };
}

/** "reel, 100 m each". */
function byWords(one: string, pack: string): string {
  const each = pack === '' || pack === '1' ? '' : `${pack} each`;
  return one !== '' && each !== '' ? `${one}, ${each}` : one || each;
}

function atColumn({ table, row }: Found, heading: string, results: Results): Result {
  const col = table.columns.get(heading);
  return col === undefined ? { kind: 'empty' } : results.at(table.sheet.id, row, col);
}

/** `null` where there is no price yet; old lists call it “cost” too. */
function costOf(each: Found, results: Results): number | null {
  const cost = atColumn(each, 'cost', results);
  return cost.kind === 'quantity' ? cost.value : null;
}

const isZero = (result: Result): boolean => result.kind === 'quantity' && result.value === 0;

/** None is needed and none is at home: a row that waits for another garment. */
const nothingOf = (each: Found, results: Results): boolean => isZero(each.result) && isZero(atColumn(each, 'needed', results)) && isNothing(atColumn(each, 'at home', results));

const isNothing = (result: Result): boolean => result.kind === 'empty' || isZero(result);

function cautionsOf({ table, row }: Found, results: Results, as: ShowAs): string[] {
  return [...new Set(table.columns.values())].flatMap((col) => {
    const cell = cellAt(table.sheet, row, col);
    return results.pins.at(table.sheet.id, row, col).filter((pin) => !acknowledgedOf(cell, pin)).map((pin) => cautionInWords(pin, showAsFor(cell, as)));
  });
}

function figureAt(sheet: Sheet, row: number, col: number, results: Results, as: ShowAs): ShownFigure {
  return withOther(results.at(sheet.id, row, col), cellAt(sheet, row, col), as);
}

/** Figures of one kind added up, as the first of them shows. */
function added(cells: readonly { readonly sheet: Sheet; readonly row: number; readonly col: number }[], results: Results, as: ShowAs): ShownFigure {
  const all = cells.map(({ sheet, row, col }) => results.at(sheet.id, row, col));
  const [first, ...others] = all;
  const [{ sheet, row, col }] = cells as [(typeof cells)[number]];
  if (first?.kind !== 'quantity' || others.length === 0) return withOther(first ?? { kind: 'empty' }, cellAt(sheet, row, col), as);
  const value = all.reduce((sum, result) => sum + (result.kind === 'quantity' ? result.value : 0), 0);
  return withOther({ ...first, value }, cellAt(sheet, row, col), as);
}

function withOther(result: Result, cell: ReturnType<typeof cellAt>, as: ShowAs): ShownFigure {
  const { main } = shownResult(result, showAsFor(cell, as));
  const also = inOtherSystem(result, cell, as);
  return also === undefined || also === main ? { main } : { main, also };
}

function textAt(sheet: Sheet, row: number, col: number, results: Results): string {
  const result = results.at(sheet.id, row, col);
  return result.kind === 'text' ? result.text : (cellAt(sheet, row, col)?.raw ?? '').replace(/^'/, '');
}
