/** What is done at the cutting table, step by step, as plain data. */
import type { TicketFigure } from './paper-parts.ts';

export interface TableStep {
  /** The same for as long as its cell stays. */
  readonly id: string;
  /** A sheet, or what its steps have in common. */
  readonly part: string;
  readonly title: string;
  /** The sheet, where the part does not say so. */
  readonly from: string;
  readonly figures: readonly Pick<TicketFigure, 'head' | 'main' | 'also' | 'kind'>[];
  /** What the sheet says beside the figures. */
  readonly remark: string;
  /** What to look at before it is done. */
  readonly cautions: readonly string[];
  /** Sentences without figures. */
  readonly words: readonly string[];
  /** What the tick says; `null` for what is only read. */
  readonly tick: 'Cut' | 'Done' | null;
  /** `changed`: ticked when its figures were others, `was`. */
  readonly state: { readonly state: 'no' | 'yes' } | { readonly state: 'changed'; readonly was: string };
}

/** Whether the screen is kept on: `cannot` where the browser has no way to, `refused` where it does not want to just now. */
export type Awake = 'on' | 'cannot' | 'refused';
