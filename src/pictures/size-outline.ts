/** A figure from the front with the sizes that are cut round it, level by level. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { drawBody, firstLevel, shoulderHalf } from './body.ts';
import { flowing, line } from './draw.ts';
import type { Point } from './draw.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import { fit } from './scale.ts';
import { shortened } from './text.ts';
import { inTwo, sayIn, sentences } from './words.ts';

export interface SizedLevel {
  readonly name: string;
  readonly body: number;
  readonly size: string;
  /** The garment's girth in that size, or that of the chart's body; mm. */
  readonly girth: number;
  /** What it leaves, mm; below 0 where the body is larger. */
  readonly left: number;
  /** The same girth of the next smaller and the next larger size, where there is one. */
  readonly smaller?: number;
  readonly larger?: number;
}

export interface SizeOutline {
  /** From the top down, one or more. */
  readonly levels: readonly SizedLevel[];
  /** Girths are the garment's, and what they leave is ease. */
  readonly isEase: boolean;
  readonly unit: UnitCode;
}

const STEP = 52;
const NAME_ROOM = 80;
/** A figure on paper cannot have more levels than this and still be read. */
const MOST = 8;

/** Half of a girth is as wide as a garment is when it lies flat, so that is how wide all outlines are drawn. */
export function sizeOutline({ levels: all, isEase, unit }: SizeOutline, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const signed = (mm: number): string => (mm > 0 ? `+${say.length(mm)}` : say.length(mm));
  const levels = all.slice(0, MOST);
  const right = levels.map(({ size, left }) => ({ lines: [shortened(`size ${size}`, NAME_ROOM), ...inTwo(signed(left))] }));
  const left = levels.map(({ name, body }) => ({ lines: [shortened(name, NAME_ROOM), ...inTwo(say.length(body))] }));
  const rooms = [sideRoom(left), sideRoom(right)] as const;
  const plate = new Plate(widthFor(110, ...rooms));
  const room = plate.width - 2 * MARGIN - rooms[0] - rooms[1] - 8;
  const k = fit(Math.max(...levels.flatMap(({ body, girth, smaller = 0, larger = 0 }) => [body, girth, smaller, larger])) / 2, 0, room, 0);
  const middle = MARGIN + rooms[0] + 4 + room / 2;
  const first = firstLevel(plate);
  const ys = levels.map((_, i) => first + i * STEP);
  const end = ys.at(-1)! + 26;
  const halves = levels.map(({ body }) => (body / 4) * k);
  drawBody(plate, { middle, room, first, ys, halves, end });
  const outline = (look: Look, girths: readonly number[]): void => {
    const widths = [girths[0]!, ...girths, girths.at(-1)!].map((girth) => (girth / 4) * k);
    const tops = [first - 10, ...ys, end];
    for (const side of [-1, 1] as const) plate.path(look, flowing(tops.map((y, i): Point => [middle + side * widths[i]!, y])));
  };
  const beside = (which: 'smaller' | 'larger'): readonly number[] | undefined => {
    const girths = levels.flatMap((level) => level[which] ?? []);
    return girths.length === levels.length ? girths : undefined;
  };
  const [smaller, larger] = [beside('smaller'), beside('larger')];
  for (const girths of [smaller, larger]) if (girths) outline('thin', girths);
  outline('new', levels.map(({ girth }) => girth));
  levels.forEach((_, i) => plate.path('level', line([middle - halves[i]!, ys[i]!], [middle + halves[i]!, ys[i]!])));
  const widest = Math.max(...halves, ...levels.flatMap(({ girth, larger: next = 0 }) => [(girth / 4) * k, (next / 4) * k]), shoulderHalf(halves, room));
  const lowest = [
    plate.beside('left', middle - widest - 2, left.map(({ lines }, i) => ({ y: ys[i]!, lines })), plate.y, end),
    plate.beside('right', middle + widest + 2, right.map(({ lines }, i) => ({ y: ys[i]!, lines })), plate.y, end),
  ];
  plate.y = Math.max(end, ...lowest) + 4;
  plate.key([
    ['body', 'body, its girth on the left'],
    ['new', isEase ? 'the sizes to cut, their ease on the right' : 'the chart’s body for the sizes to cut; on the right, how much larger it is'],
    ...(smaller || larger ? [['thin', smaller && larger ? 'one size smaller and one larger' : smaller ? 'one size smaller' : 'one size larger'] as const] : []),
  ]);
  plate.notes(
    all.length > levels.length && `The first ${levels.length} of ${all.length} levels … and ${all.length - levels.length} more.`,
    'Widths are half of each girth, to scale; heights are not.',
  );
  const told = all.map(({ name, body, size, left: over }) => `${name} size ${size} on a body of ${say.length(body)}, ${signed(over)}`).join('; ');
  return plate.done(sentences(isEase ? 'Sizes by level and the ease they leave, from the top down:' : 'Sizes by level and how much larger the chart’s body is, from the top down:', `${told}.`));
}
