/** The edge of a piece where several sizes are nested: their lines, and the line that is cut, from one size to another between levels. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, flowing, line, torn } from './draw.ts';
import type { Point } from './draw.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit } from './scale.ts';
import { shortened } from './text.ts';
import { inTwo, sayIn } from './words.ts';

export interface BlendLevel {
  readonly name: string;
  /** The size whose line is cut here: a place in `sizes`. */
  readonly size: number;
  /** Down to the next level, mm, more than 0; the last level has none. */
  readonly down?: number;
  /** That distance is the usual one, not hers. */
  readonly usual?: boolean;
}

export interface BlendedEdge {
  /** From the top down, two or more. */
  readonly levels: readonly BlendLevel[];
  /** The sizes whose lines are drawn, the smallest first, with their girths at each level, mm. */
  readonly sizes: readonly { readonly name: string; readonly girths: readonly number[] }[];
  /** Seams that share a girth; each has two edges. */
  readonly seams: number;
  readonly unit: UnitCode;
}

const NAME_ROOM = 100;
/** What is seen of the piece beside its edge, mm, and of the edge above and below the levels, in picture units. */
const SEEN = 30;
const BEYOND = 14;
const HEIGHT = 260;
/** Lines nearer than this are one. */
const NOTHING = 1e-6;

/** Girths must be more than 0. What runs between the levels is drawn smoothly: the piece itself may bend otherwise. */
export function blendedEdge({ levels, sizes, seams, unit }: BlendedEdge, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const shares = sizes.map(({ girths }) => girths.map((girth) => girth / (2 * seams)));
  const gaps = levels.map((_, i) => Math.abs(shares.at(-1)![i]! - shares[0]![i]!));
  const [smallest, largest] = [sizes[0]!.name, sizes.at(-1)!.name];
  // With a third line between them, which two are meant.
  const apart = sizes.length > 2 ? shortened(`${smallest} to ${largest}`, NAME_ROOM) : 'lines apart';
  const right = levels.map(({ name, size }, i): SideLabel => ({
    y: 0,
    lines: [shortened(name, NAME_ROOM), shortened(`size ${sizes[size]!.name}`, NAME_ROOM), ...(gaps[i]! > NOTHING ? [apart, ...inTwo(say.length(gaps[i]!))] : [])],
  }));
  const left = levels.slice(0, -1).map(({ down = 0, usual }): SideLabel => ({ y: 0, lines: [...inTwo(say.length(down)), ...(usual ? ['(usual)'] : [])], brace: [0, 0] }));
  const rooms = [sideRoom(left), sideRoom(right)] as const;
  const plate = new Plate(widthFor(110, ...rooms));
  const room = plate.width - 2 * MARGIN - rooms[0] - rooms[1] - 10;
  const all = shares.flat();
  const inner = Math.min(...all) - SEEN;
  const height = levels.reduce((sum, { down = 0 }) => sum + down, 0);
  const k = fit(Math.max(...all) - inner, height, room, HEIGHT);
  const start = MARGIN + rooms[0] + 4 + Math.max(0, room - (Math.max(...all) - inner) * k) / 2;
  const x = (mm: number): number => start + (mm - inner) * k;
  const top = plate.y + BEYOND;
  const ys: number[] = [];
  levels.reduce((y, { down = 0 }) => {
    ys.push(y);
    return y + down * k;
  }, top);
  const bottom = ys.at(-1)! + BEYOND;
  const edge = (at: (level: number) => number): Point[] => {
    const points = levels.map((_, i): Point => [x(at(i)), ys[i]!]);
    return [[points[0]![0], plate.y], ...points, [points.at(-1)![0], bottom]];
  };
  const cut = edge((i) => shares[levels[i]!.size]![i]!);
  plate.path('under', `${flowing(cut)}${area(...torn(x(inner), plate.y, bottom).reverse()).replace('M', 'L')}`);
  plate.path('edge', line(...torn(x(inner), plate.y, bottom)));
  for (const share of shares) plate.path('old', flowing(edge((i) => share[i]!)));
  plate.path('new', flowing(cut));
  levels.forEach((_, i) => {
    plate.path('level', line([x(inner), ys[i]!], [x(Math.max(...shares.map((share) => share[i]!))), ys[i]!]));
    if (gaps[i]! > NOTHING) plate.dimension([x(Math.min(shares[0]![i]!, shares.at(-1)![i]!)), ys[i]!], [x(Math.max(shares[0]![i]!, shares.at(-1)![i]!)), ys[i]!], 'new');
  });
  const outer = x(Math.max(...all)) + 12;
  const lowest = [
    plate.beside('left', x(inner) - 4, left.map((label, i) => ({ ...label, y: (ys[i]! + ys[i + 1]!) / 2, brace: [ys[i]!, ys[i + 1]!] as const })), plate.y, bottom),
    plate.beside('right', outer, right.map((label, i) => ({ ...label, y: ys[i]! })), plate.y, bottom),
  ];
  plate.y = Math.max(bottom, ...lowest) + 4;
  plate.key([['new', 'the line to cut'], ['old', sizes.length === 1 ? `line of size ${smallest}` : sizes.length === 2 ? `lines of size ${smallest} and size ${largest}` : `lines of the sizes from ${smallest} to ${largest}`]]);
  plate.notes(`Distances and gaps are to scale, at each edge of ${seams} ${seams === 1 ? 'seam' : 'seams'}; between the levels the piece may bend otherwise.`);
  const told = levels.map(({ name, size, down, usual }, i) => {
    const here = `${name} size ${sizes[size]!.name}`;
    const gap = gaps[i]! > NOTHING ? `, where the lines of ${smallest} and ${largest} lie ${say.length(gaps[i]!)} apart` : '';
    return down === undefined ? `${here}${gap}` : `${here}${gap}, then ${say.length(down)}${usual ? ' (usual)' : ''} down`;
  }).join('; ');
  return plate.done(`The edge to cut, from the top down: ${told}.`);
}
