/** What the page and the layout worker say to each other, over comlink. */
import type { Aim, Cloth, Layout, Piece, Place } from './types.ts';

export interface LayRequest {
  readonly pieces: readonly Piece[];
  readonly cloth: Cloth;
  readonly aim: Aim;
  /** The same request with the same seed gives the same layouts in the same order. */
  readonly seed: number;
  /**
   * A layout of the same pieces to begin with: the answer is never longer than it. Pieces in it that
   * overlap, moved by hand, are taken apart first; those of a second list are laid between and behind it.
   */
  readonly start?: Layout;
  /** Places to weigh, in millions; without it the search stops by itself when more would not pay. */
  readonly most?: number;
}

/** A layout that passed the check, and what it lays. */
export interface LayNews {
  readonly layout: Layout;
  /** Of the cloth used, the part that the pieces cover, 0 to 1. */
  readonly density: number;
  /** Places weighed so far, in millions. */
  readonly weighed: number;
  /** What is laid, when the fold or the pieces are the search's own choice; else it is `placesOf` the request. */
  readonly places?: readonly Place[];
}

export type LayAnswer =
  /** Cannot be laid as asked: what is wrong and what to do. */
  | { readonly outcome: 'refused'; readonly sentences: readonly string[] }
  | LayResult;

/**
 * The search stopped by itself, or was cancelled; `found` is null when nothing
 * was found in time, or when the pieces are proven not to fit what is at hand.
 * A layout that is longer than what is at hand is the best that was found.
 */
export interface LayResult {
  readonly outcome: 'done' | 'cancelled';
  readonly found: LayNews | null;
  readonly places: readonly Place[];
  /** What there is to say of it: why not all fits, or what there was room for. */
  readonly sentence?: string;
  /** Asked for room for a second list: the pieces of it, by position in that list, for which there was none. */
  readonly without?: readonly number[];
}

/** The worker's face. One search at a time: a second `lay` cancels the first. */
export interface LayWorker {
  lay(request: LayRequest, better: (news: LayNews) => void): Promise<LayAnswer>;
  cancel(): void;
  /** A sign of life, given between two steps of a search. */
  alive(): true;
}
