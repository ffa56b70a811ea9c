/**
 * The state of the open workbook on the page, and the one way to change it.
 *
 * A command or a component asks for an edit; `do` applies it to the workbook at
 * once, hands it to keeping (so that it is kept) and to the engine (so that
 * results follow), and says `change`. Everything on the screen is drawn from here.
 */
import {
  EditRefused, NO_HISTORY, apply, entryOf, historyAfter, namesLost, record, redo, undo,
  type Applied, type Area, type Book, type Edit, type Effect, type History, type HistoryStep, type LostName, type Sheet, type SheetId, type Step,
} from '../workbook/index.ts';
import { Results, type ChangeSet, type SheetChanges, type Supervisor } from '../reckoning/index.ts';
import type { KeepState, Keeper } from '../keeping/index.ts';
import type { Selection } from '../grid/index.ts';
import type { ShowAs } from '../quantities/index.ts';

/** Where the selection is, sheet by sheet, so that coming back to a sheet comes back to the same cell. */
const TOP_LEFT: Selection = { anchor: { row: 0, col: 0 }, focus: { row: 0, col: 0 } };

/** An edit would take the cells from names. Prevented by whoever will do it, or not, once it is known whether it is wanted. */
export class LossEvent extends Event {
  constructor(readonly edit: Edit, readonly lost: readonly LostName[]) {
    super('loss', { cancelable: true });
  }
}

export class Desk extends EventTarget {
  book: Book;
  history: History = NO_HISTORY;
  /** Everything that was done, undone and redone, in order: what the history panel shows. */
  steps: readonly Step[] = [];
  readonly results = new Results();
  sheetId: SheetId;
  /** Why the workbook can only be read here, or `null`. */
  reading: string | null = null;
  /** The same as a sentence, with what to do. */
  readingSentence = '';
  /** How many things of this workbook could not be read and were set aside. */
  setAside = 0;
  keepState: KeepState = { state: 'keeping', waiting: 0 };
  /** Milliseconds the engine took for the last change. */
  took = 0;
  /** The last thing worth saying aloud: a refusal, or what was just done. */
  said = '';

  #selections = new Map<SheetId, Selection>();
  #engine: Supervisor | null = null;
  #keeper: Keeper | null = null;
  /** The revision that the last edit led to, as the engine counts them. */
  #told = 0;

  constructor(book: Book) {
    super();
    this.book = book;
    this.sheetId = book.sheets[0]!.id;
  }

