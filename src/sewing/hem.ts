/**
 * Hems. On a curve the raw edge of a hem is longer than the fold, and longer by
 * as much again than the round that it is sewn to, which lies a hem's depth
 * above the fold.
 */
import { define, mm, NOT_MORE, plain } from './define.ts';
import type { Pad } from './define.ts';

const HEM = { name: 'hem', kind: 'length', about: 'how far the hem is turned up', atLeast: 0 } as const;
const PART = { name: 'part', kind: 'number', about: 'part of a whole circle', above: 0, atMost: 2 } as const;
/** From memory: firm cotton eases about so much before it puckers, wool rather more. */
export const EASES = 0.05;
const MOST = { name: 'most', kind: 'percent', about: 'how much the cloth eases before it puckers; try it on a scrap', above: 0, atMost: 1, usual: EASES } as const;

/** The raw edge against the round that it is sewn to: 2 × hem ÷ (radius − hem). */
export function watchCurve(hem: number, radius: number, most: number, pad: Pad): void {
  if (hem * (2 + most) > most * radius * (1 + 1e-9)) {
    pad.caution('On so tight a curve this hem puckers: its raw edge has more to ease in than the cloth takes. Turn up no more than this, or face the edge.', mm((most * radius) / (2 + most)), 'hem', 'atMost');
  }
}

