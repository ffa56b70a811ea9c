/** A result as the words and figures on the screen. Showing never changes a value. */
import { inBase, show, showSpan, type ShowAs } from '../quantities/index.ts';
import type { Result } from '../reckoning/index.ts';

export interface ShownResult {
  readonly main: string;
  /** The same in the other system, when both are wanted. */
  readonly also?: string;
  /** False when rounding for show hid something. */
  readonly exact: boolean;
}

export function shownResult(result: Result, as: ShowAs): ShownResult {
  switch (result.kind) {
    case 'quantity':
      return show(inBase(result.value, result.unit), as);
    case 'span':
      return showSpan({ low: inBase(result.low, result.unit), high: inBase(result.high, result.unit) }, as);
    case 'text':
      return { main: result.text, exact: true };
    case 'truth':
      return { main: result.truth ? 'yes' : 'no', exact: true };
    case 'error':
      return { main: result.sentence, exact: true };
    case 'empty':
      return { main: '', exact: true };
  }
}
