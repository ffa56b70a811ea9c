/**
 * What we use of HyperFormula beyond its public door must be there and do what
 * we take it to do. When this fails after a change of version, read
 * `workers/reckon/internals.ts` and its users before anything else.
 */
import { readFileSync } from 'node:fs';
import { HyperFormula as Public } from 'hyperformula';
import { describe, expect, test } from 'vitest';
import { readContent } from '../../../workers/reckon/content.ts';
import {
  AbsoluteCellRange, AddColumnsCommand, AddRowsCommand, ArrayFormulaVertex, ArraySize, CellContent, CellError, coerceRangeToScalar, DateNumber, DateTimeNumber,
  DenseSparseChooseBasedOnThreshold, EmptyCellVertex, EmptyValue, ErrorMessage, ErrorType, HyperFormula, InterpreterState,
  isColOrRowInvalid, ParsingErrorVertex, PercentNumber, RangeVertex, RemoveColumnsCommand, RemoveRowsCommand, RichNumber, ScalarFormulaVertex,
  SimpleRangeValue, TimeNumber, ValueCellVertex,
} from '../../../workers/reckon/internals.ts';
import type { Inside, Place } from '../../../workers/reckon/internals.ts';

const CONFIG = { licenseKey: 'gpl-v3', undoLimit: 0 };
const at = (row: number, col: number): Place => ({ sheet: 0, row, col });

/** Plain HyperFormula, with nothing of ours in it. */
function plain(rows: readonly (readonly unknown[])[] = []): Inside {
  const inside = HyperFormula.buildEmpty(CONFIG);
  inside._crudOperations.operations.addSheetWithId(0, 'S0');
  rows.forEach((cells, row) => cells.forEach((cell, col) => inside._crudOperations.operations.setCellContent(at(row, col), cell)));
  settle(inside);
  return inside;
}

function settle(inside: Inside): unknown {
  return (inside as unknown as { recomputeIfDependencyGraphNeedsIt(): unknown }).recomputeIfDependencyGraphNeedsIt();
}

const methods = (object: object, ...names: string[]): void => {
  for (const name of names) expect(object, name).toHaveProperty(name, expect.any(Function));
};

test('the version is the one that was read', () => {
  expect(HyperFormula.version).toBe('3.5.0');
  const { dependencies } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as { dependencies: Record<string, string> };
  expect(dependencies['hyperformula']).toBe('3.5.0');
});

test('inner files and the public door share their classes', () => {
  expect(HyperFormula).toBe(Public);
});

