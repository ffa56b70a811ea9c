/** Random rows, some of them hidden and some taller, beside a plain list of their heights. */
import fc from 'fast-check';
import { LINE_HEIGHT, MOST_LINES, ROW_HEIGHT, RowAxis } from '../../../src/grid/row-axis.ts';
import type { Runs } from '../../../src/workbook/types.ts';

export interface Drawn {
  readonly axis: RowAxis;
  /** By row; 0 for a hidden one. */
  readonly heights: readonly number[];
}

/** Stretches of the hidden ones, as the workbook keeps them. */
export function runsOf(hidden: readonly boolean[]): Runs {
  const runs: [number, number][] = [];
  hidden.forEach((each, row) => {
    const last = runs.at(-1);
    if (!each) return;
    if (last && last[1] === row - 1) last[1] = row;
    else runs.push([row, row]);
  });
  return runs;
}

export function axisOf(most = 1000): fc.Arbitrary<Drawn> {
  const row = fc.oneof({ weight: 6, arbitrary: fc.constant(1) }, { weight: 2, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.integer({ min: 2, max: 9 }) });
  // A stretch of one kind at a time, as hiding and filtering make them.
  const stretch = fc.tuple(row, fc.integer({ min: 1, max: 40 }));
  return fc.array(stretch, { minLength: 1, maxLength: 40 }).map((stretches) => {
    const lines = stretches.flatMap(([each, count]) => new Array<number>(count).fill(each)).slice(0, most);
    if (!lines.some((each) => each > 0)) lines.push(1);
    const axis = new RowAxis({
      rowCount: lines.length, hidden: { rows: runsOf(lines.map((each) => each === 0)) },
      tall: lines.flatMap((each, at): [number, number][] => (each > 1 ? [[at, each]] : [])),
    });
    return { axis, heights: lines.map((each) => (each === 0 ? 0 : ROW_HEIGHT + (Math.min(MOST_LINES, each) - 1) * LINE_HEIGHT)) };
  });
}
