/**
 * Pleats. A knife pleat has one fold, a box or inverted pleat two; each fold
 * takes up twice its depth. Pleats lie side by side, one each `spacing`.
 */
import { define, mm, plain } from './define.ts';
import type { Pad } from './define.ts';

const KINDS = ['knife', 'box', 'inverted'] as const;
type Kind = (typeof KINDS)[number];

const CLOTH = { name: 'cloth', kind: 'length', about: 'flat width of the cloth, without seam allowances', above: 0 } as const;
const FINISHED = { name: 'finished', kind: 'length', about: 'width when pleated', above: 0 } as const;
const PLEATS = { name: 'pleats', kind: 'count', about: 'how many pleats' } as const;
const DEPTH = { name: 'depth', kind: 'length', about: 'depth of one fold, from its edge to its inner edge', atLeast: 0 } as const;
const WHICH = { name: 'kind', kind: 'choice', about: 'knife, box or inverted', choices: KINDS } as const;
const KIND = { ...WHICH, usual: 'knife' } as const;

const foldsOf = (kind: Kind): number => (kind === 'knife' ? 1 : 2);

function countFolds(pleats: number, kind: Kind, pad: Pad): number {
  const each = foldsOf(kind);
  return pad.number(`folds, ${each === 1 ? 'one' : 'two'} to a ${kind} pleat`, [plain(pleats), ' × ', plain(each)], pleats * each);
}

const WHY: Readonly<Record<Kind, string>> = {
  knife: 'a fold is deeper than the pleats are apart',
  box: 'a fold is deeper than half of the face of its pleat',
  inverted: 'a fold is deeper than half of the space that a pleat has',
};

/** The greatest depth of a fold with which pleats do not lie over one another. */
const roomFor = (spacing: number, kind: Kind): number => spacing / foldsOf(kind);

function watchOverlap(depth: number, spacing: number, kind: Kind, pad: Pad): void {
  const room = roomFor(spacing, kind);
  if (depth > room * (1 + 1e-9)) pad.caution(`These pleats overlap on the wrong side: ${WHY[kind]}. A depth with which they just meet is this.`, mm(room), 'depth', 'atMost');
}

