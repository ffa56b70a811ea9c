/** Seams let out and taken in. A seam has two edges, so a girth changes by twice the shift at each seam. */
import { define, mm, plain } from './define.ts';

const SEAMS = { name: 'seams', kind: 'count', about: 'how many seams share the change' } as const;
const ALLOWANCE = { name: 'allowance', kind: 'length', about: 'seam allowance as it is now', atLeast: 0 } as const;
/** Common practice: less frays away or tears out. */
const LEAST = { name: 'least', kind: 'length', about: 'what must be left to hold the seam', atLeast: 0, usual: 6 } as const;

export const SEAM_FUNCTIONS = [
  define({
    name: 'SEAM.SHIFT',
    topic: 'seam',
    about: 'How far each edge of each seam moves for a change of girth: out when the girth grows, in when it is below 0.',
    asks: ['how much to let out each seam', 'how much to take in at each seam', 'spread a change over the seams'],
    args: [{ name: 'change', kind: 'length', about: 'change of the whole girth; below 0 to take in' }, SEAMS],
    gives: 'length',
    rule: 'change ÷ (2 × seams)',
    source: 'exact geometry',
    example: '=SEAM.SHIFT(2 cm, 4)',
    work([change, seams], pad) {
      const edges = pad.number('edges, two to a seam', ['2 × ', plain(seams)], 2 * seams);
      return pad.length('change shared by all edges', [mm(change), ' ÷ ', plain(edges)], change / edges);
    },
  }),
  define({
    name: 'SEAM.GAIN',
    topic: 'seam',
    about: 'How much the girth changes when each edge of each seam moves.',
    asks: ['how much wider if I let out the seams', 'how much does taking in the side seams take off', 'what a seam shift adds'],
    args: [{ name: 'shift', kind: 'length', about: 'how far each edge moves out; below 0 for in' }, SEAMS],
    gives: 'length',
    rule: '2 × seams × shift',
    source: 'exact geometry',
    example: '=SEAM.GAIN(1/4 in, 2)',
    work([shift, seams], pad) {
      const edges = pad.number('edges, two to a seam', ['2 × ', plain(seams)], 2 * seams);
      return pad.length('shift at all edges', [plain(edges), ' × ', mm(shift)], edges * shift);
    },
  }),
  define({
    name: 'SEAM.LEFT',
    topic: 'seam',
    about: 'How much seam allowance is left when a seam is let out, or stands when it is taken in.',
    asks: ['is there enough seam allowance to let out', 'seam allowance left', 'can I let this seam out'],
    args: [ALLOWANCE, { name: 'shift', kind: 'length', about: 'how far the edge moves out; below 0 for in' }, LEAST],
    gives: 'length',
    rule: 'allowance − shift',
    source: 'exact geometry; 6 mm at least is common practice',
    example: '=SEAM.LEFT(1.5 cm, 0.8 cm)',
    work([allowance, shift, least], pad) {
      if (shift > allowance) {
        pad.refuse(`The seam cannot be let out by ${pad.say(shift)}: its allowance is only ${pad.say(allowance)}, so there would be no cloth to sew.`);
      }
      const left = pad.length('allowance minus the shift', [mm(allowance), ' − ', mm(shift)], allowance - shift);
      if (left < least * (1 - 1e-9)) pad.caution('Too little seam allowance is left to hold the seam.', mm(least));
      return left;
    },
  }),
  define({
    name: 'SEAM.ROOM',
    topic: 'seam',
    about: 'The most that a girth can grow by letting out its seams.',
    asks: ['how much can I let this out', 'greatest let-out', 'how much room is in the seams'],
    args: [ALLOWANCE, SEAMS, LEAST],
    gives: 'length',
    rule: '2 × seams × (allowance − least)',
    source: 'exact geometry; 6 mm at least is common practice',
    example: '=SEAM.ROOM(1.5 cm, 2, 0.6 cm)',
    work([allowance, seams, least], pad) {
      const edges = pad.number('edges, two to a seam', ['2 × ', plain(seams)], 2 * seams);
      const spare = pad.length('allowance beyond what must be left', [mm(allowance), ' − ', mm(least)], Math.max(0, allowance - least));
      if (allowance < least) pad.caution('The seam allowance is less than what must be left, so nothing can be let out.', mm(least));
      return pad.length('that at all edges', [plain(edges), ' × ', mm(spare)], edges * spare);
    },
  }),
];
