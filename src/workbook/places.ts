/** Where a cell stood before an edit, and where it stands after it. */
import { moveBack, placeAfterMove } from '../formula/index.ts';
import { areaAt, holds } from './area.ts';
import type { CellAddress, Edit } from './types.ts';

type OneEdit = Exclude<Edit, { do: 'many' }>;

/** `null` when there was no such cell: it came with the edit. */
export function placeBefore(edit: Edit, place: CellAddress): CellAddress | null {
  if (edit.do !== 'many') return oneBefore(edit, place);
  return edit.edits.reduceRight<CellAddress | null>((now, part) => now && placeBefore(part, now), place);
}

/** `null` when the cell is no more: it went with the edit, or another was moved onto it. */
export function placeAfter(edit: Edit, place: CellAddress): CellAddress | null {
  if (edit.do !== 'many') return oneAfter(edit, place);
  return edit.edits.reduce<CellAddress | null>((now, part) => now && placeAfter(part, now), place);
}

const rowsCome = (place: CellAddress, at: number, count: number): CellAddress => (place.row < at ? place : { ...place, row: place.row + count });
const colsCome = (place: CellAddress, at: number, count: number): CellAddress => (place.col < at ? place : { ...place, col: place.col + count });

function rowsGo(place: CellAddress, at: number, count: number): CellAddress | null {
  if (place.row < at) return place;
  return place.row < at + count ? null : { ...place, row: place.row - count };
}

function colsGo(place: CellAddress, at: number, count: number): CellAddress | null {
  if (place.col < at) return place;
  return place.col < at + count ? null : { ...place, col: place.col - count };
}

function oneBefore(edit: OneEdit, place: CellAddress): CellAddress | null {
  switch (edit.do) {
    case 'insertRows': return edit.sheet === place.sheet ? rowsGo(place, edit.at, edit.count) : place;
    case 'removeRows': return edit.sheet === place.sheet ? rowsCome(place, edit.at, edit.count) : place;
    case 'insertColumns': return edit.sheet === place.sheet ? colsGo(place, edit.at, edit.count) : place;
    case 'removeColumns': return edit.sheet === place.sheet ? colsCome(place, edit.at, edit.count) : place;
    case 'moveRows': return edit.sheet === place.sheet ? { ...place, row: placeAfterMove(place.row, moveBack(edit)) } : place;
    case 'moveColumns': return edit.sheet === place.sheet ? { ...place, col: placeAfterMove(place.col, moveBack(edit)) } : place;
    case 'orderRows': return holds(edit.area, place.row, place.col) && edit.area.sheet === place.sheet ? { ...place, row: edit.area.top + edit.order[place.row - edit.area.top]! } : place;
    case 'moveCells': {
      const { from, to } = edit;
      const target = areaAt(from, to);
      return place.sheet === to.sheet && holds(target, place.row, place.col)
        ? { sheet: from.sheet, row: place.row - to.row + from.top, col: place.col - to.col + from.left } : place;
    }
    case 'addSheet': return edit.sheet.id === place.sheet ? null : place;
    default: return place;
  }
}

function oneAfter(edit: OneEdit, place: CellAddress): CellAddress | null {
  switch (edit.do) {
    case 'insertRows': return edit.sheet === place.sheet ? rowsCome(place, edit.at, edit.count) : place;
    case 'removeRows': return edit.sheet === place.sheet ? rowsGo(place, edit.at, edit.count) : place;
    case 'insertColumns': return edit.sheet === place.sheet ? colsCome(place, edit.at, edit.count) : place;
    case 'removeColumns': return edit.sheet === place.sheet ? colsGo(place, edit.at, edit.count) : place;
    case 'moveRows': return edit.sheet === place.sheet ? { ...place, row: placeAfterMove(place.row, edit) } : place;
    case 'moveColumns': return edit.sheet === place.sheet ? { ...place, col: placeAfterMove(place.col, edit) } : place;
    case 'orderRows': return holds(edit.area, place.row, place.col) && edit.area.sheet === place.sheet ? { ...place, row: edit.area.top + edit.order.indexOf(place.row - edit.area.top) } : place;
    case 'moveCells': {
      const { from, to } = edit;
      if (place.sheet === from.sheet && holds(from, place.row, place.col)) {
        return { sheet: to.sheet, row: place.row - from.top + to.row, col: place.col - from.left + to.col };
      }
      return place.sheet === to.sheet && holds(areaAt(from, to), place.row, place.col) ? null : place;
    }
    case 'removeSheet': return edit.sheet === place.sheet ? null : place;
    default: return place;
  }
}
