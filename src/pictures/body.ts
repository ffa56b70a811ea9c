/** A figure from the front with the garment round it: ease at each level. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { circle, flowing, flowOn, line } from './draw.ts';
import type { Point } from './draw.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit } from './scale.ts';
import { shortened } from './text.ts';
import { counted, inTwo, sayIn, sentences } from './words.ts';

export interface EaseLevel {
  readonly name: string;
  /** Girths, mm. */
  readonly body: number;
  readonly finished: number;
}

export interface BodyEase {
  /** From the top down, one or more. */
  readonly levels: readonly EaseLevel[];
  readonly unit: UnitCode;
}

/** From a level to the next; heights are not given. */
const STEP = 52;
const HEAD = 13;
const NAME_ROOM = 80;
/** A figure on paper cannot have more levels than this and still be read. */
const MOST = 8;

/**
 * Half of a girth is as wide as the garment is when it lies flat, so that is
 * how wide both outlines are drawn.
 */
export function bodyEase({ levels: all, unit }: BodyEase, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const levels = all.slice(0, MOST);
  const eased = levels.map(({ body, finished }) => finished - body);
  const signed = (mm: number): string => (mm > 0 ? `+${say.length(mm)}` : say.length(mm));
  const right = levels.map((_, i) => ({ lines: inTwo(signed(eased[i]!)) }));
  const left = levels.map(({ name, body }) => ({ lines: [shortened(name, NAME_ROOM), ...inTwo(say.length(body))] }));
  const rooms = [sideRoom(left), sideRoom(right)] as const;
  const plate = new Plate(widthFor(110, ...rooms));
  const room = plate.width - 2 * MARGIN - rooms[0] - rooms[1] - 8;
  const k = fit(Math.max(...levels.flatMap(({ body, finished }) => [body, finished])) / 2, 0, room, 0);
  const middle = MARGIN + rooms[0] + 4 + room / 2;
  const first = firstLevel(plate);
  const y = (i: number): number => first + i * STEP;
  const halves = (girth: 'body' | 'finished'): number[] => levels.map((level) => (level[girth] / 4) * k);

  const [bodyHalves, garmentHalves] = [halves('body'), halves('finished')];
  const end = y(levels.length - 1) + 26;
  drawBody(plate, { middle, room, first, ys: levels.map((_, i) => y(i)), halves: bodyHalves, end });
  const tops = [first - 10, ...levels.map((_, i) => y(i)), end];
  for (const side of [-1, 1] as const) {
    const widths = [garmentHalves[0]!, ...garmentHalves, garmentHalves.at(-1)!];
    plate.path('new', flowing(tops.map((each, i): Point => [middle + side * widths[i]!, each])));
  }
  levels.forEach((_, i) => plate.path('level', line([middle - bodyHalves[i]!, y(i)], [middle + bodyHalves[i]!, y(i)])));
  const labelsAt = (side: -1 | 1): SideLabel[] => (side < 0 ? left : right).map(({ lines }, i) => ({ y: y(i), lines }));
  const edge = Math.max(...bodyHalves, ...garmentHalves, shoulderHalf(bodyHalves, room)) + 2;
  const lowest = [
    plate.beside('left', middle - edge, labelsAt(-1), plate.y, end),
    plate.beside('right', middle + edge, labelsAt(1), plate.y, end),
  ];
  plate.y = Math.max(end, ...lowest) + 4;
  plate.key([['body', 'body, its girth on the left'], ['new', 'garment, its ease on the right']]);
  const tight = levels.filter((_, i) => eased[i]! < 0);
  plate.notes(
    all.length > levels.length && `The first ${levels.length} of ${all.length} levels … and ${all.length - levels.length} more.`,
    tight.length > 0 && `Smaller than the body at ${counted(tight.length, 'level')}.`,
    'Widths are half of each girth, to scale; heights are not.',
  );
  return plate.done(sentences(
    'Ease at each level, from the top down:',
    `${all.map(({ name, body, finished }) => `${name} ${say.length(finished)} on a body of ${say.length(body)}, ${signed(finished - body)}`).join('; ')}.`,
  ));
}

/** Where the first level lies below what is drawn already, with room for head and shoulders. */
export const firstLevel = (plate: Plate): number => plate.y + 2 * HEAD + 44;

/** Half of the shoulders' width. */
export const shoulderHalf = (halves: readonly number[], room: number): number => Math.min(halves[0]! * 1.02, room / 2);

export interface DrawnBody {
  readonly middle: number;
  /** Across. */
  readonly room: number;
  /** The heights of the levels, `first` the first of them, and where the body ends. */
  readonly first: number;
  readonly ys: readonly number[];
  readonly end: number;
  /** Half of the body's width at each level. */
  readonly halves: readonly number[];
}

/** Head, neck, shoulders, and the sides through the levels. */
export function drawBody(plate: Plate, { middle, room, first, ys, halves, end }: DrawnBody): void {
  const shoulder = shoulderHalf(halves, room);
  const neck = Math.max(2, halves[0]! * 0.22);
  const neckY = first - 38;
  const head = Math.min(HEAD, Math.max(3, halves[0]! * 0.42));
  plate.path('body', circle([middle, neckY - 4 - head], head));
  const down = (side: -1 | 1): Point[] => [
    ...halves.map((half, i): Point => [middle + side * half, ys[i]!]),
    [middle + side * halves.at(-1)! * 0.94, end],
  ];
  const neckTo = (side: -1 | 1): Point[] => [[middle + side * neck, neckY], [middle + side * neck, neckY + 8], [middle + side * shoulder, neckY + 20]];
  const [upLeft, downRight] = [[...down(-1)].reverse(), down(1)];
  plate.path('body', [
    line(...neckTo(1)), flowOn(neckTo(1).at(-1)!, downRight),
    line(upLeft[0]!).replace('M', 'L'), flowOn(upLeft[0]!, [...upLeft.slice(1), neckTo(-1).at(-1)!]),
    line(...[...neckTo(-1)].reverse().slice(1)).replace('M', 'L'), 'Z',
  ].join(''));
}
