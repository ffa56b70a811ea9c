/** How a cell's result came about. */
import { MAX_COLUMNS, MAX_ROWS, nameFromEngine } from '../../src/formula/index.ts';
import { isFault } from '../../src/quantities/index.ts';
import type { UnitCode } from '../../src/quantities/index.ts';
import type { Result, Working, WorkingStep } from '../../src/reckoning/protocol.ts';
import { functionNamed, work } from '../../src/sewing/index.ts';
import type { Figure, FigureSpan, SewingFunction } from '../../src/sewing/index.ts';
import type { Area } from '../../src/workbook/types.ts';
import { resultOf } from './columns.ts';
import type { Tell } from './columns.ts';
import { valuesFor } from './functions/sewing.ts';
import { Call } from './functions/tools.ts';
import type { Given } from './functions/tools.ts';
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import { AbsoluteCellRange, CellError, InterpreterState, SimpleRangeValue } from './internals.ts';
import type { Ast, CellRange, Place } from './internals.ts';

export function explain(host: Host, place: Place, tell: Tell, spelled: (name: string) => string | undefined): Working {
  const result = resultOf(host.valueAt(place), place, tell);
  const vertex = host.graphs.addressMapping.getCell(place);
  if (!isFormulaVertex(vertex)) return { result, uses: [] };
  const lazy = host.inside._lazilyTransformingAstService;
  const formula = vertex.getFormula(lazy);
  const home = vertex.getAddress(lazy);
  const explained = new Explained(host, home, tell, spelled);
  const call = explained.call(formula, new InterpreterState(home, false, vertex));
  return { result, ...(call && { call }), uses: explained.uses(formula) };
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

  call(formula: Ast, state: InterpreterState): Working['call'] {
    let top = formula;
    while (top.type === 'PARENTHESES') top = top.expression!;
    const fn = top.type === 'FUNCTION_CALL' ? functionNamed(top.procedureName!) : undefined;
    if (fn === undefined) return undefined;
    const call = new Call(fn.name, top, state, this.host.tools);
    const values = valuesFor(fn, call);
    const outcome = values instanceof CellError ? undefined : work(fn, values, true);
    const worked = outcome === undefined || isFault(outcome) ? undefined : outcome;
    const figure = (each: Figure | FigureSpan | string): Result => (typeof each === 'string' ? { kind: 'text', text: each } : figureIn(each, worked!.lengthUnit));
    return {
      name: fn.name, about: fn.about, rule: fn.rule, source: fn.source,
      given: call.given.map((given, i) => this.#given(fn, given, i)),
      steps: worked?.steps.map(({ words, sum, value }): WorkingStep => ({
        words, sum: sum.map((part) => (typeof part === 'string' ? part : figure(part))), value: figure(value),
      })) ?? [],
      cautions: worked?.cautions.map(({ sentence, mend }) => ({ sentence, ...(mend && { mend: figure(mend) }) })) ?? [],
    };
  }

  #given(fn: SewingFunction, { ast, value }: Given, i: number): NonNullable<Working['call']>['given'][number] {
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

function figureIn(figure: Figure | FigureSpan, lengthUnit: UnitCode): Result {
  if ('low' in figure) return { kind: 'span', low: figure.low.value, high: figure.high.value, unit: unitOf(figure.low, lengthUnit) };
  return { kind: 'quantity', value: figure.value, unit: unitOf(figure, lengthUnit) };
}

function unitOf({ dimension, percent }: Figure, lengthUnit: UnitCode): UnitCode {
  switch (dimension) {
    case 'length': return lengthUnit;
    case 'area': return `${lengthUnit}2` as UnitCode;
    case 'angle': return 'deg';
    default: return percent ? '%' : '';
  }
}
