/** A workbook and its engine for tests: cells are typed by name, results read back as short text. */
import { readArea } from '../../../src/formula/index.ts';
import { exactText, inBase, showSpan, UNITS } from '../../../src/quantities/index.ts';
import type { ChangeSet, Result } from '../../../src/reckoning/protocol.ts';
import { Results } from '../../../src/reckoning/results.ts';
import { apply, emptyBook, emptySheet } from '../../../src/workbook/index.ts';
import type { Area, Book, CellAddress, CellChange, Edit } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

export type Cells = Readonly<Record<string, string>>;

export class Desk {
  readonly engine = new Engine();
  readonly results = new Results();
  book: Book;
  revision = 0;
  last: ChangeSet;

  constructor(...sheets: (Cells | readonly [name: string, cells: Cells])[]) {
    let book = emptyBook('test');
    sheets.forEach((given, i) => {
      const [name, cells] = Array.isArray(given) ? given as [string, Cells] : [`Sheet ${i + 1}`, given as Cells];
      if (i > 0) book = apply({ do: 'addSheet', sheet: emptySheet(book.nextSheetId, name), at: i }, book).book;
      else if (name !== book.sheets[0]!.name) book = apply({ do: 'renameSheet', sheet: book.sheets[0]!.id, name }, book).book;
      book = apply(typing(book, i, cells), book).book;
    });
    this.book = book;
    this.last = this.open();
  }

  open(): ChangeSet {
    this.last = this.engine.open(++this.revision, this.book);
    this.results.apply(this.last);
    return this.last;
  }

  edit(edit: Edit): ChangeSet {
    const { book, effects } = apply(edit, this.book);
    this.book = book;
    this.revision += 1;
    this.results.shift(this.revision, effects);
    this.last = this.engine.apply(this.revision, effects);
    this.results.apply(this.last);
    return this.last;
  }

  type(cells: Cells, sheet = 0): ChangeSet {
    return this.edit(typing(this.book, sheet, cells));
  }

  name(name: string, area: string | null, sheet = 0): ChangeSet {
    return this.edit({ do: 'setName', name, target: area === null ? null : { area: this.area(area, sheet), kind: 'cells' } });
  }

  area(text: string, sheet = 0): Area {
    const { top, left, bottom, right } = readArea(text)!;
    return { sheet: this.book.sheets[sheet]!.id, top, left, bottom, right };
  }

  cell(text: string, sheet = 0): CellAddress {
    const { sheet: id, top, left } = this.area(text, sheet);
    return { sheet: id, row: top, col: left };
  }

  result(cell: string, sheet = 0): Result {
    const { sheet: id, row, col } = this.cell(cell, sheet);
    return this.results.at(id, row, col);
  }

  /** `5.5 cm`, `TRUE`, text as it is, `! sentence` for an error. */
  show(cell: string, sheet = 0): string {
    return said(this.result(cell, sheet));
  }

  /** What a formula gives in a cell of its own. */
  work(formula: string, sheet = 0): string {
    this.type({ Z99: formula }, sheet);
    return this.show('Z99', sheet);
  }

  sentence(formula: string): string {
    const shown = this.work(formula);
    if (!shown.startsWith('! ')) throw new Error(`${formula} gave ${shown}`);
    return shown.slice(2);
  }
}

/** Twelve digits: the last ones of a double are seldom what a test is about. */
export function steady(shown: string): string {
  return shown.replace(/^-?\d+\.\d{6,}/, (figure) => String(Number(Number(figure).toPrecision(12))));
}

export function said(result: Result): string {
  switch (result.kind) {
    case 'quantity': return exactText(inBase(result.value, result.unit));
    case 'span': {
      const { dimension } = UNITS[result.unit];
      const end = (value: number) => ({ value, dimension, unit: result.unit });
      return showSpan({ low: end(result.low), high: end(result.high) }, { system: 'own', inchStep: 32 }).main;
    }
    case 'text': return result.text;
    case 'truth': return result.truth ? 'TRUE' : 'FALSE';
    case 'error': return `! ${result.sentence}`;
    default: return '';
  }
}

function typing(book: Book, sheet: number, cells: Cells): Edit {
  const changes = Object.entries(cells).map(([name, raw]): CellChange => {
    const { top: row, left: col } = readArea(name)!;
    return { row, col, cell: raw === '' ? null : { raw } };
  });
  return { do: 'setCells', sheet: book.sheets[sheet]!.id, cells: changes };
}
