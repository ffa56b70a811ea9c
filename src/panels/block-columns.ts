/** A block of rows as the dialogs that sort and match them show it. */

export interface BlockColumn {
  readonly col: number;
  /** "B". */
  readonly letter: string;
  /** What stands in the block's first row; empty for nothing. */
  readonly heading: string;
}

export interface Block {
  /** "A1:D9 of Fit". */
  readonly place: string;
  /** Rows in it, the first one too. */
  readonly rows: number;
  readonly columns: readonly BlockColumn[];
  /** The first row looks like headings. */
  readonly headings: boolean;
  /** Filled cells right beside it would stay where they are. */
  readonly neighbours: boolean;
}

export const NO_BLOCK: Block = { place: '', rows: 0, columns: [], headings: false, neighbours: false };

/** "B, Width" where the first row is headings, else "B". */
export function columnName({ letter, heading }: BlockColumn, headings: boolean): string {
  return headings && heading ? `${letter}, ${heading}` : `Column ${letter}`;
}
