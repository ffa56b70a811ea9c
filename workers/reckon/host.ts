/**
 * The engine's inside: HyperFormula with our content reader, formulas, signs
 * and functions put in, and its recomputation run from here, so that equal
 * results stop a change and changed cells are noted as they come.
 *
 * A sheet has the same number here as in the workbook; below 0 are names.
 */
import { engineName, engineSheet, MAX_COLUMNS, MAX_ROWS, rewriteReferences } from '../../src/formula/index.ts';
import type { CellCaution } from '../../src/reckoning/protocol.ts';
import type { Area, Effect } from '../../src/workbook/types.ts';
import type { KeptLays } from '../../src/workbook/index.ts';
import { Arithmetic } from './arithmetic.ts';
import { fill } from './build.ts';
import type { SheetContent } from './build.ts';
import { Changed } from './changed.ts';
import type { Shift } from './changed.ts';
import { NoCells, pointingAt, readContent } from './content.ts';
import type { TriedFigure } from './content.ts';
import { Evaluation } from './evaluate.ts';
import { Formulas } from './formulas.ts';
import { quicken } from './graph.ts';
import { LAYS_NAME } from './functions/lay.ts';
import { functionTable } from './functions/table.ts';
import { Tools } from './functions/tools.ts';
import {
  AddColumnsCommand, AddRowsCommand, ArrayFormulaVertex, CellError, DenseSparseChooseBasedOnThreshold, ErrorType,
  HyperFormula, InterpreterState, ParsingErrorVertex, RangeVertex, RemoveColumnsCommand, RemoveRowsCommand, ScalarFormulaVertex, SimpleRangeValue,
} from './internals.ts';
import type { FormulaVertex, Inside, Place, Vertex } from './internals.ts';
import { visitInOrder } from './order.ts';
import { orderRows, unreadIn } from './order-rows.ts';
import { lostName, PlaceNames } from './sentences.ts';
import { Spills } from './spills.ts';
import { refuse, sameValue } from './values.ts';

const CONFIG = {
  licenseKey: 'gpl-v3',
  maxRows: MAX_ROWS,
  maxColumns: MAX_COLUMNS,
  // Otherwise `2 1/4` is the second of January.
  dateFormats: ['YYYY-MM-DD'],
  timeFormats: [],
  functionArgSeparator: ',',
  decimalSeparator: '.',
  arrayColumnSeparator: ';',
  arrayRowSeparator: '|',
  // Undoing is the workbook's.
  undoLimit: 0,
  // A sheet with one cell in its last row must not cost a million empty rows.
  chooseAddressMappingPolicy: new DenseSparseChooseBasedOnThreshold(0.05),
} as const;

export const isFormulaVertex = (vertex: Vertex | undefined): vertex is FormulaVertex =>
  vertex instanceof ScalarFormulaVertex || vertex instanceof ArrayFormulaVertex;

type StructureEffect = Extract<Effect, { readonly count: number }>;

const COMMANDS = {
  insertRows: AddRowsCommand, removeRows: RemoveRowsCommand, insertColumns: AddColumnsCommand, removeColumns: RemoveColumnsCommand,
} as const;

const SHIFTS: Readonly<Record<StructureEffect['do'], Pick<Shift, 'axis' | 'kind'>>> = {
  insertRows: { axis: 'row', kind: 'insert' }, removeRows: { axis: 'row', kind: 'remove' },
  insertColumns: { axis: 'col', kind: 'insert' }, removeColumns: { axis: 'col', kind: 'remove' },
};

export class Host {
  readonly inside: Inside;
  readonly names = new PlaceNames();
  readonly tools: Tools;
  readonly formulas: Formulas;
  readonly changed = new Changed();
  readonly #evaluation: Evaluation;
  readonly #spills: Spills;
  /** Formulas whose result is an error, and some that are no more. */
  readonly #faulty = new Set<FormulaVertex>();
  /** Those of them to be told anew because the places that they name may have moved. */
  #toTell: readonly FormulaVertex[] = [];

