/** Finds the table among the title and note lines of a file: its heading row, first column and last row. */
import type { Fault } from '../quantities/index.ts';
import { isNoFigure, startsLikeFigure, type FieldReader } from './figure.ts';
import { endAlone, isCornerWord, isUnitHeading, readLabel, unitAlone } from './labels.ts';
import type { ChartChoices, Decision } from './reading.ts';

export interface Location {
  readonly headerRow: Decision<number>;
  readonly firstColumn: Decision<number>;
  readonly bottom: number;
  readonly right: number;
  /** A second heading row that holds only units or "from" and "to". */
  readonly subRow: number | null;
  /** A column that holds only units. */
  readonly unitColumn: number | null;
  /** Rows from 0 of figures that stand apart, in another table. */
  readonly otherTable: { readonly from: number; readonly to: number } | null;
}

type Rows = readonly (readonly string[])[];

/** Rows of figures with no more than this many other rows between them belong together. */
const LARGEST_GAP = 2;

interface Cluster {
  readonly body: readonly number[];
  readonly figures: number;
}

class Sheetful {
  readonly rows: Rows;
  readonly #read: FieldReader;

  constructor(rows: Rows, read: FieldReader) {
    this.rows = rows;
    this.#read = read;
  }

  at(row: number, col: number): string {
    return this.rows[row]?.[col] ?? '';
  }

  isFigure(row: number, col: number): boolean {
    return this.#read(this.at(row, col), 'in').kind === 'figure';
  }

  /** Columns that hold something, in order. */
  filled(row: number): number[] {
    return (this.rows[row] ?? []).flatMap((text, col) => (text === '' ? [] : [col]));
  }

  /** Figures beside the row's first field, which names it. */
  figures(row: number): number {
    const [first, ...rest] = this.filled(row);
    const beside = rest.filter((col) => this.isFigure(row, col)).length;
    // A row whose name is left out begins with a figure.
    return first !== undefined && first > 0 && this.isFigure(row, first) ? beside + 1 : beside;
  }
}

function clusters(sheet: Sheetful): Cluster[] {
  const counts = sheet.rows.map((_, row) => sheet.figures(row));
  const least = Math.max(1, Math.floor(counts.reduce((a, b) => Math.max(a, b), 0) * 0.3));
  const found: { body: number[]; figures: number }[] = [];
  let corner = '';
  counts.forEach((count, row) => {
    if (count < least) return;
    const current = found.at(-1);
    const label = sheet.at(row, sheet.filled(row)[0] ?? 0);
    const last = current?.body.at(-1) ?? 0;
    const blankBetween = sheet.rows.slice(last + 1, row).some((between) => between.every((text) => text === ''));
    const begins = !current || row - last - 1 > LARGEST_GAP
      || (blankBetween && (label === corner || (!sheet.isFigure(row, 0) && isCornerWord(label))));
    if (begins) {
      found.push({ body: [row], figures: count });
      corner = label;
    } else {
      current.body.push(row);
      current.figures += count;
    }
  });
  return found;
}

/** The leftmost column in which at least half of the rows have something. */
function firstColumnOf(sheet: Sheetful, body: readonly number[]): number {
  const width = body.reduce((most, row) => Math.max(most, sheet.rows[row]!.length), 0);
  for (let col = 0; col < width; col++) {
    if (body.filter((row) => sheet.at(row, col) !== '').length * 2 >= body.length) return col;
  }
  return 0;
}

/** Whether a row has something above most of the columns that hold figures. */
function covers(sheet: Sheetful, row: number, firstColumn: number, body: readonly number[], most = 0.5): boolean {
  const columns = new Set(body.slice(0, 50).flatMap((each) => sheet.filled(each).filter((col) => col > firstColumn && sheet.isFigure(each, col))));
  const covered = [...columns].filter((col) => sheet.at(row, col) !== '').length;
  return columns.size > 0 && covered >= columns.size * most;
}

const isSubRow = (sheet: Sheetful, row: number, firstColumn: number): boolean => {
  const texts = sheet.filled(row).filter((col) => col > firstColumn).map((col) => sheet.at(row, col));
  return texts.length > 0 && texts.every((text) => unitAlone(text) !== null || endAlone(text) !== null);
};

