/**
 * Where formulas here mean something else than OpenFormula says, or less. Each
 * can show it: a test works `formula` out and compares it with `here`.
 */
export interface Difference {
  /** The functions that it is about; none for the language itself. */
  readonly functions: readonly string[];
  readonly sentence: string;
  /** Why it is so; empty where the sentence says it. */
  readonly why: string;
  readonly shown: readonly { readonly formula: string; readonly here: string; readonly there: string }[];
}

/** Stands for a result that is an error, whatever its sentence. */
export const AN_ERROR = 'an error';

const LIBRARY = 'The library that works formulas out has it so.';

export const DIFFERENCES: readonly Difference[] = [
  {
    functions: [],
    sentence: 'Figures have units, and OpenFormula knows none. A length and a plain number cannot be added or compared; two lengths multiplied give an area; a length divided by a length gives a plain number. A function that could not be right with units takes none, and says so.',
    why: 'A number of millimetres without its unit spoils cloth.',
    shown: [{ formula: '=2 in + 1', here: AN_ERROR, there: 'no such figure' }, { formula: '=LN(2 cm)', here: AN_ERROR, there: 'no such figure' }],
  },
  {
    functions: [],
    sentence: 'A mixed fraction with its unit can stand in a formula, as 2 1/4 in.',
    why: 'Tapes are marked in fractions.',
    shown: [{ formula: '=2 1/4 in', here: '2.25 in', there: AN_ERROR }],
  },
  {
    functions: [],
    sentence: 'A name may be of several words, as “full bust”; a reference is written B3 or Sheet!B3, without brackets or points before it.',
    why: 'It is what people write; OpenFormula’s [.B3] is for files.',
    shown: [],
  },
  {
    functions: [],
    sentence: 'Arguments may be parted by a comma as well as by a semicolon, and TRUE and FALSE need no brackets after them.',
    why: 'People write both.',
    shown: [{ formula: '=ROUND(2.345, 2)', here: '2.35', there: AN_ERROR }],
  },
  {
    functions: [],
    sentence: 'OFFSET and INDIRECT cannot be used; INDEX can.',
    why: 'What they point at would not follow rows and columns that are inserted or moved.',
    shown: [{ formula: '=OFFSET(A1; 1; 0)', here: AN_ERROR, there: 'the cell A2' }],
  },
  {
    functions: ['CEILING', 'FLOOR'],
    sentence: 'A figure below zero may have a step above it; a length needs its step.',
    why: 'A tape’s marks have no sign.',
    shown: [{ formula: '=CEILING(-4.5; 2)', here: '-4', there: AN_ERROR }],
  },
  {
    functions: ['SUBTOTAL'],
    sentence: 'Cells in hidden rows are counted; cells that hold a SUBTOTAL or AGGREGATE of their own are not, as OpenFormula has it.',
    why: 'Hiding rows changes what shows, and never a result.',
    shown: [],
  },
  {
    functions: ['LOOKUP'],
    sentence: 'The cells to give from are not made longer when there are fewer than cells to look in.',
    why: 'It would give cells that nobody named.',
    shown: [],
  },
  {
    functions: ['NUMBERVALUE'],
    sentence: 'A full stop that is named for nothing is refused.',
    why: 'It could stand before decimals or between thousands.',
    shown: [{ formula: '=NUMBERVALUE("1.234"; ",")', here: AN_ERROR, there: '1.234' }],
  },
  {
    functions: ['TREND'],
    sentence: 'One figure that the others depend on for each of them; OpenFormula lets there be several.',
    why: 'A straight line through points is what a measure needs.',
    shown: [{ formula: '=TREND({1;2}; {1;2|3;5})', here: AN_ERROR, there: 'one for each' }],
  },
  {
    functions: ['BETADIST'],
    sentence: 'Whether it is cumulative is told after alpha and beta, and must be; in OpenFormula it comes last and is TRUE if left out.',
    why: LIBRARY,
    shown: [{ formula: '=BETADIST(0.4; 2; 3)', here: AN_ERROR, there: '0.5248' }],
  },
  {
    functions: ['BINOMDIST', 'EXPONDIST', 'GAMMADIST', 'HYPGEOMDIST', 'NORMDIST', 'POISSON', 'WEIBULL', 'LOGNORMDIST', 'LOGINV'],
    sentence: 'Every argument is needed; OpenFormula lets the last be left out.',
    why: LIBRARY,
    shown: [{ formula: '=NORMDIST(95; 90; 4)', here: AN_ERROR, there: '0.8943502263' }, { formula: '=LOGNORMDIST(4)', here: AN_ERROR, there: '0.9171714809' }],
  },
  {
    functions: ['NEGBINOMDIST', 'NORMSDIST'],
    sentence: 'One argument more, TRUE or FALSE, tells whether it is cumulative; OpenFormula has it without.',
    why: LIBRARY,
    shown: [{ formula: '=NORMSDIST(1)', here: AN_ERROR, there: '0.8413447461' }],
  },
  {
    functions: ['FDIST', 'FINV'],
    sentence: 'They are what OpenFormula calls LEGACY.FDIST and LEGACY.FINV; what it calls FDIST and FINV are F.DIST and F.INV here.',
    why: LIBRARY,
    shown: [],
  },
  {
    functions: ['CHIDIST', 'CHIINV', 'CHITEST', 'NORMSINV', 'TDIST'],
    sentence: 'In OpenFormula its name has LEGACY. before it.',
    why: LIBRARY,
    shown: [],
  },
  {
    functions: ['CHISQ.DIST', 'CHISQ.INV'],
    sentence: 'OpenFormula calls it CHISQDIST or CHISQINV.',
    why: LIBRARY,
    shown: [],
  },
  {
    functions: [
      'BESSELI', 'BESSELJ', 'BESSELK', 'BESSELY', 'BINOMDIST', 'CHIDIST', 'CHIINV', 'CRITBINOM', 'CUMIPMT', 'CUMPRINC', 'DB', 'GAMMADIST', 'GAMMAINV', 'HYPGEOMDIST', 'MULTINOMIAL',
      'NEGBINOMDIST', 'POISSON',
    ],
    sentence: 'What it counts up to one by one is 1,000,000 at most; for a block of cells, 1,000,000 in all.',
    why: 'A figure further out would keep everything waiting.',
    shown: [{ formula: '=POISSON(2000000; 3; TRUE)', here: AN_ERROR, there: '1' }],
  },
  {
    functions: ['WORKDAY'],
    sentence: 'It goes no further than the year 9999.',
    why: 'There are no dates after it here.',
    shown: [{ formula: '=WORKDAY(DATE(2026; 11; 3); 1E17)', here: AN_ERROR, there: 'no such date' }],
  },
  {
    functions: ['DATEVALUE'],
    sentence: 'Dates are read as 2026-11-03 only.',
    why: 'In any other way of writing, a fraction such as 2 1/4 could be taken for a date.',
    shown: [{ formula: '=DATEVALUE("3/11/2026")', here: AN_ERROR, there: 'depends on the country' }],
  },
];
