/** The cells that every contender shows: 100,000 rows of 30 columns, every other column worked out. */
import type { SheetView } from '../../../src/grid/index.ts';
import { sheetView } from '../../../src/app/sheet-view.ts';
import { KIND, Results, type ChangeSet } from '../../../src/reckoning/index.ts';
import { UNIT_CODES } from '../../../src/quantities/index.ts';
import type { Cell, Row, Sheet } from '../../../src/workbook/index.ts';

export const ROWS = 100_000;
export const COLUMNS = 30;
export const WIDTH = 110;

const SHEET = 1;
const CM = UNIT_CODES.indexOf('cm');
const typed: Cell = { raw: '1 cm' };
const formula: Cell = { raw: '=A1' };
/** The texts come from the results, so one row of cells may stand for all. */
const row: Row = Array.from({ length: COLUMNS }, (_, col) => (col % 2 === 0 ? typed : formula));

/** In tenths of a centimetre. */
const figure = (at: number, col: number): number => ((at * 31 + col * 7) % 9_990) + 10;

/** What a cell shows, without any of our code. */
export const plainText = (at: number, col: number): string => `${(figure(at, col) / 10).toFixed(1)} cm`;

function changes(revision: number, first: number, rows: number, more = 0): ChangeSet {
  const size = rows * COLUMNS;
  const columns = {
    sheet: SHEET, row: new Uint32Array(size), col: new Uint16Array(size), kind: new Uint8Array(size).fill(KIND.quantity),
    number: new Float64Array(size), unit: new Uint8Array(size).fill(CM), high: null, text: [],
  };
  for (let i = 0; i < size; i++) {
    columns.row[i] = first + Math.floor(i / COLUMNS);
    columns.col[i] = i % COLUMNS;
    columns.number[i] = figure(columns.row[i]!, columns.col[i]!) + more;
  }
  return { revision, whole: false, took: 0, sheets: [columns] };
}

/** A sheet as the app has it: what was typed in it, what the engine sent, and the view that is drawn. */
export class Cells {
  readonly results = new Results();
  readonly #sheet: Sheet = { id: SHEET, name: 'Bench', rows: new Array<Row>(ROWS).fill(row), widths: Object.fromEntries(Array.from({ length: COLUMNS + 5 }, (_, col) => [col, WIDTH])) };
  #revision = 0;

  constructor() {
    for (let first = 0; first < ROWS; first += 10_000) this.results.apply(changes(++this.#revision, first, 10_000));
  }

  view(): SheetView {
    return { ...sheetView(this.#sheet, this.results, { system: 'own', inchStep: 8 }, false), rowCount: ROWS, colCount: COLUMNS };
  }

  /** One result changes, as after an edit. */
  change(at: number, col: number, tenths: number): void {
    const one = changes(++this.#revision, at, 1);
    const pick = <T extends Uint32Array | Uint16Array | Uint8Array | Float64Array>(list: T): T => list.slice(col, col + 1) as T;
    const [columns] = one.sheets;
    const { row: r, col: c, kind, unit } = columns!;
    this.results.apply({ ...one, sheets: [{ ...columns!, row: pick(r), col: pick(c), kind: pick(kind), unit: pick(unit), number: Float64Array.of(tenths) }] });
  }
}
