/**
 * One request: refuses what cannot be laid, runs the search, proves each
 * better layout before it is given out, and knows when to stop.
 */
import { areaOf, clothWidth, layFaults, layoutFaults, placesOf, type LayNews, type LayRequest, type Layout, type Piece, type Place } from '../../src/lay/index.ts';
import { Grid } from './grid.ts';
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
    const { cloth, aim, seed, start, most } = this.request;
    const grid = new Grid(this.places, cloth);
    const shapes = new Shapes(grid.items, SIMPLER * grid.middling, sideOf(this.places.length));
    yield false;
    const search = new Search(shapes, grid.width, seed);
    const given = start && layoutFaults(start, this.places, cloth).length === 0 ? grid.keptOf(start, shapes) : null;
    if (given) {
      this.#take(start!, search);
      yield true;
    }
    let last = 0;
    for (const better of search.run(given)) {
      if (better) {
        last = search.table.weighed;
        if (!this.#take(grid.layoutOf(search.best, shapes), search)) continue;
        yield true;
        if (aim.want !== 'least length' && this.found!.layout.length <= cloth.length!) return;
      } else {
        yield false;
      }
      const { weighed } = search.table;
      if (most === undefined ? weighed >= PATIENCE.most || weighed - last > Math.max(PATIENCE.least, weighed * PATIENCE.part) : weighed >= most * 1e6) return;
    }
  }

  /** Proves the layout; one that fails, or is no shorter, is not given out. */
  #take(layout: Layout, search: Search): boolean {
    if (this.found && layout.length >= this.found.layout.length) return false;
    const name = (place: number): string => `“${this.#pieces[this.places[place]!.piece]!.name}”`;
    if (layoutFaults(layout, this.places, this.request.cloth, name).length > 0) return false;
    this.found = { layout, density: this.#areaLaid / (layout.length * clothWidth(this.request.cloth)), weighed: search.table.weighed / 1e6 };
    return true;
  }
}

/** Cells along a depth map: fewer when there are many maps, for the memory's sake. */
const sideOf = (places: number): number => (places > 30 ? 24 : 48);
