import type { Point, Trying } from './types.ts';

/** What has been tried so far. Nothing is tried twice. */
export class Known {
  readonly #results = new Map<number, number | null>();

  *at(x: number): Trying<number | null> {
    const before = this.#results.get(x);
    if (before !== undefined) return before;
    const given = yield x;
    const y = given !== null && Number.isFinite(given) ? given : null;
    this.#results.set(x, y);
    return y;
  }

  get tried(): number {
    return this.#results.size;
  }

  /** In ascending order, those without a result too. */
  get all(): readonly { readonly x: number; readonly y: number | null }[] {
    return [...this.#results].map(([x, y]) => ({ x, y })).sort((a, b) => a.x - b.x);
  }

  get points(): readonly Point[] {
    return this.all.filter((each): each is Point => each.y !== null);
  }
}
