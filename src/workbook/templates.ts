/**
 * Templates: one sheet to start from, with the names of its cells. Plain JSON,
 * the same in a file, on the device and among those that ship.
 */
import { foldName, isFormula, rewriteReferences, sameName, tokenize } from '../formula/index.ts';
import type { Token } from '../formula/index.ts';
import { withoutAcknowledged } from './acknowledge.ts';
import { filledCells, nameCalled, sheetNamed } from './book.ts';
import { fileCell, widthsToFile } from './file-cells.ts';
import { LIMITS, counted } from './limits.ts';
import { numbered, sheetTextFault, tidyName } from './names.ts';
import { mustHaveSheet } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { TEMPLATE_FORMAT, TEMPLATE_VERSION } from './schema.ts';
import type { FileCell, FileWidth } from './schema.ts';
import type { Book, CellChange, Edit, Frozen, Hidden, NamedArea, Sheet, SheetId } from './types.ts';

export interface TemplateName {
  readonly name: string;
  readonly kind: NamedArea['kind'];
  /** On the template's own sheet. */
  readonly area: readonly [top: number, left: number, bottom: number, right: number];
}

export interface Template {
  readonly format: typeof TEMPLATE_FORMAT;
  readonly version: typeof TEMPLATE_VERSION;
  /** Also what a sheet started from it is called. */
  readonly name: string;
  /** What it is for. */
  readonly note: string;
  readonly sheet: {
    /** Rows and columns count from 0. */
    readonly cells: readonly FileCell[];
    readonly widths: readonly FileWidth[];
    readonly about?: string;
    readonly hidden?: Hidden;
    readonly frozen?: Frozen;
  };
  readonly names: readonly TemplateName[];
  /** Sheets and names elsewhere that its formulas use. */
  readonly needs?: readonly string[];
}

/** Words to compare as names are compared, each with its first spelling. */
class Words {
  readonly #spellings = new Map<string, string>();

  constructor(words: Iterable<string> = []) {
    for (const word of words) this.add(word);
  }

  add(word: string): void {
    const key = foldName(word);
    if (!this.#spellings.has(key)) this.#spellings.set(key, word);
  }

  has(word: string): boolean {
    return this.#spellings.has(foldName(word));
  }

  list(): string[] {
    return [...this.#spellings.values()];
  }
}

/** A reference to the sheet itself needs no sheet's name, and must not have one: the next sheet is called otherwise. */
function withoutSheet({ kind, text, reference }: Token, own: string): string {
  if (kind !== 'reference' || reference?.sheet === undefined || !sameName(reference.sheet, own)) return text;
  if (reference.toSheet !== undefined && !sameName(reference.toSheet, own)) return text;
  return text.replace(/(?:'(?:[^']|'')*'|[^'!:]+)!/g, '');
}

/** The sheets and names elsewhere that a formula uses, as the workbook spells them. */
function needsOf(token: Token, sheet: Sheet, book: Book): string[] {
  if (token.kind === 'name') {
    const named = nameCalled(book, token.text);
    return named && named.area?.sheet !== sheet.id ? [named.name] : [];
  }
  return [token.reference?.sheet, token.reference?.toSheet]
    .filter((name) => name !== undefined && !sameName(name, sheet.name))
    .map((name = '') => sheetNamed(book, name)?.name ?? name);
}

