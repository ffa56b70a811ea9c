/** Errors as the cell that shows them tells them: which cell they began in, and which cells a circle goes through. */
import { ArrayFormulaVertex, CellError, ErrorType, RangeVertex } from './internals.ts';
import type { Place, Vertex } from './internals.ts';
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
      const found = findCircle(this.#host, root);
      places = found?.map(({ place }) => place) ?? null;
      // Each cell of the circle tells it from itself on.
      found?.forEach(({ vertex }, i) => this.#circles.set(vertex, [...places!.slice(i), ...places!.slice(0, i)]));
      if (found === null) this.#circles.set(root, null);
    }
    if (places === null) return 'Goes round in a circle: it needs its own result.';
    const cells = places.map((place) => this.#host.names.cell(place, own));
    if (cells.length === 1) return `Goes round in a circle: ${cells[0]} needs itself.`;
    const links = cells.map((cell, i) => `${cell} needs ${cells[(i + 1) % cells.length]}`);
    if (cells.length <= NAMED) return `Goes round in a circle: ${links.join(', ')}.`;
    return `Goes round in a circle of ${cells.length} cells: ${links.slice(0, NAMED).join(', ')}, and so on back to ${cells[0]}.`;
  }
}

interface Stop {
  readonly vertex: Vertex;
  readonly place: Place;
}

/** The cells of the shortest circle through a cell, each needing the next; `null` when there are too many cells about. */
function findCircle(host: Host, root: Vertex): readonly Stop[] | null {
  const from = new Map<Vertex, Vertex>();
  let edge: readonly Vertex[] = [root];
  while (edge.length > 0 && from.size < LOOKED_AT) {
    const next: Vertex[] = [];
    for (const vertex of edge) {
      for (const dependent of inOrder(host, vertex)) {
        if (dependent === root) return stops(host, root, vertex, from);
        if (from.has(dependent)) continue;
        from.set(dependent, vertex);
        next.push(dependent);
      }
    }
    edge = next;
  }
  return null;
}

/** What depends on a vertex and may be part of a circle, always in the same order. */
function inOrder(host: Host, vertex: Vertex): readonly Vertex[] {
  return [...host.graphs.graph.adjacentNodes(vertex)]
    .filter((each) => each instanceof RangeVertex || (isFormulaVertex(each) && isCircular(each.isComputed() ? each.getCellValue() : undefined)))
    .map((each) => ({ each, key: keyOf(host, each) }))
    .sort((a, b) => a.key - b.key)
    .map(({ each }) => each);
}

const isCircular = (value: unknown): boolean => value instanceof CellError && value.type === ErrorType.CYCLE;

function placeOf(host: Host, vertex: Vertex): Place | undefined {
  if (!isFormulaVertex(vertex)) return undefined;
  return vertex instanceof ArrayFormulaVertex ? vertex.getRange().start : vertex.getAddress(host.inside._lazilyTransformingAstService);
}

function keyOf(host: Host, vertex: Vertex): number {
  const { sheet, row, col } = placeOf(host, vertex) ?? (vertex as RangeVertex).range.start;
  return (sheet + 1) * 2 ** 31 + row * 1024 + col;
}

function stops(host: Host, root: Vertex, last: Vertex, from: ReadonlyMap<Vertex, Vertex>): readonly Stop[] {
  const path: Vertex[] = [root];
  for (let vertex: Vertex | undefined = last; vertex !== undefined && vertex !== root; vertex = from.get(vertex)) path.push(vertex);
  return path.flatMap((vertex) => {
    const place = placeOf(host, vertex);
    return place !== undefined && place.sheet >= 0 ? [{ vertex, place }] : [];
  });
}