  constructor() {
    const inside = this.inside = HyperFormula.buildEmpty(CONFIG);
    inside._cellContentParser.parse = readContent;
    quicken(inside._dependencyGraph);
    this.formulas = new Formulas(inside._parser, this.operations.arraySizePredictor);
    this.#spills = new Spills(inside, (block) => this.changed.addBlock(block));
    const { interpreter } = inside._evaluator;
    const arithmetic = new Arithmetic(interpreter.arithmeticHelper);
    let tools: Tools | undefined;
    const table = functionTable(inside._functionRegistry, (library) => tools = new Tools(interpreter, arithmetic, this.names, library));
    this.tools = tools!;
    this.#evaluation = new Evaluation(interpreter, inside._functionRegistry, arithmetic, table, this.names);
  }

  get graphs(): Inside['_dependencyGraph'] {
    return this.inside._dependencyGraph;
  }

  get operations(): Inside['_crudOperations']['operations'] {
    return this.inside._crudOperations.operations;
  }

  /** Fills an empty host and works everything out. */
  build(sheets: readonly SheetContent[], names: readonly { readonly name: string; readonly area: Area | null }[], kept?: KeptLays): void {
    fill(this.inside, this.formulas, sheets);
    for (const { name, area } of names) this.setName(name, area);
    if (kept) this.setLayouts(kept);
    this.operations.getAndClearContentChanges();
    this.graphs.clearDirtyVertices();
    // What was typed needs no working out, so the search starts at the formulas.
    const formulas = this.graphs.graph.getNodes().filter((vertex) => isFormulaVertex(vertex) || vertex instanceof RangeVertex);
    visitInOrder(this.graphs.graph, formulas, (vertex) => {
      if (isFormulaVertex(vertex)) this.#work(vertex);
      return true;
    }, (vertex) => this.#circle(vertex));
    this.changed.take();
  }

  valueAt(place: Place): unknown {
    return this.graphs.addressMapping.getCellValue(place);
  }

  setCell(place: Place, raw: string | TriedFigure): void {
    this.#spills.forget(place);
    this.operations.setCellContent(place, raw === '' ? null : raw);
  }

  addSheet(id: number): void {
    this.operations.addSheetWithId(id, engineSheet(id));
  }

  removeSheet(id: number): void {
    this.#drain();
    this.operations.removeSheet(id);
    this.changed.dropSheet(id);
  }

  /** Points a name at cells; at no cells when they were removed. */
  setName(name: string, area: Area | null): void {
    const known = engineName(name);
    const content = area === null ? new NoCells(lostName(name)) : pointingAt(area);
    const { operations } = this;
    if (this.inside._namedExpressions.namedExpressionForScope(known)) operations.changeNamedExpressionExpression(known, content);
    else operations.addNamedExpression(known, content);
    // What looks at where a name points need not use what stands there.
    this.graphs.graph.markChangingWithStructureNodesAsDirty();
    const vertex = this.graphs.addressMapping.getCell(this.inside._namedExpressions.namedExpressionForScope(known)!.address);
    // A block keeps where it stands, which the engine would not look at again after rows came and went.
    if (isFormulaVertex(vertex) && area !== null && (area.top !== area.bottom || area.left !== area.right)) {
      this.graphs.markAsDependentOnStructureChange(vertex);
    }
  }

  /** What formulas can read of kept layouts from now on. */
  setLayouts(kept: KeptLays): void {
    const content = this.tools.lays.take(kept);
    const { operations } = this;
    if (this.inside._namedExpressions.namedExpressionForScope(LAYS_NAME)) operations.changeNamedExpressionExpression(LAYS_NAME, content);
    else operations.addNamedExpression(LAYS_NAME, content);
  }

  removeName(name: string): void {
    const known = engineName(name);
    if (!this.inside._namedExpressions.namedExpressionForScope(known)) return;
    this.operations.removeNamedExpression(known);
    this.graphs.graph.markChangingWithStructureNodesAsDirty();
  }

  /** Inserts or removes rows or columns; formulas and names follow. */
  restructure({ do: act, sheet, at, count }: StructureEffect): void {
    this.#drain();
    this.#spills.fold();
    const command = new COMMANDS[act](sheet, [[at, count]]);
    if (act === 'insertRows') this.operations.addRows(command);
    else if (act === 'removeRows') this.operations.removeRows(command);
    else if (act === 'insertColumns') this.operations.addColumns(command);
    else this.operations.removeColumns(command);
    // A whole column is not marked when an empty row comes or goes, but the places kept with it are others now.
    for (const column of this.graphs.graph.getInfiniteRanges()) column.clearCache();
    this.changed.shift(sheet, { ...SHIFTS[act], at, count });
    this.#followUnread({ do: act, sheet, at, count });
  }

  /** Rows of a block change places, and formulas with them. */
  orderRows(area: Area, order: readonly number[]): void {
    this.#drain();
    this.#spills.fold();
    const rowAfter = orderRows(this.inside, area, order);
    this.changed.order(area, rowAfter);
    if (!this.formulas.metUnreadable) return;
    for (const [place, raw] of unreadIn(this.inside, area, rowAfter)) this.setCell(place, raw);
  }

  /** Formulas that could not be read follow by their text, since the engine has nothing else of them. */
  #followUnread(effect: StructureEffect): void {
    const { sheets, metUnreadable } = this.formulas;
    if (!metUnreadable) return;
    const followed: [Place, string][] = [];
    for (const sheet of sheets) {
      for (const [place, vertex] of this.graphs.addressMapping.sheetEntries(sheet.id)) {
        if (!(vertex instanceof ParsingErrorVertex)) continue;
        const before = vertex.rawInput as string;
        const after = rewriteReferences(before, sheet, sheets, effect);
        if (after !== before) followed.push([place, after]);
      }
    }
    for (const [place, raw] of followed) this.setCell(place, raw);
  }

