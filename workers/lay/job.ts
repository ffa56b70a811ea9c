/**
 * One request: refuses what cannot be laid, runs the search, proves each
 * better layout before it is given out, and knows when to stop.
 */
import { areaOf, clothLength, clothWidth, layCautions, layFaults, layoutFaults, lengthUsed, proofAgainst, stretchOf, type LayNews, type LayRequest, type Layout, type Piece, type Place } from '../../src/lay/index.ts';
import { Grid } from './grid.ts';
import { GROW, apart, behind, withRectangle } from './leftover.ts';
import { Search } from './search.ts';
import { Shapes, prepared, type Prepared } from './shapes.ts';
import { choicesOf, type Choice } from './trials.ts';

/** Of a piece of middling size: how far a curve may be simplified outwards. */
const SIMPLER = 0.002;

/** Places weighed without a better layout, after which more would not pay: this many, or this part of all. */
const PATIENCE = { most: 300e6, least: 12e6, part: 0.6 };

/** Places that each choice may weigh before the worse half of them is given up; each next round takes twice as many. */
const TRIAL = 500_000;

/** One choice and its search. */
interface Trial {
  readonly choice: Choice;
  readonly grid: Grid;
  readonly shapes: Shapes;
  readonly search: Search;
  readonly steps: Generator<boolean, void>;
}

export class Job {
  readonly sentences: readonly string[];
  readonly #pieces: readonly Piece[];
  readonly #choices: readonly Choice[] = [];
  #places: readonly Place[] = [];
  #weighed = 0;
  #lastBetter = 0;
  found: LayNews | null = null;
  /** What there is to say of the answer. */
  sentence: string | undefined;
  /** The pieces of the second list for which there is no room. */
  without: readonly number[] | undefined;

