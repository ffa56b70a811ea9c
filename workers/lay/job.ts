/**
 * One request: refuses what cannot be laid, runs the search, proves each
 * better layout before it is given out, and knows when to stop.
 */
import { areaOf, clothWidth, layFaults, layoutFaults, placesOf, type LayNews, type LayRequest, type Layout, type Piece, type Place } from '../../src/lay/index.ts';
import { Grid } from './grid.ts';
import { GROW, apart, behind, withRectangle } from './leftover.ts';
import { Search } from './search.ts';
import { Shapes } from './shapes.ts';

/** Of a piece of middling size: how far a curve may be simplified outwards. */
const SIMPLER = 0.002;

/** Places weighed without a better layout, after which more would not pay: this many, or this part of all. */
const PATIENCE = { most: 300e6, least: 12e6, part: 0.6 };

export class Job {
  readonly sentences: readonly string[];
  readonly places: readonly Place[] = [];
  readonly #pieces: readonly Piece[];
  readonly #areaLaid: number = 0;
  found: LayNews | null = null;

  constructor(readonly request: LayRequest) {
    const { aim, cloth } = request;
    this.#pieces = aim.want === 'room for' ? [...request.pieces, ...aim.pieces] : request.pieces;
    const sentences = [...layFaults(this.#pieces, cloth)];
    if (aim.want !== 'least length' && cloth.length === null) sentences.push('To see what fits, or what is left, give the length of cloth at hand.');
    if (sentences.length === 0) {
      this.places = placesOf(this.#pieces, cloth);
      this.#areaLaid = this.places.reduce((sum, { outline, count }) => sum + count * areaOf(outline), 0);
    }
    this.sentences = sentences;
  }

  /** Why the pieces cannot fit what is at hand whatever the layout; null when they might. */
  get proof(): string | null {
    const { cloth, aim } = this.request;
    if (aim.want === 'least length' || cloth.length === null) return null;
    // Flaws may overlap or lie beyond the edge, so their area proves nothing and is not counted.
    const room = cloth.remnant ? areaOf(cloth.remnant) : clothWidth(cloth) * cloth.length;
    return this.#areaLaid > room * (1 + 1e-9) ? 'The pieces do not fit: together they cover more than the cloth at hand.' : null;
  }

  /** Each `true`: `found` is better. Each `false`: a pause. Returns when it has what was asked for, or more would not pay. */
  *run(): Generator<boolean, void> {
    yield* this.#search();
    const { aim, cloth } = this.request;
    if (aim.want === 'largest left' && aim.width !== undefined && aim.width < clothWidth(cloth) && this.found) yield* this.#growRectangle(aim.width);
  }

  *#search(): Generator<boolean, void> {
    const { cloth, aim, seed, start, most } = this.request;
    const grid = new Grid(this.places, cloth);
    const shapes = new Shapes(grid.items, SIMPLER * grid.middling, sideOf(this.places.length));
    yield false;
    const search = new Search(shapes, grid.width, seed);
    const given = start && layoutFaults(start, this.places, cloth).length === 0 ? grid.keptOf(start, shapes) : null;
    if (given && this.#take(start!, search)) yield true;
    const enough = aim.want === 'fits' || aim.want === 'room for' ? cloth.length! : -Infinity;
    let last = 0;
    for (const better of search.run(given)) {
      const { weighed } = search.table;
      if (!better) {
        yield false;
      } else {
        last = weighed;
        if (this.#take(grid.layoutOf(search.best, shapes), search)) yield true;
      }
      if (this.found && this.found.layout.length <= enough) return;
      if (most === undefined ? weighed >= PATIENCE.most || weighed - last > Math.max(PATIENCE.least, weighed * PATIENCE.part) : weighed >= most * 1e6) return;
    }
  }

  /** Lays the wanted rectangle with the pieces and lengthens it until it no longer fits. */
  *#growRectangle(width: number): Generator<boolean, void> {
    const { request } = this;
    const atHand = request.cloth.length!;
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
      const layout = apart(trial.found.layout, trial.places);
      this.found = { layout, density: this.#areaLaid / (layout.length * clothWidth(request.cloth)), weighed: this.found!.weighed + trial.found.weighed };
      yield true;
    }
  }

  /** Proves the layout; one that fails, or is no shorter, is not given out. */
  #take(layout: Layout, search: Search): boolean {
    if (this.found && layout.length >= this.found.layout.length) return false;
    const name = (place: number): string => `“${this.#pieces[this.places[place]!.piece]!.name}”`;
    if (layoutFaults(layout, this.places, this.request.cloth, name).length > 0) return false;
    const left = behind(layout, this.request);
    this.found = { layout: left ? { ...layout, left } : layout, density: this.#areaLaid / (layout.length * clothWidth(this.request.cloth)), weighed: search.table.weighed / 1e6 };
    return true;
  }
}

/** Cells along a depth map: fewer when there are many maps, for the memory's sake. */
const sideOf = (places: number): number => (places > 30 ? 24 : 48);
