/** A drawn shape while it is worked on: pure changes of it, and what the board shows. */
import { areaOf, boundsOf, type Point } from '../lay/index.ts';
import { drawnOutline, type Plane } from '../lay/shapes/index.ts';
import { exactText, inBase, quantity, show, type ShowAs } from '../quantities/index.ts';
import type { BoardPart, BoardSpot, BoardView, ShapeRow } from '../panels/index.ts';
import type { Shape, ShapePlace, ShapePoint } from '../workbook/index.ts';

/** 0.1 µm: short figures in the file. */
const FINE = 1e4;
const fine = (mm: number): number => Math.round(mm * FINE) / FINE + 0;
const tidy = ({ x, y }: ShapePlace): ShapePlace => ({ x: fine(x), y: fine(y) });

/** To the nearest crossing of the squares. */
export const snapped = ({ x, y }: ShapePlace, step: number): ShapePlace => tidy({ x: Math.round(x / step) * step, y: Math.round(y / step) * step });

const between = (a: ShapePlace, b: ShapePlace, t = 0.5): ShapePlace => ({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });

const nextOf = ({ points }: Pick<Shape, 'points'>, at: number): ShapePoint => points[(at + 1) % points.length]!;

/** Where the edge after a point can be taken hold of. */
export const bendOf = (shape: Pick<Shape, 'points'>, at: number): ShapePlace => shape.points[at]!.through ?? between(shape.points[at]!, nextOf(shape, at));

export function placeOf(shape: Shape, { kind, at }: BoardPart): ShapePlace | undefined {
  if (kind === 'point') return shape.points[at];
  if (kind === 'bend') return shape.points[at] && bendOf(shape, at);
  return kind === 'grain' ? shape.grain[at as 0 | 1] : kind === 'mark' ? shape.marks[at] : undefined;
}

/** With one part of it elsewhere. Curves on both sides of a point go along with it by half. */
export function moved(shape: Shape, { kind, at }: BoardPart, given: ShapePlace): Shape {
  const to = tidy(given);
  switch (kind) {
    case 'point': {
      const { x, y } = shape.points[at]!;
      const half = { x: (to.x - x) / 2, y: (to.y - y) / 2 };
      const before = (at + shape.points.length - 1) % shape.points.length;
      return {
        ...shape,
        points: shape.points.map((point, i): ShapePoint => {
          const through = point.through && (i === at || i === before) ? tidy({ x: point.through.x + half.x, y: point.through.y + half.y }) : point.through;
          return { ...(i === at ? to : { x: point.x, y: point.y }), ...(through && { through }) };
        }),
      };
    }
    case 'bend': {
      const middle = between(shape.points[at]!, nextOf(shape, at));
      const straight = Math.hypot(to.x - middle.x, to.y - middle.y) < 0.05;
      const { x, y } = shape.points[at]!;
      return { ...shape, points: shape.points.with(at, straight ? { x, y } : { x, y, through: to }) };
    }
    case 'grain': return { ...shape, grain: at === 0 ? [to, shape.grain[1]] : [shape.grain[0], to] };
    case 'mark': return { ...shape, marks: shape.marks.with(at, { ...shape.marks[at]!, ...to }) };
    default: return shape;
  }
}

/** One more point in the middle of the edge after `at`; a curve is cut in two that lie on it. */
export function withPoint(shape: Shape, at: number): Shape {
  const from = shape.points[at]!, to = nextOf(shape, at);
  const middle = tidy(bendOf(shape, at));
  if (!from.through) return { ...shape, points: shape.points.toSpliced(at + 1, 0, middle) };
  const control = { x: 2 * from.through.x - (from.x + to.x) / 2, y: 2 * from.through.y - (from.y + to.y) / 2 };
  // Half way along each half of a quadratic curve.
  const along = (t: number): ShapePlace => tidy(between(between(from, control, t), between(control, to, t), t));
  return { ...shape, points: shape.points.toSpliced(at, 1, { x: from.x, y: from.y, through: along(0.25) }, { ...middle, through: along(0.75) }) };
}

