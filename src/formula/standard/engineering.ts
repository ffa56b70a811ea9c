import { topic } from './entry.ts';

const DIGITS = 'digits?: how many digits at least';
const BITS = 'first: a whole number | second: a whole number';
const Z = 'z: a complex number, such as "3+4i"';
const X = 'x: a plain number';

export const BASES = topic('Number bases and bits', [
  ['BASE', 'number: a whole number | base: 2 to 36 | digits?: how many digits at least', 'A whole number written in another base, as a text.', 'BASE(255, 16)'],
  ['DECIMAL', 'text: digits in another base | base: 2 to 36', 'The number that digits in another base stand for.', 'DECIMAL("FF", 16)'],
  ['BIN2DEC', 'binary: digits 0 and 1', 'From base 2 to base 10.', 'BIN2DEC("101")'],
  ['BIN2HEX', `binary: digits 0 and 1 | ${DIGITS}`, 'From base 2 to base 16.', 'BIN2HEX("11111")'],
  ['BIN2OCT', `binary: digits 0 and 1 | ${DIGITS}`, 'From base 2 to base 8.', 'BIN2OCT("11111")'],
  ['DEC2BIN', `number: a whole number | ${DIGITS}`, 'From base 10 to base 2.', 'DEC2BIN(5)'],
  ['DEC2HEX', `number: a whole number | ${DIGITS}`, 'From base 10 to base 16.', 'DEC2HEX(255)'],
  ['DEC2OCT', `number: a whole number | ${DIGITS}`, 'From base 10 to base 8.', 'DEC2OCT(8)'],
  ['HEX2BIN', `hexadecimal: digits 0 to F | ${DIGITS}`, 'From base 16 to base 2.', 'HEX2BIN("F")'],
  ['HEX2DEC', 'hexadecimal: digits 0 to F', 'From base 16 to base 10.', 'HEX2DEC("FF")'],
  ['HEX2OCT', `hexadecimal: digits 0 to F | ${DIGITS}`, 'From base 16 to base 8.', 'HEX2OCT("FF")'],
  ['OCT2BIN', `octal: digits 0 to 7 | ${DIGITS}`, 'From base 8 to base 2.', 'OCT2BIN("7")'],
  ['OCT2DEC', 'octal: digits 0 to 7', 'From base 8 to base 10.', 'OCT2DEC("17")'],
  ['OCT2HEX', `octal: digits 0 to 7 | ${DIGITS}`, 'From base 8 to base 16.', 'OCT2HEX("17")'],
  ['ROMAN', 'number: 1 to 3999 | short?: 0 the usual way, up to 4 shorter ways', 'A number in Roman numerals.', 'ROMAN(14)'],
  ['ARABIC', 'text: Roman numerals', 'The number that Roman numerals stand for.', 'ARABIC("XIV")'],
  ['BITAND', BITS, 'The bits that are set in both numbers.', 'BITAND(12, 10)'],
  ['BITOR', BITS, 'The bits that are set in either number.', 'BITOR(12, 10)'],
  ['BITXOR', BITS, 'The bits that are set in one number only.', 'BITXOR(12, 10)'],
  ['BITLSHIFT', 'number: a whole number | places: how far', 'The bits moved to the left.', 'BITLSHIFT(3, 2)'],
  ['BITRSHIFT', 'number: a whole number | places: how far', 'The bits moved to the right.', 'BITRSHIFT(12, 2)'],
]);

export const COMPLEX = topic('Complex numbers', [
  ['COMPLEX', 'real: a plain number | imaginary: a plain number | letter?: "i" or "j"', 'A complex number from its two parts.', 'COMPLEX(3, 4)'],
  ['IMREAL', Z, 'The real part.', 'IMREAL("3+4i")'],
  ['IMAGINARY', Z, 'The imaginary part.', 'IMAGINARY("3+4i")'],
  ['IMABS', Z, 'The distance from zero.', 'IMABS("3+4i")'],
  ['IMARGUMENT', Z, 'The angle, in radians.', 'IMARGUMENT("1+i")'],
  ['IMCONJUGATE', Z, 'The number with its imaginary part turned round.', 'IMCONJUGATE("3+4i")'],
  ['IMSUM', 'numbers: complex numbers or blocks of them | …', 'The sum.', 'IMSUM("3+4i", "1-i")'],
  ['IMSUB', 'first: a complex number | second: a complex number', 'The difference.', 'IMSUB("3+4i", "1-i")'],
  ['IMPRODUCT', 'numbers: complex numbers or blocks of them | …', 'The product.', 'IMPRODUCT("3+4i", "1-i")'],
  ['IMDIV', 'first: a complex number | second: a complex number', 'The quotient.', 'IMDIV("3+4i", "1-i")'],
  ['IMPOWER', `${Z} | exponent: a plain number`, 'A power.', 'IMPOWER("1+i", 2)'],
  ['IMSQRT', Z, 'A square root.', 'IMSQRT("3+4i")'],
  ['IMEXP', Z, 'e to a complex power.', 'IMEXP("1+i")'],
  ['IMLN', Z, 'The natural logarithm.', 'IMLN("1+i")'],
  ['IMLOG10', Z, 'The logarithm to base 10.', 'IMLOG10("1+i")'],
  ['IMLOG2', Z, 'The logarithm to base 2.', 'IMLOG2("1+i")'],
  ['IMSIN', Z, 'The sine.', 'IMSIN("1+i")'],
  ['IMCOS', Z, 'The cosine.', 'IMCOS("1+i")'],
  ['IMTAN', Z, 'The tangent.', 'IMTAN("1+i")'],
  ['IMCOT', Z, 'The cotangent.', 'IMCOT("1+i")'],
  ['IMSEC', Z, 'The secant.', 'IMSEC("1+i")'],
  ['IMCSC', Z, 'The cosecant.', 'IMCSC("1+i")'],
  ['IMSINH', Z, 'The hyperbolic sine.', 'IMSINH("1+i")'],
  ['IMCOSH', Z, 'The hyperbolic cosine.', 'IMCOSH("1+i")'],
  ['IMSECH', Z, 'The hyperbolic secant.', 'IMSECH("1+i")'],
  ['IMCSCH', Z, 'The hyperbolic cosecant.', 'IMCSCH("1+i")'],
]);

export const SPECIAL = topic('Special functions', [
  ['GAMMA', X, 'The gamma function, which goes on from factorials.', 'GAMMA(4.5)'],
  ['GAMMALN', 'x: above zero', 'The natural logarithm of the gamma function.', 'GAMMALN(4.5)'],
  ['ERF', 'from: a plain number | to?: a plain number', 'The error function from 0 to a number, or between two.', 'ERF(1)'],
  ['ERFC', X, 'What the error function lacks of 1.', 'ERFC(1)'],
  ['BESSELI', `${X} | order: a whole number`, 'The modified Bessel function I.', 'BESSELI(1.5, 1)'],
  ['BESSELJ', `${X} | order: a whole number`, 'The Bessel function J.', 'BESSELJ(1.5, 1)'],
  ['BESSELK', 'x: above zero | order: a whole number', 'The modified Bessel function K.', 'BESSELK(1.5, 1)'],
  ['BESSELY', 'x: above zero | order: a whole number', 'The Bessel function Y.', 'BESSELY(1.5, 1)'],
]);
