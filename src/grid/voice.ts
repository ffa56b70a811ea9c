/** What the grid says through its polite status line: each thing once, after what is being read. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** A selection that is still growing is not worth a word. */
const SETTLED = 250;

export class Voice implements ReactiveController {
  said = '';
  #later = 0;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  say(sentence: string): void {
    clearTimeout(this.#later);
    this.said = sentence;
    this.host.requestUpdate();
  }

  /** Says it when nothing else came to be said for a moment. */
  saySoon(sentence: () => string): void {
    clearTimeout(this.#later);
    this.#later = window.setTimeout(() => this.say(sentence()), SETTLED);
  }

  hostDisconnected(): void {
    clearTimeout(this.#later);
  }
}
