/** What was last chosen for paper, on this device, workbook by workbook. */
import { array, boolean, fallback, object, parse, picklist, string } from 'valibot';
import type { PrintChoice } from '../panels/index.ts';

const shape = object({
  what: fallback(picklist(['sheet', 'book', 'ticket', 'curve']), 'sheet'),
  paper: fallback(picklist(['A4', 'Letter']), 'A4'),
  across: fallback(boolean(), false),
  out: fallback(array(string()), []),
  pictures: fallback(array(string()), []),
  radius: fallback(string(), ''),
  label: fallback(string(), ''),
});

const keyOf = (book: string): string => `tape-and-tally paper ${book}`;

/** Letter where it is sold. */
const usualPaper = (): PrintChoice['paper'] => (/-(US|CA|MX|CL|CO|PH)$/.test(navigator.language) ? 'Letter' : 'A4');

export function keptChoice(book: string): PrintChoice {
  try {
    return parse(shape, JSON.parse(localStorage.getItem(keyOf(book)) ?? '') as unknown);
  } catch {
    // Nothing was kept, or nothing that can be read.
    return { what: 'sheet', paper: usualPaper(), across: false, out: [], pictures: [], radius: '', label: '' };
  }
}

export function keepChoice(book: string, choice: PrintChoice): void {
  try {
    localStorage.setItem(keyOf(book), JSON.stringify(choice));
  } catch {
    // A browser that keeps nothing asks again next time.
  }
}