  constructor(readonly request: LayRequest) {
    const { aim, cloth } = request;
    this.#pieces = aim.want === 'room for' ? [...request.pieces, ...aim.pieces] : request.pieces;
    const sentences = [...layFaults(this.#pieces, cloth)];
    if (aim.want !== 'least length' && cloth.length === null) sentences.push('To see what fits, or what is left, give the length of cloth at hand.');
    if (sentences.length === 0) {
      this.#choices = choicesOf(this.#pieces, cloth, (each) => layFaults(this.#pieces, each).length === 0);
      if (this.#choices.length === 0) sentences.push('The print cannot meet within the width of the cloth: take out a mark, or choose a wider cloth.');
      this.#places = this.#choices[0]?.places ?? [];
    }
    this.sentences = sentences;
    this.sentence = layCautions(this.#pieces)[0];
  }

  /** What is laid: as the best layout has it. */
  get places(): readonly Place[] {
    return this.found?.places ?? this.#places;
  }

  /** Why the pieces cannot fit what is at hand whatever the layout; null when they might. For a second list: when not even the first fits. */
  get proof(): string | null {
    const { aim, pieces } = this.request;
    if (aim.want === 'least length') return null;
    const proofs = this.#choices.map(({ places, cloth }) => proofAgainst(places.filter(({ piece }) => piece < pieces.length), cloth));
    return proofs.every((proof) => proof !== null) ? (proofs[0] ?? null) : null;
  }

  /** Each `true`: `found` is better. Each `false`: a pause. Returns when it has what was asked for, or more would not pay. */
  *run(): Generator<boolean, void> {
    const { aim, cloth } = this.request;
    if (aim.want === 'room for' && this.#choices.every((choice) => proofAgainst(choice.places, choice.cloth) !== null)) {
      yield* this.#roomForLess(aim.pieces);
      return;
    }
    yield* this.#search();
    const atHand = clothLength(cloth);
    if (atHand === null || aim.want === 'least length') return;
    const fits = this.found !== null && this.found.layout.length <= atHand;
    if (aim.want === 'room for') {
      if (!fits) yield* this.#roomForLess(aim.pieces);
    } else if (!fits) {
      this.sentence = this.found ? `No layout was found that fits: the shortest takes ${beyond(this.found.layout.length / atHand)} more than the cloth at hand.` : 'No layout was found that fits.';
    } else if (aim.want === 'largest left' && aim.width !== undefined && aim.width < clothWidth(cloth)) {
      yield* this.#growRectangle(aim.width);
    }
  }

  /** The first list, and of the second each piece in turn for which there is still room. */
  *#roomForLess(second: readonly Piece[]): Generator<boolean, void> {
    const { request } = this;
    const atHand = clothLength(request.cloth)!;
    let kept = yield* this.#fitting(second.map((piece) => ({ ...piece, count: 0 })), request.start);
    if (!kept) {
      this.sentence = this.found ? `No layout was found in which even the first list fits: with all, the shortest takes ${beyond(this.found.layout.length / atHand)} more than the cloth at hand.` : 'No layout was found in which even the first list fits.';
      return;
    }
    const counts = second.map(() => 0);
    const without: number[] = [];
    for (const [i, { count }] of second.entries()) {
      if (count === 0) continue;
      counts[i] = count;
      const tried = yield* this.#fitting(second.map((piece, k) => ({ ...piece, count: counts[k]! })), undefined);
      if (tried) {
        kept = tried;
      } else {
        counts[i] = 0;
        without.push(i);
      }
    }
    this.found = kept;
    this.without = without;
    const names = (list: readonly number[]): string => list.map((i) => `“${second[i]!.name}”`).join(', ');
    const room = second.map((_, i) => i).filter((i) => counts[i]! > 0);
    this.sentence = room.length === 0 ? 'There is no room for any piece of the second list.' : `There is room for ${names(room)}, and not for ${names(without)} as well.`;
    yield true;
  }

  *#fitting(second: readonly Piece[], start: Layout | undefined): Generator<boolean, LayNews | null> {
    const { request } = this;
    const trial = new Job({ ...request, aim: { want: 'fits' }, pieces: [...request.pieces, ...second], start, most: request.most ?? PATIENCE.least / 1e6 });
    if (trial.sentences.length > 0 || trial.proof !== null) return null;
    for (const better of trial.run()) if (!better) yield false;
    const { found } = trial;
    if (!found || found.layout.length > clothLength(request.cloth)!) return null;
    const left = behind(found.layout, request);
    return { ...found, layout: left ? { ...found.layout, left } : found.layout };
  }

  *#search(): Generator<boolean, void> {
    let trials: Trial[] = [];
    for (const choice of this.#choices) {
      const grid = new Grid(choice.places, choice.cloth, choice.phases);
      const outlines: Prepared[] = [];
      for (const item of grid.items) {
        outlines.push(prepared(item, SIMPLER * grid.middling, grid.items.length));
        yield false;
      }
      const shapes = new Shapes(grid.items, outlines);
      const start = this.#startOf(choice);
      const given = start && grid.keptOf(start, shapes);
      const apart = given !== null && liesApart(start!, choice);
      const whole = given?.missing.length === 0;
      const search = new Search(shapes, grid.width, this.request.seed);
      trials.push({ choice, grid, shapes, search, steps: search.run(apart || whole ? given : null, apart) });
      yield apart && whole && this.#take(start!, choice);
    }
    for (let span = TRIAL; trials.length > 1; span *= 2) {
      for (const trial of trials) if (yield* this.#advance(trial, span)) return;
      trials.sort((a, b) => a.search.best.length / a.grid.scale - b.search.best.length / b.grid.scale);
      trials = trials.slice(0, Math.ceil(trials.length / 2));
    }
    if (trials[0]) yield* this.#advance(trials[0], Infinity);
  }

  /** The layout to begin with, where it has the fold of this choice. */
  #startOf({ cloth }: Choice): Layout | null {
    const { start } = this.request;
    return start && (start.foldAt === undefined || start.foldAt === cloth.foldAt) ? start : null;
  }

  /** True when there is nothing more to do. */
  *#advance({ choice, grid, shapes, search, steps }: Trial, span: number): Generator<boolean, boolean> {
    const { aim, cloth, most } = this.request;
    const enough = aim.want === 'fits' || aim.want === 'room for' ? clothLength(cloth)! : -Infinity;
    const from = search.table.weighed, before = this.#weighed;
    for (let step = steps.next(); !step.done; step = steps.next()) {
      const own = search.table.weighed - from;
      this.#weighed = before + own;
      if (!step.value) {
        yield false;
      } else {
        this.#lastBetter = this.#weighed;
        if (this.#take(grid.layoutOf(search.best, shapes), choice)) yield true;
      }
      if (this.found && this.found.layout.length <= enough) return true;
      if (own >= span) return false;
      if (most === undefined ? this.#weighed >= PATIENCE.most || this.#weighed - this.#lastBetter > Math.max(PATIENCE.least, this.#weighed * PATIENCE.part) : this.#weighed >= most * 1e6) return true;
    }
    return false;
  }

  /** Lays the wanted rectangle with the pieces and lengthens it until it no longer fits. */
  *#growRectangle(width: number): Generator<boolean, void> {
    const { request } = this;
    const atHand = clothLength(request.cloth)!;
    let length = this.found!.layout.left?.length ?? atHand * GROW.from;
    for (let grow = GROW.from; grow >= GROW.to;) {
      const longer = Math.min(atHand, length * (1 + grow));
      if (longer <= length) return;
      const trial = new Job({ ...withRectangle(request, longer, width), most: request.most ?? PATIENCE.least / 1e6 });
      if (trial.sentences.length === 0 && trial.proof === null) for (const better of trial.run()) if (!better) yield false;
      if (!trial.found || trial.found.layout.length > atHand) {
        grow /= 2;
        continue;
      }
      length = longer;
      const { layout, places } = apart(trial.found.layout, trial.places, request.pieces.length);
      this.found = { layout, density: densityOf(layout, places, request), weighed: this.found!.weighed + trial.found.weighed, places };
      yield true;
    }
  }

  /** Proves the layout; one that fails, or is no shorter, is not given out. */
  #take(layout: Layout, { places, cloth }: Choice): boolean {
    if (this.found && layout.length >= this.found.layout.length) return false;
    const name = (place: number): string => `“${this.#pieces[places[place]!.piece]!.name}”`;
    if (layoutFaults(layout, places, cloth, name).length > 0) return false;
    const left = behind(layout, this.request);
    this.found = { layout: left ? { ...layout, left } : layout, density: densityOf(layout, places, this.request), weighed: this.#weighed / 1e6, places };
    return true;
  }
}

/** Never “0 %” for something. */
const beyond = (part: number): string => `${Math.max(0.1, Math.ceil((part - 1) * 1000) / 10)} %`;

/** True when what the layout has of the places can be cut. */
function liesApart(layout: Layout, { places, cloth }: Choice): boolean {
  const there = places.map((place, i) => ({ ...place, count: Math.min(place.count, layout.laid.filter((each) => each.place === i).length) }));
  return layoutFaults(layout, there, cloth).length === 0;
}

/** Of the cloth used, the part that all layers of the pieces cover. */
function densityOf(layout: Layout, places: readonly Place[], { cloth }: LayRequest): number {
  const [longer, wider] = stretchOf(cloth);
  const covered = longer * wider * places.reduce((sum, { outline, count, layers = 1 }) => sum + count * layers * areaOf(outline), 0);
  return covered / (lengthUsed(layout, cloth) * cloth.width);
}
