import { ANGLE, COUNTED, SAME, topic } from './entry.ts';

const ROUNDED = 'A length is rounded in its own unit, which it keeps.';
const STEPPED = 'A figure and a step with units of one kind, as 28.4 cm and 5 mm or 1/8 in.';
const PLACES = 'figure: what to round | places?: digits after the point; fewer than 0 for tens and hundreds; 0 if left out';

export const ROUNDING = topic('Rounding', [
  ['ROUND', PLACES, 'Rounds to so many digits after the point, a half away from zero.', 'ROUND(28.35 cm, 1)', 'round off; fewer decimals', ROUNDED],
  ['ROUNDUP', PLACES, 'Rounds away from zero, to so many digits after the point.', 'ROUNDUP(28.31 cm, 1)', 'always round up; never too small', ROUNDED],
  ['ROUNDDOWN', PLACES, 'Rounds towards zero, to so many digits after the point.', 'ROUNDDOWN(28.39 cm, 1)', 'cut off decimals; always round down', ROUNDED],
  ['TRUNC', PLACES, 'Cuts digits off; what is left is nearer to zero.', 'TRUNC(-2.37, 1)', 'cut off decimals', ROUNDED],
  ['INT', 'figure: what to round', 'The whole number that is not above: of -2.3 it is -3.', 'INT(7.9)', 'whole number; how many fit', ROUNDED],
  ['MROUND', 'figure: what to round | step: a multiple of this is wanted', 'The nearest multiple of a step; of two as near, the greater.', 'MROUND(39 9/16 in, 1/8 in)', 'round to eighths; round to 5 mm; nearest quarter inch', STEPPED],
  ['CEILING', 'figure: what to round | step?: a multiple of this is wanted; 1 for plain numbers if left out | way?: not 0 sends figures below zero away from it', 'The least multiple of a step that is not below.', 'CEILING(2.11 m, 10 cm)', 'round up to a step; round up to eighths; round up to 10 cm', STEPPED],
  ['CEILING.MATH', 'figure: what to round | step?: 1 if left out | way?: not 0 sends figures below zero away from it', 'Rounds up to a multiple of a step; figures below zero go towards zero, or away from it.', 'CEILING.MATH(-4.5, 2)', '', STEPPED],
  ['CEILING.PRECISE', 'figure: what to round | step?: 1 if left out', 'Rounds up to a multiple of a step, whatever the sign of the step.', 'CEILING.PRECISE(4.2, 0.5)', '', STEPPED],
  ['FLOOR', 'figure: what to round | step?: a multiple of this is wanted; 1 for plain numbers if left out | way?: not 0 sends figures below zero towards it', 'The greatest multiple of a step that is not above.', 'FLOOR(23.4 in, 1/8 in)', 'round down to a step; round down to eighths', STEPPED],
  ['FLOOR.MATH', 'figure: what to round | step?: 1 if left out | way?: not 0 sends figures below zero towards it', 'Rounds down to a multiple of a step; figures below zero go away from zero, or towards it.', 'FLOOR.MATH(-4.5, 2)', '', STEPPED],
  ['FLOOR.PRECISE', 'figure: what to round | step?: 1 if left out', 'Rounds down to a multiple of a step, whatever the sign of the step.', 'FLOOR.PRECISE(4.7, 0.5)', '', STEPPED],
  ['EVEN', 'number: what to round', 'The next even whole number, away from zero.', 'EVEN(7)', 'even number of pleats'],
  ['ODD', 'number: what to round', 'The next odd whole number, away from zero.', 'ODD(8)', 'odd number of buttons'],
]);

const PAIR = 'figure: what to divide | by: what to divide by, of the same kind';
const NUMBER = 'number: a plain number';

