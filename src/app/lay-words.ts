/** What is said of a layout and of the search for it, in whole sentences. */
import { clothLength, type Aim } from '../lay/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import { leftOf, usedOf, type Found } from './lay-found.ts';
import type { LaySearch } from './lay-search.ts';
import { lengthInWords, lengthUp, percent } from './lay-view.ts';

export interface Asking {
  /** For a metre. */
  readonly price: number | null;
  /** In which the shop cuts, mm. */
  readonly step: number;
  readonly aim: Aim['want'];
  /** Pieces of the second list for which there was no room. */
  readonly without: readonly string[];
}

/** Less of a step than this is rounding. */
const SLIGHT = 1e-4;

export function remarksOn(found: Found, { price, step, aim, without }: Asking, as: ShowAs): string[] {
  const remarks: string[] = [];
  const used = usedOf(found), atHand = clothLength(found.cloth);
  if (aim === 'fits' || aim === 'room for') remarks.push(...fitWords(found, atHand, aim, without, as));
  const left = leftOf(found);
  if (atHand !== null) remarks.push(left ? `Left in one piece: ${lengthInWords(left.length, as)} along the cloth and ${lengthInWords(left.width, as)} across it.` : 'No whole rectangle is left behind the pieces.');
  remarks.push(`The pieces cover ${percent(found.density, as)} of it.`);
  if (found.cloth.length === null) {
    const toBuy = Math.ceil(used / step - SLIGHT) * step;
    if (price !== null) remarks.push(`In the shop it is ${lengthInWords(toBuy, as)}, for ${((toBuy / 1000) * price).toFixed(2)}.`);
    else if (toBuy - used > 1) remarks.push(`In the shop it is ${lengthInWords(toBuy, as)}.`);
  }
  return remarks;
}

function fitWords(found: Found, atHand: number | null, aim: Aim['want'], without: readonly string[], as: ShowAs): string[] {
  if (atHand === null) return [];
  if (found.layout.length > atHand * (1 + 1e-9)) return [`It does not fit in the length at hand: the best that was found needs ${lengthUp(found.layout.length - atHand, as)} more.`];
  if (aim === 'fits') return ['It fits in the length at hand.'];
  if (without.length === 0) return ['Both lists fit in the length at hand.'];
  return [`There is no room for ${listed(without)} of the second list.`];
}

const listed = (names: readonly string[]): string => names.map((name) => `“${name}”`).reduce((list, name, i) => (i === 0 ? name : `${list}${i === names.length - 1 ? ' and' : ','} ${name}`), '');

export function standingOf({ standing, found, asked }: Pick<LaySearch, 'standing' | 'found' | 'asked'>, milliseconds: number, as: ShowAs): string {
  const seconds = Math.max(0, Math.round(milliseconds / 1000));
  const tries = triesInWords(found?.weighed ?? 0, as);
  switch (standing) {
    case 'looking': return found ? `Found in ${tries} tries; still looking, ${seconds} s.` : `Looking, ${seconds} s.`;
    case 'done':
      if (!found) return 'Nothing was found.';
      return asked?.most === undefined ? `Found in ${tries} tries. It stopped because more would hardly pay.` : `Found in ${tries} tries, looking briefly.`;
    case 'stopped': return found ? `Stopped. Found in ${tries} tries.` : 'Stopped before anything was found.';
    case 'refused': case 'dead': case 'idle': return '';
  }
}

/** A sentence of the lay, which counts in mm, in the units that she sees. */
export const inHerUnits = (sentence: string, as: ShowAs): string => sentence.replace(/(\d+(?:\.\d+)?) mm\b/g, (_, mm: string) => lengthInWords(Number(mm), as));

function triesInWords(millions: number, { decimalMark }: ShowAs): string {
  if (millions < 1) return Math.round(millions * 1e6).toLocaleString('en-GB').replaceAll(',', decimalMark === ',' ? '.' : ',');
  const text = millions.toFixed(1);
  return `${decimalMark === ',' ? text.replace('.', ',') : text} million`;
}
