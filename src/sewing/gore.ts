/** Gores and godets: tapered panels and inserted sectors. */
import { define, mm, plain } from './define.ts';
import type { Pad } from './define.ts';

const GORE_LENGTH = { name: 'length', kind: 'length', about: 'along the middle of the gore, between the two levels', above: 0 } as const;
const TOP = { name: 'top', kind: 'length', about: 'width of the gore at the upper level', above: 0 } as const;
const BOTTOM = { name: 'bottom', kind: 'length', about: 'its width at the lower level', above: 0 } as const;

function slant(length: number, top: number, bottom: number, pad: Pad): number {
  const flare = pad.length('how far each side leans out', ['(', mm(bottom), ' − ', mm(top), ') ÷ 2'], (bottom - top) / 2);
  return pad.length('slant of the side', ['√(', mm(length), '² + ', mm(flare), '²)'], Math.hypot(length, flare));
}

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
    name: 'GORE.SEAM',
    topic: 'gore',
    about: 'The length of the slanted side of a gore that is symmetric about its middle.',
    asks: ['length of a gore’s seam', 'side of a flared panel', 'why is the side seam longer'],
    args: [GORE_LENGTH, TOP, BOTTOM],
    gives: 'length',
    rule: '√(length² + ((bottom − top) ÷ 2)²)',
    source: 'exact geometry',
    example: '=GORE.SEAM(60 cm, 17 cm, 35 cm)',
    work([length, top, bottom], pad) {
      return slant(length, top, bottom, pad);
    },
  }),
  define({
    name: 'GORE.RISE',
    topic: 'gore',
    about: 'How far the hem of a gore is raised at its seams, so that the skirt is as long there as in the middle of the gore.',
    asks: ['curve the hem of a gored skirt', 'hem dips at the seams', 'level hem of a flared skirt'],
    args: [GORE_LENGTH, TOP, BOTTOM],
    gives: 'length',
    rule: '√(length² + ((bottom − top) ÷ 2)²) − length, measured up the seam',
    source: 'exact geometry',
    example: '=GORE.RISE(60 cm, 17 cm, 35 cm)',
    work([length, top, bottom], pad) {
      const side = slant(length, top, bottom, pad);
      return pad.length('less the length of the middle', [mm(side), ' − ', mm(length)], side - length);
    },
  }),
  define({
    name: 'GORE.CLOTH',
    topic: 'gore',
    about: 'The length of cloth for equal straight-sided gores, their middles along the cloth.',
    asks: ['how much cloth for a gored skirt', 'lay gores head to tail', 'cloth for six gores'],
    args: [
      { name: 'gores', kind: 'count', about: 'how many equal gores' },
      { ...GORE_LENGTH, about: 'length of a gore as cut' },
      { ...TOP, about: 'its width at the top as cut, seam allowances with it' },
      { ...BOTTOM, about: 'its width at the hem as cut' },
      { name: 'width', kind: 'length', about: 'usable width of the cloth', above: 0 },
      { name: 'way', kind: 'choice', about: 'any, when every other gore may lie head down; one, for cloth with a nap or a one-way print', choices: ['any', 'one'], usual: 'one' },
    ],
    gives: 'length',
    rule: 'rows × length; a row holds as many as fit: head to tail, n gores are n × (top + bottom) ÷ 2 + |bottom − top| ÷ 2 wide; all one way, n × the wider end',
    source: 'exact geometry',
    example: '=GORE.CLOTH(6, 65 cm, 20 cm, 38 cm, 140 cm, "any")',
    work([gores, length, top, bottom, width, way], pad) {
      const wide = Math.max(top, bottom);
      if (wide > width) pad.refuse(`A gore ${pad.say(wide)} wide does not go on cloth ${pad.say(width)} wide: take more gores, or join cloth.`);
      const middle = (top + bottom) / 2;
      const lean = Math.abs(bottom - top) / 2;
      const fit = way === 'one' ? width / wide : (width - lean) / middle;
      if (way === 'one') pad.number('gores side by side, all one way', [mm(width), ' ÷ ', mm(wide), ', rounded down'], Math.floor(fit + 1e-9));
      else pad.number('gores side by side, head to tail', ['(', mm(width), ' − ', mm(lean), ') ÷ ', mm(middle), ', rounded down'], Math.floor(fit + 1e-9));
      const side = Math.floor(fit + 1e-9);
      const rows = pad.number('rows', [plain(gores), ' ÷ ', plain(side), ', rounded up'], Math.ceil(gores / side));
      return pad.length('rows times the length of a gore', [plain(rows), ' × ', mm(length)], rows * length);
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