  /** Works every cell with an error out again and tells it: the places and sheets that it names may be others now. */
  reviewErrors(): void {
    for (const vertex of this.#faulty) {
      if (vertex.idInGraph === undefined) this.#faulty.delete(vertex);
      else this.graphs.graph.markNodeAsDirty(vertex);
    }
    this.#toTell = [...this.#faulty];
  }

  /** The same for every cell with a caution, which names the cell that mends it. */
  reviewCautions(): void {
    const pinned = this.tools.cautions.formulas();
    for (const vertex of pinned) this.graphs.graph.markNodeAsDirty(vertex);
    this.#toTell = [...this.#toTell, ...pinned];
  }

  cautionsAt(place: Place): readonly CellCaution[] {
    const vertex = this.graphs.addressMapping.getCell(place);
    if (!isFormulaVertex(vertex)) return [];
    const home = vertex.getAddress(this.inside._lazilyTransformingAstService);
    return home.row === place.row && home.col === place.col ? this.tools.cautions.of(vertex, home, this.inside) : [];
  }

  /** Works out what depends on anything that changed, and notes every cell whose result is another than before. */
  recompute(): void {
    // Chance and the date are to be worked out at every change, but once.
    const seen = new Set<Vertex>();
    for (let round = 0; round < ROUNDS; round++) {
      this.#spills.unfold();
      this.#drain();
      const dirty = this.graphs.verticesToRecompute();
      this.graphs.clearDirtyVertices();
      this.inside.compactLazyTransformationsIfNeeded();
      if (dirty.length === 0 || (round > 0 && dirty.every((vertex) => seen.has(vertex)))) break;
      for (const vertex of dirty) seen.add(vertex);
      visitInOrder(this.graphs.graph, dirty, (vertex) => this.#renew(vertex), (vertex) => this.#circle(vertex));
    }
    for (const vertex of this.#toTell) if (vertex.idInGraph !== undefined) this.#note(vertex);
    this.#toTell = [];
  }

  /** Notes what was typed since the last call, before places move or are told. */
  #drain(): void {
    for (const { address } of this.operations.getAndClearContentChanges().getChanges()) this.changed.add(address);
  }

  /** True when what depends on this must be worked out too. */
  #renew(vertex: Vertex): boolean {
    if (vertex instanceof RangeVertex) {
      vertex.clearCache();
      return true;
    }
    if (!isFormulaVertex(vertex)) return true;
    const before = vertex.isComputed() ? vertex.getCellValue() : undefined;
    const after = this.#work(vertex);
    if (vertex instanceof ScalarFormulaVertex && sameValue(before, after)) {
      vertex.setCellValue(before);
      return false;
    }
    // One without room was given its error when the room was taken, before any that use it were told.
    if (!(after instanceof CellError) && sameBlock(before, after)) return false;
    this.#note(vertex);
    return true;
  }

