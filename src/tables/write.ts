/** Cells to CSV text (RFC 4180, by papaparse), so that a file says what the sheet says and no program works out a text in it. */
import Papa from 'papaparse';
import { UNITS, exactAmount, exactText, readQuantity, show, showSpan, type Quantity, type ShowAs, type Span } from '../quantities/index.ts';

/** A cell as it goes out. */
export type OutCell =
  | { readonly kind: 'quantity'; readonly quantity: Quantity }
  | { readonly kind: 'span'; readonly span: Span }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'error'; readonly sentence: string }
  | { readonly kind: 'empty' };

export interface CsvOptions {
  /** Exact figures read back to the same value; shown ones are rounded as on the screen. */
  readonly numbers: 'shown' | 'exact';
  /** How figures show; needed for `shown`. */
  readonly show: ShowAs;
  /** In every cell, or once in the heading of a column (or row) whose figures all have it. */
  readonly unit: 'cells' | 'heading';
  readonly separator: ',' | ';';
  /** A decimal comma goes with the semicolon; with the comma as separator such fields are quoted. */
  readonly decimalMark: '.' | ',';
  /** A byte order mark, by which some programs know UTF-8. */
  readonly mark: boolean;
}

export interface CsvText {
  readonly text: string;
  /** How many texts got an apostrophe in front, so that no program takes them for a formula. */
  readonly guarded: number;
  /** Where units were put: `cells` also when no column or row has only one. */
  readonly unitsAt: 'cells' | 'columns' | 'rows';
  /** Columns (or rows) whose figures have different units, which stay in their cells. */
  readonly mixed: number;
}

type Grid = readonly (readonly OutCell[])[];

/** A field before its unit is put to it. */
interface Field {
  readonly amount: string;
  /** The unit's sign; empty for what has none. */
  readonly sign: string;
}

/** First characters that make a spreadsheet program work a text out (OWASP, CSV Injection); a line break in front is dropped by some. */
const FORMULA_START = /^[=+\-@\t\r\n]./s;

/** Whether a text needs an apostrophe; real figures such as "-3/8 in" and "-2.5" do not. */
export function needsGuard(text: string): boolean {
  if (!FORMULA_START.test(text)) return false;
  const { kind } = readQuantity(text);
  return kind !== 'quantity' && kind !== 'span';
}

const isFigure = (cell: OutCell | undefined): boolean => cell?.kind === 'quantity' || cell?.kind === 'span';

function withMark(amount: string, { decimalMark }: CsvOptions): string {
  if (decimalMark !== ',') return amount;
  // Just three figures after a comma could be read as thousands, so they get a fourth: 1.234 is 1,2340.
  return amount.replace(/(\d)\.(\d)/g, '$1,$2').replace(/(?<![\d,])([1-9]\d{0,2},\d{3})(?!\d)/g, '$10');
}

/** Takes a unit's sign off a shown figure; compound ones ("1 yd 4 in") keep all in the amount. */
function parted(text: string, signs: readonly string[]): Field {
  const sign = signs.find((each) => each !== '' && text.endsWith(each));
  const amount = sign ? text.slice(0, -sign.length).trimEnd() : text;
  return sign && !/\p{L}/u.test(amount.replace(' to ', ' ')) ? { amount, sign } : { amount: text, sign: '' };
}

const SIGNS = [...new Set(Object.values(UNITS).flatMap(({ sign, code }) => [sign, code]))].sort((a, b) => b.length - a.length);

function field(cell: OutCell, options: CsvOptions): Field {
  const as: ShowAs = { ...options.show, decimalMark: '.', plain: true, system: options.show.system === 'both' ? 'own' : options.show.system };
  switch (cell.kind) {
    case 'quantity': {
      const { quantity } = cell;
      if (options.numbers === 'shown') return parted(show(quantity, as).main, SIGNS);
      return { amount: exactAmount(quantity), sign: UNITS[quantity.unit].sign };
    }
    case 'span': {
      const { low, high } = cell.span;
      if (options.numbers === 'shown') return parted(showSpan(cell.span, as).main, SIGNS);
      const dash = low.value < 0 ? ' to ' : '–';
      return low.unit === high.unit
        ? { amount: `${exactAmount(low)}${dash}${exactAmount(high)}`, sign: UNITS[high.unit].sign }
        : { amount: `${exactText(low)}${dash}${exactText(high)}`, sign: '' };
    }
    case 'text': return { amount: cell.text, sign: '' };
    case 'truth': return { amount: cell.truth ? 'TRUE' : 'FALSE', sign: '' };
    case 'error': return { amount: cell.sentence, sign: '' };
    case 'empty': return { amount: '', sign: '' };
  }
}

