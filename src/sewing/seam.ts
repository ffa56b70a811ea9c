/** Seams let out and taken in. A seam has two edges, so a girth changes by twice the shift at each seam. */
import { degrees, define, mm, NOT_MORE, plain, share } from './define.ts';
import type { Pad } from './define.ts';

const SEAMS = { name: 'seams', kind: 'count', about: 'how many seams share the change' } as const;
const ALLOWANCE = { name: 'allowance', kind: 'length', about: 'seam allowance as it is now', atLeast: 0 } as const;
/** Common practice: less frays away or tears out. */
const LEAST = { name: 'least', kind: 'length', about: 'what must be left to hold the seam', atLeast: 0, usual: 6 } as const;
const CHANGE = { name: 'change', kind: 'length', about: 'change of the whole girth; below 0 to take in' } as const;

function edgesOf(seams: number, pad: Pad): number {
  return pad.number('edges, two to a seam', ['2 × ', plain(seams)], 2 * seams);
}

/** Letting an edge out further than its allowance has beyond what must hold the seam. `edges`: how many edges such a shift shares the change among. */
function watchShift(shift: number, edges: number, allowance: number, least: number, pad: Pad): void {
  const most = Math.max(0, allowance - least);
  if (shift > most * (1 + 1e-9)) pad.caution('The seam allowance has less than that to give: let the whole girth out by no more than this.', mm(most * edges), 'change', 'atMost');
}

