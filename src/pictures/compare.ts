/** Two lengths of one thing on one scale, and what one has beyond the other: ease, stretch, shrinkage, cap and armhole. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { box, hatch } from './draw.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { sayIn } from './words.ts';

export interface TwoLengths {
  /** What the second is measured against, such as the body. */
  readonly base: {
    readonly name: string;
    readonly length: number;
    /** As it is called where the difference is told as a share of it: "the body". */
    readonly of: string;
  };
  readonly other: { readonly name: string; readonly length: number };
  /** What the second has beyond the first, such as "ease". */
  readonly more: string;
  /** What it is called where the second is the shorter one, such as "smaller than the body by". */
  readonly less: string;
  /** Says that less is a fault, and marks it with a pin. */
  readonly lessIsWrong?: boolean;
  readonly unit: UnitCode;
}

const BAR = 20;

export function twoLengths({ base, other, more, less, lessIsWrong, unit }: TwoLengths, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const difference = other.length - base.length;
  const share = base.length > 0 ? difference / base.length : 0;
  const plate = new Plate();
  const k = fit(Math.max(base.length, other.length), 0, plate.width - 2 * MARGIN - 20, 0);
  const left = MARGIN + 10;
  const [baseEnd, otherEnd] = [left + base.length * k, left + other.length * k];
  plate.caption(`${base.name} ${say.length(base.length)}`);
  plate.path('body', box(left, plate.y, baseEnd - left, BAR));
  plate.y += BAR + 8;
  plate.caption(`${other.name} ${say.length(other.length)}`);
  const top = plate.y;
  const wrong = difference < 0 && lessIsWrong === true;
  plate.path('cloth', box(left, top, otherEnd - left, BAR));
  if (difference !== 0) {
    const [from, to] = [Math.min(baseEnd, otherEnd), Math.max(baseEnd, otherEnd)];
    if (wrong) {
      plate.path('zone', box(from, top, to - from, BAR));
      plate.path('hatch', hatch(from, top, to - from, BAR));
    } else plate.path(difference > 0 ? 'new-cloth' : 'old', box(from, top, to - from, BAR));
    plate.below([{ from, to, text: `${difference > 0 ? more : less} ${say.length(Math.abs(difference))}`, look: wrong ? 'pin' : 'new' }], top + BAR);
  } else plate.y += BAR;
  const part = `${say.percent(Math.abs(share))} of ${base.of}`;
  plate.notes(difference === 0 ? 'Both are equal.' : `That is ${part}.`, 'To scale.');
  const compared = difference === 0 ? 'both are equal' : `${difference > 0 ? more : less} ${say.length(Math.abs(difference))}, ${part}`;
  return plate.done(`${base.name} ${say.length(base.length)}, ${other.name.toLowerCase()} ${say.length(other.length)}: ${compared}.`);
}
