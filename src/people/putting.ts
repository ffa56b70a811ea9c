/**
 * Measures in the cells of a sheet. Putting them is one edit: labels, input
 * cells beside them, names for formulas, and in the person's record where each
 * went, so that a newer set can follow. Nothing that stands there is written over.
 */
import { cellName, sheetInFormula } from '../formula/index.ts';
import {
  EditRefused, LIMITS, cellAt, cellPointedAt, nameCalled, nameFault, recordCalled, sheetById,
  type Book, type CellAddress, type CellChange, type Edit, type Person, type PutMeasure,
} from '../workbook/index.ts';
import { measureCalled, nameOfMeasure } from './measures.ts';
import { lengthOf, newestOf, type NewestMeasure } from './sets.ts';

export interface PutWish {
  /** Where the heading goes; the measures come below it, their figures one column to the right. */
  readonly at: CellAddress;
  /** Which measures, in this order. */
  readonly of: readonly string[];
  /** Give each cell its measure as a name where that is free. */
  readonly names: boolean;
}

export interface PutRow {
  readonly of: string;
  readonly label: string;
  readonly raw: string;
  /** The name its cell gets; `null` when none is wished for, or a formula could not tell it. */
  readonly name: string | null;
}

const mustHave = (book: Book, id: string): Person => {
  const person = recordCalled(book, 'person', id);
  if (!person) throw new EditRefused('That person is no longer in this workbook.');
  return person;
};

export function putRows(book: Book, person: Person, wish: Pick<PutWish, 'of' | 'names'>): readonly PutRow[] {
  const newest = new Map(newestOf(person).map((one) => [one.of, one]));
  return wish.of.flatMap((of): PutRow[] => {
    const one = newest.get(of);
    return one ? [{ of, label: nameOfMeasure(of), raw: one.raw, name: wish.names && nameFault(of, book) === null ? of : null }] : [];
  });
}

/** @throws {EditRefused} where something stands in the way: with the cell, and what to do */
export function putEdit(book: Book, id: string, wish: PutWish): Edit {
  const person = mustHave(book, id);
  const { at } = wish;
  const sheet = sheetById(book, at.sheet);
  if (!sheet) throw new EditRefused('That sheet is no longer in this workbook.');
  const rows = putRows(book, person, wish);
  if (rows.length === 0) throw new EditRefused(`There are no measures of ${person.name} to put yet: take a set of measures first.`);
  if (at.col + 1 >= LIMITS.columns || at.row + rows.length >= LIMITS.rows) throw new EditRefused('There is no room for the measures so near the end of the sheet. Choose a place further up or to the left.');
  const cells: CellChange[] = [
    { row: at.row, col: at.col, cell: { raw: `Measures of ${person.name}`, look: { heading: true } } },
    { row: at.row, col: at.col + 1, cell: { raw: '', look: { heading: true } } },
    ...rows.flatMap(({ label, raw }, index): CellChange[] => [
      { row: at.row + 1 + index, col: at.col, cell: { raw: label } },
      { row: at.row + 1 + index, col: at.col + 1, cell: { raw, input: true } },
    ]),
  ];
  const taken = cells.find(({ row, col }) => (cellAt(sheet, row, col)?.raw ?? '') !== '');
  if (taken) {
    throw new EditRefused(`${cellName(taken.row, taken.col)} of ${sheet.name} is not empty, and the measures need ${rows.length + 1} rows and 2 columns from ${cellName(at.row, at.col)} on. Select another cell, or a new sheet.`);
  }
  const col = at.col + 1;
  const put: PutMeasure[] = rows.map(({ of, raw }, index) => ({ of, raw, cell: formulaFor(sheet.name, { row: at.row + 1 + index, col }) }));
  const still = person.put.filter(({ cell }) => cellPointedAt(book, cell) !== null);
  return {
    do: 'many', label: `put the measures of ${person.name} into ${sheet.name}`,
    edits: [
      { do: 'setCells', sheet: sheet.id, cells },
      ...rows.flatMap(({ name }, index): Edit[] => (name === null ? [] : [{
        do: 'setName', name, target: { kind: 'cells', area: { sheet: sheet.id, top: at.row + 1 + index, bottom: at.row + 1 + index, left: col, right: col } },
      }])),
      { do: 'setRecord', kind: 'person', id, data: { ...person, put: [...still, ...put] } },
    ],
  };
}

