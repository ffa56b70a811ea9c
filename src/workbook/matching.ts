/** Show only rows that match: which rows do, by what their cells give. */
import { areaName, columnName } from '../formula/index.ts';
import { compare, isFault, readQuantity, inBase, UNITS } from '../quantities/index.ts';
import type { Quantity, UnitCode } from '../quantities/index.ts';
import { usedArea } from './book.ts';
import { mustHaveSheet } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { runsOf } from './runs.ts';
import type { Area, Book, Condition, Edit, FilterTest, Sheet } from './types.ts';
import type { PlainValue, ValueAt } from './values.ts';

/** What a cell of the sheet shows. */
export type TextAt = (row: number, col: number) => string;

const FIGURES: readonly FilterTest[] = ['more', 'atLeast', 'less', 'atMost'];

/** Whether a condition compares figures, and so needs one to compare with. */
export const comparesFigures = (test: FilterTest): boolean => FIGURES.includes(test);
/** Whether a condition needs anything typed at all. */
export const needsText = (test: FilterTest): boolean => test !== 'empty' && test !== 'filled';

const UNIT_OF: Readonly<Record<Quantity['dimension'], UnitCode>> = { number: '', length: 'mm', area: 'mm2', angle: 'deg' };

function quantityOf(value: PlainValue): Quantity | null {
  return value.kind === 'number' ? inBase(value.value, UNIT_OF[value.dimension]) : null;
}

const folded = (text: string): string => text.trim().replace(/\s+/g, ' ').toLocaleLowerCase();

interface Matcher {
  readonly col: number;
  readonly matches: (value: PlainValue, shown: string) => boolean;
}

function figureOf({ col, text }: Condition, sheet: Sheet): Quantity {
  const reading = readQuantity(text);
  if (reading.kind === 'quantity') return reading.quantity;
  throw new EditRefused(`“${text.trim()}” is no figure with which column ${columnName(col)} of ${sheet.name} could be compared: write one such as 80 cm or 2 1/4 in.`);
}

function matcherOf(condition: Condition, sheet: Sheet): Matcher {
  const { col, test, text } = condition;
  if (test === 'empty' || test === 'filled') {
    return { col, matches: (value, shown) => (value.kind === 'empty' && shown === '') === (test === 'empty') };
  }
  if (text.trim() === '') throw new EditRefused(`Column ${columnName(col)} of ${sheet.name} cannot be matched with nothing: type what it is to hold, or choose “is empty”.`);
  if (test === 'has' || test === 'hasNot') {
    const part = folded(text);
    return { col, matches: (_, shown) => folded(shown).includes(part) === (test === 'has') };
  }
  if (test === 'is' || test === 'isNot') {
    const reading = readQuantity(text);
    const wanted = reading.kind === 'quantity' ? reading.quantity : null;
    const words = folded(text);
    return {
      col,
      matches: (value, shown) => {
        const figure = quantityOf(value);
        const same = wanted && figure ? compare(figure, wanted) === 0 : false;
        // What shows as 91.4 cm is that to whoever reads it, whatever it is beyond.
        return (same || folded(shown) === words) === (test === 'is');
      },
    };
  }
  const limit = figureOf(condition, sheet);
  return {
    col,
    matches: (value) => {
      const figure = quantityOf(value);
      const which = figure ? compare(figure, limit) : { sentence: '' };
      if (isFault(which)) return false;
      switch (test) {
        case 'more': return which > 0;
        case 'atLeast': return which >= 0;
        case 'less': return which < 0;
        case 'atMost': return which <= 0;
      }
    },
  };
}

/** Refuses a comparison with figures of another kind: 80 among lengths would quietly match nothing. */
function checkKind(condition: Condition, rows: readonly number[], sheet: Sheet, valueAt: ValueAt): void {
  if (!comparesFigures(condition.test)) return;
  const limit = figureOf(condition, sheet);
  const kinds = new Set(rows.map((row) => quantityOf(valueAt(row, condition.col))?.dimension).filter((kind) => kind !== undefined));
  if (kinds.size === 0 || kinds.has(limit.dimension)) return;
  const [kind] = kinds;
  const units = Object.values(UNITS).filter(({ dimension }) => dimension === kind).map(({ sign }) => sign);
  const what = limit.dimension === 'number'
    ? `The figures in column ${columnName(condition.col)} of ${sheet.name} have a unit: write one after ${condition.text.trim()}, such as ${units.includes('cm') ? 'cm or in' : units[0] ?? ''}.`
    : `The figures in column ${columnName(condition.col)} of ${sheet.name} are not of that kind: “${condition.text.trim()}” cannot be compared with them.`;
  throw new EditRefused(what);
}

/**
 * The edit that shows only the rows of a block that meet every condition. It
 * holds what is hidden now; rows are not matched anew by themselves.
 *
 * @param wanted the rows to match; headings are no part of them
 * @throws EditRefused for a condition that cannot be tested, or when no row would be left
 */
export function filterEdit(book: Book, wanted: Area, conditions: readonly Condition[], valueAt: ValueAt, textAt: TextAt): Edit {
  const sheet = mustHaveSheet(book, wanted.sheet);
  const used = usedArea(sheet);
  const bottom = Math.min(wanted.bottom, used?.bottom ?? -1);
  if (bottom < wanted.top) throw new EditRefused(`There is nothing to match in ${areaName(wanted)} of ${sheet.name}.`);
  const rows = Array.from({ length: bottom - wanted.top + 1 }, (_, at) => wanted.top + at);
  for (const condition of conditions) checkKind(condition, rows, sheet, valueAt);
  const matchers = conditions.map((condition) => matcherOf(condition, sheet));
  const hides = rows.filter((row) => !matchers.every(({ col, matches }) => matches(valueAt(row, col), textAt(row, col))));
  if (hides.length === rows.length) {
    throw new EditRefused(`No row of ${areaName({ ...wanted, bottom })} of ${sheet.name} matches; all stay as they are.`);
  }
  const { top, left, right } = wanted;
  return { do: 'setFilter', sheet: sheet.id, filter: { area: { top, left, bottom, right: Math.min(right, Math.max(left, used?.right ?? left)) }, conditions, hides: runsOf(hides) } };
}