/** A shape needs three points. */
export const canLose = (shape: Shape, { kind }: BoardPart): boolean => kind === 'mark' || (kind === 'point' && shape.points.length > 3);

export function without(shape: Shape, { kind, at }: BoardPart): Shape {
  if (kind === 'mark') return { ...shape, marks: shape.marks.toSpliced(at, 1) };
  const before = (at + shape.points.length - 1) % shape.points.length;
  // The edge that ended there and the one that began there become one straight edge.
  const straight = shape.points.map((point, i): ShapePoint => (i === before ? { x: point.x, y: point.y } : point));
  return { ...shape, points: straight.toSpliced(at, 1) };
}

/** How far an edge bends out of the straight, to the left of its way positive; and the edge with another bend. */
export function bulge(shape: Shape, at: number): number {
  const { point, normal, middle } = edge(shape, at);
  return point.through ? (point.through.x - middle.x) * normal.x + (point.through.y - middle.y) * normal.y : 0;
}

export function withBulge(shape: Shape, at: number, mm: number): Shape {
  const { normal, middle } = edge(shape, at);
  return moved(shape, { kind: 'bend', at }, { x: middle.x + mm * normal.x, y: middle.y + mm * normal.y });
}

function edge(shape: Shape, at: number): { readonly point: ShapePoint; readonly normal: ShapePlace; readonly middle: ShapePlace } {
  const point = shape.points[at]!, next = nextOf(shape, at);
  const length = Math.hypot(next.x - point.x, next.y - point.y) || 1;
  // Outwards, whichever way round the outline goes.
  const turn = Math.sign(shape.points.reduce((sum, a, i) => {
    const b = nextOf(shape, i);
    return sum + a.x * b.y - b.x * a.y;
  }, 0)) || 1;
  return { point, middle: between(point, next), normal: { x: (turn * (next.y - point.y)) / length, y: (-turn * (next.x - point.x)) / length } };
}

export function lengthSaid(mm: number, as: ShowAs): string {
  // Below 1/16 in a tape has no mark.
  const [unit, decimals] = as.system === 'in' ? ['in', Math.abs(mm) < 25.4 / 16 ? 3 : undefined] as const : Math.abs(mm) < 10 ? ['mm', 1] as const : ['cm', 1] as const;
  return show(inBase(mm, unit), { ...as, system: 'own', decimals }).main;
}

/** As it would be typed, exactly. */
const typed = (mm: number, as: ShowAs): string => {
  const text = exactText(as.system === 'in' ? quantity(Math.round((mm / 25.4) * 1e4) / 1e4, 'in') : quantity(fine(mm / 10), 'cm'));
  return as.decimalMark === ',' ? text.replace('.', ',') : text;
};

const NAMES: Readonly<Record<BoardPart['kind'], string>> = { point: 'Point', bend: 'Edge after point', grain: 'Grain line', mark: 'Mark', corner: 'Corner' };

function nameOf(shape: Shape, { kind, at }: BoardPart): string {
  if (kind === 'grain') return at === 0 ? 'Grain, top' : 'Grain, end';
  return kind === 'mark' ? `Mark “${shape.marks[at]?.mark ?? ''}”` : `${NAMES[kind]} ${at + 1}`;
}

const partsOf = (shape: Shape): readonly BoardPart[] => [
  ...shape.points.map((_, at): BoardPart => ({ kind: 'point', at })), ...shape.points.map((_, at): BoardPart => ({ kind: 'bend', at })),
  { kind: 'grain', at: 0 }, { kind: 'grain', at: 1 }, ...shape.marks.map((_, at): BoardPart => ({ kind: 'mark', at })),
];

/** A shape with very many points is moved by its figures. */
const MOST_HELD = 120;

export function rowsOf(shape: Shape, as: ShowAs): readonly ShapeRow[] {
  return partsOf(shape).filter(({ kind }) => kind !== 'bend').slice(0, 3 * MOST_HELD).map((part): ShapeRow => {
    const { x, y } = placeOf(shape, part)!;
    return { part, label: nameOf(shape, part), x: typed(x, as), y: typed(y, as), bend: part.kind === 'point' ? typed(fine(bulge(shape, part.at)), as) : null };
  });
}

