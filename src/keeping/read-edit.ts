/**
 * Edits as they come out of storage. Only their shape is looked at here;
 * whether an edit can be made to a workbook is for `apply` to say.
 */
import * as v from 'valibot';
import { FILTER_TESTS, isRecordKind, lookSchema, tidyRecord, type Edit } from '../workbook/index.ts';

const whole = v.pipe(v.number(), v.integer(), v.minValue(0));

const address = v.object({ sheet: whole, row: whole, col: whole });
export const areaSchema = v.object({ sheet: whole, top: whole, left: whole, bottom: whole, right: whole });
const area = areaSchema;

/** A key that is there without a value says as much as one that is not there; files have no such keys, edits may. */
const look = v.pipe(
  v.looseObject({}),
  v.transform((given): unknown => Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined))),
  lookSchema,
);

const pins = v.array(v.object({ print: v.string(), note: v.string() }));

const cell = v.object({ raw: v.string(), look: v.optional(look), input: v.optional(v.literal(true)), note: v.optional(v.string()), acknowledged: v.optional(pins) });

const runs = v.array(v.tuple([whole, whole]));
const frozen = { rows: whole, columns: whole };

const filter = v.object({
  area: v.object({ top: whole, left: whole, bottom: whole, right: whole }),
  conditions: v.array(v.object({ col: whole, test: v.picklist(FILTER_TESTS), text: v.string() })),
  hides: runs,
});

const sheet = v.object({
  id: whole,
  name: v.string(),
  rows: v.array(v.optional(v.array(v.optional(cell)))),
  widths: v.record(v.pipe(v.string(), v.transform(Number), whole), v.number()),
  about: v.optional(v.string()),
  hidden: v.optional(v.object({ rows: runs, columns: runs })),
  frozen: v.optional(v.object(frozen)),
  filter: v.optional(filter),
});

const structure = v.object({
  do: v.picklist(['insertRows', 'removeRows', 'insertColumns', 'removeColumns']), sheet: whole, at: whole, count: whole,
});

const moveLines = v.object({ do: v.picklist(['moveRows', 'moveColumns']), sheet: whole, at: whole, count: whole, to: whole });

/** Complete by its type: a new kind of edit does not compile until its shape is here. */
const SHAPES: Readonly<Record<Edit['do'], v.GenericSchema<unknown, Edit>>> = {
  setCells: v.object({ do: v.literal('setCells'), sheet: whole, cells: v.array(v.object({ row: whole, col: whole, cell: v.nullable(cell) })) }),
  insertRows: structure,
  removeRows: structure,
  insertColumns: structure,
  removeColumns: structure,
  moveRows: moveLines,
  moveColumns: moveLines,
  orderRows: v.object({ do: v.literal('orderRows'), area, order: v.array(whole) }),
  acknowledge: v.object({ do: v.literal('acknowledge'), sheet: whole, row: whole, col: whole, pins }),
  moveCells: v.object({ do: v.literal('moveCells'), from: area, to: address }),
  addSheet: v.object({ do: v.literal('addSheet'), sheet, at: whole }),
  removeSheet: v.object({ do: v.literal('removeSheet'), sheet: whole, nextSheetId: v.optional(whole) }),
  renameSheet: v.object({ do: v.literal('renameSheet'), sheet: whole, name: v.string() }),
  moveSheet: v.object({ do: v.literal('moveSheet'), sheet: whole, to: whole }),
  setAbout: v.object({ do: v.literal('setAbout'), sheet: whole, about: v.string() }),
  setName: v.object({
    do: v.literal('setName'), name: v.string(),
    target: v.nullable(v.object({ area: v.nullable(area), kind: v.picklist(['cells', 'chart']) })),
  }),
  renameName: v.object({ do: v.literal('renameName'), name: v.string(), to: v.string() }),
  setWidth: v.object({ do: v.literal('setWidth'), sheet: whole, col: whole, width: v.nullable(v.number()) }),
  setHidden: v.object({ do: v.literal('setHidden'), sheet: whole, axis: v.picklist(['rows', 'columns']), runs }),
  setFrozen: v.object({ do: v.literal('setFrozen'), sheet: whole, ...frozen }),
  setFilter: v.object({ do: v.literal('setFilter'), sheet: whole, filter: v.nullable(filter) }),
  setSettings: v.object({
    do: v.literal('setSettings'),
    settings: v.object({ show: v.picklist(['own', 'cm', 'in', 'both']), inchStep: v.picklist([8, 16, 32]), decimalMark: v.exactOptional(v.literal(',')) }),
  }),
  setTitle: v.object({ do: v.literal('setTitle'), title: v.string(), person: v.string() }),
  setRecord: v.pipe(
    v.object({ do: v.literal('setRecord'), kind: v.string(), id: v.string(), data: v.unknown(), at: v.exactOptional(whole) }),
    v.rawTransform(({ dataset: { value: { data, ...edit } }, addIssue, NEVER }): Edit => {
      if (data === null && isRecordKind(edit.kind)) return { ...edit, data } as Edit;
      const record = tidyRecord(edit.kind, edit.id, data);
      if (record) return { ...edit, ...record } as Edit;
      addIssue();
      return NEVER;
    }),
  ),
  many: v.object({ do: v.literal('many'), label: v.string(), edits: v.array(v.lazy(shapeOf)) }),
};

const noEdit = v.never();

function shapeOf(stored: unknown): v.GenericSchema<unknown, Edit> {
  const kind = (stored as { do?: unknown } | null | undefined)?.do;
  return typeof kind === 'string' && Object.hasOwn(SHAPES, kind) ? SHAPES[kind as Edit['do']] : noEdit;
}

/** `null` when it is no edit that this version knows. */
export function readEdit(stored: unknown): Edit | null {
  try {
    const result = v.safeParse(shapeOf(stored), stored);
    return result.success ? result.output : null;
  } catch {
    // Nested deeper than the stack goes: nobody made that by hand.
    return null;
  }
}
