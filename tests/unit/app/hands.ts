/**
 * A person at the workbook, without a page: her actions on a real desk with a
 * real engine, whose answers come late and joined as they do from a worker;
 * and a grid that keeps what it drew of a row for as long as the view says that
 * the row is the same.
 */
import { Clipboard } from '../../../src/app/clipboard.ts';
import { Desk } from '../../../src/app/desk.ts';
import { sheetView } from '../../../src/app/sheet-view.ts';
import { clearArea, pasteTable, setWidths, structure, toggleInput, toggleLook, turnSheet, typeInto } from '../../../src/app/wishes.ts';
import { toTsv } from '../../../src/grid/clipboard.ts';
import { textsOf } from '../../../src/grid/grid-clipboard.ts';
import { fillReach } from '../../../src/grid/fill-area.ts';
import { areaOf, goTo, groundOf, step, trimmed, wholeColumns, wholeRows, within, type Ground, type Reach, type Way } from '../../../src/grid/select.ts';
import type { SheetView } from '../../../src/grid/view.ts';
import type { Keeper } from '../../../src/keeping/index.ts';
import { Results, type ChangeSet, type Supervisor } from '../../../src/reckoning/index.ts';
import { EditRefused, emptySheet, fillEdit, freeSheetName, type Book, type Edit, type Effect, type Runs } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { said } from '../reckon/desk.ts';

/** One thing she does; the numbers say where and how much. */
export interface Action {
  readonly what: keyof typeof ACTIONS;
  readonly n: number;
  readonly m: number;
  readonly text: string;
}

/** As far down and across as anything is looked at. */
const DOWN = 60;
const ACROSS = 20;
const WAYS: readonly Way[] = ['up', 'down', 'left', 'right'];
const REACHES: readonly Reach[] = ['one', 'one', 'one', 'block', 'page'];

class LateEngine extends EventTarget {
  readonly engine = new Engine();
  state = 'ready';
  revision = 1;
  #waiting: Effect[] = [];

  constructor(book: () => Book, private readonly answer: (changes: ChangeSet) => void) {
    super();
    this.answer(this.engine.open(this.revision, book()));
  }

  apply(effects: readonly Effect[]): number {
    this.#waiting.push(...effects);
    return ++this.revision;
  }

