/** A fill that is being dragged out of the selected block. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { send } from './events.ts';
import { fillReach, fillWords, type FillReach } from './fill-area.ts';
import { areaOf, type Ground } from './select.ts';
import type { CellArea, CellPlace, Selection } from './view.ts';

interface FillHost extends ReactiveControllerHost, HTMLElement {
  readonly selection: Selection;
  readonly ground: Ground;
  select(selection: Selection, show?: boolean): void;
  say(sentence: string): void;
}

export class Filling implements ReactiveController {
  #reach: FillReach | null = null;

  constructor(private readonly host: FillHost) {
    host.addController(this);
  }

  /** What is to be outlined. */
  get outlined(): { readonly area: CellArea; readonly words: string } | null {
    return this.#reach && { area: this.#reach.to, words: this.#words(this.#reach) };
  }

  show(to: CellPlace): void {
    this.#reach = fillReach(areaOf(this.host.selection), to);
    this.host.requestUpdate();
  }

  /** Asks for the fill, unless it was given up; the filled cells are selected then. */
  end(done: boolean): void {
    const reach = this.#reach;
    this.#reach = null;
    this.host.requestUpdate();
    if (!reach || !done) return;
    const { to } = reach;
    if (!send(this.host, 'tt-fill', { from: areaOf(this.host.selection), to })) return;
    this.host.select({ anchor: { row: to.bottom, col: to.right }, focus: { row: to.top, col: to.left } }, false);
  }

  /** Hidden rows and columns on the way are not filled. */
  #words(reach: FillReach): string {
    const { rows, cols } = this.host.ground;
    const from = areaOf(this.host.selection);
    const { to, way } = reach;
    const hidden = {
      down: () => rows.hiddenIn(from.bottom + 1, to.bottom), up: () => rows.hiddenIn(to.top, from.top - 1),
      right: () => cols.hiddenIn(from.right + 1, to.right), left: () => cols.hiddenIn(to.left, from.left - 1),
    };
    return fillWords(reach, hidden[way]());
  }

  hostDisconnected(): void {
    this.#reach = null;
  }
}
