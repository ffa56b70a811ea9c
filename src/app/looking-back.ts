/** The history panel: which steps it shows, and putting back what was there. */
import { cellName } from '../formula/index.ts';
import type { HistoryCell, HistoryRow } from '../panels/index.ts';
import {
  lookBack, placeNow, restoreBookEdit, restoreCellEdit, sheetById, type Area, type Cell, type CellAddress, type CellPast, type PastStep, type Step,
} from '../workbook/index.ts';
import { attempt } from './attempt.ts';
import type { Desk } from './desk.ts';

const AT_ONCE = 60;

interface Shown {
  readonly rows: readonly HistoryRow[];
  readonly earlier: boolean;
}

export class LookingBack {
  onlyCell = false;
  #most = AT_ONCE;
  #of: readonly unknown[] = [];
  #shown: Shown = { rows: [], earlier: false };
  #steps: readonly PastStep[] = [];

  constructor(private readonly desk: () => Desk) {}

  /** "B4 of Fit": the cell that can be asked for. */
  get cell(): string {
    const { sheet, selection: { focus } } = this.desk();
    return `${cellName(focus.row, focus.col)} of ${sheet.name}`;
  }

  /** Looks back once for each state of the workbook and of the wishes. */
  get shown(): Shown {
    const { book, steps, sheetId, selection: { focus: { row, col } } } = this.desk();
    const place = this.onlyCell ? [sheetId, row, col] : [0, 0, 0];
    const of = [book, steps, this.onlyCell, this.#most, ...place];
    if (of.every((each, at) => each === this.#of[at])) return this.#shown;
    this.#of = of;
    const past = lookBack(book, steps, { most: this.#most, ...(this.onlyCell && { cell: { sheet: sheetId, row, col } }) });
    this.#steps = past.steps;
    this.#shown = { rows: past.steps.map((each) => this.#row(each, steps)), earlier: past.earlier };
    return this.#shown;
  }

  showCell(onlyCell: boolean): void {
    this.onlyCell = onlyCell;
    this.#most = AT_ONCE;
  }

  showMore(): void {
    this.#most += AT_ONCE;
  }

  /** Puts back what was in the one cell before a step. */
  putBack(index: number): void {
    const desk = this.desk();
    const past = this.#steps.find((each) => each.index === index);
    const cell = past && this.#cellOf(past, desk.steps);
    if (!past || !cell) return;
    const done = attempt(desk, () => restoreCellEdit(desk.book, desk.steps, index, cell, timeInWords(past.step)));
    if (!done) return;
    desk.selectArea({ sheet: cell.sheet, top: cell.row, left: cell.col, bottom: cell.row, right: cell.col });
    desk.say(`Done: ${desk.history.done.at(-1)?.label ?? ''}. It can be undone.`);
  }

  restoreBook(index: number): void {
    const desk = this.desk();
    const step = desk.steps[index];
    if (!step) return;
    if (desk.do(restoreBookEdit(desk.steps, index, timeInWords(step)))) desk.say('The workbook is as it was then. This too can be undone.');
    else if (desk.said === '') desk.say('The workbook is as it was then already.');
  }

  #row(past: PastStep, steps: readonly Step[]): HistoryRow {
    const { index, step, cells, more } = past;
    const [only] = cells;
    const now = this.#cellOf(past, steps);
    const before = only?.before ?? null;
    return {
      index, at: step.at, way: step.way, label: step.entry.label, more,
      cells: cells.map(inWords),
      area: this.#areaOf(past, steps),
      canPutBack: now !== null && !sameContent(before, this.#contentOf(now)),
    };
  }

  /** The one cell of a step where it is now. */
  #cellOf({ index, cells, more }: PastStep, steps: readonly Step[]): CellAddress | null {
    const [only] = cells;
    const cell = only && cells.length === 1 && more === 0 ? placeNow(steps, index, only.cell) : null;
    return cell && sheetById(this.desk().book, cell.sheet) ? cell : null;
  }

  #contentOf({ sheet, row, col }: CellAddress): Cell | null {
    return sheetById(this.desk().book, sheet)?.rows[row]?.[col] ?? null;
  }

  #areaOf({ index, step: { entry: { area } } }: PastStep, steps: readonly Step[]): Area | null {
    if (!area || !sheetById(this.desk().book, area.sheet)) return null;
    const [first, last] = [{ row: area.top, col: area.left }, { row: area.bottom, col: area.right }]
      .map((corner) => placeNow(steps, index, { sheet: area.sheet, ...corner }));
    if (!first || !last || first.sheet !== last.sheet || !sheetById(this.desk().book, first.sheet)) return null;
    return { sheet: first.sheet, top: Math.min(first.row, last.row), left: Math.min(first.col, last.col), bottom: Math.max(first.row, last.row), right: Math.max(first.col, last.col) };
  }
}

function sameContent(a: Cell | null, b: Cell | null): boolean {
  return (a?.raw ?? '') === (b?.raw ?? '') && (a?.note ?? '') === (b?.note ?? '') && JSON.stringify(a?.look ?? {}) === JSON.stringify(b?.look ?? {}) && a?.input === b?.input
    && pinsInWords(a) === pinsInWords(b);
}

/** What changed, as text: what was typed; or else the note; or else the look. */
function inWords({ place, before, after }: CellPast): HistoryCell {
  const [was, is] = [before, after];
  if ((was?.raw ?? '') !== (is?.raw ?? '')) return { place, before: was?.raw ?? '', after: is?.raw ?? '' };
  if ((was?.note ?? '') !== (is?.note ?? '')) return { place, before: noteInWords(was), after: noteInWords(is) };
  if (pinsInWords(was) !== pinsInWords(is)) return { place, before: pinsInWords(was), after: pinsInWords(is) };
  if (was?.input !== is?.input) return { place, before: was?.input ? 'an input' : 'no input', after: is?.input ? 'an input' : 'no input' };
  return { place, before: lookInWords(was), after: lookInWords(is) };
}

const noteInWords = (cell: Cell | null): string => (cell?.note ? `note: ${cell.note}` : 'no note');

function pinsInWords(cell: Cell | null): string {
  const pins = cell?.acknowledged ?? [];
  return pins.length === 0 ? 'no pin acknowledged' : pins.map(({ note }) => `pin acknowledged${note ? `: ${note}` : ''}`).join('; ');
}

function lookInWords(cell: Cell | null): string {
  const { unit, step, decimals, strong, italic, heading, align, border } = cell?.look ?? {};
  const words = [
    unit === undefined ? '' : `in ${unit || 'plain numbers'}`, step ? `to 1/${step} in` : '', decimals === undefined ? '' : `${decimals} decimals`,
    strong ? 'strong' : '', italic ? 'italic' : '', heading ? 'heading' : '', align ? `at the ${align === 'centre' ? 'middle' : align}` : '', border ? `border ${border}` : '',
  ].filter((each) => each !== '');
  return words.join(', ') || 'plain';
}

function timeInWords({ at }: Step): string {
  const time = new Date(at);
  const clock = time.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  return time.toDateString() === new Date().toDateString() ? clock : `${time.toLocaleDateString([], { day: 'numeric', month: 'long' })}, ${clock}`;
}
