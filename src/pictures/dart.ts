/** Darts: the wedge, the same wedge moved to another seam, and several that share a difference. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, box, line, polar } from './draw.ts';
import type { Point } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit } from './scale.ts';
import { counted, inTwo, sayIn } from './words.ts';

export interface Dart {
  /** Width of the mouth, and from the mouth to the point along the middle, mm. */
  readonly intake: number;
  readonly length: number;
  readonly unit: UnitCode;
}

export function dart({ intake, length, unit }: Dart, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const leg = Math.hypot(intake / 2, length);
  const angle = say.angle((2 * Math.atan2(intake / 2, length) * 180) / Math.PI);
  const lines = ['length', ...inTwo(say.length(length))];
  const room = sideRoom([{ lines, brace: true }]);
  const plate = new Plate(widthFor(150, room));
  const wide = plate.width - 2 * MARGIN - room - 20;
  const k = fit(intake, length, wide, 150);
  const middle = MARGIN + 10 + wide / 2;
  const half = (intake * k) / 2;
  plate.above([{ from: middle - half, to: middle + half, text: `intake ${say.length(intake)}` }]);
  const top = plate.y;
  const tip: Point = [middle, top + length * k];
  const right = MARGIN + wide + 20;
  plate.path('under', box(MARGIN, top, right - MARGIN, length * k + 14));
  plate.path('edge', line([MARGIN, top], [middle - half, top]) + line([middle + half, top], [right, top]));
  plate.path('piece', area([middle - half, top], [middle + half, top], tip));
  plate.path('fold', line([middle, top], tip));
  plate.path('new', line([middle - half, top], tip, [middle + half, top]));
  const bottom = plate.beside('right', right, [{ y: top + (length * k) / 2, lines, brace: [top, tip[1]] }], top - 6, tip[1]);
  plate.y = Math.max(bottom, tip[1] + 14) + 4;
  plate.key([['new', `legs, each ${say.length(leg)}; ${angle} at the point`], ['fold', 'fold']]);
  plate.notes('To scale.');
  return plate.done(`A dart ${say.length(intake)} wide at its mouth and ${say.length(length)} long: each leg is ${say.length(leg)}, ${angle} at the point.`);
}

export interface MovedDart {
  /** Where it is: its mouth and its legs, mm. */
  readonly intake: number;
  readonly leg: number;
  /** Length of its legs where it goes, mm. */
  readonly newLeg: number;
  readonly unit: UnitCode;
}

