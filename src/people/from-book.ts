/** Who is in a workbook: its people, and whose measures stand in its cells without a record. */
import { cellAt, nameCalled, recordsOf, sheetById, type Book, type Person, type Sheet, type TakenMeasure } from '../workbook/index.ts';
import { MEASURES } from './measures.ts';
import { NOBODY, lengthOf } from './sets.ts';

export interface FoundPerson {
  readonly id: string;
  readonly person: Person;
  /** Read from named cells, because the workbook has no record of people. */
  readonly fromCells: boolean;
}

/**
 * Records without where their measures were put, which holds only in their own workbook.
 *
 * @param lastDay when the workbook was last changed: the day of measures of which it does not say when they were taken
 */
export function peopleIn(book: Book, lastDay: string): readonly FoundPerson[] {
  const kept = recordsOf(book, 'person').map(({ id, data }): FoundPerson => ({ id, person: { ...data, put: [] }, fromCells: false }));
  if (kept.length > 0) return kept;
  const measures = measuresInCells(book);
  const name = book.person.trim();
  if (measures.length === 0 || name === '') return [];
  const sheet = sheetOfFirst(book);
  const day = sheet ? besideLabel(sheet, 'Taken on') : '';
  return [{
    id: `cells of ${book.id}`.slice(0, 200),
    person: {
      ...NOBODY, name,
      sets: [{
        id: `cells of ${book.id}`.slice(0, 200), day: isDay(day) ? day : lastDay, by: sheet ? besideLabel(sheet, 'By whom') : '', measures,
        remark: isDay(day) ? '' : 'The workbook does not say when these were taken; this is the day when it was last changed.',
      }],
    },
    fromCells: true,
  }];
}

const isDay = (text: string): boolean => /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(text);

/** Figures that were typed into cells called as measures are. */
export function measuresInCells(book: Book): readonly TakenMeasure[] {
  return MEASURES.flatMap(({ key }): TakenMeasure[] => {
    const area = nameCalled(book, key)?.area;
    const sheet = area && sheetById(book, area.sheet);
    const raw = sheet ? (cellAt(sheet, area.top, area.left)?.raw ?? '') : '';
    return lengthOf(raw) ? [{ of: key, raw }] : [];
  });
}

function sheetOfFirst(book: Book): Sheet | undefined {
  for (const { key } of MEASURES) {
    const area = nameCalled(book, key)?.area;
    if (area) return sheetById(book, area.sheet);
  }
  return undefined;
}

/** What stands to the right of a label. */
function besideLabel(sheet: Sheet, label: string): string {
  for (const row of sheet.rows) {
    const at = row?.findIndex((cell) => cell?.raw === label) ?? -1;
    if (at >= 0) return row?.[at + 1]?.raw.slice(0, 200) ?? '';
  }
  return '';
}