const together = ({ amount, sign }: Field): string => (sign === '' ? amount : sign === '%' || sign === '°' ? `${amount}${sign}` : `${amount} ${sign}`);

/** The one sign that all figures of a line have; `null` when they differ, or one has none. */
function oneSign({ cells, fields }: GridLine): string | null {
  const signs = new Set(cells.flatMap((cell, i) => (isFigure(cell) ? [fields[i]!.sign] : [])));
  const [only] = signs;
  return signs.size === 1 && only ? only : null;
}

/** A column or row of the grid, less its heading. */
interface GridLine {
  readonly cells: readonly (OutCell | undefined)[];
  readonly fields: readonly (Field | undefined)[];
  /** A heading that is a figure itself cannot take a unit that is not its own. */
  readonly canHead: boolean;
}

interface Placing {
  readonly at: 'columns' | 'rows';
  /** The sign of each column, or of each row; `null` where cells keep theirs. */
  readonly signs: readonly (string | null)[];
  readonly mixed: number;
}

function placing(at: Placing['at'], lines: readonly GridLine[]): Placing {
  const signs = lines.map((line) => (line.canHead ? oneSign(line) : null));
  const mixed = lines.filter(({ cells, fields }, i) => signs[i] === null && cells.some((cell, n) => isFigure(cell) && fields[n]!.sign !== '')).length;
  return { at, signs, mixed };
}

/** Units go over the columns if each has one, else beside the rows if that leaves fewer mixed ones. */
function placeUnits(grid: Grid, fields: readonly (readonly Field[])[]): Placing | null {
  const width = grid.reduce((most, row) => Math.max(most, row.length), 0);
  const byColumn = placing('columns', Array.from({ length: width }, (_, c) => ({
    cells: grid.slice(1).map((row) => row[c]), fields: fields.slice(1).map((row) => row[c]), canHead: !isFigure(grid[0]?.[c]),
  })));
  const byRow = placing('rows', grid.map((row, r) => ({ cells: row.slice(1), fields: fields[r]!.slice(1), canHead: row[0]?.kind === 'text' })));
  const best = byRow.mixed < byColumn.mixed ? byRow : byColumn;
  return best.signs.some((sign) => sign !== null) ? best : null;
}

/**
 * A grid as CSV. The first row counts as headings, and so does the first column
 * when units go beside rows. Every line ends with CR LF.
 */
export function writeCsv(grid: Grid, options: CsvOptions): CsvText {
  const fields = grid.map((row) => row.map((cell) => field(cell, options)));
  const placed = options.unit === 'heading' ? placeUnits(grid, fields) : null;
  let guarded = 0;
  const data = grid.map((row, r) => row.map((cell, c) => {
    const one = fields[r]![c]!;
    const line = placed?.at === 'rows' ? r : c;
    const sign = placed?.signs[line] ?? null;
    const isHeading = placed?.at === 'rows' ? c === 0 : r === 0;
    if (isFigure(cell)) return withMark(sign !== null && !isHeading ? one.amount : together(one), options);
    const text = sign !== null && isHeading ? `${one.amount} (${sign})`.trimStart() : one.amount;
    if ((cell.kind === 'text' || cell.kind === 'error') && needsGuard(text)) {
      guarded++;
      return `'${text}`;
    }
    return text;
  }));
  const text = Papa.unparse(data, { delimiter: options.separator, newline: '\r\n' });
  return { text: `${options.mark ? '\uFEFF' : ''}${text}${data.length > 0 ? '\r\n' : ''}`, guarded, unitsAt: placed?.at ?? 'cells', mixed: placed?.mixed ?? 0 };
}
