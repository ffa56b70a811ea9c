import { COUNTED, FIRST, SAME, SQUARED, topic } from './entry.ts';

const FIGURES = 'figures: figures, cells or blocks of cells | …';
const BLOCK = 'block: the cells to look at';
const CONDITION = 'condition: a figure, a text, or a sign and a figure such as "> 90 cm"';
const PAIRS = `${BLOCK} | ${CONDITION} | …2`;
const CONDITIONAL = 'Conditions are read with their unit, as "> 90 cm"; the result keeps the unit of the figures.';

export const SUMS = topic('Sums and counts', [
  ['SUM', FIGURES, 'Adds up figures; words and empty cells are passed over.', 'SUM(42 cm, 18 in, 5 mm)', 'add up; total; sum of a column', SAME],
  ['SUMIF', `${BLOCK} | ${CONDITION} | figures?: what to add up, in a block of the same size; the cells looked at if left out`, 'Adds up the figures that fit one condition.', 'SUMIF({"skirt";"lining";"skirt"}, "skirt", {2 m;1.5 m;0.4 m})', 'add up only some; total of one kind of cloth', CONDITIONAL],
  ['SUMIFS', `figures: what to add up | ${PAIRS}`, 'Adds up the figures that fit every condition.', 'SUMIFS({2 m;1.5 m;0.4 m}, {"wool";"silk";"wool"}, "wool", {140;90;140}, ">100")', 'add up with several conditions', CONDITIONAL],
  ['SUMPRODUCT', 'block: a block of cells, all of one size | …', 'Multiplies what stands in the same place of each block, and adds up the products.', 'SUMPRODUCT({3;2;4}, {30 cm;45 cm;12 cm})', 'pieces times lengths; weighted sum', 'Works with units: numbers times lengths give a length, lengths times lengths an area.'],
  ['SUMSQ', FIGURES, 'Adds up the squares of figures.', 'SUMSQ(3 cm, 4 cm)', 'sum of squares', SQUARED],
  ['SUMX2MY2', 'first: a block of numbers | second: a block of the same size', 'Adds up the square of each number less the square of its partner.', 'SUMX2MY2({3;4}, {1;2})'],
  ['SUMX2PY2', 'first: a block of numbers | second: a block of the same size', 'Adds up the squares of each number and its partner.', 'SUMX2PY2({3;4}, {1;2})'],
  ['SUMXMY2', 'first: a block of numbers | second: a block of the same size', 'Adds up the squares of the differences between numbers and their partners.', 'SUMXMY2({3;4}, {1;2})'],
  ['SERIESSUM', 'x: what the powers are of | start: the first power | step: how much more each next power is | factors: a block of numbers', 'Adds up powers of a number, each times its factor.', 'SERIESSUM(2, 0, 1, {1;2;3})'],
  ['PRODUCT', FIGURES, 'Multiplies figures.', 'PRODUCT(3, 45 cm)', 'multiply', 'Works with units: two lengths give an area.'],
  ['SUBTOTAL', 'which: 1 average, 2 count, 3 filled cells, 4 greatest, 5 least, 6 product, 7 or 8 standard deviation, 9 sum, 10 or 11 variance | figures: cells or blocks of cells | …', 'Works out a sum, a count or another total, chosen by a number; cells that hold such totals are left out.', 'SUBTOTAL(9, {42 cm;18 in})', 'part of a total', 'As the function that is chosen.'],
  ['AGGREGATE', 'which: 1 to 11 as in SUBTOTAL, 12 median, 13 most frequent, 14 LARGE, 15 SMALL, 16 percentile, 17 quartile, 18 and 19 without the ends | leave out: 0 other totals, 2 totals and errors, 4 nothing, 6 errors | figures: cells or blocks of cells | …', 'Works out a total, chosen by a number, and passes over errors if asked.', 'AGGREGATE(9, 6, {42 cm;18 in})', 'sum without errors; ignore errors', 'As the function that is chosen.'],
  ['COUNT', 'values: values, cells or blocks of cells | …', 'Counts the figures; words and empty cells do not count.', 'COUNT({42 cm;"waist";18 in})', 'how many figures; how many numbers'],
  ['COUNTA', 'values: values, cells or blocks of cells | …', 'Counts every cell that holds anything.', 'COUNTA({42 cm;"waist";18 in})', 'how many filled cells; count words'],
  ['COUNTBLANK', 'cells: cells or blocks of cells | …', 'Counts the cells that hold nothing.', 'COUNTBLANK(Y1:Z3)', 'how many empty cells; what is missing'],
  ['COUNTIF', `${BLOCK} | ${CONDITION}`, 'Counts the cells that fit one condition.', 'COUNTIF({86 cm;92 cm;97 cm}, "> 90 cm")', 'how many are larger; count some', 'Conditions are read with their unit, as "> 90 cm"; the result is a plain number.'],
  ['COUNTIFS', PAIRS, 'Counts the places where every condition is met.', 'COUNTIFS({86 cm;92 cm;97 cm}, "> 90 cm", {"S";"M";"L"}, "L")', 'count with several conditions', 'Conditions are read with their unit, as "> 90 cm"; the result is a plain number.'],
  ['COUNTUNIQUE', 'values: values, cells or blocks of cells | …', 'Counts values that differ from each other.', 'COUNTUNIQUE({"wool";"silk";"wool"})', 'how many different', COUNTED],
]);

