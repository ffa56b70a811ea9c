/**
 * The same pieces on cloth folded, open, one-way, and of several widths and
 * prices: which requests to run, and what each answer comes to in the shop.
 */
import { lengthUsed } from './cloth.ts';
import { layFaults } from './faults.ts';
import type { LayAnswer, LayRequest } from './protocol.ts';
import type { Fold } from './types.ts';

/** Cloth that the shop has. */
export interface Offer {
  readonly width: number;
  /** For `per` of length, in any currency; null when it is not known. */
  readonly price: number | null;
}

export interface Comparing {
  readonly folds: readonly Fold[];
  /** Whether the cloth has an up and a down: false, true, or both to see what that costs. */
  readonly oneWay: readonly boolean[];
  readonly offers: readonly Offer[];
}

/** One row of the table before it is run. */
export interface Comparison {
  readonly fold: Fold;
  readonly oneWay: boolean;
  readonly offer: Offer;
  /** To be run for the least length. */
  readonly request: LayRequest;
  /** Why it cannot be laid so; empty when it can. */
  readonly refused: readonly string[];
}

/** What the shop cuts: up to whole steps of length, each `per` of it at the price. */
export interface Shop {
  readonly step: number;
  readonly per: number;
}

/** One row of the table after it is run. Lengths are of the cloth opened out. */
export interface Compared {
  readonly length: number;
  readonly toBuy: number;
  readonly cost: number | null;
}

/** Less than this of a step is what rounding adds to a layout, and no reason to buy another. */
const SLIGHT = 1e-4;

/** Every width with every fold and way, in this order; the length at hand does not count, because cloth is to be bought. */
export function comparisons(request: LayRequest, { folds, oneWay, offers }: Comparing): readonly Comparison[] {
  return offers.flatMap((offer) => folds.flatMap((fold) => oneWay.map((way) => {
    // A depth that was given, and a layout to begin with, are for the cloth they were made for.
    const { gap, alike, repeat, shrinkage } = request.cloth;
    const one: LayRequest = {
      pieces: request.pieces, aim: { want: 'least length' }, seed: request.seed, most: request.most,
      cloth: { width: offer.width, length: null, flaws: [], fold, oneWay: way, alike, gap, repeat, shrinkage },
    };
    return { fold, oneWay: way, offer, request: one, refused: layFaults(one.pieces, one.cloth) };
  })));
}

/** What it comes to; null when nothing was found. */
export function compared({ offer, request }: Comparison, answer: LayAnswer, { step, per }: Shop): Compared | null {
  if (answer.outcome === 'refused' || !answer.found) return null;
  const length = lengthUsed(answer.found.layout, request.cloth);
  const toBuy = Math.ceil(length / step - SLIGHT) * step;
  return { length, toBuy, cost: offer.price === null ? null : (toBuy / per) * offer.price };
}