  deliver(): void {
    if (this.#waiting.length === 0) return;
    const changes = this.engine.apply(this.revision, this.#waiting);
    this.#waiting = [];
    this.answer(changes);
  }
}

export class Hands {
  readonly desk: Desk;
  readonly #engine: LateEngine;
  readonly #root = new EventTarget();
  #clip: { readonly text: string } | null = null;
  /** What the grid has on the screen: each row as it was drawn, and what it depended on then. */
  #drawn = new Map<number, { readonly state: readonly unknown[]; readonly texts: readonly string[] }>();
  #drawnSheet = -1;

  constructor(book: Book) {
    this.desk = new Desk(book);
    const keeper = Object.assign(new EventTarget(), { state: { state: 'kept', at: '' }, keep: () => Promise.resolve() });
    const listeners: ((changes: ChangeSet) => void)[] = [];
    this.#engine = new LateEngine(() => this.desk.book, (changes) => listeners.forEach((each) => each(changes)));
    const engine = Object.assign(this.#engine, {
      addEventListener: (type: string, listener: (event: { changes: ChangeSet }) => void) => {
        if (type === 'changes') listeners.push((changes) => listener({ changes }));
      },
    });
    this.desk.attach(engine as unknown as Supervisor, keeper as unknown as Keeper);
    this.desk.results.apply(this.#engine.engine.open(0, book));
    new Clipboard().listen(this.#root, this.desk);
  }

  get view(): SheetView {
    return sheetView(this.desk.sheet, this.desk.results, this.desk.showAs, this.desk.waiting);
  }

  get ground(): Ground {
    return groundOf(this.view, () => 12);
  }

  do(action: Action): void {
    try {
      ACTIONS[action.what](this, action);
    } catch (error) {
      // A thing that cannot be done is said and leaves everything as it was.
      if (!(error instanceof EditRefused)) throw error;
    }
    this.#stayInside();
    this.#draw();
  }

  deliver(): void {
    this.#engine.deliver();
    this.#draw();
  }

  /** As the grid does: the active cell is one that shows. */
  #stayInside(): void {
    const { rows, cols } = this.ground;
    const inside = within(this.desk.selection, rows, cols);
    if (inside !== this.desk.selection) this.desk.select(inside);
  }

  /** As the grid does: only rows that depend on something new are drawn anew. */
  #draw(): void {
    const { view } = this;
    if (this.#drawnSheet !== view.id) this.#drawn.clear();
    this.#drawnSheet = view.id;
    for (let row = 0; row < DOWN; row++) {
      const state = view.rowState!(row);
      const before = this.#drawn.get(row);
      if (before && before.state.length === state.length && before.state.every((each, at) => each === state[at])) continue;
      this.#drawn.set(row, { state, texts: textsIn(view, row) });
    }
  }

  edit(edit: Edit): void {
    this.desk.do(edit);
  }

  send(type: string, detail: object): void {
    this.#root.dispatchEvent(new CustomEvent(type, { detail }));
  }

  copy(cut: boolean): void {
    const area = trimmed(areaOf(this.desk.selection), this.ground);
    if ((area.bottom - area.top + 1) * (area.right - area.left + 1) > 2_000) return;
    const text = toTsv(textsOf(this.view, area, this.ground));
    this.#clip = { text };
    this.send(cut ? 'tt-cut' : 'tt-copy', { area, text, data: null });
  }

  paste(): void {
    const text = this.#clip?.text ?? '2 1/4 in\t5\n=A1\tx';
    const table = text.split('\n').map((line) => line.split('\t'));
    this.send('tt-paste', { area: areaOf(this.desk.selection), text, table });
  }

  /** Where what is shown is not what the workbook, worked out from nothing, would show; and where the screen is not what the view says. */
  disagreements(): string[] {
    this.deliver();
    const { desk } = this;
    const fresh = new Results();
    fresh.apply(new Engine().open(1, desk.book));
    const found: string[] = [];
    for (const sheet of desk.book.sheets) {
      const [shown, due] = [desk.results, fresh].map((results) => sheetView(sheet, results, desk.showAs, false));
      for (let row = 0; row < DOWN; row++) {
        for (let col = 0; col < ACROSS; col++) {
          const place = `${sheet.name} ${row},${col} ${sheet.rows[row]?.[col]?.raw ?? ''}`;
          const [is, must] = [said(desk.results.at(sheet.id, row, col)), said(fresh.at(sheet.id, row, col))];
          if (is !== must) found.push(`${place}: the engine says ${is}, not ${must}`);
          if (wordsOf(shown!, row, col) !== wordsOf(due!, row, col)) found.push(`${place}: the view shows ${wordsOf(shown!, row, col)}, not ${wordsOf(due!, row, col)}`);
        }
      }
    }
    const { focus } = desk.selection;
    if (!this.ground.rows.has(focus.row) || !this.ground.cols.has(focus.col)) found.push(`the active cell ${focus.row},${focus.col} is hidden`);
    return [...found, ...this.stale()];
  }

  /** Where the screen is not what the view says. */
  stale(): string[] {
    const { view } = this;
    return [...this.#drawn].flatMap(([row, { texts }]) => textsIn(view, row).flatMap((text, col) => (
      text === texts[col] ? [] : [`${view.name} ${row},${col}: the screen shows ${texts[col]}, not ${text}`])));
  }
}

function wordsOf(view: SheetView, row: number, col: number): string {
  const cell = view.cell(row, col);
  return cell ? [cell.kind, cell.text, cell.also ?? '', cell.typed ?? false, cell.input, cell.strong ?? false, cell.heading ?? false, cell.note ?? ''].join('|') : '';
}

const textsIn = (view: SheetView, row: number): string[] => Array.from({ length: ACROSS }, (_, col) => wordsOf(view, row, col));

