/**
 * Formulas whose results fill a block of cells. The engine (HyperFormula 3.5.0)
 * goes wrong with them in five ways that are mended here: one that found no
 * room is not tried again when there is room; of two that want the same cells
 * the one typed first has them, which nobody can see; cells that point into a
 * block get lost when a row or column comes or goes within it; whole columns
 * that are used do not see a block that comes to lie in them, nor the formula's
 * own cell when its block goes. So blocks are folded up before rows or columns
 * move, and laid out again afterwards, those that come first on the sheet first,
 * and are joined with the columns they lie in.
 */
import { ArrayFormulaVertex, EmptyCellVertex } from './internals.ts';
import type { CellRange, Inside, Place } from './internals.ts';

export class Spills {
  readonly #inside: Inside;
  /** Told of every block of cells that is taken away. */
  readonly #cleared: (block: CellRange) => void;
  readonly #all = new Set<ArrayFormulaVertex>();

  constructor(inside: Inside, cleared: (block: CellRange) => void) {
    this.#inside = inside;
    this.#cleared = cleared;
    const graphs = inside._dependencyGraph;
    const set = graphs.setFormulaToCell.bind(graphs);
    graphs.setFormulaToCell = (place, ...rest) => {
      const changes = set(place, ...rest);
      const vertex = graphs.addressMapping.getCell(place);
      if (vertex instanceof ArrayFormulaVertex && !vertex.array.size.isRef) this.#join(vertex);
      return changes;
    };
    const shrink = graphs.shrinkArrayToCorner.bind(graphs);
    graphs.shrinkArrayToCorner = (vertex) => {
      shrink(vertex);
      this.#joinHome(vertex);
    };
  }

  /** When a block goes the library also takes the formula's own cell from the whole columns that use it. */
  #joinHome(vertex: ArrayFormulaVertex): void {
    const { graph } = this.#inside._dependencyGraph;
    const home = this.#home(vertex);
    for (const column of graph.getInfiniteRanges()) if (column.range.addressInRange(home)) graph.addEdge(vertex, column);
  }

  #join(vertex: ArrayFormulaVertex): void {
    const { graph } = this.#inside._dependencyGraph;
    for (const column of graph.getInfiniteRanges()) if (column.range.doesOverlap(vertex.getRange())) graph.addEdge(vertex, column);
  }

  know(vertex: ArrayFormulaVertex): void {
    this.#all.add(vertex);
  }

  /** To be called before another content takes the place of a formula. */
  forget(place: Place): void {
    const vertex = this.#inside._dependencyGraph.addressMapping.getCell(place);
    if (vertex instanceof ArrayFormulaVertex && vertex.isLeftCorner(place)) this.#unlist(vertex);
  }

  /** Takes every block away but for its formula's own cell. */
  fold(): void {
    for (const vertex of this.#standing()) if (!vertex.array.size.isRef) this.#fold(vertex);
  }

  /** Lays those out that are folded up and have room. */
  unfold(): void {
    for (const vertex of this.#standing()) if (vertex.array.size.isRef && this.#makeRoom(vertex)) this.#again(vertex);
  }

  /** In reading order. */
  #standing(): ArrayFormulaVertex[] {
    if (this.#all.size === 0) return [];
    for (const vertex of this.#all) if (vertex.idInGraph === undefined) this.#all.delete(vertex);
    return [...this.#all].sort((a, b) => order(this.#home(a), this.#home(b)));
  }

  #home(vertex: ArrayFormulaVertex): Place {
    return vertex.getAddress(this.#inside._lazilyTransformingAstService);
  }

  #fold(vertex: ArrayFormulaVertex): void {
    this.#cleared(vertex.getRange());
    const graphs = this.#inside._dependencyGraph;
    graphs.setNoSpaceIfArray(vertex);
    // It takes the cells down itself, by the places they have now; they may have others when they are told.
    graphs.getAndClearContentChanges();
  }

  #again(vertex: ArrayFormulaVertex): void {
    const { operations } = this.#inside._crudOperations;
    this.#inside._parser.rememberNewAst(vertex.getFormula(this.#inside._lazilyTransformingAstService));
    const [home, content] = operations.getOldContent(this.#home(vertex));
    this.#unlist(vertex);
    this.#all.delete(vertex);
    operations.restoreCell(home, content);
  }

  /** The engine lists blocks by their first cell and would keep one whose formula is gone. */
  #unlist(vertex: ArrayFormulaVertex): void {
    this.#inside._dependencyGraph.arrayMapping.removeArray(vertex.getRange());
  }

  /** True when the cells are free, but for results of formulas that come later, which are folded up. */
  #makeRoom(vertex: ArrayFormulaVertex): boolean {
    const { addressMapping } = this.#inside._dependencyGraph;
    const home = this.#home(vertex);
    const { arraySizePredictor } = this.#inside._crudOperations.operations;
    const { width, height, isRef } = arraySizePredictor.checkArraySize(vertex.getFormula(this.#inside._lazilyTransformingAstService), home);
    if (isRef) return true; // It fills one cell now.
    if (!Number.isFinite(width * height)) return false;
    const later = new Set<ArrayFormulaVertex>();
    for (let row = home.row; row < home.row + height; row++) {
      for (let col = home.col; col < home.col + width; col++) {
        const there = addressMapping.getCell({ sheet: home.sheet, row, col });
        if (there === undefined || there === vertex || there instanceof EmptyCellVertex) continue;
        if (!(there instanceof ArrayFormulaVertex)) return false;
        const corner = this.#home(there);
        if (order(home, corner) > 0 || (corner.row === row && corner.col === col)) return false;
        later.add(there);
      }
    }
    for (const other of later) this.#fold(other);
    return true;
  }
}

const order = (a: Place, b: Place): number => a.sheet - b.sheet || a.row - b.row || a.col - b.col;
