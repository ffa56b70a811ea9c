/**
 * The shapes of what is kept in files, as valibot schemas. Files are read piece
 * by piece with these, so that one damaged piece does not cost the others.
 * Objects come out with known keys only: `__proto__` in a file is one more
 * unknown key.
 */
import * as v from 'valibot';
import { UNIT_CODES } from '../quantities/index.ts';
import { LIMITS } from './limits.ts';
import type { Acknowledged, Condition, Filter, FilterTest, Frozen, Hidden, Look, Runs } from './types.ts';

export const BOOK_FORMAT = 'tape-and-tally/workbook';
export const TEMPLATE_FORMAT = 'tape-and-tally/template';
/** The versions written; every version up to them is read. Of workbooks 2 came with records. */
export const FILE_VERSION = 2;
export const TEMPLATE_VERSION = 1;

const index = (limit: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(limit - 1), v.transform((n) => n + 0));
const row = index(LIMITS.rows);
const col = index(LIMITS.columns);
const text = v.pipe(v.string(), v.maxLength(LIMITS.characters));

export const lookSchema: v.GenericSchema<unknown, Look> = v.object({
  unit: v.exactOptional(v.picklist(UNIT_CODES)),
  step: v.exactOptional(v.picklist([8, 16, 32])),
  decimals: v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(LIMITS.decimals))),
  strong: v.exactOptional(v.literal(true)),
  italic: v.exactOptional(v.literal(true)),
  border: v.exactOptional(v.picklist(['above', 'below', 'around'])),
  heading: v.exactOptional(v.literal(true)),
  align: v.exactOptional(v.picklist(['start', 'centre', 'end'])),
});

const acknowledgedSchema: v.GenericSchema<unknown, Acknowledged> = v.object({ print: v.pipe(v.string(), v.maxLength(LIMITS.line)), note: text });

/** What a cell has beside its text. */
const extrasSchema = v.object({
  look: v.exactOptional(lookSchema),
  input: v.exactOptional(v.literal(true)),
  note: v.exactOptional(text),
  acknowledged: v.exactOptional(v.array(acknowledgedSchema)),
});

/** `[row, column, text]`, both counted from 0. */
export const plainCellSchema = v.strictTuple([row, col, text]);
export const fullCellSchema = v.strictTuple([row, col, text, extrasSchema]);
/** For a cell whose fourth entry is damaged. */
export const bareCellSchema = v.tuple([row, col, text]);

export type CellExtras = v.InferOutput<typeof extrasSchema>;
export type FileCell = readonly [row: number, col: number, raw: string] | readonly [row: number, col: number, raw: string, extras: CellExtras];

export const widthSchema = v.strictTuple([col, v.pipe(v.number(), v.minValue(LIMITS.narrowest), v.maxValue(LIMITS.widest))]);
export type FileWidth = readonly [col: number, width: number];

const runs = (limit: number): v.GenericSchema<unknown, Runs> => v.array(v.pipe(
  v.strictTuple([index(limit), index(limit)]),
  v.check(([first, last]) => first <= last),
));

export const hiddenSchema: v.GenericSchema<unknown, Hidden> = v.object({ rows: runs(LIMITS.rows), columns: runs(LIMITS.columns) });
export const frozenSchema: v.GenericSchema<unknown, Frozen> = v.object({ rows: index(LIMITS.frozen + 1), columns: index(LIMITS.frozen + 1) });

/** Complete by its type. */
const TESTS: Readonly<Record<FilterTest, true>> = {
  is: true, isNot: true, has: true, hasNot: true, more: true, atLeast: true, less: true, atMost: true, empty: true, filled: true,
};
export const FILTER_TESTS = Object.keys(TESTS) as FilterTest[];

const conditionSchema: v.GenericSchema<unknown, Condition> = v.object({
  col, test: v.picklist(FILTER_TESTS), text: v.pipe(v.string(), v.maxLength(LIMITS.line)),
});

export const filterSchema: v.GenericSchema<unknown, Filter> = v.object({
  area: v.pipe(
    v.object({ top: row, left: col, bottom: row, right: col }),
    v.check(({ top, left, bottom, right }) => top <= bottom && left <= right),
  ),
  conditions: v.array(conditionSchema),
  hides: runs(LIMITS.rows),
});

export const lineSchema = v.pipe(v.string(), v.maxLength(LIMITS.line));
export const noteSchema = text;

export const settingsSchema = v.object({
  show: v.picklist(['own', 'cm', 'in', 'both']),
  inchStep: v.picklist([8, 16, 32]),
  decimalMark: v.exactOptional(v.literal(',')),
});

export const sheetIdSchema = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(LIMITS.sheetId));
export const nextSheetIdSchema = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(LIMITS.sheetId + 1));

/** `[top, left, bottom, right]`. */
export const blockSchema = v.pipe(
  v.strictTuple([row, col, row, col]),
  v.check(([top, left, bottom, right]) => top <= bottom && left <= right),
);
/** `[sheet, top, left, bottom, right]`. */
export const areaSchema = v.pipe(
  v.strictTuple([v.number(), row, col, row, col]),
  v.check(([, top, left, bottom, right]) => top <= bottom && left <= right),
);

export const kindSchema = v.picklist(['cells', 'chart']);

/** Any object, by its own keys: what is in it is looked at one by one. */
export const recordSchema = v.looseObject({});
/** An object that says what it is. */
export const headSchema = v.looseObject({ format: v.string() });
export const versionSchema = v.pipe(v.number(), v.integer(), v.minValue(1));

/** The value if it is right, else `undefined`. */
export function read<Output>(schema: v.GenericSchema<unknown, Output>, value: unknown): Output | undefined {
  const result = v.safeParse(schema, value);
  return result.success ? result.output : undefined;
}
