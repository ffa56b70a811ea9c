/**
 * The cautions of every formula, those of inner calls too. They are taken down
 * while a formula is worked out, so that formulas without one cost nothing.
 */
import type { Quantity, Span } from '../../src/quantities/index.ts';
import type { CellCaution } from '../../src/reckoning/protocol.ts';
import { figureIn } from '../../src/sewing/index.ts';
import type { Caution, Outcome, SewingFunction, Value } from '../../src/sewing/index.ts';
import type { Host } from './host.ts';
import { ScalarFormulaVertex } from './internals.ts';
import type { Ast, FormulaVertex, Inside, Place, State } from './internals.ts';
import { branchesNotTaken, partsOf, stateInside } from './parts.ts';

const FNV_START = 0x811c_9dc5;
const FNV_PRIME = 0x0100_0193;

/** More of one formula, as of a block that is worked out cell by cell, would tell her nothing new. */
const MOST = 50;

interface Noted {
  readonly fn: SewingFunction;
  /** The call that warns. */
  readonly call: Ast;
  readonly caution: Caution;
  readonly mend: Quantity | null;
  /** What stands for the argument that the mending figure is for. */
  readonly ast: Ast | undefined;
  readonly print: string;
}

export class Cautions {
  /** Of the formula that is being worked out. */
  #now: Noted[] = [];
  readonly #kept = new Map<FormulaVertex, readonly Noted[]>();
  #tidyAt = 1024;

  /** Takes down what a call of a function had to say. */
  take(fn: SewingFunction, call: Ast, values: readonly Value[], outcome: Exclude<Outcome, { sentence: string }>): void {
    const figures = [...values, outcome.value].map(figureText).join('|');
    for (const caution of outcome.cautions) {
      if (this.#now.length >= MOST) return;
      const print = printOf(`${fn.name}|${caution.sentence}|${figures}`);
      if (this.#now.some((noted) => noted.print === print && noted.call === call)) continue;
      const place = fn.args.findIndex(({ name }) => name === caution.cure?.put);
      this.#now.push({
        fn, call, caution, print,
        mend: caution.mend === undefined ? null : figureIn(caution.mend, outcome.lengthUnit),
        ast: place < 0 ? undefined : call.args?.[place],
      });
    }
  }

  /** A formula's working out begins. */
  begin(): void {
    if (this.#now.length > 0) this.#now = [];
  }

  /** Leaves out what calls in branches that the formula did not take had to say. */
  leaveOutUnused(host: Host, formula: Ast, state: State): void {
    const met = this.#now;
    const unused = new Set<Ast>();
    const walk = (ast: Ast, its: State, isUnused: boolean): void => {
      if (isUnused) unused.add(ast);
      const notTaken = branchesNotTaken(host, ast, its);
      for (const part of partsOf(ast)) walk(part, stateInside(host, ast, its), isUnused || notTaken.has(part));
    };
    try {
      walk(formula, state, false);
    } catch {
      // A function of the engine's library failed, as it did when the formula was worked out.
    }
    this.#now = met.filter(({ call }) => !unused.has(call));
  }

  /** It ended; true when its cautions are others than before. */
  settle(vertex: FormulaVertex): boolean {
    if (this.#now.length === 0) return this.#kept.size > 0 && this.#kept.delete(vertex);
    const noted = this.#now.filter(({ print }, i, all) => all.findIndex((other) => other.print === print) === i);
    const before = this.#kept.get(vertex);
    this.#kept.set(vertex, noted);
    if (this.#kept.size > this.#tidyAt) this.#tidy();
    return before === undefined || before.length !== noted.length || before.some(({ print }, i) => print !== noted[i]!.print);
  }

  /** The formula that was worked out last said something. */
  get met(): boolean {
    return this.#now.length > 0;
  }

  forget(vertex: FormulaVertex): void {
    this.#kept.delete(vertex);
  }

  get none(): boolean {
    return this.#kept.size === 0;
  }

  /** Every formula that has any and still stands. */
  formulas(): FormulaVertex[] {
    this.#tidy();
    return [...this.#kept.keys()];
  }

  /** As they go to the page; `home` is where the formula stands. */
  of(vertex: FormulaVertex, home: Place, inside: Inside): readonly CellCaution[] {
    return (this.#kept.get(vertex) ?? []).map(({ fn, caution: { sentence, cure }, mend, ast, print }): CellCaution => {
      const cell = cure && placeOf(ast, home, inside);
      return {
        by: fn.name, sentence, print,
        ...(mend && { mend: { kind: 'quantity', value: mend.value, unit: mend.unit } }),
        ...(cure && { cure: { put: cure.put, way: cure.way, cell: cell ?? null } }),
      };
    });
  }

  #tidy(): void {
    for (const vertex of this.#kept.keys()) if (vertex.idInGraph === undefined) this.#kept.delete(vertex);
    this.#tidyAt = Math.max(1024, 2 * this.#kept.size);
  }
}

/** The cell that a reference, or a name for one cell, stands for. */
function placeOf(ast: Ast | undefined, home: Place, inside: Inside): Place | undefined {
  switch (ast?.type) {
    case 'PARENTHESES': return placeOf(ast.expression, home, inside);
    case 'CELL_REFERENCE': {
      const { sheet, row, col } = ast.reference!.toSimpleCellAddress(home);
      return row < 0 || col < 0 ? undefined : { sheet, row, col };
    }
    case 'NAMED_EXPRESSION': {
      const address = inside._namedExpressions.namedExpressionForScope(ast.expressionName!)?.address;
      const vertex = address && inside._dependencyGraph.addressMapping.getCell(address);
      return vertex instanceof ScalarFormulaVertex ? placeOf(vertex.getFormula(inside._lazilyTransformingAstService), address!, inside) : undefined;
    }
    default: return undefined;
  }
}

/** The same for equal figures in any unit; a block of cells shows in the result. */
function figureText(value: Value | Quantity | Span): string {
  if (value === null) return '';
  if (typeof value !== 'object') return String(value);
  if ('dimension' in value) return `${value.dimension} ${Number(value.value.toPrecision(9))}`;
  if ('low' in value) return `${figureText(value.low)} to ${figureText(value.high)}`;
  return 'cells';
}

/** Figures and words as a short text that another set of them has hardly ever: FNV-1a over the text forwards and backwards. */
function printOf(text: string): string {
  let [forwards, backwards] = [FNV_START, FNV_START];
  for (let i = 0; i < text.length; i += 1) {
    forwards = Math.imul(forwards ^ text.charCodeAt(i), FNV_PRIME);
    backwards = Math.imul(backwards ^ text.charCodeAt(text.length - 1 - i), FNV_PRIME);
  }
  return (forwards >>> 0).toString(36) + (backwards >>> 0).toString(36).padStart(7, '0');
}
