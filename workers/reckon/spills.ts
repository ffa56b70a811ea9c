/**
 * Formulas whose results fill a block of cells, and have no room for it. The
 * engine tries them no more, even when room is made; and of two that want the
 * same cells it favours the one that was typed first, which nobody can see. Here
 * they are tried again, and the one that comes first on the sheet has the room.
 */
import { ArrayFormulaVertex, EmptyCellVertex } from './internals.ts';
import type { Inside, Place } from './internals.ts';

export class Spills {
  readonly #inside: Inside;
  readonly #blocked = new Set<ArrayFormulaVertex>();

  constructor(inside: Inside) {
    this.#inside = inside;
  }

  block(vertex: ArrayFormulaVertex): void {
    this.#blocked.add(vertex);
  }

  /** Lets those try again that have room now. */
  retry(): void {
    for (const vertex of [...this.#blocked]) {
      if (vertex.idInGraph === undefined || !vertex.array.size.isRef) this.#blocked.delete(vertex);
      else if (this.#makeRoom(vertex)) this.#again(vertex);
    }
  }

  #again(vertex: ArrayFormulaVertex): void {
    const { operations } = this.#inside._crudOperations;
    const lazy = this.#inside._lazilyTransformingAstService;
    this.#blocked.delete(vertex);
    this.#inside._parser.rememberNewAst(vertex.getFormula(lazy));
    const [home, content] = operations.getOldContent(vertex.getAddress(lazy));
    operations.restoreCell(home, content);
  }

  /** True when the cells are free but for results of formulas that come later, which are sent away. */
  #makeRoom(vertex: ArrayFormulaVertex): boolean {
    const graphs = this.#inside._dependencyGraph;
    const lazy = this.#inside._lazilyTransformingAstService;
    const home = vertex.getAddress(lazy);
    const { width, height, isRef } = this.#inside._crudOperations.operations.arraySizePredictor.checkArraySize(vertex.getFormula(lazy), home);
    if (isRef || !Number.isFinite(width * height)) return false;
    const later = new Set<ArrayFormulaVertex>();
    for (let row = home.row; row < home.row + height; row++) {
      for (let col = home.col; col < home.col + width; col++) {
        const there = graphs.addressMapping.getCell({ sheet: home.sheet, row, col });
        if (there === undefined || there === vertex || there instanceof EmptyCellVertex) continue;
        if (!(there instanceof ArrayFormulaVertex)) return false;
        const corner = there.getAddress(lazy);
        if (!comesBefore(home, corner) || (corner.row === row && corner.col === col)) return false;
        later.add(there);
      }
    }
    for (const other of later) graphs.setNoSpaceIfArray(other);
    return true;
  }
}

const comesBefore = (a: Place, b: Place): boolean => a.row < b.row || (a.row === b.row && a.col < b.col);
