/** A size chart that was read, as one edit: a sheet, and the name that the SIZE functions read it by. */
import { chartSheet, readTable, type ChartReading } from '../tables/index.ts';
import { freeName, freeSheetName, type Book, type Edit, type SheetId } from '../workbook/index.ts';

interface Wish {
  readonly sheet: string;
  readonly name: string;
  readonly about?: string;
}

/** @throws when the text is no size chart: for charts that ship with the workbook. */
export function chartEdit(csv: string, wish: Wish, book: Book): { edit: Edit; sheet: SheetId } {
  const reading = readTable(csv);
  if ('sentence' in reading) throw new Error(reading.sentence);
  return chartSheetEdit(reading, wish, book);
}

export function chartSheetEdit(reading: ChartReading, wish: Wish, book: Book): { edit: Edit; sheet: SheetId } {
  const { sheet: page, area } = chartSheet(reading, freeSheetName(wish.sheet, book));
  const id = book.nextSheetId;
  const edits: Edit[] = [
    { do: 'addSheet', at: book.sheets.length, sheet: { ...page, id, ...(wish.about ? { about: wish.about } : {}) } },
    { do: 'setName', name: freeName(wish.name, book), target: { kind: 'chart', area: { sheet: id, ...area } } },
  ];
  return { edit: { do: 'many', label: `size chart ${wish.name}`, edits }, sheet: id };
}
