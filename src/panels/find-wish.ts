/** What is sought in the panel for finding; here by itself, because the app holds it before the panel has come. */
import type { FindQuery } from '../workbook/index.ts';

/** What of the query is asked for here; which sheet is open the app knows. */
export interface FindWish extends Omit<FindQuery, 'sheet'> {
  readonly onlySheet: boolean;
}

export const NO_WISH: FindWish = { text: '', places: { value: true, formula: true, note: true, result: false }, whole: false, matchCase: false, onlySheet: false };
