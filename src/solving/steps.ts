/** The values that can be cut: whole steps within the range. */
import type { Known } from './known.ts';
import { turn } from './lowest.ts';
import type { Point, Problem, Trying } from './types.ts';

/** So many are all tried; of more, some are, and then those beside every crossing and turning point. */
const ALL = 1_000;
const SOME = 400;
const MOST_TURNS = 16;
/** How far from a step still counts as on it. */
const ON_STEP = 1e-9;
/** How far beyond a bound rounding may lead, as a part of it. */
const NOISE = 1e-12;

export class Steps {
  readonly #first: number;
  readonly #last: number;
  readonly #value: (steps: number) => number;
  /** Steps that were looked at. */
  readonly #seen = new Set<number>();

  constructor(private readonly problem: Problem, private readonly known: Known) {
    const step = problem.step!;
    this.#first = Math.ceil(problem.low / step - ON_STEP);
    this.#last = Math.floor(problem.high / step + ON_STEP);
    this.#value = problem.ofSteps ?? ((steps) => steps * step);
  }

  /** Inputs to begin with. */
  spread(): number[] {
    const count = this.#last - this.#first + 1;
    if (!(count > 0)) return [];
    const some = count <= ALL ? Array.from({ length: count }, (_, n) => this.#first + n)
      : Array.from({ length: SOME + 1 }, (_, n) => this.#first + Math.round(((count - 1) * n) / SOME));
    const now = Math.round(this.problem.now / this.problem.step!);
    if (now >= this.#first && now <= this.#last) some.push(now);
    return some.map((steps) => this.#look(steps));
  }

  /** Looks more closely where not all steps were tried. */
  *refine(): Trying<void> {
    if (this.#last - this.#first + 1 <= ALL) return;
    const { wanted } = this.problem;
    const seen = [...this.#seen].sort((a, b) => a - b);
    const results: (number | null)[] = [];
    for (const steps of seen) results.push(yield* this.#at(steps));
    const turns: { readonly low: number; readonly high: number; readonly here: number; readonly side: number }[] = [];
    for (let i = 0; i < seen.length; i++) {
      const y = results[i]!;
      if (y === null) continue;
      const [before, after] = [results[i - 1], results[i + 1]];
      if (i + 1 < seen.length && (after === null || (y - wanted) * (after! - wanted) < 0)) yield* this.#between(seen[i]!, seen[i + 1]!, y);
      if (i > 0 && before === null) yield* this.#between(seen[i]!, seen[i - 1]!, y);
      const side = Math.sign(y - wanted);
      const away = (other: number | null | undefined): number => (other === null || other === undefined ? Infinity : (other - wanted) * side);
      if ((y - wanted) * side <= Math.min(away(before), away(after))) turns.push({ low: seen[Math.max(0, i - 1)]!, high: seen[Math.min(seen.length - 1, i + 1)]!, here: (y - wanted) * side, side });
    }
    turns.sort((a, b) => a.here - b.here);
    for (const { low, high, side } of turns.slice(0, MOST_TURNS)) {
      yield* turn(this.known, wanted, low, high, side, (steps) => this.#look(Math.min(this.#last, Math.max(this.#first, Math.round(steps)))));
    }
  }

  /** The nearest on the right side of what was looked at; of equals the one nearest to where the input is now. */
  best(): Point | null {
    const { wanted, bound, now } = this.problem;
    const inputs = new Set([...this.#seen].map(this.#value));
    const points = this.known.points.filter(({ x }) => inputs.has(x));
    const noise = NOISE * Math.max(Math.abs(wanted), wanted === 0 ? Math.max(0, ...points.map(({ y }) => Math.abs(y))) : 0);
    let best: Point | null = null;
    for (const point of points) {
      if ((bound === 'atMost' && point.y > wanted + noise) || (bound === 'atLeast' && point.y < wanted - noise)) continue;
      const less = best ? Math.abs(point.y - wanted) - Math.abs(best.y - wanted) : -1;
      if (less < -noise || (Math.abs(less) <= noise && Math.abs(point.x - now) < Math.abs(best!.x - now))) best = point;
    }
    return best;
  }

  /** Halves between two steps on two sides (or one without a result) until they are neighbours. */
  *#between(one: number, other: number, y: number): Trying<void> {
    const { wanted } = this.problem;
    let [near, far] = [one, other];
    while (Math.abs(far - near) > 1) {
      const middle = Math.trunc((near + far) / 2);
      const result = yield* this.#at(middle);
      if (result !== null && (result - wanted) * (y - wanted) > 0) near = middle;
      else far = middle;
    }
  }

  #at(steps: number): Trying<number | null> {
    return this.known.at(this.#look(steps));
  }

  #look(steps: number): number {
    this.#seen.add(steps);
    return this.#value(steps);
  }
}
