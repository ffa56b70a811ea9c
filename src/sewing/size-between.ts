/** Between two sizes: from a girth to a number, and from a size or a number to a figure. */
import { listed, sizeNumber } from './chart-labels.ts';
import { tolerance } from './chart-measure.ts';
import type { ChartMeasure } from './chart-measure.ts';
import { mm, plain } from './define.ts';
import type { Pad } from './define.ts';
import { endBeyond, labelOf, rangeHolding } from './size-choice.ts';

export function sizeBetween(column: ChartMeasure, girth: number, pad: Pad): number {
  return column.ranged ? countInRanges(column, girth, pad) : betweenFigures(column, girth, pad);
}

function mustRise(column: ChartMeasure, rises: boolean, pad: Pad): void {
  if (!rises) pad.refuse(`In the size chart, ${column.name} does not rise from each size to the next, so a measure has no one place between sizes: SIZE.AT gives the size.`);
}

function betweenFigures(column: ChartMeasure, girth: number, pad: Pad): number {
  const { rungs, sizes } = column;
  mustRise(column, column.rises, pad);
  const up = column.rungNotBelow(girth);
  const [below, above] = [rungs[up - 1], rungs[up]];
  if (above !== undefined && above.figure - girth <= tolerance(girth)) {
    return pad.number(`size ${labelOf(column, above.last)} has this very figure`, [mm(above.figure)], sizes.at(above.last));
  }
  if (below === undefined || above === undefined) {
    return pad.refuse(`${pad.say(girth)} lies outside the size chart, whose ${endBeyond(column, girth, pad).named}.`);
  }
  const missing = sizes.labels.slice(below.last + 1, above.first).map((label) => label.text);
  if (missing.length > 0) pad.caution(`The size chart has no ${column.name} for size ${listed(missing)}, which lies between: the position is reckoned across it.`);
  const [low, high] = [sizes.at(below.last), sizes.at(above.first)];
  const part = pad.number(
    `how far from size ${labelOf(column, below.last)} to size ${labelOf(column, above.first)}`,
    ['(', mm(girth), ' − ', mm(below.figure), ') ÷ (', mm(above.figure), ' − ', mm(below.figure), ')'],
    (girth - below.figure) / (above.figure - below.figure),
  );
  return pad.number('the size that far between them', [plain(low), ' + ', plain(part), ' × (', plain(high), ' − ', plain(low), ')'], low + part * (high - low));
}

function countInRanges(column: ChartMeasure, girth: number, pad: Pad): number {
  mustRise(column, column.rangesRise, pad);
  const range = rangeHolding(column, girth, pad);
  const count = pad.number(`the count of size ${labelOf(column, range.place)}, whose range holds the girth`, [mm(range.low), ' ≤ ', mm(girth), ' < ', mm(range.high)], range.place + 1);
  // From the size's own figure to either edge is half a size.
  const half = girth < range.at ? range.at - range.from : range.to - range.at;
  const part = pad.number(
    'how far from the size’s own figure, in sizes',
    ['(', mm(girth), ' − ', mm(range.at), ') ÷ (2 × ', mm(half), ')'],
    Math.max(-0.5, (girth - range.at) / (2 * half)),
  );
  return pad.number('that far from the count', [plain(count), ' + ', plain(part)], count + part);
}

/** The chart's figure for a size's label or a number between two sizes, in mm. */
export function sizeFigure(column: ChartMeasure, size: number | string, pad: Pad): number {
  const place = column.sizes.called(size);
  return place === undefined ? figureBetween(column, size, pad) : chartFigure(column, place, pad);
}

export function chartFigure(column: ChartMeasure, place: number, pad: Pad): number {
  const label = labelOf(column, place);
  if (!column.has(place)) return pad.refuse(`The size chart has no ${column.name} for size ${label}.`);
  const figure = column.figure(place);
  const range = column.rangeAt(place);
  return range === undefined
    ? pad.length(`the chart’s ${column.name} for size ${label}`, [], figure)
    : pad.length(`the ${column.name} of size ${label}, which stands for its range`, [mm(range.low), ' to ', mm(range.high)], figure);
}

/** A number between sizes as a place that need not be whole, and the number; refuses what the chart does not have. */
export function placeBetween(column: ChartMeasure, size: number | string, pad: Pad): { readonly place: number; readonly number: number } {
  const { sizes } = column;
  const number = typeof size === 'number' ? size : sizeNumber(size);
  const all = listed(sizes.labels.map((label) => label.text));
  if (number === null) return pad.refuse(`The size chart has no size ${size}; it has ${all}.`);
  // Where ranges are counted, they reach half a size beyond the first and the last count.
  const edge = column.ranged && !sizes.numbered ? 0.5 : 0;
  const [first, last] = [sizes.at(0), sizes.at(sizes.count - 1)];
  if (number < first - edge || number > last + edge) {
    return sizes.numbered
      ? pad.refuse(`Size ${size} lies outside the size chart, which goes from ${labelOf(column, 0)} to ${labelOf(column, sizes.count - 1)}.`)
      : pad.refuse(`The size chart has no size ${size}: write a label (${all}), or a count from 1 to ${sizes.count}.`);
  }
  const below = sizes.notAbove(number);
  if (below < 0) return { place: number - first, number };
  if (below === sizes.count - 1) return { place: below + (number - last), number };
  return { place: below + (number - sizes.at(below)) / (sizes.at(below + 1) - sizes.at(below)), number };
}

function figureBetween(column: ChartMeasure, size: number | string, pad: Pad): number {
  const { sizes } = column;
  const { place, number } = placeBetween(column, size, pad);
  if (column.ranged && !sizes.numbered) {
    const nearest = Math.min(sizes.count - 1, Math.floor(place + 0.5));
    const figure = chartFigure(column, nearest, pad);
    const part = place - nearest;
    const range = column.rangeAt(nearest);
    if (range === undefined || part === 0) return figure;
    const half = part < 0 ? range.at - range.from : range.to - range.at;
    return pad.length('that part of a size away from it', [mm(figure), ' + ', plain(part), ' × 2 × ', mm(half)], figure + part * 2 * half);
  }
  const below = Math.floor(place);
  const low = chartFigure(column, below, pad);
  if (place === below) return low;
  const high = chartFigure(column, below + 1, pad);
  const part = pad.number(
    'how far between the two sizes',
    ['(', plain(number), ' − ', plain(sizes.at(below)), ') ÷ (', plain(sizes.at(below + 1)), ' − ', plain(sizes.at(below)), ')'],
    place - below,
  );
  return pad.length('the figure that far between', [mm(low), ' + ', plain(part), ' × (', mm(high), ' − ', mm(low), ')'], low + part * (high - low));
}
