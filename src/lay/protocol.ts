/** What the page and the layout worker say to each other, over comlink. */
import type { Aim, Cloth, Layout, Piece, Place } from './types.ts';

export interface LayRequest {
  readonly pieces: readonly Piece[];
  readonly cloth: Cloth;
  readonly aim: Aim;
  /** The same request with the same seed gives the same layouts in the same order. */
  readonly seed: number;
  /** A layout of the same pieces to begin with: the answer is never longer than it. */
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
  /** The search stopped by itself; `found` is null only when the pieces do not fit what is at hand. */
  | { readonly outcome: 'done' | 'cancelled'; readonly found: LayNews | null; readonly places: readonly Place[]; readonly sentence?: string };

/** The worker's face. One search at a time: a second `lay` cancels the first. */
export interface LayWorker {
  lay(request: LayRequest, better: (news: LayNews) => void): Promise<LayAnswer>;
  cancel(): void;
}