/** `intake` is at most twice `leg`. */
export function movedDart({ intake, leg, newLeg, unit }: MovedDart, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const half = Math.asin(Math.min(1, intake / 2 / leg));
  const newIntake = (intake * newLeg) / leg;
  // Up for the old one; to the right for the new one, or down where both are too blunt to lie beside one another.
  const blunt = half > Math.PI / 4;
  const way = blunt ? Math.PI / 2 : 0;
  const wedge = (to: number, length: number): [Point, Point] => [polar([0, 0], length, to - half), polar([0, 0], length, to + half)];
  const [old, moved] = [wedge(-Math.PI / 2, leg), wedge(way, newLeg)];
  const points: Point[] = [[0, 0], ...old, ...moved];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, right, high, low] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];

  const wasText = `was ${say.length(intake)}`;
  const nowLines = ['now', ...inTwo(say.length(newIntake))];
  const room = blunt ? 0 : sideRoom([{ lines: nowLines, brace: true }]);
  const plate = new Plate(widthFor(150, room));
  const wide = plate.width - 2 * MARGIN - room - 24;
  const k = fit(right - left, low - high, wide, 150);
  const x = (mm: number): number => MARGIN + 12 + (wide - (right - left) * k) / 2 + (mm - left) * k;
  plate.above([{ from: x(old[0][0]), to: x(old[1][0]), text: wasText }]);
  const top = plate.y;
  const at = ([px, py]: Point): Point => [x(px), top + (py - high) * k];
  const point = at([0, 0]);
  const [bottom, edge] = [top + (low - high) * k, x(right)];
  plate.path('old', line(at(old[0]), point, at(old[1])));
  plate.path('old', line(at(old[0]), at(old[1])));
  plate.path('new-cloth', area(at(moved[0]), at(moved[1]), point));
  plate.path('dot', area(polar(point, 3, 0), polar(point, 3, Math.PI / 2), polar(point, 3, Math.PI), polar(point, 3, -Math.PI / 2)));
  if (blunt) plate.below([{ from: at(moved[1])[0], to: at(moved[0])[0], text: `now ${say.length(newIntake)}`, look: 'new' }], bottom);
  else {
    const label: SideLabel = { y: point[1], lines: nowLines, brace: [at(moved[0])[1], at(moved[1])[1]], look: 'new' };
    plate.y = Math.max(plate.beside('right', edge, [label], top - 4, bottom), bottom) + 6;
  }
  const angle = say.angle((2 * half * 180) / Math.PI);
  plate.key([['old', `as it was: legs of ${say.length(leg)}`], ['new-cloth', `moved: legs of ${say.length(newLeg)}`]]);
  plate.notes(`Both have ${angle} at the point.`, 'To scale; which way they point is not.');
  return plate.done(`A dart ${say.length(intake)} wide with legs of ${say.length(leg)}, moved about its point to legs of ${say.length(newLeg)}, is ${say.length(newIntake)} wide there; the angle stays ${angle}.`);
}

export interface SharedDarts {
  /** Girths at both levels, mm. */
  readonly wide: number;
  readonly narrow: number;
  readonly darts: number;
  readonly unit: UnitCode;
}

const HEIGHT = 64;

export function sharedDarts({ wide, narrow, darts, unit }: SharedDarts, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const intake = (wide - narrow) / darts;
  const plate = new Plate();
  const left = MARGIN + 10;
  const k = fit(wide, 0, plate.width - 2 * left, 0);
  const right = left + wide * k;
  const pitch = (wide * k) / darts;
  // Where darts would run together, the first ones and the last one stand for all.
  const dense = pitch < 9 && darts > 4;
  const shown = dense ? [0, 1, 2, darts - 1] : Array.from({ length: darts }, (_, i) => i);
  const middle = (i: number): number => left + (i + 0.5) * pitch;
  const half = (intake * k) / 2;
  const dims: Dim[] = [{ from: middle(0) - half, to: middle(0) + half, text: `${say.length(intake)}${darts > 1 ? ' each' : ''}` }];
  plate.above(dims);
  const top = plate.y;
  plate.path('cloth', box(left, top, wide * k, HEIGHT));
  for (const i of shown) {
    plate.path('piece', area([middle(i) - half, top], [middle(i) + half, top], [middle(i), top + HEIGHT * 0.75]));
    plate.path('new', line([middle(i) - half, top], [middle(i), top + HEIGHT * 0.75], [middle(i) + half, top]));
  }
  if (dense) plate.text((middle(2) + middle(darts - 1)) / 2, top + HEIGHT / 2, '…', 'middle');
  plate.below([{ from: left, to: right, text: `wide level ${say.length(wide)}` }], top + HEIGHT);
  plate.caption(`Narrow level, darts sewn: ${say.length(narrow)}`);
  plate.path('cloth', box(left, plate.y, narrow * k, 14));
  plate.y += 20;
  const key: (readonly [Look, string])[] = [['new', `${counted(darts, 'dart')}${darts > 1 ? `, together ${say.length(wide - narrow)}` : ''}`]];
  plate.key(key);
  plate.notes('Widths are to scale, heights are not.');
  return plate.done(`From ${say.length(wide)} at the wide level to ${say.length(narrow)} at the narrow one, ${counted(darts, 'dart')} of ${say.length(intake)}${darts > 1 ? ' each' : ''}.`);
}