export const AVERAGES = topic('Averages, least and greatest', [
  ['AVERAGE', FIGURES, 'The average: the sum of figures divided by their count.', 'AVERAGE(91 cm, 92 cm, 91.5 cm)', 'mean; average of my measures; measured several times', SAME],
  ['AVERAGEA', 'values: values, cells or blocks of cells | …', 'The average where words count as 0 and TRUE as 1.', 'AVERAGEA({2;4;TRUE})', 'mean with words as nought'],
  ['AVERAGEIF', `${BLOCK} | ${CONDITION} | figures?: what to take the average of; the cells looked at if left out`, 'The average of the figures that fit one condition.', 'AVERAGEIF({"S";"M";"S"}, "S", {86 cm;92 cm;88 cm})', 'mean of some', CONDITIONAL],
  ['AVERAGEIFS', `figures: what to take the average of | ${PAIRS}`, 'The average of the figures that fit every condition.', 'AVERAGEIFS({86 cm;92 cm;88 cm}, {"S";"M";"S"}, "S")', 'mean with several conditions', CONDITIONAL],
  ['GEOMEAN', FIGURES, 'The geometric mean: the root of the product of figures.', 'GEOMEAN(2, 8)', 'average ratio', SAME],
  ['HARMEAN', FIGURES, 'The harmonic mean: the count of figures divided by the sum of one over each.', 'HARMEAN(2, 6)', '', SAME],
  ['MEDIAN', FIGURES, 'The middle figure when they are put in order; between two middle ones their average.', 'MEDIAN(91 cm, 95 cm, 92 cm)', 'middle value', SAME],
  ['MODE', FIGURES, 'The figure that occurs most often.', 'MODE(38, 40, 38, 42)', 'most frequent; commonest size', SAME],
  ['MIN', FIGURES, 'The least figure.', 'MIN(92 cm, 36 in)', 'smallest; shortest; minimum', SAME],
  ['MAX', FIGURES, 'The greatest figure.', 'MAX(92 cm, 36 in)', 'largest; longest; widest; maximum', SAME],
  ['MINA', 'values: values, cells or blocks of cells | …', 'The least value, where words count as 0 and TRUE as 1.', 'MINA({3;2;TRUE})'],
  ['MAXA', 'values: values, cells or blocks of cells | …', 'The greatest value, where words count as 0 and TRUE as 1.', 'MAXA({0.5;TRUE})'],
  ['MINIFS', `figures: where to find the least | ${PAIRS}`, 'The least figure that fits every condition.', 'MINIFS({86 cm;92 cm;88 cm}, {"S";"M";"S"}, "S")', 'smallest of some', CONDITIONAL],
  ['MAXIFS', `figures: where to find the greatest | ${PAIRS}`, 'The greatest figure that fits every condition.', 'MAXIFS({86 cm;92 cm;88 cm}, {"S";"M";"S"}, "S")', 'largest of some', CONDITIONAL],
  ['LARGE', 'figures: a block of figures | place: 1 for the greatest, 2 for the next', 'The greatest figure but one, but two and so on.', 'LARGE({86 cm;92 cm;88 cm}, 2)', 'second largest', FIRST],
  ['SMALL', 'figures: a block of figures | place: 1 for the least, 2 for the next', 'The least figure but one, but two and so on.', 'SMALL({86 cm;92 cm;88 cm}, 2)', 'second smallest', FIRST],
  ['RANK', 'figure: which one | figures: among which | way?: 0 counts from the greatest, 1 from the least; 0 if left out', 'The place that a figure has among others.', 'RANK(92 cm, {86 cm;92 cm;97 cm})', 'order of size; which place', COUNTED],
  ['PERCENTILE', 'figures: a block of figures | share: from 0 to 1', 'The figure that so much of all figures do not exceed; between two in proportion.', 'PERCENTILE({86 cm;92 cm;88 cm}, 0.9)', 'how many women are smaller', FIRST],
  ['PERCENTRANK', 'figures: a block of figures | figure: which one | decimals?: so many, 3 if left out', 'The share of the others that are below a figure, from 0 to 1, cut off after some decimals.', 'PERCENTRANK({86 cm;92 cm;88 cm}, 88 cm)', 'how many are smaller', COUNTED],
  ['PERCENTILE.EXC', 'figures: a block of figures | share: between 0 and 1, without them', 'As PERCENTILE, counted so that neither end is reached.', 'PERCENTILE.EXC({1;2;3;4}, 0.4)', '', FIRST],
  ['QUARTILE', 'figures: a block of figures | quarter: 0 least, 1, 2 middle, 3, 4 greatest', 'The figure at a quarter, a half or three quarters of the way up.', 'QUARTILE({86 cm;92 cm;88 cm}, 1)', 'lower quarter', FIRST],
  ['QUARTILE.EXC', 'figures: a block of figures | quarter: 1, 2 or 3', 'As QUARTILE, counted so that neither end is reached.', 'QUARTILE.EXC({1;2;3;4}, 1)', '', FIRST],
]);
