/**
 * A table of usual values: a heading row, then a row for each case. Which column
 * is which is told by its heading, so that columns can stand in any order and
 * more can be added.
 */
import type { Quantity, Span } from '../quantities/index.ts';
import type { CellBlock } from './cell-block.ts';
import { labelText, listed } from './chart-labels.ts';
import type { Figure, FigureSpan, Pad, Value } from './define.ts';

/** A heading and what is looked for under it; an empty word is any. */
export type Key = readonly [heading: string, wanted: string];

interface Row {
  /** What names it, such as "dress, bust, fitted". */
  readonly label: string;
  readonly source: string;
  readonly cells: readonly Value[];
}

const fold = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();

function headingsOf(table: CellBlock): readonly string[] {
  return (table.rows[0] ?? []).map((cell) => labelText(cell) ?? '');
}

/** −1 where there is none. */
function placeOf(table: CellBlock, heading: string): number {
  return headingsOf(table).findIndex((text) => fold(text) === heading);
}

function columnOf(table: CellBlock, heading: string, pad: Pad): number {
  const at = placeOf(table, heading);
  if (at >= 0) return at;
  const headings = headingsOf(table);
  return pad.refuse(`The table has no column headed “${heading}”; its first row has ${listed(headings.filter((text) => text !== '')) || 'no words'}. Give the table with its headings.`);
}

/** Every row that has the words looked for; refuses, with what there is, when none has. */
export function rowsWith(table: CellBlock, keys: readonly Key[], pad: Pad): readonly Row[] {
  let rows = table.rows.slice(1).filter((cells) => cells.some((cell) => labelText(cell) !== null));
  const before: string[] = [];
  const columns = keys.map(([heading, wanted]) => (wanted === '' ? placeOf(table, heading) : columnOf(table, heading, pad)));
  for (const [k, [heading, wanted]] of keys.entries()) {
    const word = (cells: readonly Value[]): string => fold(labelText(cells[columns[k] as number] ?? null) ?? '');
    if (wanted === '') continue;
    const asked = fold(wanted);
    const same = rows.filter((cells) => word(cells) === asked);
    const found = same.length > 0 ? same : rows.filter((cells) => word(cells).startsWith(`${asked} `) || word(cells).startsWith(`${asked},`));
    if (found.length === 0) {
      const has = [...new Set(rows.map(word))].filter((text) => text !== '');
      return pad.refuse(`The table has no ${heading} “${wanted}”${before.length > 0 ? ` for ${before.join(', ')}` : ''}; it has ${listed(has) || 'none'}.`);
    }
    rows = found;
    before.push(asked);
  }
  const source = placeOf(table, 'source');
  return rows.map((cells) => ({
    label: columns.map((column) => fold(labelText(cells[column] ?? null) ?? '')).filter((text) => text !== '').join(', '),
    source: labelText(cells[source] ?? null) ?? 'no source given',
    cells,
  }));
}

/** The text under a heading in the one row that has the words. */
export function textIn(table: CellBlock, keys: readonly Key[], heading: string, pad: Pad): string {
  const row = onlyRow(table, keys, pad);
  const text = labelText(row.cells[columnOf(table, heading, pad)] ?? null);
  if (text === null) return pad.refuse(`The table has nothing under ${heading} for ${row.label}.`);
  return pad.text(`the table’s ${heading} for ${row.label}; its source: ${row.source}`, [], text);
}

/** The length under a heading in the one row that has the words. */
export function lengthIn(table: CellBlock, keys: readonly Key[], heading: string, pad: Pad): number {
  const row = onlyRow(table, keys, pad);
  const figure = quantityIn(row, columnOf(table, heading, pad));
  if (figure === undefined || figure.dimension !== 'length') return pad.refuse(`The table has no length under ${heading} for ${row.label}: write one with its unit.`);
  pad.showIn(figure.unit);
  return pad.length(`the table’s ${heading} for ${row.label}; its source: ${row.source}`, [], figure.value);
}

function onlyRow(table: CellBlock, keys: readonly Key[], pad: Pad): Row {
  const [row, other] = rowsWith(table, keys, pad);
  if (row === undefined) return pad.refuse('The table has no rows.');
  if (other !== undefined) return pad.refuse(`The table has more than one row for ${row.label}: give each its own words.`);
  return row;
}

function quantityIn(row: Row, column: number): Quantity | undefined {
  const cell = row.cells[column];
  return typeof cell === 'object' && cell !== null && 'dimension' in cell ? cell : undefined;
}

function spanIn(row: Row, column: number): Span | undefined {
  const cell = row.cells[column];
  return typeof cell === 'object' && cell !== null && 'low' in cell ? cell : undefined;
}

/** From the least to the most of every row that has the words, under the headings `from` and `to`. */
export function rangeIn(table: CellBlock, keys: readonly Key[], dimension: 'length' | 'number', pad: Pad, from = 'from', to = 'to'): FigureSpan {
  const rows = rowsWith(table, keys, pad);
  const [low, high] = [columnOf(table, from, pad), columnOf(table, to, pad)];
  const figure = (value: number): Figure => ({ value, dimension });
  const ranges = rows.map((row): FigureSpan => {
    const both = spanIn(row, low);
    const [least, most] = both === undefined ? [quantityIn(row, low), quantityIn(row, high)] : [both.low, both.high];
    if (least === undefined || least.dimension !== dimension || (most !== undefined && most.dimension !== dimension)) {
      return pad.refuse(`The table has no ${dimension} under “${from}” and “${to}” for ${row.label}${dimension === 'length' ? ': write figures with their units' : ': write plain numbers'}.`);
    }
    if (most !== undefined && most.value < least.value) return pad.refuse(`In the table, “${from}” is more than “${to}” for ${row.label}: put the smaller figure first.`);
    if (dimension === 'length') pad.showIn(least.unit);
    if (most === undefined) pad.caution('The table has only the least figure here, and no upper one.');
    return pad.span(`the table’s figures for ${row.label}; their source: ${row.source}`, [], { low: figure(least.value), high: figure((most ?? least).value) });
  });
  const [first] = ranges;
  if (first === undefined) return pad.refuse('The table has no rows.');
  if (ranges.length === 1) return first;
  pad.caution('The table has more than one row for this, and the range covers them all: say more closely which, or choose the source that you go by.');
  return pad.span('from the least to the most of them', [], {
    low: figure(Math.min(...ranges.map((range) => range.low.value))),
    high: figure(Math.max(...ranges.map((range) => range.high.value))),
  });
}
