/**
 * Stands in for the engine: knows the workbook only by effects, shifts cells,
 * formulas and names by itself when rows and columns come and go, and
 * understands the words of a formula when it is told to read it, not before.
 */
import { expect } from 'vitest';
import { nameCalled, sheetNamed } from '../../../src/workbook/index.ts';
import type { Area, Book, Effect, SheetId } from '../../../src/workbook/index.ts';
import { rewriteReferences, shiftCopy, tokenize } from '../../../src/formula/index.ts';

interface Known {
  raw: string;
  /** Names and sheets' names in it, each with whether there was one when it was read. */
  words: readonly string[];
}

type Shift = Extract<Effect, { readonly at: number }>;

function understood(raw: string, names: readonly string[], isName: (word: string) => boolean, isSheet: (word: string) => boolean): string[] {
  if (!raw.startsWith('=')) return [];
  return tokenize(raw, names).flatMap((token) => {
    if (token.kind === 'name') return [`${token.text} ${isName(token.text)}`];
    // A reference to a sheet that is there may be gone later; the engine sees to that itself.
    const sheets = [token.reference?.sheet, token.reference?.toSheet].filter((name) => name !== undefined);
    return sheets.filter((name) => !isSheet(name)).map((name) => `${name}! unknown`);
  });
}

export class Mirror {
  readonly #beyond: 'leaves' | 'moves';
  #sheets: { readonly id: SheetId; readonly name: string }[] = [];
  readonly #cells = new Map<SheetId, Map<string, Known>>();
  readonly #names = new Map<string, Area | null>();

  constructor(book: Book, beyond: 'leaves' | 'moves') {
    this.#beyond = beyond;
    this.take([
      { do: 'sheets', sheets: book.sheets },
      ...book.names.map(({ name, area }): Effect => ({ do: 'name', name, target: { area } })),
      ...book.sheets.map((sheet): Effect => ({
        do: 'cells', sheet: sheet.id,
        cells: sheet.rows.flatMap((row, r) => (row ?? []).flatMap((cell, c) => (cell?.raw ? [{ row: r, col: c, raw: cell.raw }] : []))),
      })),
    ]);
  }

  take(effects: readonly Effect[]): void {
    for (const effect of effects) {
      switch (effect.do) {
        case 'sheets':
          this.#sheets = effect.sheets.map(({ id, name }) => ({ id, name }));
          for (const id of this.#cells.keys()) if (!this.#sheets.some((sheet) => sheet.id === id)) this.#cells.delete(id);
          for (const { id } of this.#sheets) if (!this.#cells.has(id)) this.#cells.set(id, new Map());
          break;
        case 'name':
          if (effect.target) this.#names.set(effect.name, effect.target.area);
          else this.#names.delete(effect.name);
          break;
        case 'cells':
          for (const { row, col, raw } of effect.cells) this.#read(effect.sheet, row, col, raw);
          break;
        case 'layouts': break;
        case 'orderRows': this.#order(effect); break;
        default: this.#shift(effect);
      }
    }
  }

  #book(): Pick<Book, 'sheets' | 'names'> {
    return {
      sheets: this.#sheets.map(({ id, name }) => ({ id, name, rows: [], widths: {} })),
      names: [...this.#names].map(([name, area]) => ({ name, area, kind: 'cells' })),
    };
  }

  #read(sheet: SheetId, row: number, col: number, raw: string): void {
    const cells = this.#cells.get(sheet);
    if (!cells) throw new Error(`cells for a sheet ${sheet} that the engine does not have`);
    const key = `${row} ${col}`;
    if (raw === '') cells.delete(key);
    else cells.set(key, { raw, words: wordsOf(raw, this.#book()) });
  }

  /** What is an equal way off before and after is followed; of all else the engine must have been told that it is empty. */
  #order({ area, order }: Extract<Effect, { readonly do: 'orderRows' }>): void {
    const own = this.#cells.get(area.sheet) ?? new Map<string, Known>();
    const before = new Map(own);
    for (let at = 0; at < order.length; at++) {
      for (let col = area.left; col <= area.right; col++) {
        const [from, to] = [area.top + order[at]!, area.top + at];
        const known = before.get(`${from} ${col}`);
        if (known) own.set(`${to} ${col}`, { ...known, raw: shiftCopy(known.raw, to - from, 0) });
        else own.delete(`${to} ${col}`);
      }
    }
  }

  #shift(shift: Shift): void {
    const byRow = shift.do === 'insertRows' || shift.do === 'removeRows';
    const inserts = shift.do === 'insertRows' || shift.do === 'insertColumns';
    const own = this.#cells.get(shift.sheet) ?? new Map<string, Known>();
    const places = [...own].map(([key, known]) => ({ at: key.split(' ').map(Number) as [number, number], known }));
    const axis = byRow ? 0 : 1;
    if (this.#beyond === 'leaves' && !places.some(({ at }) => at[axis] >= shift.at)) return;

    for (const [id, cells] of this.#cells) {
      const sheet = this.#sheets.find((other) => other.id === id);
      if (sheet) for (const known of cells.values()) if (known.raw.startsWith('=')) known.raw = rewriteReferences(known.raw, sheet, this.#sheets, shift);
    }
    own.clear();
    for (const { at, known } of places) {
      if (at[axis] >= shift.at) {
        if (!inserts && at[axis] < shift.at + shift.count) continue;
        at[axis] += inserts ? shift.count : -shift.count;
      }
      own.set(at.join(' '), known);
    }
    const [first, last] = byRow ? ['top', 'bottom'] as const : ['left', 'right'] as const;
    for (const [name, area] of this.#names) {
      if (area?.sheet !== shift.sheet) continue;
      const end = shift.at + shift.count;
      const moved = (n: number, ifGone: number): number => (n < shift.at ? n : inserts ? n + shift.count : n < end ? ifGone : n - shift.count);
      const next = { ...area, [first]: moved(area[first], shift.at), [last]: moved(area[last], shift.at - 1) };
      if (next[first] <= next[last]) this.#names.set(name, next);
      // Otherwise the engine's name is broken; the workbook must tell it that it stands for nothing.
    }
  }

  expectToMirror(book: Book): void {
    expect(this.#sheets).toEqual(book.sheets.map(({ id, name }) => ({ id, name })));
    expect(Object.fromEntries(this.#names)).toEqual(Object.fromEntries(book.names.map(({ name, area }) => [name, area])));
    for (const sheet of book.sheets) {
      const wanted: Record<string, Known> = {};
      sheet.rows.forEach((row, r) => row?.forEach((cell, c) => {
        if (cell?.raw) wanted[`${r} ${c}`] = { raw: cell.raw, words: wordsOf(cell.raw, book) };
      }));
      expect(Object.fromEntries(this.#cells.get(sheet.id) ?? [])).toEqual(wanted);
    }
  }
}

function wordsOf(raw: string, book: Pick<Book, 'sheets' | 'names'>): string[] {
  const whole = { id: '', title: '', person: '', settings: { show: 'own', inchStep: 8 }, nextSheetId: 1, ...book } as const;
  return understood(raw, book.names.map(({ name }) => name), (word) => nameCalled(whole, word) !== undefined, (word) => sheetNamed(whole, word) !== undefined);
}
