/**
 * What we use of HyperFormula 3.5.0 beyond its public door, and nothing more.
 * Its own typings describe the public classes; these describe the parts inside
 * that quantities, our sentences and the change sets hang on. The contract
 * test (`tests/unit/reckon/internals.test.ts`) checks every member named here.
 */
declare module '*/hyperformula/es/index.mjs' {
  import type { Engine, Language } from '*/hyperformula/es/shapes.mjs';
  export class HyperFormula {
    static readonly version: string;
    static buildEmpty(config: object): Engine;
    static getLanguage(code: string): Language;
  }
  /** Chooses how a sheet's cells are stored by how full it is. */
  export class DenseSparseChooseBasedOnThreshold {
    constructor(threshold: number);
  }
}

declare module '*/hyperformula/es/Cell.mjs' {
  import type { CellAddress, Vertex } from '*/hyperformula/es/shapes.mjs';
  export const ErrorType: {
    readonly DIV_BY_ZERO: 'DIV_BY_ZERO'; readonly NAME: 'NAME'; readonly VALUE: 'VALUE'; readonly NUM: 'NUM'; readonly NA: 'NA';
    readonly CYCLE: 'CYCLE'; readonly REF: 'REF'; readonly SPILL: 'SPILL'; readonly LIC: 'LIC'; readonly ERROR: 'ERROR';
  };
  export class CellError {
    constructor(type: string, message?: string, root?: Vertex);
    readonly type: string;
    readonly message?: string;
    readonly root?: Vertex;
    attachRootVertex(vertex: Vertex): CellError;
  }
  export function isColOrRowInvalid(address: CellAddress): boolean;
}

declare module '*/hyperformula/es/error-message.mjs' {
  export const ErrorMessage: Readonly<Record<string, unknown>>;
}

declare module '*/hyperformula/es/CellContentParser.mjs' {
  import type { CellError } from '*/hyperformula/es/Cell.mjs';
  export namespace CellContent {
    class Number { constructor(value: unknown); readonly value: unknown }
    class String { constructor(value: string); readonly value: string }
    class Boolean { constructor(value: boolean); readonly value: boolean }
    class Empty { static getSingletonInstance(): Empty }
    class Formula { constructor(formula: unknown); readonly formula: unknown }
    class Error { constructor(type: string, message?: string); value: CellError }
  }
}

declare module '*/hyperformula/es/ArraySize.mjs' {
  export class ArraySize {
    constructor(width: number, height: number);
    readonly width: number;
    readonly height: number;
  }
}

declare module '*/hyperformula/es/Operations.mjs' {
  type Indexes = [at: number, count: number][];
  export class AddRowsCommand { constructor(sheet: number, indexes: Indexes) }
  export class RemoveRowsCommand { constructor(sheet: number, indexes: Indexes) }
  export class AddColumnsCommand { constructor(sheet: number, indexes: Indexes) }
  export class RemoveColumnsCommand { constructor(sheet: number, indexes: Indexes) }
}

declare module '*/hyperformula/es/SimpleRangeValue.mjs' {
  import type { CellRange, Graphs } from '*/hyperformula/es/shapes.mjs';
  export class SimpleRangeValue {
    /** Where it stands; not there for a block that was worked out. */
    readonly range?: CellRange;
    readonly data: unknown[][];
    width(): number;
    height(): number;
    static onlyValues(data: unknown[][]): SimpleRangeValue;
    static onlyRange(range: CellRange, graph: Graphs): SimpleRangeValue;
    static fromRange(data: unknown[][], range: CellRange, graph: Graphs): SimpleRangeValue;
  }
}

declare module '*/hyperformula/es/interpreter/InterpreterValue.mjs' {
  export const EmptyValue: unique symbol;
  export class RichNumber {
    constructor(val: number, format?: string);
    val: number;
    format?: string;
    fromNumber(val: number): this;
  }
  export class PercentNumber extends RichNumber { getDetailedType(): string }
  export class DateNumber extends RichNumber { getDetailedType(): string }
  export class TimeNumber extends RichNumber { getDetailedType(): string }
  export class DateTimeNumber extends RichNumber { getDetailedType(): string }
}

declare module '*/hyperformula/es/interpreter/ArithmeticHelper.mjs' {
  import type { SimpleRangeValue } from '*/hyperformula/es/SimpleRangeValue.mjs';
  import type { State } from '*/hyperformula/es/shapes.mjs';
  export function coerceRangeToScalar(range: SimpleRangeValue, state: State): unknown;
}