describe('parts of an engine', () => {
  const inside = plain();

  test('are where they are looked for', () => {
    for (const part of ['_config', '_stats', '_columnSearch', '_dependencyGraph', '_parser', '_cellContentParser', '_evaluator', '_lazilyTransformingAstService', '_crudOperations', '_namedExpressions', '_functionRegistry']) {
      expect(inside, part).toHaveProperty(part, expect.anything());
    }
    methods(inside, 'compactLazyTransformationsIfNeeded');
    methods(inside._cellContentParser, 'parse');
    methods(inside._parser, 'parse', 'rememberNewAst');
    methods(inside._lazilyTransformingAstService, 'version');
    methods(inside._namedExpressions, 'namedExpressionForScope');
    methods(inside._functionRegistry, 'getFunction', 'isArrayFunction', 'getArraySizeFunction', 'getRegisteredFunctionIds', 'getMetadata');
    expect(inside._evaluator.interpreter.functionRegistry).toBe(inside._functionRegistry);
    expect(inside._functionRegistry.getMetadata('FACT')).toMatchObject({ parameters: [{ argumentType: 'NUMBER', minValue: 0, maxValue: expect.any(Number) as number }] });
    expect(inside._functionRegistry.getMetadata('IFS')).toMatchObject({ repeatLastArgs: 2 });
    expect(inside._functionRegistry.getMetadata('LN')?.parameters?.[0]).toHaveProperty('argumentType');
    methods(inside._evaluator.interpreter.arraySizePredictor, 'checkArraySizeForAst');
    expect(new ArraySize(3, 2)).toMatchObject({ width: 3, height: 2 });
    methods(inside._crudOperations.operations, 'setCellContent', 'getOldContent', 'restoreCell', 'addRows', 'removeRows', 'addColumns', 'removeColumns', 'addSheetWithId', 'removeSheet', 'addNamedExpression', 'changeNamedExpressionExpression', 'removeNamedExpression', 'getAndClearContentChanges');
    methods(inside._crudOperations.operations.arraySizePredictor, 'checkArraySize');
    expect([...inside._functionRegistry.functionsWhichDoesNotNeedArgumentsToBeComputed]).toEqual(expect.arrayContaining(['ROW', 'ROWS', 'ISFORMULA']));
  });

  test('the graph', () => {
    const graphs = inside._dependencyGraph;
    methods(graphs, 'getCell', 'getRange', 'existsEdge', 'isThereSpaceForArray', 'setFormulaToCell', 'setNoSpaceIfArray', 'getAndClearContentChanges', 'processCellDependencies', 'dependencyQueryAddresses', 'markAsDependentOnStructureChange', 'verticesToRecompute', 'clearDirtyVertices');
    methods(graphs.addressMapping, 'getCell', 'setCell', 'removeCell');
    methods(graphs.rangeMapping, 'rangesInSheet', 'removeVertexIfExists', 'addOrUpdateVertex', 'findSmallerRange');
    methods(graphs.arrayMapping, 'setArray', 'removeArray');
    methods(graphs.graph, 'adjacentNodes', 'getNodes', 'getInfiniteRanges', 'markChangingWithStructureNodesAsDirty', 'markNodeAsDirty', 'addEdge', 'removeEdge', 'removeEdgeIfExists');
    methods(graphs.addressMapping, 'getCell', 'getCellValue', 'sheetEntries', 'addSheetAndSetStrategyBasedOnBoundaries', 'getSheetHeight', 'getSheetWidth');
    methods(graphs.sheetMapping, 'hasSheetWithId', 'addSheetWithId');
    methods(graphs.rangeMapping, 'findSmallerRange');
    methods(graphs.arrayMapping, 'removeArray');
    expect(graphs.lazilyTransformingAstService).toBe(inside._lazilyTransformingAstService);
    expect(graphs.graph.nodesSparseArray).toBeInstanceOf(Array);
    expect(graphs.graph.edgesSparseArray).toBeInstanceOf(Array);
  });

  test('the interpreter', () => {
    const { interpreter } = inside._evaluator;
    methods(interpreter, 'evaluateAst', 'evaluateAstWithoutPostprocessing', 'binaryRangeWrapper', 'unaryRangeWrapper');
    methods(interpreter.namedExpressions, 'nearestNamedExpression');
    methods(interpreter.criterionBuilder, 'fromCellValue');
    methods(interpreter.arithmeticHelper, 'coerceScalarToNumberOrError', 'coerceToMaybeNumber', 'addWithEpsilon', 'subtract', 'multiply', 'divide', 'pow', 'compare', 'unaryMinus');
    expect(interpreter.arithmeticHelper.actualEps).toBe(1e-13);
    expect(interpreter.dependencyGraph).toBe(inside._dependencyGraph);
  });

  test('classes and helpers', () => {
    methods({ coerceRangeToScalar, isColOrRowInvalid }, 'coerceRangeToScalar', 'isColOrRowInvalid');
    for (const made of [AddRowsCommand, RemoveRowsCommand]) methods(new made(0, [[1, 2]]), 'rowsSpans');
    for (const made of [AddColumnsCommand, RemoveColumnsCommand]) methods(new made(0, [[1, 2]]), 'columnsSpans');
    for (const each of [DateNumber, DateTimeNumber, TimeNumber, PercentNumber]) expect(Object.getPrototypeOf(each)).toBe(RichNumber);
    expect(new DenseSparseChooseBasedOnThreshold(0.5)).toHaveProperty('call');
    expect(typeof EmptyValue).toBe('symbol');
    expect(isColOrRowInvalid(at(-1, 0))).toBe(true);
  });
});

