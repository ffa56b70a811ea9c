/** Choosing a size from a chart, and reading the chart's figures for it. */
import { define, mm } from './define.ts';
import { orRefuse } from './pad.ts';
import { chartFigure, placeBetween, sizeBetween, sizeFigure } from './size-between.ts';
import { chooseSize, labelOf, RULES } from './size-choice.ts';
import { bestPlace, levelsOf, placesFor, showMisfit } from './size-fit.ts';

const CHART = { name: 'chart', kind: 'chart', about: 'the size chart, its labels with it' } as const;
const MEASURE = { name: 'measure', kind: 'text', about: 'which measure of the chart, such as "bust"' } as const;
const GIRTH = { name: 'girth', kind: 'length', about: 'the body’s measure', above: 0 } as const;
const SIZE = { name: 'size', kind: 'size', about: 'a size of the chart, or a number between two' } as const;

const MEASURES = { name: 'measures', kind: 'block', about: 'a block in which each measure has its name as in the chart and its length beside it' } as const;
const WEIGHTS = { name: 'weights', kind: 'block', about: 'a block with a number for each measure, in the same order: the more it matters, the larger; without it all matter alike', usual: '' } as const;

export const SIZE_FUNCTIONS = [
  define({
    name: 'SIZE.AT',
    topic: 'size',
    about: 'The size whose figure in the chart suits a measure.',
    asks: ['which size am I', 'what size should I cut', 'which size for my bust', 'size from a chart'],
    args: [CHART, MEASURE, GIRTH, { name: 'rule', kind: 'choice', about: 'the nearest size, the smallest that is not under, or the largest that is not over', choices: RULES, usual: 'nearest' }],
    gives: 'size',
    rule: 'the size with the least difference, the larger of two that differ as much; in a chart of ranges the size with from ≤ girth < to, a gap shared half and half',
    source: 'common practice',
    example: '=SIZE.AT(chart, "bust", 37 in)',
    work([chart, measure, girth, rule], pad) {
      const column = orRefuse(chart.measure(measure), pad);
      const { place, words, sum } = chooseSize(column, girth, rule, pad);
      const { value } = column.sizes.label(place);
      return typeof value === 'number' ? pad.number(words, sum, value) : pad.text(words, sum, value);
    },
  }),
  define({
    name: 'SIZE.BETWEEN',
    topic: 'size',
    about: 'Where a measure falls between two sizes, as a number.',
    asks: ['between two sizes', 'how far between sizes am I', 'in-between size', 'exact size'],
    args: [CHART, MEASURE, GIRTH],
    gives: 'number',
    rule:
      'lower size + (girth − its figure) ÷ (next figure − its figure) × (next size − lower size); 00 counts one step below 0. ' +
      'Where sizes are not numbers, and in a chart of ranges, sizes count 1, 2, 3 … from the first; a range runs from half a size below its count to half a size above, so that rounding half up agrees with SIZE.AT',
    source: 'exact geometry; 00 below 0 is common practice',
    example: '=SIZE.BETWEEN(chart, "waist", 31 in)',
    work([chart, measure, girth], pad) {
      return sizeBetween(orRefuse(chart.measure(measure), pad), girth, pad);
    },
  }),
  define({
    name: 'SIZE.MEASURE',
    topic: 'size',
    about: 'The chart’s figure for a size, or for a number between two sizes.',
    asks: ['what is the bust of size 12', 'figure in the size chart', 'measure of a size'],
    args: [CHART, MEASURE, SIZE],
    gives: 'length',
    rule: 'the chart’s figure, the middle of its range where it has one; between two sizes the figure in proportion',
    source: 'exact geometry',
    example: '=SIZE.MEASURE(chart, "bust", 12)',
    work([chart, measure, size], pad) {
      const column = orRefuse(chart.measure(measure), pad);
      pad.showIn(column.unit);
      return sizeFigure(column, size, pad);
    },
  }),
  define({
    name: 'SIZE.STEP',
    topic: 'size',
    about: 'How much the chart’s figure grows from a size to the next.',
    asks: ['grade between sizes', 'how much bigger is the next size', 'step from one size to the next'],
    args: [CHART, MEASURE, SIZE],
    gives: 'length',
    rule: 'figure of the next size − figure of this size',
    source: 'exact geometry',
    example: '=SIZE.STEP(chart, "bust", 12)',
    work([chart, measure, size], pad) {
      const column = orRefuse(chart.measure(measure), pad);
      pad.showIn(column.unit);
      const { sizes } = column;
      const place = sizes.called(size) ?? Math.max(0, Math.floor(placeBetween(column, size, pad).place));
      if (place >= sizes.count - 1) return pad.refuse(`Size ${labelOf(column, sizes.count - 1)} is the last of the size chart: there is no next one.`);
      const [here, next] = [chartFigure(column, place, pad), chartFigure(column, place + 1, pad)];
      return pad.length('the next size’s figure minus this one’s', [mm(next), ' − ', mm(here)], next - here);
    },
  }),
  define({
    name: 'SIZE.FIT',
    topic: 'size',
    about: 'The one size that fits several measures best together.',
    asks: ['one size for bust waist and hip', 'which single size is best', 'size with the least alteration'],
    args: [CHART, MEASURES, WEIGHTS],
    gives: 'size',
    rule: 'the size with the least sum of weight × distance from the chart’s figure, the larger of two that fit as well; inside a range the distance is 0',
    source: 'own arithmetic; there is no standard for it',
    example: '=SIZE.FIT(chart, measures)',
    work([chart, measures, weights], pad) {
      const levels = levelsOf(chart, measures, weights, pad);
      pad.showIn(levels[0]?.column.unit ?? 'cm');
      const place = bestPlace(levels, pad);
      showMisfit(levels, place, pad);
      const { value } = (levels[0] as (typeof levels)[number]).column.sizes.label(place);
      const words = 'the size for which that sum is least';
      return typeof value === 'number' ? pad.number(words, [], value) : pad.text(words, [], value);
    },
  }),
  define({
    name: 'SIZE.MISFIT',
    topic: 'size',
    about: 'How far a size is from several measures, all together: what SIZE.FIT makes least.',
    asks: ['how badly does this size fit', 'compare two sizes', 'misfit of a size'],
    args: [CHART, MEASURES, { name: 'size', kind: 'size', about: 'a size of the chart' }, WEIGHTS],
    gives: 'length',
    rule: 'sum of weight × distance from the chart’s figure; inside a range the distance is 0',
    source: 'own arithmetic; there is no standard for it',
    example: '=SIZE.MISFIT(chart, measures, 12)',
    work([chart, measures, size, weights], pad) {
      const levels = levelsOf(chart, measures, weights, pad);
      pad.showIn(levels[0]?.column.unit ?? 'cm');
      const place = levels[0]?.column.sizes.called(size);
      if (place === undefined || !placesFor(levels, pad).includes(place)) return pad.refuse(`The size chart has no size ${size} with a figure for each of these measures.`);
      return showMisfit(levels, place, pad);
    },
  }),
];
