/** Buttons and buttonholes. So many buttons have one gap fewer. Places are measured from any one point, such as the neck edge. */
import { quantity } from '../quantities/index.ts';
import { define, mm, plain } from './define.ts';
import type { Pad } from './define.ts';

const FIRST = { name: 'first', kind: 'length', about: 'place of the first button' } as const;
const LAST = { name: 'last', kind: 'length', about: 'place of the last button' } as const;
const COUNT = { name: 'count', kind: 'count', about: 'how many buttons, both ends counted' } as const;

function spanOf(first: number, last: number, pad: Pad): number {
  if (last <= first) pad.refuse(`The last button, at ${pad.say(last)}, must come after the first, at ${pad.say(first)}.`);
  return pad.length('from the first to the last', [mm(last), ' − ', mm(first)], last - first);
}

function gapOf(first: number, last: number, count: number, pad: Pad): number {
  if (count < 2) pad.refuse('One button has no gap: give at least 2.');
  const span = spanOf(first, last, pad);
  const gaps = pad.number('gaps, one fewer than buttons', [plain(count), ' − 1'], count - 1);
  return pad.length('shared by the gaps', [mm(span), ' ÷ ', plain(gaps)], span / gaps);
}

/** More would be a slip of the decimal mark. */
const MOST_GAPS = 1000;

/** So many even gaps, nearest to `about`, that put a button within `within` of every place; places rise. */
function evenGaps(places: readonly number[], about: number, within: number): number | undefined {
  const [first = 0, last = 0] = [places[0], places.at(-1)];
  const span = last - first;
  const misses = (gaps: number): number => {
    const gap = span / gaps;
    return Math.max(...places.map((place) => Math.abs(place - first - Math.round((place - first) / gap) * gap)));
  };
  const most = Math.min(MOST_GAPS, Math.ceil((2 * span) / about) + 1);
  const counts = Array.from({ length: most }, (_, i) => i + 1).filter((gaps) => misses(gaps) <= within + 1e-9 * span);
  return counts.sort((a, b) => Math.abs(span / a - about) - Math.abs(span / b - about) || a - b)[0];
}

const GAPES = 'No button sits near enough to this level, so the front may gape there';