function findHeader(sheet: Sheetful, body: readonly number[], firstColumn: number): Decision<number> {
  const first = body[0]!;
  const label = sheet.at(first, firstColumn);
  if (isCornerWord(label) && !sheet.isFigure(first, firstColumn)) {
    return { value: first, why: label === '' ? 'its first field is empty and figures follow below' : `it begins with “${label}”`, by: 'file' };
  }
  let above = first - 1;
  // Past empty rows and a heading over a group of measures.
  while (above >= 0 && first - above <= LARGEST_GAP && sheet.filled(above).length <= 1) above--;
  if (above > 0 && isSubRow(sheet, above, firstColumn) && sheet.filled(above - 1).length > 1) above--;
  // Rows above that name the columns too begin the table: other names of the sizes, or figures that cannot be read.
  while (above > 0 && !isSubRow(sheet, above, firstColumn) && covers(sheet, above - 1, firstColumn, body, 0.8)) above--;
  if (above >= 0 && sheet.filled(above).length > 1 && covers(sheet, above, firstColumn, body)) {
    return { value: above, why: 'it stands above the figures and names their columns', by: 'file' };
  }
  return { value: first, why: 'it is the first row of figures and nothing above names the columns', by: 'guess' };
}

/**
 * The table with the most figures. Rows before and after it are notes. A
 * sentence when there is no figure beside a name anywhere.
 */
export function locate(rows: Rows, read: FieldReader, choices: ChartChoices): Location | Fault {
  const sheet = new Sheetful(rows, read);
  const found = clusters(sheet);
  const chosenRow = choices.headerRow;
  const after = chosenRow === undefined ? found : found.filter(({ body }) => body.at(-1)! > chosenRow);
  const cluster = chosenRow === undefined
    ? found.reduce<Cluster | undefined>((best, each) => (!best || each.figures > best.figures ? each : best), undefined)
    : after[0];
  if (!cluster) {
    return { sentence: chosenRow === undefined || found.length === 0
      ? 'No table of figures was found: a size chart has sizes along one side, measures along the other, and figures between. Check the separator.'
      : `There is no figure below row ${chosenRow + 1}: choose the row that holds the headings.` };
  }
  const body = chosenRow === undefined ? cluster.body : cluster.body.filter((row) => row > chosenRow);
  const firstColumn: Decision<number> = choices.firstColumn !== undefined
    ? { value: choices.firstColumn, why: 'you chose it', by: 'you' }
    : { value: firstColumnOf(sheet, body), why: 'it is the first in which most rows have something', by: 'file' };
  const left = firstColumn.value;
  const headerRow: Decision<number> = chosenRow !== undefined
    ? { value: chosenRow, why: 'you chose it', by: 'you' }
    : findHeader(sheet, body, left);

  const top = headerRow.value;
  const bottom = lastRow(sheet, body, left);
  if (bottom <= top) return { sentence: `There is no figure below row ${top + 1}: choose the row that holds the headings.` };
  const right = widest(sheet, top, bottom);
  const subRow = bottom > top + 1 && isSubRow(sheet, top + 1, left) ? top + 1 : null;
  const other = found.filter((each) => each !== cluster && each.figures >= 3 && each.body[0]! > bottom)[0];
  return {
    headerRow, firstColumn, bottom, right, subRow,
    unitColumn: findUnitColumn(sheet, { top, bottom, left, right }),
    otherTable: other ? { from: other.body[0]!, to: other.body.at(-1)! } : null,
  };
}

/** The last row of figures, and rows after it that have as many fields but nothing that can be read. */
function lastRow(sheet: Sheetful, body: readonly number[], firstColumn: number): number {
  let bottom = body.at(-1)!;
  const width = sheet.filled(bottom).length;
  for (let row = bottom + 1; row < sheet.rows.length; row++) {
    const beside = sheet.filled(row).filter((col) => col > firstColumn);
    const noFigures = beside.length > 0 && beside.every((col) => isNoFigure(sheet.at(row, col)));
    const likeFigures = beside.some((col) => startsLikeFigure(sheet.at(row, col)));
    if (!noFigures && !likeFigures && sheet.filled(row).length < Math.max(3, width / 2)) break;
    bottom = row;
  }
  return bottom;
}

function widest(sheet: Sheetful, top: number, bottom: number): number {
  let right = 0;
  for (let row = top; row <= bottom; row++) right = Math.max(right, sheet.filled(row).at(-1) ?? 0);
  return right;
}

function findUnitColumn(sheet: Sheetful, table: { top: number; bottom: number; left: number; right: number }): number | null {
  for (let col = table.left + 1; col <= table.right; col++) {
    const texts: string[] = [];
    for (let row = table.top + 1; row <= table.bottom; row++) if (sheet.at(row, col) !== '') texts.push(sheet.at(row, col));
    const heading = sheet.at(table.top, col);
    const allUnits = texts.length > 0 && texts.every((text) => unitAlone(text) !== null || isNoFigure(text) || readLabel(`x (${text})`).otherUnit !== null);
    if (allUnits && texts.some((text) => unitAlone(text) !== null) && (isUnitHeading(heading) || heading === '' || texts.length > 1)) return col;
  }
  return null;
}
