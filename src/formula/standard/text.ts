import { AS_TEXT, PLAIN, topic } from './entry.ts';

const TEXT = 'text: words, or a cell';
const COUNT = 'count?: how many characters; 1 if left out';

export const TEXTS = topic('Words', [
  ['CONCATENATE', 'texts: words, figures or cells | …', 'Puts texts one after the other; the same as &.', 'CONCATENATE("Cut ", 28 3/8 in)', 'join words; put together', AS_TEXT],
  ['TEXTJOIN', 'between: what to put between | skip: TRUE leaves empty ones out | texts: words, figures, cells or blocks of cells | …', 'Joins texts with something between them.', 'TEXTJOIN(", ", TRUE, {"bust";"waist";"hip"})', 'make a list', AS_TEXT],
  ['TEXT', 'figure: a figure or a date | way: a pattern such as "0.00", "#,##0", "0%" or "# ?/8", a unit such as "cm", or both', 'A figure as words, written in a way of one’s own.', 'TEXT(28 3/8 in, "cm")', 'figure in words; write with two decimals', 'A length is written in the unit named, or in its own by a pattern of digits.'],
  ['VALUE', TEXT, 'The figure that a text stands for, with its unit; a fraction alone is a plain number.', 'VALUE("2 1/4 in")', 'text to figure; read a measure', 'The figure gets the unit that stands in the text.'],
  ['NUMBERVALUE', 'text: digits | point?: the character before decimals | groups?: the character between groups of digits', 'The plain number that a text stands for, with the marks that it is written with.', 'NUMBERVALUE("28,5", ",")', 'decimal comma; text to number', PLAIN],
  ['LEN', TEXT, 'How many characters a text has.', 'LEN("selvedge")', 'length of a text', AS_TEXT],
  ['LEFT', `${TEXT} | ${COUNT}`, 'The first characters of a text.', 'LEFT("selvedge", 4)', 'beginning of a word', AS_TEXT],
  ['RIGHT', `${TEXT} | ${COUNT}`, 'The last characters of a text.', 'RIGHT("selvedge", 4)', 'end of a word', AS_TEXT],
  ['MID', `${TEXT} | from: 1 for the first character | count: how many characters`, 'Some characters out of the middle of a text.', 'MID("selvedge", 4, 3)', 'part of a word', AS_TEXT],
  ['UPPER', TEXT, 'A text in capitals.', 'UPPER("waist")', 'capital letters', AS_TEXT],
  ['LOWER', TEXT, 'A text in small letters.', 'LOWER("WAIST")', 'small letters', AS_TEXT],
  ['PROPER', TEXT, 'A text with a capital at the beginning of each word.', 'PROPER("centre back")', 'capitals at the beginning', AS_TEXT],
  ['TRIM', TEXT, 'A text without spaces at its ends, and with single ones inside.', 'TRIM("  centre   back ")', 'take spaces away', AS_TEXT],
  ['CLEAN', TEXT, 'A text without characters that cannot be seen.', 'CLEAN("waist")', '', AS_TEXT],
  ['FIND', `wanted: what to look for | ${TEXT} | from?: where to begin, 1 if left out`, 'Where one text stands in another; capitals and small letters differ.', 'FIND("v", "selvedge")', 'where is a letter', AS_TEXT],
  ['SEARCH', `wanted: what to look for; ? stands for one character, * for any | ${TEXT} | from?: where to begin, 1 if left out`, 'Where one text stands in another, capitals or not.', 'SEARCH("V", "selvedge")', 'does it contain', AS_TEXT],
  ['SUBSTITUTE', `${TEXT} | wanted: what to replace | by: what to put in its place | which?: only the first, the second and so on; all if left out`, 'Puts other words in the place of some.', 'SUBSTITUTE("left front", "left", "right")', 'swap words; replace words', AS_TEXT],
  ['REPLACE', `${TEXT} | from: 1 for the first character | count: how many characters to take out | by: what to put in`, 'Puts other characters in the place of some, by where they stand.', 'REPLACE("size 12", 6, 2, "14")', '', AS_TEXT],
  ['REPT', `${TEXT} | times: how often`, 'A text several times over.', 'REPT("–", 5)', 'repeat', AS_TEXT],
  ['EXACT', 'first: a text | second: a text', 'True when two texts are the same, capitals too.', 'EXACT("Bust", "bust")', 'are they the same', AS_TEXT],
  ['SPLIT', `${TEXT} | place: which part, 0 for the first`, 'One part of a text that is parted by spaces.', 'SPLIT("front left side", 1)', 'second word', AS_TEXT],
  ['T', 'value: a value or a cell', 'The text, if it is one; else nothing.', 'T("waist")'],
  ['CHAR', 'number: from 1 to 255', 'The character that has a number in Unicode, among the first 255.', 'CHAR(65)'],
  ['CODE', TEXT, 'The number of a text’s first character.', 'CODE("A")'],
  ['UNICHAR', 'number: a code point', 'The character that has a number in Unicode.', 'UNICHAR(188)'],
  ['UNICODE', TEXT, 'The number that a text’s first character has in Unicode.', 'UNICODE("¼")'],
]);
