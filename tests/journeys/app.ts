/**
 * The app as a person has it: its own page in a frame, under its own content
 * security policy, worked by real key presses. Everything a journey does or
 * reads is said in her words: a cell's address, a command's name, a button's.
 *
 * A journey fails when the page broke its policy, threw, or asked the network
 * for anything but its own code: see `expectNoTrouble`.
 */
import { expect, waitUntil } from '@open-wc/testing';
import { sendKeys, sendMouse, setViewport } from '@web/test-runner-commands';
import { LATER } from '../../src/panels/later.ts';
import { press } from './keys.ts';
import { columnLetters, isOwnCode, nameOf, ownText, words } from './words.ts';

export { press } from './keys.ts';
export { spaced, words } from './words.ts';

export interface SavedFile {
  readonly name: string;
  readonly blob: Blob;
}

/** Tall enough that every row of a template is in the document. */
const SCREEN = { width: 1400, height: 1300 };
/** On a busy machine the first sheet takes its time. */
const PATIENCE = { timeout: 30_000, interval: 15 };
const MOST_TABS = 300;

/** Waits for what comes by itself, as long as a busy machine may need. */
export const soon = (ready: () => unknown, otherwise: string): Promise<void> => waitUntil(() => Boolean(ready()), otherwise, PATIENCE);

/** Nothing is kept on the device: the app starts as for the first time. */
async function forgetEverything(): Promise<void> {
  localStorage.removeItem('tape-and-tally theme');
  await new Promise<void>((resolve, reject) => {
    const gone = indexedDB.deleteDatabase('tape-and-tally');
    gone.onsuccess = () => resolve();
    gone.onerror = () => reject(gone.error ?? new Error('the storage could not be emptied'));
  });
}

export class App {
  readonly troubles: string[] = [];
  readonly saved: SavedFile[] = [];

  private constructor(readonly frame: HTMLIFrameElement) {}

  /** Opens the app on a device that has never seen it. */
  static async open(): Promise<App> {
    for (const frame of document.querySelectorAll('iframe')) frame.remove();
    await forgetEverything();
    return App.openTab();
  }

  /** Opens the app once more, as in another tab of the same browser. */
  static async openTab(): Promise<App> {
    await setViewport(SCREEN);
    const frame = document.createElement('iframe');
    frame.title = 'The app';
    Object.assign(frame.style, { position: 'fixed', inset: '0', width: '100%', height: '100%', border: '0' });
    document.body.append(frame);
    const app = new App(frame);
    await app.#load(() => { frame.src = '/src/'; });
    return app;
  }

  async reload(): Promise<void> {
    await this.#load(() => this.window.location.reload());
  }

  /** Closes the tab. */
  close(): void {
    this.frame.remove();
  }

  // The page and its parts.

  get window(): Window & typeof globalThis {
    return this.frame.contentWindow as Window & typeof globalThis;
  }

  get page(): ShadowRoot {
    return this.window.document.querySelector('tt-app')!.shadowRoot!;
  }

  part<T extends Element = HTMLElement>(selector: string, inside: ParentNode = this.page): T {
    const found = inside.querySelector<T>(selector);
    if (!found) throw new Error(`The page has no ${selector}.`);
    return found;
  }

  /** Inside one of the page's components. */
  inside(tag: string): ShadowRoot {
    return this.part(tag).shadowRoot!;
  }

