/** Hems. */
import { define, mm, plain } from './define.ts';

export const HEM_FUNCTIONS = [
  define({
    name: 'HEM.FULLNESS',
    topic: 'hem',
    about: 'How much longer the raw edge of a turned-up hem is than the circle it is sewn to.',
    asks: ['how much hem to ease on a circle skirt', 'hem of a curved edge', 'why does my hem pucker'],
    args: [
      { name: 'hem', kind: 'length', about: 'how far the hem is turned up', atLeast: 0 },
      { name: 'part', kind: 'number', about: 'part of a whole circle', above: 0, atMost: 2 },
    ],
    gives: 'length',
    rule: '2 × π × part × hem',
    source: 'exact geometry',
    example: '=HEM.FULLNESS(2 cm, 1/2)',
    work([hem, part], pad) {
      return pad.length('the difference of the two rounds', ['2 × π × ', plain(part), ' × ', mm(hem)], 2 * Math.PI * part * hem);
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
];
