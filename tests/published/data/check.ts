/** One published figure: what goes into cells, the formula that works it out, and what must come out. */
export interface Check {
  /** What the source has given, in its words. */
  readonly about: string;
  /** Typed into the cells A, B, C … of the check's own row. */
  readonly cells: readonly string[];
  /** `A#` is the first of those cells. */
  readonly formula: string;
  readonly expected: number | string;
  /** The unit in which `expected` counts; a plain number or a text has none. */
  readonly unit: '' | '%' | 'mm' | 'cm' | 'm' | 'in' | 'yd' | 'deg';
  /** In that unit; 0 leaves room for the last digits of a sum only. */
  readonly tolerance: number;
  readonly source: string;
  /** How the figure was come by, where that is not plain from the source. */
  readonly obtained?: string;
}

export const GEOMETRY = 'exact geometry';
export const ARITHMETIC = 'exact arithmetic';