declare module '*/hyperformula/es/interpreter/InterpreterState.mjs' {
  import type { CellAddress, Vertex } from '*/hyperformula/es/shapes.mjs';
  export class InterpreterState {
    constructor(formulaAddress: CellAddress, arraysFlag: boolean, formulaVertex?: Vertex);
    readonly formulaAddress: CellAddress;
    readonly arraysFlag: boolean;
    readonly formulaVertex?: Vertex;
  }
}

declare module '*/hyperformula/es/AbsoluteCellRange.mjs' {
  import type { Ast, CellAddress, CellRange } from '*/hyperformula/es/shapes.mjs';
  export class AbsoluteCellRange implements CellRange {
    static fromAst(ast: Ast, formula: CellAddress): CellRange;
    readonly start: CellAddress;
    readonly end: CellAddress;
    readonly sheet: number;
    width(): number;
    height(): number;
    addressInRange(address: CellAddress): boolean;
    doesOverlap(other: CellRange): boolean;
  }
}

declare module '*/hyperformula/es/DependencyGraph/index.mjs' {
  import type { Ast, CellAddress, CellRange, Lazy } from '*/hyperformula/es/shapes.mjs';
  import type { ArraySize } from '*/hyperformula/es/ArraySize.mjs';
  import type { CellError } from '*/hyperformula/es/Cell.mjs';
  export class Vertex { readonly idInGraph?: number }
  export class ScalarFormulaVertex extends Vertex {
    constructor(formula: Ast, address: CellAddress, version: number);
    cellAddress: CellAddress;
    getFormula(lazy: Lazy): Ast;
    getAddress(lazy: Lazy): CellAddress;
    isComputed(): boolean;
    getCellValue(): unknown;
    setCellValue(value: unknown): unknown;
  }
  export class ArrayFormulaVertex extends Vertex {
    constructor(formula: Ast, address: CellAddress, size: ArraySize);
    readonly array: { readonly size: { readonly isRef: boolean } };
    getFormula(lazy: Lazy): Ast;
    getAddress(lazy: Lazy): CellAddress; setAddress(address: CellAddress): void;
    getRange(): CellRange;
    isComputed(): boolean;
    isLeftCorner(address: CellAddress): boolean;
    getArrayCellValue(address: CellAddress): unknown;
    getCellValue(): unknown;
    setCellValue(value: unknown): unknown;
    setNoSpace(): CellError;
  }
  export class ValueCellVertex extends Vertex {
    constructor(parsedValue: unknown, rawValue: unknown);
    readonly parsedValue: unknown;
    readonly rawValue: unknown;
    getCellValue(): unknown;
  }
  export class ParsingErrorVertex extends Vertex {
    constructor(errors: readonly { readonly message: string }[], rawInput: unknown);
    readonly rawInput: unknown;
    readonly errors: readonly { readonly message: string }[];
    getCellValue(): unknown;
  }
  export class EmptyCellVertex extends Vertex {
    private readonly empty: true;
    getCellValue(): unknown;
  }
  export class RangeVertex extends Vertex {
    readonly range: CellRange & { shiftByRows(count: number): void };
    getFunctionValue(name: string): unknown;
    setFunctionValue(name: string, value: unknown): void;
    clearCache(): void;
  }
}

/** Not a file of the library: the shapes that its parts above hand to each other. */
declare module '*/hyperformula/es/shapes.mjs' {
  import type { ArrayFormulaVertex, EmptyCellVertex, ParsingErrorVertex, RangeVertex, ScalarFormulaVertex, ValueCellVertex, Vertex as AnyVertex } from '*/hyperformula/es/DependencyGraph/index.mjs';
  import type { ArraySize } from '*/hyperformula/es/ArraySize.mjs';
  import type { InterpreterState } from '*/hyperformula/es/interpreter/InterpreterState.mjs';
  import type { AbsoluteCellRange } from '*/hyperformula/es/AbsoluteCellRange.mjs';
  export type Vertex = AnyVertex;
  export type FormulaVertex = ScalarFormulaVertex | ArrayFormulaVertex;
  export type CellVertex = FormulaVertex | ValueCellVertex | ParsingErrorVertex | EmptyCellVertex;
  export type State = InterpreterState;

  export interface CellAddress { readonly sheet: number; readonly row: number; readonly col: number }
  export interface CellRange {
    readonly start: CellAddress;
    readonly end: CellAddress;
    readonly sheet: number;
    width(): number;
    height(): number;
    addressInRange(address: CellAddress): boolean;
    doesOverlap(other: CellRange): boolean;
  }
  /** A cell, a block, or a name that a formula uses. */
  export type Dependency = CellAddress | AbsoluteCellRange | { readonly name: string };
  /** What a formula uses, by the distance from where it stands; a block has its ends. */
  export interface RelativeDependency {
    readonly start?: Reference;
    readonly end?: Reference;
    absolutize(formula: CellAddress): Dependency;
  }
  export interface Language { buildErrorMapping(): Readonly<Record<string, string>> }
  /** Formulas follow inserted and removed rows only when they are next looked at; this is what brings them up to date. */
  export interface Lazy { readonly version: () => number }

