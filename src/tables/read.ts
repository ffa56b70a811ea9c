/** Text to rows of fields, by papaparse. Every field stays text: nothing in a file is ever worked out. */
import Papa from 'papaparse';
import type { Fault } from '../quantities/index.ts';
import { decode } from './decode.ts';
import type { ChartChoices, Decision, Encoding, Separator } from './reading.ts';

/** How much is taken from a file. A size chart has some hundred cells. */
export const LIMITS = {
  bytes: 20 * 1024 * 1024,
  cells: 200_000,
  /** As a sheet has them. */
  columns: 1_000,
  characters: 32_767,
} as const;

export interface Table {
  readonly rows: readonly (readonly string[])[];
  readonly encoding: Decision<Encoding> | null;
  readonly separator: Decision<Separator>;
  readonly remarks: readonly string[];
}

export const SEPARATORS: readonly Separator[] = ['\t', ';', ','];
export const SEPARATOR_WORDS: Readonly<Record<Separator, string>> = { ',': 'comma', ';': 'semicolon', '\t': 'tab' };

const counted = (n: number): string => n.toLocaleString('en-GB');

/** `quoteChar` that no text has, for files in which `"` stands for inches. */
const NO_QUOTES = '\uFFFF';

interface Parsed {
  readonly rows: string[][];
  readonly brokenQuote: number | null;
}

function parse(text: string, separator: Separator, quoteChar: string, preview = 0): Parsed | Fault {
  const rows: string[][] = [];
  let cells = 0;
  let brokenQuote: number | null = null;
  let fault: Fault | null = null;
  Papa.parse<string[]>(text, {
    delimiter: separator,
    newline: '\n',
    quoteChar,
    preview,
    step: ({ data, errors }, parser) => {
      if (brokenQuote === null && errors.some((error) => error.type === 'Quotes')) brokenQuote = rows.length;
      rows.push(data);
      cells += data.length;
      fault = tooMuch(data, rows.length, cells);
      if (fault) parser.abort();
    },
  });
  return fault ?? { rows, brokenQuote };
}

function tooMuch(row: readonly string[], count: number, cells: number): Fault | null {
  if (row.length > LIMITS.columns) {
    return { sentence: `Row ${counted(count)} has ${counted(row.length)} columns; a sheet has ${counted(LIMITS.columns)}. Choose another separator, or leave out what is not the chart.` };
  }
  if (cells > LIMITS.cells) {
    return { sentence: `This table has more than ${counted(LIMITS.cells)} cells, and a size chart has a few hundred. Leave out what is not the chart and try again.` };
  }
  const long = row.findIndex((field) => field.length > LIMITS.characters);
  if (long >= 0) {
    return { sentence: `The field in row ${counted(count)}, column ${counted(long + 1)} has ${counted(row[long]?.length ?? 0)} characters; a cell can hold ${counted(LIMITS.characters)}.` };
  }
  return null;
}

/** How many rows agree on being cut into the same number of fields, two or more. */
function agreement(text: string, separator: Separator): { readonly rows: number; readonly fields: number } {
  const parsed = parse(text, separator, '"', 200);
  if ('sentence' in parsed) return { rows: 0, fields: 0 };
  const count = new Map<number, number>();
  for (const row of parsed.rows) {
    if (row.length > 1 && row.some((field) => field.trim() !== '')) count.set(row.length, (count.get(row.length) ?? 0) + 1);
  }
  let best = { rows: 0, fields: 0 };
  for (const [fields, rows] of count) if (rows > best.rows || (rows === best.rows && fields > best.fields)) best = { rows, fields };
  return best;
}

/**
 * A tab or a semicolon hardly stands in a table by chance, a comma does
 * (`5,5`; "Bust, fullest"): so the first of tab, semicolon, comma that cuts
 * most rows alike is taken.
 */
function chooseSeparator(text: string): Decision<Separator> {
  const agreed = SEPARATORS.map((separator) => ({ separator, ...agreement(text, separator) }));
  const most = Math.max(...agreed.map(({ rows }) => rows));
  if (most === 0) return { value: ',', why: 'no row has a separator that was found', by: 'guess' };
  const best = agreed.find(({ rows }) => rows >= most * 0.75)!;
  const rivals = agreed.filter(({ separator, rows }) => separator !== best.separator && rows >= most * 0.75);
  const why = `it cuts ${counted(best.rows)} ${best.rows === 1 ? 'row' : 'rows'} into ${counted(best.fields)} fields each`;
  return { value: best.separator, why, by: rivals.length > 0 && best.separator === ',' ? 'guess' : 'file' };
}

/** Why a file of so many bytes is not read; `null` when it is. */
export function sizeFault(bytes: number): Fault | null {
  if (bytes <= LIMITS.bytes) return null;
  return { sentence: `This file has ${counted(Math.ceil(bytes / 1024 / 1024))} MB; at most ${LIMITS.bytes / 1024 / 1024} MB can be read. A size chart has a few kilobytes: leave out what is not the chart.` };
}

/** Rows of the text; a sentence when it is empty or too big. Fields keep their text, less the spaces around it. */
export function readRows(input: Uint8Array | string, choices: ChartChoices = {}): Table | Fault {
  const tooBig = sizeFault(input.length);
  if (tooBig) return tooBig;
  const decoded = typeof input === 'string' ? null : decode(input, choices.encoding);
  const text = (decoded?.text ?? (input as string)).replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n').replace(/\n+$/, '');
  if (text.trim() === '') return { sentence: 'There is nothing in this file: choose one with a size chart in it.' };

  const separator: Decision<Separator> = choices.separator
    ? { value: choices.separator, why: 'you chose it', by: 'you' }
    : chooseSeparator(text);
  const remarks: string[] = [];
  let parsed = parse(text, separator.value, '"');
  if (!('sentence' in parsed) && parsed.brokenQuote !== null) {
    remarks.push(`A quotation mark opens in row ${counted(parsed.brokenQuote + 1)} and is not closed as CSV has it, so quotation marks are read as they stand.`);
    parsed = parse(text, separator.value, NO_QUOTES);
  }
  if ('sentence' in parsed) return parsed;
  const rows = parsed.rows.map((row) => row.map((field) => field.trim()));
  while (rows.length > 0 && rows.at(-1)!.every((field) => field === '')) rows.pop();
  return { rows, encoding: decoded?.encoding ?? null, separator, remarks };
}
