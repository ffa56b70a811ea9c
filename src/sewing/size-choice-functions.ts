/** Choosing a size at each level, and what a size leaves there. */
import { listed } from './chart-labels.ts';
import { define, mm, plain } from './define.ts';
import type { Pad, Step } from './define.ts';
import { orRefuse } from './pad.ts';
import { adviseLevel, leftOf } from './size-choice-advice.ts';
import { measuredIn } from './size-choice-block.ts';
import { bustDifference, problemOf, USUAL_BUST_DIFFERENCE } from './size-choice-body.ts';
import { cheapest, offeredAt, wantedAt } from './size-choice-plan.ts';
import type { Level, Plan } from './size-choice-plan.ts';
import { costInMillimetres, COST_IN_WORDS, countedMisfit, missing, STYLES, USUAL_PREFERENCES } from './size-choice-cost.ts';
import type { Preferences } from './size-choice-cost.ts';
import { continuedFigure, watchContinued } from './size-choice-continued.ts';
import { Ladder } from './size-choice-ladder.ts';
import { columnsFor, sameLevel } from './size-choice-levels.ts';
import type { SizeChart } from './size-chart.ts';
import type { ChartMeasure } from './chart-measure.ts';

const CHART = { name: 'chart', kind: 'chart', about: 'the size chart, its labels with it; measures with “finished” in their names are those of the garment' } as const;
const LEVEL = { name: 'level', kind: 'text', about: 'where, such as "bust"' } as const;
const SIZE = { name: 'size', kind: 'size', about: 'a size of the chart, or one that continues it' } as const;

/** The figures of the choice, level by level, and what they come to. */
function showCost(ladder: Ladder, levels: readonly Level[], plan: Plan, preferences: Preferences, pad: Pad): void {
  const sum: (Step['sum'][number])[] = [];
  for (const [i, level] of levels.entries()) {
    const at = plan.at[i] as number;
    const [offered, wanted] = [offeredAt(ladder, level, at), wantedAt(level)];
    const has = offered.low === offered.high ? [mm(offered.low)] : [mm(offered.low), ' to ', mm(offered.high)];
    const wants = wanted.low === wanted.high ? [mm(wanted.low)] : Number.isFinite(wanted.high) ? [mm(wanted.low), ' to ', mm(wanted.high)] : [mm(wanted.low), ' or more'];
    pad.length(`${level.name}: what size ${ladder.rung(at).text} has, against what is wanted`, [...has, ' against ', ...wants], Math.max(...Object.values(missing(offered, wanted))));
    for (const { times, mm: off } of countedMisfit(level.name, offered, wanted, preferences.style)) sum.push(...(sum.length === 0 ? [] : [' + ']), plain(times), ' × ', mm(off));
  }
  const changes = plan.at.slice(1).reduce((all, at, i) => all + Math.abs(at - (plan.at[i] as number)), 0);
  sum.push(' + ', plain(changes), ' × ', mm(preferences.change));
  pad.length('all of them as they count, and each size of change; no other sizes come to less', sum, costInMillimetres(plan.cost));
}

function columnShown(chart: SizeChart, level: string, pad: Pad): { readonly column: ChartMeasure; readonly finished: boolean } {
  const { body, finished } = orRefuse(columnsFor(chart, level), pad);
  const column = finished ?? body;
  if (column === undefined) return pad.refuse(`The size chart has no figures for ${level}.`);
  if (column.fault) return pad.refuse(column.fault.sentence);
  return { column, finished: finished !== undefined };
}

function placeOf(ladder: Ladder, size: number | string, pad: Pad): number {
  const at = ladder.called(size);
  if (at === undefined) return pad.refuse(`There is no size ${size} in the size chart, nor among those that continue it; there are ${listed(ladder.rungs.map(({ text }) => text))}.`);
  return at;
}

