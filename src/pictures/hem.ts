/** Hems: the turned-up edge from its side, the piece cut for it, and the fullness of a curved one. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { extentOf } from './circle.ts';
import { arc, area, line, polar, sector, tornAcross } from './draw.ts';
import type { Point } from './draw.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit, place } from './scale.ts';
import { circleWords, inTwo, sayIn, sentences } from './words.ts';

export interface Hem {
  /** All mm: finished length, seam allowance at the top, what is turned up, what is turned under at the raw edge. */
  readonly finished: number;
  readonly seam: number;
  readonly hem: number;
  readonly under: number;
  readonly unit: UnitCode;
}

const LAYER = 9;
const FLAT = 60;

export function hem({ finished, seam, hem: up, under, unit }: Hem, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const whole = finished + seam + up + under;
  const labelled = (name: string, mm: number): string[] => [name, ...inTwo(say.length(mm))];
  const parts = [
    { name: 'seam', mm: seam, lines: labelled('seam', seam) },
    { name: 'finished', mm: finished, lines: labelled('finished', finished) },
    { name: 'hem', mm: up, lines: labelled('hem', up) },
    { name: 'under', mm: under, lines: labelled('under', under) },
  ].filter(({ mm }) => mm > 0);
  const turned = up + under;
  // The finished length is torn where it is so long that the hem would be lost beside it.
  const stub = Math.min(finished, Math.max((seam + turned) * 0.8, finished * 0.02));
  const cutShort = stub < finished;
  const room = sideRoom(parts.map(({ lines }) => ({ lines, brace: true })));
  const plate = new Plate(widthFor(170, room));
  const k = fit(0, seam + stub + turned, 0, 170);
  plate.caption('From its side, and flat');
  const top = plate.y + 4;
  const [flatLeft, flatRight] = [plate.right - room - FLAT, plate.right - room];
  const edges = [0, seam, seam + stub, seam + stub + up, seam + stub + turned].map((mm) => top + mm * k);
  const [start, seamLine, foldLine, hemEnd, bottom] = edges as [number, number, number, number, number];

  plate.path('cloth', area([flatLeft, start], [flatRight, start], [flatRight, bottom], [flatLeft, bottom]));
  if (cutShort) {
    const y = (seamLine + foldLine) / 2;
    for (const aside of [-3, 3]) plate.path('thin', line(...tornAcross(y + aside, flatLeft - 4, flatRight + 4)));
  }
  if (seam > 0) plate.path('seam', line([flatLeft, seamLine], [flatRight, seamLine]));
  if (turned > 0) plate.path('fold', line([flatLeft, foldLine], [flatRight, foldLine]));
  if (under > 0 && up > 0) plate.path('fold', line([flatLeft, hemEnd], [flatRight, hemEnd]));
  const ends: Record<string, readonly [number, number]> = { seam: [start, seamLine], finished: [seamLine, foldLine], hem: [foldLine, hemEnd], under: [hemEnd, bottom] };
  const labels: SideLabel[] = parts.map(({ name, lines }) => {
    const [from, to] = ends[name]!;
    return { y: (from + to) / 2, lines, brace: [from, to] };
  });
  const lowest = plate.beside('right', flatRight, labels, top - 6, bottom);

  // A hem that is deeper than the piece is long stands above it.
  const fold = Math.max(foldLine, start + up * k);
  section(plate, { top: fold - (seam + stub) * k, fold, up: up * k, under: Math.min(under, up) * k, x: (MARGIN + flatLeft) / 2 });
  plate.y = Math.max(lowest, bottom) + 4;
  const key: (readonly [Look, string])[] = [];
  if (turned > 0) key.push(['fold', 'fold line']);
  if (seam > 0) key.push(['seam', 'seam line']);
  plate.key(key);
  plate.notes(`${say.length(whole)} to cut.`, cutShort && 'The finished length is torn to fit.', 'Lengths of seam, hem and turn-under are to scale, thickness is not.');
  return plate.done(sentences(
    `A piece cut ${say.length(whole)} long: ${say.length(finished)} finished, ${say.length(seam)} of seam allowance at the top and a hem of ${say.length(up)}${under > 0 ? `, turned under by ${say.length(under)} at its raw edge` : ''}.`,
  ));
}