  #circle(vertex: Vertex): void {
    if (vertex instanceof RangeVertex) vertex.clearCache();
    if (!isFormulaVertex(vertex)) return;
    this.tools.cautions.forget(vertex);
    this.#keep(vertex, new CellError(ErrorType.CYCLE, undefined, vertex));
    this.#note(vertex);
  }

  #note(vertex: FormulaVertex): void {
    if (vertex instanceof ArrayFormulaVertex) this.changed.addBlock(vertex.getRange());
    else this.changed.add(vertex.getAddress(this.inside._lazilyTransformingAstService));
  }

  /** Works one formula out, keeps its result, and notes it when its cautions are others than before. */
  #work(vertex: FormulaVertex): unknown {
    const { cautions } = this.tools;
    cautions.begin();
    const value = this.#workOut(vertex);
    const lazy = this.inside._lazilyTransformingAstService;
    if (cautions.met) cautions.leaveOutUnused(this, vertex.getFormula(lazy), new InterpreterState(vertex.getAddress(lazy), false, vertex));
    if (cautions.settle(vertex)) this.#note(vertex);
    return value;
  }

  #workOut(vertex: FormulaVertex): unknown {
    const lazy = this.inside._lazilyTransformingAstService;
    if (vertex instanceof ArrayFormulaVertex) {
      this.#spills.know(vertex);
      if (vertex.array.size.isRef || !this.graphs.isThereSpaceForArray(vertex)) {
        this.#faulty.add(vertex);
        return vertex.setNoSpace();
      }
    }
    const place = vertex.getAddress(lazy);
    let value: unknown;
    try {
      value = this.#evaluation.evaluate(vertex.getFormula(lazy), new InterpreterState(place, false, vertex));
      if (value === undefined) throw new Error('A function gave nothing.');
      if (vertex instanceof ScalarFormulaVertex && place.sheet >= 0 && value instanceof SimpleRangeValue) value = refuse(ONE_CELL).arisenAt(place);
      return this.#keep(vertex, value);
    } catch {
      // A function of the engine's library failed; only its own cell may suffer.
      return this.#keep(vertex, refuse('This could not be worked out with these values.').arisenAt(place));
    }
  }

  #keep(vertex: FormulaVertex, value: unknown): unknown {
    if (value instanceof CellError) this.#faulty.add(vertex);
    else if (this.#faulty.size > 0) this.#faulty.delete(vertex);
    return vertex.setCellValue(value);
  }
}

/** Blocks of results that make room for each other; more would mean that they do so for ever. */
const ROUNDS = 10;

const ONE_CELL = 'This gives a block of cells, and a cell holds one value: choose one, or reckon with them, as in SUM(A1:A9).';

function sameBlock(a: unknown, b: unknown): boolean {
  if (!(a instanceof SimpleRangeValue) || !(b instanceof SimpleRangeValue)) return sameValue(a, b);
  return a.range === undefined && b.range === undefined && a.height() === b.height() && a.width() === b.width()
    && a.data.every((cells, row) => cells.every((cell, col) => sameValue(cell, b.data[row]![col])));
}