export const SEAM_FUNCTIONS = [
  define({
    name: 'SEAM.SHIFT',
    topic: 'seam',
    about: 'How far each edge of each seam moves for a change of girth: out when the girth grows, in when it is below 0.',
    asks: ['how much to let out each seam', 'how much to take in at each seam', 'spread a change over the seams'],
    args: [CHANGE, SEAMS, { ...ALLOWANCE, about: 'seam allowance as it is now, to be told when it is too small', usual: NOT_MORE }, LEAST],
    gives: 'length',
    rule: 'change ÷ (2 × seams)',
    source: 'exact geometry; 6 mm at least is common practice',
    example: '=SEAM.SHIFT(2 cm, 4)',
    work([change, seams, allowance, least], pad) {
      const edges = edgesOf(seams, pad);
      watchShift(change / edges, edges, allowance, least, pad);
      return pad.length('change shared by all edges', [mm(change), ' ÷ ', plain(edges)], change / edges);
    },
  }),
  define({
    name: 'SEAM.SHARE',
    topic: 'seam',
    about: 'How far each edge of one seam moves when that seam takes a share of the change.',
    asks: ['take in more at the side than at the back', 'share a change unevenly', 'one seam takes half of it'],
    args: [CHANGE, { name: 'share', kind: 'percent', about: 'this seam’s share of the change; all the seams’ shares make 100 %', atLeast: 0, atMost: 1 }, { ...ALLOWANCE, about: 'seam allowance as it is now, to be told when it is too small', usual: NOT_MORE }, LEAST],
    gives: 'length',
    rule: 'change × share ÷ 2',
    source: 'exact geometry; 6 mm at least is common practice',
    example: '=SEAM.SHARE(-4 cm, 30 %)',
    work([change, part, allowance, least], pad) {
      const here = pad.length('what this seam takes of the change', [mm(change), ' × ', share(part)], change * part);
      watchShift(here / 2, 2 / part, allowance, least, pad);
      return pad.length('shared by its two edges', [mm(here), ' ÷ 2'], here / 2);
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
      const edges = edgesOf(seams, pad);
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
      if (left < least * (1 - 1e-9)) {
        if (allowance >= least) pad.caution('Too little seam allowance is left to hold the seam: move its edge out by no more than this.', mm(allowance - least), 'shift', 'atMost');
        else pad.caution('Too little seam allowance is left to hold the seam: to begin with it needs at least this.', mm(least + shift), 'allowance', 'atLeast');
      }
      return left;
    },
  }),
  define({
    name: 'SEAM.TAKEN',
    topic: 'seam',
    about: 'How much cloth stands in the seam allowance, at each edge, after a seam is taken in.',
    asks: ['what is left in the allowance after taking in', 'taken in beyond the allowance', 'should I trim the seam'],
    args: [ALLOWANCE, { name: 'in', kind: 'length', about: 'how far each edge is taken in beyond the old seam', atLeast: 0 }, { name: 'most', kind: 'length', about: 'the most that lies flat without trimming', atLeast: 0, usual: 25 }],
    gives: 'length',
    rule: 'allowance + in',
    source: 'exact geometry; trimming beyond 2.5 cm is common practice',
    example: '=SEAM.TAKEN(1/2 in, 3/8 in)',
    work([allowance, taken, most], pad) {
      const stands = pad.length('the old allowance and what was taken in', [mm(allowance), ' + ', mm(taken)], allowance + taken);
      if (stands > most * (1 + 1e-9)) {
        if (allowance <= most) pad.caution('So wide an allowance is bulky and pulls on a curve. Trim it once the fit is sure; without trimming, take in no more than this.', mm(most - allowance), 'in', 'atMost');
        else pad.caution('So wide an allowance is bulky and pulls on a curve. Once the fit is sure, trim it to this.', mm(most));
      }
      return stands;
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
      const edges = edgesOf(seams, pad);
      const spare = pad.length('allowance beyond what must be left', [mm(allowance), ' − ', mm(least)], Math.max(0, allowance - least));
      if (allowance < least) pad.caution('The seam allowance is less than what must be left, so nothing can be let out: it would need more than this.', mm(least), 'allowance', 'atLeast');
      return pad.length('that at all edges', [plain(edges), ' × ', mm(spare)], edges * spare);
    },
  }),
  define({
    name: 'SEAM.NEEDED',
    topic: 'seam',
    about: 'The seam allowance to cut so that the girth can be let out later by an amount.',
    asks: ['how wide to cut the allowance', 'allowance for a fitting', 'leave room to let it out'],
    args: [{ name: 'change', kind: 'length', about: 'the most that the girth may have to grow', atLeast: 0 }, SEAMS, LEAST],
    gives: 'length',
    rule: 'change ÷ (2 × seams) + least',
    source: 'exact geometry; 6 mm at least is common practice',
    example: '=SEAM.NEEDED(5 cm, 2)',
    work([change, seams, least], pad) {
      const edges = edgesOf(seams, pad);
      const shift = pad.length('change shared by all edges', [mm(change), ' ÷ ', plain(edges)], change / edges);
      return pad.length('and what must be left to hold the seam', [mm(shift), ' + ', mm(least)], shift + least);
    },
  }),
  define({
    name: 'SEAM.CURVE',
    topic: 'seam',
    about: 'How much longer a curved edge gets when it moves outwards from the middle of its curve by the same amount everywhere; shorter when below 0.',
    asks: ['lower a neckline', 'cut the armhole deeper', 'how much longer is the neck edge', 'seam allowance on a curve'],
    args: [
      { name: 'shift', kind: 'length', about: 'how far the edge moves away from the middle of its curve; below 0 for towards it' },
      { name: 'turn', kind: 'angle', about: 'how far its direction turns from end to end: 180° for a half circle, 90° for a quarter', above: 0, atMost: 360 },
    ],
    gives: 'length',
    rule: 'shift × turn × π ÷ 180°, whatever the curve’s shape',
    source: 'exact geometry: lengths of parallel curves',
    example: '=SEAM.CURVE(1 cm, 180°)',
    work([shift, turn], pad) {
      return pad.length('shift times the turn', [mm(shift), ' × ', degrees(turn), ' × π ÷ 180°'], (shift * turn * Math.PI) / 180);
    },
  }),
  define({
    name: 'STITCH.LENGTH',
    topic: 'seam',
    about: 'The length of one stitch when so many are counted over a length, such as 10 stitches to the inch.',
    asks: ['stitches per inch in mm', 'stitch length setting', 'how long is a stitch'],
    args: [{ name: 'stitches', kind: 'count', about: 'how many stitches are counted' }, { name: 'over', kind: 'length', about: 'the length that they cover, such as 1 in', above: 0 }],
    gives: 'length',
    rule: 'over ÷ stitches, shown in mm as machines have it',
    source: 'exact arithmetic',
    example: '=STITCH.LENGTH(10, 1 in)',
    work([stitches, over], pad) {
      pad.showIn('mm');
      return pad.length('the length shared by its stitches', [mm(over), ' ÷ ', plain(stitches)], over / stitches);
    },
  }),
];
