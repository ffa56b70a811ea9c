/** What was last chosen for paper, on this device, workbook by workbook. What goes on the ticket is kept with the workbook. */
import { boolean, fallback, object, parse, picklist, string } from 'valibot';
import type { PrintChoice } from '../panels/index.ts';

const shape = object({
  what: fallback(picklist(['sheet', 'book', 'ticket', 'list', 'curve']), 'sheet'),
  paper: fallback(picklist(['A4', 'Letter']), 'A4'),
  across: fallback(boolean(), false),
  radius: fallback(string(), ''),
  label: fallback(string(), ''),
});

const keyOf = (book: string): string => `tape-and-tally paper ${book}`;

/** Letter where it is sold. */
const usualPaper = (): PrintChoice['paper'] => (/-(US|CA|MX|CL|CO|PH)$/.test(navigator.language) ? 'Letter' : 'A4');

export type DeviceChoice = Omit<PrintChoice, 'out' | 'pictures'>;

export function keptChoice(book: string): DeviceChoice {
  try {
    return parse(shape, JSON.parse(localStorage.getItem(keyOf(book)) ?? '') as unknown);
  } catch {
    // Nothing was kept, or nothing that can be read.
    return { what: 'sheet', paper: usualPaper(), across: false, radius: '', label: '' };
  }
}

export function keepChoice(book: string, { what, paper, across, radius, label }: DeviceChoice): void {
  try {
    localStorage.setItem(keyOf(book), JSON.stringify({ what, paper, across, radius, label }));
  } catch {
    // A browser that keeps nothing asks again next time.
  }
}
