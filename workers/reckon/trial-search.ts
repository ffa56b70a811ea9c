/**
 * Working back: looks for the input that makes a result what is wanted. Between
 * two stretches of work everything is put back, so that whatever the page asks
 * meanwhile is answered from the sheet as it is.
 */
import { inBase, nearest, UNITS } from '../../src/quantities/index.ts';
import type { Quantity } from '../../src/quantities/index.ts';
import type { BackAnswer, BackPoint, BackSearch } from '../../src/reckoning/protocol.ts';
import { solve } from '../../src/solving/index.ts';
import type { Point, Solution, Trying } from '../../src/solving/index.ts';
import { resultOf } from './columns.ts';
import { TriedFigure } from './content.ts';
import { explain } from './explain.ts';
import type { Host } from './host.ts';
import { Teller } from './telling.ts';
import { pinsOn } from './trials.ts';
import { TrialValues, mustStand } from './trial-values.ts';
import { isNumeric, quantityOf, valueIn } from './values.ts';

/** Milliseconds of work between two looks at the post: a cancel is heard within a few of them. */
const TURN = 25;

/** A turn of the event loop. A browser's timer would be slowed to 4 ms; in Node, where the tests run, messages go before timers. */
const pause = (): Promise<void> => new Promise((done) => {
  if (typeof setImmediate === 'function') {
    setImmediate(done);
    return;
  }
  const post = new MessageChannel();
  post.port1.onmessage = () => {
    post.port1.close();
    done();
  };
  post.port2.postMessage(null);
});

/**
 * @param stopped asked after every pause: true gives the search up
 * @returns `null` when it was given up
 * @throws Error when a cell is on no sheet
 */
export async function searchBack(host: Host, search: BackSearch, spelled: (name: string) => string | undefined, stopped: () => boolean): Promise<BackAnswer | null> {
  const trying = new Tries(host, search, spelled);
  try {
    const steps = trying.solution();
    let step = steps.next();
    let until = performance.now() + TURN;
    while (!step.done) {
      step = steps.next(trying.resultAt(step.value));
      if (performance.now() < until) continue;
      trying.back();
      await pause();
      if (stopped()) return null;
      until = performance.now() + TURN;
    }
    return trying.answer(step.value);
  } finally {
    trying.back();
  }
}

class Tries {
  readonly #values: TrialValues;
  readonly #dimension;
  #without: string | undefined;

  constructor(private readonly host: Host, private readonly search: BackSearch, private readonly spelled: (name: string) => string | undefined) {
    mustStand(host, [search.result, search.input]);
    this.#values = new TrialValues(host, [search.input]);
    this.#dimension = UNITS[search.wanted.unit].dimension;
  }

  solution(): Trying<Solution> {
    const { wanted, bound, low, high, now, step, whole, unit } = this.search;
    return solve({
      wanted: wanted.value, bound, low, high, now, step, ...(whole && { whole }),
      // So many steps to the last bit, as they would be typed.
      ...(step !== null && { ofSteps: (steps: number) => (nearest(this.#figure(steps * step), inBase(step, unit)) as Quantity).value }),
    });
  }

  /** The result for an input, in base units; `null` where there is none of the wanted kind. */
  resultAt(x: number): number | null {
    const { search, host } = this;
    this.#values.put([{ cell: search.input, raw: this.#tried(x) }]);
    const value = host.valueAt(search.result);
    const quantity = isNumeric(value) ? quantityOf(value) : undefined;
    if (quantity?.dimension === this.#dimension) return quantity.value;
    this.#without ??= this.#sayWithout(value);
    return null;
  }

  answer({ why, exact, cut, best, jump, gaps, tried }: Solution): BackAnswer {
    const point = (at: Point | null): BackPoint | null => (at ? this.#point(at) : null);
    return {
      why, tried, gaps, exact: point(exact), cut: point(cut), best: point(best),
      depends: this.#values.dependents.some(({ sheet, row, col }) => sheet === this.search.result.sheet && row === this.search.result.row && col === this.search.result.col),
      ...(jump && { jump: [this.#plain(jump[0]), this.#plain(jump[1])] }),
      ...(this.#without !== undefined && { without: this.#without }),
    };
  }

  back(): void {
    this.#values.back();
  }

  #plain({ x, y }: Point): { readonly input: number; readonly result: number } {
    return { input: x, result: y };
  }

  /** Tries an answer once more, to see all that comes of it. */
  #point({ x }: Point): BackPoint {
    const { host, search } = this;
    this.#values.put([{ cell: search.input, raw: this.#tried(x) }]);
    const teller = new Teller(host);
    return {
      input: x,
      result: resultOf(host.valueAt(search.result), search.result, teller.tell),
      pins: pinsOn(host, this.#values.dependents),
      working: explain(host, search.result, teller, this.spelled),
    };
  }

  #tried(x: number): TriedFigure {
    const { value, dimension, unit } = this.#figure(x);
    return new TriedFigure(valueIn(value, dimension, unit));
  }

  #figure(x: number): Quantity {
    return inBase(x, this.search.unit);
  }

  #sayWithout(value: unknown): string {
    const result = resultOf(value, this.search.result, new Teller(this.host).tell);
    switch (result.kind) {
      case 'error': return result.sentence;
      case 'quantity': return 'The result is of another kind than what is wanted.';
      case 'text': return `The result is the text “${result.text}”.`;
      default: return 'The result is no figure.';
    }
  }
}
