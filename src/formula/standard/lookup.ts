import { PLAIN, topic } from './entry.ts';

const KINDS = 'What is looked for must be of the kind of what it is looked for among; what is found keeps its unit.';
const WAY = 'way?: 1 the last that is not above, in ascending order; 0 the same; -1 the last that is not below, in descending order; 1 if left out';

export const LOOKUP = topic('Look up', [
  ['XLOOKUP', 'value: what to look for | among: one row or column | give: as many cells, to give from | instead?: what to give when it is not there | match?: 0 the same, -1 or the next below, 1 or the next above; 0 if left out | way?: 1 from the first, -1 from the last', 'Looks for a value in one row or column and gives what stands beside it in another.', 'XLOOKUP("M", {"S";"M";"L"}, {86 cm;92 cm;98 cm})', 'find in a table; figure for a size; look in the chart', KINDS],
  ['VLOOKUP', 'value: what to look for in the first column | block: the table | column: the column to give from, 1 for the first | sorted?: TRUE takes the last that is not above; FALSE only the same; TRUE if left out', 'Looks for a value in the first column of a table and gives a cell of the same row.', 'VLOOKUP("waist", chart, 3, FALSE)', 'find in a table; look down a column', KINDS],
  ['HLOOKUP', 'value: what to look for in the first row | block: the table | row: the row to give from, 1 for the first | sorted?: TRUE takes the last that is not above; FALSE only the same; TRUE if left out', 'Looks for a value in the first row of a table and gives a cell of the same column.', 'HLOOKUP(10, chart, 2, FALSE)', 'find in a table; look along a row', KINDS],
  ['LOOKUP', 'value: what to look for | among: one row or column, in ascending order | give?: as many cells, to give from; the same cells if left out', 'Looks for the last value that is not above, and gives it or what stands beside it.', 'LOOKUP(93 cm, {86 cm;92 cm;98 cm}, {"S";"M";"L"})', 'find the size below; steps', KINDS],
  ['MATCH', `value: what to look for | among: one row or column | ${WAY}`, 'The place of a value in a row or column: 1 for the first.', 'MATCH("hip", {"bust";"waist";"hip"}, 0)', 'which place; where does it stand', 'What is looked for must be of the kind of what it is looked for among; the result is a plain number.'],
  ['XMATCH', 'value: what to look for | among: one row or column | match?: 0 the same, -1 or the next below, 1 or the next above; 0 if left out | way?: 1 from the first, -1 from the last', 'The place of a value in a row or column, found exactly unless asked otherwise.', 'XMATCH("hip", {"bust";"waist";"hip"})', 'which place', 'What is looked for must be of the kind of what it is looked for among; the result is a plain number.'],
  ['INDEX', 'block: a block of cells | row: 1 for the first; 0 for all | column?: 1 for the first; all if it is 0 or left out', 'The cell at a row and a column of a block, or a whole row or column of it.', 'INDEX({86 cm;92 cm;98 cm}, 1, 2)', 'take one cell of a table; take a whole row or column', 'What is taken keeps its unit; the numbers have none.'],
  ['ADDRESS', 'row: 1 for the first | column: 1 for the first | fixed?: 1 both, 2 the row, 3 the column, 4 neither; 1 if left out | A1?: FALSE writes R1C1 | sheet?: a sheet’s name', 'The name of a cell, from the number of its row and column.', 'ADDRESS(3, 2)'],
  ['ROW', 'cell?: a cell or a block; the formula’s own if left out', 'The number of a row.', 'ROW(B7)', 'number the rows', 'The cell may hold anything.'],
  ['COLUMN', 'cell?: a cell or a block; the formula’s own if left out', 'The number of a column: 2 for B.', 'COLUMN(B7)', 'number the columns', 'The cell may hold anything.'],
  ['ROWS', 'block: a block of cells', 'How many rows a block has.', 'ROWS(A1:C4)', 'height of a table', 'The cells may hold anything.'],
  ['COLUMNS', 'block: a block of cells', 'How many columns a block has.', 'COLUMNS(A1:C4)', 'width of a table', 'The cells may hold anything.'],
  ['HYPERLINK', 'address: where it leads, as a text | words?: what to show', 'Shows the words of an address; nothing is opened.', 'HYPERLINK("https://example.org", "pattern notes")'],
]);

