/** What she chose for the cutting ticket. One a workbook. */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { followAll, formulas } from './parts.ts';

export interface Ticket {
  /** First cells of the rows that stay off it. */
  readonly leftOut: readonly string[];
  /** Cells whose pictures go on it. */
  readonly pictures: readonly string[];
}

export const ticketKind: RecordKindCard<Ticket> = {
  called: 'the choice for the cutting ticket',
  schema: v.object({ leftOut: formulas, pictures: formulas }),
  title: () => '',
  follow: (data, rewrite) => {
    const leftOut = followAll(data.leftOut, rewrite);
    const pictures = followAll(data.pictures, rewrite);
    return leftOut === data.leftOut && pictures === data.pictures ? data : { leftOut, pictures };
  },
};
