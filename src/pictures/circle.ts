/** A circle skirt, or a part of one, about its centre: radius, length, waist and hem. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { arc, line, polar, sector } from './draw.ts';
import type { Point } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { circleWords, sayIn, sentences } from './words.ts';

export interface CirclePiece {
  /** Of a whole circle; above 1 one of several equal pieces is drawn. */
  readonly part: number;
  /** From the centre to the line that is cut at the waist, mm. */
  readonly radius: number;
  /** From the centre to the waist seam, mm, where it is another line. */
  readonly seamRadius?: number;
  /** From the waist to the hem, mm; without it the hem is not drawn. */
  readonly length?: number;
  /** Beyond the length, to be turned up, mm. */
  readonly hem?: number;
  /** Round the waist and round the hem of the whole skirt, mm. */
  readonly waist?: number;
  readonly sweep?: number;
  readonly unit: UnitCode;
}

const TURN = 2 * Math.PI;

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The box about points, and about an arc of this radius round the origin. */
export function extentOf(points: readonly Point[], radius: number, from: number, to: number): Extent {
  const all = [...points];
  for (let n = Math.ceil((from * 4) / TURN - 1e-9); (n * TURN) / 4 <= to + 1e-9; n += 1) all.push(polar([0, 0], radius, (n * TURN) / 4));
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

export function circlePiece(input: CirclePiece, as: ShowAs): Picture {
  const { part, radius, seamRadius, length, waist, sweep } = input;
  const hem = input.hem ?? 0;
  const say = sayIn(input.unit, as);
  const pieces = Math.max(1, Math.ceil(part - 1e-9));
  const angle = (TURN * part) / pieces;
  const seam = seamRadius ?? radius;
  const outer = length === undefined ? seam * 1.9 : radius + length + hem;
  // One straight edge points to the right and the piece lies above it.
  const corners = [0, -angle].flatMap((each) => [radius, outer].map((r) => polar([0, 0], r, each)));
  const extent = extentOf([[0, 0], ...corners], outer, -angle, 0);

  const plate = new Plate();
  const k = fit(extent.right - extent.left, extent.bottom - extent.top, plate.width - 2 * MARGIN - 20, 170);
  if (sweep !== undefined && length !== undefined) {
    plate.caption(`Hem ${say.length(sweep)} round`);
  }
  const centre: Point = [(plate.width - (extent.right + extent.left) * k) / 2, plate.y + 2 - extent.top * k];
  const bottom = centre[1] + extent.bottom * k;
  plate.path(length === undefined ? 'under' : 'cloth', sector(centre, radius * k, outer * k, -angle, 0));
  if (length === undefined) {
    if (angle < TURN - 1e-9) for (const each of [-angle, 0]) plate.path('edge', line(polar(centre, radius * k, each), polar(centre, outer * k, each)));
    plate.path('edge', arc(centre, radius * k, -angle, 0));
  }
  if (hem > 0 && length !== undefined) plate.path('fold', arc(centre, (radius + length) * k, -angle, 0));
  if (seamRadius !== undefined && seamRadius > radius) plate.path('seam', arc(centre, seamRadius * k, -angle, 0));
  if (waist !== undefined) plate.path('new', arc(centre, seam * k, -angle, 0));
  plate.path('thin', line([centre[0] - 4, centre[1]], [centre[0] + 4, centre[1]]) + line([centre[0], centre[1] - 4], [centre[0], centre[1] + 4]));
  const reach = bottom - centre[1];
  const dims: Dim[] = [{ from: centre[0], to: centre[0] + radius * k, text: `radius ${say.length(radius)}`, reach }];
  if (length !== undefined && length > 0) dims.push({ from: centre[0] + radius * k, to: centre[0] + (radius + length) * k, text: `length ${say.length(length)}`, reach });
  if (length !== undefined && hem > 0) {
    dims.push({ from: centre[0] + (radius + length) * k, to: centre[0] + outer * k, text: `hem ${say.length(hem)}`, reach });
    dims.push({ from: centre[0], to: centre[0] + outer * k, text: `cut at ${say.length(outer)}`, reach });
  }
  plate.below(dims, bottom + 2);

  const key: (readonly [Look, string])[] = [];
  if (waist !== undefined) key.push(['new', `waist seam ${say.length(waist)} round${seam > radius ? `, radius ${say.length(seam)}` : ''}`]);
  if (seam > radius) key.push(['edge', `cut here, ${say.length(seam - radius)} inside the seam`]);
  if (hem > 0) key.push(['fold', 'fold of the hem']);
  plate.key(key);
  const name = circleWords(part, say);
  plate.notes(pieces > 1 ? `${capital(name)} in ${pieces} equal pieces, one of them shown.` : `${capital(name)}.`, length === undefined && 'The hem is not shown.', 'To scale.');
  return plate.done(sentences(
    `${capital(name)}: radius ${say.length(radius)} from the centre to the ${seam > radius ? 'cutting line' : 'waist'}${length === undefined ? '' : `, ${say.length(length)} from there to the hem`}.`,
    waist !== undefined && `Waist seam ${say.length(waist)} round${seam > radius ? `, ${say.length(seam)} from the centre` : ''}.`,
    hem > 0 && `With ${say.length(hem)} of hem it is cut ${say.length(outer)} from the centre.`,
    sweep !== undefined && `Hem ${say.length(sweep)} round.`,
    pieces > 1 && `It is cut in ${pieces} equal pieces.`,
  ));
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
