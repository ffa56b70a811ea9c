/** The pins of the open workbook: the cautions of its cells, joined with what was acknowledged of them. */
import { cellName } from '../formula/index.ts';
import { cautionInWords, type PinRow, type PinSheet } from '../panels/index.ts';
import type { CellCaution } from '../reckoning/index.ts';
import { cellAt, sheetById, type Acknowledged, type Cell, type CellAddress, type Sheet, type SheetId } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { mendOf } from './pin-mend.ts';
import { acknowledgedOf } from './pin-texts.ts';
import { columnLabel, rowLabel } from './places.ts';
import { showAsFor } from './sheet-view.ts';

export interface Pin extends CellAddress {
  readonly caution: CellCaution;
  /** `null` where it was not acknowledged, or where its figures are others now. */
  readonly acknowledged: Acknowledged | null;
}

/** More are counted, and stand in their cells. */
const MOST_LISTED = 200;

export class Pins {
  /** The pin that a note is being written for. */
  asking = '';
  #of: readonly unknown[] = [];
  #pins: readonly Pin[] = [];

  constructor(private readonly desk: () => Desk) {}

  /** All of them, sheet by sheet in reading order; gathered once for each state of workbook and results. */
  get all(): readonly Pin[] {
    const { book, results } = this.desk();
    const of = [book, results, results.revision];
    if (!of.every((each, at) => each === this.#of[at])) {
      this.#of = of;
      this.#pins = book.sheets.flatMap((sheet) => results.pins.of(sheet.id).flatMap(({ row, col, cautions }) =>
        cautions.map((caution): Pin => ({ sheet: sheet.id, row, col, caution, acknowledged: acknowledgedOf(cellAt(sheet, row, col), caution) }))));
    }
    return this.#pins;
  }

  /** How many are to look at, by sheet. */
  get counts(): ReadonlyMap<SheetId, number> {
    const counts = new Map<SheetId, number>();
    for (const { sheet, acknowledged } of this.all) if (!acknowledged) counts.set(sheet, (counts.get(sheet) ?? 0) + 1);
    return counts;
  }

  get listed(): { readonly sheets: readonly PinSheet[]; readonly more: number } {
    const { book } = this.desk();
    const pins = this.all.slice(0, MOST_LISTED);
    const sheets = book.sheets.map((sheet) => ({ name: sheet.name, rows: pins.filter((pin) => pin.sheet === sheet.id).map((pin) => this.#row(pin, sheet)) }));
    return { sheets: sheets.filter(({ rows }) => rows.length > 0), more: this.all.length - pins.length };
  }

  /** The pins to look at on the selected cell. */
  get here(): readonly Pin[] {
    const { sheetId, selection: { focus: { row, col } } } = this.desk();
    return this.all.filter((pin) => pin.sheet === sheetId && pin.row === row && pin.col === col && !pin.acknowledged);
  }

  /** The first pin of the selected cell, with what mends it, for the line at the foot of the page. */
  get hintHere(): string {
    const { here: [pin, ...more] } = this;
    if (!pin) return '';
    const mend = mendOf(pin.caution, this.desk().book);
    return `Pin: ${this.#words(pin)}${mend && !byFinger() ? ` Alt + M puts ${mend.raw} in ${cellName(mend.cell.row, mend.cell.col)}.` : ''}${more.length > 0 ? ` ${more.length} more here.` : ''}`;
  }

  /** Goes to the next cell with a pin to look at, over all sheets and round to the first again. */
  next(): void {
    const desk = this.desk();
    const open = this.all.filter(({ acknowledged }) => !acknowledged);
    if (open.length === 0) {
      desk.say('There is no pin to look at.');
      return;
    }
    const order = desk.book.sheets.map(({ id }) => id);
    const { row, col } = desk.selection.focus;
    const after = (pin: Pin): boolean => {
      const by = order.indexOf(pin.sheet) - order.indexOf(desk.sheetId) || pin.row - row || pin.col - col;
      return by > 0;
    };
    const pin = open.find(after) ?? open[0]!;
    desk.selectArea(areaOf(pin));
    desk.say(`Pin: ${this.#words(pin)}`);
  }

  /** Types the figure in that mends a pin: one edit. */
  mend(pin: Pin | undefined): void {
    const desk = this.desk();
    const mend = pin && mendOf(pin.caution, desk.book);
    const sheet = mend && sheetById(desk.book, mend.cell.sheet);
    if (!pin || !mend || !sheet) {
      desk.say(pin ? `No typed figure mends this pin by itself. ${this.#words(pin)}` : 'There is no pin on this cell.');
      return;
    }
    const { row, col } = mend.cell;
    const before = cellAt(sheet, row, col);
    const label = `mend the pin on ${placeIn(desk, pin)}: ${mend.raw} in ${cellName(row, col)}`;
    const done = desk.do({ do: 'many', label, edits: [{ do: 'setCells', sheet: sheet.id, cells: [{ row, col, cell: { ...before, raw: mend.raw } }] }] });
    if (done) desk.say(`${cellName(row, col)} of ${sheet.name} is ${mend.raw} now. It can be undone.`);
  }

  mendHere(): void {
    const { here } = this;
    const { book } = this.desk();
    this.mend(here.find(({ caution }) => mendOf(caution, book) !== null) ?? here[0]);
  }

  acknowledge(pin: Pin | undefined, note: string): void {
    this.asking = '';
    const desk = this.desk();
    const cell = pin && this.#cellOf(pin);
    if (!pin || !cell) return;
    const kept = (cell.acknowledged ?? []).filter(({ print }) => print !== pin.caution.print);
    const { sheet, row, col } = pin;
    if (desk.do({ do: 'acknowledge', sheet, row, col, pins: [...kept, { print: pin.caution.print, note }] })) {
      desk.say(`The pin on ${placeIn(desk, pin)} is acknowledged. It comes back when its figures change.`);
    }
  }

  pinAgain(pin: Pin | undefined): void {
    const cell = pin && this.#cellOf(pin);
    if (!pin || !cell) return;
    const { sheet, row, col } = pin;
    this.desk().do({ do: 'acknowledge', sheet, row, col, pins: (cell.acknowledged ?? []).filter(({ print }) => print !== pin.caution.print) });
  }

  byId(id: string): Pin | undefined {
    return this.all.find((pin) => idOf(pin) === id);
  }

  /** Of the selected cell: how the ids of its pins begin. */
  get at(): string {
    const { sheetId, selection: { focus } } = this.desk();
    return `${sheetId},${focus.row},${focus.col}`;
  }

  askHere(): boolean {
    const [pin] = this.here;
    this.asking = pin ? idOf(pin) : '';
    if (!pin) this.desk().say('There is no pin to acknowledge on this cell.');
    return pin !== undefined;
  }

  #cellOf({ sheet, row, col }: Pin): Cell | undefined {
    const page = sheetById(this.desk().book, sheet);
    return page && cellAt(page, row, col);
  }

  #words(pin: Pin): string {
    return cautionInWords(pin.caution, showAsFor(this.#cellOf(pin), this.desk().showAs));
  }

  #row(pin: Pin, sheet: Sheet): PinRow {
    const { book } = this.desk();
    const mend = mendOf(pin.caution, book);
    const target = mend && sheetById(book, mend.cell.sheet);
    return {
      id: idOf(pin), area: areaOf(pin), place: cellName(pin.row, pin.col), label: labelOf(sheet, pin),
      sentence: this.#words(pin), note: pin.acknowledged?.note ?? null,
      mend: mend && target ? {
        to: mend.raw, label: labelOf(target, mend.cell),
        place: `${cellName(mend.cell.row, mend.cell.col)}${target.id === sheet.id ? '' : ` of ${target.name}`}`,
      } : null,
    };
  }
}

/** "Ease on this body, Bust". */
function labelOf(sheet: Sheet, { row, col }: CellAddress): string {
  const [of, level] = [rowLabel(sheet, row, col), columnLabel(sheet, row, col)];
  return of !== '' && level !== '' ? `${of}, ${level}` : of || level;
}

/** Who has no keys is told of none. */
const byFinger = (): boolean => globalThis.matchMedia?.('(pointer: coarse)').matches ?? false;

const idOf = ({ sheet, row, col, caution: { print } }: Pin): string => `${sheet},${row},${col} ${print}`;
const areaOf = ({ sheet, row, col }: Pin) => ({ sheet, top: row, left: col, bottom: row, right: col });
const placeIn = (desk: Desk, { sheet, row, col }: Pin): string => `${cellName(row, col)} of ${sheetById(desk.book, sheet)?.name ?? ''}`;
