/** Errors as the cell that shows them tells them: which cell they began in, and which cells a circle goes through. */
import { columnNumber } from '../../src/formula/index.ts';
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

/** A sentence that begins with a cell: `B3 has no value yet.`, `Fit!B3: 2 has no unit …`. */
const BEGINS_WITH_CELL = /^(?:[^:]*!)?[A-Z]{1,3}\d+(?=: | has no value yet\.| is )/;

/** The cell that is to be mended first, and what is wrong there, without the cell's name. */
export interface Beginning {
  readonly place: Place;
  readonly rest: string;
}

/** Gives the sentences of errors; made anew for each telling, so that nothing in it can be out of date. */
export class Teller {
  readonly #host: Host;
  readonly #circles = new Map<Vertex, readonly Place[] | null>();
  readonly #beginnings = new Map<CellError, Beginning | null>();

  constructor(host: Host) {
    this.#host = host;
  }

  readonly tell = (error: CellError, at: Place): string => {
    const places = this.circle(error);
    const sentence = places === undefined ? sentenceOf(error) : this.#circleText(places, at.sheet);
    const began = this.beginning(error);
    if (began !== null) return `${this.#host.names.cell(began.place, at.sheet)}${began.rest}`;
    const arose = arisen(error);
    return arose === undefined || samePlace(arose, at) ? sentence : `${this.#host.names.cell(arose, at.sheet)}: ${sentence}`;
  };

  /**
   * The cell that a formula speaks of when it says what is wrong with it: an
   * empty one, or one whose figure does not fit. A formula that has no result
   * because of it only hands the error on.
   */
  beginning(error: CellError): Beginning | null {
    let began = this.#beginnings.get(error);
    if (began === undefined) this.#beginnings.set(error, began = this.#lookForBeginning(error));
    return began;
  }

  /** The cells of the circle that an error comes from; `null` when there are too many to name, `undefined` when it comes from none. */
  circle(error: CellError): readonly Place[] | null | undefined {
    if (error.type !== ErrorType.CYCLE || error.root === undefined) return undefined;
    let places = this.#circles.get(error.root);
    if (places === undefined) this.#circles.set(error.root, places = isFormulaVertex(error.root) ? findCircle(this.#host, error.root) : null);
    return places;
  }

  #lookForBeginning(error: CellError): Beginning | null {
    const arose = arisen(error);
    const sentence = sentenceOf(error);
    const named = arose && BEGINS_WITH_CELL.exec(sentence)?.[0];
    const vertex = arose && this.#host.graphs.addressMapping.getCell(arose);
    if (!named || !isFormulaVertex(vertex)) return null;
    const { names } = this.#host;
    for (const used of this.#host.graphs.dependencyQueryAddresses(vertex)) {
      const place = 'start' in used ? placeIn(used, named, (each) => names.cell(each, arose.sheet)) : names.cell(used, arose.sheet) === named ? used : undefined;
      if (place !== undefined) return { place, rest: sentence.slice(named.length) };
    }
    return null;
  }

  #circleText(places: readonly Place[] | null, own: number): string {
    if (places === null) return 'Goes round in a circle: it needs its own result.';
    const cells = places.map((place) => this.#host.names.cell(place, own));
    if (cells.length === 1) return `Goes round in a circle: ${cells[0]} needs itself.`;
    const links = cells.map((cell, i) => `${cell} needs ${cells[(i + 1) % cells.length]}`);
    if (cells.length <= NAMED) return `Goes round in a circle: ${links.join(', ')}.`;
    return `Goes round in a circle of ${cells.length} cells: ${links.slice(0, NAMED).join(', ')}, and so on back to ${cells[0]}.`;
  }
}

/** The cell that an error arose in; a name's own place is no cell. */
export function arisen(error: CellError): Place | undefined {
  return error instanceof Refusal && error.at !== undefined && error.at.sheet >= 0 ? error.at : undefined;
}

export const samePlace = (a: Place, b: Place): boolean => a.sheet === b.sheet && a.row === b.row && a.col === b.col;

/** A cell by its name, if it stands in a block. */
function placeIn({ start, end }: { readonly start: Place; readonly end: Place }, name: string, nameOf: (place: Place) => string): Place | undefined {
  const [, letters, digits] = /([A-Z]{1,3})(\d+)$/.exec(name)!;
  const col = columnNumber(letters!);
  if (col === undefined) return undefined;
  const place = { sheet: start.sheet, row: Number(digits) - 1, col };
  const inside = place.row >= start.row && place.row <= end.row && place.col >= start.col && place.col <= end.col;
  return inside && nameOf(place) === name ? place : undefined;
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
