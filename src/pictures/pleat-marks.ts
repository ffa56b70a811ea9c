/** Where pleats are marked on flat cloth, from the first fold of the first pleat on. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, line, torn } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Picture } from './marks.ts';
import type { PleatKind } from './pleat-section.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { sayIn } from './words.ts';

export interface PleatMarks {
  readonly kind: PleatKind;
  /** From pleat to pleat when pleated, and depth of one fold, mm. */
  readonly spacing: number;
  readonly depth: number;
  /** The pleat whose place is wanted, 1 for the first. */
  readonly marked: number;
  readonly unit: UnitCode;
}

const HEIGHT = 50;
const SHOWN = 4;

export function pleatMarks({ kind, spacing, depth, marked, unit }: PleatMarks, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const pitch = spacing + (kind === 'knife' ? 2 : 4) * depth;
  const place = (marked - 1) * pitch;
  const plate = new Plate();
  const start = MARGIN + 10;
  const lead = 0.25 * pitch;
  const k = fit(lead + SHOWN * pitch, 0, plate.width - 2 * start, 0);
  // The pleats up to the wanted one, or the first ones where that is too far away to be drawn.
  const x = (pleat: number): number => start + (lead + (pleat - 1) * pitch) * k;
  const near = marked <= SHOWN;
  const dims: Dim[] = [{ from: x(1), to: x(2), text: `${say.length(pitch)} from each to the next` }];
  if (near && marked > 2) dims.push({ from: x(1), to: x(marked), text: `pleat ${marked} at ${say.length(place)}`, look: 'new' });
  plate.above(dims);
  const top = plate.y;
  const right = plate.width - start;
  plate.path('cloth', area([start, top], ...torn(right, top, top + HEIGHT), [start, top + HEIGHT]));
  for (let pleat = 1; pleat <= SHOWN; pleat += 1) plate.path(pleat === marked ? 'new' : 'fold', line([x(pleat), top], [x(pleat), top + HEIGHT]));
  plate.y = top + HEIGHT + 2;
  plate.key([['fold', 'first fold of a pleat'], ...(near ? [['new', `that of pleat ${marked}, ${say.length(place)} from the first`] as const] : [])]);
  plate.notes(!near && `The first ${SHOWN} pleats … pleat ${marked} is marked ${say.length(place)} from the first.`, 'To scale along the cloth.');
  return plate.done(`On flat cloth ${kind} pleats begin every ${say.length(pitch)}: the first fold of pleat ${marked} is ${say.length(place)} from that of the first.`);
}