export const HEM_FUNCTIONS = [
  define({
    name: 'HEM.FULLNESS',
    topic: 'hem',
    about: 'How much longer the raw edge of a hem is than its fold, on a skirt cut in a circle or part of one.',
    asks: ['fullness of a hem on a circle skirt', 'hem of a curved edge', 'how much longer is the cut edge'],
    args: [HEM, PART],
    gives: 'length',
    rule: '2 × π × part × hem; against the round that it is sewn to it is twice as much, as HEM.EASED has it',
    source: 'exact geometry',
    example: '=HEM.FULLNESS(2 cm, 1/2)',
    work([hem, part], pad) {
      pad.length('for comparison, against the round that it is sewn to, a hem’s depth above the fold', ['4 × π × ', plain(part), ' × ', mm(hem)], 4 * Math.PI * part * hem);
      return pad.length('against the fold: the difference of the two rounds', ['2 × π × ', plain(part), ' × ', mm(hem)], 2 * Math.PI * part * hem);
    },
  }),
  define({
    name: 'HEM.EASED',
    topic: 'hem',
    about: 'How much of its length the raw edge of a hem must lose where it is sewn down, on a skirt cut in a circle or part of one.',
    asks: ['how much hem to ease on a circle skirt', 'why does my hem pucker', 'ease in a curved hem'],
    args: [HEM, PART, { name: 'radius', kind: 'length', about: 'from the centre of the circle to the fold, to be told when the curve is too tight', above: 0, usual: NOT_MORE }, MOST],
    gives: 'length',
    rule: '4 × π × part × hem',
    source: 'exact geometry; how much cloth eases is from memory',
    example: '=HEM.EASED(2 cm, 1/2)',
    work([hem, part, radius, most], pad) {
      if (Number.isFinite(radius)) watchCurve(hem, radius, most, pad);
      pad.length('the raw edge against the fold', ['2 × π × ', plain(part), ' × ', mm(hem)], 2 * Math.PI * part * hem);
      return pad.length('and the fold against the round a hem’s depth above it, as much again', ['4 × π × ', plain(part), ' × ', mm(hem)], 4 * Math.PI * part * hem);
    },
  }),
  define({
    name: 'HEM.CURVE',
    topic: 'hem',
    about: 'The share of its length that the raw edge of a hem must lose on a curve.',
    asks: ['will this hem ease', 'deepest hem on a curve', 'hem of a circle skirt'],
    args: [HEM, { name: 'radius', kind: 'length', about: 'from the centre of the curve to the fold', above: 0 }, MOST],
    gives: 'percent',
    rule: '2 × hem ÷ (radius − hem)',
    source: 'exact geometry; how much cloth eases is from memory',
    example: '=HEM.CURVE(2 cm, 83 cm)',
    work([hem, radius, most], pad) {
      if (hem >= radius) pad.refuse(`A hem of ${pad.say(hem)} reaches the centre of a curve with a radius of ${pad.say(radius)}.`);
      watchCurve(hem, radius, most, pad);
      const sewn = pad.length('radius of the round that the raw edge is sewn to', [mm(radius), ' − ', mm(hem)], radius - hem);
      return pad.percent('what the raw edge has more, as a share of it', ['2 × ', mm(hem), ' ÷ ', mm(sewn)], (2 * hem) / sewn);
    },
  }),
  define({
    name: 'HEM.CUT',
    topic: 'hem',
    about: 'The length to cut for a finished length, with the seam above, the hem and what its raw edge is turned under.',
    asks: ['cut length of a skirt', 'add hem and seam allowance'],
    args: [
      { name: 'finished', kind: 'length', about: 'finished length', above: 0 },
      { name: 'seam', kind: 'length', about: 'seam allowance at the top', atLeast: 0 },
      { name: 'hem', kind: 'length', about: 'hem allowance that is turned up', atLeast: 0 },
      { name: 'under', kind: 'length', about: 'what is turned under at the raw edge', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'finished + seam + hem + under',
    source: 'exact arithmetic',
    example: '=HEM.CUT(58.5 cm, 1.5 cm, 4 cm, 1 cm)',
    work([finished, seam, hem, under], pad) {
      return pad.length('all together', [mm(finished), ' + ', mm(seam), ' + ', mm(hem), ' + ', mm(under)], finished + seam + hem + under);
    },
  }),
  define({
    name: 'HEM.LEFT',
    topic: 'hem',
    about: 'How much hem is left to turn up when a hem is let down.',
    asks: ['let down a hem', 'how much longer can I make it', 'hem left after lengthening'],
    args: [
      { name: 'hem', kind: 'length', about: 'all the cloth in the hem as it is, turn-under with it', atLeast: 0 },
      { name: 'down', kind: 'length', about: 'how much longer the garment is to be; below 0 for shorter' },
      { name: 'least', kind: 'length', about: 'what must be left to turn up and under', atLeast: 0, usual: 20 },
    ],
    gives: 'length',
    rule: 'hem − down',
    source: 'exact arithmetic; 2 cm at least is common practice',
    example: '=HEM.LEFT(5 cm, 2 cm)',
    work([hem, down, least], pad) {
      if (down > hem) pad.refuse(`The hem cannot be let down by ${pad.say(down)}: it holds only ${pad.say(hem)} of cloth.`);
      const left = pad.length('cloth in the hem minus what is let down', [mm(hem), ' − ', mm(down)], hem - down);
      if (left < least * (1 - 1e-9)) {
        if (hem >= least) pad.caution('Too little is left to turn up: face the hem, or let it down by no more than this.', mm(hem - least), 'down', 'atMost');
        else pad.caution('Too little is left to turn up: face the hem, which to begin with would have to hold at least this.', mm(least + down), 'hem', 'atLeast');
      }
      return left;
    },
  }),
  define({
    name: 'HEM.DEPTH',
    topic: 'hem',
    about: 'The hem that uses up what a length of cloth has beyond the finished length.',
    asks: ['how deep a hem does the cloth allow', 'use all the cloth for the hem'],
    args: [
      { name: 'cut', kind: 'length', about: 'length of the cut piece', above: 0 },
      { name: 'finished', kind: 'length', about: 'finished length', above: 0 },
      { name: 'seam', kind: 'length', about: 'seam allowance at the top', atLeast: 0 },
      { name: 'under', kind: 'length', about: 'what is turned under at the raw edge', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'cut − finished − seam − under',
    source: 'exact arithmetic',
    example: '=HEM.DEPTH(65 cm, 58.5 cm, 1.5 cm, 1 cm)',
    work([cut, finished, seam, under], pad) {
      const hem = cut - finished - seam - under;
      if (hem < -1e-9 * cut) pad.refuse(`The piece is too short by ${pad.say(-hem)} for this finished length, seam and turn-under, with no hem at all.`);
      return pad.length('what is left for the hem', [mm(cut), ' − ', mm(finished), ' − ', mm(seam), ' − ', mm(under)], Math.max(0, hem));
    },
  }),
];
