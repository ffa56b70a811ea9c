/**
 * The workbook's file: plain JSON, described by `BookFile`. What is written is
 * read back equal; what is damaged is read as far as it can be, with a list of
 * what was left out and where.
 */
import { foldName } from '../formula/index.ts';
import { emptySheet } from './book.ts';
import { cellsToFile, fullRoom, rowsFromFile, showingFromFile, widthsFromFile, widthsToFile } from './file-cells.ts';
import type { Room } from './file-cells.ts';
import { LIMITS, counted } from './limits.ts';
import { nameTextFault, numbered, sheetTextFault, sortNames, tidyName } from './names.ts';
import { Problems } from './problems.ts';
import { KINDS, isRecordKind } from './records/index.ts';
import type { BookRecord } from './records/index.ts';
import {
  BOOK_FORMAT, FILE_VERSION, areaSchema, headSchema, kindSchema, lineSchema, nextSheetIdSchema, read, recordSchema,
  settingsSchema, sheetIdSchema, versionSchema,
} from './schema.ts';
import type { FileCell, FileWidth } from './schema.ts';
import { tidyRecord } from './set-record.ts';
import type { Area, Book, Filter, Frozen, Hidden, NamedArea, Settings, Sheet, SheetId } from './types.ts';

export interface SheetFile {
  readonly id: SheetId;
  readonly name: string;
  readonly about?: string;
  readonly widths: readonly FileWidth[];
  readonly cells: readonly FileCell[];
  /** Each of these only when it says something, as in the sheet itself. */
  readonly hidden?: Hidden;
  readonly frozen?: Frozen;
  readonly filter?: Filter;
}

export interface NameFile {
  readonly name: string;
  readonly kind: NamedArea['kind'];
  readonly area: readonly [sheet: SheetId, top: number, left: number, bottom: number, right: number] | null;
}

/** Rows and columns count from 0. */
export interface BookFile {
  readonly format: typeof BOOK_FORMAT;
  readonly version: typeof FILE_VERSION;
  readonly id: string;
  readonly title: string;
  readonly person: string;
  readonly settings: Settings;
  readonly nextSheetId: SheetId;
  readonly sheets: readonly SheetFile[];
  readonly names: readonly NameFile[];
  readonly records?: readonly BookRecord[];
}

export interface ReadBook {
  /** `null` when nothing of it can be used. Its id is empty when the file has none. */
  readonly book: Book | null;
  /** What was left out or changed, a sentence each, with where. */
  readonly problems: string[];
}

export function writeBook(book: Book): BookFile {
  const { id, title, person, settings, nextSheetId, sheets, names, records } = book;
  return {
    format: BOOK_FORMAT, version: FILE_VERSION, id, title, person, settings, nextSheetId,
    sheets: sheets.map((sheet) => ({
      id: sheet.id, name: sheet.name, ...(sheet.about && { about: sheet.about }),
      widths: widthsToFile(sheet), cells: cellsToFile(sheet),
      ...(sheet.hidden && { hidden: sheet.hidden }), ...(sheet.frozen && { frozen: sheet.frozen }), ...(sheet.filter && { filter: sheet.filter }),
    })),
    names: names.map(({ name, kind, area }) => ({
      name, kind, area: area && [area.sheet, area.top, area.left, area.bottom, area.right],
    })),
    ...(records && { records }),
  };
}

/**
 * The sentence that refuses a file of another kind or of a later version;
 * `null` when it can be read.
 */
export function refusal(json: unknown, format: string, upTo: number, what: string): string | null {
  const head = read(headSchema, json);
  if (head?.format !== format) return `This is not a ${what} of Tape & Tally.`;
  const version = read(versionSchema, head['version']);
  return version !== undefined && version > upTo
    ? `This ${what} was written by a later version of Tape & Tally (its format is ${version}, this one reads up to ${upTo}): open it there, or bring this one up to date.`
    : null;
}

function readLine(value: unknown, what: string, problems: Problems): string {
  const line = read(lineSchema, value);
  if (line === undefined) problems.add(`${what} could not be read.`);
  return line ?? '';
}

/** Ids as the file has them where they are good and not taken, new ones otherwise. */
function readIds(sheets: readonly Record<string, unknown>[]): readonly SheetId[] {
  const given = sheets.map((sheet) => read(sheetIdSchema, sheet['id']));
  const taken = new Set<SheetId>();
  const ids = given.map((id) => {
    if (id === undefined || taken.has(id)) return null;
    taken.add(id);
    return id;
  });
  let next = 1;
  return ids.map((id) => {
    if (id !== null) return id;
    while (taken.has(next)) next++;
    taken.add(next);
    return next;
  });
}

function readSheetName(value: unknown, at: number, taken: Set<string>, problems: Problems): string {
  const usual = `Sheet ${at + 1}`;
  const given = typeof value === 'string' ? tidyName(value) : '';
  const fault = sheetTextFault(given);
  const name = numbered(fault === null ? given : usual, (wish) => !taken.has(foldName(wish)));
  if (name !== value) problems.add(`The name of sheet ${at + 1} ${fault === null ? 'had to be changed' : 'could not be read'}: it is now called ${name}.`);
  taken.add(foldName(name));
  return name;
}

