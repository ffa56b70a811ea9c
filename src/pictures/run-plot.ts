/** A result over a run of values of one input: dots, joined where the results join, on axes in the units of the sheet, and the stretches with a pin. */
import { UNITS, inBase, show } from '../quantities/index.ts';
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { box, circle, hatch, line } from './draw.ts';
import type { Point } from './draw.ts';
import type { Mark, Picture } from './marks.ts';
import { place } from './scale.ts';
import { textWidth } from './text.ts';
import { sentences } from './words.ts';

export interface RunPlot {
  readonly input: { readonly name: string; readonly unit: UnitCode; readonly as: ShowAs };
  readonly result: { readonly name: string; readonly unit: UnitCode; readonly as: ShowAs };
  /** In ascending order of the input; base units. `null` where there is no result. */
  readonly points: readonly { readonly x: number; readonly y: number | null }[];
  /** Nothing between two values means anything, as with a count: the dots are not joined. */
  readonly apart: boolean;
  /** Where pins are, by their number in the list beside it. */
  readonly pins: readonly { readonly number: number; readonly from: number; readonly to: number }[];
}

const WIDTH = 380;
const [TOP, BOTTOM, RIGHT] = [14, 190, WIDTH - 16];
const LANE = 17;
const MOST_TICKS = 6;

export function runPlot({ input, result, points, apart, pins }: RunPlot): Picture | null {
  const there = points.filter((point): point is { x: number; y: number } => point.y !== null);
  if (there.length === 0) return null;
  const across = axis(points.map(({ x }) => x), input.unit, input.as, false);
  const up = axis(there.map(({ y }) => y), result.unit, result.as, true);
  const left = 12 + Math.max(...up.ticks.map(({ text }) => textWidth(text))) + 6;
  const floor = BOTTOM;
  const at = (x: number, y: number): Point => [
    left + ((x - across.low) / (across.high - across.low)) * (RIGHT - left),
    floor - ((y - up.low) / (up.high - up.low)) * (floor - TOP),
  ];
  const marks: Mark[] = [];
  const half = points.length > 1 ? (points.at(-1)!.x - points[0]!.x) / (points.length - 1) / 2 : (across.high - across.low) / 2;
  // Pins at the back, each in a lane of its own below the axis, with its stretch hatched above it.
  const lanesTop = floor + 36;
  const height = lanesTop + 8 + pins.length * LANE;
  for (const [lane, { number, from, to }] of pins.entries()) {
    const [start, end] = [Math.max(left, at(from - half, up.low)[0]), Math.min(RIGHT, at(to + half, up.low)[0])];
    const y = lanesTop + lane * LANE;
    marks.push({ kind: 'path', look: 'zone', d: box(start, TOP, end - start, floor - TOP) }, { kind: 'path', look: 'hatch', d: hatch(start, y, end - start, 6) });
    marks.push({ kind: 'path', look: 'dim-pin', d: line([start, y - 2], [start, y + 8]) + line([end, y - 2], [end, y + 8]) + line([start, y + 3], [end, y + 3]) });
    marks.push({ kind: 'text', x: place(left - 6), y: place(y + 7), anchor: 'end', text: `pin ${number}` });
  }
  for (const { value, text } of up.ticks) {
    const y = at(across.low, value)[1];
    marks.push({ kind: 'path', look: 'reach', d: line([left, y], [RIGHT, y]) }, { kind: 'text', x: place(left - 5), y: place(y + 4), anchor: 'end', text });
  }
  for (const { value, text } of across.ticks) {
    const x = at(value, up.low)[0];
    marks.push({ kind: 'path', look: 'thin', d: line([x, floor], [x, floor + 5]) }, { kind: 'text', x: place(Math.min(WIDTH - 4 - textWidth(text) / 2, x)), y: place(floor + 17), anchor: 'middle', text });
  }
  marks.push({ kind: 'path', look: 'edge', d: line([left, TOP], [left, floor], [RIGHT, floor]) });
  marks.push({ kind: 'text', x: place((left + RIGHT) / 2), y: place(floor + 30), anchor: 'middle', text: input.name, soft: true });
  if (!apart) for (const stretch of stretches(points)) if (stretch.length > 1) marks.push({ kind: 'path', look: 'new', d: line(...stretch.map(({ x, y }) => at(x, y))) });
  if (there.length <= 120) for (const { x, y } of there) marks.push({ kind: 'path', look: 'dot', d: circle(at(x, y), apart ? 3.4 : 2.4) });
  const say = (value: number, of: { readonly unit: UnitCode; readonly as: ShowAs }): string => show(inBase(value, of.unit), { ...of.as, system: of.as.system === 'both' ? 'own' : of.as.system }).main;
  const [least, most] = [there.reduce((a, b) => (b.y < a.y ? b : a)), there.reduce((a, b) => (b.y > a.y ? b : a))];
  return {
    width: WIDTH, height, marks,
    alt: sentences(
      `${result.name} over ${input.name} from ${say(points[0]!.x, input)} to ${say(points.at(-1)!.x, input)}:`,
      `least ${say(least.y, result)} with ${say(least.x, input)}, most ${say(most.y, result)} with ${say(most.x, input)}.`,
      there.length < points.length && `There is no result for ${points.length - there.length} of ${points.length} values.`,
      pins.length > 0 && pins.map(({ number, from, to }) => `Pin ${number} from ${say(from, input)} to ${say(to, input)}.`).join(' '),
      'The figures are in the table.',
    ),
  };
}

