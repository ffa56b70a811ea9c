import { PLAIN, topic } from './entry.ts';

const DATE = 'date: a date';
const TWO = 'from: a date | to: a date';
const FREE = 'free?: a block of dates without work';
const REST = 'rest?: which days of the week are free, as a number or as seven digits from Monday; Saturday and Sunday if left out';

export const DATES = topic('Dates and times', [
  ['TODAY', '', 'The date of today.', 'TODAY()', 'date; what day is it'],
  ['NOW', '', 'The date and the time of day.', 'NOW()', 'time'],
  ['DATE', 'year: with four digits | month: 1 to 12; more go on into the next year | day: 1 to 31; more go on into the next month', 'A date from its year, month and day.', 'DATE(2026, 11, 3)', 'make a date'],
  ['DATEVALUE', 'text: a date such as "2026-11-03"', 'The date that a text stands for.', 'DATEVALUE("2026-11-03")', 'text to date'],
  ['TIME', 'hour: 0 to 23 | minute: 0 to 59 | second: 0 to 59', 'A time of day.', 'TIME(14, 30, 0)'],
  ['TIMEVALUE', 'text: a time such as "14:30"', 'The time that a text stands for.', 'TIMEVALUE("14:30")', '', PLAIN],
  ['YEAR', DATE, 'The year of a date.', 'YEAR(DATE(2026, 11, 3))'],
  ['MONTH', DATE, 'The month of a date, 1 to 12.', 'MONTH(DATE(2026, 11, 3))'],
  ['DAY', DATE, 'The day of the month.', 'DAY(DATE(2026, 11, 3))'],
  ['HOUR', 'time: a time', 'The hour of a time, 0 to 23.', 'HOUR(TIME(14, 30, 0))'],
  ['MINUTE', 'time: a time', 'The minute of a time, 0 to 59.', 'MINUTE(TIME(14, 30, 0))'],
  ['SECOND', 'time: a time', 'The second of a time, 0 to 59.', 'SECOND(TIME(14, 30, 15))'],
  ['WEEKDAY', `${DATE} | way?: 1 Sunday is 1, 2 Monday is 1, 3 Monday is 0; 1 if left out`, 'The day of the week as a number.', 'WEEKDAY(DATE(2026, 11, 3), 2)', 'which day of the week'],
  ['WEEKNUM', `${DATE} | way?: how weeks are counted; 1 if left out`, 'The number of the week in its year.', 'WEEKNUM(DATE(2026, 11, 3))'],
  ['ISOWEEKNUM', DATE, 'The number of the week by ISO 8601: weeks begin on Monday, and week 1 has the first Thursday.', 'ISOWEEKNUM(DATE(2026, 11, 3))'],
  ['DAYS', 'to: the later date | from: the earlier date', 'How many days lie between two dates.', 'DAYS(DATE(2026, 12, 24), DATE(2026, 11, 3))', 'days until; how long until the wedding'],
  ['DAYS360', `${TWO} | way?: TRUE counts as in Europe`, 'Days between two dates when every month has thirty.', 'DAYS360(DATE(2026, 1, 31), DATE(2026, 3, 31))'],
  ['DATEDIF', `${TWO} | in: "Y" years, "M" months, "D" days, "YM" months past years, "MD" days past months, "YD" days past years`, 'Whole years, months or days between two dates.', 'DATEDIF(DATE(2020, 5, 1), DATE(2026, 11, 3), "Y")', 'how old; age of a child'],
  ['EDATE', `${DATE} | months: how many later; below zero earlier`, 'The same day so many months later.', 'EDATE(DATE(2026, 11, 3), 2)', 'in two months'],
  ['EOMONTH', `${DATE} | months: how many later; below zero earlier`, 'The last day of the month, so many months later.', 'EOMONTH(DATE(2026, 11, 3), 0)', 'end of the month'],
  ['NETWORKDAYS', `${TWO} | ${FREE}`, 'Working days from one date to another, both counted.', 'NETWORKDAYS(DATE(2026, 11, 2), DATE(2026, 11, 13))', 'working days until'],
  ['NETWORKDAYS.INTL', `${TWO} | ${REST} | ${FREE}`, 'Working days between dates, where you say which days of the week are free.', 'NETWORKDAYS.INTL(DATE(2026, 11, 2), DATE(2026, 11, 13), "0000001")'],
  ['WORKDAY', `${DATE} | days: working days later; below zero earlier | ${FREE}`, 'The date so many working days later.', 'WORKDAY(DATE(2026, 11, 3), 10)', 'when will it be done', PLAIN],
  ['WORKDAY.INTL', `${DATE} | days: working days later; below zero earlier | ${REST} | ${FREE}`, 'The date so many working days later, where you say which days of the week are free.', 'WORKDAY.INTL(DATE(2026, 11, 3), 10, "0000001")', '', PLAIN],
  ['YEARFRAC', `${TWO} | way?: 0 to 4, how the days are counted; 0 if left out`, 'The part of a year between two dates.', 'YEARFRAC(DATE(2026, 1, 1), DATE(2026, 7, 1))'],
]);