export function aboutShape(shape: Shape, as: ShowAs): string {
  const outline = drawnOutline(shape);
  const { from, to } = boundsOf(outline);
  const came = shape.from === 'file' ? `From the file ${shape.file}` : shape.from === 'photograph' ? `Traced over the photograph ${shape.file}` : 'Drawn on the board';
  const area = show(inBase(areaOf(outline), as.system === 'in' ? 'in2' : 'cm2'), { ...as, system: 'own', decimals: undefined }).main;
  return `${came}. ${lengthSaid(to[0] - from[0], as)} wide, ${lengthSaid(to[1] - from[1], as)} high, ${area}. Its outline may be off by ${lengthSaid(shape.error, as)}.`;
}

const MARGIN = 0.12;

/** How the board stands to the plane: mm as they are, or over a photograph. */
export type Onto = Pick<Plane, 'toPx'> | null;

export function boardOf(shape: Shape, chosen: BoardPart | null, step: number, onto: Onto, photo: ImageBitmap | null, as: ShowAs, box: BoardView['box'] = boxOf(shape), field: BoardView['box'] | null = null): BoardView {
  const put = ({ x, y }: ShapePlace): Point => (onto ? onto.toPx([x, y]) : [x, y]);
  const path = (points: readonly Point[], end = ''): string => (points.length === 0 ? '' : `M${points.map(([x, y]) => `${fine(x)} ${fine(y)}`).join('L')}${end}`);
  const held = partsOf(shape).filter(({ kind, at }) => kind === 'grain' || kind === 'mark' || shape.points.length <= MOST_HELD || (chosen !== null && at === chosen.at));
  return {
    box, photo,
    outline: path(drawnOutline(shape).map(([x, y]) => put({ x, y })), 'Z'),
    grain: path(shape.grain.map(put)),
    ...squares(step, put, field ?? box, field === null),
    spots: held.map((part): BoardSpot => {
      const place = placeOf(shape, part)!;
      const [x, y] = put(place);
      return { part, x, y, label: `${nameOf(shape, part)}: ${lengthSaid(place.x, as)} across, ${lengthSaid(place.y, as)} down`, chosen: chosen?.kind === part.kind && chosen.at === part.at };
    }),
  };
}

/** So much is in view. */
export function boxOf(shape: Shape): BoardView['box'] {
  const { from, to } = boundsOf([...drawnOutline(shape), ...shape.grain.map(({ x, y }): Point => [x, y])]);
  const size = Math.max(to[0] - from[0], to[1] - from[1], 50);
  const margin = size * MARGIN;
  return { x: from[0] - margin, y: from[1] - margin, width: to[0] - from[0] + 2 * margin, height: to[1] - from[1] + 2 * margin };
}

/** More lines than this across are a grey sheet. */
const MOST_LINES = 90;

function squares(step: number, put: (place: ShapePlace) => Point, around: BoardView['box'], fills: boolean): { fine: string; strong: string } {
  // The board goes on beyond what is asked for, to fill its frame.
  const beyond = fills ? Math.max(around.width, around.height) : 0;
  const [left, top, right, bottom] = [around.x - beyond, around.y - beyond, around.x + around.width + beyond, around.y + around.height + beyond];
  let every = step;
  while (Math.max(around.width, around.height) / every > MOST_LINES) every *= every === step ? 2 : 5;
  const lines = { fine: '', strong: '' };
  const line = (n: number, a: ShapePlace, b: ShapePlace): void => {
    const [[x1, y1], [x2, y2]] = [put(a), put(b)];
    lines[n % 10 === 0 ? 'strong' : 'fine'] += `M${fine(x1)} ${fine(y1)}L${fine(x2)} ${fine(y2)}`;
  };
  for (let n = Math.ceil(left / every); n * every <= right; n++) line(n, { x: n * every, y: top }, { x: n * every, y: bottom });
  for (let n = Math.ceil(top / every); n * every <= bottom; n++) line(n, { x: left, y: n * every }, { x: right, y: n * every });
  return lines;
}
