/** Circle skirts, whole or in part. The cut edge at the waist lies nearer the centre than the seam, so an allowance is taken off the radius. */
import { fewestPieces, widestOuter } from './circle-pieces.ts';
import { define, mm, NOT_MORE, plain } from './define.ts';
import type { Pad } from './define.ts';
import { EASES, watchCurve } from './hem.ts';

const PART = { name: 'part', kind: 'number', about: 'part of a whole circle: 1, 3/4, 1/2, 1/4 or any other, up to 2', above: 0, atMost: 2 } as const;
const RADIUS = { name: 'radius', kind: 'length', about: 'radius at the waist, from the centre of the circle', above: 0 } as const;
const HEM = { name: 'hem', kind: 'length', about: 'hem allowance', atLeast: 0, usual: 0 } as const;
const WIDTH = { name: 'width', kind: 'length', about: 'usable width of the cloth', above: 0 } as const;
const EDGES = { name: 'allowance', kind: 'length', about: 'seam allowance at the waist and at each straight edge', atLeast: 0, usual: 0 } as const;
const STRAIGHT = { name: 'allowance', kind: 'length', about: 'seam allowance at each straight edge', atLeast: 0, usual: 0 } as const;
const SEAM_RADIUS = { ...RADIUS, about: 'radius of the waist seam, from the centre of the circle' } as const;
const LENGTH = { name: 'length', kind: 'length', about: 'from the waist to the hem', atLeast: 0 } as const;
const TURN = 2 * Math.PI;

/** The cut edge must lie on the cloth in one piece: `hem` and `length` add up to what is cut below the waist seam. */
function watchWidth(radius: number, outer: number, hem: number, part: number, width: number, allowance: number, pad: Pad): void {
  const most = widestOuter(Math.max(0, radius - allowance), part, width, allowance);
  if (outer <= most * (1 + 1e-9)) return;
  const longest = most - radius - hem;
  if (longest > 0) pad.caution('The cloth is too narrow to cut this in one piece: join pieces, or make the finished length no more than this.', mm(longest), 'length', 'atMost');
  else pad.caution('The cloth is too narrow to cut this in one piece, whatever its length: join pieces, or take a smaller part of a circle. CIRCLE.PIECES has how many.');
}

const TOO_FULL = 'More than a whole circle cannot be cut in one: it needs joins.';

