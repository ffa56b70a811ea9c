/** A layout moved and turned by hand, and what is wrong with where each piece lies. */
import { boundsOf, clothLength, layoutFaults, type Cloth, type Laid, type Layout, type Place, type Point, type Way } from '../lay/index.ts';
import { nameOf, outlineOf, type Found } from './lay-found.ts';

/** By the piece's position in the list of laid; pieces that lie well are not in it. */
export type Wrongs = ReadonlyMap<number, readonly string[]>;

export class HandLay {
  #past: Layout[] = [];
  #wrongs: Wrongs | null = null;

  constructor(readonly found: Found, private layout = found.layout) {}

  get now(): Found {
    return { ...this.found, layout: this.layout, density: (this.found.density * this.found.layout.length) / this.layout.length, weighed: null };
  }

  get changed(): boolean {
    return this.layout !== this.found.layout;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get wrongs(): Wrongs {
    this.#wrongs ??= wrongsOf(this.now);
    return this.#wrongs;
  }

  /** @param by mm, from where it lies */
  move(id: number, by: Point): void {
    this.#set(id, (laid, place) => ({ ...laid, at: [laid.at[0] + by[0], place.onFold ? laid.at[1] : laid.at[1] + by[1]] }));
  }

  /** To its next allowed way, about the middle of where it lies. */
  turn(id: number): void {
    this.#set(id, (laid, place) => {
      const at = place.ways.findIndex((way) => same(way, laid.way));
      const way = place.ways[(at + 1) % place.ways.length]!;
      return about(this.found, laid, way, place.onFold);
    });
  }

  /** More than one way to lie. */
  mayTurn(id: number): boolean {
    const laid = this.layout.laid[id];
    return laid !== undefined && (this.found.places[laid.place]?.ways.length ?? 0) > 1;
  }

  undo(): void {
    const before = this.#past.pop();
    if (!before) return;
    this.layout = before;
    this.#wrongs = null;
  }

  /** Moves of one drag are one step back. */
  begin(): void {
    this.#past.push(this.layout);
  }

  /** Where nothing came of it. */
  end(): void {
    if (this.#past.at(-1) === this.layout) this.#past.pop();
  }

  #set(id: number, change: (laid: Laid, place: Place) => Laid): void {
    const laid = this.layout.laid.map((one, i) => (i === id ? change(one, this.found.places[one.place]!) : one));
    // What was left is no longer known to be free.
    this.layout = { laid, length: reachOf(laid, this.found), ...(this.layout.foldAt !== undefined && { foldAt: this.layout.foldAt }) };
    this.#wrongs = null;
  }
}

const same = (one: Way, other: Way): boolean => one.turn === other.turn && one.mirrored === other.mirrored;

const reachOf = (laid: readonly Laid[], found: Pick<Found, 'places'>): number => Math.max(0, ...laid.map((one) => boundsOf(outlineOf(found, one)).to[0]));

function about(found: Found, laid: Laid, way: Way, onFold: boolean): Laid {
  const middle = (one: Laid): Point => {
    const { from, to } = boundsOf(outlineOf(found, one));
    return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  };
  const turned = { ...laid, way };
  const [before, after] = [middle(laid), middle(turned)];
  return { ...turned, at: [laid.at[0] + before[0] - after[0], onFold ? laid.at[1] : laid.at[1] + before[1] - after[1]] };
}

/** Each piece by itself, then each pair that may meet, by the same check that proves whole layouts. */
export function wrongsOf(found: Found): Wrongs {
  const { layout, places, cloth } = found;
  const wrongs = new Map<number, string[]>();
  const say = (id: number, sentence: string): void => void wrongs.set(id, [...(wrongs.get(id) ?? []), sentence]);
  const check = (ids: readonly number[]): readonly string[] => {
    const chosen = ids.map((id) => layout.laid[id]!);
    const each = chosen.map(({ place }): Place => ({ ...places[place]!, count: 1 }));
    return layoutFaults({ laid: chosen.map((laid, place) => ({ ...laid, place })), length: layout.length, ...(layout.foldAt !== undefined && { foldAt: layout.foldAt }) }, each, cloth, (at) => `“${nameOf(found, chosen[at]!.place)}”`);
  };
  const atHand = clothLength(cloth);
  const bounds = layout.laid.map((laid) => boundsOf(outlineOf(found, laid)));
  const alone = layout.laid.map((laid, id) => {
    const faults = check([id]);
    for (const fault of faults) say(id, fault);
    if (atHand !== null && bounds[id]!.to[0] > atHand * (1 + 1e-9)) say(id, `“${nameOf(found, laid.place)}” reaches beyond the length at hand.`);
    return faults.length;
  });
  for (let i = 0; i < bounds.length; i++) {
    for (let j = i + 1; j < bounds.length; j++) {
      if (apart(bounds[i]!, bounds[j]!, cloth) && !matched(places, layout.laid[i]!, layout.laid[j]!)) continue;
      const faults = check([i, j]);
      if (faults.length <= alone[i]! + alone[j]!) continue;
      const fault = inPlainWords(faults.at(-1)!);
      say(i, fault);
      say(j, fault);
    }
  }
  return wrongs;
}

/** Square mm say nothing to her. */
const inPlainWords = (fault: string): string => fault.replace(/ overlap by .*$/, ' overlap.');

const matched = (places: readonly Place[], one: Laid, other: Laid): boolean => Boolean(places[one.place]?.matches && places[other.place]?.matches);

function apart(one: ReturnType<typeof boundsOf>, other: ReturnType<typeof boundsOf>, { gap }: Cloth): boolean {
  return ([0, 1] as const).some((axis) => one.from[axis] > other.to[axis] + gap || other.from[axis] > one.to[axis] + gap);
}
