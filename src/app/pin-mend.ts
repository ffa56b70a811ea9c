/** What to type where so that a pin is mended: the figure, rounded to what a tape can mark without bringing the pin back. */
import { isFormula } from '../formula/index.ts';
import { exactText, inBase, readQuantity, show, UNITS, type Quantity, type UnitCode } from '../quantities/index.ts';
import type { CellCaution } from '../reckoning/index.ts';
import { cellAt, sheetById, type Book, type CellAddress } from '../workbook/index.ts';

export interface Mend {
  readonly cell: CellAddress;
  readonly raw: string;
}

/** `null` when the figure is for no cell of its own, or for one that is worked out. */
export function mendOf({ mend, cure }: CellCaution, book: Book): Mend | null {
  if (mend?.kind !== 'quantity' || !cure?.cell) return null;
  const sheet = sheetById(book, cure.cell.sheet);
  const typed = sheet && cellAt(sheet, cure.cell.row, cure.cell.col)?.raw;
  if (!typed || isFormula(typed)) return null;
  const reading = readQuantity(typed);
  if (reading.kind !== 'quantity') return null;
  const { unit, dimension } = reading.quantity;
  const figure = inBase(mend.value, UNITS[mend.unit].dimension === dimension ? unit : mend.unit);
  return { cell: cure.cell, raw: rounded(figure, cure.way, book.settings.inchStep) };
}

/** The finest step in which each unit is typed, in that unit. */
const STEPS: Partial<Record<UnitCode, number>> = { mm: 1, cm: 0.1, m: 0.001, '%': 0.1, deg: 0.1, '': 0.01 };

function rounded(figure: Quantity, way: 'atLeast' | 'atMost' | 'just', inchStep: number): string {
  if (way === 'just') return exactText(figure);
  const inch = UNITS[figure.unit].system === 'inch' && figure.dimension === 'length';
  const unit = inch ? 'in' : figure.unit;
  const step = inch ? 1 / inchStep : STEPS[unit];
  if (step === undefined) return exactText(figure);
  const size = UNITS[unit].size * step;
  const steps = way === 'atLeast' ? Math.ceil(figure.value / size - 1e-6) : Math.floor(figure.value / size + 1e-6);
  // Rounded down to nothing, a small figure would be no figure any more.
  if (steps === 0 && Math.abs(figure.value) > 1e-9) return exactText(figure);
  const whole = inBase(Number((steps * size).toPrecision(12)), unit);
  // As it is typed: 1/8, not the one character for it.
  return inch ? show(whole, { system: 'own', inchStep: 32, unit: 'in' }).main.normalize('NFKC').replace('\u2044', '/').replace('−', '-') : exactText(whole);
}
