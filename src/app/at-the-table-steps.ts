/**
 * What is done at the cutting table, in order: what to look at first, the rows
 * of the cutting ticket, and the pieces of every lay. Pure.
 */
import { isFormula } from '../formula/index.ts';
import { cautionInWords, type TableStep, type TicketPart, type TicketRow } from '../panels/index.ts';
import { readQuantity, type ShowAs } from '../quantities/index.ts';
import type { Results } from '../reckoning/index.ts';
import { areaPointedAt, cellAt, recordsOf, sheetById, type Book, type CellAddress, type Sheet } from '../workbook/index.ts';
import { acknowledgedOf } from './pin-texts.ts';
import { showAsFor } from './sheet-view.ts';
import { shownResult } from '../panels/index.ts';
import { cautionTexts, inOtherSystem, sheetCautions, ticketParts } from './ticket.ts';
import { ticketKeys } from './ticket-choice.ts';
import { cellKey, printOf, ticksOf } from './ticks.ts';

/** A step with what its tick and its picture need. */
export interface Step extends TableStep {
  /** Where its tick stands, and the figures of now. */
  readonly tickAt: { readonly cell: CellAddress; readonly now: string } | null;
  readonly pictured: CellAddress | null;
}

/** Common practice, whatever is cut. */
const CARE: readonly string[] = [
  'Blade: shut the rotary cutter after every cut, and cut away from the hand that holds the ruler. Pins and needles go into a box, not into the mouth.',
  'Iron: try it on a scrap of the cloth first. Stand it where nothing can pull it down, and switch it off when you leave the table.',
  'Fire: brushed and loose cloth, tissue and fluff catch fire fast. Keep them from the iron, from candles and from the stove.',
  'Children: no blade, pin, button or cord within their reach. For a child’s garment local rules on cords, small parts and nightwear decide.',
];

const NOT_TICKED = { figures: [], remark: '', cautions: [], from: '', tick: null, state: { state: 'no' }, tickAt: null, pictured: null } as const;

export function tableSteps(book: Book, results: Results, as: ShowAs): readonly Step[] {
  const parts = ticketParts(book, results, as);
  const { out } = ticketKeys(book, parts, cautionTexts(book, results, as));
  const left = new Set(out);
  const kept = parts.map((part) => ({ ...part, rows: part.rows.filter(({ key }) => !left.has(key)) })).filter(({ rows }) => rows.length > 0);
  const rows = kept.flatMap((part) => part.rows.map((row) => ({ special: row.from !== '', step: rowStep(book, results, as, part, row) })));
  const pieces = recordsOf(book, 'lay').flatMap(({ data }) => pieceSteps(book, results, as, data.name, data.pieces));
  const sheets = new Set(kept.flatMap((part) => part.rows.map(({ sheet }) => sheet)));
  const cautions = book.sheets.filter(({ id }) => sheets.has(id)).flatMap((sheet) => sheetCautions(sheet, results, as));
  const first: Step[] = [
    ...(cautions.length > 0 ? [{ ...NOT_TICKED, id: 'look', part: 'Before you begin', title: 'Look at this before you cut', words: [], cautions: cautions.map(({ place, text }) => `${place}: ${text}`) }] : []),
    { ...NOT_TICKED, id: 'care', part: 'Before you begin', title: 'Take care', words: CARE },
  ];
  // A piece that stands on a sheet of the ticket too is cut once.
  const taken = new Set(pieces.map(({ id }) => id));
  const ofRows = (special: boolean): Step[] => rows.filter((row) => row.special === special && !taken.has(row.step.id)).map(({ step }) => step);
  return [...first, ...ofRows(true), ...pieces, ...ofRows(false)];
}

function rowStep(book: Book, results: Results, as: ShowAs, part: TicketPart, row: TicketRow): Step {
  const { cell } = row.figures[0]!;
  const sheet = sheetById(book, cell.sheet)!;
  const now = printOf(row.figures.map((figure) => results.at(figure.cell.sheet, figure.cell.row, figure.cell.col)));
  return {
    id: cellKey(cell), part: part.name, title: row.label, from: row.from, figures: row.figures, words: [],
    remark: remarkOf(sheet, cell.row, row.label), cautions: cautionsOn(sheet, cell.row, results, as),
    tick: /\bcut\b/i.test(row.label) ? 'Cut' : 'Done', state: ticksOf(book, 'table')(cell, now), tickAt: { cell, now }, pictured: row.pictured,
  };
}

/** A piece a row, with what its columns say of it. */
function pieceSteps(book: Book, results: Results, as: ShowAs, name: string, block: string): Step[] {
  const area = areaPointedAt(book, block);
  const sheet = area && sheetById(book, area.sheet);
  if (!area || !sheet) return [];
  const state = ticksOf(book, 'table');
  const steps: Step[] = [];
  for (let row = area.top + 1; row <= area.bottom && row < sheet.rows.length; row++) {
    const title = textAt(sheet, row, area.left, results, as);
    if (title === '') continue;
    const cell = { sheet: sheet.id, row, col: area.left };
    const columns = Array.from({ length: Math.min(area.right, (sheet.rows[row]?.length ?? 0) - 1) - area.left }, (_, at) => area.left + 1 + at);
    const now = printOf([area.left, ...columns].map((col) => results.at(sheet.id, row, col)));
    steps.push({
      id: cellKey(cell), part: name === '' ? 'Pieces' : `Pieces of ${name}`, title, from: sheet.name, remark: '', words: [], pictured: null,
      figures: columns.flatMap((col) => {
        const main = textAt(sheet, row, col, results, as);
        if (main === '') return [];
        const result = results.at(sheet.id, row, col);
        const also = inOtherSystem(result, cellAt(sheet, row, col), as);
        return [{ head: textAt(sheet, area.top, col, results, as), main, ...(also !== undefined && also !== main && { also }), kind: result.kind === 'quantity' || result.kind === 'span' ? 'figure' as const : 'text' as const }];
      }),
      cautions: cautionsOn(sheet, row, results, as),
      tick: 'Cut', state: state(cell, now), tickAt: { cell, now },
    });
  }
  return steps;
}

function textAt(sheet: Sheet, row: number, col: number, results: Results, as: ShowAs): string {
  const cell = cellAt(sheet, row, col);
  const shown = shownResult(results.at(sheet.id, row, col), showAsFor(cell, as)).main;
  return shown === '' && cell && !isFormula(cell.raw) ? cell.raw.replace(/^'/, '') : shown;
}

function cautionsOn(sheet: Sheet, row: number, results: Results, as: ShowAs): string[] {
  return results.pins.of(sheet.id).filter((pin) => pin.row === row).flatMap(({ col, cautions }) => {
    const cell = cellAt(sheet, row, col);
    return cautions.filter((pin) => !acknowledgedOf(cell, pin)).map((pin) => cautionInWords(pin, { ...showAsFor(cell, as), system: 'both' }));
  });
}

/** Words that were typed beside the figures. */
function remarkOf(sheet: Sheet, row: number, label: string): string {
  return (sheet.rows[row] ?? []).flatMap((cell) => (
    cell && cell.raw !== '' && cell.raw !== label && !cell.input && !isFormula(cell.raw) && readQuantity(cell.raw).kind === 'text' ? [cell.raw.replace(/^'/, '')] : [])).join(' ');
}