export const CIRCLE_FUNCTIONS = [
  define({
    name: 'CIRCLE.RADIUS',
    topic: 'circle',
    about: 'The radius of the cutting line at the waist of a circle skirt.',
    asks: ['radius of a circle skirt', 'how to cut a circle skirt', 'half circle skirt waist'],
    args: [
      { name: 'waist', kind: 'length', about: 'waist seam, all the way round', above: 0 },
      PART,
      { name: 'allowance', kind: 'length', about: 'seam allowance at the waist', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'waist ÷ (2 × π × part) − allowance',
    source: 'exact geometry',
    example: '=CIRCLE.RADIUS(72 cm, 1/2, 1.5 cm)',
    work([waist, part, allowance], pad) {
      if (part > 1 + 1e-9) pad.caution(`${TOO_FULL} The part that can be is at most this.`, plain(1), 'part', 'atMost');
      const radius = pad.length('radius of the waist seam', [mm(waist), ' ÷ (2 × π × ', plain(part), ')'], waist / (TURN * part));
      if (allowance >= radius) pad.refuse(`The seam allowance of ${pad.say(allowance)} reaches the centre of the circle, whose waist seam has a radius of ${pad.say(radius)}: take a smaller allowance or a smaller part.`);
      return allowance === 0 ? radius : pad.length('less the seam allowance', [mm(radius), ' − ', mm(allowance)], radius - allowance);
    },
  }),
  define({
    name: 'CIRCLE.OUTER',
    topic: 'circle',
    about: 'The radius of the cutting line at the hem of a circle skirt.',
    asks: ['outer radius of a circle skirt', 'where to cut the hem of a circle skirt', 'does a circle skirt fit my cloth in one piece'],
    args: [SEAM_RADIUS, { ...LENGTH, about: 'finished length' }, HEM, { ...PART, usual: 1 }, { ...WIDTH, about: 'usable width of the cloth, to be told when it is too narrow', usual: NOT_MORE }, EDGES],
    gives: 'length',
    rule: 'radius + length + hem',
    source: 'exact geometry; how much hem a curve eases is from memory',
    example: '=CIRCLE.OUTER(CIRCLE.RADIUS(72 cm, 1/2), 60 cm, 2 cm, 1/2)',
    work([radius, length, hem, part, width, allowance], pad) {
      const outer = radius + length + hem;
      if (Number.isFinite(width)) watchWidth(radius, outer, hem, part, width, allowance, pad);
      watchCurve(hem, radius + length, EASES, pad);
      return pad.length('from the centre to the cut edge', [mm(radius), ' + ', mm(length), ' + ', mm(hem)], outer);
    },
  }),
  define({
    name: 'CIRCLE.LONGEST',
    topic: 'circle',
    about: 'The longest finished circle skirt that can be cut from a width of cloth in one piece.',
    asks: ['longest circle skirt without a join', 'how long a circle skirt fits the cloth', 'greatest length of a half circle skirt'],
    args: [SEAM_RADIUS, PART, WIDTH, HEM, EDGES],
    gives: 'length',
    rule: 'the greatest outer radius that lies on the width, with a straight edge or the middle along or across the cloth, − radius − hem; half the width for a whole circle',
    source: 'exact geometry',
    example: '=CIRCLE.LONGEST(CIRCLE.RADIUS(72 cm, 1), 1, 150 cm, 2 cm)',
    work([radius, part, width, hem, allowance], pad) {
      const outer = pad.length('greatest radius of the cut edge on this width', [plain(part), ' of a circle on ', mm(width)], widestOuter(Math.max(0, radius - allowance), part, width, allowance));
      if (outer - radius - hem <= 0) pad.refuse(`Cloth ${pad.say(width)} wide is too narrow for this skirt in one piece: CIRCLE.PIECES has how many pieces it takes.`);
      return pad.length('less the waist’s radius and the hem', [mm(outer), ' − ', mm(radius), ' − ', mm(hem)], outer - radius - hem);
    },
  }),
  define({
    name: 'CIRCLE.SWEEP',
    topic: 'circle',
    about: 'The length round the hem of a circle skirt.',
    asks: ['hem round of a circle skirt', 'how much trim for the hem', 'sweep of a skirt'],
    args: [RADIUS, LENGTH, PART],
    gives: 'length',
    rule: '2 × π × part × (radius + length)',
    source: 'exact geometry',
    example: '=CIRCLE.SWEEP(CIRCLE.RADIUS(72 cm, 1/2), 60 cm, 1/2)',
    work([radius, length, part], pad) {
      const outer = pad.length('radius of the hem', [mm(radius), ' + ', mm(length)], radius + length);
      return pad.length('that part of a circle round it', ['2 × π × ', plain(part), ' × ', mm(outer)], TURN * part * outer);
    },
  }),
  define({
    name: 'CIRCLE.PART',
    topic: 'circle',
    about: 'The part of a circle that a waist and a radius make.',
    asks: ['what part of a circle', 'how full is this circle skirt', 'which circle fits the cloth'],
    args: [{ name: 'waist', kind: 'length', about: 'waist seam, all the way round', above: 0 }, RADIUS],
    gives: 'number',
    rule: 'waist ÷ (2 × π × radius)',
    source: 'exact geometry',
    example: '=CIRCLE.PART(72 cm, 23 cm)',
    work([waist, radius], pad) {
      const round = pad.length('round a whole circle of this radius', ['2 × π × ', mm(radius)], TURN * radius);
      const part = pad.number('the waist as a part of it', [mm(waist), ' ÷ ', mm(round)], waist / round);
      if (part > 1 + 1e-9) pad.caution(`${TOO_FULL} A whole circle for this waist has a radius of this.`, mm(waist / TURN), 'radius', 'atLeast');
      return part;
    },
  }),
  define({
    name: 'CIRCLE.PIECES',
    topic: 'circle',
    about: 'The fewest equal pieces that a circle skirt must be cut in for a width of cloth.',
    asks: ['will a circle skirt fit on the cloth', 'how many pieces for a circle skirt', 'circle skirt on narrow cloth'],
    args: [RADIUS, LENGTH, PART, WIDTH, STRAIGHT],
    gives: 'number',
    rule: 'the fewest equal sectors that lie within the width, with a straight edge or the middle along or across the cloth',
    source: 'exact geometry',
    example: '=CIRCLE.PIECES(20 cm, 62 cm, 1, 150 cm, 1.5 cm)',
    work([radius, length, part, width, allowance], pad) {
      return fewestPieces(radius, radius + length, part, width, allowance, pad).pieces;
    },
  }),
  define({
    name: 'CIRCLE.CLOTH',
    topic: 'circle',
    about: 'The length of cloth for a circle skirt cut in the fewest equal pieces, laid one after another without nesting.',
    asks: ['how much cloth for a circle skirt', 'fabric for a half circle skirt', 'length of cloth for a circle'],
    args: [RADIUS, LENGTH, PART, WIDTH, STRAIGHT],
    gives: 'length',
    rule: 'rows of pieces × length of a piece along the cloth',
    source: 'exact geometry',
    example: '=CIRCLE.CLOTH(20 cm, 62 cm, 1, 150 cm, 1.5 cm)',
    work([radius, length, part, width, allowance], pad) {
      const { pieces, along, across } = fewestPieces(radius, radius + length, part, width, allowance, pad);
      pad.length('each piece takes, along the cloth', [], along);
      pad.length('and across it', [], across);
      const side = pad.number('pieces side by side', [mm(width), ' ÷ ', mm(across), ', rounded down'], Math.floor(width / across + 1e-9));
      const rows = pad.number('rows', [plain(pieces), ' ÷ ', plain(side), ', rounded up'], Math.ceil(pieces / side));
      return pad.length('rows times the length of a piece', [plain(rows), ' × ', mm(along)], rows * along);
    },
  }),
];
