/** How a quantity is named in a sentence. */
import { exactText } from './exact.ts';
import type { Quantity } from './quantity.ts';
import { showText } from './show.ts';

/** Exactly where that is short, otherwise as it shows to the finest step. */
export function say(q: Quantity): string {
  const exact = exactText(q);
  return exact.length <= 14 ? exact.replace('-', '−') : showText(q, { system: 'own', inchStep: 32 });
}
