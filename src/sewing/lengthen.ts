/** Lengthening and shortening, and what that does to widths, seams, hems and cloth. An amount below 0 shortens. */
import { define, mm, plain } from './define.ts';

const AMOUNT = { name: 'amount', kind: 'length', about: 'how much longer the piece becomes; below 0 for shorter' } as const;
const LENGTH = { name: 'length', kind: 'length', about: 'length of the piece between the two levels, as it is', above: 0 } as const;
const TOP = { name: 'top', kind: 'length', about: 'its width at the upper level', atLeast: 0 } as const;
const BOTTOM = { name: 'bottom', kind: 'length', about: 'its width at the lower level', above: 0 } as const;

export const LENGTHEN_FUNCTIONS = [
  define({
    name: 'LENGTHEN.SHARE',
    topic: 'lengthen',
    about: 'How much to spread or fold at each line when a change of length is shared by several.',
    asks: ['lengthen at two lines', 'share the extra length', 'lengthen or shorten here'],
    args: [AMOUNT, { name: 'lines', kind: 'count', about: 'lines on the pattern where it is lengthened or shortened' }],
    gives: 'length',
    rule: 'amount ÷ lines',
    source: 'exact arithmetic',
    example: '=LENGTHEN.SHARE(5 cm, 2)',
    work([amount, lines], pad) {
      return pad.length('amount shared by the lines', [mm(amount), ' ÷ ', plain(lines)], amount / lines);
    },
  }),
  define({
    name: 'LENGTHEN.CLOTH',
    topic: 'lengthen',
    about: 'How much more cloth lengthening takes: the amount once for every row of lengthened pieces along the cloth.',
    asks: ['how much more fabric to lengthen', 'cloth for a longer dress', 'what does lengthening cost in cloth'],
    args: [
      AMOUNT,
      { name: 'rows', kind: 'count', about: 'lengthened pieces that lie one behind another along the cloth; pieces side by side count once' },
      { name: 'repeat', kind: 'length', about: 'distance after which the print recurs, for prints that must match; 0 for none', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'amount × rows; with a repeat, the amount first up to whole repeats',
    source: 'exact geometry for a layout that keeps its order; a layout made anew may need less',
    example: '=LENGTHEN.CLOTH(5 cm, 2)',
    work([amount, rows, repeat], pad) {
      const each = repeat === 0 || amount <= 0 ? amount : pad.length('at most whole repeats more for each row', [mm(amount), ', in steps of ', mm(repeat), ', rounded up'], Math.ceil(amount / repeat - 1e-9) * repeat);
      return pad.length('once for each row', [mm(each), ' × ', plain(rows)], each * rows);
    },
  }),
  define({
    name: 'LENGTHEN.WIDTH',
    topic: 'lengthen',
    about: 'How wide a straight-sided piece is at its lower edge after it is lengthened there and its sides carried on.',
    asks: ['lengthen a flared skirt', 'hem width after lengthening', 'does it get wider when I lengthen it'],
    args: [AMOUNT, LENGTH, TOP, BOTTOM],
    gives: 'length',
    rule: 'bottom + amount × (bottom − top) ÷ length',
    source: 'exact geometry',
    example: '=LENGTHEN.WIDTH(5 cm, 60 cm, 48 cm, 66 cm)',
    work([amount, length, top, bottom], pad) {
      if (amount <= -length) pad.refuse(`A piece ${pad.say(length)} long cannot be shortened by ${pad.say(-amount)}.`);
      const slope = pad.number('how much it widens for each length', ['(', mm(bottom), ' − ', mm(top), ') ÷ ', mm(length)], (bottom - top) / length);
      const width = bottom + amount * slope;
      if (width <= 0) pad.refuse(`Carried on by ${pad.say(amount)}, the sides of this piece meet: it tapers too fast.`);
      return pad.length('the lower edge and what the new length adds', [mm(bottom), ' + ', mm(amount), ' × ', plain(slope)], width);
    },
  }),
  define({
    name: 'LENGTHEN.SEAM',
    topic: 'lengthen',
    about: 'How much longer the slanted side of a piece becomes when the piece is lengthened along its middle.',
    asks: ['side seam after lengthening', 'zip longer after lengthening', 'how much does the seam grow'],
    args: [AMOUNT, LENGTH, TOP, BOTTOM],
    gives: 'length',
    rule: 'amount × √(1 + ((bottom − top) ÷ 2 ÷ length)²), both sides slanted alike',
    source: 'exact geometry',
    example: '=LENGTHEN.SEAM(5 cm, 60 cm, 48 cm, 66 cm)',
    work([amount, length, top, bottom], pad) {
      const lean = pad.number('how far a side leans out for each length', ['(', mm(bottom), ' − ', mm(top), ') ÷ 2 ÷ ', mm(length)], (bottom - top) / 2 / length);
      const slant = pad.number('slant for each length', ['√(1 + ', plain(lean), '²)'], Math.hypot(1, lean));
      return pad.length('amount times that', [mm(amount), ' × ', plain(slant)], amount * slant);
    },
  }),
  define({
    name: 'LENGTHEN.SWEEP',
    topic: 'lengthen',
    about: 'How much wider the hem of a circle skirt becomes when it is lengthened.',
    asks: ['lengthen a circle skirt', 'more trim for a longer circle skirt'],
    args: [AMOUNT, { name: 'part', kind: 'number', about: 'part of a whole circle', above: 0, atMost: 2 }],
    gives: 'length',
    rule: '2 × π × part × amount',
    source: 'exact geometry',
    example: '=LENGTHEN.SWEEP(5 cm, 1/2)',
    work([amount, part], pad) {
      return pad.length('the difference of the two rounds', ['2 × π × ', plain(part), ' × ', mm(amount)], 2 * Math.PI * part * amount);
    },
  }),
];
