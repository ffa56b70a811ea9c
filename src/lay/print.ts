/** By which it is known whether a layout is older than the pieces it was made from. */
import type { Piece } from './types.ts';

/** Lengths nearer than this, in mm, cut the same piece. */
const SAME = 0.01;

/** The same for pieces of the same names, outlines, counts, turns and marks, in whatever order they stand. */
export function piecesPrint(pieces: readonly Piece[]): string {
  return hashed(pieces.filter(({ count }) => count > 0).map(one).sort().join('\n'));
}

function one({ name, outline, cut, count, turns, matches = [] }: Piece): string {
  const at = ([along, across]: readonly [number, number]): string => `${whole(along)} ${whole(across)}`;
  return JSON.stringify([name, cut, count, turns, outline.map(at), matches.map((match) => `${match.mark} ${at(match.at)}`)]);
}

// Adding 0 makes −0 and 0 one.
const whole = (length: number): number => Math.round(length / SAME) + 0;

/** FNV-1a of 32 bits, from both ends of the text: 16 hexadecimal digits. It tells changes, not intent. */
function hashed(text: string): string {
  let there = 0x811c9dc5, back = 0x811c9dc5;
  for (let i = 0, j = text.length - 1; i < text.length; i++, j--) {
    there = Math.imul(there ^ text.charCodeAt(i), 0x01000193);
    back = Math.imul(back ^ text.charCodeAt(j), 0x01000193);
  }
  return [there, back].map((half) => (half >>> 0).toString(16).padStart(8, '0')).join('');
}
