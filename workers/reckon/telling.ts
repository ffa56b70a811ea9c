/** Errors as the cell that shows them tells them: which cell they began in, and which cells a circle goes through. */
import { CellError, ErrorType } from './internals.ts';
import type { FormulaVertex, Place, Vertex } from './internals.ts';
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import { sentenceOf } from './sentences.ts';
import { Refusal } from './values.ts';

/** Cells and blocks that a search for a circle looks at before it gives up naming it. */
const LOOKED_AT = 64;
/** Cells of a circle that are named. */
const NAMED = 6;

/** Gives the sentences of errors; made anew for each telling, so that nothing in it can be out of date. */
export class Teller {
  readonly #host: Host;
  readonly #circles = new Map<Vertex, readonly Place[] | null>();

  constructor(host: Host) {
    this.#host = host;
  }

  readonly tell = (error: CellError, at: Place): string => {
    const sentence = error.type === ErrorType.CYCLE && error.root !== undefined ? this.#circle(error.root, at.sheet) : sentenceOf(error);
    const began = error instanceof Refusal ? error.at : undefined;
    if (began === undefined || began.sheet < 0 || (began.sheet === at.sheet && began.row === at.row && began.col === at.col)) return sentence;
    return `${this.#host.names.cell(began, at.sheet)}: ${sentence}`;
  };

  #circle(root: Vertex, own: number): string {
    let places = this.#circles.get(root);
    if (places === undefined) {
      places = isFormulaVertex(root) ? findCircle(this.#host, root) : null;
      this.#circles.set(root, places);
    }
    if (places === null) return 'Goes round in a circle: it needs its own result.';
    const cells = places.map((place) => this.#host.names.cell(place, own));
    if (cells.length === 1) return `Goes round in a circle: ${cells[0]} needs itself.`;
    const links = cells.map((cell, i) => `${cell} needs ${cells[(i + 1) % cells.length]}`);
    if (cells.length <= NAMED) return `Goes round in a circle: ${links.join(', ')}.`;
    return `Goes round in a circle of ${cells.length} cells: ${links.slice(0, NAMED).join(', ')}, and so on back to ${cells[0]}.`;
  }
}

/** The cells of the shortest circle through a cell, each needing the next; `null` when there are too many cells about. */
function findCircle(host: Host, root: FormulaVertex): readonly Place[] | null {
  const from = new Map<FormulaVertex, FormulaVertex | undefined>();
  let edge: readonly FormulaVertex[] = [root];
  while (edge.length > 0 && from.size < LOOKED_AT) {
    const next: FormulaVertex[] = [];
    for (const vertex of edge) {
      for (const needed of needs(host, vertex)) {
        if (needed === root) return placesOn(host, root, vertex, from);
        if (from.has(needed)) continue;
        from.set(needed, vertex);
        next.push(needed);
      }
    }
    edge = next;
  }
  return null;
}

/** The cells in a circle that a cell's formula uses, in reading order, so that the same circle is always told in the same way. */
function needs(host: Host, vertex: FormulaVertex): readonly FormulaVertex[] {
  const { addressMapping } = host.graphs;
  const found = new Set<FormulaVertex>();
  const look = (place: Place): void => {
    const needed = addressMapping.getCell(place);
    if (!isFormulaVertex(needed) || !needed.isComputed() || !isCircular(needed.getCellValue())) return;
    if (place.sheet < 0) for (const behind of needs(host, needed)) found.add(behind);
    else found.add(needed);
  };
  for (const used of host.graphs.dependencyQueryAddresses(vertex)) {
    if ('start' in used) host.tools.eachPlace(used, look);
    else look(used);
  }
  return [...found].map((each) => ({ each, key: keyOf(placeOf(host, each)) })).sort((a, b) => a.key - b.key).map(({ each }) => each);
}

const isCircular = (value: unknown): boolean => value instanceof CellError && value.type === ErrorType.CYCLE;

const placeOf = (host: Host, vertex: FormulaVertex): Place => vertex.getAddress(host.inside._lazilyTransformingAstService);
const keyOf = ({ sheet, row, col }: Place): number => sheet * 2 ** 31 + row * 1024 + col;

function placesOn(host: Host, root: FormulaVertex, last: FormulaVertex, from: ReadonlyMap<FormulaVertex, FormulaVertex | undefined>): readonly Place[] {
  const path: FormulaVertex[] = [];
  for (let vertex: FormulaVertex | undefined = last; vertex !== undefined && vertex !== root; vertex = from.get(vertex)) path.unshift(vertex);
  return [root, ...path].map((vertex) => placeOf(host, vertex));
}
