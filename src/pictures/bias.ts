/** A square of cloth with strips on the true bias. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, line, torn, tornAcross } from './draw.ts';
import type { Point } from './draw.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { sayIn, sentences } from './words.ts';

export interface BiasSquare {
  /** Width of the strip, mm. */
  readonly strip: number;
  /** Of the square, mm, at least `strip`; without it a corner of the cloth is drawn. */
  readonly side?: number;
  /** All the strip that it gives, mm. */
  readonly length?: number;
  readonly unit: UnitCode;
}

/** Strips narrower than this in the picture run together. */
const NARROW = 6;

export function biasSquare({ strip, side: given, length, unit }: BiasSquare, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const step = strip * Math.SQRT2;
  const corner = given === undefined;
  const side = given ?? step * 4.6;
  const plate = new Plate();
  const size = 190;
  const k = fit(side, side, size, size);
  const left = (plate.width - size) / 2;
  // The strip to the middle line is measured where a line begins at the upper edge.
  plate.above([{ from: left, to: left + Math.min(step, side) * k, text: `mark every ${say.length(step)}` }]);
  const top = plate.y;
  const [right, bottom] = [left + size, top + size];
  const outline: Point[] = corner
    ? [[left, top], ...torn(right, top, bottom), ...tornAcross(bottom, left, right).reverse()]
    : [[left, top], [right, top], [right, bottom], [left, bottom]];
  plate.path('cloth', area(...outline));
  const count = Math.floor((2 * side) / step + 1e-9);
  const lines = Array.from({ length: count }, (_, i) => i + 1);
  const dense = step * k < NARROW && count > 9;
  const shown = dense ? [...lines.slice(0, 4), ...lines.slice(-2)] : lines;
  for (const n of shown) {
    const reach = n * step * k;
    // From the upper or right edge down to the left or lower one.
    const [from, to]: [Point, Point] = reach <= size
      ? [[left + reach, top], [left, top + reach]]
      : [[right, top + reach - size], [left + reach - size, bottom]];
    plate.path('new', line(from, to));
  }
  if (dense) plate.text((left + right) / 2, (top + bottom) / 2, `… ${count} lines …`, 'middle');
  const grain: Point = [right + 16, (top + bottom) / 2];
  plate.path('thin', line([grain[0], grain[1] - 30], [grain[0], grain[1] + 30]) + line([grain[0] - 3, grain[1] - 25], [grain[0], grain[1] - 30], [grain[0] + 3, grain[1] - 25]));
  plate.text(grain[0] + 6, grain[1] + 4, 'grain');
  plate.below(corner ? [] : [{ from: left, to: right, text: `side ${say.length(side)}` }], bottom);
  plate.key([['new', `cut at 45° to the edge: strips ${say.length(strip)} wide`]]);
  plate.notes(length !== undefined && `${say.length(length)} of strip by area; joins and ends take some of it.`, corner && 'A corner of the cloth.', 'To scale.');
  return plate.done(sentences(
    corner ? `A corner of cloth with bias strips ${say.length(strip)} wide.` : `A square of ${say.length(side)} with bias strips ${say.length(strip)} wide.`,
    `The lines meet the edge every ${say.length(step)}, at 45 degrees.`,
    length !== undefined && `It gives ${say.length(length)} of strip by area.`,
  ));
}
