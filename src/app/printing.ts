/**
 * Paper. What makes it is a module of its own, fetched as soon as the page has
 * time: a browser that is about to print waits for nothing. Asked by its keys
 * before, it waits until there is paper and a result in every cell; asked
 * otherwise, it prints a sentence and not the screen.
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Printed } from '../panels/index.ts';
import { LATER } from '../panels/later.ts';
import type { Desk } from './desk.ts';
import type { PaperDesk } from './paper-desk.ts';
import type { PrintScreens } from './print-commands.ts';
import { NOT_FETCHED } from './summon.ts';

/** At the latest, in milliseconds; and as long as keys may have to wait for the first results. */
const SOON = 1000;
const PATIENCE = 15_000;

const NOT_YET = `@media print {
  body > * { display: none !important; }
  body::before { content: "The workbook was not ready to be printed yet. Close this and print again."; font: 12pt sans-serif; color: #000; }
}`;

type Host = ReactiveControllerHost & EventTarget;

export class Printing implements ReactiveController {
  #paper: PaperDesk | null = null;
  #fetching: Promise<PaperDesk> | null = null;
  #connected = false;
  #soon: ReturnType<typeof setTimeout> | undefined;
  readonly #notYet = new CSSStyleSheet();

  constructor(private readonly host: Host, private readonly desk: () => Desk) {
    host.addController(this);
    this.#notYet.replaceSync(NOT_YET);
  }

  hostConnected(): void {
    this.#connected = true;
    document.adoptedStyleSheets.push(this.#notYet);
    window.addEventListener('beforeprint', this.#before);
    window.addEventListener('afterprint', this.#after);
    window.addEventListener('keydown', this.#key, { capture: true });
    this.host.addEventListener('tt-print-list', this.#list);
    this.host.addEventListener('tt-print-made', this.#made);
    this.#soon = setTimeout(() => void this.#fetch().catch(() => undefined), SOON);
  }

  hostDisconnected(): void {
    this.#connected = false;
    this.#ready();
    window.removeEventListener('beforeprint', this.#before);
    window.removeEventListener('afterprint', this.#after);
    window.removeEventListener('keydown', this.#key, { capture: true });
    this.host.removeEventListener('tt-print-list', this.#list);
    this.host.removeEventListener('tt-print-made', this.#made);
    clearTimeout(this.#soon);
    this.#paper?.remove();
    this.#paper = this.#fetching = null;
  }

  get screens(): PrintScreens {
    return {
      openPrint: (what) => {
        this.#fetch().then((paper) => paper.open(what), () => this.desk().say(NOT_FETCHED));
      },
    };
  }

  #fetch(): Promise<PaperDesk> {
    this.#fetching ??= this.#make().catch((error: unknown) => {
      this.#fetching = null;
      throw error;
    });
    return this.#fetching;
  }

  async #make(): Promise<PaperDesk> {
    const [{ PaperDesk }] = await Promise.all([import('./paper-desk.ts'), LATER['tt-print']()]);
    if (!this.#connected) throw new Error('The page is gone.');
    this.#paper = new PaperDesk(this.desk);
    this.#ready();
    return this.#paper;
  }

  #ready(): void {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== this.#notYet);
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.key.toLowerCase() !== 'p' || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
    if (this.#paper && this.#hasResults) return;
    event.preventDefault();
    event.stopPropagation();
    void this.#printSoon();
  };

  async #printSoon(): Promise<void> {
    try {
      await this.#fetch();
    } catch {
      this.desk().say(NOT_FETCHED);
      return;
    }
    const until = performance.now() + PATIENCE;
    while (this.#connected && !this.#hasResults && performance.now() < until) await new Promise((later) => { setTimeout(later, 50); });
    if (this.#connected) window.print();
  }

  get #hasResults(): boolean {
    const { results, waiting, engine } = this.desk();
    return engine !== null && results.revision >= 0 && !waiting;
  }

  readonly #before = (): void => this.#paper?.beforePrint();
  readonly #after = (): void => this.#paper?.afterPrint();
  readonly #list = (): void => this.screens.openPrint('list');
  readonly #made = (event: Event): void => {
    const { pages } = (event as CustomEvent<{ pages: readonly Printed[] }>).detail;
    this.#fetch().then((paper) => paper.printMade(pages), () => this.desk().say(NOT_FETCHED));
  };
}
