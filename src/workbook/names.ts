/** Names for cells, and what sheets may be called. */
import { foldName, nameShapeFault, rewriteReferences, sameName } from '../formula/index.ts';
import { unitNamed } from '../quantities/index.ts';
import { isArea, sameArea } from './area.ts';
import { nameCalled, sheetById, sheetNamed } from './book.ts';
import { concerned, readAnew, rewriteBook, wayBack } from './follow.ts';
import type { Rewrite } from './follow.ts';
import { LIMITS, counted } from './limits.ts';
import { unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import type { Book, Edit, Effect, NamedArea, SheetId } from './types.ts';

type SetName = Extract<Edit, { do: 'setName' }>;
type RenameName = Extract<Edit, { do: 'renameName' }>;

/** A name as it is kept: no spaces at its ends, single ones inside. */
export function tidyName(name: string): string {
  return name.trim().replace(/\s+/g, ' ');
}

/** Why cells cannot have this name, whatever else is in the workbook; `null` when they can. */
export function nameTextFault(given: string): string | null {
  const name = tidyName(given);
  if (name.length > LIMITS.name) return `A name has at most ${LIMITS.name} characters; this one has ${counted(name.length)}.`;
  const fault = nameShapeFault(name);
  if (fault !== null) return fault;
  if (!/^\p{L}/u.test(name)) return 'A name begins with a letter, such as bust or full bust.';
  return unitNamed(name) === undefined ? null : `${name} is a unit; give the cells a name that cannot be taken for one.`;
}

/** Why cells cannot have this name in this workbook, or `null`. `but` is the name that it would replace. */
export function nameFault(name: string, book: Book, but?: string): string | null {
  const fault = nameTextFault(name);
  if (fault !== null) return fault;
  const taken = nameCalled(book, name);
  if (!taken || (but !== undefined && sameName(but, name))) return null;
  return `The name ${taken.name} is already used in this workbook: choose another.`;
}

/** Why a sheet cannot be called this, whatever else is in the workbook; `null` when it can. */
export function sheetTextFault(given: string): string | null {
  const name = tidyName(given);
  if (name === '') return 'A sheet needs a name.';
  if (name.length > LIMITS.name) return `A sheet's name has at most ${LIMITS.name} characters; this one has ${counted(name.length)}.`;
  if (/[\p{Cc}\p{Cs}]/u.test(name)) return "A sheet's name cannot have characters that cannot be seen.";
  return null;
}

/** Why a sheet cannot be called this in this workbook, or `null`. `but` is the sheet to be renamed. */
export function sheetNameFault(name: string, book: Book, but?: SheetId): string | null {
  const fault = sheetTextFault(name);
  if (fault !== null) return fault;
  const taken = sheetNamed(book, name);
  return taken && taken.id !== but ? `There is already a sheet called ${taken.name}: choose another name.` : null;
}

/** The beginning of a name, never half a character. */
function cut(name: string, length: number): string {
  return name.slice(0, length).replace(/[\ud800-\udbff]$/, '').trimEnd();
}

/** The wish itself when it is free, else with the first number from 2 that makes it so. */
export function numbered(wish: string, isFree: (name: string) => boolean): string {
  if (isFree(wish)) return wish;
  for (let n = 2; ; n++) {
    const end = ` ${n}`;
    const name = cut(wish, LIMITS.name - end.length) + end;
    if (isFree(name)) return name;
  }
}

/** A name that cells can have, as near to the wish as may be, whatever the wish. */
export function freeName(wish: string, book: Book): string {
  const plain = cut(tidyName(wish.replace(/[^\p{L}\p{M}\p{Nd}_.\s]/gu, ' ')).replace(/^\P{L}+/u, ''), LIMITS.name);
  return numbered(nameTextFault(plain) === null ? plain : 'name', (name) => !nameCalled(book, name));
}

/** A name that a sheet can have, as near to the wish as may be, whatever the wish. */
export function freeSheetName(wish: string, book: Book): string {
  const plain = cut(tidyName(wish.replace(/[\p{Cc}\p{Cs}]/gu, ' ')), LIMITS.name);
  return numbered(plain || 'Sheet', (name) => !sheetNamed(book, name));
}

/** Names are kept in one order, so that equal names are equal lists. */
export function sortNames(names: readonly NamedArea[]): readonly NamedArea[] {
  return names
    .map((named) => ({ named, key: foldName(named.name) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0))
    .map(({ named }) => named);
}

function checkTarget(name: string, target: NonNullable<SetName['target']>, book: Book): void {
  const { area } = target;
  if (area && (!isArea(area) || !sheetById(book, area.sheet))) {
    throw new EditRefused(`The cells that ${name} is to stand for are not in this workbook.`);
  }
}

/** Changes the spelling of a name in a formula; `names` are all that the formula may use. */
function respelling(book: Book, names: readonly string[], from: string, to: string): Rewrite {
  const change = { do: 'renameName', from, to, names } as const;
  return (formula, sheet) => rewriteReferences(formula, sheet, book.sheets, change);
}

/** The formulas that use a name, which may have come or gone just now. */
function usersOf(name: string, book: Book, names: readonly NamedArea[]): Effect[] {
  return readAnew(concerned(book, respelling(book, names.map((named) => named.name), name, `${name} x`)));
}

/** Gives a name to cells, points it elsewhere, or takes it away. A name that is there keeps its spelling. */
export function setName({ name: given, target }: SetName, book: Book): Outcome {
  const old = nameCalled(book, given);
  const name = old?.name ?? tidyName(given);
  const others = book.names.filter((named) => named !== old);
  if (!target) {
    if (!old) throw new EditRefused(`There is no name ${name} in this workbook.`);
    return {
      book: { ...book, names: others },
      undo: [{ do: 'setName', name, target: { area: old.area, kind: old.kind } }],
      effects: [{ do: 'name', name, target: null }, ...usersOf(name, book, book.names)],
    };
  }
  const fault = old ? null : nameTextFault(name);
  if (fault !== null) throw new EditRefused(fault);
  checkTarget(name, target, book);
  const { area, kind } = target;
  if (old && old.kind === kind && sameArea(old.area, area)) return unchanged(book);
  const after = { ...book, names: sortNames([...others, { name, area: area && plainArea(area), kind }]) };
  const told: Effect[] = old && sameArea(old.area, area) ? [] : [{ do: 'name', name, target: { area } }];
  return {
    book: after,
    undo: [{ do: 'setName', name, target: old ? { area: old.area, kind: old.kind } : null }],
    effects: old ? told : [...told, ...usersOf(name, after, after.names)],
  };
}

/** Nothing but the five numbers, and 0 for -0. */
function plainArea({ sheet, top, left, bottom, right }: NonNullable<NamedArea['area']>): NonNullable<NamedArea['area']> {
  return { sheet, top: top + 0, left: left + 0, bottom: bottom + 0, right: right + 0 };
}

/** Calls a name otherwise; formulas that use it follow. */
export function renameName({ name, to: given }: RenameName, book: Book): Outcome {
  const old = nameCalled(book, name);
  const to = tidyName(given);
  if (!old) throw new EditRefused(`There is no name ${name} in this workbook.`);
  if (old.name === to) return unchanged(book);
  const fault = nameFault(to, book, old.name);
  if (fault !== null) throw new EditRefused(fault);
  const names = book.names.map((named) => named.name);
  const renamed = { ...book, names: sortNames(book.names.map((named) => (named === old ? { ...old, name: to } : named))) };
  const followed = rewriteBook(renamed, respelling(book, names, old.name, to));
  const back = wayBack(book, followed.book, respelling(book, renamed.names.map((named) => named.name), to, old.name));
  return {
    book: followed.book,
    undo: [{ do: 'renameName', name: to, to: old.name }, ...back.undo],
    effects: [
      { do: 'name', name: old.name, target: null },
      { do: 'name', name: to, target: { area: old.area } },
      ...back.effects,
    ],
  };
}
