/** Records come, change and go; those that point at cells follow them. */
import { safeParse, type GenericSchema } from 'valibot';
import { rewriteReferences } from '../formula/index.ts';
import type { ChangeOfReferences, SheetName } from '../formula/types.ts';
import { followOrder } from './order-rows.ts';
import { unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { LIMITS } from './limits.ts';
import { KINDS, isRecordKind, type BookRecord, type RecordData, type RecordKind } from './records/index.ts';
import type { Book, Edit } from './types.ts';

type SetRecord = Extract<Edit, { do: 'setRecord' }>;

const NONE: readonly BookRecord[] = [];

/** All records of one kind, in the order in which they came. */
export function recordsOf<K extends RecordKind>(book: Book, kind: K): readonly { readonly id: string; readonly data: RecordData[K] }[] {
  return (book.records ?? NONE).filter((record) => record.kind === kind) as unknown as readonly { readonly id: string; readonly data: RecordData[K] }[];
}

export function recordCalled<K extends RecordKind>(book: Book, kind: K, id: string): RecordData[K] | undefined {
  return recordsOf(book, kind).find((record) => record.id === id)?.data;
}

/** A record in normal form, whatever was given; `null` when it is none. */
export function tidyRecord(kind: unknown, id: unknown, data: unknown): BookRecord | null {
  if (!isRecordKind(kind) || typeof id !== 'string' || id === '' || id.length > LIMITS.line) return null;
  const read = safeParse(KINDS[kind].schema as GenericSchema, data);
  return read.success ? { kind, id, data: read.output } as BookRecord : null;
}

/** A workbook without records has no list of them. */
function withRecords(book: Book, records: readonly BookRecord[]): Book {
  const after = { ...book, records };
  if (records.length === 0) delete (after as { records?: unknown }).records;
  return after;
}

/** `data: null` takes it away; `at` is its place in the list when it is new, the end if not given. */
export function setRecord({ kind, id, data, at }: SetRecord, book: Book): Outcome {
  const records = book.records ?? NONE;
  const place = records.findIndex((record) => record.kind === kind && record.id === id);
  const old = records[place];
  if (data === null) {
    if (!old) return unchanged(book);
    return { book: withRecords(book, records.toSpliced(place, 1)), undo: [{ ...old, do: 'setRecord', at: place } as SetRecord], effects: [] };
  }
  const record = tidyRecord(kind, id, data);
  if (!record) throw new EditRefused('That cannot be kept in the workbook: it is not complete, or too long.');
  if (old) {
    if (JSON.stringify(old.data) === JSON.stringify(record.data)) return unchanged(book);
    return { book: withRecords(book, records.with(place, record)), undo: [{ ...old, do: 'setRecord' } as SetRecord], effects: [] };
  }
  if (records.length >= LIMITS.records) throw new EditRefused(`A workbook keeps at most ${LIMITS.records} such things: take some away first.`);
  return {
    book: withRecords(book, records.toSpliced(at ?? records.length, 0, record)),
    undo: [{ do: 'setRecord', kind, id, data: null } as SetRecord],
    effects: [],
  };
}

/** A record's formulas stand on no sheet. */
const NOWHERE: SheetName = { id: -1, name: '' };

/** What an edit does to references; `null` when nothing. */
export function changeOfReferences(edit: Edit, book: Book, formulaMoves = false): ChangeOfReferences | null {
  switch (edit.do) {
    case 'insertRows': case 'removeRows': case 'insertColumns': case 'removeColumns':
    case 'moveRows': case 'moveColumns':
    case 'renameSheet': return edit;
    case 'removeSheet': return { do: 'removeSheet', sheet: edit.sheet };
    case 'moveCells': return { ...edit, formulaMoves };
    case 'renameName': return { do: 'renameName', from: edit.name, to: edit.to, names: book.names.map(({ name }) => name) };
    default: return null;
  }
}

/** What an edit does to the formulas of records; `null` when nothing. */
function rewriteBy(edit: Edit, book: Book): ((formula: string) => string) | null {
  if (edit.do === 'orderRows') return followOrder(edit, book, NOWHERE);
  const change = changeOfReferences(edit, book);
  return change && ((formula) => rewriteReferences(formula, NOWHERE, book.sheets, change));
}

/** The workbook after a change, with the records that were before it made to follow. */
function withFollowed(before: Book, rewrite: (formula: string) => string, after: Book): Book {
  const records = before.records ?? NONE;
  const next = records.map((record): BookRecord => {
    const follow = KINDS[record.kind].follow as ((data: unknown, rewrite: (formula: string) => string) => unknown) | undefined;
    const data = follow?.(record.data, rewrite) ?? record.data;
    return data === record.data ? record : { ...record, data } as BookRecord;
  });
  return next.every((record, at) => record === records[at]) ? after : withRecords(after, next);
}

/** As much of a workbook as records and references are concerned with. */
const hollow = (book: Book): Book => ({ ...book, sheets: book.sheets.map(({ id, name }) => ({ id, name, rows: [], widths: {} })) });

/**
 * An edit's outcome with the records followed. Undoing it is tried on a
 * workbook without cells, so that what it would not bring back by itself is
 * put back by the record, whatever the reason.
 *
 * @param done how an edit is done to all but the records
 */
export function recordsFollow(edit: Edit, before: Book, outcome: Outcome, done: (edit: Edit, book: Book) => Outcome): Outcome {
  if (!before.records) return outcome;
  const change = rewriteBy(edit, before);
  const appears = edit.do === 'addSheet' || edit.do === 'setName';
  if (!change && !appears) return outcome;
  const book = change ? withFollowed(before, change, outcome.book) : outcome.book;
  let back = hollow(book);
  for (const step of outcome.undo) {
    if (step.do === 'setCells' || step.do === 'setRecord') continue;
    const hollowed = step.do === 'addSheet' ? { ...step, sheet: { id: step.sheet.id, name: step.sheet.name, rows: [], widths: {} } } : step;
    const way = rewriteBy(step, back);
    const without = done(hollowed, back).book;
    back = way ? withFollowed(back, way, without) : without;
  }
  const undo = before.records.flatMap((record, at): Edit[] => (
    JSON.stringify(back.records?.[at]?.data) === JSON.stringify(record.data) ? [] : [{ ...record, do: 'setRecord' } as SetRecord]));
  return undo.length === 0 && book === outcome.book ? outcome : { book, undo: [...outcome.undo, ...undo], effects: outcome.effects };
}
