/**
 * What goes on the cutting ticket: what she chose, kept with the workbook; until
 * then the rows that are cut by, as many as one page holds. Pure.
 */
import type { TicketPart, TicketRow } from '../panels/index.ts';
import { cellPointedAt, recordCalled, type Book, type Ticket as TicketRecord } from '../workbook/index.ts';
import { formulaOf } from './ticks.ts';

export const TICKET = 'ticket';

/** Keys of rows: those left out, and those whose picture is wanted. */
export interface TicketKeys {
  readonly out: readonly string[];
  readonly pictures: readonly string[];
}

export const rowKey = (sheet: number, row: number): string => `${sheet} ${row}`;

/** `caution`: the sentences of the row's whole sheet, which come on the paper with the first of its rows. */
export type CautionsOf = (sheet: number) => readonly string[];

export function ticketKeys(book: Book, parts: readonly TicketPart[], cautions: CautionsOf): TicketKeys {
  const record = recordCalled(book, 'ticket', TICKET);
  if (!record) return { out: onePage(parts, cautions), pictures: [] };
  const keys = (formulas: readonly string[]): string[] => formulas.flatMap((formula) => {
    const cell = cellPointedAt(book, formula);
    return cell ? [rowKey(cell.sheet, cell.row)] : [];
  });
  return { out: keys(record.leftOut), pictures: keys(record.pictures) };
}

/** The choice as the workbook keeps it. */
export function ticketRecord(book: Book, parts: readonly TicketPart[], { out, pictures }: TicketKeys): TicketRecord {
  const rows = parts.flatMap((part) => part.rows);
  const those = (keys: readonly string[], at: (row: TicketRow) => TicketRow['pictured']): string[] =>
    rows.filter(({ key }) => keys.includes(key)).flatMap((row) => {
      const cell = at(row);
      return cell ? [formulaOf(book, cell)] : [];
    });
  return { leftOut: those(out, (row) => row.figures[0]?.cell ?? null), pictures: those(pictures, (row) => row.pictured) };
}

/** Millimetres of the lower of the two papers, and letters to a line, as `paper-styles.ts` sets them; a little less, so that no estimate is short. */
const PAGE = { height: 255, head: 14, foot: 22, heading: 7, line: 3.4, row: 1, caution: 106, label: 23, figures: 25, many: 50 } as const;

/** Sizes, and seams that change, are on it however long it gets. */
const ALWAYS = 9;

/** Keys of the rows for which one page has no room. Rows of one sheet that weigh the same stay together: half of the button places would be worse than none. */
function onePage(parts: readonly TicketPart[], cautions: CautionsOf): readonly string[] {
  const groups = new Map<string, { readonly weight: number; readonly part: string; readonly rows: TicketRow[] }>();
  for (const { name, rows } of parts) {
    for (const row of rows) {
      const group = `${row.weight} ${name} ${row.sheet}`;
      if (!groups.has(group)) groups.set(group, { weight: row.weight, part: name, rows: [] });
      groups.get(group)!.rows.push(row);
    }
  }
  const [headed, warned] = [new Set<string>(), new Set<number>()];
  // Two columns of rows under what reaches over the page.
  let room = 2 * (PAGE.height - PAGE.head - PAGE.foot);
  const out: string[] = [];
  for (const { weight, part, rows } of [...groups.values()].sort((a, b) => b.weight - a.weight)) {
    const { sheet } = rows[0]!;
    const heading = headed.has(part) ? 0 : PAGE.heading;
    const warnings = warned.has(sheet) ? 0 : 2 * cautions(sheet).reduce((sum, text) => sum + lines(text.length, PAGE.caution) * PAGE.line, 0);
    const needs = heading + warnings + rows.reduce((sum, row) => sum + heightOf(row), 0);
    if (weight === 0 || (weight < ALWAYS && needs > room)) {
      out.push(...rows.map(({ key }) => key));
      continue;
    }
    room -= needs;
    headed.add(part);
    warned.add(sheet);
  }
  return out;
}

const lines = (letters: number, most: number): number => Math.max(1, Math.ceil(letters / most));

function heightOf({ label, from, figures }: TicketRow): number {
  const letters = figures.map(({ head, main, also }) => head.length + main.length + (also ? also.length + 2 : 0) + 3);
  const own = label.length + from.length;
  const count = figures.length > 2
    ? lines(own, PAGE.many) + 1.15 * wrapped(letters, PAGE.many)
    : Math.max(lines(own, PAGE.label), wrapped(letters, PAGE.figures));
  return count * PAGE.line + PAGE.row;
}

/** Lines of figures side by side, none of them broken. */
function wrapped(letters: readonly number[], most: number): number {
  let [count, used] = [1, 0];
  for (const each of letters) {
    if (used > 0 && used + each > most) {
      count += 1;
      used = 0;
    }
    used += each;
  }
  return count;
}