const ACTIONS = {
  move(hands: Hands, { n, m }: Action) {
    const { desk } = hands;
    const to = step(desk.selection.focus, WAYS[n % 4]!, REACHES[m % REACHES.length]!, hands.ground);
    // Not away from where anything is.
    if (to.row < DOWN - 10 && to.col < ACROSS - 4) desk.select(goTo(desk.selection, to, m % 7 === 0));
  },
  go(hands: Hands, { n, m }: Action) {
    const place = { row: n % 12, col: m % 6 };
    hands.desk.select({ anchor: place, focus: place });
  },
  select(hands: Hands, { n, m }: Action) {
    const { focus } = hands.desk.selection;
    hands.desk.select({ anchor: focus, focus: { row: Math.min(30, focus.row + n % 4), col: Math.min(12, focus.col + m % 3) } });
  },
  wholeRow: (hands: Hands, { n }: Action) => hands.desk.select(wholeRows(n % 10, n % 10, hands.ground)),
  wholeColumn: (hands: Hands, { n }: Action) => hands.desk.select(wholeColumns(n % 6, n % 6, hands.ground)),
  type: (hands: Hands, { text }: Action) => void typeInto(hands.desk, { sheet: hands.desk.sheetId, ...hands.desk.selection.focus }, text),
  clear: (hands: Hands) => clearArea(hands.desk, hands.desk.area),
  copy: (hands: Hands) => hands.copy(false),
  cut: (hands: Hands) => hands.copy(true),
  paste: (hands: Hands) => hands.paste(),
  pasteTable: (hands: Hands, { text }: Action) => pasteTable(hands.desk, [[text, '3 cm'], ['=A1+1 cm', text]], hands.desk.area),
  insertRows: (hands: Hands) => structureSmall(hands, 'insertRows'),
  removeRows: (hands: Hands) => structureSmall(hands, 'removeRows'),
  insertColumns: (hands: Hands) => structureSmall(hands, 'insertColumns'),
  removeColumns: (hands: Hands) => structureSmall(hands, 'removeColumns'),
  moveRows: (hands: Hands, { n, m }: Action) => hands.edit({ do: 'moveRows', sheet: hands.desk.sheetId, at: n % 8, count: 1 + m % 2, to: m % 10 }),
  fill(hands: Hands, { n, m }: Action) {
    const from = areaOf(hands.desk.selection);
    if (from.bottom - from.top > 5 || from.right - from.left > 5) return;
    const reach = fillReach(from, { row: Math.max(0, from.bottom + (n % 7) - 2), col: Math.max(0, from.right + (m % 5) - 2) });
    const sheet = hands.desk.sheetId;
    if (reach) hands.edit(fillEdit(hands.desk.book, { sheet, ...from }, { sheet, ...reach.to }));
  },
  hideRows: (hands: Hands, { n, m }: Action) => hands.edit({ do: 'setHidden', sheet: hands.desk.sheetId, axis: 'rows', runs: runs(n, m) }),
  filter(hands: Hands, { n, m }: Action) {
    const area = { top: 0, left: 0, bottom: 8, right: 5 };
    const filter = n % 4 === 0 ? null : { area, conditions: [{ col: 0, test: 'has' as const, text: 'a' }], hides: runs(n, m) };
    hands.edit({ do: 'setFilter', sheet: hands.desk.sheetId, filter });
  },
  hideColumns: (hands: Hands, { n, m }: Action) => hands.edit({ do: 'setHidden', sheet: hands.desk.sheetId, axis: 'columns', runs: runs(n % 4, m % 3) }),
  freeze: (hands: Hands, { n, m }: Action) => hands.edit({ do: 'setFrozen', sheet: hands.desk.sheetId, rows: n % 3, columns: m % 2 }),
  widths: (hands: Hands, { n }: Action) => setWidths(hands.desk, [{ col: n % 6, width: 60 + n % 90 }]),
  mark: (hands: Hands, { n }: Action) => (n % 2 ? toggleInput(hands.desk) : toggleLook(hands.desk, n % 3 ? 'strong' : 'heading')),
  name: (hands: Hands, { n }: Action) => hands.edit({ do: 'setName', name: ['waist', 'hip'][n % 2]!, target: n % 5 === 0 ? null : { area: { ...hands.desk.area, bottom: hands.desk.area.top, right: hands.desk.area.left }, kind: 'cells' } }),
  addSheet(hands: Hands) {
    const { desk } = hands;
    if (desk.book.sheets.length < 4) hands.edit({ do: 'addSheet', sheet: emptySheet(desk.book.nextSheetId, freeSheetName('More', desk.book)), at: desk.book.sheets.length });
  },
  removeSheet: (hands: Hands) => void (hands.desk.book.sheets.length > 2 && hands.edit({ do: 'removeSheet', sheet: hands.desk.sheetId })),
  turn: (hands: Hands, { n }: Action) => turnSheet(hands.desk, n % 2 ? 1 : -1),
  show: (hands: Hands, { n }: Action) => hands.edit({ do: 'setSettings', settings: { show: (['own', 'cm', 'in', 'both'] as const)[n % 4]!, inchStep: 8 } }),
  undo: (hands: Hands) => hands.desk.undo(),
  redo: (hands: Hands) => hands.desk.redo(),
  wait: (hands: Hands) => hands.deliver(),
};

/** Not a million rows because a whole column was selected. */
function structureSmall(hands: Hands, what: Parameters<typeof structure>[1]): void {
  const { top, left, bottom, right } = hands.desk.area;
  if (what.endsWith('Rows') ? bottom - top < 4 : right - left < 3) structure(hands.desk, what);
}

function runs(n: number, m: number): Runs {
  return n % 3 === 0 ? [] : [[n % 8, n % 8 + m % 3], [n % 8 + 5, n % 8 + 5]];
}

export const KINDS = Object.keys(ACTIONS) as readonly Action['what'][];