function readSheet(from: Record<string, unknown>, id: SheetId, name: string, problems: Problems, room: Room): Sheet {
  const where = `Sheet ${name}`;
  const about = from['about'] === undefined ? '' : readLine(from['about'], `${where}: the line about it`, problems);
  return {
    id, name,
    rows: rowsFromFile(from['cells'], where, problems, room),
    widths: widthsFromFile(from['widths'], where, problems),
    ...(about && { about }),
    ...showingFromFile(from, where, problems),
  };
}

function readSheets(value: unknown, problems: Problems): { sheets: readonly Sheet[]; known: Map<unknown, SheetId> } {
  const list: unknown[] = Array.isArray(value) ? value : [];
  if (list.length === 0) problems.add('The file has no sheets that could be read.');
  if (list.length > LIMITS.sheets) problems.add(`The file has ${counted(list.length)} sheets; the first ${LIMITS.sheets} were kept.`);
  const found: Record<string, unknown>[] = [];
  list.slice(0, LIMITS.sheets).forEach((entry, at) => {
    const record = read(recordSchema, entry);
    if (record) found.push(record);
    else problems.add(`Sheet ${at + 1} could not be read and was left out.`);
  });
  const ids = readIds(found);
  const taken = new Set<string>();
  const known = new Map<unknown, SheetId>();
  const room = fullRoom();
  const sheets = found.map((entry, at) => {
    const id = ids[at] ?? at + 1;
    if (!known.has(entry['id'])) known.set(entry['id'], id);
    return readSheet(entry, id, readSheetName(entry['name'], at, taken, problems), problems, room);
  });
  return { sheets: sheets.length > 0 ? sheets : [emptySheet(1, 'Sheet 1')], known };
}

function readArea(value: unknown, known: ReadonlyMap<unknown, SheetId>): Area | undefined {
  const given = read(areaSchema, value);
  if (!given) return undefined;
  const [id, top, left, bottom, right] = given;
  const sheet = known.get(id);
  return sheet === undefined ? undefined : { sheet, top, left, bottom, right };
}

function readNames(value: unknown, known: ReadonlyMap<unknown, SheetId>, problems: Problems): readonly NamedArea[] {
  if (!Array.isArray(value)) {
    problems.add('The names for cells could not be read.');
    return [];
  }
  const names = new Map<string, NamedArea>();
  value.forEach((entry: unknown, at) => {
    const record = read(recordSchema, entry);
    const name = typeof record?.['name'] === 'string' ? tidyName(record['name']) : '';
    const fault = nameTextFault(name);
    if (!record || fault !== null || names.has(foldName(name))) {
      problems.add(`Entry ${at + 1} of the names for cells was left out: ${fault ?? `the name ${name} is there twice.`}`);
      return;
    }
    const kind = read(kindSchema, record['kind']);
    if (!kind) problems.add(`The name ${name}: the file does not say whether it is a size chart; it was read as cells.`);
    const area = record['area'] === null ? null : readArea(record['area'], known);
    if (area === undefined) problems.add(`The name ${name}: the cells that it stands for could not be read.`);
    names.set(foldName(name), { name, area: area ?? null, kind: kind ?? 'cells' });
  });
  return sortNames([...names.values()]);
}

function readRecords(value: unknown, problems: Problems): readonly BookRecord[] {
  const list: unknown[] = Array.isArray(value) ? value : [];
  if (value !== undefined && !Array.isArray(value)) problems.add('What the workbook keeps besides its cells could not be read.');
  const records = new Map<string, BookRecord>();
  list.forEach((entry, at) => {
    const from = read(recordSchema, entry);
    const record = from ? tidyRecord(from['kind'], from['id'], from['data']) : null;
    const key = record ? `${record.kind} ${record.id}` : '';
    const called = isRecordKind(from?.['kind']) ? ` (${KINDS[from['kind']].called})` : '';
    if (!record || records.has(key)) problems.add(`Entry ${at + 1}${called} of what the workbook keeps besides its cells could not be read and was left out.`);
    else if (records.size < LIMITS.records) records.set(key, record);
  });
  if (records.size < list.length && list.length > LIMITS.records) problems.add(`Of what the workbook keeps besides its cells the first ${LIMITS.records} were kept.`);
  return [...records.values()];
}

/** Never throws, whatever it is given. Trusts nothing but what the schema lets through. */
export function readBook(json: unknown): ReadBook {
  const refused = refusal(json, BOOK_FORMAT, FILE_VERSION, 'workbook file');
  if (refused !== null) return { book: null, problems: [refused] };
  const problems = new Problems();
  const file = read(recordSchema, json) ?? {};
  if (read(versionSchema, file['version']) === undefined) problems.add('The file does not say which version wrote it; it was read as version 1.');

  const id = readLine(file['id'], "The workbook's number", problems);
  const title = readLine(file['title'], 'The title', problems);
  const person = readLine(file['person'], "The person's name", problems);
  const settings = read(settingsSchema, file['settings']);
  if (!settings) problems.add('How lengths are to show could not be read; each shows in the unit it was typed in.');
  const { sheets, known } = readSheets(file['sheets'], problems);
  const names = readNames(file['names'], known, problems);
  const records = readRecords(file['records'], problems);
  const least = Math.max(...sheets.map((sheet) => sheet.id)) + 1;
  const next = read(nextSheetIdSchema, file['nextSheetId']) ?? least;
  const book: Book = {
    id, title, person, settings: settings ?? { show: 'own', inchStep: 8 },
    sheets, names, nextSheetId: Math.max(next, least),
    ...(records.length > 0 && { records }),
  };
  return { book, problems: problems.list() };
}
