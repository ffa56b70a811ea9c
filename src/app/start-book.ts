/**
 * A workbook to begin with: the person and her measures, the garment's sheets
 * with her measures in them, the size chart, and what worked last time, as far
 * as she wants it. Pure.
 */
import { readArea } from '../formula/index.ts';
import { lengthOf, nameOfMeasure, newestOf } from '../people/index.ts';
import type { ChartReading } from '../tables/index.ts';
import {
  apply, cellAt, emptyBook, emptySheet, freeSheetName, nameFault, sheetById, sheetFromTemplate, sheetNamed,
  type Book, type Cell, type CellChange, type Edit, type Person, type PutMeasure, type SheetId, type Worked,
} from '../workbook/index.ts';
import { chartSheetEdit } from './chart-edit.ts';
import { GARMENTS, MORE_SHEETS, type SheetUse } from './garments.ts';
import { shippedTemplate } from './shipped.ts';

export interface StartWish {
  /** One of `GARMENTS`. */
  readonly garment: string;
  /** Also templates of `MORE_SHEETS`. */
  readonly more: readonly string[];
  readonly title: string;
  readonly show: 'cm' | 'in' | 'both';
  readonly personId: string;
  /** With the sets that she has, the newest among them. */
  readonly person: Person;
  /** A child's age in years, as typed; empty when not told. */
  readonly years: string;
  readonly chart: ChartReading | null;
  /** What worked last time, as much of it as is to be used. */
  readonly ease: Worked['ease'];
  readonly length: string;
  /** Lines for the sheet of what to remember. */
  readonly remember: readonly string[];
}

/** Of measures that may not have been taken. */
const DIFFERENCES = {
  B20: '=IF(OR(ISBLANK(bust), ISBLANK(upper chest)), "", bust - upper chest)',
  B21: '=IF(OR(ISBLANK(hip), ISBLANK(waist)), "", hip - waist)',
};

const NOT_MEASURED = 'Begins as a usual figure, not hers: measure, and type it over.';

class Making {
  book: Book;
  #had: ReadonlySet<string>;

  constructor(private readonly wish: StartWish) {
    this.book = apply({ do: 'setTitle', title: wish.title, person: wish.person.name }, emptyBook('new')).book;
    this.#had = new Set(newestOf(wish.person).map(({ of }) => of));
    this.do({ do: 'setSettings', settings: { ...this.book.settings, show: wish.show } });
  }

  do(edit: Edit): void {
    this.book = apply(edit, this.book).book;
  }

  sheet(use: SheetUse): SheetId {
    const { edit, sheet } = sheetFromTemplate(shippedTemplate(use.template), this.book);
    this.do(edit);
    this.do({ do: 'renameSheet', sheet, name: freeSheetName(use.name, { ...this.book, sheets: this.book.sheets.filter(({ id }) => id !== sheet) }) });
    this.do({ do: 'setAbout', sheet, about: use.about });
    const eased = Object.entries(use.ease ?? {}).flatMap(([level, place]) => {
      const liked = this.wish.ease.find((each) => each.level.toLowerCase() === level);
      return liked ? [[place, liked.raw] as const] : [];
    });
    const length = use.length !== undefined && this.wish.length !== '' ? [[use.length, this.wish.length] as const] : [];
    this.fill(sheet, [...Object.entries(use.fill), ...eased, ...length]);
    if (use.notes) this.note(sheet, use.notes);
    return sheet;
  }

  note(sheet: SheetId, notes: NonNullable<SheetUse['notes']>): void {
    const page = sheetById(this.book, sheet)!;
    const cells = Object.entries(notes).flatMap(([place, note]): CellChange[] => {
      const { top: row, left: col } = readArea(place)!;
      const cell = cellAt(page, row, col);
      return cell && cell.raw !== '' ? [{ row, col, cell: { ...cell, note } }] : [];
    });
    if (cells.length > 0) this.do({ do: 'setCells', sheet, cells });
  }

