/** The list to buy: what several garments and pieces need together, less what is in the cupboard, in the steps and packs that shops sell. */
import type { Dimension } from '../quantities/index.ts';
import { rowInWords, rowsFor, rowsOf, things, type ListRow } from './buying-list.ts';
import { define, mm, plain, share } from './define.ts';
import type { Figure, Pad } from './define.ts';
import { toStep } from './rounding.ts';

const WHAT = { name: 'what', kind: 'text', about: 'what to ask for, as the list spells it' } as const;
const CUPBOARD = { name: 'cupboard', kind: 'block', about: 'the list of what is at home, with its headings; one of them is “There is”' } as const;
const HOME = { name: 'home', about: 'what of it is in the cupboard' } as const;

/** Added up row by row, so that the working shows what each row gives. */
function added(rows: readonly ListRow[], dimension: Dimension, words: string, pad: Pad): number {
  const figure = (value: number): Figure => ({ value, dimension });
  let sum = 0;
  for (const [at, row] of rows.entries()) {
    const { figure: has } = row;
    if (has === undefined) return pad.refuse(`The list has no figure yet for ${rowInWords(row)}: write one, or take the row out.`);
    if (has.dimension !== dimension || has.unit === '%') {
      return pad.refuse(`The list has ${dimension === 'length' ? 'lengths' : 'plain numbers'} for ${row.what}, and something else for ${rowInWords(row)}: one thing is bought either by length or by number.`);
    }
    if (has.value < 0) return pad.refuse(`The list has a figure below 0 for ${rowInWords(row)}: nothing can be less than none.`);
    if (at === 0 && dimension === 'length') pad.showIn(has.unit);
    const before = sum;
    sum = pad.figure(`${words} ${rowInWords(row)}`, at === 0 ? [figure(has.value)] : [figure(before), ' + ', figure(has.value)], figure(before + has.value));
  }
  return sum;
}

