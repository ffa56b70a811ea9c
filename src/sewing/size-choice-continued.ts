/** Figures of sizes above and below the chart, marked as continued. */
import type { ChartMeasure } from './chart-measure.ts';
import { mm, plain } from './define.ts';
import type { Pad } from './define.ts';
import { sizeFigure } from './size-between.ts';
import { Ladder } from './size-choice-ladder.ts';

/** A pin for a size that the chart does not have. */
export function watchContinued(ladder: Ladder, column: ChartMeasure, at: number, pad: Pad): void {
  const { text, beyond, place } = ladder.rung(at);
  if (beyond !== 0) pad.caution(`Size ${text} is not in the chart: it is continued from size ${column.sizes.label(place).text} by the chart’s own last step.`);
}

/** As SIZE.MEASURE has it, between two sizes too; past the chart's ends as SIZE.CONTINUED has it. */
export function figureOrContinued(column: ChartMeasure, size: number | string, pad: Pad): number {
  const ladder = new Ladder([column]);
  const at = ladder.called(size);
  if (at === undefined || ladder.rung(at).beyond === 0) return sizeFigure(column, size, pad);
  watchContinued(ladder, column, at, pad);
  return continuedFigure(ladder, column, at, pad);
}

export function continuedFigure(ladder: Ladder, column: ChartMeasure, at: number, pad: Pad): number {
  const { beyond, place } = ladder.rung(at);
  const figure = ladder.figure(column, at);
  const label = column.sizes.label(place).text;
  if (beyond === 0) return pad.length(`the chart’s ${column.name} for size ${label}`, [], figure);
  const end = column.figure(place);
  return pad.length(`the chart’s ${column.name} for size ${label}, and so many of its steps on`, [mm(end), beyond < 0 ? ' − ' : ' + ', plain(Math.abs(beyond)), ' × ', mm(Math.abs(figure - end) / Math.abs(beyond))], figure);
}