  /** A reference inside a formula, relative to the cell it stands in where it is not fixed. */
  export interface Reference {
    readonly sheet?: number;
    toSimpleCellAddress(formula: CellAddress): CellAddress;
    /** Counted from the formula's cell where they are not fixed. */
    readonly col: number;
    readonly row: number;
    /** Which of its column and its row are fixed. */
    readonly type: string;
    unparse(formula: CellAddress): string | undefined;
  }
  export interface Ast {
    readonly type: string;
    readonly value?: Ast | number | string;
    readonly left?: Ast;
    readonly right?: Ast;
    readonly expression?: Ast;
    readonly args?: readonly Ast[];
    readonly procedureName?: string;
    readonly expressionName?: string;
    readonly reference?: Reference;
    readonly start?: Reference;
    readonly end?: Reference;
  }
  export interface ParseResult {
    readonly ast: Ast;
    readonly errors: readonly { readonly type: string; readonly message: string }[];
    readonly hasVolatileFunction: boolean;
    readonly hasStructuralChangeFunction: boolean;
    readonly dependencies: readonly RelativeDependency[];
  }
  export interface Parser {
    parse(text: unknown, address: CellAddress): ParseResult;
    rememberNewAst(ast: Ast): Ast;
  }
  export interface ContentChanges { getChanges(): readonly { readonly address: CellAddress; readonly value: unknown }[] }