/** Keeps a sheet with its formulas, looks, input marks and names. Throws `EditRefused` when it cannot be called this. */
export function templateFrom(book: Book, id: SheetId, name: string, note: string): Template {
  const sheet = mustHaveSheet(book, id);
  const fault = sheetTextFault(name);
  if (fault !== null) throw new EditRefused(fault.replace("sheet's name", "template's name").replace('A sheet', 'A template'));
  if (note.length > LIMITS.characters) throw new EditRefused(`A template's note has at most ${counted(LIMITS.characters)} characters.`);

  const needs = new Words();
  const names = book.names.map((named) => named.name);
  const cells: FileCell[] = [];
  for (const { row, col, cell } of filledCells(sheet)) {
    if (!isFormula(cell.raw)) {
      cells.push(fileCell(row, col, cell));
      continue;
    }
    const tokens = tokenize(cell.raw, names);
    for (const token of tokens) for (const need of needsOf(token, sheet, book)) needs.add(need);
    cells.push(fileCell(row, col, { ...withoutAcknowledged(cell), raw: tokens.map((token) => withoutSheet(token, sheet.name)).join('') }));
  }
  return {
    format: TEMPLATE_FORMAT, version: TEMPLATE_VERSION, name: tidyName(name), note,
    sheet: {
      cells, widths: widthsToFile(sheet),
      ...(sheet.about && { about: sheet.about }), ...(sheet.hidden && { hidden: sheet.hidden }), ...(sheet.frozen && { frozen: sheet.frozen }),
    },
    names: book.names.flatMap(({ name: text, kind, area }) => (area?.sheet === id
      ? [{ name: text, kind, area: [area.top, area.left, area.bottom, area.right] as const }]
      : [])),
    ...(needs.list().length > 0 && { needs: needs.list() }),
  };
}

/** What each of the template's names is to be called here: itself where that is free, else numbered. */
function freeNames(template: Template, book: Book): Map<string, string> {
  const taken = new Words([...book.names.map(({ name }) => name), ...(template.needs ?? [])]);
  const own = new Words(template.names.map(({ name }) => name));
  const names = new Map<string, string>();
  for (const { name } of template.names) {
    const free = numbered(name, (wish) => !taken.has(wish) && (wish === name || !own.has(wish)));
    taken.add(free);
    names.set(name, free);
  }
  return names;
}

export interface FromTemplate {
  /** One step: the sheet, its names and its cells. */
  readonly edit: Edit;
  readonly sheet: SheetId;
  /** What the template uses and this workbook does not have, a sentence each. */
  readonly problems: string[];
}

/** What keeps a sheet that needs a name or a sheet from working, and what to do; `undefined` when it is there. */
function problemWith(need: string, book: Book): string | undefined {
  const named = nameCalled(book, need);
  if (named?.area || (!named && sheetNamed(book, need))) return undefined;
  return named
    ? `This sheet uses the name ${need}, whose cells were removed: select the cells it is to stand for, and give them the name ${need} again under Names.`
    : `This sheet uses ${need}, which this workbook does not have: add a sheet or a name called so, or change the formulas that use it.`;
}

/** The edit that starts a sheet from a template, after the last sheet. */
export function sheetFromTemplate(template: Template, book: Book): FromTemplate {
  const { needs = [] } = template;
  const id = book.nextSheetId;
  const elsewhere = new Words([...book.sheets.map((sheet) => sheet.name), ...needs]);
  const name = numbered(template.name, (wish) => !elsewhere.has(wish));
  const names = freeNames(template, book);

  const all = [...names.keys(), ...names.values(), ...book.names.map((named) => named.name), ...needs];
  const renamed = [...names].filter(([from, to]) => from !== to);
  const cells = template.sheet.cells.map(([row, col, given, extras]): CellChange => {
    let raw = given;
    if (isFormula(raw)) {
      for (const [from, to] of renamed) raw = rewriteReferences(raw, { id, name }, book.sheets, { do: 'renameName', from, to, names: all });
    }
    return { row, col, cell: { raw, ...extras } };
  });
  const { widths, about, hidden, frozen } = template.sheet;
  const sheet: Sheet = {
    id, name, rows: [], widths: Object.fromEntries(widths), ...(about && { about }), ...(hidden && { hidden }), ...(frozen && { frozen }),
  };
  const edits: Edit[] = [
    { do: 'addSheet', sheet, at: book.sheets.length },
    ...template.names.map(({ name: text, kind, area: [top, left, bottom, right] }): Edit => ({
      do: 'setName', name: names.get(text) ?? text, target: { kind, area: { sheet: id, top, left, bottom, right } },
    })),
    // After the names, so that the engine knows them when it reads the formulas.
    { do: 'setCells', sheet: id, cells },
  ];
  return {
    edit: { do: 'many', label: `start the sheet ${name}`, edits },
    sheet: id,
    problems: needs.flatMap((need) => problemWith(need, book) ?? []),
  };
}