  async #load(begin: () => void): Promise<void> {
    const before = this.window.document;
    begin();
    await waitUntil(() => this.window?.document && this.window.document !== before && this.window.location.pathname === '/src/', 'the page does not open', { ...PATIENCE, interval: 1 });
    const { window } = this;
    window.addEventListener('error', (event) => this.troubles.push(`error: ${event.message}`));
    window.addEventListener('unhandledrejection', (event) => this.troubles.push(`rejected: ${String(event.reason)}`));
    window.addEventListener('securitypolicyviolation', (event) => this.troubles.push(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber} ${event.sample}`));
    window.addEventListener('click', (event) => void this.#catchFile(event), true);
    try {
      await soon(() => window.document.querySelector('tt-app')?.shadowRoot?.querySelector('tt-grid'), 'the app does not start');
      await soon(() => /^kept|only to be read/.test(this.header), 'the workbook is not kept');
      await soon(() => (this.part<HTMLElement & { cards: readonly unknown[] }>('tt-entry-line')).cards.length > 0, 'the functions are not known');
      await soon(() => Object.keys(LATER).every((tag) => window.customElements.get(tag)), 'the panels do not come');
      await this.settled();
    } catch (error) {
      throw new Error([error instanceof Error ? error.message : String(error), ...this.troubles].join('\n'));
    }
    new window.PerformanceObserver((list) => {
      for (const { name } of list.getEntries()) if (!isOwnCode(name)) this.troubles.push(`network: ${name}`);
    }).observe({ type: 'resource', buffered: true });
  }

  async #catchFile(event: MouseEvent): Promise<void> {
    const link = event.composedPath()[0] as HTMLAnchorElement;
    if (link.localName !== 'a' || !link.hasAttribute('download')) return;
    event.preventDefault();
    // By the test's own page: the app's may not connect to anything.
    this.saved.push({ name: link.download, blob: await (await fetch(link.href)).blob() });
  }

  expectNoTrouble(): void {
    if (this.troubles.length) throw new Error(`The page did what it must not, ${this.troubles.length} times:\n${this.troubles.slice(0, 5).join('\n')}`);
  }

  // What is said.

  /** All the words of a component, shown or not. */
  read(tag: string): string {
    return words(this.inside(tag).textContent);
  }

  get header(): string {
    return words(this.part('.whom').textContent);
  }

  get said(): string {
    return words(this.part('.aloud').textContent);
  }

  get sheetNames(): string[] {
    return [...this.inside('tt-sheet-list').querySelectorAll('ul[aria-labelledby=sheets] button')].map(ownText);
  }

  get openSheetName(): string {
    return ownText(this.part('button[aria-current]', this.inside('tt-sheet-list')));
  }

  /** Everything is worked out and drawn. */
  async settled(): Promise<void> {
    const drawn = () => new Promise((resolve) => setTimeout(resolve, 20));
    await drawn();
    await soon(() => words(this.part('.took').textContent).startsWith('Worked out') && !this.inside('tt-grid').querySelector('.cell.waiting'), 'the results do not come');
    await drawn();
  }

  /** Everything is on the disk. */
  async kept(): Promise<void> {
    await soon(() => /^kept (at .* )?on this device/.test(this.header), 'it is not kept');
  }

  // Keys.

  /** The control that has the focus, through every shadow. */
  get focused(): Element | null {
    let at: Element | null = this.window.document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at;
  }

  get focusInCells(): boolean {
    const at = this.focused;
    return at?.localName === 'textarea' && at.getRootNode() === this.inside('tt-grid');
  }

  #needCells(): void {
    if (!this.focusInCells) throw new Error(`The focus is not in the cells but on ${this.focused?.outerHTML.slice(0, 200) ?? 'nothing'}.`);
  }

  async press(...keys: string[]): Promise<void> {
    await press(...keys);
    await this.settled();
  }

  /** Goes from control to control until one is called that, or begins so. */
  async tabTo(name: string, { back = false } = {}): Promise<Element> {
    const seen: string[] = [];
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      await press(back ? 'Shift+Tab' : 'Tab');
      const at = this.focused;
      if (at && nameOf(at).startsWith(name)) return at;
      seen.push(at ? nameOf(at) : '');
    }
    throw new Error(`Tab does not come to “${name}”, only to ${[...new Set(seen)].join(' | ')}.`);
  }

  /** By the mouse: the only way back from another window. */
  async click(place: string): Promise<void> {
    const cell = this.cell(place);
    if (!cell) throw new Error(`${place} is not in view.`);
    const { left, top, width, height } = cell.getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
    await this.settled();
    this.#needCells();
  }

  /** By the field at the left of the entry line: an address or a name. */
  async go(place: string): Promise<void> {
    this.#needCells();
    await press('Escape');
    for (let steps = 0; this.focused?.id !== 'where' && steps < 3; steps++) await press('Shift+Tab');
    expect(this.focused?.id, 'at most three steps back from the cells is the field for a place').to.equal('where');
    await sendKeys({ type: place });
    await this.press('Enter');
    this.#needCells();
  }

  /** Types into the active cell and goes on with Enter. */
  async type(text: string, end = 'Enter'): Promise<void> {
    this.#needCells();
    await sendKeys({ type: text });
    await this.press(end);
  }

  async put(place: string, text: string): Promise<void> {
    await this.go(place);
    await this.type(text);
  }

  /** Texts down a column, or across rows when there is more than one in a line. */
  async fill(place: string, rows: readonly (readonly string[])[]): Promise<void> {
    await this.go(place);
    for (const row of rows) {
      for (const [at, text] of row.entries()) await this.type(text, at === row.length - 1 ? 'Enter' : 'Tab');
    }
  }

  /** By the list of commands. */
  async run(command: string): Promise<void> {
    await press('Control+.');
    const list = this.inside('tt-command-list');
    await soon(() => this.part<HTMLDialogElement>('dialog', list).open, 'the list of commands does not open');
    await sendKeys({ type: command.replace(/…$/, '') });
    await soon(() => this.part('[role=option][aria-selected=true] span', list).textContent === command, `the list does not offer “${command}”`);
    await this.press('Enter');
  }

  async openSheet(name: string): Promise<void> {
    for (let turns = this.sheetNames.length; this.openSheetName !== name && turns > 0; turns--) await press('Alt+PageDown');
    expect(this.openSheetName).to.equal(name);
    await this.settled();
  }

  /** Chooses a file: the picker itself belongs to the browser. */
  async choose(tag: string, content: BlobPart, name: string): Promise<void> {
    const input = this.part<HTMLInputElement>('input[type=file]', this.inside(tag));
    const files = new DataTransfer();
    files.items.add(new File([content], name));
    input.files = files.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
    await this.settled();
  }

  async nextFile(act: () => Promise<unknown>): Promise<SavedFile> {
    const before = this.saved.length;
    await act();
    await soon(() => this.saved.length > before, 'no file is saved');
    return this.saved.at(-1)!;
  }

  // Cells.

  /** What is in the active cell as it was typed, by the entry line. */
  get typed(): string {
    return this.part<HTMLTextAreaElement>('textarea', this.inside('tt-entry-line')).value;
  }

  /** The sentence below the entry line. */
  get remark(): string {
    return words(this.part('#under', this.inside('tt-entry-line')).textContent);
  }

  /** Where the active cell is, by the entry line. */
  get active(): string {
    return this.part<HTMLInputElement>('#where', this.inside('tt-entry-line')).value;
  }

  /** The element of a cell; `null` when it is not in the document. */
  cell(place: string): Element | null {
    const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(place)!;
    const col = [...letters!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
    return this.inside('tt-grid').querySelector(`[role=row][aria-rowindex="${Number(row) + 1}"] [role=gridcell][aria-colindex="${col + 1}"]`);
  }

  /** A cell's text as it is shown; for an error its sentence. The cell must be in view. */
  shown(place: string): string {
    const cell = this.cell(place);
    if (!cell) throw new Error(`${place} is not in view.`);
    const copy = cell.cloneNode(true) as Element;
    for (const mark of copy.querySelectorAll('i')) mark.remove();
    return words(copy.textContent);
  }

  /** What a screen reader says of a cell. */
  spoken(place: string): string {
    return this.cell(place)?.getAttribute('aria-label') ?? this.shown(place);
  }

  /** The filled cells in view by address, as they are shown. */
  texts(): Record<string, string> {
    const found: Record<string, string> = {};
    for (const row of this.inside('tt-grid').querySelectorAll('[role=row]')) {
      const number = Number(row.getAttribute('aria-rowindex')) - 1;
      for (const cell of row.querySelectorAll('[role=gridcell].full')) {
        const place = `${columnLetters(Number(cell.getAttribute('aria-colindex')) - 2)}${number}`;
        found[place] = this.shown(place);
      }
    }
    return found;
  }

  /** Sentences of the cells in view that have no result. */
  errors(): Record<string, string> {
    return Object.fromEntries([...this.inside('tt-grid').querySelectorAll('[role=gridcell].error')].map((cell) => {
      const place = `${columnLetters(Number(cell.getAttribute('aria-colindex')) - 2)}${Number(cell.closest('[aria-rowindex]')!.getAttribute('aria-rowindex')) - 1}`;
      return [place, this.shown(place)];
    }));
  }

  /** The texts of these sheets. */
  async everything(sheets: readonly string[] = this.sheetNames): Promise<Record<string, Record<string, string>>> {
    const all: Record<string, Record<string, string>> = {};
    const back = this.openSheetName;
    for (const name of sheets) {
      await this.openSheet(name);
      all[name] = this.texts();
    }
    await this.openSheet(back);
    return all;
  }
}