export const PLEAT_FUNCTIONS = [
  define({
    name: 'PLEAT.DEPTH',
    topic: 'pleat',
    about: 'How deep each fold is when a width of cloth is pleated to a finished width.',
    asks: ['how deep should pleats be', 'pleat depth', 'how much cloth in each pleat'],
    args: [CLOTH, FINISHED, PLEATS, KIND],
    gives: 'length',
    rule: '(cloth − finished) ÷ (2 × folds), one fold for a knife pleat, two for a box or inverted pleat',
    source: 'exact geometry',
    example: '=PLEAT.DEPTH(300 cm, 100 cm, 20, "knife")',
    work([cloth, finished, pleats, kind], pad) {
      if (finished > cloth) pad.refuse(`A finished width of ${pad.say(finished)} needs more than the cloth’s ${pad.say(cloth)}: nothing is left to fold.`);
      const folds = countFolds(pleats, kind, pad);
      const take = pad.length('cloth to fold away', [mm(cloth), ' − ', mm(finished)], cloth - finished);
      const depth = pad.length('depth of one fold, which takes up twice that', [mm(take), ' ÷ (2 × ', plain(folds), ')'], take / (2 * folds));
      const room = roomFor(finished / pleats, kind);
      if (depth > room * (1 + 1e-9)) pad.caution(`These pleats overlap on the wrong side: ${WHY[kind]}. They just meet in cloth as wide as this.`, mm(finished + 2 * folds * room), 'cloth', 'atMost');
      return depth;
    },
  }),
  define({
    name: 'PLEAT.DEEPEN',
    topic: 'pleat',
    about: 'How much deeper each fold is at the waist than at the hip, for pleats that hang straight.',
    asks: ['pleats from hip to waist', 'how much to deepen pleats at the waist', 'pleated skirt smaller at the waist'],
    args: [
      { name: 'hip', kind: 'length', about: 'finished width at the hip', above: 0 },
      { name: 'waist', kind: 'length', about: 'finished width at the waist', above: 0 },
      PLEATS,
      KIND,
    ],
    gives: 'length',
    rule: '(hip − waist) ÷ (2 × folds)',
    source: 'exact geometry',
    example: '=PLEAT.DEEPEN(100 cm, 76 cm, 20, "knife")',
    work([hip, waist, pleats, kind], pad) {
      if (waist > hip) pad.caution('The waist is wider than the hip, so the folds get shallower towards the waist: for folds that get no shallower it measures at most this.', mm(hip), 'waist', 'atMost');
      const folds = countFolds(pleats, kind, pad);
      const difference = pad.length('hip minus waist', [mm(hip), ' − ', mm(waist)], hip - waist);
      return pad.length('shared by both layers of every fold', [mm(difference), ' ÷ (2 × ', plain(folds), ')'], difference / (2 * folds));
    },
  }),
  define({
    name: 'PLEAT.SPACING',
    topic: 'pleat',
    about: 'How far it is from the edge of one pleat to the edge of the next.',
    asks: ['distance between pleats', 'how wide is each pleat', 'how far apart are pleats'],
    args: [FINISHED, PLEATS],
    gives: 'length',
    rule: 'finished ÷ pleats',
    source: 'exact geometry',
    example: '=PLEAT.SPACING(92 cm, 18)',
    work([finished, pleats], pad) {
      return pad.length('finished width shared by the pleats', [mm(finished), ' ÷ ', plain(pleats)], finished / pleats);
    },
  }),
  define({
    name: 'PLEAT.COUNT',
    topic: 'pleat',
    about: 'How many pleats come nearest to a spacing.',
    asks: ['how many pleats', 'number of pleats'],
    args: [FINISHED, { name: 'spacing', kind: 'length', about: 'wanted distance from edge to edge', above: 0 }],
    gives: 'number',
    rule: 'finished ÷ spacing, to the nearest whole number, at least 1; a half goes up',
    source: 'CITS Dress Making, Trade Practical, exercise 48, National Instructional Media Institute, Government of India',
    example: '=PLEAT.COUNT(92 cm, 5 cm)',
    work([finished, spacing], pad) {
      const exact = pad.number('finished width counted in spacings', [mm(finished), ' ÷ ', mm(spacing)], finished / spacing);
      const pleats = Math.max(1, Math.floor(exact + 0.5 + 1e-9));
      if (Math.abs(exact - pleats) > 1e-9 * pleats) pad.caution('The wanted spacing does not go evenly into the width: this many pleats have a slightly different one, which is this.', mm(finished / pleats), 'spacing');
      return pad.number('the nearest whole number', [plain(exact)], pleats);
    },
  }),
  define({
    name: 'PLEAT.UNDERLAY',
    topic: 'pleat',
    about: 'How much cloth one pleat hides.',
    asks: ['how much cloth is hidden in a pleat', 'pleat take-up', 'underlay of a box pleat'],
    args: [DEPTH, KIND],
    gives: 'length',
    rule: '2 × folds × depth, one fold for a knife pleat, two for a box or inverted pleat',
    source: 'exact geometry',
    example: '=PLEAT.UNDERLAY(5 cm, "knife")',
    work([depth, kind], pad) {
      const folds = countFolds(1, kind, pad);
      return pad.length('both layers of every fold', ['2 × ', plain(folds), ' × ', mm(depth)], 2 * folds * depth);
    },
  }),
  define({
    name: 'PLEAT.CLOTH',
    topic: 'pleat',
    about: 'The flat width to cut for a pleated width.',
    asks: ['how much cloth for a pleated skirt', 'cut width for pleats', 'fabric for pleats'],
    args: [FINISHED, PLEATS, DEPTH, KIND, { name: 'allowance', kind: 'length', about: 'seam allowance at each of the two side edges', atLeast: 0, usual: 0 }],
    gives: 'length',
    rule: 'finished + 2 × folds × depth + 2 × allowance',
    source: 'exact geometry',
    example: '=PLEAT.CLOTH(92 cm, 18, 4 cm, "knife")',
    work([finished, pleats, depth, kind, allowance], pad) {
      const folds = countFolds(pleats, kind, pad);
      const take = pad.length('cloth folded away, both layers of every fold', ['2 × ', plain(folds), ' × ', mm(depth)], 2 * folds * depth);
      watchOverlap(depth, finished / pleats, kind, pad);
      return pad.length('finished width, folds and both seam allowances', [mm(finished), ' + ', mm(take), ' + 2 × ', mm(allowance)], finished + take + 2 * allowance);
    },
  }),
  define({
    name: 'PLEAT.AT',
    topic: 'pleat',
    about: 'Where the first fold of a pleat is marked on the flat cloth, counted from that of the first pleat.',
    asks: ['mark pleats', 'where does each pleat begin', 'pleat marking'],
    args: [{ name: 'spacing', kind: 'length', about: 'distance from edge to edge when pleated', above: 0 }, DEPTH, WHICH, { name: 'n', kind: 'count', about: 'which pleat, 1 for the first' }],
    gives: 'length',
    rule: '(n − 1) × (spacing + 2 × folds × depth)',
    source: 'exact geometry',
    example: '=PLEAT.AT(5 cm, 4 cm, "knife", 3)',
    work([spacing, depth, kind, n], pad) {
      const folds = countFolds(1, kind, pad);
      watchOverlap(depth, spacing, kind, pad);
      const each = pad.length('flat cloth from one pleat to the next', [mm(spacing), ' + 2 × ', plain(folds), ' × ', mm(depth)], spacing + 2 * folds * depth);
      return pad.length('as many times as there are pleats before it', ['(', plain(n), ' − 1) × ', mm(each)], (n - 1) * each);
    },
  }),
  define({
    name: 'PLEAT.ACROSS',
    topic: 'pleat',
    about: 'How many whole pleats one width of cloth makes, so that joins lie between pleats.',
    asks: ['how many pleats from one width', 'where to join cloth in a pleated skirt', 'pleats per panel'],
    args: [
      { name: 'width', kind: 'length', about: 'usable width of the cloth', above: 0 },
      { name: 'spacing', kind: 'length', about: 'distance from edge to edge when pleated', above: 0 },
      DEPTH,
      KIND,
      { name: 'allowance', kind: 'length', about: 'seam allowance at each edge of the width', atLeast: 0, usual: 0 },
    ],
    gives: 'number',
    rule: '(width − 2 × allowance) ÷ (spacing + 2 × folds × depth), down to a whole number',
    source: 'exact geometry',
    example: '=PLEAT.ACROSS(140 cm, 5 cm, 5 cm, "knife", 1.5 cm)',
    work([width, spacing, depth, kind, allowance], pad) {
      const folds = countFolds(1, kind, pad);
      watchOverlap(depth, spacing, kind, pad);
      const each = pad.length('flat cloth for one pleat', [mm(spacing), ' + 2 × ', plain(folds), ' × ', mm(depth)], spacing + 2 * folds * depth);
      const room = pad.length('cloth between the seams', [mm(width), ' − 2 × ', mm(allowance)], Math.max(0, width - 2 * allowance));
      const pleats = Math.floor(room / each + 1e-9);
      if (pleats === 0) pad.refuse(`One pleat takes ${pad.say(each)} of flat cloth, and between its seams this width has ${pad.say(room)}.`);
      return pad.number('down to whole pleats', [mm(room), ' ÷ ', mm(each)], pleats);
    },
  }),
  define({
    name: 'PLEAT.REST',
    topic: 'pleat',
    about: 'What each of the other pleats takes up when the first takes up an amount of its own.',
    asks: ['one pleat deeper than the others', 'uneven pleats', 'first pleat at centre front'],
    args: [
      { name: 'take-up', kind: 'length', about: 'cloth that all the pleats take up together', above: 0 },
      { name: 'first', kind: 'length', about: 'what the first takes up', atLeast: 0 },
      { ...PLEATS, about: 'how many pleats, the first with them' },
    ],
    gives: 'length',
    rule: '(take-up − first) ÷ (pleats − 1)',
    source: 'A Complete Course in Dressmaking, vol. 5 Skirts (Conover), pp. 63-69; exact arithmetic',
    example: '=PLEAT.REST(30 in, 2 1/8 in, 8)',
    work([takeUp, first, pleats], pad) {
      if (pleats < 2) pad.refuse('One pleat leaves no others: give at least 2.');
      if (first > takeUp) pad.refuse(`The first pleat cannot take up ${pad.say(first)}: all of them together have ${pad.say(takeUp)}.`);
      const rest = pad.length('left for the others', [mm(takeUp), ' − ', mm(first)], takeUp - first);
      return pad.length('shared by them', [mm(rest), ' ÷ (', plain(pleats), ' − 1)'], rest / (pleats - 1));
    },
  }),
];
