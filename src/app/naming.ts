/** Going to an address or a name, and giving names to cells. */
import { areaName, readArea } from '../formula/index.ts';
import { nameCalled, nameFault, sheetNamed, type Area, type Book } from '../workbook/index.ts';
import type { Desk } from './desk.ts';

const same = (a: Area, b: Area) => a.sheet === b.sheet && a.top === b.top && a.left === b.left && a.bottom === b.bottom && a.right === b.right;

/** The name that stands for just this area, or nothing. */
export function nameOf(book: Book, area: Area): string {
  return book.names.find((each) => each.area && same(each.area, area))?.name ?? '';
}

/** "Fit B2:C4". */
export function areaInWords(book: Book, area: Area): string {
  return `${book.sheets.find(({ id }) => id === area.sheet)?.name ?? ''} ${areaName(area)}`;
}

export function goTo(desk: Desk, text: string): void {
  const wish = text.trim();
  const named = nameCalled(desk.book, wish);
  if (named) {
    if (named.area) desk.selectArea(named.area);
    else desk.say(`The cells that “${named.name}” stood for were removed.`);
    return;
  }
  const area = readArea(wish);
  if (!area) {
    desk.say(`“${wish}” is neither a cell such as B4, nor a block such as B4:C9, nor a name in this workbook.`);
    return;
  }
  const sheet = area.sheet === undefined ? desk.sheet : sheetNamed(desk.book, area.sheet);
  if (sheet) desk.selectArea({ ...area, sheet: sheet.id });
  else desk.say(`There is no sheet called “${area.sheet}” in this workbook.`);
}

/** Names the selection; an empty text takes its name away. False when it cannot be, with a sentence said. */
export function nameSelection(desk: Desk, text: string, chart = false): boolean {
  const { area, book } = desk;
  const wish = text.trim();
  const old = nameOf(book, area);
  if (wish === old) return true;
  if (wish === '') return desk.do({ do: 'setName', name: old, target: null });
  const fault = nameFault(wish, book, old || undefined);
  if (fault) {
    desk.say(fault);
    return false;
  }
  return old && !chart
    ? desk.do({ do: 'renameName', name: old, to: wish })
    : desk.do({ do: 'setName', name: wish, target: { area, kind: chart ? 'chart' : 'cells' } });
}
