/** The open sheet as the grid draws it: what was typed, joined with what was worked out. */
import { columnName, isFormula } from '../formula/index.ts';
import { readQuantity, show, showSpan, type ShowAs } from '../quantities/index.ts';
import type { Results } from '../reckoning/index.ts';
import { LIMITS, frozenOf, cellAt, type Cell, type Sheet } from '../workbook/index.ts';
import type { CellView, SheetView } from '../grid/index.ts';
import { shownResult } from '../panels/index.ts';
import { pinTexts } from './pin-texts.ts';
import { conditionOf, hiddenOf, tallRows, usedBy } from './sheet-shape.ts';

const ROWS = 100;
const COLUMNS = 26;
const USUAL_WIDTH = 136;
const LABEL_WIDTH = 210;

/** How far the grid reaches when she has gone on past what is filled. */
export interface Reach {
  readonly rows: number;
  readonly columns: number;
}

/** @param waiting the engine has not answered the last edit yet */
export function sheetView(sheet: Sheet, results: Results, as: ShowAs, waiting: boolean, reach: Reach = { rows: 0, columns: 0 }): SheetView {
  const used = usedBy(sheet);
  const hidden = hiddenOf(sheet);
  const { rows, columns } = frozenOf(sheet);
  return {
    id: sheet.id,
    name: sheet.name,
    rowCount: Math.min(LIMITS.rows, Math.max(ROWS, used.rows + 49, reach.rows)),
    colCount: Math.min(LIMITS.columns, Math.max(COLUMNS, used.cols + 4, reach.columns)),
    used,
    width: (col) => sheet.widths[col] ?? (col === 0 ? LABEL_WIDTH : USUAL_WIDTH),
    columnTitle: columnName,
    ...(hidden && { hidden }),
    ...((rows > 0 || columns > 0) && { frozen: { rows, cols: columns } }),
    tall: tallRows(sheet),
    ...(sheet.filter && { filtered: (col: number) => conditionOf(sheet, col) }),
    // All that `cell` reads must be told here.
    rowState: (row) => [sheet.rows[row], results.stampOf(sheet.id, row), as.system, as.inchStep, as.decimalMark, waiting && hasUnanswered(sheet, row, results)],
    cell: (row, col) => {
      const cell = cellAt(sheet, row, col);
      return cell || results.at(sheet.id, row, col).kind !== 'empty' ? cellView(cell, row, col, sheet, results, as, waiting) : null;
    },
  };
}

/** True when a formula of the row has no result yet. */
function hasUnanswered(sheet: Sheet, row: number, results: Results): boolean {
  return sheet.rows[row]?.some((cell, col) => cell !== undefined && isFormula(cell.raw) && results.at(sheet.id, row, col).kind === 'empty') ?? false;
}

/** How one cell is to show its lengths: its own look first, then the workbook's setting. */
export function showAsFor(cell: Cell | undefined, as: ShowAs): ShowAs {
  const look = cell?.look;
  return look ? { ...as, unit: look.unit, inchStep: look.step ?? as.inchStep, decimals: look.decimals } : as;
}

function cellView(cell: Cell | undefined, row: number, col: number, sheet: Sheet, results: Results, as: ShowAs, waiting: boolean): CellView {
  const raw = cell?.raw ?? '';
  const formula = isFormula(raw);
  const result = results.at(sheet.id, row, col);
  const look = cell?.look;
  const shared = {
    input: cell?.input ?? false,
    strong: look?.strong, italic: look?.italic, heading: look?.heading, align: look?.align, border: look?.border,
    formula, note: cell?.note, ...(formula && pinTexts(results.pins.at(sheet.id, row, col), cell, showAsFor(cell, as))),
  };
  if (result.kind === 'empty') {
    // A formula has to wait for the engine, and may then have nothing to show: =A9, when A9 is empty.
    return formula ? { ...shared, text: '', kind: waiting ? 'waiting' : 'text' } : { ...shared, ...typed(raw, showAsFor(cell, as)) };
  }
  const { main, also } = shownResult(result, showAsFor(cell, as));
  const kind = result.kind === 'error' ? 'error' : result.kind === 'truth' ? 'truth' : result.kind === 'text' ? 'text' : 'figure';
  return { ...shared, text: main, also, kind, typed: kind === 'figure' && !formula };
}

/** What was typed is shown at once. */
function typed(raw: string, as: ShowAs): Pick<CellView, 'text' | 'also' | 'kind' | 'typed'> {
  const reading = readQuantity(raw);
  if (reading.kind !== 'quantity' && reading.kind !== 'span') return { text: raw.replace(/^'/, ''), kind: 'text' };
  const { main, also } = reading.kind === 'quantity' ? show(reading.quantity, as) : showSpan(reading.span, as);
  return { text: main, also, kind: 'figure', typed: true };
}
