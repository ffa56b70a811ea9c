import type { Fault, UnitCode } from '../quantities/index.ts';

/** One end of a reference. `null` where it names a whole column (no row) or a whole row (no column). */
export interface Corner {
  readonly row: number | null;
  readonly col: number | null;
  /** Written with `$`: stays when the formula is copied. */
  readonly rowFixed: boolean;
  readonly colFixed: boolean;
}

/** A reference as it is written: `A1`, `$A1:B$2`, `B:B`, `3:5`, `'My sheet'!A1`. The ends may be the wrong way round. */
export interface Reference {
  /** The sheet's name without quotes; not there when the reference is to the formula's own sheet. */
  readonly sheet?: string;
  readonly from: Corner;
  /** Not there for a single cell. */
  readonly to?: Corner;
  /** The sheet named a second time before the second end, as in `Hem!A1:Hem!B2`. */
  readonly toSheet?: string;
}

/** A rectangle of cells on some sheet; both ends belong to it. A whole column reaches to the last row there can be. */
export interface Box {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export interface SheetName {
  readonly id: number;
  readonly name: string;
}

/**
 * What a token is, which is also its class for colouring. `error` is an error
 * word such as `#REF!`; `bad` is text that has no meaning, with a sentence.
 */
export type TokenKind =
  | 'operator' | 'bracket' | 'separator' | 'space'
  | 'function' | 'unit' | 'reference' | 'name' | 'string' | 'number' | 'truth' | 'error' | 'bad';

/** One part of a figure with a unit: `amount` of it, divided by `over` when that is there. */
export interface UnitPart {
  readonly amount: number;
  readonly over?: number;
  readonly unit: UnitCode;
}

export interface Token {
  readonly kind: TokenKind;
  /** Exactly as typed; the texts of all tokens in a row are the formula. */
  readonly text: string;
  readonly start: number;
  /** For `reference`. */
  readonly reference?: Reference;
  /** For `number`. */
  readonly value?: number;
  /** For `unit`: `1 yd 4 in` has two. */
  readonly parts?: readonly UnitPart[];
  /** For `bad`: what is wrong and what to do. */
  readonly sentence?: string;
}

/** What can stand in a formula from `start` to `end`, so that it can be read. */
export interface Instead {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A fault with the place in the formula that it speaks of. */
export interface FormulaFault extends Fault {
  readonly start: number;
  readonly end: number;
  /** What would mend it, where that can be said. */
  readonly instead?: readonly Instead[];
}

/** What a formula's words can mean. Indexes are kept by the identity of the arrays, so pass the same ones while they are the same. */
export interface EngineContext {
  readonly sheets: readonly SheetName[];
  /** The id of the sheet that the formula stands on. */
  readonly ownSheet: number;
  readonly names: readonly string[];
}

/** `count` rows or columns from `at` on go before the one that stood at `to`, which is none of them; to the end when it is one past the last. */
export interface LineMove {
  readonly at: number;
  readonly count: number;
  readonly to: number;
}

/** One axis of a reference or a block, in order: its first and last row or column. */
export interface Run {
  readonly first: number;
  readonly last: number;
}

/** What happened to the cells that formulas point at. */
export type ChangeOfReferences =
  | { readonly do: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns'; readonly sheet: number; readonly at: number; readonly count: number }
  | {
      readonly do: 'moveCells';
      readonly from: Box & { readonly sheet: number };
      readonly to: { readonly sheet: number; readonly row: number; readonly col: number };
      /** True when the formula itself stands in the moved cells. Only matters when they move to another sheet. */
      readonly formulaMoves?: boolean;
    }
  /** Whole rows or columns go before the one that stood at `to`, which is none of them. */
  | ({ readonly do: 'moveRows' | 'moveColumns'; readonly sheet: number } & LineMove)
  | { readonly do: 'renameSheet'; readonly sheet: number; readonly name: string }
  | { readonly do: 'removeSheet'; readonly sheet: number }
  /** `names`: all names of the workbook, so that `bust` is not found inside `full bust`. */
  | { readonly do: 'renameName'; readonly from: string; readonly to: string; readonly names: readonly string[] };
