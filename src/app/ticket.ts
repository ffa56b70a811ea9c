/**
 * The cutting ticket: which results of a workbook go on one sheet of paper, and
 * how they stand there. Pure: the same workbook, results and choice give the
 * same ticket, and its figures are those that the grid shows.
 */
import { cellName, isFormula, readArea, tokenize } from '../formula/index.ts';
import { cautionInWords, shownResult, type PaperHead, type Ticket, type TicketFigure, type TicketPart, type TicketPicture, type TicketRow } from '../panels/index.ts';
import { PICTURED } from '../pictures/index.ts';
import { UNITS, type ShowAs, type UnitCode } from '../quantities/index.ts';
import type { Result, Results } from '../reckoning/index.ts';
import { cellAt, hiddenRows, inRuns, type Book, type Cell, type CellAddress, type Sheet, type SheetId } from '../workbook/index.ts';
import { acknowledgedOf } from './pin-texts.ts';
import { columnLabel, headingFurtherUp, rowLabel } from './places.ts';
import { rowKey } from './ticket-choice.ts';
import { weightOf } from './ticket-weight.ts';
import { isForTheShop } from './to-buy-tables.ts';
import { showAsFor } from './sheet-view.ts';

/** What she left out of it, by the keys of rows, and the pictures she wants on it. */
export interface TicketChoice {
  readonly out: ReadonlySet<string>;
  readonly pictures?: readonly TicketPicture[];
}

export const WHOLE_TICKET: TicketChoice = { out: new Set() };
const SIZES = 'Sizes by level';
const SEAMS = 'Seam by seam';

/** Everything that may go on a ticket: the rows with results that have a heading, sizes first, then seams, then sheet by sheet. */
export function ticketParts(book: Book, results: Results, as: ShowAs): readonly TicketPart[] {
  const [sizes, seams]: [TicketRow[], TicketRow[]] = [[], []];
  const others: TicketPart[] = [];
  for (const sheet of book.sheets) {
    const rows: TicketRow[] = [];
    const hidden = hiddenRows(sheet);
    const shop = isForTheShop(book, sheet);
    const saysSize = sheet.rows.some((row, at) => row?.some((_, col) => isSizeToCut(sheet, at, col)));
    sheet.rows.forEach((row, at) => {
      if (!row || inRuns(hidden, at)) return;
      const labelled = row.flatMap((cell, col) => (cell && rowLabel(sheet, at, col) !== '' ? [col] : []));
      const formulas = labelled.filter((col) => isFormula(row[col]!.raw));
      const ofSeams = formulas.some((col) => callsIn(row[col]!.raw).some((name) => name.startsWith('SEAM.')));
      const ofSizes = formulas.some((col) => givesSize(sheet, row[col]!.raw)) || labelled.some((col) => isSizeToCut(sheet, at, col));
      if (formulas.length === 0 && !ofSizes) return;
      // How a seam's edge moves and which size is cut is often typed, and is what is cut by.
      // What other sizes than the chosen one would leave is not.
      const chosen = formulas.filter((col) => onlyCall(row[col]!.raw) === 'SIZE.CHOOSE');
      const columns = chosen.length > 0 ? chosen : ofSeams || ofSizes ? labelled.filter((col) => formulas.includes(col) || row[col]!.input || columnLabel(sheet, at, col) !== '') : formulas;
      const figures = withHeads(sheet, columns.flatMap((col) => figureOf(sheet, at, col, results, as)));
      if (figures.length === 0) return;
      const label = rowLabel(sheet, at, columns[0]!);
      const pictured = formulas.find((col) => PICTURED.includes(onlyCall(row[col]!.raw)));
      const special = ofSizes || ofSeams;
      (ofSizes ? sizes : ofSeams ? seams : rows).push({
        key: rowKey(sheet.id, at), sheet: sheet.id, label, from: special ? sheet.name : '', figures,
        // Where a sheet says which size is cut, another size beside it is only what led there, and would be cut by mistake.
        weight: shop || (ofSizes && saysSize && !labelled.some((col) => isSizeToCut(sheet, at, col))) ? 0 : ofSizes ? 10 : weightOf(label, figures, formulas.flatMap((col) => callsIn(row[col]!.raw)), ofSeams),
        pictured: pictured === undefined ? null : { sheet: sheet.id, row: at, col: pictured },
      });
    });
    if (rows.length > 0) others.push({ name: sheet.name, rows });
  }
  return [{ name: SIZES, rows: sizes }, { name: SEAMS, rows: seams }, ...others].filter((part) => part.rows.length > 0);
}

export function ticketOf(book: Book, results: Results, choice: TicketChoice, as: ShowAs, head: PaperHead): Ticket {
  const all = ticketParts(book, results, as);
  const left = all.map(({ name, rows }) => ({ name, rows: rows.filter(({ key }) => choice.out.has(key)).length })).filter(({ rows }) => rows > 0);
  const parts = all
    .map((part) => ({ ...part, rows: part.rows.filter(({ key }) => !choice.out.has(key)) }))
    .filter((part) => part.rows.length > 0);
  const sheets = new Set(parts.flatMap((part) => part.rows.map((row) => row.sheet)));
  const cautions = book.sheets.filter(({ id }) => sheets.has(id)).flatMap((sheet) => sheetCautions(sheet, results, as));
  return { what: 'ticket', ...head, parts, cautions, pictures: choice.pictures ?? [], left };
}