/** The cloth from its side: down to the fold, up inside, and under between. */
function section(plate: Plate, { top, fold, up, under, x }: { top: number; fold: number; up: number; under: number; x: number }): void {
  const [outer, inner, middle] = [x - LAYER, x + LAYER, x];
  let d = line([outer, top]);
  if (up < 1) d += `L${place(outer)} ${place(fold)}`;
  else {
    const round = Math.min(LAYER, up / 2);
    d += `L${place(outer)} ${place(fold - round)}A${LAYER} ${place(round)} 0 0 0 ${place(inner)} ${place(fold - round)}`;
    if (under < 1) d += `L${place(inner)} ${place(fold - up)}`;
    else {
      const over = Math.min(LAYER / 2, under / 2);
      d += `L${place(inner)} ${place(fold - up + over)}A${LAYER / 2} ${place(over)} 0 0 0 ${place(middle)} ${place(fold - up + over)}L${place(middle)} ${place(fold - up + under)}`;
    }
  }
  plate.path('layer', d);
  plate.path('thin', line(...tornAcross(top, outer - 6, outer + 6)));
  if (up >= 6) plate.path('new', line([outer - 5, fold - up + 3], [inner + 5, fold - up + 3]));
}

export interface HemFullness {
  /** How far it is turned up, mm. */
  readonly hem: number;
  /** Of a whole circle. */
  readonly part: number;
  /** Measures the raw edge against the round that it is sewn to, a hem’s depth above the fold, and not against the fold. */
  readonly sewnDown: boolean;
  readonly unit: UnitCode;
}

export function hemFullness({ hem: up, part, sewnDown, unit }: HemFullness, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const fuller = (sewnDown ? 4 : 2) * Math.PI * part * up;
  const pieces = Math.max(1, Math.ceil(part - 1e-9));
  const angle = (2 * Math.PI * part) / pieces;
  const lines = ['hem', ...inTwo(say.length(up))];
  const room = sideRoom([{ lines, brace: true }]);
  const plate = new Plate(widthFor(176, room));
  // Any circle will do, as the difference is the same: one on which the turned-up hem can be seen.
  const [radius, band] = [62, 16];
  const [from, to] = [Math.PI / 2 - angle / 2, Math.PI / 2 + angle / 2];
  const corners = [from, to].flatMap((each) => [radius * 0.3, radius + band].map((r) => polar([0, 0], r, each)));
  const extent = extentOf(corners, radius + band, from, to);
  const centre: Point = [(plate.width - room - extent.left - extent.right) / 2, plate.y + 4 - extent.top];
  plate.path('cloth', sector(centre, radius * 0.3, radius + band, from, to));
  plate.path('fold', arc(centre, radius, from, to));
  if (sewnDown) plate.path('old', arc(centre, radius - band, from, to));
  plate.path('new', arc(centre, radius + band, from, to));
  const bottom = centre[1] + radius + band;
  const lowest = plate.beside('right', centre[0] + extent.right, [{ y: bottom - band / 2, lines, brace: [bottom - band, bottom] }], plate.y, bottom + 6);
  plate.y = Math.max(lowest, bottom) + 6;
  const key: (readonly [Look, string])[] = [['fold', 'fold of the hem']];
  if (sewnDown) key.push(['old', 'where it is sewn down']);
  key.push(['new', `raw edge, ${say.length(fuller)} longer than ${sewnDown ? 'that' : 'the fold'}`]);
  plate.key(key);
  const name = circleWords(part, say);
  plate.notes(`${name.slice(0, 1).toUpperCase()}${name.slice(1)}${pieces > 1 ? ` in ${pieces} pieces, one shown` : ''}; the difference is the same at any radius.`, 'Not to scale.');
  return plate.done(`A hem of ${say.length(up)} turned up on a ${name}: its raw edge is ${say.length(fuller)} longer than ${sewnDown ? 'the round it is sewn to' : 'its fold'}.`);
}
