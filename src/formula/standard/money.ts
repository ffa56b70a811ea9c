import { topic } from './entry.ts';

const RATE = 'rate: interest for each term, as 1 %';
const TERMS = 'terms: how many payments';
const NOW = 'now: what it is worth today';
const LATER = 'later?: what is left at the end; 0 if left out';
const WHEN = 'when?: 0 at the end of each term, 1 at its beginning; 0 if left out';
const BILL = 'settled: the date of buying | due: the date of paying back';
const ASSET = 'cost: when new | left: worth at the end | life: how many years';

export const MONEY = topic('Money and interest', [
  ['PMT', `${RATE} | ${TERMS} | ${NOW} | ${LATER} | ${WHEN}`, 'What to pay each term for a loan; money paid out is below zero.', 'PMT(1%, 12, 600)', 'instalments for a sewing machine'],
  ['IPMT', `${RATE} | term: which payment | ${TERMS} | ${NOW} | ${LATER} | ${WHEN}`, 'The interest in one payment.', 'IPMT(1%, 1, 12, 600)'],
  ['PPMT', `${RATE} | term: which payment | ${TERMS} | ${NOW} | ${LATER} | ${WHEN}`, 'What one payment pays back, without its interest.', 'PPMT(1%, 1, 12, 600)'],
  ['CUMIPMT', `${RATE} | ${TERMS} | ${NOW} | first: a payment | last: a payment | when: 0 at the end of each term, 1 at its beginning`, 'The interest in several payments.', 'CUMIPMT(1%, 12, 600, 1, 6, 0)'],
  ['CUMPRINC', `${RATE} | ${TERMS} | ${NOW} | first: a payment | last: a payment | when: 0 at the end of each term, 1 at its beginning`, 'What several payments pay back, without their interest.', 'CUMPRINC(1%, 12, 600, 1, 6, 0)'],
  ['ISPMT', `${RATE} | term: which payment, from 0 | ${TERMS} | ${NOW}`, 'The interest in one payment of a loan that is paid back in equal parts.', 'ISPMT(1%, 1, 12, 600)'],
  ['NPER', `${RATE} | payment: for each term | ${NOW} | ${LATER} | ${WHEN}`, 'How many payments a loan takes.', 'NPER(1%, -60, 600)'],
  ['RATE', `terms: how many payments | payment: for each term | ${NOW} | ${LATER} | ${WHEN} | guess?: 10 % if left out`, 'The interest for each term of a loan.', 'RATE(12, -55, 600)'],
  ['PV', `${RATE} | ${TERMS} | payment: for each term | ${LATER} | ${WHEN}`, 'What payments to come are worth today.', 'PV(1%, 12, -50)'],
  ['FV', `${RATE} | ${TERMS} | payment: for each term | now?: what it is worth today | ${WHEN}`, 'What payments grow to.', 'FV(1%, 12, -50)', 'savings'],
  ['FVSCHEDULE', 'now: what it is worth today | rates: a block of rates', 'What a sum grows to by several rates.', 'FVSCHEDULE(100, {0.01;0.02})'],
  ['NPV', 'rate: interest for each term | payments: numbers or blocks of cells | …', 'What payments at the end of each term are worth today.', 'NPV(5%, 100, 110)'],
  ['XNPV', 'rate: interest for a year | payments: a block of numbers | dates: a block of the same size', 'What payments on given dates are worth on the first.', 'XNPV(0.05, {-100;60;60}, {46000;46180;46365})'],
  ['IRR', 'payments: a block of numbers, some below zero | guess?: 10 % if left out', 'The rate at which payments in and out make up for each other.', 'IRR({-100;60;60})'],
  ['XIRR', 'payments: a block of numbers, some below zero | dates: a block of the same size | guess?: 10 % if left out', 'The yearly rate at which payments on given dates make up for each other.', 'XIRR({-100;60;60}, {46000;46180;46365})'],
  ['MIRR', 'payments: a block of numbers, some below zero | lent at: rate for money paid out | saved at: rate for money that came in', 'The rate of payments, with different rates for money lent and saved.', 'MIRR({-100;60;60}, 5%, 3%)'],
  ['RRI', 'terms: how many | now: what it is worth today | later: what it will be worth', 'The rate that makes one sum grow to another.', 'RRI(5, 100, 130)'],
  ['PDURATION', 'rate: interest for each term | now: what it is worth today | later: what it will be worth', 'How many terms a sum takes to grow to another.', 'PDURATION(2%, 100, 130)'],
  ['EFFECT', 'rate: the yearly rate as it is named | times: how often a year interest is paid', 'The yearly rate that comes of interest on interest.', 'EFFECT(6%, 12)'],
  ['NOMINAL', 'rate: the yearly rate with interest on interest | times: how often a year interest is paid', 'The yearly rate as it is named.', 'NOMINAL(6%, 12)'],
  ['SLN', ASSET, 'What a thing loses in worth each year, always the same.', 'SLN(600, 100, 5)'],
  ['SYD', `${ASSET} | year: which year`, 'What a thing loses in worth in one year, less each year by the same amount.', 'SYD(600, 100, 5, 1)'],
  ['DB', `${ASSET} | year: which year | months?: months of the first year, 12 if left out`, 'What a thing loses in worth in one year, by the same share each year.', 'DB(600, 100, 5, 1)'],
  ['DDB', `${ASSET} | year: which year | factor?: 2 if left out`, 'What a thing loses in worth in one year, by a multiple of the even share.', 'DDB(600, 100, 5, 1)'],
  ['DOLLARDE', 'price: whole number and fraction, as 1.02 for 1 and 2/16 | below: the number below the line', 'A price with a fraction as a decimal.', 'DOLLARDE(1.02, 16)'],
  ['DOLLARFR', 'price: a decimal | below: the number below the line', 'A decimal price as a price with a fraction.', 'DOLLARFR(1.125, 16)'],
  ['TBILLEQ', `${BILL} | discount: the rate`, 'The yearly yield of a treasury bill.', 'TBILLEQ(DATE(2026, 1, 1), DATE(2026, 7, 1), 5%)'],
  ['TBILLPRICE', `${BILL} | discount: the rate`, 'The price of a treasury bill that pays 100.', 'TBILLPRICE(DATE(2026, 1, 1), DATE(2026, 7, 1), 5%)'],
  ['TBILLYIELD', `${BILL} | price: for 100`, 'The yield of a treasury bill.', 'TBILLYIELD(DATE(2026, 1, 1), DATE(2026, 7, 1), 97.5)'],
]);
