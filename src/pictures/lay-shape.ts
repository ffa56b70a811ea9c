/** Where in the outline of a laid piece its grain line and its words have room. */
import { textWidth, TEXT_SIZE } from './text.ts';

export type Spot = readonly [x: number, y: number];

interface Chord {
  readonly from: number;
  readonly to: number;
  readonly y: number;
}

/** Levels at which an outline is looked at. */
const LEVELS = 15;

const bounds = (outline: readonly Spot[], axis: 0 | 1): readonly [number, number] => {
  let low = Infinity, high = -Infinity;
  for (const spot of outline) {
    low = Math.min(low, spot[axis]);
    high = Math.max(high, spot[axis]);
  }
  return [low, high];
};

/** The parts of a level line that lie inside. */
function chords(outline: readonly Spot[], y: number): Chord[] {
  const at: number[] = [];
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    if (ay > y !== by > y) at.push(ax + ((y - ay) * (bx - ax)) / (by - ay));
  });
  at.sort((a, b) => a - b);
  const found: Chord[] = [];
  for (let i = 0; i + 1 < at.length; i += 2) found.push({ from: at[i]!, to: at[i + 1]!, y });
  return found;
}

/** Widest chords first, those near the middle before those near an end. */
function chordsByRoom(outline: readonly Spot[]): Chord[] {
  const [low, high] = bounds(outline, 1);
  const middle = (low + high) / 2, half = (high - low) / 2 || 1;
  const room = ({ from, to, y }: Chord): number => (to - from) * (1 - 0.6 * (Math.abs(y - middle) / half));
  return Array.from({ length: LEVELS }, (_, i) => low + ((i + 0.5) * (high - low)) / LEVELS)
    .flatMap((y) => chords(outline, y))
    .sort((a, b) => room(b) - room(a));
}

/** True when all of the box is inside. */
export function holdsBox(outline: readonly Spot[], left: number, top: number, right: number, bottom: number): boolean {
  if (outline.some(([x, y]) => x > left && x < right && y > top && y < bottom)) return false;
  const levels = [top, (top + bottom) / 2, bottom];
  return levels.every((y) => chords(outline, y).some(({ from, to }) => from <= left && to >= right));
}

export interface Label {
  readonly x: number;
  /** The line that the first line of letters stands on. */
  readonly y: number;
  readonly lines: readonly string[];
}

/**
 * The longest of the wordings that has room in the outline, and where.
 *
 * @param wordings the best first; the last is taken though it may stick out
 * @param size of the letters, in the units of the outline
 */
export function labelIn(outline: readonly Spot[], wordings: readonly (readonly string[])[], size: number): Label {
  const line = size * 1.25, pad = size * 0.3;
  const places = chordsByRoom(outline);
  for (const lines of wordings) {
    const half = Math.max(...lines.map((text) => textWidth(text) * (size / TEXT_SIZE))) / 2 + pad;
    const height = lines.length * line;
    for (const { from, to, y } of places) {
      const x = (from + to) / 2;
      if (to - from >= 2 * half && holdsBox(outline, x - half, y - height / 2 - pad, x + half, y + height / 2 + pad)) return { x, y: y - height / 2 + size, lines };
    }
  }
  const { from, to, y } = places[0] ?? { from: 0, to: 0, y: 0 };
  return { x: (from + to) / 2, y: y + size / 2, lines: wordings[wordings.length - 1] ?? [] };
}

export type Box = readonly [left: number, top: number, right: number, bottom: number];

/** Around lines of letters whose first stands on `y`. */
export function boxOf(lines: readonly string[], x: number, y: number, size: number): Box {
  const half = Math.max(0, ...lines.map((text) => textWidth(text) * (size / TEXT_SIZE))) / 2;
  return [x - half, y - size, x + half, y + (lines.length - 1) * size * 1.25 + size * 0.3];
}

/** As good as any: a line through words is only taken where there is no other. */
const THROUGH_WORDS = 0.3;

/**
 * The longest line along a direction that has room inside, a little shorter
 * than that, beside the middle rather than through it.
 *
 * @param angle radians, from the right towards the bottom of the page
 * @param words where it had better not be
 */
export function lineIn(outline: readonly Spot[], angle: number, words: Box): readonly [Spot, Spot] {
  const cos = Math.cos(angle), sin = Math.sin(angle);
  const turned = outline.map(([x, y]) => [x * cos + y * sin, y * cos - x * sin] as const);
  const [low, high] = bounds(turned, 1);
  const at = [0.32, 0.68, 0.25, 0.5, 0.75, 0.15, 0.85, 0.08, 0.92].map((part) => low + part * (high - low));
  const back = (x: number, y: number): Spot => [x * cos - y * sin, x * sin + y * cos];
  const crosses = ({ from, to, y }: Chord): boolean => Array.from({ length: 9 }, (_, i) => back(from + ((to - from) * (i + 1)) / 10, y))
    .some(([spotX, spotY]) => spotX > words[0] && spotX < words[2] && spotY > words[1] && spotY < words[3]);
  const all = at.flatMap((y, i) => chords(turned, y).map((chord) => ({ ...chord, worth: (chord.to - chord.from) * (1 - 0.04 * i) * (crosses(chord) ? THROUGH_WORDS : 1) })));
  const best = all.reduce((a, b) => (b.worth > a.worth ? b : a), all[0] ?? { from: 0, to: 0, y: (low + high) / 2, worth: 0 });
  const spare = (best.to - best.from) * 0.14;
  return [back(best.from + spare, best.y), back(best.to - spare, best.y)];
}
