/**
 * The sheet a picture is composed on, from the top down: captions, lanes of
 * dimensions, the drawing itself, labels at its sides, a key and remarks. It
 * keeps the labels apart; where the drawing lies is its picture's business.
 */
import { arrowHead, box, hatch, line, polar } from './draw.ts';
import type { Point } from './draw.ts';
import { lanes, OUTSIDE, SHORT } from './lanes.ts';
import type { Dim, Laid } from './lanes.ts';
import type { Look, Mark, Picture } from './marks.ts';
import { place, spread } from './scale.ts';
import { ASCENT, DESCENT, LINE, textWidth, wrapped } from './text.ts';

/** The width of the working panel. A picture whose labels need more is wider. */
export const WIDTH = 320;
export const MARGIN = 12;
const LANE = 25;
const SAMPLE = 26;
/** Looks whose sample in a key is a patch and not a line. */
const AREAS: ReadonlySet<Look> = new Set(['cloth', 'body', 'new-cloth']);
/** From the drawing to the text at its side: a leader, and this much more for each brace. */
const LEADER = 16;
const BRACE = 13;

/** A label at the side of the drawing: what it speaks of is at `y`, or from one end of `brace` to the other. */
export interface SideLabel {
  readonly y: number;
  readonly lines: readonly string[];
  readonly brace?: readonly [number, number];
  readonly look?: 'new' | 'pin';
}

/** The room that labels of these texts need beside a drawing. */
export function sideRoom(labels: readonly { readonly lines: readonly string[]; readonly brace?: unknown }[]): number {
  if (labels.length === 0) return 0;
  const text = Math.max(...labels.flatMap(({ lines }) => lines.map(textWidth)));
  return text + LEADER + BRACE * labels.filter(({ brace }) => brace !== undefined).length;
}

/** A plate's width that leaves a drawing at least `drawing` between its side labels. */
export const widthFor = (drawing: number, ...rooms: readonly number[]): number =>
  Math.max(WIDTH, Math.ceil(2 * MARGIN + drawing + rooms.reduce((sum, room) => sum + room, 0)));

export class Plate {
  readonly #marks: Mark[] = [];
  /** The part above this is taken. */
  y: number = MARGIN;
  readonly left = MARGIN;
  readonly right: number;

  constructor(readonly width: number = WIDTH) {
    this.right = width - MARGIN;
  }

  path(look: Look, d: string): void {
    if (d !== '') this.#marks.push({ kind: 'path', look, d });
  }

  text(x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'start', soft = false): void {
    this.#marks.push({ kind: 'text', x: place(x), y: place(y), anchor, text, ...(soft && { soft }) });
  }

  /** A heading of what follows, over the whole width. */
  caption(text: string): void {
    for (const each of wrapped(text, this.right - this.left)) {
      this.text(this.left, this.y + ASCENT, each);
      this.y += LINE;
    }
    this.y += 2;
  }

  /** Dimensions above the drawing, whose top is then at `y`. */
  above(dims: readonly Dim[]): void {
    const rows = lanes(dims, this.left, this.right);
    const edge = this.y + rows.length * LANE + 2;
    rows.forEach((row, i) => row.forEach((dim) => {
      const y = edge - 9 - i * LANE;
      this.#dim(dim, y, edge + (dim.reach ?? 0), y - 6);
    }));
    this.y = edge;
  }

  /** Dimensions below a drawing whose lower edge is at `edge`. */
  below(dims: readonly Dim[], edge: number): void {
    const rows = lanes(dims, this.left, this.right);
    rows.forEach((row, i) => row.forEach((dim) => {
      const y = edge + 9 + i * LANE;
      this.#dim(dim, y, edge - (dim.reach ?? 0), y + 5 + ASCENT);
    }));
    this.y = edge + (rows.length > 0 ? rows.length * LANE + 4 : 6);
  }

