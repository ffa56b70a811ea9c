/** Which size of a chart suits a girth: the choices that SIZE.AT makes. */
import { tolerance } from './chart-measure.ts';
import type { ChartMeasure, RangeOfSize } from './chart-measure.ts';
import { mm } from './define.ts';
import type { Pad, Step } from './define.ts';

/** The size chosen, and the last step of the working that says why. */
export interface Chosen {
  readonly place: number;
  readonly words: string;
  readonly sum: Step['sum'];
}

type Choose = (column: ChartMeasure, girth: number, pad: Pad) => Chosen;

export const RULES = ['nearest', 'not under', 'not over'] as const;

export function chooseSize(column: ChartMeasure, girth: number, rule: (typeof RULES)[number], pad: Pad): Chosen {
  return (column.ranged ? byRange : BY_RULE[rule])(column, girth, pad);
}

const BY_RULE: Record<(typeof RULES)[number], Choose> = {
  nearest(column, girth, pad) {
    const { rungs } = column;
    const up = column.rungNotBelow(girth);
    const [below, above] = [rungs[up - 1], rungs[up]];
    if (above !== undefined && above.figure - girth <= tolerance(girth)) {
      return { place: above.last, words: 'the size with this very figure', sum: [mm(above.figure)] };
    }
    if (below === undefined || above === undefined) return atTheEnd(column, girth, pad);
    const [lower, upper] = [labelOf(column, below.last), labelOf(column, above.last)];
    const down = pad.length(`from size ${lower} up to the girth`, [mm(girth), ' − ', mm(below.figure)], girth - below.figure);
    const rest = pad.length(`from the girth up to size ${upper}`, [mm(above.figure), ' − ', mm(girth)], above.figure - girth);
    if (Math.abs(down - rest) <= tolerance(girth)) {
      return { place: Math.max(below.last, above.last), words: 'a tie, so the larger size', sum: [lower, ' or ', upper] };
    }
    return { place: (down < rest ? below : above).last, words: 'the nearer size', sum: [lower, ' or ', upper] };
  },
  'not under'(column, girth, pad) {
    const rung = column.rungs[column.rungNotBelow(girth)];
    if (rung === undefined) return noneFits(column, true, girth, pad);
    compare(column, rung.leastUp, girth, pad);
    return { place: rung.leastUp, words: 'the smallest size that is not under the girth', sum: [] };
  },
  'not over'(column, girth, pad) {
    const up = column.rungNotBelow(girth);
    const exact = column.rungs[up];
    const rung = exact !== undefined && exact.figure - girth <= tolerance(girth) ? exact : column.rungs[up - 1];
    if (rung === undefined) return noneFits(column, false, girth, pad);
    compare(column, rung.mostDown, girth, pad);
    return { place: rung.mostDown, words: 'the largest size that is not over the girth', sum: [] };
  },
};

export function labelOf(column: ChartMeasure, place: number): string {
  return column.sizes.label(place).text;
}

/** Half the step between the two figures at an end of the chart; 0 where there is only one. */
function halfEndStep(column: ChartMeasure, larger: boolean): number {
  const [a, b] = larger ? column.rungs.slice(-2) : column.rungs.slice(0, 2);
  return a === undefined || b === undefined ? 0 : (b.figure - a.figure) / 2;
}

/** The end of the chart that a girth lies beyond. */
export function endBeyond(column: ChartMeasure, girth: number, pad: Pad): { readonly larger: boolean; readonly figure: number; readonly place: number; readonly named: string } {
  const [first, last] = [column.rungs[0], column.rungs.at(-1)];
  if (first === undefined || last === undefined) return pad.refuse(`The size chart has no figures for ${column.name}.`);
  const larger = girth > last.figure;
  const { figure, last: place } = larger ? last : first;
  return { larger, figure, place, named: `${larger ? 'largest' : 'smallest'} ${column.name} is ${pad.say(figure)} (size ${labelOf(column, place)})` };
}

