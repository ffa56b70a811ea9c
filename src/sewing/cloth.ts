/** Cloth to buy and to join, and what washing does to it. */
import { amountIn, inBase, UNITS } from '../quantities/index.ts';
import { define, mm, plain, share } from './define.ts';
import { toStep } from './rounding.ts';

const LENGTH = { name: 'length', kind: 'length', about: 'length that is needed', above: 0 } as const;
const WIDTH = { name: 'width', kind: 'length', about: 'usable width of the cloth, without selvedges', above: 0 } as const;

export const CLOTH_FUNCTIONS = [
  define({
    name: 'CLOTH.BUY',
    topic: 'cloth',
    about: 'The length to buy so that enough is left after washing, in steps that shops sell.',
    asks: ['how much cloth to buy', 'allow for shrinkage', 'how much fabric do I need'],
    args: [
      LENGTH,
      { name: 'shrinkage', kind: 'percent', about: 'share of its length that the cloth loses in washing', usual: 0, below: 1 },
      { name: 'step', kind: 'length', about: 'what the shop sells in, such as 10 cm or 1/8 yd; without it nothing is rounded', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'length ÷ (1 − shrinkage), up to a whole step',
    source: 'ISO 5077:2007 for what shrinkage means; exact arithmetic',
    example: '=CLOTH.BUY(2.5 m, 3 %, 10 cm)',
    work([length, shrinkage, step], pad) {
      if (pad.unitGiven(1) === undefined) pad.caution('No shrinkage is allowed for: wash a marked piece first and put in what it loses, or 0 % for cloth that was washed.');
      if (shrinkage < 0) {
        pad.refuse('CLOTH.BUY needs the shrinkage without a minus sign, as 3 %: SHRINK.PERCENT gives shrinking a minus, so put a minus before it. For cloth that grows, write 0 %.');
      }
      const before = pad.length('length before washing', [mm(length), ' ÷ (1 − ', share(shrinkage), ')'], length / (1 - shrinkage));
      return step === 0 ? before : toStep('up', before, step, { length: 0, step: 2 }, pad);
    },
  }),
  define({
    name: 'CLOTH.WIDTHS',
    topic: 'cloth',
    about: 'How many widths of cloth must be joined for a flat width.',
    asks: ['how many widths of fabric', 'join widths', 'drops of cloth'],
    args: [
      { name: 'flat', kind: 'length', about: 'flat width that is needed, all the way round', above: 0 },
      WIDTH,
      { name: 'allowance', kind: 'length', about: 'seam allowance at each edge of each width', atLeast: 0, usual: 0 },
    ],
    gives: 'number',
    rule: 'flat ÷ (width − 2 × allowance), up to a whole number',
    source: 'exact geometry',
    example: '=CLOTH.WIDTHS(144 cm, 110 cm, 1.5 cm)',
    work([flat, width, allowance], pad) {
      if (2 * allowance >= width) pad.refuse(`Two seam allowances of ${pad.say(allowance)} leave nothing of cloth ${pad.say(width)} wide.`);
      const each = pad.length('what a width gives when joined', [mm(width), ' − 2 × ', mm(allowance)], width - 2 * allowance);
      const exact = pad.number('flat width counted in them', [mm(flat), ' ÷ ', mm(each)], flat / each);
      return pad.number('up to whole widths', [plain(exact)], Math.max(1, Math.ceil(exact - 1e-9)));
    },
  }),
  define({
    name: 'CLOTH.REPEAT',
    topic: 'cloth',
    about: 'A length rounded up so that the print or check starts anew at the same place.',
    asks: ['match a pattern repeat', 'length with repeat', 'match checks'],
    args: [LENGTH, { name: 'repeat', kind: 'length', about: 'distance after which the print recurs', above: 0 }],
    gives: 'length',
    rule: 'length, up to a whole repeat',
    source: 'exact geometry',
    example: '=CLOTH.REPEAT(65 cm, 24 cm)',
    work([length, repeat], pad) {
      return toStep('up', length, repeat, { length: 0, step: 1 }, pad);
    },
  }),
  define({
    name: 'CLOTH.OTHER',
    topic: 'cloth',
    about: 'A first guess at the length of cloth of another width, by area: lay the pieces to be sure.',
    asks: ['cloth of another width', 'convert fabric width', 'how much of wider fabric'],
    args: [
      LENGTH,
      { name: 'width', kind: 'length', about: 'width that the length is meant for', above: 0 },
      { name: 'other', kind: 'length', about: 'width of the other cloth', above: 0 },
      { name: 'piece', kind: 'length', about: 'width of the widest piece, to be told when whole pieces do not come out as the area does', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'length × width ÷ other width',
    source: 'common practice; agrees to 1/8 yd with a widely reprinted width conversion chart',
    example: '=CLOTH.OTHER(1 3/4 yd, 36 in, 45 in)',
    work([length, width, other, piece], pad) {
      const guess = (length * width) / other;
      if (piece > 0) {
        const across = (cloth: number): number => Math.floor(cloth / piece + 1e-9);
        if (across(width) < 1) pad.refuse(`A piece ${pad.say(piece)} wide does not go on cloth ${pad.say(width)} wide, which the length is meant for: check the figures.`);
        if (across(other) < 1) pad.refuse(`A piece ${pad.say(piece)} wide does not go on cloth ${pad.say(other)} wide: choose wider cloth, or join it.`);
        const whole = pad.length('if every piece were so wide, whole pieces side by side would need', [mm(length), ' × ', plain(across(width)), ' ÷ ', plain(across(other))], (length * across(width)) / across(other));
        pad.length('which is more than the area says by', [mm(whole), ' − ', mm(guess)], whole - guess);
        if (whole > guess * (1 + 1e-9)) pad.caution('By area this is less than whole pieces of that width need side by side: lay them, or buy up to this.', mm(whole));
      }
      return pad.length('the same area at the other width', [mm(length), ' × ', mm(width), ' ÷ ', mm(other)], guess);
    },
  }),
  define({
    name: 'CLOTH.PANELS',
    topic: 'cloth',
    about: 'The length of cloth for equal straight panels laid side by side.',
    asks: ['how much cloth for panels', 'cloth for rectangles', 'cloth for a gathered skirt'],
    args: [
      { name: 'panels', kind: 'count', about: 'how many panels' },
      { ...LENGTH, about: 'length of a panel as cut' },
      { name: 'panel', kind: 'length', about: 'width of a panel as cut', above: 0 },
      WIDTH,
    ],
    gives: 'length',
    rule: 'rows × length, with as many panels in a row as go side by side',
    source: 'exact geometry',
    example: '=CLOTH.PANELS(3, 70 cm, 48 cm, 140 cm)',
    work([panels, length, panel, width], pad) {
      const side = Math.floor(width / panel + 1e-9);
      if (side < 1) pad.refuse(`A panel ${pad.say(panel)} wide does not go on cloth ${pad.say(width)} wide: make it of two, or choose wider cloth.`);
      pad.number('panels side by side', [mm(width), ' ÷ ', mm(panel), ', rounded down'], side);
      const rows = pad.number('rows', [plain(panels), ' ÷ ', plain(side), ', rounded up'], Math.ceil(panels / side));
      return pad.length('rows times the length of a panel', [plain(rows), ' × ', mm(length)], rows * length);
    },
  }),
  define({
    name: 'CLOTH.SHRUNK',
    topic: 'cloth',
    about: 'What is left of a length of cloth, or of a finished measure, after washing.',
    asks: ['how short will it be after washing', 'what shrinks away', 'length after shrinkage'],
    args: [LENGTH, { name: 'shrinkage', kind: 'percent', about: 'share of its length that the cloth loses in washing', atLeast: 0, below: 1 }],
    gives: 'length',
    rule: 'length × (1 − shrinkage)',
    source: 'ISO 5077:2007 for what shrinkage means; exact arithmetic',
    example: '=CLOTH.SHRUNK(250 cm, 3 %)',
    work([length, shrinkage], pad) {
      const lost = pad.length('what shrinks away', [mm(length), ' × ', share(shrinkage)], length * shrinkage);
      return pad.length('what is left', [mm(length), ' − ', mm(lost)], length * (1 - shrinkage));
    },
  }),
  define({
    name: 'CLOTH.COST',
    topic: 'cloth',
    about: 'What a length costs at a price for one metre, yard or other unit.',
    asks: ['what does the cloth cost', 'price of fabric', 'cost of a length'],
    args: [
      { name: 'length', kind: 'length', about: 'length to buy', atLeast: 0 },
      { name: 'price', kind: 'number', about: 'price for one unit of length, as a plain number', atLeast: 0 },
      { name: 'unit', kind: 'unit', about: 'the unit that the price is for: "m" or "yd"', usual: 'm' },
    ],
    gives: 'number',
    rule: 'length ÷ unit × price',
    source: 'exact arithmetic',
    example: '=CLOTH.COST(2.3 m, 18.50)',
    work([length, price, unit], pad) {
      const units = pad.number(`counted in ${UNITS[unit].words}`, [mm(length)], amountIn(inBase(length, 'mm'), unit));
      return pad.number('times the price', [plain(units), ' × ', plain(price)], units * price);
    },
  }),
  define({
    name: 'SHRINK.PERCENT',
    topic: 'cloth',
    about: 'How much cloth changes in washing; below 0 when it shrinks.',
    asks: ['how much did it shrink', 'shrinkage of my fabric', 'test for shrinkage'],
    args: [
      { name: 'before', kind: 'length', about: 'distance of two marks before washing', above: 0 },
      { name: 'after', kind: 'length', about: 'the same after washing and drying', above: 0 },
    ],
    gives: 'percent',
    rule: '(after − before) ÷ before',
    source: 'ISO 5077:2007, Textiles, Determination of dimensional change in washing and drying',
    example: '=SHRINK.PERCENT(50 cm, 48.5 cm)',
    work([before, after], pad) {
      const change = pad.length('after minus before', [mm(after), ' − ', mm(before)], after - before);
      return pad.percent('as a share of the length before', [mm(change), ' ÷ ', mm(before)], change / before);
    },
  }),
];
