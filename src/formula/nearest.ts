/** The known word that a mistyped one is likeliest meant to be. */
import { distance } from 'fastest-levenshtein';

/** Without accents, capitals and signs: `Büste` and `BUSTE` are the same slip away from `bust`. */
const plain = (word: string): string => word.normalize('NFD').replace(/[\p{M}\s._]/gu, '').toLowerCase();

/** `undefined` when none is near: at most one slip for every three letters, counted as letters put in, left out or exchanged. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  const sought = plain(word);
  let found: string | undefined;
  let least = Math.ceil(sought.length / 3) + 1;
  for (const each of known) {
    const other = plain(each);
    if (Math.abs(other.length - sought.length) >= least) continue;
    const slips = distance(sought, other);
    if (slips < least) [found, least] = [each, slips];
  }
  return found;
}