describe('what is relied on', () => {
  test('a number class is copied by fromNumber, and its format put back', () => {
    class Own extends RichNumber {
      override fromNumber(val: number): this {
        return new Own(val) as this;
      }
    }
    const value = new CellContent.Number(new Own(-0)).value as Own;
    expect(value).toBeInstanceOf(Own);
    expect(Object.is(value.val, 0)).toBe(true);
  });

  test('content: what the parser gives decides, and the text is kept with the cell', () => {
    const inside = plain();
    inside._cellContentParser.parse = readContent;
    inside._crudOperations.operations.setCellContent(at(0, 0), '2 1/4 in');
    const vertex = inside._dependencyGraph.getCell(at(0, 0)) as InstanceType<typeof ValueCellVertex>;
    expect(vertex).toBeInstanceOf(ValueCellVertex);
    expect(vertex.rawValue).toBe('2 1/4 in');
    expect(vertex.getCellValue()).toMatchObject({ val: 57.15, unit: 'in' });
  });

  test('cells can be put into an empty engine by hand', () => {
    const inside = HyperFormula.buildEmpty(CONFIG);
    const graphs = inside._dependencyGraph;
    graphs.sheetMapping.addSheetWithId(7, 'S7');
    graphs.addressMapping.addSheetAndSetStrategyBasedOnBoundaries(7, { width: 3, height: 1, fill: 1 });
    const place = (row: number, col: number): Place => ({ sheet: 7, row, col });
    const figure = new ValueCellVertex(1, '1');
    const { ast, dependencies } = inside._parser.parse('=A1*2', place(0, 1));
    const formula = new ScalarFormulaVertex(ast, place(0, 1), inside._lazilyTransformingAstService.version());
    const block = new ArrayFormulaVertex(ast, place(0, 2), new ArraySize(1, 2));
    const unread = new ParsingErrorVertex([{ message: 'Why.' }], '=(');
    for (const [at, vertex] of [[place(0, 0), figure], [place(0, 1), formula], [place(3, 0), unread]] as const) graphs.addVertex(at, vertex);
    graphs.addArrayVertex(place(0, 2), block);
    graphs.processCellDependencies(dependencies.map((each) => each.absolutize(place(0, 1))), formula);
    graphs.markAsVolatile(formula);
    expect([...graphs.graph.adjacentNodes(figure)]).toEqual([formula]);
    expect(graphs.verticesToRecompute()).toEqual([formula]);
    expect([graphs.getCell(place(1, 2)), graphs.fetchCellOrCreateEmpty(place(0, 0)).vertex]).toEqual([block, figure]);
    graphs.shrinkArrayToCorner(block);
    expect([graphs.getCell(place(0, 2)), graphs.getCell(place(1, 2))]).toEqual([block, undefined]);
    expect(block.isComputed()).toBe(false);
  });

  test('what a formula uses says which of it is fixed, and has no sheet where it is its own', () => {
    const inside = HyperFormula.buildEmpty(CONFIG);
    inside._crudOperations.operations.addSheetWithId(7, 'S7');
    const [fixed, half, other] = inside._parser.parse('=SUM($A$1:$B$2,A$1:B$2,S7!$A$1:$B$2)', { sheet: 7, row: 4, col: 4 }).dependencies;
    expect(fixed).toMatchObject({ start: { type: 'CELL_REFERENCE_ABSOLUTE', row: 0, col: 0 }, end: { type: 'CELL_REFERENCE_ABSOLUTE', row: 1, col: 1 } });
    expect(fixed!.start!.sheet).toBeUndefined();
    expect(half!.start!.type).not.toBe('CELL_REFERENCE_ABSOLUTE');
    expect(other!.start!.sheet).toBe(7);
  });

  test('a formula that cannot be read keeps its text and shows the first message', () => {
    const inside = plain();
    inside._parser.parse = () => ({ ast: { type: 'ERROR' }, errors: [{ type: 'ParserError', message: 'Why.' }], hasVolatileFunction: false, hasStructuralChangeFunction: false, dependencies: [] });
    inside._crudOperations.operations.setCellContent(at(0, 0), '=(');
    const vertex = inside._dependencyGraph.getCell(at(0, 0));
    expect(vertex).toBeInstanceOf(ParsingErrorVertex);
    expect(vertex).toMatchObject({ rawInput: '=(' });
    expect(inside._dependencyGraph.addressMapping.getCellValue(at(0, 0))).toEqual(new CellError(ErrorType.ERROR, `${ErrorMessage['ParseError'] as string} Why.`));
  });

  test('kinds of vertices, their formula, place and value', () => {
    const inside = plain([['1', '=A1+B9', '=SUM(A1:A3)', '=TRANSPOSE(A1:A2)']]);
    const graphs = inside._dependencyGraph;
    const lazy = inside._lazilyTransformingAstService;
    const sum = graphs.getCell(at(0, 1)) as InstanceType<typeof ScalarFormulaVertex>;
    expect(graphs.getCell(at(8, 1))).toBeInstanceOf(EmptyCellVertex);
    expect(sum.getFormula(lazy)).toMatchObject({ type: 'PLUS_OP', left: { type: 'CELL_REFERENCE' }, right: { type: 'CELL_REFERENCE' } });
    expect(sum.getAddress(lazy)).toEqual(at(0, 1));
    expect(sum.getFormula(lazy).left!.reference!.toSimpleCellAddress(at(0, 1))).toEqual(at(0, 0));
    expect(sum.getFormula(lazy).right!.reference!.unparse(at(0, 1))).toBe('B9');
    expect([sum.isComputed(), sum.getCellValue()]).toEqual([true, 1]);
    const array = graphs.getCell(at(0, 4)) as InstanceType<typeof ArrayFormulaVertex>;
    expect(array).toBeInstanceOf(ArrayFormulaVertex);
    expect(array.getRange()).toMatchObject({ start: at(0, 3), end: at(0, 4) });
    expect([array.isLeftCorner(at(0, 3)), array.array.size.isRef, graphs.isThereSpaceForArray(array)]).toEqual([true, false, true]);
  });

  test('names of parts of formulas', () => {
    const inside = plain();
    const type = (text: string): unknown => inside._parser.parse(text, at(0, 0)).ast.type;
    expect(['=1', '="a"', '=A1', '=A1:B2', '=A:B', '=1:2', '=F(1)', '=(1)', '=name', '=-1', '=+1', '=1%'].map(type)).toEqual(
      ['NUMBER', 'STRING', 'CELL_REFERENCE', 'CELL_RANGE', 'COLUMN_RANGE', 'ROW_RANGE', 'FUNCTION_CALL', 'PARENTHESES', 'NAMED_EXPRESSION', 'MINUS_UNARY_OP', 'PLUS_UNARY_OP', 'PERCENT_OP']);
    expect(['=1+1', '=1-1', '=1*1', '=1/1', '=1^1', '=1&1', '=1=1', '=1<>1', '=1<1', '=1>1', '=1<=1', '=1>=1'].map(type)).toEqual(
      ['PLUS_OP', 'MINUS_OP', 'TIMES_OP', 'DIV_OP', 'POWER_OP', 'CONCATENATE_OP', 'EQUALS_OP', 'NOT_EQUAL_OP', 'LESS_THAN_OP', 'GREATER_THAN_OP', 'LESS_THAN_OR_EQUAL_OP', 'GREATER_THAN_OR_EQUAL_OP']);
    expect(inside._parser.parse('=F(1,)', at(0, 0)).ast.args!.map(({ type: each }) => each)).toEqual(['NUMBER', 'EMPTY']);
  });

  test('plugins work their arguments out through evaluateAst of the interpreter they belong to', () => {
    const inside = plain([['=ABS(-2)']]);
    const { interpreter } = inside._evaluator;
    const seen: string[] = [];
    const evaluate = interpreter.evaluateAst.bind(interpreter);
    interpreter.evaluateAst = (ast, state) => {
      seen.push(ast.type);
      return evaluate(ast, state);
    };
    const call = inside._functionRegistry.getFunction('ABS')!;
    const { ast } = inside._parser.parse('=ABS(-2)', at(0, 0));
    expect(call(ast, new InterpreterState(at(0, 0), false))).toBe(2);
    expect(seen).toContain('MINUS_UNARY_OP');
  });

  test('a block keeps what is put with it until one of its cells changes', () => {
    const inside = plain([['1', '=SUM(A1:A2)'], ['2', '=SUM(A1:A3)'], ['3']]);
    const graphs = inside._dependencyGraph;
    const [two, three] = [graphs.getRange(at(0, 0), at(1, 0))!, graphs.getRange(at(0, 0), at(2, 0))!];
    expect(two).toBeInstanceOf(RangeVertex);
    expect(graphs.existsEdge(two, three)).toBe(true);
    expect(graphs.rangeMapping.findSmallerRange(three.range)).toMatchObject({ smallerRangeVertex: two, restRange: { start: at(2, 0), end: at(2, 0) } });
    two.setFunctionValue('own', 1);
    three.setFunctionValue('own', 1);
    inside._crudOperations.operations.setCellContent(at(2, 0), '4');
    settle(inside);
    expect([two.getFunctionValue('own'), three.getFunctionValue('own')]).toEqual([1, undefined]);
    inside._crudOperations.operations.addRows(new AddRowsCommand(0, [[1, 1]]));
    settle(inside);
    expect([two.getFunctionValue('own'), two.range.end.row]).toEqual([undefined, 2]);
  });

  test('blocks and their values', () => {
    const inside = plain([['1', '2'], ['3', '4'], ['', '', '=SUM(A1:B2)', '=SUM(A:A)']]);
    const { ast } = inside._parser.parse('=A1:B2', at(5, 5));
    const range = AbsoluteCellRange.fromAst(ast, at(5, 5));
    expect(range).toMatchObject({ start: at(0, 0), end: at(1, 1) });
    expect([range.width(), range.height(), range.addressInRange(at(1, 0)), range.addressInRange(at(2, 0)), range.doesOverlap(range)]).toEqual([2, 2, true, false, true]);
    const block = SimpleRangeValue.onlyRange(range, inside._dependencyGraph);
    expect([block.data, block.width(), block.height(), block.range]).toEqual([[[1, 2], [3, 4]], 2, 2, range]);
    expect(SimpleRangeValue.onlyValues([[1]]).range).toBeUndefined();
    expect(inside._dependencyGraph.graph.getInfiniteRanges()).toHaveLength(1);
    expect(inside._dependencyGraph.dependencyQueryAddresses(inside._dependencyGraph.getCell(at(2, 2))!)).toEqual([{ start: at(0, 0), end: at(1, 1) }]);
  });

  test('a block of results that is folded up keeps its formula and its own cell only', () => {
    const inside = plain([['1', '2', '3'], ['=TRANSPOSE(A1:C1)', '=A4']]);
    const graphs = inside._dependencyGraph;
    const array = graphs.getCell(at(3, 0)) as InstanceType<typeof ArrayFormulaVertex>;
    expect(inside._crudOperations.operations.arraySizePredictor.checkArraySize(array.getFormula(inside._lazilyTransformingAstService), at(1, 0))).toMatchObject({ width: 1, height: 3, isRef: false });
    graphs.setNoSpaceIfArray(array);
    expect([array.array.size.isRef, graphs.getCell(at(1, 0)), graphs.getCell(at(2, 0))]).toEqual([true, array, undefined]);
    expect(graphs.getCell(at(3, 0))).toBeInstanceOf(EmptyCellVertex);
  });

  test('what a formula uses gives its places from where it stands', () => {
    const inside = plain();
    const { dependencies } = inside._parser.parse('=A1+B2:C3+D:D', at(4, 4));
    const [cell, block, column] = (dependencies as { absolutize(place: Place): unknown }[]).map((each) => each.absolutize(at(4, 4)));
    expect(cell).toEqual(at(0, 0));
    for (const each of [block, column]) expect(each).toBeInstanceOf(AbsoluteCellRange);
    expect((column as InstanceType<typeof AbsoluteCellRange>).height()).toBe(Infinity);
  });

  test('names stand in cells of a sheet below 0', () => {
    const inside = plain([['5', '=N_x*2']]);
    inside._crudOperations.operations.addNamedExpression('N_x', '=S0!$A$1');
    settle(inside);
    const { address } = inside._namedExpressions.namedExpressionForScope('N_x')!;
    expect(address.sheet).toBe(-1);
    expect(inside._dependencyGraph.addressMapping.getCell(address)).toBeInstanceOf(ScalarFormulaVertex);
    expect(inside._dependencyGraph.addressMapping.getCellValue(at(0, 1))).toBe(10);
  });

  test('what was typed is told by place, and what must be worked out is marked', () => {
    const inside = plain([['1', '=A1']]);
    const { operations } = inside._crudOperations;
    operations.getAndClearContentChanges();
    const [home, old] = operations.setCellContent(at(0, 0), '2');
    expect([home, old]).toEqual([at(0, 0), expect.objectContaining({ rawValue: '1', parsedValue: 1 })]);
    expect(operations.getAndClearContentChanges().getChanges()).toEqual([expect.objectContaining({ address: at(0, 0) })]);
    expect(inside._dependencyGraph.verticesToRecompute()).toContain(inside._dependencyGraph.getCell(at(0, 0)));
    operations.restoreCell(home, old);
    settle(inside);
    expect(inside._dependencyGraph.addressMapping.getCellValue(at(0, 1))).toBe(1);
  });

  test('a formula is put back by its tree, once that is remembered', () => {
    const inside = plain([['1', '=1.50+A1']]);
    const { operations } = inside._crudOperations;
    const vertex = inside._dependencyGraph.getCell(at(0, 1)) as InstanceType<typeof ScalarFormulaVertex>;
    inside._parser.rememberNewAst(vertex.getFormula(inside._lazilyTransformingAstService));
    const [home, old] = operations.getOldContent(at(0, 1));
    operations.setCellContent(at(0, 1), '9');
    settle(inside);
    operations.restoreCell(home, old);
    settle(inside);
    expect(inside._dependencyGraph.addressMapping.getCellValue(at(0, 1))).toBe(2.5);
  });

  test('a sheet that is used after it is gone stays as a placeholder under its name', () => {
    const inside = plain([['=S5!A1']]);
    const { sheetMapping } = inside._dependencyGraph;
    const { operations } = inside._crudOperations;
    const other = HyperFormula.buildEmpty(CONFIG);
    for (const id of [1, 2]) other._crudOperations.operations.addSheetWithId(id, `S${id}`);
    other._crudOperations.operations.setCellContent({ sheet: 1, row: 0, col: 0 }, '=S2!A1');
    settle(other);
    other._crudOperations.operations.removeSheet(2);
    settle(other);
    expect(other._dependencyGraph.sheetMapping.hasSheetWithId(2, { includePlaceholders: false })).toBe(false);
    other._crudOperations.operations.addSheetWithId(2, 'S2');
    other._crudOperations.operations.setCellContent({ sheet: 2, row: 0, col: 0 }, '8');
    settle(other);
    expect(other._dependencyGraph.addressMapping.getCellValue({ sheet: 1, row: 0, col: 0 })).toBe(8);
    expect([sheetMapping.hasSheetWithId(0), operations]).toEqual([true, expect.anything()]);
  });
});
