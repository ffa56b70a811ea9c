/** Every error that the engine can give, as one sentence for the person who reads the cell. */
import { cellName, nameFromEngine, sheetInFormula } from '../../src/formula/index.ts';
import { ErrorMessage, ErrorType } from './internals.ts';
import type { CellError, Place } from './internals.ts';
import { Refusal } from './values.ts';

/** The engine's own words for what some errors are about, where its kind of error alone says too little. */
const BY_MESSAGE = new Map<unknown, string>([
  [ErrorMessage.WrongArgNumber, 'A function here has too few or too many values in its brackets.'],
  [ErrorMessage.EmptyArg, 'A function here has an empty place between its brackets.'],
  [ErrorMessage.NumberCoercion, 'A text stands here where a number is needed.'],
  [ErrorMessage.NumberExpected, 'A text stands here where a number is needed.'],
  [ErrorMessage.IntegerExpected, 'A whole number is needed here.'],
  [ErrorMessage.ScalarExpected, 'A block of cells stands here where one cell is needed.'],
  [ErrorMessage.WrongType, 'A value here is not of the kind that is needed.'],
  [ErrorMessage.CellRangeExpected, 'A block of cells is needed here.'],
  [ErrorMessage.CellRefExpected, 'A cell is needed here, such as A1.'],
  [ErrorMessage.EqualLength, 'The blocks of cells used here must be of one size.'],
  [ErrorMessage.WrongDimension, 'The blocks of cells used here do not fit each other.'],
  [ErrorMessage.RangeManySheets, 'A block of cells cannot reach from one sheet to another.'],
  [ErrorMessage.BadCriterion, 'This condition cannot be read: write it as "> 90 cm".'],
  [ErrorMessage.BadMode, 'One of the numbers that choose how this function works is not one it knows.'],
  [ErrorMessage.ValueNotFound, 'What was looked for is not in the list.'],
  [ErrorMessage.PatternNotFound, 'The text that was looked for is not there.'],
  [ErrorMessage.IndexLarge, 'This points past the end of the list.'],
  [ErrorMessage.IndexBounds, 'This points past the end of the list.'],
  [ErrorMessage.LessThanOne, 'A number here must be at least 1.'],
  [ErrorMessage.Selector, 'This chooses a value past the last one given.'],
  [ErrorMessage.NoConditionMet, 'None of the conditions is true.'],
  [ErrorMessage.NoDefault, 'None of the cases fits.'],
  [ErrorMessage.ValueLarge, 'A number here is too large.'],
  [ErrorMessage.ValueSmall, 'A number here is too small.'],
  [ErrorMessage.Negative, 'A number here may not be below 0.'],
  [ErrorMessage.NaN, 'The result is larger than a cell can hold, or is no number.'],
  [ErrorMessage.OneValue, 'There is no number among these values.'],
  [ErrorMessage.TwoValues, 'At least two numbers are needed.'],
  [ErrorMessage.ThreeValues, 'At least three numbers are needed.'],
  [ErrorMessage.EmptyRange, 'Nothing is left that fits.'],
  [ErrorMessage.IncorrectDateTime, 'This text is not a date: write it as 2026-11-03.'],
  [ErrorMessage.InvalidDate, 'This is not a date.'],
  [ErrorMessage.DateBounds, 'This date is too early or too late.'],
  [ErrorMessage.ResultTooLong, 'The text that results is too long for a cell.'],
  [ErrorMessage.SizeMismatch, 'The rows of a list in braces must be of one length.'],
]);

const BY_TYPE: Readonly<Record<string, string>> = {
  [ErrorType.DIV_BY_ZERO]: 'Divides by 0.',
  [ErrorType.REF]: 'Points at cells that were removed.',
  [ErrorType.NA]: 'There is no value for this.',
  [ErrorType.CYCLE]: 'Goes round in a circle.',
  [ErrorType.NUM]: 'This has no result that is a number.',
  [ErrorType.VALUE]: 'A value here is not of the kind that is needed.',
  [ErrorType.NAME]: 'A word here is no name and no function of this workbook.',
  [ErrorType.SPILL]: 'The result needs more cells than are free here: empty the cells below and to the right.',
  [ErrorType.LIC]: 'This function is not part of this workbook.',
  [ErrorType.ERROR]: 'This formula cannot be read: something is missing, or stands where it should not.',
};

/** Stands before a sentence of ours in a message that the engine makes up. */
export const OURS = '\u0001';

/** What an error says, without the cell it arose in. */
export function sentenceOf(error: CellError): string {
  if (error instanceof Refusal) return error.sentence;
  const ours = error.message?.indexOf(OURS) ?? -1;
  if (ours >= 0) return error.message!.slice(ours + 1);
  return (error.message !== undefined && BY_MESSAGE.get(error.message)) || BY_TYPE[error.type] || BY_TYPE[ErrorType.VALUE]!;
}

export function noFunction(name: string): string {
  return `There is no function ${name}.`;
}

/** @param name as the engine spells it */
export function noName(name: string): string {
  return `There is no name ‘${nameFromEngine(name) ?? name}’ in this workbook.`;
}

/** @param name as the user spells it */
export function lostName(name: string): string {
  return `The cells that ‘${name}’ stood for were removed.`;
}

/** Names places as a formula on a given sheet would write them. */
export class PlaceNames {
  readonly #sheets = new Map<number, string>();

  setSheets(sheets: readonly { readonly id: number; readonly name: string }[]): void {
    this.#sheets.clear();
    for (const { id, name } of sheets) this.#sheets.set(id, sheetInFormula(name));
  }

  cell({ sheet, row, col }: Place, own: number): string {
    return this.#before(sheet, own) + cellName(row, col);
  }

  /** A sheet as it stands before a reference to it; nothing for a reference without a sheet. */
  sheet(sheet: number | undefined): string {
    return sheet === undefined ? '' : `${this.#sheets.get(sheet) ?? '#REF'}!`;
  }

  #before(sheet: number, own: number): string {
    return this.sheet(sheet === own ? undefined : sheet);
  }
}