  /** What was not measured keeps the template's figure, and says so. */
  fill(sheet: SheetId, fills: readonly (readonly [place: string, raw: string])[]): void {
    const page = sheetById(this.book, sheet)!;
    const cells = fills.map(([place, raw]): CellChange => {
      const { top: row, left: col } = readArea(place)!;
      const before = cellAt(page, row, col);
      const measure = /^=([a-z][a-z ]*)$/.exec(raw)?.[1];
      const missing = measure !== undefined && !this.#had.has(measure);
      const cell: Cell = missing ? { ...before, raw: before?.raw ?? '', note: NOT_MEASURED } : { ...before, raw };
      return { row, col, cell };
    });
    if (cells.length > 0) this.do({ do: 'setCells', sheet, cells });
  }

  /** Her figures in the template of measures; what was not taken is left empty, to be filled in. */
  measures(): SheetId {
    const newest = newestOf(this.wish.person);
    const last = newest.reduce((day, { set }) => (set.day > day ? set.day : day), '');
    const by = newest.find(({ set }) => set.day === last)?.set.by ?? '';
    const template = shippedTemplate('measures');
    const sheet = this.sheet({ template: 'measures', name: 'Measures', about: 'her measures, each with its name', fill: { B1: this.wish.person.name, B17: last, B18: by, ...DIFFERENCES } });
    const place = new Map(template.names.map(({ name, area: [row, col] }) => [name, { row, col }]));
    const raws = new Map(newest.map(({ of, raw }) => [of, raw]));
    const page = sheetById(this.book, sheet)!;
    const cells = [...place].map(([name, { row, col }]): CellChange => ({ row, col, cell: { ...cellAt(page, row, col), raw: raws.get(name) ?? '' } }));
    const own = newest.filter(({ of }) => !place.has(of));
    const from = page.rows.length + 1;
    const ownCells = own.flatMap(({ of, raw }, index): CellChange[] => [
      { row: from + 1 + index, col: 0, cell: { raw: nameOfMeasure(of) } }, { row: from + 1 + index, col: 1, cell: { raw, input: true } },
    ]);
    if (own.length > 0) ownCells.unshift({ row: from, col: 0, cell: { raw: 'Measures of her own', look: { heading: true } } }, { row: from, col: 1, cell: { raw: '', look: { heading: true } } });
    this.do({ do: 'setCells', sheet, cells: [...cells, ...ownCells] });
    own.forEach(({ of }, index) => {
      const row = from + 1 + index;
      if (nameFault(of, this.book) === null) this.do({ do: 'setName', name: of, target: { kind: 'cells', area: { sheet, top: row, bottom: row, left: 1, right: 1 } } });
    });
    const put: PutMeasure[] = newest.map(({ of, raw }) => ({ of, raw, cell: `=Measures!B${(place.get(of)?.row ?? from + 1 + own.findIndex((each) => each.of === of)) + 1}` }));
    this.do({ do: 'setRecord', kind: 'person', id: this.wish.personId, data: { ...this.wish.person, put } });
    return sheet;
  }

  /** The list for the shop with nothing in it but the garment's own cloth: no need, store or price is the template's. */
  toBuy(garment: string, cloth: string | undefined): void {
    const sheet = this.sheet({ template: 'cloth-to-buy', name: 'To buy', about: 'cloth, thread, buttons', fill: {} });
    const page = sheetById(this.book, sheet)!;
    const cells = new Map<string, CellChange>();
    const change = (row: number, col: number, cell: Cell) => cells.set(`${row} ${col}`, { row, col, cell });
    for (const { area: [top, left, bottom] } of shippedTemplate('cloth-to-buy').names) {
      for (let row = top + 1; row <= bottom; row++) {
        const cell = cellAt(page, row, left + 2);
        if (cell && cell.raw !== '' && !cell.raw.startsWith('=')) change(row, left + 2, { ...cell, raw: lengthOf(cell.raw) ? '0 m' : '0' });
      }
    }
    page.rows.forEach((row, at) => row?.forEach((cell, col) => {
      if (cell?.look?.heading && cell.raw === 'Price') {
        for (let below = at + 1; cellAt(page, below, col)?.input; below++) change(below, col, { ...cellAt(page, below, col)!, raw: '' });
      }
    }));
    const main = page.rows.findIndex((row) => row?.[0]?.raw === 'Main cloth');
    const needed = cellAt(page, main, 2);
    if (needed) {
      change(main, 1, { ...cellAt(page, main, 1), raw: garment.toLowerCase() });
      change(main, 2, cloth ? { ...needed, raw: cloth } : { ...needed, raw: '0 m', note: 'Type here how much cloth the pattern’s envelope asks for.' });
    }
    this.do({ do: 'setCells', sheet, cells: [...cells.values()] });
  }

