/** Between cells and what the choice of a size works with: values, charts, and measures typed or pointed at. */
import { cellName, readArea, sheetInFormula } from '../formula/index.ts';
import { inBase, readQuantity, type Quantity } from '../quantities/index.ts';
import type { Result, Results } from '../reckoning/index.ts';
import { CellBlock, knownLevel, readChart, type SizeChart, type Value } from '../sewing/index.ts';
import { nameCalled, sheetById, sheetNamed, type Area, type Book, type CellAddress } from '../workbook/index.ts';
import type { Fault } from '../quantities/index.ts';
import { areaInWords, nameOf } from './naming.ts';

function valueOf(result: Result): Value {
  switch (result.kind) {
    case 'quantity': return inBase(result.value, result.unit);
    case 'span': return { low: inBase(result.low, result.unit), high: inBase(result.high, result.unit) };
    case 'text': return result.text;
    case 'truth': return result.truth;
    default: return null;
  }
}

/** A cell's typed text as its value. */
export function valueOfRaw(raw: string): Value {
  if (raw === '') return null;
  const reading = readQuantity(raw);
  if (reading.kind === 'quantity') return reading.quantity;
  return reading.kind === 'span' ? reading.span : raw.replace(/^'/, '');
}

function rowsOf(results: Results, { sheet, top, left, bottom, right }: Area): Value[][] {
  return Array.from({ length: bottom - top + 1 }, (_, r) => Array.from({ length: right - left + 1 }, (__, c) => valueOf(results.at(sheet, top + r, left + c))));
}

export const blockOf = (results: Results, area: Area): CellBlock => new CellBlock(rowsOf(results, area));

export const chartOf = (results: Results, area: Area): SizeChart | Fault => readChart(rowsOf(results, area));

/** What "=bust" or "=Measures!B3" points at; undefined for anything else. */
export function cellMeant(book: Book, raw: string): CellAddress | undefined {
  const text = raw.replace(/^=/, '').trim();
  const named = nameCalled(book, text);
  const area = named ? named.area : readArea(text);
  if (!area || area.top !== area.bottom || area.left !== area.right) return undefined;
  const sheet = typeof area.sheet === 'number' ? area.sheet : area.sheet === undefined ? undefined : sheetNamed(book, area.sheet)?.id;
  return sheet === undefined ? undefined : { sheet, row: area.top, col: area.left };
}

/** How a formula anywhere in the workbook points at a cell: by its name, else by its place with its sheet. */
export function pointingAt(book: Book, { sheet, row, col }: CellAddress): string {
  const name = nameOf(book, { sheet, top: row, left: col, bottom: row, right: col });
  return `=${name || `${sheetInFormula(sheetById(book, sheet)?.name ?? '')}!${cellName(row, col)}`}`;
}

export type MeasureRead = { readonly length: Quantity | null; readonly fault: string };

/** @param bare the unit of a figure that has none */
export function readMeasureText(book: Book, results: Results, raw: string, bare: 'cm' | 'in'): MeasureRead {
  const text = raw.trim();
  if (text === '') return { length: null, fault: '' };
  if (text.startsWith('=')) {
    const cell = cellMeant(book, text);
    if (!cell) return { length: null, fault: `“${text.slice(1)}” is neither a cell with its sheet, such as Measures!B3, nor the name of one.` };
    const value = valueOf(results.at(cell.sheet, cell.row, cell.col));
    if (isLength(value)) return { length: value, fault: '' };
    return { length: null, fault: `${areaInWords(book, areaOf(cell))} has no length in it.` };
  }
  const value = valueOfRaw(text);
  if (isLength(value)) return { length: value, fault: '' };
  if (isQuantity(value) && value.unit === '') return readMeasureText(book, results, `${text} ${bare}`, bare);
  return { length: null, fault: `“${text}” is no length: type a figure with its unit, such as 94 cm or 37 1/4 in.` };
}

const areaOf = ({ sheet, row, col }: CellAddress): Area => ({ sheet, top: row, left: col, bottom: row, right: col });

const isQuantity = (value: Value): value is Quantity => typeof value === 'object' && value !== null && 'dimension' in value && 'unit' in value;
const isLength = (value: Value): value is Quantity => isQuantity(value) && value.dimension === 'length';

/** Where the lengths of levels stand in a block whose rows have names: each level once. */
export function measuresIn(results: Results, area: Area): ReadonlyMap<string, CellAddress> {
  const found = new Map<string, CellAddress>();
  // What is longer than any list of measures is something else.
  if (area.bottom - area.top > MOST_ROWS || area.right - area.left > MOST_ROWS) return found;
  for (const [r, row] of rowsOf(results, area).entries()) {
    const name = row.find((value): value is string => typeof value === 'string');
    const col = row.findIndex(isLength);
    const level = name === undefined ? undefined : knownLevel(name);
    if (level !== undefined && col >= 0 && !found.has(level)) found.set(level, { sheet: area.sheet, row: area.top + r, col: area.left + col });
  }
  return found;
}

const MOST_ROWS = 200;