export interface PlacedCaution extends CellAddress {
  /** Sheet, cell and what it is called. */
  readonly place: string;
  readonly text: string;
}

/** The pins of a sheet that nobody acknowledged. */
export function sheetCautions(sheet: Sheet, results: Results, as: ShowAs): PlacedCaution[] {
  return results.pins.of(sheet.id).flatMap(({ row, col, cautions: pins }) => {
    const cell = cellAt(sheet, row, col);
    const place = [rowLabel(sheet, row, col), columnLabel(sheet, row, col)].filter((words) => words !== '').join(', ');
    return pins.filter((pin) => !acknowledgedOf(cell, pin)).map((pin) => ({
      sheet: sheet.id, row, col,
      place: `${sheet.name} ${cellName(row, col)}${place ? `, ${place}` : ''}`, text: cautionInWords(pin, { ...showAsFor(cell, as), system: as.system === 'own' ? 'both' : as.system }),
    }));
  });
}

/** As they are counted when one page is to hold the ticket. */
export function cautionTexts(book: Book, results: Results, as: ShowAs): (sheet: SheetId) => readonly string[] {
  return (id) => {
    const sheet = book.sheets.find((each) => each.id === id);
    return sheet ? sheetCautions(sheet, results, as).map(({ place, text }) => `${place}: ${text}`) : [];
  };
}

/** What stands in a cell of the ticket; nothing where the grid shows nothing. */
function figureOf(sheet: Sheet, row: number, col: number, results: Results, as: ShowAs): TicketFigure[] {
  const cell = cellAt(sheet, row, col);
  const result = results.at(sheet.id, row, col);
  const { main } = shownResult(result, showAsFor(cell, as));
  const typed = !isFormula(cell?.raw ?? '');
  // Words that were typed beside figures are remarks.
  if (main === '' || (typed && result.kind !== 'quantity' && result.kind !== 'span' && !cell?.input)) return [];
  const also = inOtherSystem(result, cell, as);
  const kind = result.kind === 'error' ? 'error' : result.kind === 'quantity' || result.kind === 'span' ? (typed ? 'typed' : 'figure') : 'text';
  return [{ cell: { sheet: sheet.id, row, col }, head: columnLabel(sheet, row, col), main, ...(also !== undefined && also !== main && { also }), kind }];
}

/** Figures side by side under no heading of their own section go by the headings further up, as they do on the screen. */
function withHeads(sheet: Sheet, figures: readonly TicketFigure[]): readonly TicketFigure[] {
  if (figures.length < 2 || figures.some(({ head }) => head !== '')) return figures;
  return figures.map((figure) => ({ ...figure, head: headingFurtherUp(sheet, figure.cell.row, figure.cell.col) }));
}

/** The figure as the grid would show it in the system in which it does not. */
export function inOtherSystem(result: Result, cell: Cell | undefined, as: ShowAs): string | undefined {
  if (result.kind !== 'quantity' && result.kind !== 'span') return undefined;
  const { dimension } = UNITS[result.unit];
  if (dimension !== 'length' && dimension !== 'area') return undefined;
  const look = showAsFor(cell, as);
  if (as.system === 'both') return shownResult(result, look).also;
  const set: UnitCode | undefined = look.unit !== undefined && UNITS[look.unit].dimension === dimension ? look.unit : as.system === 'own' ? result.unit : undefined;
  const inInches = set ? UNITS[set].system === 'inch' : as.system === 'in';
  return shownResult(result, { ...as, system: inInches ? 'cm' : 'in', inchStep: look.inchStep }).main;
}

const tokensOf = (raw: string) => tokenize(raw).filter(({ kind, text }) => kind !== 'space' && text !== '=');

/** Functions that a formula calls, in the order in which they stand. */
const callsIn = (raw: string): string[] => tokensOf(raw).filter(({ kind }) => kind === 'function').map(({ text }) => text.toUpperCase());

/** The function whose one call is all of the formula; empty for any other formula. */
function onlyCall(raw: string): string {
  const tokens = tokensOf(raw);
  if (tokens[0]?.kind !== 'function') return '';
  let depth = 0;
  for (const [at, { kind, text }] of tokens.entries()) {
    if (kind !== 'bracket') continue;
    depth += text === '(' ? 1 : -1;
    if (depth === 0) return at === tokens.length - 1 ? tokens[0].text.toUpperCase() : '';
  }
  return '';
}

/** A size that can be typed over. */
const isSizeToCut = (sheet: Sheet, row: number, col: number): boolean => Boolean(cellAt(sheet, row, col)?.input) && /^size\b/i.test(rowLabel(sheet, row, col));

/** True of a formula that chooses a size, or takes over the one that another cell of the sheet chose. */
function givesSize(sheet: Sheet, raw: string): boolean {
  const other = readArea(raw.replace(/^=|\$/g, ''));
  const chosen = other && other.sheet === undefined && isFormula(raw) ? (cellAt(sheet, other.top, other.left)?.raw ?? '') : raw;
  return ['SIZE.AT', 'SIZE.FIT', 'SIZE.CHOOSE'].includes(onlyCall(chosen));
}