export const SIZE_CHOICE_FUNCTIONS = [
  define({
    name: 'SIZE.CHOOSE',
    topic: 'size',
    about: 'The size to cut at one level when all levels are weighed together, with as few changes of size as are worth it.',
    asks: ['which size at bust waist and hip', 'different size at the hip', 'should I blend sizes', 'choose a size for each level'],
    args: [
      CHART,
      { name: 'measures', kind: 'block', about: 'a block in which each level has its name and its measure beside it, and after it the least and the most ease wanted; a high bust is set against the bust' },
      { ...LEVEL, about: 'the level whose size is asked for, such as "bust"' },
      { name: 'style', kind: 'choice', about: 'how the garment is to sit', choices: STYLES, usual: USUAL_PREFERENCES.style },
      { name: 'change', kind: 'length', about: 'what each size of change between neighbouring levels counts as', atLeast: 0, usual: USUAL_PREFERENCES.change },
      { name: 'apart', kind: 'number', about: 'so many sizes neighbouring levels may be apart at most', atLeast: 0, usual: USUAL_PREFERENCES.apart },
    ],
    gives: 'size',
    rule: COST_IN_WORDS,
    source: 'own arithmetic; there is no standard for it. Choosing by the high bust is common practice',
    example: '=SIZE.CHOOSE(chart, measures, "hip")',
    work([chart, block, wanted, style, change, apart], pad) {
      if (!Number.isInteger(apart)) pad.refuse('How many sizes neighbouring levels may be apart is a whole number, or 0 for one size everywhere.');
      const preferences: Preferences = { style, change, apart };
      const problem = orRefuse(problemOf(chart, measuredIn(block, pad)), pad);
      const { ladder, levels, bust } = problem;
      const i = levels.findIndex(({ name }) => sameLevel(name, wanted));
      if (i < 0) return pad.refuse(`There is no ${wanted} among the measures; they are of ${listed(levels.map(({ name }) => name))}.`);
      pad.showIn(ladder.columns[0].unit);
      const plan = cheapest(ladder, levels, preferences);
      if (bust && bust.basis < bust.bust) {
        pad.length('the bust that the size is chosen by: the high bust and the usual difference', [mm(bust.highBust), ' + ', mm(bust.usual)], bust.basis);
        if (sameLevel(wanted, 'bust')) pad.caution('The bust is more than the high bust by more than the pattern is drawn for, so the size is chosen by the high bust: give the front the rest, as BUST.SPREAD has it.');
      }
      showCost(ladder, levels, plan, preferences, pad);
      const { size, why, pins } = adviseLevel(problem, plan, i, preferences, (length) => pad.say(length));
      for (const pin of pins) pad.caution(pin);
      pad.text('why', [], why);
      const words = `the size at the ${(levels[i] as Level).name}`;
      return typeof size.value === 'number' ? pad.number(words, [], size.value) : pad.text(words, [], size.value);
    },
  }),
  define({
    name: 'SIZE.EASE',
    topic: 'size',
    about: 'What a size leaves at a level: the ease where the chart has finished measures, otherwise by how much the chart’s body is larger.',
    asks: ['how much ease does size 12 give me', 'ease of the next larger size', 'compare sizes at the hip'],
    args: [
      CHART, LEVEL,
      { name: 'body', kind: 'length', about: 'the body’s measure there', above: 0 },
      SIZE,
      { name: 'further', kind: 'number', about: 'so many sizes larger than that, below 0 for smaller; 0 without it', atLeast: -3, atMost: 3, usual: 0 },
    ],
    gives: 'length',
    rule: 'finished measure − body, or the chart’s body measure − body; inside a range of the chart it is 0. Past its ends the chart is continued by its own last step',
    source: 'exact geometry',
    example: '=SIZE.EASE(chart, "hip", 102 cm, 10, 1)',
    work([chart, level, body, size, further], pad) {
      if (!Number.isInteger(further)) pad.refuse('How many sizes further is a whole number, such as 1 for the next larger and -1 for the next smaller.');
      const { column, finished } = columnShown(chart, level, pad);
      const ladder = new Ladder([column]);
      const at = placeOf(ladder, size, pad) + further;
      if (ladder.rungs[at] === undefined) {
        return further < 0 ? pad.refuse(`There are not so many sizes below ${size}, even where the chart is continued.`) : pad.refuse(`There are not so many sizes above ${size}, even where the chart is continued.`);
      }
      const label = ladder.rung(at).text;
      watchContinued(ladder, column, at, pad);
      const [figure, range] = [ladder.figure(column, at), ladder.range(column, at)];
      if (range !== undefined) return pad.length(`the chart’s ${column.name} for size ${label}, against the body; 0 inside the range`, [mm(range.low), ' to ', mm(range.high), ' against ', mm(body)], leftOf(body, figure, range));
      const words = finished ? `finished measure of size ${label} minus body` : `the chart’s ${column.name} for size ${label} minus body`;
      return pad.length(words, [mm(figure), ' − ', mm(body)], leftOf(body, figure, range));
    },
  }),
  define({
    name: 'SIZE.CONTINUED',
    topic: 'size',
    about: 'The chart’s figure for a size, also for sizes above or below the chart, which are continued by its own last step.',
    asks: ['size above the chart', 'size below the chart', 'the pattern ends before my size', 'grade up one more size'],
    args: [CHART, { name: 'measure', kind: 'text', about: 'which measure of the chart, such as "bust"' }, SIZE],
    gives: 'length',
    rule: 'figure of the last size + steps beyond it × (figure of the last − figure of the one before), and so downwards from the first; ranges go on by their own width. At most 3 sizes beyond',
    source: 'common practice',
    example: '=SIZE.CONTINUED(chart, "bust", 16)',
    work([chart, measure, size], pad) {
      const column = orRefuse(chart.measure(measure), pad);
      pad.showIn(column.unit);
      const ladder = new Ladder([column]);
      const at = placeOf(ladder, size, pad);
      watchContinued(ladder, column, at, pad);
      return continuedFigure(ladder, column, at, pad);
    },
  }),
  define({
    name: 'BUST.BASIS',
    topic: 'fit',
    about: 'The bust that a size is chosen by: the full bust, or the high bust and the usual difference where the bust is fuller than patterns are drawn for.',
    asks: ['choose the size by high bust', 'upper chest or full bust', 'full bust adjustment or larger size'],
    args: [
      { name: 'bust', kind: 'length', about: 'the body’s full bust', above: 0 },
      { name: 'high bust', kind: 'length', about: 'the girth high under the arms, above the bust', above: 0 },
      { name: 'usual', kind: 'length', about: 'difference for which the pattern is drawn; 5 cm (2 in) where it does not say', usual: USUAL_BUST_DIFFERENCE },
    ],
    gives: 'length',
    rule: 'the smaller of bust and high bust + usual',
    source: 'common practice',
    example: '=BUST.BASIS(100 cm, 91 cm)',
    work([bust, highBust, usual], pad) {
      const { difference, basis } = bustDifference(bust, highBust, usual);
      pad.length('bust minus high bust', [mm(bust), ' − ', mm(highBust)], difference);
      if (basis < bust) pad.caution('The bust is fuller than the pattern is drawn for: give the front the rest, as BUST.SPREAD has it.');
      return basis < bust
        ? pad.length('more than usual, so the high bust and the usual difference', [mm(highBust), ' + ', mm(usual)], basis)
        : pad.length('no more than usual, so the bust itself', [], basis);
    },
  }),
];