export const BLOCKS = topic('Blocks of cells', [
  ['SORT', 'block: what to put in order | by?: the column to go by, 1 if left out | way?: 1 least first, -1 greatest first | across?: TRUE sorts columns', 'Puts the rows of a block in order.', 'SORT({98 cm|86 cm|92 cm})', 'put in order; order by size', 'Figures of one kind are sorted by their true size, whatever their units.'],
  ['SORTBY', 'block: what to put in order | by: a row or column as long, to go by | way?: 1 least first, -1 greatest first; further ones for lines that are equal may follow', 'Puts the rows of a block in the order of other cells.', 'SORTBY({"L"|"S"|"M"}, {98 cm|86 cm|92 cm})', 'put in order by another column', 'Figures of one kind are sorted by their true size, whatever their units.'],
  ['FILTER', 'block: one row or column | keep: as many tests, true for what is to stay | …', 'Keeps the cells for which a test is true.', 'FILTER({86 cm;92 cm;98 cm}, {TRUE;FALSE;TRUE})', 'only some rows; leave out'],
  ['UNIQUE', 'block: a block of cells | across?: TRUE compares columns | once?: TRUE keeps only what occurs once', 'Each different row of a block, once.', 'UNIQUE({"wool"|"silk"|"wool"})', 'without doubles; each only once', 'Figures of one kind are compared by their true size.'],
  ['TRANSPOSE', 'block: a block of cells', 'Turns rows into columns.', 'TRANSPOSE({86 cm;92 cm;98 cm})', 'swap rows and columns; turn a table'],
  ['SEQUENCE', 'rows: how many rows | columns?: how many columns, 1 if left out | first?: the first number, 1 if left out | step?: how much more each is, 1 if left out', 'A block of numbers that go up in steps.', 'SEQUENCE(3, 1, 10, 5)', 'count up; number a list', PLAIN],
  ['HSTACK', 'blocks: blocks of cells | …', 'Puts blocks beside each other.', 'HSTACK({86 cm}, {92 cm})', 'join tables side by side'],
  ['VSTACK', 'blocks: blocks of cells | …', 'Puts blocks below each other.', 'VSTACK({86 cm}, {92 cm})', 'join tables'],
  ['ARRAY_CONSTRAIN', 'block: a block of cells | rows: how many rows at most | columns: how many columns at most', 'The top left part of a block.', 'ARRAY_CONSTRAIN({86 cm;92 cm;98 cm}, 1, 2)', 'only the first rows'],
  ['ARRAYFORMULA', 'formula: what to work out', 'Works a formula out for every cell of the blocks in it.', 'ARRAYFORMULA({1;2;3} * 2)', 'for every row at once', 'As the formula in it.'],
  ['MMULT', 'first: a block of numbers | second: a block with as many rows as the first has columns', 'The product of two matrices.', 'MMULT({1;2|3;4}, {1|1})'],
  ['MAXPOOL', 'block: a block of numbers | size: side of each square | step?: from one square to the next', 'The greatest number of each square of a block.', 'MAXPOOL({1;2|3;4}, 2)'],
  ['MEDIANPOOL', 'block: a block of numbers | size: side of each square | step?: from one square to the next', 'The middle number of each square of a block.', 'MEDIANPOOL({1;2|3;4}, 2)'],
  ['INTERVAL', 'seconds: a plain number', 'A stretch of time in the notation of ISO 8601, from seconds.', 'INTERVAL(3661)'],
]);