export const BUTTON_FUNCTIONS = [
  define({
    name: 'BUTTON.GAP',
    topic: 'button',
    about: 'How far evenly spaced buttons are apart, from middle to middle.',
    asks: ['how far apart are the buttons', 'space buttons evenly', 'distance between buttonholes'],
    args: [FIRST, LAST, COUNT],
    gives: 'length',
    rule: '(last − first) ÷ (count − 1)',
    source: 'exact geometry',
    example: '=BUTTON.GAP(2 cm, 62 cm, 11)',
    work([first, last, count], pad) {
      return gapOf(first, last, count, pad);
    },
  }),
  define({
    name: 'BUTTON.COUNT',
    topic: 'button',
    about: 'How many buttons come nearest to a gap.',
    asks: ['how many buttons do I need', 'number of buttons'],
    args: [FIRST, LAST, { name: 'gap', kind: 'length', about: 'wanted distance from middle to middle', above: 0 }],
    gives: 'number',
    rule: '(last − first) ÷ gap, to the nearest whole number, at least 1, and 1; a half goes up',
    source: 'exact geometry',
    example: '=BUTTON.COUNT(2 cm, 62 cm, 6 cm)',
    work([first, last, gap], pad) {
      const span = spanOf(first, last, pad);
      const exact = pad.number('counted in gaps', [mm(span), ' ÷ ', mm(gap)], span / gap);
      const gaps = pad.number('the nearest whole number', [plain(exact)], Math.max(1, Math.floor(exact + 0.5 + 1e-9)));
      if (Math.abs(exact - gaps) > 1e-9 * gaps) pad.caution('The wanted gap does not go evenly into the distance: this many buttons have a slightly different one, which is this.', mm(span / gaps), 'gap');
      return pad.number('one button more than gaps', [plain(gaps), ' + 1'], gaps + 1);
    },
  }),
  define({
    name: 'BUTTON.AT',
    topic: 'button',
    about: 'The place of one button among evenly spaced ones.',
    asks: ['where does each button go', 'mark buttonholes', 'position of the third button'],
    args: [FIRST, LAST, COUNT, { name: 'n', kind: 'count', about: 'which button, 1 for the first' }],
    gives: 'length',
    rule: 'first + (n − 1) × (last − first) ÷ (count − 1)',
    source: 'exact geometry',
    example: '=BUTTON.AT(2 cm, 62 cm, 11, 4)',
    work([first, last, count, n], pad) {
      if (n > count) pad.refuse(`There is no button ${n} among ${count}: n goes from 1 to ${count}.`);
      const gap = gapOf(first, last, count, pad);
      // The last one comes out exactly where it was given.
      const place = n === count ? last : first + (n - 1) * gap;
      return pad.length('the first place and the gaps before this button', [mm(first), ' + (', plain(n), ' − 1) × ', mm(gap)], place);
    },
  }),
  define({
    name: 'BUTTON.EVEN',
    topic: 'button',
    about: 'The even gap nearest to a wanted one that puts a button on every place that must have one.',
    asks: ['a button at the bust line', 'even buttons that meet the waist', 'button at neck bust and waist'],
    args: [
      { name: 'about', kind: 'length', about: 'roughly the gap wanted', above: 0 },
      { name: 'within', kind: 'length', about: 'how far a button may miss its place', atLeast: 0 },
      { name: 'place', kind: 'length', about: 'a place that must have a button; two or more of them, the first and the last at the ends' },
    ],
    repeats: true,
    gives: 'length',
    rule: '(last place − first place) ÷ a whole number, such that every place lies within the tolerance of a button, nearest to the wanted gap',
    source: 'exact geometry',
    example: '=BUTTON.EVEN(7 cm, 0.5 cm, 2 cm, 20 cm, 62 cm)',
    work([about, within, ...places], pad) {
      const sorted = places.toSorted((a, b) => a - b);
      const [first = 0, last = 0] = [sorted[0], sorted.at(-1)];
      if (last <= first) pad.refuse('Give at least two different places that must have a button.');
      const span = spanOf(first, last, pad);
      if (span / about > MOST_GAPS) pad.refuse(`Buttons about ${pad.say(about)} apart would be more than a thousand: check the figures.`);
      const best = evenGaps(sorted, about, within);
      if (best === undefined) return pad.refuse(`No even gap of about ${pad.say(about)} or half of it puts a button within ${pad.say(within)} of every place: allow more, or move a place.`);
      const gaps = pad.number('gaps that suit all the places', [], best);
      const gap = pad.length('from the first to the last, shared by them', [mm(span), ' ÷ ', plain(gaps)], span / gaps);
      if (gap < about / 1.5 || gap > about * 1.5) pad.caution('The even gap is far from the one wanted: allow a wider miss, move a place, or be content with this.', mm(gap), 'about');
      return gap;
    },
  }),
  define({
    name: 'BUTTON.OFF',
    topic: 'button',
    about: 'How far below a level, such as the bust, the nearest of evenly spaced buttons sits; below 0 when it sits above.',
    asks: ['is there a button at the bust line', 'will the front gape', 'nearest button to the waist'],
    args: [FIRST, LAST, COUNT, { name: 'level', kind: 'length', about: 'place of the level, from the same point as the buttons' }, { name: 'within', kind: 'length', about: 'how far off a button may sit', atLeast: 0, usual: 10 }],
    gives: 'length',
    rule: 'place of the nearest button − level',
    source: 'exact geometry; a button within 1 cm of the bust line is common practice',
    example: '=BUTTON.OFF(2 cm, 62 cm, 11, 20 cm)',
    work([first, last, count, level, within], pad) {
      const gap = gapOf(first, last, count, pad);
      const n = Math.min(count - 1, Math.max(0, Math.round((level - first) / gap)));
      const place = pad.length(`place of the nearest button, the ${n + 1} of ${count}`, [mm(first), ' + ', plain(n), ' × ', mm(gap)], n === count - 1 ? last : first + n * gap);
      if (Math.abs(place - level) > within * (1 + 1e-9)) {
        const even = level > first && level < last ? evenGaps([first, level, last], gap, within) : undefined;
        if (level > last) pad.caution(`${GAPES}: the last button is to sit as low as this.`, mm(level - within), 'last', 'atLeast');
        else if (level < first) pad.caution(`${GAPES}: the first button is to sit as high as this.`, mm(level + within), 'first', 'atMost');
        else if (even === undefined) pad.caution(`${GAPES}: place one more button at this.`, mm(level));
        else pad.caution(`${GAPES}. Even spacing that puts one there takes as many buttons as this.`, plain(even + 1), 'count');
      }
      return pad.length('from the level down to it', [mm(place), ' − ', mm(level)], place - level);
    },
  }),
  define({
    name: 'BUTTON.UNEVEN',
    topic: 'button',
    about: 'How much the widest gap among buttons is wider than the narrowest.',
    asks: ['are my buttons even', 'uneven button gaps', 'check button positions'],
    args: [
      { name: 'within', kind: 'length', about: 'how much gaps may differ without being seen', atLeast: 0 },
      { name: 'place', kind: 'length', about: 'the places of the buttons, three or more, in any order' },
    ],
    repeats: true,
    gives: 'length',
    rule: 'widest gap − narrowest gap',
    source: 'exact geometry',
    example: '=BUTTON.UNEVEN(2 mm, 2 cm, 8 cm, 14 cm)',
    work([within, ...places], pad) {
      if (places.length < 3) pad.refuse('Two buttons have one gap, which is always even: give the places of three or more.');
      const sorted = places.toSorted((a, b) => a - b);
      const gaps = sorted.slice(1).map((place, i) => place - (sorted[i] as number));
      const [widest, narrowest] = [pad.length('widest gap', [], Math.max(...gaps)), pad.length('narrowest gap', [], Math.min(...gaps))];
      const span = (sorted.at(-1) as number) - (sorted[0] as number);
      if (widest - narrowest > within + 1e-9 * span) pad.caution('The gaps are uneven. With the first and the last where they are, the even gap is this.', mm(span / gaps.length));
      return pad.length('the difference', [mm(widest), ' − ', mm(narrowest)], widest - narrowest);
    },
  }),
  define({
    name: 'BUTTON.STAND',
    topic: 'button',
    about: 'How far a front reaches beyond its centre line, so that a button on the line does not show past the edge.',
    asks: ['button stand', 'how wide is the extension', 'front overlap for buttons'],
    args: [
      { name: 'diameter', kind: 'length', about: 'across the button', above: 0 },
      { name: 'beyond', kind: 'length', about: 'cloth that shows beyond the button’s edge', atLeast: 0, usual: 6 },
    ],
    gives: 'length',
    rule: 'diameter ÷ 2 + beyond',
    source: 'common practice',
    example: '=BUTTON.STAND(18 mm)',
    work([diameter, beyond], pad) {
      const half = pad.length('half the button', [mm(diameter), ' ÷ 2'], diameter / 2);
      return pad.length('and what shows beyond it', [mm(half), ' + ', mm(beyond)], half + beyond);
    },
  }),
  define({
    name: 'BUTTON.LIGNE',
    topic: 'button',
    about: 'The size across of a button that is sold by lignes.',
    asks: ['how big is a 24 ligne button', 'button size in mm', 'ligne'],
    args: [{ name: 'lignes', kind: 'number', about: 'its size in lignes, such as 24', above: 0 }],
    gives: 'length',
    rule: 'lignes × 1 in ÷ 40, shown in mm',
    source: 'button trade usage, from memory',
    example: '=BUTTON.LIGNE(24)',
    work([lignes], pad) {
      pad.showIn('mm');
      return pad.length('forty to the inch', [plain(lignes), ' ÷ 40 of ', mm(quantity(1, 'in').value)], quantity(lignes / 40, 'in').value);
    },
  }),
  define({
    name: 'BUTTONHOLE',
    topic: 'button',
    about: 'The length of a buttonhole for a flat button.',
    asks: ['how long is the buttonhole', 'buttonhole size'],
    args: [
      { name: 'diameter', kind: 'length', about: 'across the button', above: 0 },
      { name: 'thickness', kind: 'length', about: 'thickness of the button', atLeast: 0 },
    ],
    gives: 'length',
    rule: 'diameter + thickness',
    source: 'common practice',
    example: '=BUTTONHOLE(1 in, 1/4 in)',
    work([diameter, thickness], pad) {
      return pad.length('across and through the button', [mm(diameter), ' + ', mm(thickness)], diameter + thickness);
    },
  }),
  define({
    name: 'BUTTONHOLE.BALL',
    topic: 'button',
    about: 'The length of a buttonhole for a ball button.',
    asks: ['buttonhole for a ball button', 'round button buttonhole'],
    args: [{ name: 'diameter', kind: 'length', about: 'across the ball', above: 0 }],
    gives: 'length',
    rule: 'π × diameter ÷ 2, half the girth of the ball',
    source: 'exact geometry',
    example: '=BUTTONHOLE.BALL(12 mm)',
    work([diameter], pad) {
      return pad.length('half the girth', ['π × ', mm(diameter), ' ÷ 2'], (Math.PI * diameter) / 2);
    },
  }),
];
