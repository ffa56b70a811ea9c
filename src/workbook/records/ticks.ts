/** What was ticked off: bought in the shop, cut and done at the table. One record a list. */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { MOST_PARTS, formula, text } from './parts.ts';

export interface Tick {
  /** The cell that it stands by. */
  readonly cell: string;
  /** Its figures when it was ticked, as they would be typed: with others it has to be looked at again. */
  readonly was: string;
}

export interface Ticks {
  readonly ticks: readonly Tick[];
}

export const ticksKind: RecordKindCard<Ticks> = {
  called: 'the ticks',
  schema: v.object({ ticks: v.pipe(v.array(v.object({ cell: formula, was: text })), v.maxLength(MOST_PARTS)) }),
  title: () => '',
  follow: (data, rewrite) => {
    const ticks = data.ticks.map((tick) => {
      const cell = rewrite(tick.cell);
      return cell === tick.cell ? tick : { ...tick, cell };
    });
    return ticks.every((tick, at) => tick === data.ticks[at]) ? data : { ticks };
  },
};
