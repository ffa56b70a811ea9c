/** Finds functions by what one wants: words of questions, names, arguments, in any order and with slips. */
import MiniSearch from 'minisearch';
import type { FunctionCard } from '../reckoning/index.ts';

/** Words that every question has; without them “how deep should pleats be” asks for deep pleats. */
const IDLE = new Set(('a about am an and any are as at be been by can could did do does for from get give go has have how i if in into is it its '
  + 'many me much my need of on one or should so some such than that the their them then there this to too was we what when where which who why will with would you your').split(' '));

/** Same things in other words, toward the words that the cards use. */
const SAME: Readonly<Record<string, string>> = {
  fabric: 'cloth', material: 'cloth', mean: 'average', centimeter: 'centimetre', meter: 'metre', cm: 'centimetre', inch: 'inches', in: 'inches', zipper: 'zip',
  smallest: 'least', minimum: 'least', largest: 'greatest', maximum: 'greatest', total: 'sum', width: 'wide', depth: 'deep', length: 'long', height: 'high',
};

function word(term: string): string | null {
  const low = term.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[’']s$/, '');
  if (IDLE.has(low)) return null;
  const one = low.length > 3 && low.endsWith('s') && !low.endsWith('ss') ? low.slice(0, -1) : low;
  return SAME[low] ?? SAME[one] ?? one;
}

interface Entry {
  readonly id: number;
  readonly name: string;
  readonly asks: string;
  readonly about: string;
  readonly topic: string;
  readonly args: string;
}

const entryOf = ({ name, asks, about, topic, args, rule }: FunctionCard, id: number): Entry => ({
  id, name, asks: asks.join(' '), about: `${about} ${rule}`, topic, args: args.map((arg) => `${arg.name} ${arg.about}`).join(' '),
});

/** The standard functions come after those of the trade that fit as well. */
const AFTER = 0.8;
/** What fits less than this part of the best is no help. */
const LEAST = 0.04;
/** Cards that are found at most. */
const MOST = 60;

export class ReferenceSearch {
  readonly #index = new MiniSearch<Entry>({
    fields: ['name', 'asks', 'about', 'topic', 'args'],
    tokenize: (text) => text.split(/[^\p{L}\p{N}’']+/u).filter(Boolean),
    processTerm: word,
  });

  constructor(private readonly cards: readonly FunctionCard[]) {
    this.#index.addAll(cards.map(entryOf));
  }

  /** The cards that fit, the best first; all of them for nothing that can be sought. */
  find(sought: string): readonly FunctionCard[] {
    const phrase = sought.trim().toLowerCase().replace(/\s+/g, ' ').replace(/[?!.]+$/, '');
    if (phrase === '') return this.cards;
    const name = phrase.toUpperCase().replace(/^=|\($|\s/g, '');
    const found = new Map(this.#index.search(sought, {
      boost: { name: 4, asks: 4, about: 2, topic: 2 },
      prefix: (term) => term.length > 1,
      fuzzy: (term) => (term.length > 4 ? 0.2 : false),
      boostDocument: (id) => (this.cards[id as number]!.trade ? 1 : AFTER),
      combineWith: 'OR',
      // A card with all the words is worth more than one with a few of them often.
    }).map(({ id, score, queryTerms }) => [id as number, score * queryTerms.length ** 2]));
    const scored = this.cards.map((card, id) => {
      const asked = literal(card, phrase);
      return { card, fits: asked * Math.max(found.get(id) ?? 0, asked - 1), called: called(card, name) };
    });
    const least = LEAST * Math.max(...scored.map(({ fits }) => fits));
    return scored.filter(({ fits, called: by }) => by > 0 || (fits > 0 && fits >= least))
      .sort((a, b) => b.fits + b.called - a.fits - a.called).slice(0, MOST).map(({ card }) => card);
  }
}

/** A question that was asked in these very words counts more. */
function literal({ asks, about }: FunctionCard, phrase: string): number {
  if (phrase.length < 4) return 1;
  if (asks.some((ask) => ask.toLowerCase().startsWith(phrase))) return 4;
  if (asks.some((ask) => ask.toLowerCase().includes(phrase))) return 3;
  return about.toLowerCase().includes(phrase) ? 2 : 1;
}

/** Who types a function's name, or how it begins, wants that one. */
function called(card: FunctionCard, name: string): number {
  if (card.name === name) return 1e6;
  return card.name.startsWith(name) ? 1e5 - card.name.length : 0;
}
