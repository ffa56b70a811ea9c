/**
 * Puts what a cell gives on the list to buy, by a reference to the cell and the
 * usual formulas: one edit. A workbook without a list gets one from the
 * template, without the template's own rows. Pure.
 */
import { cellName, sheetInFormula } from '../formula/index.ts';
import {
  EditRefused, apply, cellAt, sheetById, sheetFromTemplate, usedArea,
  type Book, type Cell, type CellAddress, type CellChange, type Edit, type SheetId, type Template,
} from '../workbook/index.ts';
import { buyTables, fold, listBlocks, type BuyTable, type ListBlock } from './to-buy-tables.ts';

export interface Wish {
  /** What to ask for in the shop. */
  readonly what: string;
  /** What it is for. */
  readonly purpose: string;
  /** Of the cloth, as it is typed; empty for none. */
  readonly width: string;
  /** Lengths are sold in steps, other things in packs. */
  readonly by: 'length' | 'number';
  /** How the shop sells it, as it is typed: "10 cm". */
  readonly step: string;
  /** What a price is for: "m" or "yd". */
  readonly unit: 'm' | 'yd';
}

export interface Put {
  readonly edit: Edit;
  /** The list's sheet. */
  readonly sheet: SheetId;
}

/** Where the lists stand that a new row goes to; the first sheet that has all three. */
export function shoppingSheet(book: Book): { readonly table: BuyTable; readonly needs: ListBlock; readonly cupboard: ListBlock } | null {
  const [needs, cupboards] = [listBlocks(book, 'needed'), listBlocks(book, 'there is')];
  for (const table of buyTables(book)) {
    const on = (blocks: readonly ListBlock[]): ListBlock | undefined => blocks.find(({ sheet }) => sheet.id === table.sheet.id);
    const [need, cupboard] = [on(needs), on(cupboards)];
    if (need && cupboard) return { table, needs: need, cupboard };
  }
  return null;
}

/** Edits one after another, each on what the ones before led to. */
class Steps {
  readonly edits: Edit[] = [];

  constructor(public book: Book) {}

  do(edit: Edit): void {
    this.edits.push(edit);
    this.book = apply(edit, this.book).book;
  }
}

/** @param cell `null`: it is on the list of needs already, and only what to buy is missing */
export function putOnList(book: Book, cell: CellAddress | null, wish: Wish, template: () => Template): Put {
  const steps = new Steps(book);
  let lists = shoppingSheet(steps.book);
  if (!lists) {
    startList(steps, template());
    lists = shoppingSheet(steps.book);
    if (!lists) throw new EditRefused('The list to buy could not be started.');
  }
  const { sheet } = lists.table;
  if (cell) addNeed(steps, lists.needs, cell, wish);
  const { table, needs, cupboard } = shoppingSheet(steps.book)!;
  const listed = table.rows.some((row) => fold(cellAt(table.sheet, row, table.what)?.raw ?? '') === fold(wish.what));
  if (!listed) addRow(steps, table, needs, cupboard, wish);
  return { edit: { do: 'many', label: `put ${wish.what} on the list to buy`, edits: steps.edits }, sheet: sheet.id };
}

/** The template's lists with their headings, and nothing in them. */
function startList(steps: Steps, template: Template): void {
  const { edit, sheet } = sheetFromTemplate(template, steps.book);
  steps.do(edit);
  const lists = shoppingSheet(steps.book);
  if (!lists) return;
  const empty = (at: number, end: number): void => {
    if (end > at) steps.do({ do: 'removeRows', sheet, at, count: end - at });
  };
  // From the end on, so that those before stay where they are.
  const runs = [
    [lists.cupboard.area.top + 1, lists.cupboard.rows.at(-1)! + 1], [lists.table.top + 1, lists.table.end], [lists.needs.area.top + 1, lists.needs.rows.at(-1)! + 1],
  ] as const;
  for (const [at, end] of [...runs].sort(([a], [b]) => b - a)) empty(at, end);
}