  #dim(dim: Laid, y: number, edge: number, baseline: number): void {
    for (const x of [dim.from, dim.to]) this.path('reach', line([x, edge], [x, y + (y < edge ? -5 : 5)]));
    this.dimension([dim.from, y], [dim.to, y], dim.look);
    this.text(dim.textFrom, baseline, dim.text);
  }

  /** A piece of tape from one point to another, with ticks and arrows. */
  dimension(from: Point, to: Point, look?: 'new' | 'pin'): void {
    const ink = look === 'new' ? 'dim-new' : look === 'pin' ? 'dim-pin' : 'dim';
    const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    this.path('tape', line(from, to));
    for (const end of [from, to]) this.path(ink, line(polar(end, 5, angle - Math.PI / 2), polar(end, 5, angle + Math.PI / 2)));
    if (length < SHORT) {
      this.path(ink, line(polar(from, OUTSIDE, angle + Math.PI), from));
      this.path(ink, line(to, polar(to, OUTSIDE, angle)));
      this.path('arrow', arrowHead(from, angle) + arrowHead(to, angle + Math.PI));
    } else {
      this.path(ink, line(from, to));
      this.path('arrow', arrowHead(from, angle + Math.PI) + arrowHead(to, angle));
    }
  }

  /**
   * Labels beside the drawing whose edge is at `x`, none above `low`. They end
   * above `high` when there is room. Gives back where the lowest ends.
   */
  beside(side: 'left' | 'right', x: number, labels: readonly SideLabel[], low: number, high: number): number {
    const away = side === 'left' ? -1 : 1;
    const columns = braceColumns(labels);
    const braces = Math.max(0, ...columns.map((column) => column + 1));
    const textX = x + away * (LEADER + BRACE * braces);
    const starts = spread(labels.map(({ y, lines }) => ({ at: y, size: lines.length * LINE })), low, high, 3);
    let lowest = low;
    labels.forEach((label, i) => {
      const { y, lines, brace, look } = label;
      const start = starts[i]!;
      const height = lines.length * LINE;
      let from = x + away * 2;
      if (brace !== undefined) {
        from = x + away * (6 + BRACE * columns[i]!);
        for (const end of brace) this.path('reach', line([x, end], [from + away * 5, end]));
        this.dimension([from, brace[0]], [from, brace[1]], look);
        from += away * 4;
      }
      this.path('reach', line([from, y], [textX - away * 6, start + height / 2], [textX - away * 3, start + height / 2]));
      lines.forEach((each, n) => this.text(textX, start + n * LINE + ASCENT + 0.5, each, side === 'left' ? 'end' : 'start'));
      lowest = Math.max(lowest, start + height);
    });
    return lowest;
  }

  /** What lines mean: a sample of each with its words. */
  key(items: readonly (readonly [Look, string])[]): void {
    this.y += 4;
    for (const [look, words] of items) {
      const middle = this.y + LINE / 2;
      if (look === 'hatch') this.path(look, hatch(this.left, middle - 5, SAMPLE - 8, 10));
      else if (AREAS.has(look)) this.path(look, box(this.left, middle - 4, SAMPLE - 8, 8));
      else this.path(look, line([this.left, middle], [this.left + SAMPLE - 8, middle]));
      for (const each of wrapped(words, this.right - this.left - SAMPLE)) {
        this.text(this.left + SAMPLE, this.y + ASCENT, each);
        this.y += LINE;
      }
    }
  }

  /** Remarks about the picture. */
  notes(...texts: readonly (string | false | undefined)[]): void {
    const all = texts.filter((text) => typeof text === 'string' && text !== '').join(' ');
    if (all === '') return;
    this.y += 4;
    for (const each of wrapped(all, this.right - this.left)) {
      this.text(this.left, this.y + ASCENT, each, 'start', true);
      this.y += LINE;
    }
  }

  done(alt: string): Picture {
    return { alt, width: this.width, height: Math.ceil(this.y + DESCENT + 6), marks: this.#marks };
  }
}

/** Braces side by side where they would lie on one another, by label; −1 for a label without one. */
function braceColumns(labels: readonly SideLabel[]): number[] {
  const columns: (readonly [number, number])[][] = [];
  return labels.map(({ brace }) => {
    if (brace === undefined) return -1;
    const over = brace[1] - brace[0] < SHORT ? OUTSIDE : 0;
    const [from, to] = [brace[0] - over - 2, brace[1] + over + 2];
    let column = columns.findIndex((taken) => taken.every(([low, high]) => to <= low || from >= high));
    if (column < 0) column = columns.push([]) - 1;
    columns[column]!.push([from, to]);
    return column;
  });
}
