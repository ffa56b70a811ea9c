/** Who pressed a button that is gone after it, or off, goes on in the panel and not at the top of the page. */
import type { LitElement, ReactiveController } from 'lit';

export class KeepFocus implements ReactiveController {
  #here = false;

  /** @param home where to go on */
  constructor(private readonly host: LitElement, private readonly home: () => HTMLElement | null | undefined) {
    host.addController(this);
  }

  hostUpdate(): void {
    this.#here = this.host.hasUpdated && this.#active !== null;
  }

  hostUpdated(): void {
    if (!this.#here || (this.#active !== null && !this.#active.matches(':disabled'))) return;
    const to = this.home();
    to?.focus();
    // As the Tab key does.
    if (to instanceof HTMLInputElement) to.select();
  }

  get #active(): Element | null {
    return (this.host.renderRoot as ShadowRoot | undefined)?.activeElement ?? null;
  }
}
