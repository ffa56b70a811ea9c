import type { Piece } from './decimal-comma.ts';
import type { Token } from './types.ts';

/** An open bracket and what has come inside it. */
export interface Frame {
  readonly kind: 'formula' | 'call' | 'group' | 'list';
  readonly token: Token;
  /** Where in the output the bracket's text stands. */
  readonly out: number;
  /** Nothing has come since the bracket or the last separator. */
  empty: boolean;
  /** Operators since then, and the deepest thing among their operands. */
  operators: number;
  deepest: number;
  /** The most that an earlier argument came to. */
  most: number;
  /** A `;` parts the arguments. */
  semicolon: boolean;
  /** The first thing that may be one number with a decimal comma. */
  decimal?: Piece | undefined;
  /** For a list: cells in this row, and in the first. */
  cells: number;
  width: number;
}