/** Beyond an end of the chart but within half its step there, the end's size still does. */
function atTheEnd(column: ChartMeasure, girth: number, pad: Pad): Chosen {
  const { larger, figure, place, named } = endBeyond(column, girth, pad);
  if (Math.abs(girth - figure) > halfEndStep(column, larger) + tolerance(girth)) {
    return pad.refuse(`The size chart’s ${named}, and ${pad.say(girth)} is too far ${larger ? 'above' : 'below'} it for any size of this chart.`);
  }
  if (larger) pad.length('how far the girth is beyond the chart’s largest', [mm(girth), ' − ', mm(figure)], girth - figure);
  else pad.length('how far the girth is short of the chart’s smallest', [mm(figure), ' − ', mm(girth)], figure - girth);
  pad.caution(`The measure lies outside the size chart, by no more than half a step: the ${larger ? 'largest' : 'smallest'} size is given, with ${larger ? 'less' : 'more'} ease than meant. The chart’s figure for it is this.`, mm(figure));
  return { place, words: `no more than half a step, so the ${larger ? 'largest' : 'smallest'} size`, sum: [] };
}

function noneFits(column: ChartMeasure, under: boolean, girth: number, pad: Pad): never {
  const { named } = endBeyond(column, girth, pad);
  return pad.refuse(`Every size of the chart is ${under ? 'under' : 'over'} ${pad.say(girth)}: its ${named}.`);
}

/** Sets the chosen size's figure against the girth, with a pin where the chart is left far behind. */
function compare(column: ChartMeasure, place: number, girth: number, pad: Pad): void {
  const figure = column.figure(place);
  pad.length(`the figure of size ${labelOf(column, place)} minus the girth`, [mm(figure), ' − ', mm(girth)], figure - girth);
  const [first, last] = [column.rungs[0]?.figure ?? girth, column.rungs.at(-1)?.figure ?? girth];
  const larger = girth > last;
  const outside = Math.max(first - girth, girth - last);
  if (outside > halfEndStep(column, larger) + tolerance(girth)) {
    pad.caution('The measure lies outside the size chart by more than half a step: the size given is far from it. The chart’s figure for it is this.', mm(figure));
  }
}

/** The range that holds a girth; refuses outside the chart. */
export function rangeHolding(column: ChartMeasure, girth: number, pad: Pad): RangeOfSize {
  const range = column.rangeOf(girth);
  if (range !== undefined) return range;
  const [first, last] = [column.ranges[0], column.ranges.at(-1)];
  if (first === undefined || last === undefined) return pad.refuse(`The size chart has no ranges for ${column.name}.`);
  return girth < first.low
    ? pad.refuse(`The size chart’s ${column.name} starts at ${pad.say(first.low)} (size ${labelOf(column, first.place)}), and ${pad.say(girth)} is below it.`)
    : pad.refuse(`The size chart’s ${column.name} goes up to, but does not include, ${pad.say(last.high)} (size ${labelOf(column, last.place)}), and ${pad.say(girth)} is not below it.`);
}

function byRange(column: ChartMeasure, girth: number, pad: Pad): Chosen {
  const range = rangeHolding(column, girth, pad);
  const near = tolerance(girth);
  const holds = (other: RangeOfSize): boolean => other.low - near <= girth && girth < other.high - near;
  if (!holds(range)) {
    pad.caution('The measure falls into a gap between two ranges of the size chart: the nearer size is given, from half-way the larger.');
    return { place: range.place, words: 'the size with the nearest range', sum: [mm(range.low), ' to ', mm(range.high)] };
  }
  if (column.ranges.some((other) => other !== range && holds(other))) {
    pad.caution('Two ranges of the size chart hold this measure: where they overlap they are shared half and half.');
  }
  return { place: range.place, words: 'the size whose range holds the girth', sum: [mm(range.low), ' ≤ ', mm(girth), ' < ', mm(range.high)] };
}
