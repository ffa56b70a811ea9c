/** The formula language as OpenFormula has it: rules and printed examples. Arrays part columns with ; and rows with |. */
const PART4 = 'OASIS OpenDocument 1.4 part 4 (OpenFormula), OASIS Standard 2025-10-06';

export interface LanguageCheck {
  readonly about: string;
  readonly formula: string;
  /** `error`: any error will do. */
  readonly expected: number | 'error';
  readonly source: string;
  /** Printed in the text, or an example of our own for a rule read there. */
  readonly obtained: 'printed' | 'rule';
}

const check = (formula: string, expected: LanguageCheck['expected'], about: string, section: string, obtained: LanguageCheck['obtained'] = 'rule'): LanguageCheck => ({ formula: `=${formula}`, expected, about, source: `${PART4} s. ${section}`, obtained });

export const LANGUAGE: readonly LanguageCheck[] = [
  check('2^3', 8, 'power', '5.5 Table 1', 'printed'),
  check('2+3*4', 14, 'precedence', '5.5 note 3', 'printed'),
  check('(2+3)*4', 20, 'precedence', '5.5 note 3', 'printed'),
  check('2^3^2', 64, '^ is left-associative', '5.5 note 1'),
  check('-2^2', 4, 'the sign binds before ^', '5.5 Table 1'),
  check('50%*8', 4, 'postfix % divides by 100', '6.4.14'),
  check('ROUND(2.5)', 3, 'half away from zero', '6.17.5'),
  check('ROUND(1234.5;-2)', 1200, 'digits left of the point', '6.17.5'),
  check('MROUND(2.5;1)', 3, 'tie to the greater', '6.17.4'),
  check('MROUND(-2.5;1)', -2, 'tie to the greater, not the same as ROUND', '6.17.4'),
  check('CEILING(-4.5;-2)', -4, 'mode 0: towards +infinity', '6.17.1'),
  check('CEILING(-4.5;-2;1)', -6, 'mode 1: away from zero', '6.17.1'),
  check('FLOOR(-4.5;-2)', -6, 'mode 0: towards -infinity', '6.17.3'),
  check('INT(-2.3)', -3, 'towards -infinity', '6.17.2'),
  check('TRUNC(-2.3;0)', -2, 'towards zero', '6.17.8'),
  check('ROUNDUP(-2.1)', -3, 'away from zero', '6.17.7'),
  check('MOD(-7;3)', 2, 'sign of the divisor', '6.16.42'),
  check('MOD(7;-3)', -2, 'sign of the divisor', '6.16.42'),
  check('MOD(5.5;2.5)', 0.5, 'need not be whole', '6.16.42'),
  check('ODD(0)', 1, 'by definition', '6.16.44', 'printed'),
  check('MATCH(36.5;{34;35;36;37.5;39};1)', 3, 'largest value that is not above, ascending', '6.14.9'),
  check('MATCH(36.5;{39;37.5;36;35};-1)', 2, 'smallest value that is not below, descending', '6.14.9'),
  check('MATCH(30;{34;35;36};1)', 'error', 'below the smallest', '6.14.9'),
  check('MATCH("bust";{"Waist";"Bust";"Hip"};0)', 2, 'text compared without regard to case', '6.14.9'),
  check('MATCH(36;{34;36;36;38};1)', 3, 'equal run: the last is taken', '6.14.9'),
  check('INDEX({1;2|3;4};2;1)', 3, 'row 2, column 1', '6.14.6'),
  check('INDEX({1;2|3;4};3;1)', 'error', 'row beyond the range', '6.14.6'),
  check('SUM(INDEX({1;2|3;4};0;2))', 6, 'row 0 is the whole column', '6.14.6'),
  check('SUMPRODUCT({2;3;4};{5;6;7})', 56, '2*5+3*6+4*7', '6.16.64'),
  check('CONVERT(1;"in";"cm")', 2.54, 'length', '6.16.18'),
  check('CONVERT(1;"yd";"m")', 0.9144, 'length', '6.16.18'),
  check('CONVERT(1;"yd^2";"m^2")', 0.83612736, 'area', '6.16.18'),
  check('CONVERT(1;"in";"g")', 'error', 'different groups of units', '6.16.18 constraint'),
  check('CONVERT(1;"IN";"cm")', 'error', 'units are case-sensitive', '6.16.18'),
];
