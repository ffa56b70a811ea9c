/** One gore to scale, with its slanted seam, its raised hem or its added length; and gores laid on their cloth. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, box, line } from './draw.ts';
import type { Point } from './draw.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit, place } from './scale.ts';
import { counted, inTwo, sayIn, sentences } from './words.ts';

export interface GoreShape {
  /** Along its middle, and its widths at both ends, mm. */
  readonly length: number;
  readonly top: number;
  readonly bottom: number;
  /** How much longer it is made, its sides drawn on, mm; below 0 for shorter, by less than its length. */
  readonly longer?: number;
  /** Shows how the hem rises to the seams. */
  readonly rise?: boolean;
  readonly unit: UnitCode;
}

export function goreShape(input: GoreShape, as: ShowAs): Picture {
  const { length, top: upper, bottom: lower, longer = 0 } = input;
  const say = sayIn(input.unit, as);
  const seam = Math.hypot(length, (lower - upper) / 2);
  const ended = Math.max(0, lower + (longer * (lower - upper)) / length);
  const middleLines = ['middle', ...inTwo(say.length(length))];
  const changeLines = [longer > 0 ? 'longer' : 'shorter', ...inTwo(say.length(Math.abs(longer)))];
  const sized = [{ lines: middleLines, brace: true }, ...(longer !== 0 ? [{ lines: changeLines, brace: true }] : [])];
  const room = sideRoom(sized);
  const plate = new Plate(widthFor(130, room));
  const wide = plate.width - 2 * MARGIN - room - 24;
  const k = fit(Math.max(upper, lower, ended), length + Math.max(0, longer), wide, 170);
  const middle = MARGIN + 12 + wide / 2;
  plate.above([{ from: middle - (upper * k) / 2, to: middle + (upper * k) / 2, text: `${say.length(upper)} at the top` }]);
  const start = plate.y;
  const [end, newEnd] = [start + length * k, start + (length + longer) * k];
  const at = (width: number, y: number, side: -1 | 1): Point => [middle + (side * width * k) / 2, y];
  plate.path('cloth', area(at(upper, start, -1), at(upper, start, 1), at(lower, end, 1), at(lower, end, -1)));
  if (longer > 0) {
    plate.path('new-cloth', area(at(lower, end, -1), at(lower, end, 1), at(ended, newEnd, 1), at(ended, newEnd, -1)));
    plate.path('old', line(at(lower, end, -1), at(lower, end, 1)));
  } else if (longer < 0) {
    plate.path('piece', area(at(ended, newEnd, -1), at(ended, newEnd, 1), at(lower, end, 1), at(lower, end, -1)));
    plate.path('new', line(at(ended, newEnd, -1), at(ended, newEnd, 1)));
  }
  plate.path('level', line([middle, start], [middle, Math.max(end, newEnd)]));
  const rise = seam - length;
  if (input.rise === true) {
    const up = (side: -1 | 1): Point => {
      const share = length / seam;
      return at(upper + (lower - upper) * share, start + length * k * share, side);
    };
    const [from, to] = [up(-1), up(1)];
    // The curve is through the lower end of the middle, so its control point lies as far below that as the ends above.
    const low = 2 * end - (from[1] + to[1]) / 2;
    plate.path('new', `${line(from)}Q${place(middle)} ${place(low)} ${place(to[0])} ${place(to[1])}`);
  }
  const edge = middle + (Math.max(upper, lower, ended) * k) / 2;
  const labels: SideLabel[] = [{ y: (start + end) / 2, lines: middleLines, brace: [start, end] }];
  if (longer !== 0) labels.push({ y: (end + newEnd) / 2, lines: changeLines, brace: [Math.min(end, newEnd), Math.max(end, newEnd)], look: 'new' });
  const lowest = plate.beside('right', edge, labels, start - 6, Math.max(end, newEnd));
  const last = longer !== 0 ? ended : lower;
  const bottom = Math.max(end, newEnd, lowest);
  plate.below([{ from: middle - (last * k) / 2, to: middle + (last * k) / 2, text: `${say.length(last)} at the hem`, reach: bottom - newEnd }], bottom);
  const key: (readonly [Look, string])[] = [];
  if (input.rise === true) key.push(['new', `level hem, ${say.length(rise)} up at the seams`]);
  if (longer > 0) key.push(['old', `old hem, ${say.length(lower)} wide`]);
  if (longer < 0) key.push(['new', `new hem; the old one was ${say.length(lower)} wide`]);
  plate.key(key);
  plate.notes(`Seam ${say.length(seam)} long${longer !== 0 ? `, then ${say.length((seam * (length + longer)) / length)}` : ''}.`, 'To scale.');
  return plate.done(sentences(
    `A gore ${say.length(length)} long in its middle, ${say.length(upper)} wide at the top and ${say.length(lower)} at the hem: its seam is ${say.length(seam)}.`,
    input.rise === true && `The hem rises by ${say.length(rise)} up the seams.`,
    longer !== 0 && `Made ${say.length(Math.abs(longer))} ${longer > 0 ? 'longer' : 'shorter'} it is ${say.length(ended)} wide at the hem.`,
  ));
}

export interface GoreLay {
  readonly gores: number;
  /** Of one gore as cut, and the usable width and the length of the cloth, mm. */
  readonly length: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly cloth: number;
  /** Every other gore lies head down. */
  readonly turned: boolean;
  readonly unit: UnitCode;
}

/** More gores than this are drawn as their rows alone. */
const MOST = 200;

export function goresOnCloth({ gores: count, length, top: upper, bottom: lower, width, cloth, turned, unit }: GoreLay, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const rows = Math.max(1, Math.round(cloth / length));
  const inRow = Math.ceil(count / rows);
  const lines = ['width', ...inTwo(say.length(width))];
  const room = sideRoom([{ lines, brace: true }]);
  const plate = new Plate(widthFor(120, room));
  const k = fit(cloth, width, plate.width - 2 * MARGIN - room - 10, 190);
  const left = MARGIN + 8;
  plate.above([{ from: left, to: left + cloth * k, text: `${say.length(cloth)} of cloth` }]);
  const start = plate.y;
  plate.path('cloth', box(left, start, cloth * k, width * k));
  for (let n = 0; n < Math.min(count, MOST); n += 1) {
    const [row, across] = [Math.floor(n / inRow), n % inRow];
    const down = turned && across % 2 === 1;
    const [near, far] = down ? [lower, upper] : [upper, lower];
    const middle = start + (turned ? across * ((upper + lower) / 2) + Math.max(upper, lower) / 2 : (across + 0.5) * Math.max(upper, lower)) * k;
    const x = left + row * length * k;
    plate.path('piece', area([x, middle - (near * k) / 2], [x + length * k, middle - (far * k) / 2], [x + length * k, middle + (far * k) / 2], [x, middle + (near * k) / 2]));
  }
  const bottom = start + width * k;
  const lowest = plate.beside('right', left + cloth * k, [{ y: (start + bottom) / 2, lines, brace: [start, bottom] }], start, bottom);
  plate.y = Math.max(lowest, bottom) + 4;
  const way = turned ? 'head to tail' : 'all one way';
  plate.notes(`${counted(count, 'gore')}, ${way}, in ${counted(rows, 'row')}${count > MOST ? `; the first ${MOST} … are drawn` : ''}.`, 'To scale, selvedges above and below.');
  return plate.done(`${counted(count, 'gore')} ${say.length(length)} long, ${say.length(upper)} wide at the top and ${say.length(lower)} at the hem, ${way} on cloth ${say.length(width)} wide: ${counted(rows, 'row')} on ${say.length(cloth)} of cloth.`);
}
