/** The same pieces flat and folded, both ways and one way, on cloths of several widths and prices: looked for one after another. */
import { compared, comparisons, lengthUsed, type Cloth, type Compared, type Comparison, type Fold } from '../lay/index.ts';
import type { LayCompared } from '../panels/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import { faultsOf, type Found } from './lay-found.ts';
import { LaySearch, type Asked } from './lay-search.ts';
import { inHerUnits } from './lay-words.ts';
import { lengthInWords, lengthUp, shortLength } from './lay-view.ts';

const FOLDS: readonly Fold[] = ['open', 'lengthwise'];

/** Millions of places for each: enough to tell a good way from a bad one. */
export const BRIEF = 3;

interface Row {
  readonly comparison: Comparison;
  readonly asked: Asked;
  found: Found | null;
  result: Compared | null;
  sentence: string;
}

export class LayComparing {
  running = false;
  #rows: Row[] = [];
  readonly #search: LaySearch;
  #chosen: Row | null = null;
  #run = 0;

  constructor(private readonly changed: () => void) {
    this.#search = new LaySearch(() => undefined);
  }

  async run(asked: Asked, offers: readonly { readonly width: number; readonly price: number | null }[], step: number): Promise<void> {
    const run = ++this.#run;
    this.running = true;
    this.#chosen = null;
    const { pieces, cloth } = asked;
    this.#rows = comparisons({ pieces, cloth, aim: { want: 'least length' }, seed: 1 }, { folds: FOLDS, oneWay: [false, true], offers }).map((comparison): Row => ({
      comparison, asked: { pieces, second: [], cloth: comparison.request.cloth, aim: { want: 'least length' }, print: asked.print, most: BRIEF },
      found: null, result: null, sentence: comparison.refused[0] ?? 'waits',
    }));
    this.changed();
    for (const row of this.#rows) {
      if (row.comparison.refused.length > 0) continue;
      row.sentence = 'is being looked for';
      this.changed();
      await this.#search.start(row.asked);
      if (run !== this.#run) return;
      const { found, sentences } = this.#search;
      row.found = found && faultsOf(found).length === 0 ? found : null;
      row.result = row.found && compared(row.comparison, { outcome: 'done', places: row.found.places, found: { layout: row.found.layout, density: row.found.density, weighed: 0 } }, { step, per: 1000 });
      row.sentence = row.result ? '' : (sentences[0] ?? 'No layout was found.');
      this.changed();
    }
    this.running = false;
    this.#search.end();
    this.changed();
  }

  stop(): void {
    this.#run++;
    this.running = false;
    this.#search.end();
    for (const row of this.#rows) if (!row.result && row.comparison.refused.length === 0) row.sentence = 'was not looked for';
  }

  clear(): void {
    this.stop();
    this.#rows = [];
  }

  /** The layout and the cloth of a row; `null` when it has none. */
  take(at: number): { readonly found: Found; readonly asked: Asked; readonly comparison: Comparison } | null {
    const row = this.#rows[at];
    if (!row?.found) return null;
    this.#chosen = row;
    return { found: row.found, asked: row.asked, comparison: row.comparison };
  }

  /** By cost where every row has one, else by length. */
  rows(as: ShowAs): LayCompared[] {
    const results = this.#rows.flatMap(({ result }) => result ?? []);
    const byCost = results.length > 0 && results.every(({ cost }) => cost !== null);
    const worth = (result: Compared): number => (byCost ? result.cost! : result.length);
    const least = Math.min(...results.map(worth));
    return this.#rows.map((row): LayCompared => {
      const { result, comparison: { fold, oneWay, offer } } = row;
      const name = `${shortLength(offer.width, as)} wide, ${fold === 'open' ? 'flat' : 'folded lengthwise'}${oneWay ? ', one way' : ''}`;
      if (!result) return { name, length: '', cost: '', more: '', sentence: inHerUnits(row.sentence, as), least: false, chosen: false, toBuy: '' };
      const more = worth(result) - least;
      return {
        name, sentence: '', least: more < 1e-9, chosen: row === this.#chosen,
        length: lengthUp(row.found ? lengthUsed(row.found.layout, row.found.cloth) : result.length, as),
        toBuy: lengthInWords(result.toBuy, as),
        cost: result.cost === null ? '' : result.cost.toFixed(2),
        more: more < 1e-9 ? '' : byCost ? more.toFixed(2) : lengthInWords(more, as),
      };
    });
  }
}

/** Typed anew, so that the cloth she goes on with is the one that she chose. */
export const clothTypedFor = ({ fold, oneWay }: Pick<Comparison, 'fold' | 'oneWay'>, cloth: Cloth, as: ShowAs): { readonly width: string; readonly fold: Fold; readonly oneWay: boolean; readonly length: string } =>
  ({ width: shortLength(cloth.width, as), fold, oneWay, length: '' });
