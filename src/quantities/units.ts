/**
 * The units this workbook knows, and what each one is worth.
 *
 * A quantity is kept as one number in the base unit of its dimension:
 * millimetres for length, square millimetres for area, degrees for angle, and
 * the bare number itself for counts and percents (3 % is kept as 0.03).
 *
 * Sources: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in exactly (OASIS OpenDocument
 * 1.4 part 4, OpenFormula, section 6.16.18, table 24).
 */

export type Dimension = 'number' | 'length' | 'area' | 'angle';

/**
 * Every unit by its code, in a fixed order: the place in this list is the byte
 * that travels from the worker, so new units go to the end.
 */
export const UNIT_CODES = [
  '', '%',
  'mm', 'cm', 'm', 'in', 'ft', 'yd',
  'mm2', 'cm2', 'm2', 'in2', 'ft2', 'yd2',
  'deg', 'rad',
] as const;

export type UnitCode = (typeof UNIT_CODES)[number];

export interface Unit {
  readonly code: UnitCode;
  readonly dimension: Dimension;
  /** How many base units one of these is. */
  readonly size: number;
  /** As it is written after a number on the screen, for example `cm²`. */
  readonly sign: string;
  /** In words, for sentences: "centimetres". */
  readonly words: string;
  readonly system: 'metric' | 'inch' | 'neither';
}
