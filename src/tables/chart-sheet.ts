/** A size chart as a sheet: her orientation, her figures with their units, her notes around it. */
import { readQuantity } from '../quantities/index.ts';
import type { Area, Cell, Look, Sheet } from '../workbook/types.ts';
import type { ChartCell, ChartReading } from './reading.ts';

export interface ChartSheet {
  readonly sheet: Omit<Sheet, 'id'>;
  /** The chart itself: the row and the column of headings, and the figures. */
  readonly area: Omit<Area, 'sheet'>;
  /** Where the unreadable figures stand in the sheet, in the order of `reading.unreadable`. */
  readonly marks: readonly { readonly row: number; readonly col: number; readonly sentence: string }[];
}

/** So that a cell keeps this text as text: `00`, `1/2` and `=A1` get an apostrophe in front. */
export function asText(text: string): string {
  if (/^'[=+\-@\t\r]/.test(text)) return text; // guarded in a file of ours, see write.ts
  const plain = readQuantity(text).kind === 'text' && !/^['=]|^(?:true|false)$/i.test(text);
  return plain ? text : `'${text}`;
}

/** A size such as 10 stays a number; one that a number does not say (00, +2, 36-38) stays text. */
const sizeRaw = (label: string): string => (/^(?:0|[1-9]\d{0,5})(?:\.\d*[1-9])?$/.test(label) ? label : asText(label));

/** A note keeps what stands there; only a formula or a broken fraction must not be worked out. */
const noteRaw = (text: string): string => (/^['=]/.test(text) || readQuantity(text).kind === 'refused' ? asText(text) : text);

const figureRaw = (cell: ChartCell): string =>
  (cell.kind === 'figure' ? cell.raw : cell.kind === 'none' ? '' : asText(cell.raw));

class Page {
  readonly rows: (Cell | undefined)[][] = [];

  put(row: number, col: number, raw: string, look?: Look, note?: string): void {
    if (raw === '') return;
    while (this.rows.length <= row) this.rows.push([]);
    const cells = this.rows[row]!;
    while (cells.length < col) cells.push(undefined);
    cells[col] = { raw, ...(look && { look }), ...(note && { note }) };
  }
}

/** The sheet for a reading. `reading.rows` outside of the table keep their order and columns. */
export function chartSheet(reading: ChartReading, name: string): ChartSheet {
  const { rows, table, measures, sizeLabels, cells } = reading;
  const across = reading.sizes.value === 'across';
  const page = new Page();
  const labelRow = table.top;
  const labelCol = table.left;
  const downAt = (across ? measures : sizeLabels).map(({ at }) => at);
  const lines = { down: downAt.length, across: (across ? sizeLabels : measures).length };

  rows.slice(0, labelRow).forEach((row, r) => row.forEach((text, c) => {
    page.put(r, c, noteRaw(text), r === 0 && c === row.findIndex((each) => each !== '') ? { strong: true } : undefined);
  }));
  for (const [line, fileRow] of [table.top, ...downAt].entries()) {
    rows[fileRow]?.slice(0, labelCol).forEach((text, c) => page.put(labelRow + line, c, noteRaw(text)));
  }

  page.put(labelRow, labelCol, asText(reading.firstColumnHolds.value === 'figures' ? 'size' : reading.corner), { heading: true });
  const heading: Look = { heading: true, align: 'end' };
  sizeLabels.forEach(({ label }, s) => {
    if (across) page.put(labelRow, labelCol + 1 + s, label && sizeRaw(label), heading);
    else page.put(labelRow + 1 + s, labelCol, label && sizeRaw(label), { strong: true });
  });
  measures.forEach((measure, m) => {
    if (across) page.put(labelRow + 1 + m, labelCol, measure.name && asText(measure.name), { strong: true });
    else page.put(labelRow, labelCol + 1 + m, measure.name && asText(measure.name), heading);
  });

  const sentences = new Map(reading.unreadable.map((each) => [`${each.row} ${each.col}`, each.sentence]));
  const marks = new Map<string, { row: number; col: number; sentence: string }>();
  cells.forEach((line, m) => line.forEach((cell, s) => {
    const row = labelRow + 1 + (across ? m : s);
    const col = labelCol + 1 + (across ? s : m);
    const key = `${cell.at.row} ${cell.at.col}`;
    const sentence = cell.kind === 'unreadable' ? sentences.get(key) ?? '' : undefined;
    if (sentence !== undefined) marks.set(key, { row, col, sentence });
    page.put(row, col, figureRaw(cell), undefined, sentence);
  }));

  const bottom = labelRow + lines.down;
  const right = labelCol + lines.across;
  rows.slice(table.bottom + 1).forEach((row, r) => row.forEach((text, c) => page.put(bottom + 1 + r, c, noteRaw(text))));

  return {
    sheet: { name, rows: page.rows.map((row) => (row.length === 0 ? undefined : row)), widths: { [labelCol]: labelWidth(page, labelRow, bottom, labelCol) }, about: about(reading) },
    area: { top: labelRow, left: labelCol, bottom, right },
    marks: reading.unreadable.flatMap(({ row, col }) => marks.get(`${row} ${col}`) ?? []),
  };
}

/** Width for the names, in CSS pixels. */
function labelWidth(page: Page, top: number, bottom: number, col: number): number {
  const longest = page.rows.slice(top, bottom + 1).reduce((most, row) => Math.max(most, row[col]?.raw.length ?? 0), 0);
  return Math.min(280, Math.max(96, longest * 8 + 24));
}

/** What stands in a size's place may be anything; the line about a sheet holds 200 characters. */
const MOST_LABEL = 40;

const shortened = (label: string): string => (label.length > MOST_LABEL ? `${label.slice(0, MOST_LABEL)}…` : label);

/** "sizes 10 – 22, cm" for the list of sheets. */
function about({ sizeLabels, unit }: ChartReading): string {
  const labels = sizeLabels.map(({ label }) => shortened(label)).filter((label) => label !== '');
  const sizes = labels.length > 1 ? `sizes ${labels[0]} – ${labels.at(-1)}` : `size ${labels[0] ?? ''}`;
  return unit.value === 'none' ? sizes : `${sizes}, ${unit.value === 'mixed' ? 'mixed units' : unit.value}`;
}