/** How a cell that a measure was put into, or that is called as a measure is, stands to her newest figure. */
export interface Standing {
  readonly of: string;
  readonly cell: CellAddress;
  /** What is typed there now. */
  readonly now: string;
  readonly newest: NewestMeasure;
  /**
   * `older`: it holds what was put there or a figure of an older set, and there is a newer one. `by hand`: something else was typed there since.
   * `named`: nothing was put there, though the cell bears the measure's name.
   */
  readonly state: 'same' | 'older' | 'by hand' | 'named';
}

/** Cells that were removed, and cells with formulas under a measure's name, are not among them. */
export function standing(book: Book, person: Person): readonly Standing[] {
  const newest = new Map(newestOf(person).map((one) => [one.of, one]));
  const was = (of: string, now: string) => person.sets.some(({ measures }) => measures.some((one) => one.of === of && alike(one.raw, now)));
  const put = person.put.flatMap(({ of, cell: formula, raw }): Standing[] => {
    const cell = cellPointedAt(book, formula);
    const figure = newest.get(of);
    if (!cell || !figure) return [];
    const now = rawAt(book, cell);
    return [{ of, cell, now, newest: figure, state: alike(now, figure.raw) ? 'same' : now === raw || was(of, now) ? 'older' : 'by hand' }];
  });
  const named = [...newest.values()].flatMap((figure): Standing[] => {
    const area = measureCalled(figure.of) && nameCalled(book, figure.of)?.area;
    const cell = area && { sheet: area.sheet, row: area.top, col: area.left };
    const now = cell ? rawAt(book, cell) : '=';
    if (!cell || now.startsWith('=') || put.some((one) => isAt(one.cell, cell))) return [];
    return [{ of: figure.of, cell, now, newest: figure, state: alike(now, figure.raw) ? 'same' : was(figure.of, now) ? 'older' : 'named' }];
  });
  return [...put, ...named];
}

/** The newest figures into these cells, as one edit. */
export function useEdit(book: Book, id: string, chosen: readonly Standing[]): Edit {
  const person = mustHave(book, id);
  if (chosen.length === 0) throw new EditRefused('Tick at least one measure to use.');
  const put: PutMeasure[] = [
    ...person.put.map((one) => {
      const use = chosen.find(({ cell }) => isAt(cell, cellPointedAt(book, one.cell)));
      return use ? { ...one, raw: use.newest.raw } : one;
    }),
    ...chosen.filter(({ cell }) => !person.put.some((one) => isAt(cell, cellPointedAt(book, one.cell))))
      .map(({ of, cell, newest }) => ({ of, cell: formulaFor(sheetById(book, cell.sheet)!.name, cell), raw: newest.raw })),
  ];
  return {
    do: 'many', label: `use the new measures of ${person.name}`,
    edits: [
      ...[...new Set(chosen.map(({ cell }) => cell.sheet))].map((sheet): Edit => ({
        do: 'setCells', sheet,
        cells: chosen.filter(({ cell }) => cell.sheet === sheet)
          .map(({ cell: { row, col }, newest }) => ({ row, col, cell: { ...cellAt(sheetById(book, sheet)!, row, col), raw: newest.raw } })),
      })),
      { do: 'setRecord', kind: 'person', id, data: { ...person, put } },
    ],
  };
}

const formulaFor = (sheet: string, { row, col }: Pick<CellAddress, 'row' | 'col'>): string => `=${sheetInFormula(sheet)}!${cellName(row, col)}`;

const isAt = (a: CellAddress, b: CellAddress | null): boolean => b !== null && a.sheet === b.sheet && a.row === b.row && a.col === b.col;

/** The same text, or the same length otherwise written in the same unit. */
function alike(a: string, b: string): boolean {
  if (a.trim() === b.trim()) return true;
  const [one, other] = [lengthOf(a), lengthOf(b)];
  return one !== null && other !== null && one.value === other.value && one.unit === other.unit;
}

const rawAt = (book: Book, { sheet, row, col }: CellAddress): string => {
  const page = sheetById(book, sheet);
  return (page && cellAt(page, row, col)?.raw) ?? '';
};
