/**
 * Paper. What makes it is a module of its own, fetched soon after the start so
 * that the browser's own printing finds it: a browser that is about to print
 * waits for nothing.
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { LATER } from '../panels/later.ts';
import type { Desk } from './desk.ts';
import type { PaperDesk } from './paper-desk.ts';
import type { PrintScreens } from './print-commands.ts';
import { NOT_FETCHED } from './summon.ts';

/** After the first sight of the page, and before a person thinks of paper. */
const SOON = 3000;

export class Printing implements ReactiveController {
  #paper: PaperDesk | null = null;
  #connected = false;
  #soon: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost, private readonly desk: () => Desk) {
    host.addController(this);
  }

  hostConnected(): void {
    this.#connected = true;
    window.addEventListener('beforeprint', this.#before);
    window.addEventListener('afterprint', this.#after);
    this.#soon = setTimeout(() => void this.#fetch().catch(() => undefined), SOON);
  }

  hostDisconnected(): void {
    this.#connected = false;
    window.removeEventListener('beforeprint', this.#before);
    window.removeEventListener('afterprint', this.#after);
    clearTimeout(this.#soon);
    this.#paper?.remove();
    this.#paper = null;
  }

  get screens(): PrintScreens {
    return {
      openPrint: (what) => {
        this.#fetch().then((paper) => paper.open(what), () => this.desk().say(NOT_FETCHED));
      },
    };
  }

  async #fetch(): Promise<PaperDesk> {
    const [{ PaperDesk }] = await Promise.all([import('./paper-desk.ts'), LATER['tt-print']()]);
    if (!this.#connected) throw new Error('The page is gone.');
    return (this.#paper ??= new PaperDesk(this.desk));
  }

  readonly #before = (): void => this.#paper?.beforePrint();
  readonly #after = (): void => this.#paper?.afterPrint();
}
