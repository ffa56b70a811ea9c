/** The whole search: goes over the range, closes in on what it met, and chooses. */
import { closeIn } from './bracket.ts';
import { edge } from './edges.ts';
import { Steps } from './steps.ts';
import { Known } from './known.ts';
import { turn } from './lowest.ts';
import type { Point, Problem, Solution, Trying } from './types.ts';

/** Inputs spread evenly over the range, from which crossings and turning points are seen. */
const SPREAD = 240;
/** Of each kind of place that is closed in on, so many at most, so that a search ends soon whatever the function. */
const MOST_EDGES = 24;
const MOST_CROSSINGS = 32;
const MOST_TURNS = 16;
/** What counts as being what is wanted, as a part of it. */
const RELATIVE = 1e-9;
/** The same beside the results on both sides of a crossing: what rounding leaves of a sum that comes to nothing. */
const BESIDE = 1e-11;
/** The same where the result only touches. */
const TOUCHING = 1e-12;

/** An input that was tried, and its result if it has one. */
interface Tried {
  readonly x: number;
  readonly y: number | null;
}

export function* solve(problem: Problem): Trying<Solution> {
  const search = new Search(problem);
  return yield* search.all();
}

class Search {
  readonly #known = new Known();
  readonly #steps: Steps | null;

  constructor(private readonly problem: Problem) {
    this.#steps = problem.step === null ? null : new Steps(problem, this.#known);
  }

  *all(): Trying<Solution> {
    const { problem } = this;
    if (!(problem.low <= problem.high)) return this.#solution(null);
    yield* this.#goOver();
    if (!problem.whole) yield* this.#toEdges();
    let exact = problem.whole ? null : yield* this.#nearestExact();
    if (!exact && !problem.whole) {
      yield* this.#toTurns();
      exact = yield* this.#nearestExact();
    }
    yield* this.#steps?.refine() ?? none();
    return this.#solution(exact);
  }

  *#goOver(): Trying<void> {
    const { low, high, now, whole } = this.problem;
    const at: number[] = [...this.#steps?.spread() ?? []];
    if (!whole) {
      for (let n = 0; n <= SPREAD; n++) at.push(n === SPREAD ? high : low + ((high - low) * n) / SPREAD);
      if (now >= low && now <= high) at.push(now);
    }
    for (const x of at) yield* this.#known.at(x);
  }

  /** Where results begin and end, since the answer may lie just before. */
  *#toEdges(): Trying<void> {
    const { all } = this.#known;
    let count = 0;
    for (let i = 1; i < all.length && count < MOST_EDGES; i++) {
      const [before, after] = [all[i - 1]!, all[i]!];
      if ((before.y === null) === (after.y === null)) continue;
      count++;
      const [inside, outside] = before.y === null ? [after.x, before.x] : [before.x, after.x];
      yield* edge(this.#known, inside, outside, (y) => y !== null);
    }
  }

  /** Where results come near to what is wanted and turn round, the nearest first. */
  *#toTurns(): Trying<void> {
    const { wanted } = this.problem;
    const { all } = this.#known;
    const turns = all.flatMap(({ y }, i) => {
      const [before, after] = [all[i - 1], all[i + 1]];
      if (y === null) return [];
      const side = Math.sign(y - wanted);
      const away = (other: Tried | undefined): number => (other === undefined || other.y === null ? Infinity : (other.y - wanted) * side);
      const here = (y - wanted) * side;
      // At an end of the range it may turn round before the next.
      const turns = side !== 0 && here <= away(before) && here <= away(after) && (here < away(before) || here < away(after));
      return turns ? [{ low: before?.x ?? all[i]!.x, high: after?.x ?? all[i]!.x, here, side }] : [];
    });
    turns.sort((a, b) => a.here - b.here);
    for (const { low, high, side } of turns.slice(0, MOST_TURNS)) yield* turn(this.#known, wanted, low, high, side, (x) => x);
  }

