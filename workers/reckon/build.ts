/**
 * Fills an empty engine with a workbook. Does what the engine's own builder
 * does, with less to allocate for each cell, which is most of the time that a
 * large workbook takes to open.
 */
import { engineSheet, isFormula } from '../../src/formula/index.ts';
import { readContent } from './content.ts';
import type { Formulas, Tree } from './formulas.ts';
import { appendEdge } from './graph.ts';
import { AbsoluteCellRange, ArrayFormulaVertex, ArraySize, CellContent, ParsingErrorVertex, ScalarFormulaVertex, ValueCellVertex } from './internals.ts';
import type { FormulaVertex, Inside, Place, RangeVertex, Reference, RelativeDependency } from './internals.ts';

export interface SheetContent {
  readonly id: number;
  /** Rows and cells where nothing is typed may be missing. */
  readonly rows: readonly (readonly ({ readonly raw: string } | undefined)[] | undefined)[];
}

export function fill(inside: Inside, formulas: Formulas, sheets: readonly SheetContent[]): void {
  const { addressMapping, sheetMapping } = inside._dependencyGraph;
  for (const { id, rows } of sheets) {
    sheetMapping.addSheetWithId(id, engineSheet(id));
    addressMapping.addSheetAndSetStrategyBasedOnBoundaries(id, boundariesOf(rows));
  }
  const filling = new Filling(inside, formulas);
  for (const { id, rows } of sheets) {
    for (let row = 0; row < rows.length; row++) {
      const cells = rows[row];
      if (cells === undefined) continue;
      for (let col = 0; col < cells.length; col++) {
        const raw = cells[col]?.raw;
        if (raw) filling.put({ sheet: id, row, col }, raw);
      }
    }
  }
  filling.join();
}

/** How far a sheet is filled, and what part of that: by this the engine chooses how to keep it. */
function boundariesOf(rows: SheetContent['rows']): { height: number; width: number; fill: number } {
  let [height, width, filled] = [0, 0, 0];
  for (let row = 0; row < rows.length; row++) {
    const cells = rows[row];
    if (cells === undefined) continue;
    for (let col = 0; col < cells.length; col++) {
      if (!cells[col]?.raw) continue;
      height = row + 1;
      if (col >= width) width = col + 1;
      filled += 1;
    }
  }
  return { height, width, fill: filled === 0 ? 0 : filled / (height * width) };
}

/** Whether a reference is to the same cell of the sheet wherever its formula stands. */
export const isFixed = (reference: Reference | undefined): boolean => reference?.type === 'CELL_REFERENCE_ABSOLUTE';

class Filling {
  readonly #inside: Inside;
  readonly #formulas: Formulas;
  readonly #vertices: FormulaVertex[] = [];
  readonly #trees: Tree[] = [];
  /** Blocks of a formula's own sheet that are the same ones wherever it stands. */
  readonly #fixed = new Map<RelativeDependency, RangeVertex>();
  /** How the formula that is being joined is. */
  #join = appendEdge;
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
    const { _dependencyGraph: graphs, _lazilyTransformingAstService: lazy } = this.#inside;
    for (let i = 0; i < this.#vertices.length; i++) {
      const vertex = this.#vertices[i]!;
      const place = vertex.getAddress(lazy);
      const { dependencies } = this.#trees[i]!;
      this.#join = appendEdge;
      for (let d = 0; d < dependencies.length; d++) this.#joinWith(dependencies[d]!, place, vertex);
    }
    // It takes down what the blocks left behind.
    graphs.getAndClearContentChanges();
  }

  #joinWith(dependency: RelativeDependency, place: Place, vertex: FormulaVertex): void {
    const graphs = this.#inside._dependencyGraph;
    const fixed = this.#fixed.get(dependency);
    if (fixed !== undefined && fixed.range.sheet === place.sheet) {
      this.#join(graphs.graph, fixed, vertex);
      return;
    }
    const used = dependency.absolutize(place);
    const cell = 'row' in used ? graphs.addressMapping.getCell(used) : undefined;
    if (cell !== undefined) {
      this.#join(graphs.graph, cell, vertex);
      return;
    }
    graphs.processCellDependencies([used], vertex);
    // Cells were joined with a block that is new, perhaps, so that the formula's edge need not be their last one any more.
    this.#join = (graph, from, to) => graph.addEdge(from, to);
    if (used instanceof AbsoluteCellRange && used.sheet === place.sheet && isFixed(dependency.start) && isFixed(dependency.end)) {
      const block = graphs.getRange(used.start, used.end);
      if (block !== undefined) this.#fixed.set(dependency, block);
    }
  }
}
