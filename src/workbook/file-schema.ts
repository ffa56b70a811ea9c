/**
 * The whole file in one schema, made of the pieces that files are read with:
 * for `workbook.schema.json`, which describes the format to others. Reading
 * itself goes piece by piece (`file.ts`), so that damage costs little.
 */
import * as v from 'valibot';
import {
  BOOK_FORMAT, FILE_VERSION, areaSchema, filterSchema, frozenSchema, fullCellSchema, hiddenSchema, kindSchema, lineSchema, nextSheetIdSchema,
  plainCellSchema, settingsSchema, sheetIdSchema, widthSchema,
} from './schema.ts';
import { KINDS } from './records/index.ts';

const said = <T extends v.GenericSchema>(schema: T, description: string) => v.pipe(schema, v.description(description) as never) as unknown as T;

const cells = v.array(v.union([
  said(plainCellSchema, '[row, column, text], both counted from 0; the text is what was typed, a formula starting with “=”'),
  said(fullCellSchema, '[row, column, text, how it looks, whether it is to be filled in, its note]'),
]));

const sheet = v.object({
  id: said(sheetIdSchema, 'given once and never again in a workbook'),
  name: v.string(),
  about: v.optional(said(lineSchema, 'one line about the sheet')),
  widths: said(v.array(widthSchema), '[column, width in CSS pixels]'),
  cells,
  hidden: v.optional(said(hiddenSchema, 'rows and columns hidden by hand, as [first, last] of each stretch')),
  frozen: v.optional(said(frozenSchema, 'so many rows and columns stay in view')),
  filter: v.optional(said(filterSchema, 'which rows are to match, and which did not')),
});

export const bookFileSchema = v.pipe(
  v.object({
    format: v.literal(BOOK_FORMAT),
    version: v.literal(FILE_VERSION),
    checksum: v.optional(said(v.pipe(v.string(), v.regex(/^[0-9a-f]{8}$/)), 'CRC-32 (RFC 1952) of the UTF-8 bytes of this file as JSON without spaces and without this entry')),
    id: v.string(),
    title: said(lineSchema, 'the garment'),
    person: said(lineSchema, 'for whom'),
    settings: settingsSchema,
    nextSheetId: nextSheetIdSchema,
    sheets: v.array(sheet),
    names: v.array(v.object({
      name: v.string(),
      kind: kindSchema,
      area: v.nullable(said(areaSchema, '[sheet, top, left, bottom, right], counted from 0; null when the cells were removed')),
    })),
    records: v.optional(said(v.array(v.union(Object.entries(KINDS).map(([kind, { schema }]) => v.object({ kind: v.literal(kind), id: v.pipe(v.string(), v.nonEmpty()), data: schema })))), 'what is kept besides the cells; not there when there is nothing')),
  }),
  v.title('A workbook of Tape & Tally'),
  v.description('Only what was typed is in the file; everything else is worked out from it.'),
);
