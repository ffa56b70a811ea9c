/** The shelf, workbook files and what was set aside: what their dialogs are shown, and how their wishes are granted. */
import { html, type TemplateResult } from 'lit';
import type { BookWish, PartFile, SetAsidePanel, ShelfRow } from '../panels/index.ts';
import { claim, daysLeft, newBookId, putBack, type AsideFound, type Keeper, type Persistence, type Shelf, type ShelfBook } from '../keeping/index.ts';
import { EditRefused, MOST_FILE_BYTES, bookText, emptyBook, readBookText, type Book } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { FileCopy } from './file-copy.ts';
import { pickFile, saveToDisk } from './file-on-disk.ts';
import type { KeepScreens } from './keep-commands.ts';
import { whenInWords } from './kept.ts';
import { fileName, saveFile } from './save-file.ts';
import { summon } from './summon.ts';

interface Host {
  readonly renderRoot: HTMLElement | DocumentFragment;
  requestUpdate(): void;
}

export interface Keeping {
  readonly keeper: Keeper;
  readonly shelf: Shelf;
  /** Goes to another workbook of this device. */
  go(id: string): void;
}

const PROMISES: Readonly<Record<Persistence | 'not asked', string>> = {
  granted: 'The browser has promised not to clear these by itself. Clearing its data does: save copies as files now and then.',
  refused: 'The browser may clear these when the device runs short: save copies as files now and then.',
  unknown: 'Clearing the browser’s data clears these too: save copies as files now and then.',
  'not asked': 'Clearing the browser’s data clears these too: save copies as files now and then.',
};

export class KeepDialogs {
  #keeping: Keeping | null = null;
  #books: readonly ShelfBook[] = [];
  #aside: readonly AsideFound[] = [];
  #part: (PartFile & { readonly book: Book }) | null = null;
  #sentence = '';
  #copy: FileCopy | null = null;
  protection: Persistence | 'not asked' = 'not asked';

  constructor(private readonly host: Host, private readonly desk: () => Desk) {}

  use(keeping: Keeping): void {
    this.#keeping = keeping;
  }

  get keeping(): Keeping | null {
    return this.#keeping;
  }

