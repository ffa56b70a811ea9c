/** What our functions work with: the interpreter's parts, and the values of blocks of cells. */
import { columnName } from '../../../src/formula/index.ts';
import type { Dimension } from '../../../src/quantities/index.ts';
import type { Arithmetic } from '../arithmetic.ts';
import { Cautions } from '../cautions.ts';
import { workedOut } from '../evaluate.ts';
import { ErrorType, SimpleRangeValue } from '../internals.ts';
import type { Ast, CallFunction, CellRange, Helper, Interpreter, Place, State } from '../internals.ts';
import type { PlaceNames } from '../sentences.ts';
import { Dimensioned, Measure, Refusal, sayOf } from '../values.ts';
import { toldResult } from './faults.ts';
import { Lays } from './lay.ts';

/** A function of ours: the values in its brackets are not worked out yet. */
export type Own = (call: Call) => unknown;

/** A function's value or block as it came out of one place between its brackets. */
export interface Given {
  readonly ast: Ast;
  readonly value: unknown;
}

/** Works out one call of a function. */
export class Call {
  readonly #given: Given[] = [];

  constructor(readonly name: string, readonly ast: Ast, readonly state: State, readonly tools: Tools) {}

  get args(): readonly Ast[] {
    return this.ast.args ?? [];
  }

  /** Every value between the brackets, each worked out once. */
  get given(): readonly Given[] {
    for (let place = 0; place < this.args.length; place++) this.at(place);
    return this.#given;
  }

  /** One of them. */
  at(place: number): Given {
    const ast = this.args[place]!;
    return this.#given[place] ??= { ast, value: this.tools.interpreter.evaluateAst(ast, this.state) };
  }

  /** The engine's own function with these values; the given ones where none are named. */
  library(values: readonly unknown[] = this.given.map(({ value }) => value)): unknown {
    const library = this.tools.library(this.name);
    if (library === undefined) return new Refusal(ErrorType.NAME, `There is no function ${this.name}.`);
    // An empty place between the brackets must stay one: it stands for the usual value.
    const args = values.map((value, i) => {
      const part = this.args[i]!;
      return part.type === 'EMPTY' ? part : workedOut(value, part);
    });
    return this.told(library({ ...this.ast, args }, this.state));
  }

  /** What another of the engine's functions makes of values that are worked out. */
  engine(name: string, values: readonly unknown[]): unknown {
    const part: Ast = { type: 'STRING' };
    const args = values.map((value) => workedOut(value, part));
    return this.told(this.tools.library(name)!({ ...this.ast, procedureName: name, args }, this.state));
  }

  /** A result of the engine's own function; its errors about the brackets get the function's name. */
  told(result: unknown): unknown {
    return toldResult(this, result);
  }

  /** How a formula would write the cell that a value came from; `undefined` when it came from no cell. */
  nameOf({ ast, value }: Given, row = 0, col = 0): string | undefined {
    const own = this.state.formulaAddress.sheet;
    if (value instanceof SimpleRangeValue) {
      if (value.range === undefined) return undefined;
      const { sheet, row: top, col: left } = value.range.start;
      return this.tools.names.cell({ sheet, row: top + row, col: left + col }, own);
    }
    return ast.type === 'CELL_REFERENCE' ? this.tools.names.cell(ast.reference!.toSimpleCellAddress(this.state.formulaAddress), own) : undefined;
  }

  /** The cells that a block came from, as `A1:A9`; `undefined` for what was worked out. */
  areaOf(given: Given): string | undefined {
    const first = this.nameOf(given);
    if (first === undefined || !(given.value instanceof SimpleRangeValue)) return first;
    const { start, end } = given.value.range!;
    if (start.row === end.row && start.col === end.col) return first;
    const last = [Number.isFinite(end.col) ? columnName(end.col) : '', Number.isFinite(end.row) ? end.row + 1 : ''].join('');
    if (last === '') return undefined;
    const sheet = first.slice(0, first.lastIndexOf('!') + 1);
    const top = [Number.isFinite(end.col) ? columnName(start.col) : '', Number.isFinite(end.row) ? start.row + 1 : ''].join('');
    return `${sheet}${top}:${last}`;
  }

