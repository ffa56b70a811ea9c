/**
 * Formulas that follow inserted or removed rows and columns, when many say the
 * same, each for its own row: the next one down is known by comparing with the
 * one above, and what becomes of it by what became of that one. All others are
 * read, and so is the first of each run; the outcome is the same either way.
 */
import { MAX_ROWS } from './address.ts';
import { rewriteReferences } from './follow.ts';
import { plainReferences } from './plain.ts';
import type { ChangeOfReferences, SheetName } from './types.ts';

type Structure = Extract<ChangeOfReferences, { readonly do: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns' }>;

/** A formula in pieces, with a row's number between each and the next. */
class Pattern {
  private constructor(
    private readonly pieces: readonly string[],
    /** Rows counted from 0: from the formula's own where they are not fixed. */
    private readonly rows: readonly number[],
    private readonly fixed: readonly boolean[],
  ) {}

  static of(formula: string, row: number): Pattern | undefined {
    const references = plainReferences(formula);
    if (references === undefined || references.length === 0) return undefined;
    const [pieces, rows, fixed]: [string[], number[], boolean[]] = [[], [], []];
    let kept = 0;
    for (const { start, end, reference: { from, to } } of references) {
      const corners = to === undefined ? [from] : [from, to];
      let corner = 0;
      for (const match of formula.slice(start, end).matchAll(/\d+/g)) {
        pieces.push(formula.slice(kept, start + match.index));
        kept = start + match.index + match[0].length;
        const { row: named, rowFixed } = corners[corner++]!;
        rows.push(rowFixed ? named! : named! - row);
        fixed.push(rowFixed);
      }
    }
    pieces.push(formula.slice(kept));
    return new Pattern(pieces, rows, fixed);
  }

  /** The formula for a row; `undefined` where a number has no place after the change. */
  at(row: number, after?: (row: number) => number | undefined): string | undefined {
    const { pieces, rows, fixed } = this;
    let text = pieces[0]!;
    for (let i = 0; i < rows.length; i++) {
      const named = fixed[i]! ? rows[i]! : rows[i]! + row;
      const moved = after === undefined ? named : after(named);
      if (moved === undefined) return undefined;
      text += moved + 1 + pieces[i + 1]!;
    }
    return text;
  }

  sameRows(other: Pattern): boolean {
    return this.rows.length === other.rows.length && this.rows.every((row, i) => row === other.rows[i] && this.fixed[i] === other.fixed[i]);
  }
}

/** Where a row stands afterwards; `undefined` for one that is gone, or pushed over the edge. */
function rowAfter({ do: what, at, count }: Structure): (row: number) => number | undefined {
  if (what === 'insertRows') return (row) => (row < at ? row : row + count < MAX_ROWS ? row + count : undefined);
  return (row) => (row < at ? row : row < at + count ? undefined : row - count);
}

export interface Rewritten {
  readonly text: string;
  /** The opposite change is sure to bring the formula back to the letter. */
  readonly exact: boolean;
}

interface Run {
  readonly before: Pattern;
  readonly exact: boolean;
  /** For columns, what the formulas are afterwards. */
  readonly after?: Pattern;
}

/** Rewrites the formulas of a workbook for one change, best row by row. */
export class Repeats {
  readonly #runs: (Run | undefined)[] = [];
  readonly #opposite: Structure;
  readonly #rowAfter: ((row: number) => number | undefined) | null;

  constructor(private readonly change: Structure, private readonly sheets: readonly SheetName[]) {
    this.#opposite = { ...change, do: OPPOSITE[change.do] };
    this.#rowAfter = change.do === 'insertRows' || change.do === 'removeRows' ? rowAfter(change) : null;
  }

  /** As `rewriteReferences`, for the formula of a cell. */
  rewrite(formula: string, own: SheetName, row: number, col: number): Rewritten {
    const run = own.id === this.change.sheet ? this.#runs[col] : undefined;
    if (run !== undefined && run.before.at(row) === formula) {
      const text = this.#rowAfter ? run.before.at(row, this.#rowAfter) : run.after!.at(row);
      // Rows outside of what is removed go there and back each by itself.
      if (text !== undefined) return { text, exact: run.exact || this.#rowAfter !== null };
    }
    const text = rewriteReferences(formula, own, this.sheets, this.change);
    const exact = text === formula || rewriteReferences(text, own, this.sheets, this.#opposite) === formula;
    if (own.id !== this.change.sheet) return { text, exact };
    const before = Pattern.of(formula, row);
    const after = before && !this.#rowAfter ? Pattern.of(text, row) : undefined;
    if (before && (this.#rowAfter || (after && after.sameRows(before)))) this.#runs[col] = { before, exact, ...(after && { after }) };
    return { text, exact };
  }
}

const OPPOSITE = { insertRows: 'removeRows', removeRows: 'insertRows', insertColumns: 'removeColumns', removeColumns: 'insertColumns' } as const;