  export interface NodeGraph {
    adjacentNodes(vertex: Vertex): Set<Vertex>;
    getNodes(): Vertex[];
    getInfiniteRanges(): RangeVertex[];
    markChangingWithStructureNodesAsDirty(): void;
    markNodeAsDirty(vertex: Vertex): void;
    addEdge(from: Vertex | number, to: Vertex | number): void;
    removeEdge(from: Vertex | number, to: Vertex | number): void;
    removeEdgeIfExists(from: Vertex | number, to: Vertex | number): void;
    /** Dependents of each vertex, by number; what was taken out leaves a hole. */
    readonly edgesSparseArray: (number | undefined)[][];
    /** Vertices by number. */
    readonly nodesSparseArray: (Vertex | undefined)[];
  }
  export interface Graphs {
    readonly lazilyTransformingAstService: Lazy;
    readonly graph: NodeGraph;
    readonly addressMapping: {
      getCell(address: CellAddress): Vertex | undefined;
      setCell(address: CellAddress, vertex: Vertex): void; removeCell(address: CellAddress): void;
      getCellValue(address: CellAddress): unknown;
      sheetEntries(sheet: number): Iterable<[CellAddress, CellVertex]>;
      addSheetAndSetStrategyBasedOnBoundaries(sheet: number, boundaries: object): void;
      getSheetHeight(sheet: number): number;
      getSheetWidth(sheet: number): number;
    };
    readonly sheetMapping: {
      hasSheetWithId(id: number, options?: { includePlaceholders: boolean }): boolean;
      addSheetWithId(id: number, name: string): void;
    };
    readonly rangeMapping: {
      rangesInSheet(sheet: number): Iterable<RangeVertex>;
      removeVertexIfExists(vertex: RangeVertex): void; addOrUpdateVertex(vertex: RangeVertex): void; findSmallerRange(range: CellRange): { readonly smallerRangeVertex?: RangeVertex; readonly restRange: CellRange };
    };
    readonly arrayMapping: { setArray(range: CellRange, vertex: ArrayFormulaVertex): void; removeArray(range: CellRange): void };
    getAndClearContentChanges(): unknown;
    getCell(address: CellAddress): Vertex | undefined;
    getRange(start: CellAddress, end: CellAddress): RangeVertex | undefined;
    existsEdge(from: Vertex, to: Vertex): boolean;
    /** The cells and blocks that a formula uses. */
    dependencyQueryAddresses(vertex: Vertex): readonly (CellAddress | { readonly start: CellAddress; readonly end: CellAddress })[];
    processCellDependencies(dependencies: readonly Dependency[], formula: Vertex): void;
    fetchCellOrCreateEmpty(address: CellAddress): { readonly vertex: Vertex };
    addVertex(address: CellAddress, vertex: Vertex): void;
    addArrayVertex(address: CellAddress, vertex: ArrayFormulaVertex): void;
    shrinkArrayToCorner(vertex: ArrayFormulaVertex): void;
    markAsVolatile(vertex: Vertex): void;
    setFormulaToCell(address: CellAddress, ...rest: unknown[]): unknown;
    isThereSpaceForArray(vertex: ArrayFormulaVertex): boolean;
    /** Takes an array's block of cells away from it, but for its own cell. */
    setNoSpaceIfArray(vertex: ArrayFormulaVertex): void;
    markAsDependentOnStructureChange(vertex: Vertex): void;
    verticesToRecompute(): Vertex[];
    clearDirtyVertices(): void;
  }
  export interface Operations {
    readonly arraySizePredictor: { checkArraySize(ast: Ast, formula: CellAddress): { readonly width: number; readonly height: number; readonly isRef: boolean } };
    setCellContent(address: CellAddress, content: unknown): [CellAddress, unknown];
    getOldContent(address: CellAddress): [CellAddress, unknown];
    restoreCell(address: CellAddress, old: unknown): void;
    addRows(command: object): void; removeRows(command: object): void;
    addColumns(command: object): void; removeColumns(command: object): void;
    addSheetWithId(id: number, name: string): void; removeSheet(id: number): void;
    addNamedExpression(name: string, content: unknown): void;
    changeNamedExpressionExpression(name: string, content: unknown): void;
    removeNamedExpression(name: string): void;
    getAndClearContentChanges(): ContentChanges;
  }
  export interface NamedExpression { readonly address: CellAddress; readonly displayName: string }
  export interface Helper {
    /** Differences below this part of the left operand count as none. */
    readonly actualEps: number;
    coerceScalarToNumberOrError(value: unknown): unknown;
    coerceToMaybeNumber(value: unknown): unknown;
    requiresRegex(pattern: string): boolean;
    eqMatcherFunction(pattern: string): (value: unknown) => boolean;
    addWithEpsilon(left: unknown, right: unknown): unknown;
    subtract(left: unknown, right: unknown): unknown;
    multiply(left: unknown, right: unknown): unknown;
    divide(left: unknown, right: unknown): unknown;
    pow(left: unknown, right: unknown): unknown;
    compare(left: unknown, right: unknown): number;
    unaryMinus(value: unknown): unknown;
  }
  export type Operator = (left: unknown, right: unknown) => unknown;
  export type CallFunction = (ast: Ast, state: State) => unknown;
  export interface Interpreter {
    readonly arithmeticHelper: Helper;
    readonly dependencyGraph: Graphs;
    readonly functionRegistry: Registry;
    readonly namedExpressions: { nearestNamedExpression(name: string, sheet: number): NamedExpression | undefined };
    readonly arraySizePredictor: { checkArraySizeForAst(ast: Ast, state: State): ArraySize };
    readonly criterionBuilder: { fromCellValue(raw: unknown, helper: Helper): { lambda(value: unknown): boolean } | undefined };
    evaluateAst(ast: Ast, state: State): unknown;
    evaluateAstWithoutPostprocessing(ast: Ast, state: State): unknown;
    binaryRangeWrapper(operator: Operator, left: unknown, right: unknown, state: State): unknown;
    unaryRangeWrapper(operator: (value: unknown) => unknown, value: unknown, state: State): unknown;
  }
  /** What a function takes in one place between its brackets. */
  export interface Parameter {
    readonly argumentType: string;
    readonly passSubtype?: boolean;
    readonly minValue?: number;
    readonly maxValue?: number;
    readonly lessThan?: number;
    readonly greaterThan?: number;
  }
  export interface Registry {
    getFunction(name: string): CallFunction | undefined;
    isArrayFunction(this: void, name: string): boolean;
    /** How large a block a function's result fills; `undefined` for those that give one value. */
    getArraySizeFunction(name: string): ((ast: Ast, state: State) => ArraySize) | undefined;
    /** Functions that look only at where their arguments point. */
    readonly functionsWhichDoesNotNeedArgumentsToBeComputed: Set<string>;
    getRegisteredFunctionIds(): string[];
    getMetadata(name: string): { readonly parameters?: readonly Parameter[]; readonly repeatLastArgs?: number; readonly expandRanges?: boolean } | undefined;
  }
  export interface Engine {
    readonly _config: object;
    readonly _stats: unknown;
    readonly _columnSearch: unknown;
    readonly _dependencyGraph: Graphs;
    readonly _parser: Parser;
    readonly _cellContentParser: { parse(content: unknown): unknown };
    readonly _evaluator: { readonly interpreter: Interpreter };
    readonly _lazilyTransformingAstService: Lazy;
    readonly _crudOperations: { readonly operations: Operations };
    readonly _namedExpressions: { namedExpressionForScope(name: string): NamedExpression | undefined };
    readonly _functionRegistry: Registry;
    compactLazyTransformationsIfNeeded(): void;
  }
}