export const NUMBERS = topic('Powers, roots and whole numbers', [
  ['ABS', 'figure: any figure', 'The figure without its sign.', 'ABS(-1.5 cm)', 'without minus; absolute value; difference either way', SAME],
  ['SIGN', 'figure: any figure', '1 for a figure above zero, -1 below, 0 for zero.', 'SIGN(-1.5 cm)', 'above or below zero', COUNTED],
  ['MOD', PAIR, 'What is left over after whole times; it has the sign of what one divides by.', 'MOD(92 cm, 5 cm)', 'remainder; left over; what is left of the cloth', 'Two figures of one kind; what is left keeps the unit.'],
  ['QUOTIENT', PAIR, 'How many whole times one figure goes into another.', 'QUOTIENT(92 cm, 5 cm)', 'how many fit; whole times; whole strips', 'Two figures of one kind; the result is a plain number.'],
  ['POWER', 'base: what to multiply with itself | exponent: how many times', 'A figure to a power; the same as ^.', 'POWER(3 cm, 2)', 'square; cube', 'A length squared is an area; other powers take plain numbers.'],
  ['SQRT', 'figure: not below zero', 'The square root.', 'SQRT(9 cm²)', 'root; side of a square', 'The root of an area is a length; of a plain number a plain number.'],
  ['SQRTPI', NUMBER, 'The square root of a number times π.', 'SQRTPI(2)'],
  ['EXP', 'power: a plain number', 'e (2.71828…) to a power.', 'EXP(1)'],
  ['LN', 'number: above zero', 'The natural logarithm.', 'LN(10)'],
  ['LOG', 'number: above zero | base?: 10 if left out', 'The logarithm to a base.', 'LOG(8, 2)'],
  ['LOG10', 'number: above zero', 'The logarithm to base 10.', 'LOG10(1000)'],
  ['GCD', 'numbers: whole numbers, cells or blocks of cells | …', 'The greatest whole number that divides all of them.', 'GCD(24, 36)', 'common divisor; buttons and pleats that meet'],
  ['LCM', 'numbers: whole numbers, cells or blocks of cells | …', 'The least whole number that all of them divide.', 'LCM(4, 6)', 'common multiple; repeat of two patterns'],
  ['FACT', 'number: a whole number', 'The product of all whole numbers from 1 up to this one.', 'FACT(5)'],
  ['FACTDOUBLE', 'number: a whole number', 'The product of every second whole number up to this one.', 'FACTDOUBLE(7)'],
  ['COMBIN', 'things: how many there are | chosen: how many are taken', 'In how many ways some of several things can be chosen.', 'COMBIN(5, 2)'],
  ['COMBINA', 'things: how many there are | chosen: how many are taken', 'In how many ways things can be chosen when each may be taken again.', 'COMBINA(5, 2)'],
  ['MULTINOMIAL', 'numbers: whole numbers | …', 'In how many ways things can be shared out into groups of these sizes.', 'MULTINOMIAL(2, 3)'],
  ['RAND', '', 'A number by chance, from 0 up to but not 1; another at every change.', 'RAND()', 'random number'],
  ['RANDBETWEEN', 'least: a whole number | greatest: a whole number', 'A whole number by chance; another at every change.', 'RANDBETWEEN(1, 6)', 'random order; throw a die'],
  ['DELTA', 'first: a figure | second?: 0 if left out', '1 when two figures are equal, else 0.', 'DELTA(3, 3)', '', COUNTED],
]);

const X = 'x: a plain number';

export const ANGLES = topic('Angles and circles', [
  ['PI', '', 'π: the round of a circle divided by its width.', 'PI()', 'pi; circle', 'Gives a plain number.'],
  ['SIN', 'angle: an angle', 'The sine of an angle: the far side of a right triangle divided by the slanted one.', 'SIN(30°)', '', ANGLE],
  ['COS', 'angle: an angle', 'The cosine of an angle: the near side of a right triangle divided by the slanted one.', 'COS(60°)', '', ANGLE],
  ['TAN', 'angle: an angle', 'The tangent of an angle: the far side of a right triangle divided by the near one.', 'TAN(45°)', '', ANGLE],
  ['COT', 'angle: an angle', 'One divided by the tangent.', 'COT(45°)', '', ANGLE],
  ['SEC', 'angle: an angle', 'One divided by the cosine.', 'SEC(60°)', '', ANGLE],
  ['CSC', 'angle: an angle', 'One divided by the sine.', 'CSC(30°)', '', ANGLE],
  ['ASIN', 'sine: from -1 to 1', 'The angle that has this sine, in radians.', 'ASIN(0.5)'],
  ['ACOS', 'cosine: from -1 to 1', 'The angle that has this cosine, in radians.', 'ACOS(0.5)'],
  ['ATAN', 'tangent: a plain number', 'The angle that has this tangent, in radians.', 'ATAN(1)', 'angle of a slope'],
  ['ATAN2', 'x: how far across | y: how far up', 'The angle of a line to a point, in radians.', 'ATAN2(1, 1)', 'angle from two sides', COUNTED],
  ['ACOT', X, 'The angle that has this cotangent, in radians.', 'ACOT(1)'],
  ['DEGREES', 'radians: a plain number', 'An angle in radians as a number of degrees.', 'DEGREES(PI())'],
  ['RADIANS', 'degrees: a plain number', 'An angle in degrees as a number of radians.', 'RADIANS(180)'],
  ['SINH', X, 'The hyperbolic sine.', 'SINH(1)'],
  ['COSH', X, 'The hyperbolic cosine.', 'COSH(1)'],
  ['TANH', X, 'The hyperbolic tangent.', 'TANH(1)'],
  ['COTH', X, 'The hyperbolic cotangent.', 'COTH(1)'],
  ['SECH', X, 'The hyperbolic secant.', 'SECH(1)'],
  ['CSCH', X, 'The hyperbolic cosecant.', 'CSCH(1)'],
  ['ASINH', X, 'The number that has this hyperbolic sine.', 'ASINH(1)'],
  ['ACOSH', 'x: at least 1', 'The number that has this hyperbolic cosine.', 'ACOSH(2)'],
  ['ATANH', 'x: between -1 and 1', 'The number that has this hyperbolic tangent.', 'ATANH(0.5)'],
  ['ACOTH', 'x: below -1 or above 1', 'The number that has this hyperbolic cotangent.', 'ACOTH(2)'],
]);