export const BUYING_FUNCTIONS = [
  define({
    name: 'BUY.NEEDED',
    topic: 'cloth',
    about: 'How much of one thing all rows of a list need together.',
    asks: ['add up the same cloth', 'how much do all pieces need', 'shopping list'],
    args: [{ name: 'needs', kind: 'block', about: 'the list of what is needed, with its headings; one of them is “Needed”' }, WHAT],
    gives: 'figure',
    rule: 'the figures under “Needed” of all rows that ask for it, added up',
    source: 'exact arithmetic',
    example: '=BUY.NEEDED(needs, "main cloth")',
    work([needs, what], pad) {
      const rows = rowsOf(needs, 'needed', pad);
      const asked = rowsFor(rows, what);
      if (asked.length === 0) return pad.refuse(`The list asks for no “${what}”; it has ${things(rows)}.`);
      const dimension = asked.find(({ figure }) => figure !== undefined)?.figure?.dimension ?? 'length';
      if (dimension !== 'length' && dimension !== 'number') return pad.refuse(`The list has a figure for ${what} that is neither a length nor a number: nothing is sold so.`);
      return added(asked, dimension, 'with', pad);
    },
  }),
  define({
    name: 'CUPBOARD.LENGTH',
    topic: 'cloth',
    about: 'How much of a cloth, tape or thread is at home; 0 where there is none.',
    asks: ['what is in the cupboard', 'cloth I have already', 'use up cloth at home'],
    args: [CUPBOARD, WHAT, { name: 'width', kind: 'length', about: 'width that is needed; narrower cloth does not count', atLeast: 0, usual: 0 }],
    gives: 'length',
    rule: 'the lengths under “There is” of all rows that have it and are as wide, added up',
    source: 'exact arithmetic',
    example: '=CUPBOARD.LENGTH(cupboard, "main cloth", 140 cm)',
    work([cupboard, what, width], pad) {
      const has = rowsFor(rowsOf(cupboard, 'there is', pad), what);
      const narrow = has.filter((row) => row.width?.dimension === 'length' && row.width.value < width * (1 - 1e-9));
      const wide = has.filter((row) => !narrow.includes(row));
      if (narrow.length > 0) pad.caution('There is some at home that is narrower, and it is not counted: lay the pieces on it before you count it in.');
      if (wide.length === 0) return pad.length('none of it is at home', [], 0);
      return added(wide, 'length', 'with', pad);
    },
  }),
  define({
    name: 'CUPBOARD.COUNT',
    topic: 'cloth',
    about: 'How many of a thing are at home; 0 where there are none.',
    asks: ['buttons I have already', 'how many are in the cupboard'],
    args: [CUPBOARD, WHAT],
    gives: 'number',
    rule: 'the numbers under “There is” of all rows that have it, added up',
    source: 'exact arithmetic',
    example: '=CUPBOARD.COUNT(cupboard, "buttons")',
    work([cupboard, what], pad) {
      const has = rowsFor(rowsOf(cupboard, 'there is', pad), what);
      return has.length === 0 ? pad.number('none of it is at home', [], 0) : added(has, 'number', 'with', pad);
    },
  }),
  define({
    name: 'BUY.LENGTH',
    topic: 'cloth',
    about: 'The length to buy besides what is at home, so that enough is left after washing, in steps that shops sell; 0 where there is enough.',
    asks: ['how much more cloth to buy', 'take off what I have', 'cloth to buy less the cupboard'],
    args: [
      { name: 'needed', kind: 'length', about: 'length that is needed', atLeast: 0 },
      { ...HOME, kind: 'length', about: 'length of it in the cupboard, as it is after washing', atLeast: 0, usual: 0 },
      { name: 'shrinkage', kind: 'percent', about: 'share of its length that new cloth loses in washing', usual: 0, atLeast: 0, below: 1 },
      { name: 'step', kind: 'length', about: 'what the shop sells in, such as 10 cm or 1/8 yd; without it nothing is rounded', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: '(needed − home) ÷ (1 − shrinkage), up to a whole step; 0 where home is enough',
    source: 'ISO 5077:2007 for what shrinkage means; exact arithmetic',
    example: '=BUY.LENGTH(2.5 m, 40 cm, 3 %, 10 cm)',
    work([needed, home, shrinkage, step], pad) {
      if (home >= needed) return pad.length('enough is at home, so there is nothing to buy', [mm(needed), ' − ', mm(home), ', at least 0'], 0);
      if (pad.unitGiven(2) === undefined) pad.caution('No shrinkage is allowed for: wash a marked piece first and put in what it loses, or 0 % for cloth that was washed.');
      if (home > 0) pad.caution('Two lengths are not one: what is at home and what is bought are cut apart, and another dyeing may differ in shade. Lay the pieces on both first, or buy the whole length.');
      const lacks = pad.length('needed less what is at home', [mm(needed), ' − ', mm(home)], needed - home);
      const before = pad.length('length before washing', [mm(lacks), ' ÷ (1 − ', share(shrinkage), ')'], lacks / (1 - shrinkage));
      return step === 0 ? before : toStep('up', before, step, { length: 0, step: 3 }, pad);
    },
  }),
  define({
    name: 'BUY.COUNT',
    topic: 'cloth',
    about: 'How many cards, packs or pieces to buy besides what is at home; 0 where there are enough.',
    asks: ['how many buttons to buy', 'how many packs', 'cards of buttons'],
    args: [
      { name: 'needed', kind: 'number', about: 'how many are needed', atLeast: 0 },
      { ...HOME, kind: 'number', about: 'how many of them are in the cupboard', atLeast: 0, usual: 0 },
      { name: 'pack', kind: 'count', about: 'how many are sold together; 1 where they are sold singly', usual: 1 },
    ],
    gives: 'number',
    rule: '(needed − home) ÷ pack, up to a whole number; 0 where home is enough',
    source: 'exact arithmetic',
    example: '=BUY.COUNT(11, 3, 4)',
    work([needed, home, pack], pad) {
      if (home >= needed) return pad.number('enough are at home, so there is nothing to buy', [plain(needed), ' − ', plain(home), ', at least 0'], 0);
      const lacks = pad.number('needed less what is at home', [plain(needed), ' − ', plain(home)], needed - home);
      return pad.number('up to whole packs', [plain(lacks), ' ÷ ', plain(pack)], Math.ceil(lacks / pack - 1e-9));
    },
  }),
  define({
    name: 'THREAD.LENGTH',
    topic: 'cloth',
    about: 'The length of thread that seams take.',
    asks: ['how much thread do I need', 'thread for seams', 'how many metres of thread'],
    args: [
      { name: 'seams', kind: 'length', about: 'length of all seams together, each as often as it is stitched', atLeast: 0 },
      { name: 'ratio', kind: 'number', about: 'thread for each length of seam: usually 2.5 for lockstitch, 7 for zigzag, 14 for an overlock of three threads; unpick 10 cm and measure to be sure', above: 0, usual: 2.5 },
      { name: 'spare', kind: 'percent', about: 'share more for ends, tests and unpicking', atLeast: 0, usual: 0.15 },
    ],
    gives: 'length',
    rule: 'seams × ratio × (1 + spare)',
    source: 'exact arithmetic; ratio and 10 to 15 % of waste as garment makers publish them',
    example: '=THREAD.LENGTH(12 m, 2.5, 15 %)',
    work([seams, ratio, spare], pad) {
      const stitched = pad.length('thread in the seams', [mm(seams), ' × ', plain(ratio)], seams * ratio);
      return pad.length('with what is spare', [mm(stitched), ' × (1 + ', share(spare), ')'], stitched * (1 + spare));
    },
  }),
  define({
    name: 'THREAD.REELS',
    topic: 'cloth',
    about: 'How many reels of thread to buy besides what is at home; 0 where there is enough.',
    asks: ['how many reels of thread', 'spools of thread to buy'],
    args: [
      { name: 'needed', kind: 'length', about: 'length of thread that is needed', atLeast: 0 },
      { ...HOME, kind: 'length', about: 'length of it in the cupboard', atLeast: 0, usual: 0 },
      { name: 'reel', kind: 'length', about: 'length on a reel', above: 0, usual: 100_000 },
    ],
    gives: 'number',
    rule: '(needed − home) ÷ reel, up to a whole number; 0 where home is enough',
    source: 'exact arithmetic',
    example: '=THREAD.REELS(120 m, 20 m, 100 m)',
    work([needed, home, reel], pad) {
      if (home >= needed) return pad.number('enough is at home, so there is nothing to buy', [mm(needed), ' − ', mm(home), ', at least 0'], 0);
      const lacks = pad.length('needed less what is at home', [mm(needed), ' − ', mm(home)], needed - home);
      return pad.number('up to whole reels', [mm(lacks), ' ÷ ', mm(reel)], Math.ceil(lacks / reel - 1e-9));
    },
  }),
];