  /** The engine and the keeper come after the first paint; edits made before are in the book they start from. */
  attach(engine: Supervisor, keeper: Keeper): void {
    this.#engine = engine;
    this.#keeper = keeper;
    engine.addEventListener('changes', ({ changes }) => this.#receive(changes));
    engine.addEventListener('state', () => this.#changed());
    keeper.addEventListener('state', () => {
      this.keepState = keeper.state;
      this.#changed();
    });
    this.keepState = keeper.state;
    this.#changed();
  }

  get engine(): Supervisor | null {
    return this.#engine;
  }

  /** True while the engine has not answered the last edit, so that a formula without a result may yet get one. */
  get waiting(): boolean {
    return this.results.revision < this.#told;
  }

  get sheet(): Sheet {
    return this.book.sheets.find((sheet) => sheet.id === this.sheetId) ?? this.book.sheets[0]!;
  }

  get selection(): Selection {
    return this.#selections.get(this.sheetId) ?? TOP_LEFT;
  }

  /** The selected rectangle. */
  get area(): Area {
    const { anchor, focus } = this.selection;
    return {
      sheet: this.sheetId,
      top: Math.min(anchor.row, focus.row), bottom: Math.max(anchor.row, focus.row),
      left: Math.min(anchor.col, focus.col), right: Math.max(anchor.col, focus.col),
    };
  }

  get showAs(): ShowAs {
    const { show, inchStep, decimalMark } = this.book.settings;
    return { system: show, inchStep, ...(decimalMark && { decimalMark }) };
  }

  select(selection: Selection, sheet: SheetId = this.sheetId): void {
    this.sheetId = sheet;
    this.#selections.set(sheet, selection);
    this.#changed();
  }

  selectArea(area: Area): void {
    this.select({ anchor: { row: area.bottom, col: area.right }, focus: { row: area.top, col: area.left } }, area.sheet);
  }

  openSheet(sheet: SheetId): void {
    this.sheetId = sheet;
    this.#changed();
  }

  /** Applies an edit; false, with a sentence said, when it cannot be done. */
  do(edit: Edit): boolean {
    return !this.#wouldLose(edit) && this.doSurely(edit);
  }

  /** As `do`, though names lose their cells. */
  doSurely(edit: Edit): boolean {
    const step = this.#apply(edit, (before, applied, at) => ({ way: 'done', at, entry: entryOf(edit, before, applied, at) }));
    if (!step) return false;
    this.history = record(this.history, step.entry);
    this.#changed();
    return true;
  }

  undo(): void {
    this.#travel(undo(this.history), 'undone');
  }

  redo(): void {
    this.#travel(redo(this.history), 'redone');
  }

  /** What was done before the page was opened, once it has been read: it can be looked at and undone like the rest. */
  remember(steps: readonly Step[]): void {
    if (steps.length === 0) return;
    this.steps = [...steps, ...this.steps];
    this.history = historyAfter(this.steps);
    this.#changed();
  }

  /** After trouble with keeping: at once instead of by and by; on top of what another tab wrote, if it did. */
  tryKeeping(): void {
    const keeper = this.#keeper;
    if (this.keepState.state !== 'not kept' || !keeper) return;
    if (this.keepState.why !== 'elsewhere') {
      keeper.retry();
      return;
    }
    keeper.load(this.book.id).then(async (loaded) => {
      if (loaded) this.replace(loaded.book);
      if (loaded?.problems.length) this.say(loaded.problems.join(' '));
      this.remember(await keeper.steps());
    }, (error: unknown) => this.say(error instanceof Error ? error.message : String(error)));
  }

  /** What was worked out before the page was opened, of the same workbook, until the engine answers. */
  showLast(sheets: readonly SheetChanges[]): void {
    this.results.showLast(sheets);
    this.#changed();
  }

  setAsideCount(count: number): void {
    this.setAside = count;
    this.#changed();
  }

  /** @param sentence what to say when she tries to change something all the same */
  setReading(why: string | null, sentence = `Nothing can be changed here: ${why}.`): void {
    this.reading = why;
    this.readingSentence = why === null ? '' : sentence;
    this.#changed();
  }

  say(sentence: string): void {
    this.said = sentence;
    this.#changed();
  }

  /** Puts another workbook on the desk: the one that was kept, after another tab let go of it. */
  replace(book: Book): void {
    this.book = book;
    this.history = NO_HISTORY;
    this.steps = [];
    if (!book.sheets.some((sheet) => sheet.id === this.sheetId)) this.sheetId = book.sheets[0]!.id;
    this.#engine?.open();
    this.#changed();
  }

  /** True when names would lose their cells and whoever listens asks about it first. */
  #wouldLose(edit: Edit): boolean {
    if (this.reading) return false;
    const lost = namesLost(edit, this.book);
    return lost.length > 0 && !this.dispatchEvent(new LossEvent(edit, lost));
  }

  #travel(step: HistoryStep | null, way: 'undone' | 'redone'): void {
    if (!step || !this.#apply(step.edit, (_, __, at) => ({ way, at, entry: step.entry }))) return;
    this.history = step.history;
    const { entry } = step;
    this.said = `${way === 'undone' ? 'Undone' : 'Done again'}: ${entry.label}`;
    const { area } = entry;
    if (area && this.book.sheets.some((sheet) => sheet.id === area.sheet)) this.selectArea(area);
    this.#changed();
  }

  #apply(edit: Edit, stepOf: (before: Book, applied: Applied, at: string) => Step): Step | null {
    if (this.reading) {
      this.say(this.readingSentence);
      return null;
    }
    try {
      const before = this.book;
      const applied = apply(edit, before);
      if (applied.book === before) return null;
      this.book = applied.book;
      if (!this.book.sheets.some((sheet) => sheet.id === this.sheetId)) this.sheetId = this.book.sheets[0]!.id;
      this.said = '';
      this.#tellEngine(applied.effects);
      const step = stepOf(before, applied, new Date().toISOString());
      this.steps = [...this.steps, step];
      void this.#keeper?.keep(edit, this.book, step);
      return step;
    } catch (error) {
      if (!(error instanceof EditRefused)) throw error;
      this.say(error.sentence);
      return null;
    }
  }

  #tellEngine(effects: readonly Effect[]): void {
    if (!effects.length || !this.#engine) return;
    this.#told = this.#engine.apply(effects);
    this.results.shift(this.#told, effects);
  }

  #receive(changes: ChangeSet): void {
    if (!this.results.apply(changes)) return;
    this.took = changes.took;
    this.dispatchEvent(new Event('results'));
    this.#changed();
  }

  #changed(): void {
    this.dispatchEvent(new Event('change'));
  }
}
