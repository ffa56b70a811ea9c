/** Gores side by side, and a godet. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { extentOf } from './circle.ts';
import { arc, area, line, polar, sector } from './draw.ts';
import type { Point } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import { fit } from './scale.ts';
import { counted, inTwo, sayIn, sentences } from './words.ts';

export interface Gores {
  /** Finished girth at the level, and the allowance at each edge, mm. */
  readonly girth: number;
  readonly gores: number;
  readonly allowance: number;
  readonly unit: UnitCode;
}

const MOST = 4;
const HEIGHT = 84;
/** A gore is drawn this much narrower where it begins, which is above its level and not given. */
const TAPER = 0.72;

export function gores({ girth, gores: count, allowance, unit }: Gores, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const net = girth / count;
  const cut = net + 2 * allowance;
  const shown = Math.min(count, MOST);
  const plate = new Plate();
  const gap = 8;
  const k = fit(shown * cut, 0, plate.width - 2 * MARGIN - 20 - (shown - 1) * gap, 0);
  const whole = shown * cut * k + (shown - 1) * gap;
  const start = (plate.width - whole) / 2;
  const top = plate.y;
  const bottom = top + HEIGHT;
  for (let i = 0; i < shown; i += 1) {
    const left = start + i * (cut * k + gap);
    const right = left + cut * k;
    const slant = ((1 - TAPER) / 2) * net * k;
    plate.path('cloth', area([left + slant, top], [right - slant, top], [right, bottom], [left, bottom]));
    if (allowance > 0) {
      const a = allowance * k;
      plate.path('seam', line([left + slant + a, top], [left + a, bottom]) + line([right - slant - a, top], [right - a, bottom]));
    }
  }
  plate.path('level', line([start - 6, bottom], [start + whole + 6, bottom]));
  const a = allowance * k;
  const dims: Dim[] = [{ from: start + a, to: start + cut * k - a, text: `${say.length(net)} each` }];
  if (allowance > 0) {
    if (shown > 1) dims.push({ from: start + cut * k + gap, to: start + cut * k + gap + a, text: say.length(allowance) });
    dims.push({ from: start, to: start + cut * k, text: `${say.length(cut)} to cut` });
  }
  plate.below(dims, bottom + 2);
  plate.key(allowance > 0 ? [['level', 'the level of this girth'], ['seam', 'seam line']] : [['level', 'the level of this girth']]);
  plate.notes(
    shown === count ? `${counted(count, 'gore')}, together ${say.length(girth)}.` : `The first ${shown} of ${count} gores … and ${count - shown} more, together ${say.length(girth)}.`,
    'Widths at the level are to scale, the taper is not.',
  );
  return plate.done(`${counted(count, 'gore')} for a girth of ${say.length(girth)}: ${say.length(net)} each${allowance > 0 ? `, cut ${say.length(cut)} wide with ${say.length(allowance)} of seam allowance at both edges` : ''}.`);
}

export interface Godet {
  /** From its point to the hem, and round the hem, mm. */
  readonly length: number;
  readonly arc: number;
  readonly unit: UnitCode;
}

/** `arc` is at most a whole circle of radius `length`. */
export function godet({ length, arc: hem, unit }: Godet, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const angle = Math.min(hem / length, 2 * Math.PI);
  const degrees = (angle * 180) / Math.PI;
  const [from, to] = [Math.PI / 2 - angle / 2, Math.PI / 2 + angle / 2];
  const extent = extentOf([[0, 0], polar([0, 0], length, from), polar([0, 0], length, to)], length, from, to);
  const lines = ['length', ...inTwo(say.length(length))];
  const room = sideRoom([{ lines, brace: true }]);
  const plate = new Plate(widthFor(140, room));
  const k = fit(extent.right - extent.left, extent.bottom - extent.top, plate.width - 2 * MARGIN - room - 8, 150);
  plate.caption(`${say.angle(degrees)} at the point`);
  const point: Point = [MARGIN + 4 + (plate.width - 2 * MARGIN - room - 8) / 2 - ((extent.left + extent.right) / 2) * k, plate.y + 4 - extent.top * k];
  plate.path('cloth', sector(point, 0, length * k, from, to));
  plate.path('new', arc(point, length * k, from, to));
  plate.path('level', line(point, [point[0], point[1] + length * k]));
  plate.path('thin', arc(point, Math.min(18, length * k * 0.3), from, to));
  const bottom = point[1] + extent.bottom * k;
  const right = point[0] + extent.right * k;
  const end = plate.beside('right', right, [{ y: point[1] + (length * k) / 2, lines, brace: [point[1], point[1] + length * k] }], plate.y, bottom);
  plate.y = Math.max(end, bottom) + 4;
  plate.key([['new', `hem ${say.length(hem)}`], ['level', 'grain: the middle of the godet']]);
  plate.notes(angle > 2 * Math.PI - 1e-9 ? 'A whole circle.' : '', 'To scale.');
  return plate.done(sentences(`A godet ${say.length(length)} long with a hem of ${say.length(hem)}: ${say.angle(degrees)} at its point.`));
}
