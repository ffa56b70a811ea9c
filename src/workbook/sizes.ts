/**
 * The order of sizes: XS before S before M, 00 before 0 before 2, and the
 * order of a size chart of the workbook for the labels that stand in it.
 *
 * Order of the letters: as in EN 13402-3 (CEN 2004), XXS to 3XL, and one X more for each
 * further size. That 00 is below 0 is common practice where 0 is a size.
 */
import { foldName } from '../formula/index.ts';
import { cellAt, sheetById } from './book.ts';
import type { Area, Book } from './types.ts';

const LETTERS = /^(?:(\d{1,2})x|(x*))([sml])$/i;
/** "3X" is 3XL where a chart has only plus sizes; common practice. */
const PLUS = /^(\d{1,2})x$/i;
const WORDS: Readonly<Record<string, number>> = {
  'extra small': -2, 'x-small': -2, small: -1, medium: 0, large: 1, 'extra large': 2, 'x-large': 2,
};

/** Where a letter size stands: M is 0, S −1, XS −2, L 1, XL 2 and so on; halves between for S/M. `null` for anything else. */
export function letterRank(text: string): number | null {
  const plain = text.trim().toLowerCase().replace(/\s*\([^)]*\)$/, '');
  if (plain === '' || plain.length > 24) return null;
  const ends = plain.split(/\s*[/–]\s*/);
  if (ends.length === 2) {
    const [low, high] = ends.map((end) => letterRank(end!));
    return low === null || high === null || low === undefined || high === undefined ? null : (low + high) / 2;
  }
  const word = WORDS[plain];
  if (word !== undefined) return word;
  const plus = PLUS.exec(plain);
  if (plus) return 1 + Number(plus[1]);
  const match = LETTERS.exec(plain);
  if (!match) return null;
  const [, number, many = '', letter] = match;
  const extra = number === undefined ? many.length : Number(number);
  if (letter === 'm') return extra === 0 ? 0 : null;
  return letter === 's' ? -1 - extra : 1 + extra;
}

/** The letter size of a whole rank, in the manner of one that is given: small letters, 2XL for XXL. */
export function letterSize(rank: number, like: string): string {
  if (rank === 0) return like === like.toLowerCase() ? 'm' : 'M';
  const extra = Math.abs(rank) - 1;
  const counted = extra > 2 || (extra === 2 && /\dx/i.test(like));
  const size = `${counted ? `${extra}X` : 'X'.repeat(extra)}${rank < 0 ? 'S' : 'L'}`;
  return like === like.toLowerCase() ? size.toLowerCase() : size;
}

/** Where a size that is a number stands: 0 is 0, 00 is −1, 000 −2. `null` for anything else. */
export function numberRank(text: string): number | null {
  const plain = text.trim();
  if (/^0{2,4}$/.test(plain)) return 1 - plain.length;
  return /^\d{1,4}(?:[.,]5)?$/.test(plain) ? Number(plain.replace(',', '.')) : null;
}

/** What a cell says when its text begins with the apostrophe that makes it text. */
export const plainText = (raw: string): string => raw.replace(/^'/, '').trim();

export const sizeKey = (text: string): string => foldName(plainText(text));

const looksLikeSize = (text: string): boolean =>
  letterRank(text) !== null || numberRank(text) !== null || (/\d/.test(text) && text.length <= 14 && !/\p{L}{5,}/u.test(text));

/** The sizes of every chart in the workbook, as texts in the chart's order: along the side, or the sides, where they stand. */
export function chartSizes(book: Book): readonly (readonly string[])[] {
  return book.names.flatMap(({ area, kind }) => (kind === 'chart' && area ? sidesOf(book, area) : []));
}

function sidesOf(book: Book, { sheet: id, top, left, bottom, right }: Area): string[][] {
  const sheet = sheetById(book, id);
  if (!sheet) return [];
  const label = (row: number, col: number): string => plainText(cellAt(sheet, row, col)?.raw ?? '');
  const across: string[] = [];
  const last = Math.min(right, (sheet.rows[top]?.length ?? 0) - 1);
  for (let col = left + 1; col <= last; col++) across.push(label(top, col));
  const down: string[] = [];
  for (let row = top + 1; row <= Math.min(bottom, sheet.rows.length - 1); row++) down.push(label(row, left));
  return [across, down]
    .map((side) => side.filter((text) => text !== ''))
    .filter((side) => side.length > 1 && side.filter(looksLikeSize).length * 2 > side.length);
}
