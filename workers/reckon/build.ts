/**
 * Fills an empty engine with a workbook. Does what the engine's own builder
 * does, with less to allocate for each cell, which is most of the time that a
 * large workbook takes to open.
 */
import { engineSheet, isFormula } from '../../src/formula/index.ts';
import { readContent } from './content.ts';
import type { Formulas, Tree } from './formulas.ts';
import { ArrayFormulaVertex, ArraySize, CellContent, findBoundaries, ParsingErrorVertex, ScalarFormulaVertex, ValueCellVertex } from './internals.ts';
import type { FormulaVertex, Inside, Place } from './internals.ts';

export interface SheetContent {
  readonly id: number;
  /** What is typed in each cell; `null` for an empty one. */
  readonly rows: readonly (readonly (string | null)[])[];
}

export function fill(inside: Inside, formulas: Formulas, sheets: readonly SheetContent[]): void {
  const { addressMapping, sheetMapping } = inside._dependencyGraph;
  for (const { id, rows } of sheets) {
    sheetMapping.addSheetWithId(id, engineSheet(id));
    addressMapping.addSheetAndSetStrategyBasedOnBoundaries(id, findBoundaries(rows));
  }
  const filling = new Filling(inside, formulas);
  for (const { id, rows } of sheets) {
    for (let row = 0; row < rows.length; row++) {
      const cells = rows[row]!;
      for (let col = 0; col < cells.length; col++) {
        const raw = cells[col];
        if (raw !== null && raw !== undefined) filling.put({ sheet: id, row, col }, raw);
      }
    }
  }
  filling.join();
}

class Filling {
  readonly #inside: Inside;
  readonly #formulas: Formulas;
  readonly #vertices: FormulaVertex[] = [];
  readonly #trees: Tree[] = [];
  #blocks = false;

  constructor(inside: Inside, formulas: Formulas) {
    this.#inside = inside;
    this.#formulas = formulas;
  }

  put(place: Place, raw: string): void {
    const graphs = this.#inside._dependencyGraph;
    if (this.#blocks) this.#fold(place);
    if (isFormula(raw)) {
      const tree = this.#formulas.treeOf(raw, place);
      if (tree.errors.length > 0) graphs.addVertex(place, new ParsingErrorVertex(tree.errors, raw));
      else this.#putFormula(place, tree);
      return;
    }
    const content = readContent(raw);
    if (!(content instanceof CellContent.Empty)) graphs.addVertex(place, new ValueCellVertex((content as { value: unknown }).value, raw));
  }

  #putFormula(place: Place, tree: Tree): void {
    const graphs = this.#inside._dependencyGraph;
    const vertex = tree.single ? new ScalarFormulaVertex(tree.ast, place, this.#inside._lazilyTransformingAstService.version()) : this.#block(place, tree);
    if (vertex instanceof ArrayFormulaVertex) graphs.addArrayVertex(place, vertex);
    else graphs.addVertex(place, vertex);
    if (tree.hasVolatileFunction) graphs.markAsVolatile(vertex);
    if (tree.hasStructuralChangeFunction) graphs.markAsDependentOnStructureChange(vertex);
    this.#vertices.push(vertex);
    this.#trees.push(tree);
  }

  #block(place: Place, { ast }: Tree): ArrayFormulaVertex {
    const { width, height } = this.#inside._crudOperations.operations.arraySizePredictor.checkArraySize(ast, place);
    this.#blocks = true;
    return new ArrayFormulaVertex(ast, place, new ArraySize(width, height));
  }

  /** What is typed goes before a block of results that lies there. */
  #fold(place: Place): void {
    const graphs = this.#inside._dependencyGraph;
    const there = graphs.addressMapping.getCell(place);
    if (there instanceof ArrayFormulaVertex) graphs.shrinkArrayToCorner(there);
  }

  /** Joins every formula with what it uses, when all cells are there. */
  join(): void {
    const lazy = this.#inside._lazilyTransformingAstService;
    this.#vertices.forEach((vertex, i) => {
      const place = vertex.getAddress(lazy);
      this.#inside._dependencyGraph.processCellDependencies(this.#trees[i]!.dependencies.map((each) => each.absolutize(place)), vertex);
    });
    // It takes down what the blocks left behind.
    this.#inside._dependencyGraph.getAndClearContentChanges();
  }
}
