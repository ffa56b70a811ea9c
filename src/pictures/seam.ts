/** Seams let out and taken in: old line, new line, and what is left of the allowance. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, box, hatch, line, torn } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { counted, sayIn, sentences } from './words.ts';

export interface SeamEdge {
  /** mm: as it is now; how far the line moves out, below 0 for in; what must be left. */
  readonly allowance: number;
  readonly shift: number;
  readonly least: number;
  /** The seams that share it and what all of them give, for the remark. */
  readonly seams?: number;
  /** The edge is a hem and the line its fold; otherwise it is a seam. */
  readonly hem?: boolean;
  readonly unit: UnitCode;
}

const HEIGHT = 72;

/** `shift` is at most `allowance`. */
export function seamEdge({ allowance, shift, least, seams, hem, unit }: SeamEdge, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const words = hem === true
    ? { line: 'fold', allowance: 'hem', subject: 'A hem', out: 'let down', into: 'taken up', down: 'down', up: 'up' }
    : { line: 'seam line', allowance: 'allowance', subject: 'A seam', out: 'let out', into: 'taken in', down: 'out', up: 'in' };
  const left = allowance - shift;
  const short = left < least * (1 - 1e-9);
  const plate = new Plate();
  const widest = Math.max(allowance, left, least, 1);
  const inside = widest * 0.45;
  const k = fit(widest + inside, 0, plate.width - 2 * MARGIN - 20, 0);
  const start = MARGIN + 8;
  const cut = start + (widest + inside) * k;
  const [oldLine, newLine] = [cut - allowance * k, cut - left * k];
  const above: Dim[] = [];
  if (shift !== 0) above.push({ from: Math.min(oldLine, newLine), to: Math.max(oldLine, newLine), text: `${shift > 0 ? words.down : words.up} ${say.length(Math.abs(shift))}`, look: 'new' });
  above.push({ from: oldLine, to: cut, text: `${words.allowance} ${say.length(allowance)}` });
  plate.above(above);
  const top = plate.y;
  plate.path('cloth', area([cut, top], [cut, top + HEIGHT], ...torn(start, top, top + HEIGHT).reverse()));
  if (short) {
    plate.path('zone', box(cut - least * k, top, least * k, HEIGHT));
    plate.path('hatch', hatch(cut - least * k, top, least * k, HEIGHT));
  } else if (least > 0) plate.path('place', line([cut - least * k, top], [cut - least * k, top + HEIGHT]));
  plate.path('edge', line([cut, top], [cut, top + HEIGHT]));
  if (shift !== 0) plate.path('old', line([oldLine, top], [oldLine, top + HEIGHT]));
  plate.path('new', line([newLine, top], [newLine, top + HEIGHT]));
  plate.below([{ from: newLine, to: cut, text: `left ${say.length(left)}`, look: short ? 'pin' : undefined }], top + HEIGHT);
  const key: (readonly [Look, string])[] = [];
  if (shift !== 0) key.push(['old', `old ${words.line}`], ['new', `new ${words.line}`]);
  else key.push(['new', `${words.line}, as it was`]);
  if (short) key.push(['hatch', `at least ${say.length(least)} must be left`]);
  else if (least > 0) key.push(['place', `at least ${say.length(least)} must be left`]);
  plate.key(key);
  plate.notes('Cut edge on the right.', seams !== undefined && `The same at both edges of ${counted(seams, 'seam')}: ${say.length(2 * seams * shift)} in all.`, `To scale across the ${hem === true ? 'hem' : 'seam'}.`);
  const becomes = shift > 0
    ? `of ${say.length(allowance)} of ${words.allowance} ${say.length(left)} is left`
    : `the ${words.allowance} grows from ${say.length(allowance)} to ${say.length(left)}`;
  return plate.done(sentences(
    shift === 0
      ? `${words.subject} that stays where it is, with ${say.length(allowance)} of ${words.allowance}.`
      : `${words.subject} ${shift > 0 ? words.out : words.into} by ${say.length(Math.abs(shift))}: ${becomes}.`,
    seams !== undefined && `At both edges of ${counted(seams, 'seam')} that is ${say.length(2 * seams * shift)} in all.`,
    short && `That is too little: at least ${say.length(least)} must be left.`,
  ));
}

export interface SeamShift {
  /** How far each edge moves out, below 0 for in, mm. */
  readonly shift: number;
  readonly seams: number;
  readonly unit: UnitCode;
}

/** Both pieces of one seam, laid edge to edge along the old line. */
export function seamShift({ shift, seams, unit }: SeamShift, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const size = Math.abs(shift);
  const plate = new Plate();
  const k = size > 0 ? 46 / size : 1;
  const middle = plate.width / 2;
  const between = shift > 0 ? 64 : 30;
  const [start, end] = [MARGIN + 8, plate.width - MARGIN - 8];
  const old = [middle - between, middle + between] as const;
  const dims: Dim[] = size > 0
    ? ([-1, 1] as const).map((side, i): Dim => {
      const moved = old[i]! - side * shift * k;
      return { from: Math.min(old[i]!, moved), to: Math.max(old[i]!, moved), text: say.length(size), look: 'new' };
    })
    : [];
  plate.above(dims);
  const top = plate.y;
  const bottom = top + HEIGHT;
  for (const [i, side] of ([-1, 1] as const).entries()) {
    const seam = old[i]!;
    const moved = seam - side * shift * k;
    const outer = shift > 0 ? moved : seam;
    plate.path('under', area([outer, top], [outer, bottom], ...torn(side < 0 ? start : end, top, bottom).reverse()));
    plate.path('edge', line(...torn(side < 0 ? start : end, top, bottom)));
    if (size > 0) plate.path('old', line([seam, top], [seam, bottom]));
    plate.path('new', line([moved, top], [moved, bottom]));
  }
  plate.y = bottom + 4;
  const way = shift > 0 ? 'out' : 'in';
  plate.key(size > 0 ? [['old', 'old seam line of each piece'], ['new', `new seam line, ${say.length(size)} further ${way}`]] : [['new', 'seam line, as it was']]);
  plate.notes(`Two edges at each of ${counted(seams, 'seam')}: ${size > 0 ? `${say.length(2 * seams * size)} ${shift < 0 ? 'less' : 'more'} all round` : 'the girth stays as it is'}.`, size > 0 && 'Shifts are to scale.');
  return plate.done(size > 0
    ? `Each edge of ${counted(seams, 'seam')} moves ${way} by ${say.length(size)}: the girth ${shift > 0 ? 'grows' : 'shrinks'} by ${say.length(2 * seams * size)}.`
    : `${counted(seams, 'seam')} ${seams === 1 ? 'stays where it is' : 'stay where they are'}.`);
}
