/** Ease: what a garment has beyond the body, and what must pass over the body to get into it. */
import { define, mm, NOT_LESS, plain, share } from './define.ts';
import type { Pad } from './define.ts';

const FINISHED = { name: 'finished', kind: 'length', about: 'the garment’s measure, seam to seam, closed', atLeast: 0 } as const;
const BODY = { name: 'body', kind: 'length', about: 'the same measure of the body', above: 0 } as const;
const CLOSED = { name: 'closed', kind: 'length', about: 'the garment’s edge when closed, at rest, such as a finished waist', above: 0 } as const;
const OVER = { name: 'over', kind: 'length', about: 'the widest girth that it must pass, such as the hip, or round both shoulders', above: 0 } as const;
const LEVEL = { name: 'level', kind: 'text', about: 'where this is, such as "bust", to be named in a caution', usual: '' } as const;
const STRETCH = { name: 'stretch', kind: 'percent', about: 'how far the edge stretches well; 0 % for woven cloth', atLeast: 0, usual: 0 } as const;

/** `needed` is the finished measure that has the ease asked for. */
function watchEase(finished: number, body: number, needed: number, level: string, pad: Pad): void {
  const near = 1e-9 * body;
  const where = level === '' ? 'here' : `at the ${level.toLowerCase()}`;
  if (finished < needed - near) pad.caution(`There is less ease ${where} than was asked for: the finished measure must be at least this.`, mm(needed), 'finished', 'atLeast');
  else if (finished < body - near && !Number.isFinite(needed)) pad.caution(`The garment is smaller than the body ${where}: right only for cloth that stretches. In cloth that does not, it needs at least this.`, mm(body), 'finished', 'atLeast');
}

/** What the edge measures when it is stretched as far as it will. */
function widest(closed: number, stretch: number, pad: Pad): number {
  return stretch === 0 ? closed : pad.length('the edge, stretched as far as it will', [mm(closed), ' × (1 + ', share(stretch), ')'], closed * (1 + stretch));
}

export const FIT_FUNCTIONS = [
  define({
    name: 'EASE',
    topic: 'fit',
    about: 'How much larger the finished garment is than the body.',
    asks: ['how much ease', 'will it be tight', 'garment minus body', 'wearing ease'],
    args: [FINISHED, BODY, { name: 'least', kind: 'length', about: 'the least ease that the cloth and style need; below 0 for cloth that stretches', usual: NOT_LESS }, LEVEL],
    gives: 'length',
    rule: 'finished − body',
    source: 'exact geometry',
    example: '=EASE(98 cm, 92 cm)',
    work([finished, body, least, level], pad) {
      watchEase(finished, body, body + least, level, pad);
      return pad.length('finished measure minus body measure', [mm(finished), ' − ', mm(body)], finished - body);
    },
  }),
  define({
    name: 'EASE.PERCENT',
    topic: 'fit',
    about: 'Ease as a share of the body’s measure.',
    asks: ['ease in percent', 'how much ease for this size', 'negative ease of a knit'],
    args: [FINISHED, BODY, { name: 'least', kind: 'percent', about: 'the least share that the cloth and style need; below 0 for cloth that stretches', usual: NOT_LESS }, LEVEL],
    gives: 'percent',
    rule: '(finished − body) ÷ body',
    source: 'exact geometry',
    example: '=EASE.PERCENT(98 cm, 92 cm)',
    work([finished, body, least, level], pad) {
      watchEase(finished, body, body * (1 + least), level, pad);
      const ease = pad.length('finished measure minus body measure', [mm(finished), ' − ', mm(body)], finished - body);
      return pad.percent('ease as a share of the body', [mm(ease), ' ÷ ', mm(body)], ease / body);
    },
  }),
  define({
    name: 'BUST.SPREAD',
    topic: 'fit',
    about: 'How far to spread each half of the front for a fuller bust, or fold it away for a smaller one (below 0).',
    asks: ['full bust adjustment', 'small bust adjustment', 'more room at the bust only', 'pattern chosen by the upper chest'],
    args: [
      { name: 'body', kind: 'length', about: 'the body’s bust', above: 0 },
      { name: 'chart', kind: 'length', about: 'the bust of the size that is cut', above: 0 },
    ],
    gives: 'length',
    rule: '(body − chart) ÷ 2: all of it goes into the front, half on each side',
    source: 'common practice',
    example: '=BUST.SPREAD(97 cm, 92 cm)',
    work([body, chart], pad) {
      const change = pad.length('the body’s bust minus the chart’s', [mm(body), ' − ', mm(chart)], body - chart);
      return pad.length('half of it on each side of the front', [mm(change), ' ÷ 2'], change / 2);
    },
  }),
  define({
    name: 'OPENING.ROOM',
    topic: 'fit',
    about: 'How much room is left when a closed edge passes over a girth; below 0 when it does not pass.',
    asks: ['will it go over my hips', 'does it need a zip', 'can I pull it on', 'closed waist over the shoulders'],
    args: [CLOSED, OVER, STRETCH],
    gives: 'length',
    rule: 'closed × (1 + stretch) − over',
    source: 'exact geometry',
    example: '=OPENING.ROOM(92 cm, 100 cm)',
    work([closed, over, stretch], pad) {
      const open = widest(closed, stretch, pad);
      if (open < over * (1 - 1e-9)) pad.caution('Closed, it will not pass: it needs an opening, or to measure at least this.', mm(over / (1 + stretch)), 'closed', 'atLeast');
      return pad.length('minus what it must pass', [mm(open), ' − ', mm(over)], open - over);
    },
  }),
  define({
    name: 'OPENING.LENGTH',
    topic: 'fit',
    about: 'The least length of a slit, zip or placket with which an edge passes over a girth; it must also reach to where the garment itself is wide enough.',
    asks: ['how long must the zip be', 'length of a placket', 'how long an opening'],
    args: [CLOSED, OVER, STRETCH],
    gives: 'length',
    rule: '(over − closed × (1 + stretch)) ÷ 2, at least 0: a slit opens an edge by its two sides',
    source: 'exact geometry',
    example: '=OPENING.LENGTH(78 cm, 100 cm)',
    work([closed, over, stretch], pad) {
      const open = widest(closed, stretch, pad);
      const lacks = pad.length('what the edge lacks, 0 where it passes', [mm(over), ' − ', mm(open)], Math.max(0, over - open));
      return pad.length('shared by the two sides of the slit', [mm(lacks), ' ÷ ', plain(2)], lacks / 2);
    },
  }),
];
