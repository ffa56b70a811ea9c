/** Gores and godets: tapered panels and inserted sectors. */
import { define, mm, plain } from './define.ts';

const LENGTH = { name: 'length', kind: 'length', about: 'length of the godet, from its point to the hem', above: 0 } as const;

export const GORE_FUNCTIONS = [
  define({
    name: 'GORE.WIDTH',
    topic: 'gore',
    about: 'How wide each of several equal gores is cut at a level.',
    asks: ['width of each gore', 'how wide are the panels', 'gored skirt'],
    args: [
      { name: 'girth', kind: 'length', about: 'finished girth at this level', above: 0 },
      { name: 'gores', kind: 'count', about: 'how many equal gores' },
      { name: 'allowance', kind: 'length', about: 'seam allowance at each edge', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'girth ÷ gores + 2 × allowance',
    source: 'The Perfect Dressmaking System (1914), p. 13, for the girth’s share; exact geometry',
    example: '=GORE.WIDTH(40 in, 5, 5/8 in)',
    work([girth, gores, allowance], pad) {
      const each = pad.length('girth shared by the gores', [mm(girth), ' ÷ ', plain(gores)], girth / gores);
      return allowance === 0 ? each : pad.length('and a seam allowance at both edges', [mm(each), ' + 2 × ', mm(allowance)], each + 2 * allowance);
    },
  }),
  define({
    name: 'GODET.ANGLE',
    topic: 'gore',
    about: 'The angle at the point of a godet whose hem has a given length.',
    asks: ['angle of a godet', 'how to draw a godet'],
    args: [{ name: 'arc', kind: 'length', about: 'length of its hem', above: 0 }, LENGTH],
    gives: 'angle',
    rule: 'arc ÷ length × 180° ÷ π, at most a whole circle',
    source: 'exact geometry',
    example: '=GODET.ANGLE(20 cm, 30 cm)',
    work([arc, length], pad) {
      const ratio = pad.number('hem counted in lengths', [mm(arc), ' ÷ ', mm(length)], arc / length);
      if (ratio > 2 * Math.PI) pad.refuse(`A hem of ${pad.say(arc)} is more than a whole circle of radius ${pad.say(length)}: make the godet longer or its hem shorter.`);
      return pad.angle('as an angle', [plain(ratio), ' × 180° ÷ π'], (ratio * 180) / Math.PI);
    },
  }),
  define({
    name: 'GODET.ARC',
    topic: 'gore',
    about: 'The hem of a godet that is a part of a circle.',
    asks: ['hem of a godet', 'how much does a godet add'],
    args: [LENGTH, { name: 'part', kind: 'number', about: 'part of a whole circle, such as 1/4', above: 0, atMost: 1 }],
    gives: 'length',
    rule: '2 × π × part × length',
    source: 'exact geometry',
    example: '=GODET.ARC(30 cm, 1/4)',
    work([length, part], pad) {
      return pad.length('that part of a circle of this radius', ['2 × π × ', plain(part), ' × ', mm(length)], 2 * Math.PI * part * length);
    },
  }),
];
