/** One measure over time: a dot a day, joined, each with its figure where there is room. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { circle, line } from './draw.ts';
import type { Point } from './draw.ts';
import type { Mark, Picture } from './marks.ts';
import { place } from './scale.ts';
import { textWidth } from './text.ts';
import { sayIn, sentences } from './words.ts';

export interface OverTime {
  readonly name: string;
  readonly unit: UnitCode;
  /** The oldest first, one or more. `day` is ISO 8601, `when` the same for a person. */
  readonly moments: readonly { readonly day: string; readonly when: string; readonly mm: number }[];
}

const WIDTH = 320;
const HEIGHT = 150;
const [LEFT, RIGHT, TOP, BOTTOM] = [16, WIDTH - 16, 34, HEIGHT - 32];
/** A change of less than this is not blown up to fill the picture, in mm. */
const LEAST_RANGE = 40;

/** Days are to scale along, the measure to scale upwards, though not from 0. */
export function overTime({ name, unit, moments }: OverTime, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const days = moments.map(({ day }) => Date.parse(day) / 86_400_000);
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const figures = moments.map(({ mm }) => mm);
  const middle = (Math.min(...figures) + Math.max(...figures)) / 2;
  const range = Math.max(LEAST_RANGE, Math.max(...figures) - Math.min(...figures));
  const at = (index: number): Point => [
    last === first ? (LEFT + RIGHT) / 2 : LEFT + 24 + ((days[index]! - first) / (last - first)) * (RIGHT - LEFT - 48),
    (TOP + BOTTOM) / 2 - ((figures[index]! - middle) / range) * (BOTTOM - TOP),
  ];
  const points = moments.map((_, index) => at(index));
  const marks: Mark[] = [{ kind: 'path', look: 'thin', d: line([LEFT, BOTTOM + 12], [RIGHT, BOTTOM + 12]) }];
  if (points.length > 1) marks.push({ kind: 'path', look: 'new', d: line(...points) });
  points.forEach((point) => marks.push({ kind: 'path', look: 'dot', d: circle(point, 3) }, { kind: 'path', look: 'thin', d: line([point[0], BOTTOM + 9], [point[0], BOTTOM + 15]) }));
  for (const { index, x } of spaced(points, (index) => say.length(figures[index]!))) {
    marks.push({ kind: 'text', x: place(x), y: place(points[index]![1] - 8), anchor: 'middle', text: say.length(figures[index]!) });
  }
  for (const { index, x } of spaced(points, (index) => moments[index]!.when)) {
    marks.push({ kind: 'text', x: place(x), y: HEIGHT - 6, anchor: 'middle', text: moments[index]!.when, soft: true });
  }
  return {
    alt: sentences(`${name} over time:`, `${moments.map(({ when, mm }) => `${when} ${say.length(mm)}`).join('; ')}.`),
    width: WIDTH, height: HEIGHT, marks,
  };
}

/** As many labels as stand side by side, the newest and the oldest before those between. */
function spaced(points: readonly Point[], text: (index: number) => string): { index: number; x: number }[] {
  const order = [points.length - 1, 0, ...points.keys()].filter((each, at, all) => all.indexOf(each) === at);
  const placed: { index: number; x: number; from: number; to: number }[] = [];
  for (const index of order) {
    const half = textWidth(text(index)) / 2 + 2;
    const x = Math.min(WIDTH - half - 2, Math.max(half + 2, points[index]![0]));
    if (placed.every(({ from, to }) => x + half < from || x - half > to)) placed.push({ index, x, from: x - half, to: x + half });
  }
  return placed;
}