/** Runs of neighbours that have a result. */
function stretches(points: RunPlot['points']): { x: number; y: number }[][] {
  const all: { x: number; y: number }[][] = [[]];
  for (const { x, y } of points) {
    if (y === null) all.push([]);
    else all.at(-1)!.push({ x, y });
  }
  return all;
}

interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
}

/** From a round figure to a round figure in the unit that is shown; `padded`: what is level gets room above and below. */
function axis(values: readonly number[], unit: UnitCode, as: ShowAs, padded: boolean): Axis {
  const system = as.system === 'both' ? 'own' : as.system;
  const { unit: shownIn } = unitShown(unit, { ...as, system });
  const { size } = UNITS[shownIn];
  const [least, most] = [Math.min(...values) / size, Math.max(...values) / size];
  const level = most - least < 1e-9 * Math.max(1, Math.abs(most));
  const span = level ? Math.max(1, Math.abs(most) * 0.2) : most - least;
  const step = niceStep(span / (MOST_TICKS - 1), UNITS[shownIn].system === 'inch' && UNITS[shownIn].dimension === 'length');
  const [low, high] = level ? [least - span / 2, most + span / 2] : [least, most];
  const [first, last] = padded ? [Math.floor(low / step + 1e-9), Math.ceil(high / step - 1e-9)] : [Math.ceil(low / step - 1e-9), Math.floor(high / step + 1e-9)];
  const ticks = Array.from({ length: Math.max(0, last - first) + 1 }, (_, n) => {
    const value = Number(((first + n) * step).toPrecision(12)) * size;
    return { value, text: show(inBase(value, shownIn), { ...as, system: 'own', unit: shownIn, inchStep: 32 }).main.replaceAll('⁄', '/') };
  });
  return padded ? { low: first * step * size, high: (last > first ? last : first + 1) * step * size, ticks } : { low: low * size, high: high * size, ticks };
}

/** The unit that a figure of this unit shows in. */
function unitShown(unit: UnitCode, as: ShowAs): { readonly unit: UnitCode } {
  if (as.unit !== undefined && UNITS[as.unit].dimension === UNITS[unit].dimension) return { unit: as.unit };
  const { dimension, system } = UNITS[unit];
  if (as.system === 'cm' && system === 'inch') return { unit: dimension === 'area' ? 'cm2' : dimension === 'length' ? 'cm' : unit };
  if (as.system === 'in' && system !== 'inch') return { unit: dimension === 'area' ? 'in2' : dimension === 'length' ? 'in' : unit };
  return { unit };
}

/** 1, 2 or 5 of a power of ten; below an inch halves, quarters and eighths. */
function niceStep(least: number, inches: boolean): number {
  if (inches && least <= 0.5) return [1 / 16, 1 / 8, 1 / 4, 1 / 2].find((step) => step >= least) ?? 0.5;
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((n) => n * power).find((step) => step >= least * (1 - 1e-9)) ?? 10 * power;
}
