/** How much a row is cut by, from what works it out and what it is called. Pure. */
import type { TicketFigure } from '../panels/index.ts';

/** Tables of usual values, what is bought, and what is only compared are of no use at the cutting table. */
const NO_USE = /^(?:[A-Z]+\.USUAL$|SHOP\.|BUY\.|CUPBOARD\.|THREAD\.|CLOTH\.(?:COST|BUY|OTHER|REPEAT)|SHRINK\.|SPAN\.)/;
const PLACED = /^(?:BUTTON|BUTTONHOLE|PLEAT|CIRCLE|GORE|GODET|DART|BLEND|HEM|BAND|BIAS|INTERFACING|ELASTIC|KNIT|CAP|SLEEVE|SHOULDER|LENGTHEN|TIER|GATHER|SEAM)\b/;
const ASIDE = /^(?:check|room|spare|fewest|longest|whole|widths|can it|how far off|nearest|to buy)\b|\?$/i;

/** 0 to 9; rows that give sizes are above all of these. */
export function weightOf(label: string, figures: readonly TicketFigure[], calls: readonly string[], ofSeams: boolean): number {
  if (calls.some((name) => NO_USE.test(name))) return 0;
  if (ofSeams) return figures.some(({ main, head }) => head !== 'Alike' && head !== 'Allowance' && head !== 'Left in it' && !isNothing(main)) ? 9 : 4;
  if (ASIDE.test(label)) return 1;
  if (/\bcut(?:ting)?\b/i.test(label)) return 8;
  if (calls.some((name) => PLACED.test(name))) return 6;
  return calls.length > 0 ? 3 : 2;
}

/** "0.0 cm", "0 in": this seam stays as it is. */
const isNothing = (shown: string): boolean => /^0(?:[.,]0*)?(?:\s|$)/.test(shown);
