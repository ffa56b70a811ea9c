/**
 * On a narrow screen the list of sheets, or the working, lies over the cells
 * when it is asked for. Whatever lies there has the focus while it does, and
 * Escape closes it.
 */
import type { LitElement } from 'lit';

type Part = 'sheets' | 'panel';

const PARTS: Readonly<Record<Part, { readonly opener: string; readonly first: string }>> = {
  sheets: { opener: '.menu', first: 'tt-sheet-list' },
  panel: { opener: '.show-panel', first: 'aside > *' },
};

export class Over {
  #open: Part | null = null;

  constructor(private readonly host: LitElement) {}

  has(part: Part): boolean {
    return this.#open === part;
  }

  /** Shows it where there is no room for it beside the cells; elsewhere it is there anyway. */
  show(part: Part | null): void {
    this.#open = part;
    this.host.requestUpdate();
  }

  /** Shows it and goes there. */
  open(part: Part): void {
    this.show(part);
    void this.host.updateComplete.then(() => this.#find(PARTS[part].first)?.focus());
  }

  /** Goes back to where it was opened. */
  readonly close = (): void => {
    const opener = this.#open && this.#find(PARTS[this.#open].opener);
    this.show(null);
    opener?.focus();
  };

  readonly escape = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && getComputedStyle(event.currentTarget as Element).position === 'fixed') this.close();
  };

  #find(selector: string): HTMLElement | null {
    return this.host.renderRoot.querySelector(selector);
  }
}
