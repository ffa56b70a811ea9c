/** The list for the shop as plain data: `src/app` gathers it, the panel and the paper show it. */
import type { Area } from '../workbook/index.ts';
import type { PaperHead } from './paper-parts.ts';

export interface ShownFigure {
  readonly main: string;
  /** In the other system. */
  readonly also?: string;
}

export interface ShoppingNeed extends ShownFigure {
  /** What it is for. */
  readonly words: string;
  readonly area: Area;
}

export interface ShoppingItem {
  readonly id: string;
  /** What to ask for. */
  readonly what: string;
  readonly width: ShownFigure | null;
  /** How much; a cell without a result has its sentence here, and `fault`. */
  readonly buy: ShownFigure;
  /** Counted by: "reel, 100 m each". Empty for lengths. */
  readonly by: string;
  readonly fault: boolean;
  /** There is enough at home. */
  readonly enough: boolean;
  readonly needed: ShownFigure;
  /** `null` where there is none. */
  readonly home: ShownFigure | null;
  readonly needs: readonly ShoppingNeed[];
  /** Empty where there is no price yet. */
  readonly cost: string;
  readonly cautions: readonly string[];
  /** `changed`: bought when it was another figure, `was`. */
  readonly bought: { readonly state: 'no' | 'yes' } | { readonly state: 'changed'; readonly was: string };
  /** The cells that say how much, one for each sheet. */
  readonly cells: readonly { readonly area: Area; readonly place: string }[];
}

/** Needed, but nothing says how much to buy. */
export interface Unlisted extends ShoppingNeed {
  readonly what: string;
}

export interface ShoppingList {
  readonly items: readonly ShoppingItem[];
  readonly unlisted: readonly Unlisted[];
  readonly total: string;
  /** Things without a price yet, which the total does not hold. */
  readonly unpriced: number;
}

export interface Shopping extends PaperHead {
  readonly what: 'shopping';
  readonly list: ShoppingList;
}