  /** The exact answer nearest to where the input is now. */
  *#nearestExact(): Trying<Point | null> {
    const { wanted, now } = this.problem;
    const { all } = this.#known;
    type Place = { readonly from: Point; readonly to: Point; readonly far: number; readonly beside: number };
    const largest = (from: number, to: number): number => Math.max(0, ...all.slice(Math.max(0, from), to).map((each) => (each.y === null ? 0 : Math.abs(each.y - wanted))));
    const places: Place[] = all.flatMap(({ x, y }, i) => {
      if (y === null) return [];
      const here = { x, y };
      if (this.#touches(all, i)) return [{ from: here, to: here, far: Math.abs(x - now), beside: 0 }];
      const next = all[i + 1];
      if (!next || next.y === null || (y - wanted) * (next.y - wanted) >= 0 || this.#touches(all, i + 1)) return [];
      return [{ from: here, to: { x: next.x, y: next.y }, far: now < x ? x - now : now > next.x ? now - next.x : 0,
        beside: Math.min(largest(i - 2, i + 1), largest(i + 1, i + 4)) }];
    });
    places.sort((a, b) => a.far - b.far);
    let found: Point | null = null;
    for (const { from, to, far, beside } of places.slice(0, MOST_CROSSINGS)) {
      if (found && Math.abs(found.x - now) <= far) break;
      const exact = from === to ? yield* this.#towardsNow(from, all) : yield* this.#cross(from, to, beside, 3);
      if (exact && (!found || Math.abs(exact.x - now) < Math.abs(found.x - now))) found = exact;
    }
    return found;
  }

  /**
   * Closes in between two sides; round a place without a result on either side of it.
   * @param beside how far results to both sides of it are from what is wanted
   */
  *#cross(from: Point, to: Point, beside: number, deep: number): Trying<Point | null> {
    const { wanted } = this.problem;
    const closed = yield* closeIn(this.#known, wanted, from, to);
    if ('hole' in closed) {
      if (deep === 0) return null;
      for (const [inside, outside] of [[from, closed.hole], [to, closed.hole]] as const) {
        const x = yield* edge(this.#known, inside.x, outside, (y) => y !== null);
        const y = (yield* this.#known.at(x))!;
        if ((y - wanted) * (inside.y - wanted) > 0 || x === inside.x) continue;
        const exact = y === wanted ? { x, y } : yield* this.#cross(inside, { x, y }, beside, deep - 1);
        if (exact) return exact;
      }
      return null;
    }
    const { ends } = closed;
    const tolerance = Math.max(RELATIVE * Math.abs(wanted), BESIDE * beside);
    const good = ends.filter(({ y }) => Math.abs(y - wanted) <= tolerance)
      .sort((a, b) => Number(this.#wrongSide(a)) - Number(this.#wrongSide(b)) || Math.abs(a.y - wanted) - Math.abs(b.y - wanted));
    const exact = good[0] ?? null;
    return exact && (yield* this.#towardsNow(exact, [from, to]));
  }

  /** Of a stretch on which the result stays what is wanted, the end nearest to where the input is now. */
  *#towardsNow(exact: Point, others: readonly Tried[]): Trying<Point> {
    const { now } = this.problem;
    const same = (y: number | null): boolean => y === exact.y;
    const between = others.filter(({ x, y }) => !same(y) && (x - exact.x) * (now - exact.x) > 0);
    const next = between.reduce<number | null>((nearest, { x }) => (nearest === null || Math.abs(x - exact.x) < Math.abs(nearest - exact.x) ? x : nearest), null);
    const towards = next === null || Math.abs(now - exact.x) < Math.abs(next - exact.x) ? now : next;
    if (towards < this.problem.low || towards > this.problem.high || towards === exact.x) return exact;
    if (!same(yield* this.#known.at(exact.x + (towards - exact.x) * 1e-6))) return exact;
    const x = yield* edge(this.#known, exact.x, towards, same);
    if (towards === now && same(yield* this.#known.at(now))) return { x: now, y: (yield* this.#known.at(now))! };
    return { x, y: (yield* this.#known.at(x))! };
  }

  /** What was tried at this place is what is wanted. Of nothing, only beside larger results on both sides. */
  #touches(all: readonly Tried[], i: number): boolean {
    const { wanted } = this.problem;
    const { y } = all[i]!;
    if (y === null) return false;
    if (y === wanted) return true;
    if (wanted !== 0) return Math.abs(y - wanted) <= RELATIVE * Math.abs(wanted) && !this.#crosses(all, i);
    const beside = [all[i - 1], all[i + 1]].map((other) => (other === undefined || other.y === null ? Infinity : Math.abs(other.y)));
    const least = Math.min(...beside);
    return Number.isFinite(least) && Math.abs(y) <= TOUCHING * least;
  }

  /** There is a crossing right beside it, which is then closed in on to the last bit. */
  #crosses(all: readonly Tried[], i: number): boolean {
    const { wanted } = this.problem;
    return [all[i - 1]?.y, all[i + 1]?.y].some((other) => other !== undefined && other !== null && (other - wanted) * (all[i]!.y! - wanted) < 0);
  }

  #wrongSide({ y }: Point): boolean {
    const { bound, wanted } = this.problem;
    return bound === 'atMost' ? y > wanted : bound === 'atLeast' ? y < wanted : false;
  }

  #solution(exact: Point | null): Solution {
    const { wanted, now, whole } = this.problem;
    const { points, all, tried } = this.#known;
    const cut = this.#steps ? this.#steps.best() : this.#anyWhere(exact);
    const sound = exact ?? (whole && cut && Math.abs(cut.y - wanted) <= RELATIVE * Math.abs(wanted) ? cut : null);
    const best = points.reduce<Point | null>((nearest, point) => {
      if (!nearest) return point;
      const less = Math.abs(point.y - wanted) - Math.abs(nearest.y - wanted);
      return less < 0 || (less === 0 && Math.abs(point.x - now) < Math.abs(nearest.x - now)) ? point : nearest;
    }, null);
    const [least, most] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
    const flat = most - least <= TOUCHING * Math.max(Math.abs(least), Math.abs(most));
    const crossed = least < wanted && most > wanted;
    const jump = crossed ? this.#jump(points) : undefined;
    return {
      why: points.length === 0 ? 'nothing' : sound ? 'reached' : flat ? 'flat' : crossed ? 'jumps' : 'beyond',
      exact: sound, cut, best: sound ?? best, ...(!sound && jump && { jump }), gaps: gapsIn(all), tried,
    };
  }

  /** Where any value can be cut: the exact answer, else the nearest on the right side that was met. */
  #anyWhere(exact: Point | null): Point | null {
    const { wanted, bound } = this.problem;
    if (exact) return exact;
    const noise = TOUCHING * Math.abs(wanted);
    const right = this.#known.points.filter(({ y }) => bound === 'exactly' || (bound === 'atMost' ? y <= wanted + noise : y >= wanted - noise));
    return right.reduce<Point | null>((nearest, point) => (!nearest || Math.abs(point.y - wanted) < Math.abs(nearest.y - wanted) ? point : nearest), null);
  }

  /** The two inputs, one right after the other, between which the result passes what is wanted; the one nearest to now. */
  #jump(points: readonly Point[]): readonly [Point, Point] | undefined {
    const { wanted, now } = this.problem;
    const far = ([a, b]: readonly [Point, Point]): number => Math.min(Math.abs(a.x - now), Math.abs(b.x - now));
    const pairs = points.slice(1).map((point, i): readonly [Point, Point] => [points[i]!, point]).filter(([a, b]) => (a.y - wanted) * (b.y - wanted) < 0);
    return pairs.sort((one, other) => far(one) - far(other))[0];
  }
}

function* none(): Trying<void> {
  // There are no steps to refine.
}

function gapsIn(all: readonly Tried[]): Solution['gaps'] {
  const gaps: (readonly [number, number])[] = [];
  for (let i = 0; i < all.length; i++) {
    if (all[i]!.y !== null) continue;
    const from = all[i]!.x;
    while (i + 1 < all.length && all[i + 1]!.y === null) i++;
    gaps.push([from, all[i]!.x]);
  }
  return gaps;
}