  /** Why a figure with a unit cannot stand in a certain place; `undefined` when there is none in it. */
  unitFault(given: Given, why = `${this.name} does not take`): Refusal | undefined {
    const found = this.tools.firstWithUnit(given.value);
    if (found === undefined) return undefined;
    const name = this.nameOf(given, found.row, found.col);
    const figure = sayOf(found.value);
    const mend = found.value instanceof Measure ? `divide it by ${ONE[found.value.dimension]} for a plain number` : 'write the one to reckon with';
    return new Refusal(ErrorType.VALUE, `${why} ${kindOf(found.value)}: ${name === undefined ? '' : `${name} is `}${figure}; ${mend}.`);
  }
}

const KINDS: Readonly<Record<Dimension, string>> = { number: 'a number', length: 'a length', area: 'an area', angle: 'an angle' };

const ONE: Readonly<Record<Dimension, string>> = { number: '1', length: '1 cm', area: '1 cm²', angle: '1°' };

export function kindOf(value: Dimensioned): string {
  return value instanceof Measure ? KINDS[value.dimension] : 'two figures';
}

export interface Found {
  readonly value: Dimensioned;
  /** From the top left of its block. */
  readonly row: number;
  readonly col: number;
}

/** Kept with a block of cells until one of them changes. */
const WITH_UNIT = 'TT.WITH_UNIT';

export class Tools {
  readonly cautions = new Cautions();
  readonly lays = new Lays();

  constructor(
    readonly interpreter: Interpreter,
    readonly arithmetic: Arithmetic,
    readonly names: PlaceNames,
    readonly library: (name: string) => CallFunction | undefined,
  ) {}

  get helper(): Helper {
    return this.interpreter.arithmeticHelper;
  }

  /** The first figure with a unit in a value or a block. */
  firstWithUnit(value: unknown): Found | undefined {
    if (value instanceof Dimensioned) return { value, row: 0, col: 0 };
    if (!(value instanceof SimpleRangeValue)) return undefined;
    const vertex = value.range && this.interpreter.dependencyGraph.getRange(value.range.start, value.range.end);
    if (vertex === undefined) return firstIn(value.data);
    let found = vertex.getFunctionValue(WITH_UNIT) as Found | null | undefined;
    if (found === undefined) {
      found = firstIn(value.data) ?? null;
      vertex.setFunctionValue(WITH_UNIT, found);
    }
    return found ?? undefined;
  }

  hasUnit(given: readonly Given[]): boolean {
    return given.some(({ value }) => this.firstWithUnit(value) !== undefined);
  }

  /** Visits the cells of a block row by row; places count from its top left. */
  eachCell(block: Pick<CellRange, 'start' | 'end'>, visit: (value: unknown, row: number, col: number) => void): void {
    const { addressMapping } = this.interpreter.dependencyGraph;
    const { start } = block;
    this.eachPlace(block, (place) => visit(addressMapping.getCellValue(place), place.row - start.row, place.col - start.col));
  }

  /** Visits the places of a block row by row, those of whole rows and columns as far as the sheet is filled. The place is one object, changed for each visit. */
  eachPlace({ start, end }: Pick<CellRange, 'start' | 'end'>, visit: (place: Place) => void): void {
    const { addressMapping } = this.interpreter.dependencyGraph;
    const lastRow = Number.isFinite(end.row) ? end.row : addressMapping.getSheetHeight(start.sheet) - 1;
    const lastCol = Number.isFinite(end.col) ? end.col : addressMapping.getSheetWidth(start.sheet) - 1;
    const place: { -readonly [K in keyof Place]: Place[K] } = { sheet: start.sheet, row: 0, col: 0 };
    for (let row = start.row; row <= lastRow; row++) {
      for (let col = start.col; col <= lastCol; col++) {
        place.row = row;
        place.col = col;
        visit(place);
      }
    }
  }
}

function firstIn(data: readonly (readonly unknown[])[]): Found | undefined {
  for (let row = 0; row < data.length; row++) {
    const cells = data[row]!;
    for (let col = 0; col < cells.length; col++) {
      const value = cells[col];
      if (value instanceof Dimensioned) return { value, row, col };
    }
  }
  return undefined;
}