  chart(reading: ChartReading): void {
    this.do(chartSheetEdit(reading, { sheet: 'Size chart', name: 'chart' }, this.book).edit);
  }

  remember(lines: readonly string[]): void {
    const id = this.book.nextSheetId;
    const name = freeSheetName('To remember', this.book);
    this.do({ do: 'addSheet', at: this.book.sheets.length, sheet: { ...emptySheet(id, name), about: 'what carries over', widths: { 0: 560 } } });
    this.do({ do: 'setCells', sheet: id, cells: [
      { row: 0, col: 0, cell: { raw: `To remember for ${this.wish.person.name}`, look: { heading: true } } },
      // An apostrophe keeps a line that looks like a figure or a formula as text.
      ...lines.map((line, index): CellChange => ({ row: index + 1, col: 0, cell: { raw: /^[=+\-\d'¼-¾⅐-⅞]/.test(line) ? `'${line}` : line } })),
    ] });
  }
}

/** The chart's own words for bust, waist and hip; `undefined` where it has none. */
export function calledInChart(reading: Pick<ChartReading, 'measures'>, level: string): string | undefined {
  const names = reading.measures.filter(({ kind }) => kind !== 'heading').map(({ name }) => name.trim());
  const folded = names.map((name) => name.toLowerCase());
  const exact = folded.indexOf(level);
  if (exact >= 0) return names[exact];
  const near = folded.findIndex((name) => new RegExp(`\\b(full )?${level}\\b`).test(name) && !/\b(high|under|upper|top|length|to)\b/.test(name));
  return near >= 0 ? names[near] : undefined;
}

/** @throws when the garment is none of `GARMENTS` */
export function startBook(wish: StartWish): Book {
  const garment = GARMENTS.find(({ id }) => id === wish.garment);
  if (!garment) throw new Error(`There is no garment ${wish.garment}.`);
  const making = new Making(wish);
  const blank = making.book.sheets[0]!.id;
  making.measures();
  if (wish.chart) making.chart(wish.chart);
  if (garment.chart) making.sheet({ template: 'usual-values', name: 'Usual values', about: 'ease, allowances, needles: hers to change', fill: {} });
  const main = garment.sheets.map((use) => making.sheet(use));
  if (wish.chart) {
    const fitSheet = sheetNamed(making.book, 'Fit');
    const { chart } = wish;
    const called = [['bust', 'B3'], ['waist', 'C3'], ['hip', 'D3']] as const;
    if (fitSheet && garment.chart) {
      making.fill(fitSheet.id, called.flatMap(([level, place]) => {
        const name = garment.asks.includes(level) ? calledInChart(chart, level) : undefined;
        return name === undefined ? [] : [[place, name] as const];
      }));
    }
  }
  for (const use of MORE_SHEETS) if (wish.more.includes(use.template)) making.sheet(use);
  making.toBuy(garment.name, garment.cloth);
  if (wish.person.child) {
    making.sheet({
      template: 'child-notes', name: 'Child’s garment', about: 'cords, fire, small parts, growth: local rules and licensed practice decide',
      // An age that was not told is counted as 0: the most careful case.
      fill: { B2: wish.person.name, B4: wish.years, B5: '=bust' },
    });
  }
  if (wish.remember.length > 0) making.remember(wish.remember);
  making.do({ do: 'removeSheet', sheet: blank });
  // What she asked for comes first: it is what opens.
  main.forEach((sheet, to) => making.do({ do: 'moveSheet', sheet, to }));
  return making.book;
}
