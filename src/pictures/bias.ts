/** A square of cloth with strips on the true bias. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, line, torn, tornAcross } from './draw.ts';
import type { Point } from './draw.ts';
import type { Picture } from './marks.ts';
import { Plate } from './plate.ts';
import { fit } from './scale.ts';
import { sayIn, sentences } from './words.ts';

export interface BiasSquare {
  /** Width of the strip, mm. */
  readonly strip: number;
  /** Of the square, mm, at least `strip`; without it a corner of the cloth is drawn. */
  readonly side?: number;
  /** All the strip that it gives, mm: by area, or what is left once the strips are joined. */
  readonly length?: number;
  readonly joined?: boolean;
  readonly unit: UnitCode;
}

/** Strips narrower than this in the picture run together. */
const NARROW = 6;

export function biasSquare({ strip, side: given, length, joined, unit }: BiasSquare, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const step = strip * Math.SQRT2;
  const corner = given === undefined;
  const side = given ?? step * 4.6;
  const plate = new Plate();
  const size = 190;
  const k = fit(side, side, size, size);
  const left = (plate.width - size) / 2;
  // A step longer than the side cannot be shown on it.
  const marks = step <= side;
  plate.above(marks ? [{ from: corner ? left : left + size - step * k, to: corner ? left + step * k : left + size, text: `mark every ${say.length(step)}` }] : []);
  const top = plate.y;
  const [right, bottom] = [left + size, top + size];
  const outline: Point[] = corner
    ? [[left, top], ...torn(right, top, bottom), ...tornAcross(bottom, left, right).reverse()]
    : [[left, top], [right, top], [right, bottom], [left, bottom]];
  plate.path('cloth', area(...outline));
  // From the corner outwards, or on a square from its diagonal, where cutting starts.
  const half = Math.ceil(side / step - 1e-6) - 1;
  const count = corner ? Math.floor((2 * side) / step) : 2 * half + 1;
  const reachOf = (i: number): number => (corner ? (i + 1) * step : side + (i - half) * step);
  const dense = step * k < NARROW && count > 9;
  const middle = Math.floor(count / 2);
  const shown = dense ? [0, 1, 2, middle - 1, middle, middle + 1, count - 3, count - 2, count - 1] : Array.from({ length: count }, (_, i) => i);
  for (const i of shown) {
    const reach = reachOf(i) * k;
    // From the upper or right edge down to the left or lower one.
    const [from, to]: [Point, Point] = reach <= size + 1e-6
      ? [[left + reach, top], [left, top + reach]]
      : [[right, top + reach - size], [left + reach - size, bottom]];
    plate.path('new', line(from, to));
  }
  if (dense) {
    plate.text(left + size * 0.28, top + size * 0.28 + 4, `… ${count} lines …`, 'middle');
    plate.text(left + size * 0.72, top + size * 0.72 + 4, '…', 'middle');
  }
  const grain: Point = [right + 16, (top + bottom) / 2];
  plate.path('thin', line([grain[0], grain[1] - 30], [grain[0], grain[1] + 30]) + line([grain[0] - 3, grain[1] - 25], [grain[0], grain[1] - 30], [grain[0] + 3, grain[1] - 25]));
  plate.text(grain[0] + 6, grain[1] + 4, 'grain');
  plate.below(corner ? [] : [{ from: left, to: right, text: `side ${say.length(side)}` }], bottom);
  plate.key([['new', `cut at 45° to the edge: strips ${say.length(strip)} wide`]]);
  plate.notes(
    !marks && `Lines would meet the edge every ${say.length(step)}, which is more than the side.`,
    length !== undefined && `${say.length(length)} of strip ${joined === true ? 'once it is joined' : 'by area; joins and ends take some of it'}.`,
    corner && 'A corner of the cloth.',
    'To scale.',
  );
  return plate.done(sentences(
    corner ? `A corner of cloth with bias strips ${say.length(strip)} wide.` : `A square of ${say.length(side)} with bias strips ${say.length(strip)} wide.`,
    `The lines meet the edge every ${say.length(step)}, at 45 degrees.`,
    length !== undefined && `It gives ${say.length(length)} of strip ${joined === true ? 'once it is joined' : 'by area'}.`,
  ));
}