  /**
   * Puts a workbook on the shelf and opens it in place of this one.
   *
   * @throws {EditRefused | KeepingTrouble} with a sentence, when nothing was done
   */
  async start(book: Book): Promise<void> {
    if (!this.#keeping) throw new EditRefused('The page is still opening. Try again in a moment.');
    // Before it stands on the shelf, so that asking again does not put it there twice.
    await this.#settled(this.#keeping);
    await this.#add(book);
  }

  get screens(): KeepScreens {
    return {
      openShelf: () => this.#open(),
      saveCopy: () => void this.#try(() => this.#save()),
      followFile: () => void this.#try((keeping) => this.#follow(keeping)),
      openFile: () => {
        this.#open((panel) => panel.chooseFile());
      },
      newBook: () => void this.#try(() => this.#new()),
      openSetAside: () => void this.#try(async (keeping) => {
        this.#aside = await keeping.keeper.aside();
        summon(this.host, 'tt-set-aside', (panel) => panel.open(), (sentence) => this.desk().say(sentence));
      }),
    };
  }

  render(): TemplateResult {
    return html`
      <tt-shelf .books=${this.#rows()} .sentence=${this.#sentence} .promise=${PROMISES[this.protection]} .partFile=${this.#part}></tt-shelf>
      <tt-set-aside .sentence=${this.#sentence} .rows=${this.#aside.map(({ key, at, problems, json, entries }) => ({ key, when: whenInWords(at), problems, whole: json !== null, changes: entries.length }))}></tt-set-aside>
    `;
  }

  listen(root: EventTarget): void {
    const on = <T>(type: string, handle: (detail: T, keeping: Keeping) => Promise<void>) => root.addEventListener(type, (event) => {
      void this.#try((keeping) => handle((event as CustomEvent<T>).detail, keeping));
    });
    on<{ id: string; wish: BookWish }>('tt-book', ({ id, wish }, keeping) => this.#grant(id, wish, keeping));
    on<{ id: string; title: string; person: string }>('tt-book-rename', async ({ id, title, person }, { shelf }) => {
      const desk = this.desk();
      if (id !== desk.book.id) await this.#claimed(id, () => shelf.rename(id, title, person));
      else if (!desk.do({ do: 'setTitle', title, person }) && desk.said) throw new EditRefused(desk.said);
    });
    on('tt-book-new', () => this.#new());
    on('tt-book-save', () => this.#save());
    on<{ file: File }>('tt-book-file', ({ file }) => this.#openFile(file));
    on<{ take: boolean }>('tt-part-file', async ({ take }) => {
      const part = this.#part;
      this.#part = null;
      if (take && part) await this.#add(part.book);
    });
    on<{ at: number; wish: 'put-back' | 'save' | 'forget' }>('tt-aside', ({ at, wish }, keeping) => this.#grantAside(at, wish, keeping));
  }

  /** A file that was dropped on the page. */
  takeFile(file: File): void {
    void this.#try(() => this.#openFile(file));
  }

  /** Puts it on the shelf as one more workbook, or says why not; what is here is never touched. */
  async #openFile(file: File): Promise<void> {
    this.#part = null;
    if (file.size > MOST_FILE_BYTES) {
      throw new EditRefused(`“${file.name}” is too large to be a workbook (${Math.round(file.size / 1e6).toLocaleString('en-GB')} MB; the most is ${MOST_FILE_BYTES / 1e6} MB).`);
    }
    const { book, problems } = readBookText(await file.text());
    if (!book) throw new EditRefused(`“${file.name}” was not opened. ${problems.join(' ')}`);
    if (problems.length > 0) {
      this.#part = { name: `“${file.name}”`, problems, book };
      this.#open();
    } else await this.#add(book);
  }

  /** Runs what may fail, and says so where she is looking. */
  async #try(work: (keeping: Keeping) => Promise<void>): Promise<void> {
    this.#sentence = '';
    try {
      if (!this.#keeping) throw new EditRefused('The page is still opening. Try again in a moment.');
      await work(this.#keeping);
      await this.#refresh();
    } catch (error) {
      this.#say(error instanceof EditRefused ? error.sentence : error instanceof Error ? error.message : String(error));
    }
    this.host.requestUpdate();
  }

  async #grant(id: string, wish: BookWish, keeping: Keeping): Promise<void> {
    const { shelf } = keeping;
    switch (wish) {
      case 'open': return this.#go(id, keeping);
      case 'copy': {
        await this.#settled(keeping);
        const { problems } = await shelf.copy(id);
        if (problems.length > 0) this.#say(`The copy was made without what could not be read. ${problems.join(' ')}`);
        return;
      }
      case 'put-away': return shelf.putAway(id);
      case 'take-out': return shelf.takeOut(id);
      case 'take-back': return shelf.takeBack(id);
      case 'remove': return this.#claimed(id, () => shelf.remove(id));
      case 'throw-away':
        if (id !== this.desk().book.id) return this.#claimed(id, () => shelf.throwAway(id));
        return this.#throwOpenAway(id, keeping);
    }
  }

  /** The open workbook goes into the bin, and another is opened in its place. */
  async #throwOpenAway(id: string, keeping: Keeping): Promise<void> {
    if (this.desk().reading !== null) throw new EditRefused(`This workbook cannot be deleted here: ${this.desk().reading}.`);
    await this.#settled(keeping);
    const next = (await keeping.shelf.list()).find((book) => book.id !== id && book.binnedAt === null && !book.putAway);
    const other = next?.id ?? await keeping.shelf.add(emptyBook(newBookId()));
    await keeping.shelf.throwAway(id);
    keeping.go(other);
  }

  async #grantAside(at: number, wish: 'put-back' | 'save' | 'forget', { keeper }: Keeping): Promise<void> {
    const found = this.#aside[at];
    if (!found) return;
    const { book: open } = this.desk();
    if (wish === 'save') {
      saveFile(fileName(`${open.title} set aside`, 'json'), new Blob([JSON.stringify(found, null, 1)], { type: 'application/json' }));
    } else if (wish === 'forget') {
      if (found.key !== null) await keeper.forgetAside(found.key);
      this.#aside = await keeper.aside();
      this.desk().setAsideCount(this.#aside.length);
    } else {
      const { book, problems } = putBack(found, open);
      if (!book) throw new EditRefused(`Nothing of it can be used. ${problems.join(' ')} Save it as a file instead.`);
      this.#get<SetAsidePanel>('tt-set-aside').close();
      this.#part = { name: 'What was set aside', problems: problems.length > 0 ? problems : ['It could be read whole this time.'], book: { ...book, title: `${book.title} (put back)`.slice(0, 200) } };
      this.#open();
    }
  }

  async #new(): Promise<void> {
    await this.#add(emptyBook(newBookId()));
  }

  async #add(book: Book): Promise<void> {
    const keeping = this.#keeping!;
    await this.#go(await keeping.shelf.add(book), keeping);
  }

  async #save(): Promise<void> {
    const { book } = this.desk();
    const name = await saveToDisk(fileName(book.title, 'json'), new Blob([bookText(book)], { type: 'application/json' }));
    if (name === null) return;
    this.desk().say(`Saved a copy as ${name}.`);
    await this.#keeping?.shelf.savedAsFile(book.id).catch(() => undefined);
  }

  /** From now on, as long as this page is open, a file follows what she does. */
  async #follow({ shelf }: Keeping): Promise<void> {
    const desk = this.desk();
    const handle = await pickFile(fileName(desk.book.title, 'json'));
    if (handle === null) return;
    if (handle === 'none') throw new EditRefused('This browser does not let a page keep hold of a file. Save copies instead.');
    this.#copy?.end();
    const copy = new FileCopy(handle, () => desk.book);
    this.#copy = copy;
    desk.addEventListener('change', () => copy.changed());
    let said = false;
    copy.addEventListener('state', () => {
      const { state } = copy;
      if (state.state === 'failed') desk.say(`${state.name} could not be brought up to date: ${state.why} What you type is kept on this device all the same; choose the file anew.`);
      else {
        void shelf.savedAsFile(desk.book.id).catch(() => undefined);
        if (!said) desk.say(`${state.name} is up to date, and follows what you do until this page is closed.`);
      }
      said = state.state === 'following';
    });
    await copy.write();
  }

  async #go(id: string, keeping: Keeping): Promise<void> {
    await this.#settled(keeping);
    keeping.go(id);
  }

  /** Nothing is left behind in this page's memory. */
  async #settled({ keeper }: Keeping): Promise<void> {
    const { state } = keeper;
    if (state.state === 'keeping') await keeper.settled();
    const now = keeper.state;
    if (now.state === 'not kept' && now.waiting > 0) throw new EditRefused(`What you typed last is not kept yet. ${now.sentence} Then go on; or save a copy as a file first.`);
  }

  /** Does something to a workbook that no tab has open. */
  async #claimed(id: string, work: () => Promise<void>): Promise<void> {
    const held = await claim(id, () => undefined);
    try {
      if (held.mode === 'reading') throw new EditRefused('That workbook is open in another tab: do it there, or close that tab first.');
      await work();
    } finally {
      await held.release();
    }
  }

  #open(then?: (panel: HTMLElementTagNameMap['tt-shelf']) => void): void {
    summon(this.host, 'tt-shelf', (panel) => {
      panel.open();
      then?.(panel);
    }, (sentence) => this.desk().say(sentence));
    void this.#try(async () => undefined);
  }

  async #refresh(): Promise<void> {
    if (this.#keeping) this.#books = await this.#keeping.shelf.list();
  }

  #rows(): ShelfRow[] {
    const { book } = this.desk();
    return this.#books.map(({ id, title, person, changedAt, savedAt, putAway, binnedAt, picture }) => ({
      id, picture, open: id === book.id,
      // The card is as it was when the shelf was opened.
      title: id === book.id ? book.title : title, person: id === book.id ? book.person : person,
      changed: whenInWords(changedAt), saved: savedAt === null ? '' : whenInWords(savedAt),
      place: binnedAt !== null ? 'bin' : putAway ? 'away' : 'shelf',
      daysLeft: binnedAt === null ? 0 : daysLeft(binnedAt),
    }));
  }

  /** In the dialog, and at the foot of the page for when there is none. */
  #say(sentence: string): void {
    this.#sentence = sentence;
    this.desk().say(sentence);
  }

  #get<T extends Element>(tag: string): T {
    return this.host.renderRoot.querySelector<T>(tag)!;
  }
}
