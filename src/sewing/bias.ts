/** Binding cut on the bias from a square. The area rule is what people use; what comes out whole is less. */
import { continuous, oneByOne, sideFor } from './bias-geometry.ts';
import { define, mm, mm2, plain } from './define.ts';

const STRIP = { name: 'strip', kind: 'length', about: 'width of the strip', above: 0 } as const;
const SIDE = { name: 'side', kind: 'length', about: 'side of the square', above: 0 } as const;
const NEEDED = { name: 'length', kind: 'length', about: 'length of strip that is needed', above: 0 } as const;
/** A quarter of an inch, common practice for joins of binding. */
const SEAM = { name: 'seam', kind: 'length', about: 'seam allowance of each join', atLeast: 0, usual: 6.35 } as const;
const DRAWING = 'exact geometry; agrees to 1/8 in with a worked drawing of a 10 1/2 in square and 1 in strips, which yields 96 1/2 in';

export const BIAS_FUNCTIONS = [
  define({
    name: 'BIAS.LENGTH',
    topic: 'bias',
    about: 'The length of strip in a square, by area; joins and part strips take some of it, as BIAS.CONTINUOUS has it.',
    asks: ['how much bias binding from a square', 'length of bias tape'],
    args: [SIDE, STRIP, SEAM],
    gives: 'length',
    rule: 'side² ÷ strip',
    source: 'common practice; the exact figure beside it is exact geometry',
    example: '=BIAS.LENGTH(20 in, 2 in)',
    work([side, strip, seam], pad) {
      if (strip > side) pad.refuse(`A strip ${pad.say(strip)} wide does not come out of a square with sides of ${pad.say(side)}.`);
      const exact = continuous(side, strip, seam);
      pad.length('what the continuous method gives exactly, whole rounds only', [plain(exact.rounds), ' × ', mm(exact.round)], exact.whole);
      const area = pad.area('area of the square', [mm(side), '²'], side * side);
      const promised = area / strip;
      pad.length('the area promises more than that by', [mm(promised), ' − ', mm(exact.whole)], promised - exact.whole);
      pad.caution('By area this is more than can be cut: joins and part strips take some. The continuous method gives this.', mm(exact.whole));
      return pad.length('the area as a strip of this width', [mm2(area), ' ÷ ', mm(strip)], promised);
    },
  }),
  define({
    name: 'BIAS.CONTINUOUS',
    topic: 'bias',
    about: 'The length of one unbroken bias strip from a square that is cut once, sewn to a tube and cut round and round.',
    asks: ['continuous bias binding', 'bias tape in one piece', 'bias tube'],
    args: [SIDE, STRIP, SEAM],
    gives: 'length',
    rule: 'rounds × √2 × (side − 3 × seam), rounds = (side − seam) ÷ (√2 × strip), down to a whole number',
    source: DRAWING,
    example: '=BIAS.CONTINUOUS(10 1/2 in, 1 in, 1/4 in)',
    work([side, strip, seam], pad) {
      const { rounds, round, whole } = continuous(side, strip, seam);
      if (rounds < 1 || round <= 0) pad.refuse(`A square with sides of ${pad.say(side)} is too small for a strip ${pad.say(strip)} wide in this method.`);
      const apart = pad.length('between the bias edges once the two halves are joined', ['(', mm(side), ' − ', mm(seam), ') ÷ √2'], (side - seam) / Math.SQRT2);
      pad.number('whole strips between them', [mm(apart), ' ÷ ', mm(strip), ', rounded down'], rounds);
      pad.length('length of each round, after the join that makes the tube', ['√2 × (', mm(side), ' − 3 × ', mm(seam), ')'], round);
      pad.length('less than the area rule promises by', [mm(side), '² ÷ ', mm(strip), ' − ', mm(whole)], (side * side) / strip - whole);
      return pad.length('all the rounds', [plain(rounds), ' × ', mm(round)], whole);
    },
  }),
  define({
    name: 'BIAS.STRIPS',
    topic: 'bias',
    about: 'The length of strip from a square when strips are cut one by one from the diagonal outwards and joined.',
    asks: ['bias strips from a square', 'cut bias strips one by one', 'join bias strips'],
    args: [SIDE, STRIP, SEAM],
    gives: 'length',
    rule: '2 × (n × √2 × side − n² × strip) − (2 × n − 1) × 2 × √2 × seam, n = side ÷ (√2 × strip) whole strips in each half',
    source: 'exact geometry: lengths along the middle of each strip, joined on the straight grain',
    example: '=BIAS.STRIPS(20 in, 2 in, 1/4 in)',
    work([side, strip, seam], pad) {
      const { strips, cut, joins, whole } = oneByOne(side, strip, seam);
      if (strips < 1 || whole <= 0) pad.refuse(`A square with sides of ${pad.say(side)} is too small for strips ${pad.say(strip)} wide.`);
      pad.number('whole strips in each half of the square', [mm(side), ' ÷ (√2 × ', mm(strip), '), rounded down'], strips);
      pad.length('all of them, along their middles', ['2 × (', plain(strips), ' × √2 × ', mm(side), ' − ', plain(strips), '² × ', mm(strip), ')'], cut);
      const lost = pad.length('lost in the joins', [plain(joins), ' × 2 × √2 × ', mm(seam)], joins * 2 * Math.SQRT2 * seam);
      pad.length('less than the area rule promises by', [mm(side), '² ÷ ', mm(strip), ' − ', mm(whole)], (side * side) / strip - whole);
      return pad.length('what is left', [mm(cut), ' − ', mm(lost)], whole);
    },
  }),
  define({
    name: 'BIAS.SQUARE',
    topic: 'bias',
    about: 'The side of a square for a length of strip, by area; the joins need more, as BIAS.SIDE has it.',
    asks: ['what square for bias binding', 'cloth for bias tape'],
    args: [NEEDED, STRIP, SEAM],
    gives: 'length',
    rule: '√(length × strip)',
    source: 'common practice; the exact figure beside it is exact geometry',
    example: '=BIAS.SQUARE(100 in, 3 1/2 in)',
    work([length, strip, seam], pad) {
      const exact = sideFor(length, strip, seam);
      pad.length('the side that the continuous method needs exactly', [plain(exact.rounds), ' rounds of ', mm(exact.round)], exact.side);
      const area = pad.area('area of the strip', [mm(length), ' × ', mm(strip)], length * strip);
      const side = Math.sqrt(area);
      pad.length('the area rule falls short of that by', [mm(exact.side), ' − ', mm(side)], exact.side - side);
      pad.caution('By area this square is too small: joins and part strips take some. The continuous method needs this side.', mm(exact.side));
      return pad.length('side of a square of that area', ['√', mm2(area)], side);
    },
  }),
  define({
    name: 'BIAS.SIDE',
    topic: 'bias',
    about: 'The least side of a square that gives a length of bias strip by the continuous method.',
    asks: ['square for continuous bias binding', 'how big a square for bias tape', 'cloth for binding'],
    args: [NEEDED, STRIP, SEAM],
    gives: 'length',
    rule: 'for each number of rounds the larger of seam + rounds × √2 × strip and length ÷ (√2 × rounds) + 3 × seam; the least of these',
    source: DRAWING,
    example: '=BIAS.SIDE(96 1/2 in, 1 in, 1/4 in)',
    work([length, strip, seam], pad) {
      const { rounds, side } = sideFor(length, strip, seam);
      pad.number('rounds with which the square is smallest', [], rounds);
      const across = pad.length('for so many strips between the bias edges', [mm(seam), ' + ', plain(rounds), ' × √2 × ', mm(strip)], seam + rounds * Math.SQRT2 * strip);
      const along = pad.length('for the length in so many rounds', [mm(length), ' ÷ (√2 × ', plain(rounds), ') + 3 × ', mm(seam)], length / (rounds * Math.SQRT2) + 3 * seam);
      return pad.length('the larger of the two', [mm(across), ' or ', mm(along)], side);
    },
  }),
  define({
    name: 'BIAS.WIDTH',
    topic: 'bias',
    about: 'The width of strip to cut for a binding of a finished width.',
    asks: ['how wide to cut bias binding', 'single or double binding', 'strip width for binding'],
    args: [
      { name: 'finished', kind: 'length', about: 'width of the binding as it shows on one side', above: 0 },
      { name: 'fold', kind: 'choice', about: 'single: four layers of its own width; double: folded in half first, six', choices: ['single', 'double'], usual: 'single' },
      { name: 'turn', kind: 'length', about: 'what the thickness of the folds takes, by trial', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: '4 × finished + turn; 6 × finished + turn for a double binding',
    source: 'common practice',
    example: '=BIAS.WIDTH(1 cm, "double", 3 mm)',
    work([finished, fold, turn], pad) {
      const layers = pad.number(`widths in a ${fold} binding`, [], fold === 'single' ? 4 : 6);
      return pad.length('all the layers, and the turn of the cloth', [plain(layers), ' × ', mm(finished), ' + ', mm(turn)], layers * finished + turn);
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
