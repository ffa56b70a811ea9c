/**
 * The workbook's file as text: JSON with a cell a line and a checksum near the
 * top, so that damage is noticed and costs no more than the line it is in.
 * Described by `workbook.schema.json`.
 */
import { crc32 } from './checksum.ts';
import { readBook, writeBook } from './file.ts';
import type { BookFile, ReadBook, SheetFile } from './file.ts';
import { counted } from './limits.ts';
import { salvage } from './salvage.ts';
import { BOOK_FORMAT, TEMPLATE_FORMAT, headSchema, read, recordSchema } from './schema.ts';
import type { Book } from './types.ts';

/** A workbook file larger than this, in bytes, is not opened: a page could not hold it. */
export const MOST_FILE_BYTES = 100_000_000;

export function bookText(book: Book): string {
  const { format, version, sheets, names, records, ...head } = writeBook(book);
  const line = (key: string, value: unknown) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`;
  const file: BookFile = { format, version, ...head, sheets, names, ...(records && { records }) };
  return `{\n${[
    line('format', format), line('version', version), line('checksum', crc32(JSON.stringify(file))),
    ...Object.entries(head).map(([key, value]) => line(key, value)),
    `"sheets": ${list(sheets.map(sheetText))}`,
    `"names": ${list(names.map((name) => JSON.stringify(name)))}`,
    ...(records ? [`"records": ${list(records.map((record) => JSON.stringify(record)))}`] : []),
  ].join(',\n')}\n}\n`;
}

function sheetText({ cells, widths, ...head }: SheetFile): string {
  const first = Object.entries({ ...head, widths }).filter(([key]) => key !== 'hidden' && key !== 'frozen' && key !== 'filter');
  const { hidden, frozen, filter } = head;
  const last = Object.entries({ hidden, frozen, filter }).filter(([, value]) => value !== undefined);
  const part = ([key, value]: readonly [string, unknown]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`;
  return `{${first.map(part).join(', ')}, "cells": ${list(cells.map((cell) => JSON.stringify(cell)))}${last.map((entry) => `, ${part(entry)}`).join('')}}`;
}

const list = (items: readonly string[]): string => items.length === 0 ? '[]' : `[\n${items.join(',\n')}\n]`;

/** Never throws, whatever it is given; what could not be read is listed. */
export function readBookText(given: string): ReadBook {
  const text = given.replace(/^\uFEFF/, '');
  if (text.trim() === '') return refusedWith('The file is empty.');
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return readDamaged(text);
  }
  const format = read(headSchema, json)?.format;
  if (format === TEMPLATE_FORMAT) return refusedWith('This is a template of Tape & Tally: open it with “Start a sheet from a template…”.');
  const { book, problems } = readBook(json);
  return { book, problems: book && !fits(json as Record<string, unknown>) ? [CHANGED, ...problems] : problems };
}

const CHANGED = 'The file is not as it was saved: it was changed or damaged since (its checksum does not fit). Compare the figures with your notes before you cut.';

const refusedWith = (sentence: string): ReadBook => ({ book: null, problems: [sentence] });

/** The checksum is of the file without it and without the spaces; a file that has none was made by hand or kept on the device. */
function fits({ checksum, ...file }: Record<string, unknown>): boolean {
  return checksum === undefined || checksum === crc32(JSON.stringify(file));
}

function readDamaged(text: string): ReadBook {
  const found = text.trimStart().startsWith('{') ? salvage(text) : null;
  const json = found && headed(found.json);
  if (!found || read(headSchema, json)?.format !== BOOK_FORMAT) {
    return refusedWith('This is not a workbook file of Tape & Tally. A table saved as text (CSV) can be brought in with “Size chart from a CSV file…”.');
  }
  const { book, problems } = readBook(json);
  const said = found.lines.length === 0 ? [] : [found.lines.length === 1
    ? `Line ${counted(found.lines[0]!)} of the file is damaged and was left out.`
    : `${counted(found.lines.length)} lines of the file are damaged and were left out: ${found.lines.slice(0, 20).map(counted).join('; ')}${found.lines.length > 20 ? ' and more' : ''}.`];
  if (found.cut) said.push(`The file is cut off or damaged so that its end cannot be read. ${lastOf(book)}`);
  return { book, problems: [...said, ...problems] };
}

/** The line that says what it is may be the damaged one. */
function headed(json: unknown): unknown {
  const file = read(recordSchema, json);
  return file && !('format' in file) && Array.isArray(file['sheets']) && Array.isArray(file['names']) ? { ...file, format: BOOK_FORMAT } : json;
}

/** Where to look what is missing. */
function lastOf(book: Book | null): string {
  const sheet = book?.sheets.at(-1);
  const row = sheet?.rows.length ?? 0;
  return sheet && row > 0 ? `The last that was read is row ${counted(row)} of ${sheet.name}.` : 'None of its cells could be read.';
}
