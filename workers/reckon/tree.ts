/** A formula as a tree: each sum, function and cell with its value, worked out by the engine itself. */
import type { Result, WorkingPart } from '../../src/reckoning/protocol.ts';
import type { Area } from '../../src/workbook/types.ts';
import type { Host } from './host.ts';
import { SimpleRangeValue } from './internals.ts';
import type { Ast, State } from './internals.ts';
import { branchesNotTaken, isBlock, isMeasured, measuredText, partsOf, SIGNS, stateInside, withoutBrackets } from './parts.ts';

/** Parts shown of one formula; it says so when there are more. */
export const MOST_PARTS = 200;
/** Characters of a part as it is written. */
const LONGEST = 72;

export interface Naming {
  /** How a cell, a block or a name is written; `undefined` for anything else. */
  textOf(ast: Ast): string | undefined;
  areaOf(ast: Ast): Area | null;
  resultOf(value: unknown): Result;
}

/** Signs that stand in one row: a + b − c is one sum. */
const ROWS: readonly ReadonlySet<string>[] = [new Set(['PLUS_OP', 'MINUS_OP']), new Set(['TIMES_OP', 'DIV_OP']), new Set(['CONCATENATE_OP'])];

export class Tree {
  #left = MOST_PARTS;
  /** Calls of functions that were met and used, outermost first. */
  readonly calls: { readonly ast: Ast; readonly state: State }[] = [];

  constructor(private readonly host: Host, private readonly naming: Naming) {}

  /** True when parts were left out. */
  get cut(): boolean {
    return this.#left < 0;
  }

  of(given: Ast, state: State, unused = false): WorkingPart {
    const ast = withoutBrackets(given);
    this.#left -= 1;
    const area = this.naming.areaOf(ast);
    const value = unused && ast.type !== 'CELL_REFERENCE' ? undefined : this.host.inside._evaluator.interpreter.evaluateAst(ast, state);
    if (ast.type === 'FUNCTION_CALL' && !unused) this.calls.push({ ast, state });
    return {
      text: shorten(this.#written(ast)),
      value: value === undefined || value instanceof SimpleRangeValue ? null : this.naming.resultOf(value),
      ...(area && { area }), ...(unused && { unused: true }),
      parts: this.#parts(ast, state, unused),
    };
  }

  #parts(ast: Ast, state: State, unused: boolean): readonly WorkingPart[] {
    const inside = stateInside(this.host, ast, state);
    const notTaken = branchesNotTaken(this.host, ast, state);
    const parts: WorkingPart[] = [];
    for (const part of operands(ast)) {
      if (saysItself(part)) continue;
      if (this.#left <= 0) {
        this.#left = -1;
        break;
      }
      parts.push(this.of(part, inside, unused || notTaken.has(part)));
    }
    return parts;
  }

  #written(ast: Ast): string {
    const sign = SIGNS[ast.type];
    if (sign !== undefined) return `${this.#written(ast.left!)} ${sign} ${this.#written(ast.right!)}`;
    switch (ast.type) {
      case 'PARENTHESES': return isMeasured(withoutBrackets(ast)) ? this.#written(withoutBrackets(ast)) : `(${this.#written(ast.expression!)})`;
      case 'MINUS_UNARY_OP': return `−${this.#written(ast.value as Ast)}`;
      case 'PLUS_UNARY_OP': return `+${this.#written(ast.value as Ast)}`;
      case 'PERCENT_OP': return `${this.#written(ast.value as Ast)} %`;
      case 'NUMBER': return String(ast.value);
      case 'STRING': return `“${String(ast.value)}”`;
      case 'ARRAY': return '{…}';
      case 'FUNCTION_CALL': {
        if (isMeasured(ast)) return measuredText(ast);
        if (isTruth(ast)) return ast.procedureName!;
        return `${ast.procedureName}(${(ast.args ?? []).map((arg) => this.#written(arg)).join('; ')})`;
      }
      default: return this.naming.textOf(ast) ?? '';
    }
  }
}

const isTruth = ({ procedureName, args }: Ast): boolean => (procedureName === 'TRUE' || procedureName === 'FALSE') && (args ?? []).length === 0;

/** A figure or a word that is its own value. */
function saysItself(part: Ast): boolean {
  const ast = withoutBrackets(part);
  return ['NUMBER', 'STRING', 'EMPTY', 'ARRAY', 'ERROR'].includes(ast.type) || (ast.type === 'FUNCTION_CALL' && isTruth(ast));
}

/** The parts of a part, those of a row of like signs side by side. Inside LET words have meanings that they have nowhere else. */
function operands(ast: Ast): readonly Ast[] {
  const row = ROWS.find((signs) => signs.has(ast.type));
  if (row === undefined) return isBlock(ast) || ast.procedureName === 'LET' ? [] : partsOf(ast);
  const found: Ast[] = [];
  let left = ast;
  for (; row.has(left.type); left = left.left!) found.unshift(left.right!);
  return [left, ...found];
}

function shorten(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}
