/**
 * Outlines as the search holds them: flat rings of whole numbers
 * [x0, y0, x1, y1, …], anticlockwise. Whole numbers, because the union of
 * Minkowski sums is only sure on a grid.
 */
export type Ring = readonly number[];

export function ringArea(ring: Ring): number {
  let sum = 0;
  const n = ring.length;
  for (let i = 0; i < n; i += 2) {
    const j = (i + 2) % n;
    sum += ring[i]! * ring[j + 1]! - ring[j]! * ring[i + 1]!;
  }
  return sum / 2;
}

export function anticlockwise(ring: Ring): Ring {
  if (ringArea(ring) >= 0) return ring;
  const back: number[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) back.push(ring[i]!, ring[i + 1]!);
  return back;
}

/** Without repeated points and points on a straight line between their neighbours. */
export function tidy(ring: Ring): Ring {
  let points = ring.slice();
  for (let changed = true; changed && points.length > 6;) {
    changed = false;
    const kept: number[] = [];
    const n = points.length;
    for (let i = 0; i < n; i += 2) {
      const x = points[i]!;
      const y = points[i + 1]!;
      const m = kept.length;
      const px = m ? kept[m - 2]! : points[n - 2]!;
      const py = m ? kept[m - 1]! : points[n - 1]!;
      const nx = points[(i + 2) % n]!;
      const ny = points[(i + 3) % n]!;
      const straight = (x - px) * (ny - y) - (y - py) * (nx - x) === 0;
      if ((x === px && y === py) || straight) {
        changed = true;
        continue;
      }
      kept.push(x, y);
    }
    if (kept.length < 6) break;
    points = kept;
  }
  return points;
}

/** True when two edges that are not neighbours touch or cross. */
export function crossesItself(ring: Ring): boolean {
  const n = ring.length / 2;
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      if (edgesMeet(ring, i, j, n)) return true;
    }
  }
  return false;
}

function edgesMeet(ring: Ring, i: number, j: number, n: number): boolean {
  const ax = ring[2 * i]!, ay = ring[2 * i + 1]!;
  const i2 = (i + 1) % n, j2 = (j + 1) % n;
  const bx = ring[2 * i2]!, by = ring[2 * i2 + 1]!;
  const cx = ring[2 * j]!, cy = ring[2 * j + 1]!;
  const dx = ring[2 * j2]!, dy = ring[2 * j2 + 1]!;
  if (Math.max(ax, bx) < Math.min(cx, dx) || Math.max(cx, dx) < Math.min(ax, bx)) return false;
  if (Math.max(ay, by) < Math.min(cy, dy) || Math.max(cy, dy) < Math.min(ay, by)) return false;
  const s1 = Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
  const s2 = Math.sign((bx - ax) * (dy - ay) - (by - ay) * (dx - ax));
  const s3 = Math.sign((dx - cx) * (ay - cy) - (dy - cy) * (ax - cx));
  const s4 = Math.sign((dx - cx) * (by - cy) - (dy - cy) * (bx - cx));
  return s1 * s2 <= 0 && s3 * s4 <= 0;
}
