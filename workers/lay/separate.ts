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
  readonly add?: number;
  readonly area?: number;
}

/** What came of it: the least overlap and the layout that had it. Pauses (yields) after every move. */
export interface Outcome {
  readonly overlap: number;
  readonly kept: Kept;
}

export function* separate(table: Table, mover: Mover, patience: Patience): Generator<void, Outcome> {
  const { count, weight, depth } = table;
  const crowd = new Int32Array(count);
  const base = new Float64Array(weight.length).fill(1);
  if (patience.area) {
    const ar = table.shapes.area; let mean = 0;
    for (let p = 0; p < count; p++) mean += ar[table.shape[p]!]! / count;
    for (let p = 0; p < count; p++) for (let q = 0; q < count; q++) base[p * count + q] = (ar[table.shape[p]!]! * ar[table.shape[q]!]! / mean / mean) ** patience.area;
  }
  weight.set(base);
  let overlap = table.measureAll() && Infinity;
  let best: Outcome = { overlap, kept: table.keep() };
  for (let strike = 0; strike < patience.strikes && best.overlap > 0; strike++) {
    const before = best.overlap;
    if (strike > 0) {
      table.restore(best.kept);
      table.measureAll();
    }
    for (let idle = 0; idle < patience.sweeps;) {
      let n = 0;
      for (let p = 0; p < count; p++) if (!table.isFixed(p) && table.overlapOf(p) > 0) crowd[n++] = p;
      mover.random.shuffle(crowd, n);
      for (let i = 0; i < n; i++) {
        if (table.overlapOf(crowd[i]!) === 0) continue;
        if (mover.move(crowd[i]!)) table.measure(crowd[i]!);
        yield;
      }
      overlap = 0;
      let deepest = 0;
      for (let k = 0; k < depth.length; k++) {
        const loss = depth[k]! * base[k]!;
        overlap += loss;
        if (loss > deepest) deepest = loss;
      }
      overlap /= 2;
      if (overlap < best.overlap) {
        if (overlap < best.overlap * 0.98) idle = 0;
        else idle++;
        best = { overlap, kept: table.keep() };
        if (overlap === 0) return best;
      } else {
        idle++;
      }
      for (let k = 0; k < depth.length; k++) {
        if (depth[k]! > 0) { if (patience.add) weight[k]! += base[k]! * patience.add * depth[k]! * base[k]! / deepest; else weight[k]! *= patience.growLeast + (patience.growMost - patience.growLeast) * (depth[k]! * base[k]! / deepest);}
        else weight[k] = Math.max(base[k]!, weight[k]! * patience.fade);
      }
    }
    // A strike that gained a lot earns another.
    if (best.overlap < before * 0.98) strike = -1;
  }
  return best;
}
