/**
 * Takes pieces that lie in each other apart, the cloth's length staying as it
 * is: guided local search. Each piece that overlaps is moved to where its
 * weighted overlap is least; pairs that stay in overlap then count for more,
 * the deeper the more, and the weights of the others fade.
 */
import type { Mover } from './move.ts';
import type { Kept, Table } from './table.ts';

export interface Patience {
  /** Sweeps without a new least overlap before the weights are taken back to the best found. */
  readonly sweeps: number;
  /** How often that may happen. */
  readonly strikes: number;
  /** Of the least and the deepest overlap, the factor by which the weight grows. */
  readonly growLeast: number;
  readonly growMost: number;
  readonly fade: number;
  /** Large pieces count for more: the exponent of two areas' product in a pair's own weight. */
  readonly area: number;
}

/** What came of it: the least overlap and the layout that had it. Pauses (yields) after every move. */
export interface Outcome {
  readonly overlap: number;
  readonly kept: Kept;
}

export function* separate(table: Table, mover: Mover, patience: Patience): Generator<void, Outcome> {
  const { count, weight, depth, touching } = table;
  const crowd = new Int32Array(count);
  const base = ownWeights(table, patience.area);
  weight.set(base);
  /** Pairs that weigh more than their own weight. */
  const heavy: number[] = [];
  // Any sweep betters an overlap that was not weighed yet; none is none.
  let overlap = table.measureAll() === 0 ? 0 : Infinity;
  let least = overlap;
  const kept = table.keep();
  for (let strike = 0; strike < patience.strikes && least > 0; strike++) {
    const before = least;
    if (strike > 0) {
      table.restore(kept);
      table.measureAll();
    }
    for (let idle = 0; idle < patience.sweeps;) {
      let n = 0;
      for (let p = 0; p < count; p++) if (touching[p]! > 0 && !table.isFixed(p)) crowd[n++] = p;
      mover.random.shuffle(crowd, n);
      for (let i = 0; i < n; i++) {
        if (touching[crowd[i]!] === 0) continue;
        if (mover.move(crowd[i]!)) table.measure(crowd[i]!);
        yield;
      }
      overlap = 0;
      let deepest = 0;
      for (let p = 0; p < count; p++) {
        if (touching[p] === 0) continue;
        for (let k = p * count, end = k + count; k < end; k++) {
          const loss = depth[k]! * base[k]!;
          overlap += loss;
          if (loss > deepest) deepest = loss;
        }
      }
      overlap /= 2;
      if (overlap < least) {
        if (overlap < least * 0.98) idle = 0;
        else idle++;
        least = overlap;
        table.keepIn(kept);
        if (overlap === 0) return { overlap, kept };
      } else {
        idle++;
      }
      let left = 0;
      for (const k of heavy) {
        if (depth[k]! === 0) weight[k] = Math.max(base[k]!, weight[k]! * patience.fade);
        if (weight[k]! > base[k]!) heavy[left++] = k;
      }
      heavy.length = left;
      for (let p = 0; p < count; p++) {
        if (touching[p] === 0) continue;
        for (let k = p * count, end = k + count; k < end; k++) {
          if (depth[k]! === 0) continue;
          if (weight[k] === base[k]) heavy.push(k);
          weight[k]! *= patience.growLeast + (patience.growMost - patience.growLeast) * ((depth[k]! * base[k]!) / deepest);
        }
      }
    }
    // A strike that gained a lot earns another.
    if (least < before * 0.98) strike = -1;
  }
  return { overlap: least, kept };
}

/** Of each pair, what its depth is multiplied by from the start: a large piece in a wrong place blocks more than a small one. */
function ownWeights(table: Table, exponent: number): Float64Array {
  const { count, shape, shapes: { area } } = table;
  let mean = 0;
  for (let p = 0; p < count; p++) mean += area[shape[p]!]! / count;
  const own = new Float64Array(count * count);
  for (let p = 0; p < count; p++) {
    for (let q = 0; q < count; q++) own[p * count + q] = ((area[shape[p]!]! * area[shape[q]!]!) / (mean * mean)) ** exponent;
  }
  return own;
}
