/** How a cell's result came about. */
import { MAX_COLUMNS, MAX_ROWS, nameFromEngine } from '../../src/formula/index.ts';
import { isFault } from '../../src/quantities/index.ts';
import type { UnitCode } from '../../src/quantities/index.ts';
import type { NamedCell, Result, Working, WorkingCall, WorkingFault, WorkingStep } from '../../src/reckoning/protocol.ts';
import { figureIn, functionNamed, work } from '../../src/sewing/index.ts';
import type { Figure, FigureSpan, SewingFunction } from '../../src/sewing/index.ts';
import type { Area } from '../../src/workbook/types.ts';
import { resultOf } from './columns.ts';
import type { Tell } from './columns.ts';
import { valuesFor } from './functions/sewing.ts';
import { Call } from './functions/tools.ts';
import type { Given } from './functions/tools.ts';
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import { AbsoluteCellRange, CellError, ErrorType, InterpreterState, SimpleRangeValue } from './internals.ts';
import type { Ast, CellRange, Place, State } from './internals.ts';
import { unitMends } from './mends.ts';
import { withoutBrackets } from './parts.ts';
import { arisen, samePlace } from './telling.ts';
import type { Teller } from './telling.ts';
import { Tree } from './tree.ts';

export function explain(host: Host, place: Place, teller: Teller, spelled: (name: string) => string | undefined): Working {
  const value = host.valueAt(place);
  const result = resultOf(value, place, teller.tell);
  const vertex = host.graphs.addressMapping.getCell(place);
  const fault = value instanceof CellError ? faultOf(host, value, place, teller) : undefined;
  if (!isFormulaVertex(vertex)) return { result, ...(fault && { fault }), uses: [] };
  const lazy = host.inside._lazilyTransformingAstService;
  const formula = vertex.getFormula(lazy);
  const home = vertex.getAddress(lazy);
  const state = new InterpreterState(home, false, vertex);
  const explained = new Explained(host, home, teller.tell, spelled);
  const ownFault = value instanceof CellError && samePlace(home, arisen(value) ?? home);
  const circular = value instanceof CellError && value.type === ErrorType.CYCLE;
  return {
    result,
    // What goes round in a circle cannot be worked out, not even to be looked at.
    ...(!circular && explained.working(formula, state, value)),
    ...(fault && { fault: ownFault && !circular ? { ...fault, mends: unitMends(host, formula, state) } : fault }),
    uses: explained.uses(formula),
  };
}

function faultOf(host: Host, error: CellError, place: Place, teller: Teller): WorkingFault {
  const named = (each: Place): NamedCell => ({ cell: { sheet: each.sheet, row: each.row, col: each.col }, text: host.names.cell(each, place.sheet) });
  const circle = teller.circle(error);
  const cause = circle === undefined ? teller.beginning(error)?.place ?? arisen(error) : undefined;
  return {
    ...(cause && !samePlace(cause, place) && { cause: named(cause) }),
    ...(circle && { circle: circle.map(named) }),
    mends: [],
  };
}

class Explained {
  constructor(
    private readonly host: Host,
    /** Where the formula stands. */
    private readonly home: Place,
    private readonly tell: Tell,
    /** A name as the workbook spells it. */
    private readonly spelled: (name: string) => string | undefined,
  ) {}

  /** The working of the outermost call, or the tree of any other formula, and the calls within. */
  working(formula: Ast, state: State, stored: unknown): Pick<Working, 'call' | 'tree' | 'treeCut' | 'inner'> {
    const top = withoutBrackets(formula);
    const tree = new Tree(this.host, {
      textOf: (ast) => this.#textOf(ast), areaOf: (ast) => this.#areaOf(ast), resultOf: (value) => resultOf(value, this.home, this.tell),
    });
    const root = tree.of(formula, state);
    const calls = tree.calls.map(({ ast, state: its }) => this.#call(ast, its)).filter((call) => call !== undefined);
    const isCall = top.type === 'FUNCTION_CALL' && functionNamed(top.procedureName!) !== undefined;
    const [call, inner] = isCall ? [calls[0], calls.slice(1)] : [undefined, calls];
    // A formula of chance gives another figure each time it is worked out; a tree of it would not be of what is shown.
    const byChance = tree.calls.some(({ ast }) => ast.procedureName!.startsWith('RAND'));
    const shows = !byChance && top.type !== 'CELL_REFERENCE' && root.parts.length > 0 && sameResult(root.value, resultOf(stored, this.home, this.tell));
    return {
      ...(call && { call }),
      ...(!isCall && shows && { tree: root, ...(tree.cut && { treeCut: true as const }) }),
      ...(inner.length > 0 && { inner }),
    };
  }

  #call(ast: Ast, state: State): WorkingCall | undefined {
    const fn = functionNamed(ast.procedureName!);
    if (fn === undefined) return undefined;
    const call = new Call(fn.name, ast, state, this.host.tools);
    const values = valuesFor(fn, call);
    const outcome = values instanceof CellError ? undefined : work(fn, values, true);
    const worked = outcome === undefined || isFault(outcome) ? undefined : outcome;
    const figure = (each: Figure | FigureSpan | string): Result => (typeof each === 'string' ? { kind: 'text', text: each } : resultIn(each, worked!.lengthUnit));
    return {
      name: fn.name, about: fn.about, rule: fn.rule, source: fn.source,
      given: call.given.map((given, i) => this.#given(fn, given, i)),
      steps: worked?.steps.map(({ words, sum, value }): WorkingStep => ({
        words, sum: sum.map((part) => (typeof part === 'string' ? part : figure(part))), value: figure(value),
      })) ?? [],
      cautions: worked?.cautions.map(({ sentence, mend }) => ({ sentence, ...(mend && { mend: figure(mend) }) })) ?? [],
    };
  }

  #given(fn: SewingFunction, { ast, value }: Given, i: number): WorkingCall['given'][number] {
    const arg = fn.args[Math.min(i, fn.args.length - 1)];
    const block = value instanceof SimpleRangeValue ? value : undefined;
    return {
      name: arg?.name ?? '', about: arg?.about ?? '',
      value: block ? { kind: 'text', text: `${block.height()} × ${block.width()} cells` } : resultOf(value, this.home, this.tell),
      from: this.#areaOf(ast),
    };
  }

