/** Cut and paste: cells go to another place, and what pointed at them follows. */
import { isFormula, rewriteReferences } from '../formula/index.ts';
import { areaAt, checkArea, isArea, sameArea, within } from './area.ts';
import { filledCells } from './book.ts';
import { rewriteBook } from './follow.ts';
import { LIMITS } from './limits.ts';
import { mustHaveSheet, setCells, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import type { Area, Book, Cell, CellChange, Edit, Effect, Sheet, SheetId } from './types.ts';

type MoveCells = Extract<Edit, { do: 'moveCells' }>;

/** All that becomes of cells, a sheet at a time; the last word on a cell counts. */
class Changes {
  readonly #bySheet = new Map<SheetId, Map<number, CellChange>>();

  set(sheet: SheetId, row: number, col: number, cell: Cell | null): void {
    let cells = this.#bySheet.get(sheet);
    if (!cells) this.#bySheet.set(sheet, cells = new Map());
    cells.set(row * LIMITS.columns + col, { row, col, cell });
  }

  *sheets(): Generator<readonly [SheetId, Iterable<CellChange>]> {
    for (const [sheet, cells] of this.#bySheet) yield [sheet, cells.values()];
  }
}

function movedCells(edit: MoveCells, target: Area, book: Book): Changes {
  const { from } = edit;
  const changes = new Changes();
  const follow = (formula: string, own: Sheet, formulaMoves: boolean): string =>
    rewriteReferences(formula, own, book.sheets, { ...edit, formulaMoves });
  for (const { sheet, cells } of rewriteBook(book, (formula, own) => follow(formula, own, false)).rewritten) {
    for (const { row, col, before, raw } of cells) changes.set(sheet, row, col, { ...before, raw });
  }

  const source = mustHaveSheet(book, from.sheet);
  const moving = [...filledCells(source, from)];
  for (const { row, col } of moving) changes.set(from.sheet, row, col, null);
  for (const { row, col } of filledCells(mustHaveSheet(book, target.sheet), target)) changes.set(target.sheet, row, col, null);
  for (const { row, col, cell } of moving) {
    const raw = isFormula(cell.raw) ? follow(cell.raw, source, true) : cell.raw;
    changes.set(target.sheet, target.top + row - from.top, target.left + col - from.left, raw === cell.raw ? cell : { ...cell, raw });
  }
  return changes;
}

/** Moves a block onto another, whose cells it replaces. Formulas and names that stand for moved cells only follow. */
export function moveCells(edit: MoveCells, book: Book): Outcome {
  const { from, to } = edit;
  const source = mustHaveSheet(book, from.sheet);
  const sheet = mustHaveSheet(book, to.sheet);
  checkArea(from);
  const target = areaAt(from, to);
  if (!isArea(target)) throw new EditRefused(`The cells cut from ${source.name} do not fit there: they would go past the edge of ${sheet.name}.`);
  if (sameArea(from, target)) return unchanged(book);

  const undo: Edit[] = [];
  const effects: Effect[] = [];
  let after = book;
  for (const [id, cells] of movedCells(edit, target, book).sheets()) {
    const outcome = setCells(after, id, cells);
    after = outcome.book;
    undo.push(...outcome.undo);
    effects.push(...outcome.effects);
  }
  const following = book.names.filter(({ area }) => area && within(area, from));
  if (following.length === 0) return { book: after, undo, effects };

  const names = book.names.map((named) => {
    if (!named.area || !following.includes(named)) return named;
    const { top, left } = named.area;
    return { ...named, area: areaAt(named.area, { sheet: to.sheet, row: target.top + top - from.top, col: target.left + left - from.left }) };
  });
  for (const { name, area, kind } of following) {
    undo.push({ do: 'setName', name, target: { area, kind } });
    effects.push({ do: 'name', name, target: { area: names.find((named) => named.name === name)?.area ?? null } });
  }
  return { book: { ...after, names }, undo, effects };
}
