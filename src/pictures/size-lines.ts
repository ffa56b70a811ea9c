/** Lines of nested sizes on one edge of a piece, and the line that runs from one to the other. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, flowing, line, torn } from './draw.ts';
import type { Point } from './draw.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import { fit } from './scale.ts';
import { shortened, textWidth } from './text.ts';
import { inTwo, sayIn } from './words.ts';

export interface Blend {
  /** Widths of the piece where the blend starts and ends, its length, and a point along it, mm. */
  readonly from: number;
  readonly to: number;
  readonly distance: number;
  readonly at: number;
  readonly line: 'straight' | 'smooth';
  readonly unit: UnitCode;
}

/** `at` is from 0 to `distance`. */
export function blend(input: Blend, as: ShowAs): Picture {
  const { from, to, distance, at } = input;
  const say = sayIn(input.unit, as);
  const smooth = input.line === 'smooth';
  const share = at / distance;
  const width = from + (to - from) * (smooth ? share * share * (3 - 2 * share) : share);
  const sideLines = [...inTwo(say.length(width)), 'wide here'];
  const leftLines = ['down', ...inTwo(say.length(at))];
  const lengthLines = ['blend', ...inTwo(say.length(distance))];
  const labels = [{ lines: leftLines, brace: true }, { lines: lengthLines, brace: true }];
  const rooms = [sideRoom(labels), sideRoom([{ lines: sideLines }])] as const;
  const plate = new Plate(widthFor(110, ...rooms));
  const room = plate.width - 2 * MARGIN - rooms[0] - rooms[1] - 10;
  const k = fit(Math.max(from, to), distance, room, 170);
  const left = MARGIN + rooms[0] + 4 + Math.max(0, room - Math.max(from, to) * k) / 2;
  const x = (mm: number): number => left + mm * k;
  plate.above([{ from: x(0), to: x(from), text: `${say.length(from)} at the start` }]);
  const top = plate.y;
  const bottom = top + distance * k;
  const ends: readonly [Point, Point] = [[x(from), top], [x(to), bottom]];
  const curve = smoothPoints(x(from), x(to), top, bottom);
  const chosen = smooth ? curve : ends;
  plate.path('cloth', area([x(0), top], ...chosen, [x(0), bottom]));
  for (const size of [from, to]) plate.path('old', line([x(size), top], [x(size), bottom]));
  plate.path('thin', smooth ? line(...ends) : line(...curve));
  plate.path('new', smooth ? line(...curve) : line(...ends));
  const here = top + at * k;
  plate.path('level', line([x(0), here], [x(width), here]));
  const right = Math.max(x(from), x(to)) + 2;
  plate.path('reach', line([x(width), here], [right, here]));
  const lowest = [
    plate.beside('left', x(0), [
      { y: top + (at * k) / 2, lines: leftLines, brace: [top, here] },
      { y: (top + bottom) / 2, lines: lengthLines, brace: [top, bottom] },
    ], top, bottom),
    plate.beside('right', right, [{ y: here, lines: sideLines }], top, bottom),
  ];
  const end = Math.max(bottom, ...lowest);
  plate.below([{ from: x(0), to: x(to), text: `${say.length(to)} at the end`, reach: end - bottom }], end);
  plate.key([['new', `${input.line} blend`], ['thin', smooth ? 'straight' : 'smooth'], ['old', 'lines of the two sizes']]);
  plate.notes('To scale.');
  return plate.done(`A ${input.line} blend over ${say.length(distance)} from a width of ${say.length(from)} to ${say.length(to)}: ${say.length(at)} along it the piece is ${say.length(width)} wide.`);
}

/** The cubic that runs in the direction of the length at both ends, in short straight steps. */
function smoothPoints(from: number, to: number, top: number, bottom: number): Point[] {
  const steps = 24;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    return [from + (to - from) * t * t * (3 - 2 * t), top + (bottom - top) * t] as const;
  });
}

export interface SizeGap {
  /** Between the lines of the two sizes, mm. */
  readonly gap: number;
  readonly smaller: string;
  readonly larger: string;
  /** What is measured, such as "hip". */
  readonly measure: string;
  readonly seams: number;
  readonly unit: UnitCode;
}

const HEIGHT = 84;

export function sizeGap({ gap, smaller, larger, measure, seams, unit }: SizeGap, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const plate = new Plate();
  // Wide enough to see, narrow enough for a name on both sides.
  const k = gap > 0 ? 70 / gap : 1;
  const middle = plate.width / 2;
  const [inner, outer] = [middle - (gap * k) / 2, middle + (gap * k) / 2];
  plate.above([{ from: inner, to: outer, text: `${say.length(gap)} apart` }]);
  const top = plate.y;
  const bottom = top + HEIGHT;
  const start = MARGIN + 8;
  const edge = (x: number): string => flowing([[x - 10, top], [x, top + HEIGHT * 0.55], [x - 4, bottom]]);
  plate.path('under', area([inner - 10, top], [inner, top + HEIGHT * 0.55], [inner - 4, bottom], ...torn(start, top, bottom).reverse()));
  plate.path('edge', line(...torn(start, top, bottom)));
  plate.path('old', edge(inner));
  plate.path('new', edge(outer));
  const names = [smaller, larger].map((name) => shortened(`size ${name}`, inner - start - 30));
  plate.text(inner - 16, bottom - 10, names[0]!, 'end');
  plate.text(Math.min(outer + 10, plate.right - textWidth(names[1]!)), bottom - 10, names[1]!);
  plate.y = bottom + 6;
  plate.key([['old', 'line of the smaller size'], ['new', 'line of the larger size']]);
  plate.notes(`At the ${measure}, at each edge of ${seams} ${seams === 1 ? 'seam' : 'seams'}.`, 'The gap is to scale, the shape is not.');
  return plate.done(`The lines of size ${smaller} and size ${larger} lie ${say.length(gap)} apart at the ${measure}, at each edge of ${seams} ${seams === 1 ? 'seam' : 'seams'}.`);
}