  /** Every cell and block in the formula, once, in the order in which they stand there. */
  uses(formula: Ast): Working['uses'] {
    const found = new Map<string, Working['uses'][number]>();
    const walk = (ast: Ast): void => {
      const text = this.#textOf(ast);
      const area = text === undefined || found.has(text) ? null : this.#areaOf(ast);
      if (text !== undefined && area !== null) found.set(text, { area, text, value: this.#only(area) });
      for (const part of [ast.left, ast.right, ast.expression, ast.value, ...(ast.args ?? []).flat()]) {
        if (typeof part === 'object') walk(part);
      }
    };
    walk(formula);
    return [...found.values()];
  }

  #only({ sheet, top, left, bottom, right }: Area): Result | null {
    if (top !== bottom || left !== right) return null;
    const place = { sheet, row: top, col: left };
    return resultOf(this.host.valueAt(place), place, this.tell);
  }

  #textOf(ast: Ast): string | undefined {
    switch (ast.type) {
      case 'CELL_REFERENCE': {
        const cell = ast.reference!.unparse(this.home);
        return cell && this.host.names.sheet(ast.reference!.sheet) + cell;
      }
      case 'CELL_RANGE': case 'COLUMN_RANGE': case 'ROW_RANGE': {
        const [start, end] = [ast.start!.unparse(this.home), ast.end!.unparse(this.home)];
        return start && end && `${this.host.names.sheet(ast.start!.sheet)}${start}:${end}`;
      }
      case 'NAMED_EXPRESSION':
        return this.spelled(ast.expressionName!) ?? nameFromEngine(ast.expressionName!);
      default:
        return undefined;
    }
  }

  /** The cells that a reference or a name stands for. */
  #areaOf(ast: Ast): Area | null {
    switch (ast.type) {
      case 'CELL_REFERENCE': {
        const { sheet, row, col } = ast.reference!.toSimpleCellAddress(this.home);
        return row < 0 || col < 0 ? null : { sheet, top: row, left: col, bottom: row, right: col };
      }
      case 'CELL_RANGE': case 'COLUMN_RANGE': case 'ROW_RANGE':
        return areaOf(AbsoluteCellRange.fromAst(ast, this.home));
      case 'NAMED_EXPRESSION': {
        const name = this.host.inside._namedExpressions.namedExpressionForScope(ast.expressionName!);
        const vertex = name && this.host.graphs.addressMapping.getCell(name.address);
        if (!isFormulaVertex(vertex)) return null;
        const target = vertex.getFormula(this.host.inside._lazilyTransformingAstService);
        return new Explained(this.host, name!.address, this.tell, this.spelled).#areaOf(target);
      }
      default:
        return null;
    }
  }
}

function areaOf({ start, end }: CellRange): Area {
  return {
    sheet: start.sheet, top: start.row, left: start.col,
    bottom: Math.min(end.row, MAX_ROWS - 1), right: Math.min(end.col, MAX_COLUMNS - 1),
  };
}

function resultIn(figure: Figure | FigureSpan, lengthUnit: UnitCode): Result {
  if ('low' in figure) return { kind: 'span', low: figure.low.value, high: figure.high.value, unit: figureIn(figure.low, lengthUnit).unit };
  const { value, unit } = figureIn(figure, lengthUnit);
  return { kind: 'quantity', value, unit };
}

/** A block has no result of its own. */
function sameResult(tree: Result | null, stored: Result): boolean {
  return tree === null || JSON.stringify(tree) === JSON.stringify(stored);
}
