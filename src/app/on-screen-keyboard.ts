/**
 * An on-screen keyboard lies over the window: the page has only what the
 * visual viewport leaves. While it is there the page is made as tall as that,
 * which puts the entry line right above it (shell-styles.ts).
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** What the window loses to a keyboard; address bars take less. */
const LEAST = 120;

export interface SeenPart extends EventTarget {
  readonly height: number;
  readonly offsetTop: number;
  readonly scale: number;
}

export class OnScreenKeyboard implements ReactiveController {
  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly seen: SeenPart | null = window.visualViewport,
    private readonly windowHeight = () => window.innerHeight,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    this.seen?.addEventListener('resize', this.#read);
    this.seen?.addEventListener('scroll', this.#read);
    this.#read();
  }

  hostDisconnected(): void {
    this.seen?.removeEventListener('resize', this.#read);
    this.seen?.removeEventListener('scroll', this.#read);
  }

  readonly #read = (): void => {
    const { host, seen } = this;
    if (!seen) return;
    // Two fingers that enlarge the page leave less of it in view too.
    const open = seen.scale <= 1 && this.windowHeight() - seen.height > LEAST;
    host.toggleAttribute('data-keyboard', open);
    host.style.height = open ? `${seen.height}px` : '';
    host.style.top = open ? `${seen.offsetTop}px` : '';
  };
}
