import { topic } from './entry.ts';

const VALUE = 'value: a value or a cell';

export const LOGIC = topic('If, and, or', [
  ['IF', 'test: true or false, such as B3 > 90 cm | then: what to give when it is true | else?: what to give when it is not; FALSE if left out', 'Gives one thing when a test is true and another when it is not.', 'IF(92 cm > 90 cm, "let out", "fits")', 'when; depends on; only if; choose'],
  ['IFS', 'test: true or false | then: what to give when this is the first that is true | …2', 'Gives what belongs to the first test that is true.', 'IFS(92 cm < 88 cm, "S", 92 cm < 96 cm, "M", TRUE, "L")', 'several cases; steps'],
  ['SWITCH', 'value: what is compared | case: what it may equal | then: what to give in that case, or a last one for every other | …', 'Gives what belongs to the case that a value equals.', 'SWITCH("M", "S", 86 cm, "M", 92 cm, 98 cm)', 'pick by a word', 'Values of any kind; what is given keeps its unit.'],
  ['CHOOSE', 'place: 1 for the first | values: what to choose from | …', 'Gives the first, the second or another of several values.', 'CHOOSE(2, 86 cm, 92 cm, 98 cm)', 'pick by number'],
  ['AND', 'tests: true or false | …', 'True when every test is.', 'AND(92 cm > 90 cm, 70 cm < 80 cm)', 'both; all of'],
  ['OR', 'tests: true or false | …', 'True when at least one test is.', 'OR(92 cm > 95 cm, 70 cm < 80 cm)', 'either; any of'],
  ['XOR', 'tests: true or false | …', 'True when an odd number of tests is.', 'XOR(TRUE, FALSE)'],
  ['NOT', 'test: true or false', 'True for false, and false for true.', 'NOT(92 cm > 95 cm)', 'opposite'],
  ['TRUE', '', 'True.', 'TRUE()'],
  ['FALSE', '', 'False.', 'FALSE()'],
  ['IFERROR', 'value: what may have no result | instead: what to give then', 'Gives something else in place of an error.', 'IFERROR(1/0, "not yet")', 'hide an error; when there is no result'],
  ['IFNA', 'value: what may not be there | instead: what to give then', 'Gives something else when there is no value.', 'IFNA(NA(), "not in the chart")', 'when nothing is found'],
  ['LET', 'name: a word of your own | value: what it stands for | result: a formula with that word | …', 'Gives a word to a value, for use in the rest of the formula.', 'LET(x, 92 cm, x + x)', 'name a step inside a formula', 'Any value may get a word, and keeps its unit.'],
]);

export const CELLS = topic('What a cell holds', [
  ['ISBLANK', VALUE, 'True when a cell holds nothing.', 'ISBLANK(Z99)', 'is it empty; not filled in yet'],
  ['ISNUMBER', VALUE, 'True for a figure, with or without a unit.', 'ISNUMBER(5 cm)', 'is it a figure; is it a number'],
  ['ISTEXT', VALUE, 'True for words.', 'ISTEXT("waist")', 'is it words'],
  ['ISNONTEXT', VALUE, 'True for anything but words, an empty cell too.', 'ISNONTEXT(5 cm)'],
  ['ISLOGICAL', VALUE, 'True for TRUE and FALSE.', 'ISLOGICAL(TRUE)'],
  ['ISERROR', VALUE, 'True for any error.', 'ISERROR(1/0)', 'has it gone wrong'],
  ['ISERR', VALUE, 'True for any error but a value that is not there.', 'ISERR(1/0)'],
  ['ISNA', VALUE, 'True for a value that is not there.', 'ISNA(NA())', 'was it not found'],
  ['ISREF', VALUE, 'True for what points at cells, whatever they hold.', 'ISREF(Z99)', '', 'The cells may hold anything.'],
  ['ISFORMULA', 'cell: a cell', 'True when there is a formula in a cell.', 'ISFORMULA(Z99)', 'typed or worked out', 'The cell may hold anything.'],
  ['ISEVEN', 'number: a plain number', 'True for an even number.', 'ISEVEN(8)', 'even number'],
  ['ISODD', 'number: a plain number', 'True for an odd number.', 'ISODD(8)', 'odd number'],
  ['ISBINARY', 'text: a text', 'True for a text of the digits 0 and 1.', 'ISBINARY("101")'],
  ['TYPE', VALUE, 'A number for the kind of a value: 1 figure, 2 words, 4 true or false, 16 error, 64 block of cells.', 'TYPE("waist")', 'which kind', 'A figure with a unit is a figure, 1.'],
  ['ERROR.TYPE', 'error: a cell with an error', 'A number for the kind of an error: 2 division by zero, 3 a wrong kind of value, 4 cells that were removed, 5 no such name or function, 6 no number, 7 not there, 8 a circle, 9 no room.', 'ERROR.TYPE(1/0)', 'which error', 'Takes errors only.'],
  ['N', VALUE, 'The figure, 1 for TRUE, and 0 for words.', 'N(TRUE)'],
  ['NA', '', 'Stands for a value that is not there yet.', 'IFNA(NA(), "to be measured")', 'not known yet'],
]);
