/** One published figure: what goes into cells, the formula that works it out, and what must come out. */
export interface Check {
  /** What the source has given, in its words. */
  readonly about: string;
  /** Typed into the cells A, B, C … of the check's own row. */
  readonly cells: readonly string[];
  /** `A#` is the first of those cells. */
  readonly formula: string;
  /** A number in `unit`, both ends of a span in it, or a text. */
  readonly expected: number | string | readonly [low: number, high: number];
  /** The unit in which `expected` counts; a plain number or a text has none. */
  readonly unit: '' | '%' | 'mm' | 'cm' | 'm' | 'in' | 'yd' | 'deg';
  /** In that unit; 0 leaves room for the last digits of a sum only. */
  readonly tolerance: number;
  /** What the cell shows, in characters that every keyboard has, where that is the check. */
  readonly shown?: { readonly text: string; readonly inchStep: 8 | 16 | 32; readonly system?: 'own' | 'in' };
  readonly source: string;
  /** How the figure was come by, where that is not plain from the source. */
  readonly obtained?: string;
}

export const GEOMETRY = 'exact geometry';
export const ARITHMETIC = 'exact arithmetic';
export const PRACTICE = 'common practice';
