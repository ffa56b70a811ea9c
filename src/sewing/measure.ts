/** Making lengths, taking their number, choosing how they show, rounding them to what a ruler can mark. */
import { amountIn, inBase, quantity, UNITS } from '../quantities/index.ts';
import { convert } from './convert.ts';
import { define, mm, plain } from './define.ts';
import { orRefuse } from './pad.ts';
import { toStep } from './rounding.ts';

const LENGTH = { name: 'length', kind: 'length', about: 'any length' } as const;
const UNIT = { name: 'unit', kind: 'unit', about: '"mm", "cm", "m", "in", "ft" or "yd"' } as const;
const STEP = { name: 'step', kind: 'length', about: 'what the tape or the shop goes by, such as 1/8 in or 5 mm', above: 0 } as const;
const PLACES = { length: 0, step: 1 };

export const MEASURE_FUNCTIONS = [
  define({
    name: 'STEP.NEAR',
    topic: 'measure',
    about: 'A length rounded to the nearest step; half-way goes to the greater.',
    asks: ['round to the nearest eighth', 'round to 5 mm', 'nearest mark on the tape'],
    args: [LENGTH, STEP],
    gives: 'length',
    rule: 'the multiple of the step that is nearest; of two as near, the greater',
    source: 'OASIS OpenFormula 1.4, section 6.17.4 (MROUND), for the tie',
    example: '=STEP.NEAR(39 9/16 in, 1/8 in)',
    work([length, step], pad) {
      return toStep('nearest', length, step, PLACES, pad);
    },
  }),
  define({
    name: 'STEP.UP',
    topic: 'measure',
    about: 'A length rounded up to a whole step.',
    asks: ['round up', 'round up to 10 cm', 'what the shop sells'],
    args: [LENGTH, STEP],
    gives: 'length',
    rule: 'the least multiple of the step that is not below',
    source: 'exact arithmetic',
    example: '=STEP.UP(2.11 m, 10 cm)',
    work([length, step], pad) {
      return toStep('up', length, step, PLACES, pad);
    },
  }),
  define({
    name: 'STEP.DOWN',
    topic: 'measure',
    about: 'A length rounded down to a whole step.',
    asks: ['round down', 'largest mark that fits'],
    args: [LENGTH, STEP],
    gives: 'length',
    rule: 'the greatest multiple of the step that is not above',
    source: 'exact arithmetic',
    example: '=STEP.DOWN(23.4 in, 1/8 in)',
    work([length, step], pad) {
      return toStep('down', length, step, PLACES, pad);
    },
  }),
  define({
    name: 'LENGTH',
    topic: 'measure',
    about: 'A length from a number and a unit.',
    asks: ['give a number a unit', 'make a length from a number'],
    args: [{ name: 'number', kind: 'number', about: 'how many' }, UNIT],
    gives: 'length',
    rule: 'number × unit',
    source: 'OASIS OpenFormula 1.4, table 24, for the units',
    example: '=LENGTH(91, "cm")',
    work([number, unit], pad) {
      pad.showIn(unit);
      return pad.length('so many of the unit', [plain(number), ` ${UNITS[unit].words}`], quantity(number, unit).value);
    },
  }),
  define({
    name: 'AMOUNT',
    topic: 'measure',
    about: 'How many of a unit a length is, as a plain number.',
    asks: ['take the unit off', 'number of a length', 'length as a plain number'],
    args: [LENGTH, UNIT],
    gives: 'number',
    rule: 'length ÷ unit',
    source: 'OASIS OpenFormula 1.4, table 24, for the units',
    example: '=AMOUNT(1 yd, "cm")',
    work([length, unit], pad) {
      return pad.number(`counted in ${UNITS[unit].words}`, [mm(length)], amountIn(inBase(length, 'mm'), unit));
    },
  }),
  define({
    name: 'SHOWN.IN',
    topic: 'measure',
    about: 'The same length, shown in another unit.',
    asks: ['show in inches', 'show in cm', 'change the unit of a result'],
    args: [LENGTH, UNIT],
    gives: 'length',
    rule: 'the same length',
    source: 'OASIS OpenFormula 1.4, table 24, for the units',
    example: '=SHOWN.IN(25 cm, "in")',
    work([length, unit], pad) {
      pad.showIn(unit);
      return pad.length(`the same length in ${UNITS[unit].words}`, [], length);
    },
  }),
  define({
    name: 'CONVERT',
    topic: 'measure',
    about: 'A plain number of one unit as a number of another: length, area or mass.',
    asks: ['convert units', 'ounces per square yard', 'inches to centimetres as numbers'],
    args: [
      { name: 'number', kind: 'number', about: 'a plain number; for a length use SHOWN.IN or AMOUNT' },
      { name: 'from', kind: 'text', about: 'its unit, such as "in", "yd^2" or "ozm"' },
      { name: 'to', kind: 'text', about: 'the unit wanted' },
    ],
    gives: 'number',
    rule: 'number × size of the one unit ÷ size of the other; small and capital letters of a unit are told apart',
    source: 'OASIS OpenFormula 1.4, section 6.16.18, tables 24 and 25',
    example: '=CONVERT(1, "yd^2", "m^2")',
    work([number, from, to], pad) {
      return pad.number(`${from} as ${to}`, [plain(number)], orRefuse(convert(number, from, to), pad).value);
    },
  }),
];
