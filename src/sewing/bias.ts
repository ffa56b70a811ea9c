/** Binding cut on the bias from a square. */
import { define, mm, mm2 } from './define.ts';

const STRIP = { name: 'strip', kind: 'length', about: 'width of the strip', above: 0 } as const;

export const BIAS_FUNCTIONS = [
  define({
    name: 'BIAS.LENGTH',
    topic: 'bias',
    about: 'The length of strip in a square, by area; joins and ends take some of it.',
    asks: ['how much bias binding from a square', 'length of bias tape'],
    args: [{ name: 'side', kind: 'length', about: 'side of the square', above: 0 }, STRIP],
    gives: 'length',
    rule: 'side² ÷ strip',
    source: 'common practice',
    example: '=BIAS.LENGTH(20 in, 2 in)',
    work([side, strip], pad) {
      if (strip > side) pad.refuse(`A strip ${pad.say(strip)} wide does not come out of a square with sides of ${pad.say(side)}.`);
      const area = pad.area('area of the square', [mm(side), '²'], side * side);
      return pad.length('as a strip of this width', [mm2(area), ' ÷ ', mm(strip)], area / strip);
    },
  }),
  define({
    name: 'BIAS.SQUARE',
    topic: 'bias',
    about: 'The side of a square for a length of strip, by area; take more for joins and ends.',
    asks: ['what square for bias binding', 'cloth for bias tape'],
    args: [{ name: 'length', kind: 'length', about: 'length of strip that is needed', above: 0 }, STRIP],
    gives: 'length',
    rule: '√(length × strip)',
    source: 'common practice',
    example: '=BIAS.SQUARE(100 in, 3 1/2 in)',
    work([length, strip], pad) {
      const area = pad.area('area of the strip', [mm(length), ' × ', mm(strip)], length * strip);
      return pad.length('side of a square of that area', ['√', mm2(area)], Math.sqrt(area));
    },
  }),
  define({
    name: 'BIAS.STEP',
    topic: 'bias',
    about: 'How far apart to mark the edge of the cloth for bias strips of a width.',
    asks: ['mark bias strips', 'distance along the selvedge for a bias strip'],
    args: [STRIP],
    gives: 'length',
    rule: 'strip × √2',
    source: 'exact geometry: the true bias runs at 45 degrees to the edge',
    example: '=BIAS.STEP(2 in)',
    work([strip], pad) {
      return pad.length('along the edge, at 45 degrees to the strip', [mm(strip), ' × √2'], strip * Math.SQRT2);
    },
  }),
];