function addNeed(steps: Steps, { area, columns, rows }: ListBlock, cell: CellAddress, { what, purpose }: Wish): void {
  const { sheet } = area;
  const at = (rows.at(-1) ?? area.top) + 1;
  steps.do({ do: 'insertRows', sheet, at, count: 1 });
  if (at > area.bottom) {
    const name = listBlocks(steps.book, 'needed').find((block) => block.sheet.id === sheet)!.name;
    steps.do({ do: 'setName', name, target: { kind: 'cells', area: { ...area, bottom: at } } });
  }
  const row = cell.sheet === sheet && cell.row >= at ? cell.row + 1 : cell.row;
  const place = cellName(row, cell.col);
  const reference = cell.sheet === sheet ? `=${place}` : `=${sheetInFormula(sheetById(steps.book, cell.sheet)!.name)}!${place}`;
  const purposeAt = columns.get('for');
  steps.do({ do: 'setCells', sheet, cells: [
    typed(at, area.left, what),
    ...(purposeAt === undefined || purpose === '' ? [] : [typed(at, purposeAt, purpose)]),
    { row: at, col: columns.get('needed')!, cell: { raw: reference } },
  ] });
}

function addRow(steps: Steps, table: BuyTable, needs: ListBlock, cupboard: ListBlock, { what, width, by, step, unit }: Wish): void {
  const sheet = table.sheet.id;
  const last = table.rows.at(-1) ?? table.top;
  const room = !table.sheet.rows[last + 1]?.some((cell) => cell && cell.raw !== '');
  // Above the empty row, which the total holds too; without one, above the last row, so that the total still holds it.
  const at = room || last === table.top ? last + 1 : last;
  steps.do({ do: 'insertRows', sheet, at, count: 1 });
  const column = (heading: string): string | null => {
    const col = heading === 'ask for' ? table.what : table.columns.get(heading);
    return col === undefined ? null : cellName(at, col);
  };
  const [asked, wide, needed, home, shrinkage, sold, price, one, buy] = ['ask for', 'width', 'needed', 'at home', 'shrinkage', 'sold by', 'price', 'for 1', 'to buy'].map(column);
  const given = (...places: (string | null | undefined)[]): string => places.map((place) => place ?? '').join(', ').replace(/(?:, )+$/, '');
  const length = by === 'length';
  const cells: CellChange[] = [];
  const put = (heading: string, raw: string, cell: Partial<Cell> = {}): void => {
    const col = table.columns.get(heading);
    if (col !== undefined && (raw !== '' || cell.input)) cells.push({ row: at, col, cell: { raw, ...cell } });
  };
  cells.push(typed(at, table.what, what));
  put('width', length ? width : '', { input: true });
  put('needed', `=BUY.NEEDED(${needs.name}, ${asked})`);
  put('at home', length ? `=CUPBOARD.LENGTH(${given(cupboard.name, asked, width === '' ? null : wide)})` : `=CUPBOARD.COUNT(${cupboard.name}, ${asked})`);
  if (length) put('shrinkage', '', { input: true });
  put('sold by', step, { input: true });
  put('to buy', length ? `=IF(ISBLANK(${shrinkage}), BUY.LENGTH(${given(needed, home, '', sold)}), BUY.LENGTH(${given(needed, home, shrinkage, sold)}))` : `=BUY.COUNT(${given(needed, home, sold)})`, { look: { strong: true } });
  put('price', '', { input: true, look: { decimals: 2 } });
  if (length) put('for 1', unit, { input: true, look: { align: 'end' } });
  const cost = length && one ? `CLOTH.COST(${given(buy, price, one)})` : `${buy} * ${price}`;
  put('cost', `=IF(ISBLANK(${price}), "no price yet", ROUND(${cost}, 2))`, { look: { decimals: 2, align: 'end' } });
  steps.do({ do: 'setCells', sheet, cells });
}

const typed = (row: number, col: number, raw: string): CellChange => ({ row, col, cell: { raw: asText(raw), input: true } });

/** Words stay words, though they look like a formula or a figure. */
const asText = (raw: string): string => (/^[=+'\d-]/.test(raw) ? `'${raw}` : raw);

/** Whether a cell of the list of needs points at it already. */
export function isOnList(book: Book, cell: CellAddress): boolean {
  const sheet = sheetById(book, cell.sheet);
  if (!sheet || !usedArea(sheet)) return false;
  const place = cellName(cell.row, cell.col);
  return listBlocks(book, 'needed').some((block) => block.rows.some((row) => {
    const raw = (cellAt(block.sheet, row, block.columns.get('needed')!)?.raw ?? '').replaceAll('$', '');
    return raw === (block.sheet.id === cell.sheet ? `=${place}` : `=${sheetInFormula(sheet.name)}!${place}`);
  }));
}
