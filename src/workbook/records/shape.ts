/**
 * A drawn shape: a piece's outline in mm that rows of a sheet name in their
 * Shape column. It came from a drawing file, was drawn on the board, or was
 * traced over a photograph; the photograph itself is not kept.
 */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { figure, line } from './parts.ts';

const MOST = { points: 2_000, marks: 40, reach: 50_000 } as const;

/** x to the right and y downwards, seen from the right side of the cloth. */
export interface ShapePlace {
  readonly x: number;
  readonly y: number;
}

export interface ShapePoint extends ShapePlace {
  /** The edge to the next point bends through this place half way: a quadratic curve. */
  readonly through?: ShapePlace;
}

/** A place on the piece that has to meet the print where others with the same mark meet it. */
export interface ShapeMark extends ShapePlace {
  readonly mark: string;
}

export interface Shape {
  readonly name: string;
  readonly points: readonly ShapePoint[];
  /** The grain line, from its upper end to its lower. */
  readonly grain: readonly [ShapePlace, ShapePlace];
  readonly marks: readonly ShapeMark[];
  readonly from: 'file' | 'board' | 'photograph';
  /** The name of the file that it was drawn in or photographed; may be empty. */
  readonly file: string;
  /** The outline may lie this far from the true one. */
  readonly error: number;
}

const reach = v.pipe(figure, v.minValue(-MOST.reach), v.maxValue(MOST.reach));
const place = v.object({ x: reach, y: reach });
const point = v.object({ x: reach, y: reach, through: v.exactOptional(place) });

export const shapeKind: RecordKindCard<Shape> = {
  called: 'a shape',
  schema: v.object({
    name: v.pipe(line, v.minLength(1)),
    points: v.pipe(v.array(point), v.minLength(2), v.maxLength(MOST.points)),
    grain: v.pipe(v.tuple([place, place]), v.check(([from, to]) => Math.hypot(to.x - from.x, to.y - from.y) > 1e-3)),
    marks: v.pipe(v.array(v.object({ mark: line, x: reach, y: reach })), v.maxLength(MOST.marks)),
    from: v.picklist(['file', 'board', 'photograph']),
    file: line,
    error: v.pipe(figure, v.minValue(0)),
  }),
  title: ({ name }) => name,
};
