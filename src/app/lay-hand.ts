/** A layout moved and turned by hand, and what is wrong with where each piece lies. */
import { boundsOf, clothLength, layoutFaults, type Cloth, type Laid, type Layout, type Place, type Point, type Way } from '../lay/index.ts';
import { nameOf, outlineOf, type Found } from './lay-found.ts';

/** By the piece's position in the list of laid; pieces that lie well are not in it. */
export type Wrongs = ReadonlyMap<number, readonly string[]>;

export class HandLay {
  #past: Layout[] = [];
  #now: Found | null = null;
  #watch: Watch | null = null;
  #wrongs: Wrongs | null = null;

  constructor(readonly found: Found, private layout = found.layout) {}

  get now(): Found {
    if (!this.changed) return this.found;
    this.#now ??= { ...this.found, layout: this.layout, density: (this.found.density * this.found.layout.length) / this.layout.length, weighed: null };
    return this.#now;
  }

  get changed(): boolean {
    return this.layout !== this.found.layout;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get wrongs(): Wrongs {
    this.#watch ??= new Watch(this.now);
    this.#wrongs ??= this.#watch.wrongs;
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
    this.#now = this.#wrongs = this.#watch = null;
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
    this.#now = this.#wrongs = null;
    this.#watch?.look(this.now, id);
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

/** What is wrong with each piece by itself and with each pair, by the same check that proves whole layouts. */
class Watch {
  readonly #alone: (readonly string[])[] = [];
  /** Of pairs, by `id × count + other`. */
  readonly #pairs = new Map<number, string>();

  constructor(found: Found) {
    found.layout.laid.forEach((_, id) => this.look(found, id, id));
  }

  /** Looks at a piece anew, and at its pairs with those `before` it in the list; with all others without that. */
  look(found: Found, id: number, before?: number): void {
    const { layout, cloth, places } = found;
    const { laid } = layout;
    const bounds = (of: number): ReturnType<typeof boundsOf> => boundsOf(outlineOf(found, laid[of]!));
    const own = bounds(id);
    const atHand = clothLength(cloth);
    const alone = faultsAt(found, [id]);
    const beyond = atHand !== null && own.to[0] > atHand * (1 + 1e-9);
    this.#alone[id] = beyond ? [...alone, `“${nameOf(found, laid[id]!.place)}” reaches beyond the length at hand.`] : alone;
    for (let other = 0; other < (before ?? laid.length); other++) {
      if (other === id) continue;
      const key = Math.min(id, other) * laid.length + Math.max(id, other);
      const may = !apart(own, bounds(other), cloth) || matched(places, laid[id]!, laid[other]!);
      const faults = may ? faultsAt(found, [Math.min(id, other), Math.max(id, other)]) : [];
      // Of a pair the last fault is what the two have to do with each other, if there is more than each has alone.
      if (may && faults.length > alone.length + faultsAt(found, [other]).length) this.#pairs.set(key, inPlainWords(faults.at(-1)!));
      else this.#pairs.delete(key);
    }
  }

  get wrongs(): Wrongs {
    const wrongs = new Map<number, string[]>();
    const say = (id: number, sentences: readonly string[]): void => void (sentences.length > 0 && wrongs.set(id, [...(wrongs.get(id) ?? []), ...sentences]));
    this.#alone.forEach((sentences, id) => say(id, sentences));
    for (const [key, sentence] of this.#pairs) for (const id of [Math.floor(key / this.#alone.length), key % this.#alone.length]) say(id, [sentence]);
    return wrongs;
  }
}

function faultsAt(found: Found, ids: readonly number[]): readonly string[] {
  const { layout, places, cloth } = found;
  const chosen = ids.map((id) => layout.laid[id]!);
  const each = chosen.map(({ place }): Place => ({ ...places[place]!, count: 1 }));
  return layoutFaults({ laid: chosen.map((laid, place) => ({ ...laid, place })), length: layout.length, ...(layout.foldAt !== undefined && { foldAt: layout.foldAt }) }, each, cloth, (at) => `“${nameOf(found, chosen[at]!.place)}”`);
}

export const wrongsOf = (found: Found): Wrongs => new Watch(found).wrongs;

/** Square mm say nothing to her. */
const inPlainWords = (fault: string): string => fault.replace(/ overlap by .*$/, ' overlap.');

const matched = (places: readonly Place[], one: Laid, other: Laid): boolean => Boolean(places[one.place]?.matches && places[other.place]?.matches);

function apart(one: ReturnType<typeof boundsOf>, other: ReturnType<typeof boundsOf>, { gap }: Cloth): boolean {
  return ([0, 1] as const).some((axis) => one.from[axis] > other.to[axis] + gap || other.from[axis] > one.to[axis] + gap);
}
