/**
 * Pieces from a drawing file (SVG 2). Real units come from width, height and
 * viewBox; outlines are what is closed, with a grain line that is marked by a
 * word or is a plain line inside the piece. The file's nodes are only read.
 */
import { areaOf, boundsOf } from '../outline.ts';
import type { Outline, Point } from '../types.ts';
import { drawnOutline } from './drawn.ts';
import { subpaths } from './svg-path.ts';
import type { DrawnPoint } from './types.ts';

export interface SvgShape {
  readonly name: string;
  /** mm; x to the right, y downwards. */
  readonly points: readonly DrawnPoint[];
  readonly grain: readonly [{ readonly x: number; readonly y: number }, { readonly x: number; readonly y: number }];
}

export interface SvgPieces {
  readonly shapes: readonly SvgShape[];
  /** One for each thing that was left out or taken for granted. */
  readonly sentences: readonly string[];
}

/** What is kept leaves the drawn curve by at most this, in mm. */
export const SVG_TOLERANCE = 0.1;

const MOST = { elements: 20_000, shapes: 60, points: 2_000 } as const;
/** Smaller outlines, in mm², are notches, holes and letters. */
const LEAST_AREA = 400;
/** No drawing of pieces reaches farther, in mm. */
const FARTHEST = 50_000;
/** Ends nearer than this, in mm, are one. */
const MEETS = 0.5;

/** CSS Values 4, section 6.2: 96 px are an inch. */
const UNITS: Readonly<Record<string, number>> = { mm: 1, cm: 10, q: 0.25, in: 25.4, pt: 25.4 / 72, pc: 25.4 / 6 };
const PIXEL = 25.4 / 96;

/** What is inside them is not drawn where it stands. */
const NOT_DRAWN: ReadonlySet<string> = new Set(['defs', 'symbol', 'clipPath', 'mask', 'marker', 'pattern', 'linearGradient', 'radialGradient', 'filter', 'style', 'script', 'metadata', 'title', 'desc', 'animate', 'animateTransform', 'set']);
const LEFT_OUT: Readonly<Record<string, string>> = { text: 'a text', image: 'a picture', use: 'a copy of another part', foreignObject: 'a part that is no drawing', switch: 'a part with conditions', svg: 'a drawing within the drawing', a: 'a link' };

interface Drawn {
  readonly name: string;
  readonly grain: boolean;
  readonly points: readonly DrawnPoint[];
  /** Its points, curves as points near enough together; of a line its ends. */
  readonly outline: Outline;
}

export function svgPieces(root: Element): SvgPieces {
  if (root.localName !== 'svg') return { shapes: [], sentences: ['This file is no SVG drawing.'] };
  const sentences: string[] = [];
  const scale = scaleOf(root, sentences);
  if (scale === null) return { shapes: [], sentences: ['This drawing has a size or a viewBox that cannot be read: save it again with its size in mm, cm or inches.'] };
  const collected = new Collected(scale.by, scale.from);
  collected.walk(root, [], '');
  sentences.push(...collected.sentences());
  const { closed, lines } = collected;
  const kept = withoutInner(closed, sentences).slice(0, MOST.shapes);
  if (closed.length > MOST.shapes && kept.length === MOST.shapes) sentences.push(`Only the first ${MOST.shapes} outlines were taken.`);
  if (kept.length === 0) sentences.push('No closed outline of a piece was found in this drawing.');
  const names = new Set<string>();
  const shapes = kept.map(({ name, points, outline }, i): SvgShape => {
    const own = unused(name || `Piece ${i + 1}`, names);
    const point = ({ x, y, through }: DrawnPoint): DrawnPoint => ({ x: fine(x), y: fine(y), ...(through && { through: { x: fine(through.x), y: fine(through.y) } }) });
    return { name: own, points: points.map(point), grain: grainOf(own, outline, lines, sentences) };
  });
  return { shapes, sentences };
}

const fine = (mm: number): number => Math.round(mm * 1e4) / 1e4 + 0;

function unused(name: string, names: Set<string>): string {
  let free = name;
  for (let n = 2; names.has(free.toLowerCase()); n++) free = `${name} ${n}`;
  names.add(free.toLowerCase());
  return free;
}

/** mm for a unit of the drawing, and where its viewBox begins. */
function scaleOf(root: Element, sentences: string[]): { readonly by: number; readonly from: Point } | null {
  const box = (root.getAttribute('viewBox') ?? '').trim().split(/[\s,]+/).filter((part) => part !== '').map(Number);
  const size = (name: 'width' | 'height'): { readonly mm: number; readonly real: boolean } | null => {
    const [, figure, unit = ''] = /^\s*([+]?\d*\.?\d+(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(root.getAttribute(name) ?? '') ?? [];
    if (figure === undefined || !(Number(figure) > 0)) return null;
    const known = UNITS[unit.toLowerCase()];
    return unit === '' || unit.toLowerCase() === 'px' ? { mm: Number(figure) * PIXEL, real: false } : known === undefined ? null : { mm: Number(figure) * known, real: true };
  };
  const [width, height] = [size('width'), size('height')];
  if (!(width?.real || height?.real)) sentences.push('The drawing says its size in no unit of length, so it was taken as 96 to the inch: measure a piece before you cut.');
  if (box.length === 0) return { by: PIXEL, from: [0, 0] };
  const [x, y, w, h] = box as [number, number, number, number];
  if (box.length !== 4 || !box.every(Number.isFinite) || !(w > 0 && h > 0)) return null;
  const ways = [width && width.mm / w, height && height.mm / h].filter((by) => by !== null);
  if (ways.length === 0) return { by: PIXEL, from: [x, y] };
  const by = Math.min(...ways);
  if (Math.max(...ways) > by * 1.001) sentences.push('Width and height of the drawing do not fit its viewBox, so the smaller was taken: measure a piece before you cut.');
  return { by, from: [x, y] };
}

class Collected {
  readonly closed: Drawn[] = [];
  readonly lines: Drawn[] = [];
  readonly #counts = new Map<string, number>();
  readonly #own: string[] = [];
  #elements = 0;
  #open = 0;

  constructor(private readonly scale: number, private readonly from: Point) {}

  sentences(): readonly string[] {
    const counted = [...this.#counts].map(([what, count]) => (count === 1 ? `Left out: ${what}.` : `Left out ${count} times: ${what}.`));
    if (this.#open > 0) counted.push(`Left out: ${this.#open === 1 ? 'a line that is' : `${this.#open} lines that are`} not closed.`);
    if (this.#elements > MOST.elements) counted.push(`The drawing has more than ${MOST.elements.toLocaleString('en')} parts, and the rest was left out.`);
    return [...this.#own, ...counted];
  }

  walk(parent: Element, transforms: readonly string[], name: string): void {
    for (const element of parent.children) {
      if (++this.#elements > MOST.elements) return;
      const kind = element.localName;
      if (NOT_DRAWN.has(kind)) continue;
      if (element.getAttribute('display') === 'none' || /display\s*:\s*none/.test(element.getAttribute('style') ?? '')) {
        this.#count('a part that is hidden');
        continue;
      }
      const left = LEFT_OUT[kind];
      if (left !== undefined) {
        this.#count(left);
        continue;
      }
      const own = element.getAttribute('transform');
      const inner = own === null ? transforms : [own, ...transforms];
      const called = nameOf(element) || name;
      if (kind === 'g') this.walk(element, inner, called);
      else this.#take(element, inner, called);
    }
  }

  #count(what: string): void {
    this.#counts.set(what, (this.#counts.get(what) ?? 0) + 1);
  }

  #take(element: Element, transforms: readonly string[], name: string): void {
    const d = pathData(element);
    if (d === null) return;
    const moved = `translate(${-this.from[0]} ${-this.from[1]})`;
    const read = subpaths(d, [...transforms, moved], this.scale, SVG_TOLERANCE);
    const isGrain = saysGrain(element);
    if (read === null || read.some(({ points }) => points.some(({ x, y }) => !(Math.abs(x) < FARTHEST && Math.abs(y) < FARTHEST)))) {
      this.#own.push(`“${name || element.localName}” cannot be read, and was left out.`);
      return;
    }
    for (const { points, closed } of read) {
      const first = points[0]!, last = points[points.length - 1]!;
      const meets = near(first, last, MEETS);
      const line = points.length === 2 && !closed && !first.through;
      if (isGrain || line) this.#line(name, isGrain, first, isGrain && (closed || meets) ? points[Math.floor(points.length / 2)]! : last);
      else if (!closed && !meets) this.#open += 1;
      else this.#close(name, tidy(points));
    }
  }

  #line(name: string, grain: boolean, from: DrawnPoint, to: DrawnPoint): void {
    this.lines.push({ name, grain, points: [from, to], outline: [[from.x, from.y], [to.x, to.y]] });
  }

  #close(name: string, points: readonly DrawnPoint[]): void {
    const outline = drawnOutline({ points });
    if (outline.length < 3 || areaOf(outline) < LEAST_AREA) return;
    if (outline.length <= MOST.points) this.closed.push({ name, grain: false, points, outline });
    else this.#own.push(`“${name || 'An outline'}” has ${outline.length.toLocaleString('en')} points, and ${MOST.points.toLocaleString('en')} is the most: draw it with fewer.`);
  }
}

const near = (a: DrawnPoint, b: DrawnPoint, within: number): boolean => Math.hypot(a.x - b.x, a.y - b.y) <= within;

/** Without points that say nothing: repeats, and a last one on the first. */
function tidy(points: readonly DrawnPoint[]): readonly DrawnPoint[] {
  const kept = points.filter((point, i) => point.through !== undefined || i === points.length - 1 || !near(point, points[i + 1]!, 1e-6));
  while (kept.length > 2 && !kept[kept.length - 1]!.through && near(kept[0]!, kept[kept.length - 1]!, MEETS)) kept.pop();
  return kept;
}

/** Programs that draw say a part's name in their own attributes; whose they are does not matter. */
function nameOf(element: Element): string {
  const title = [...element.children].find(({ localName }) => localName === 'title')?.textContent ?? '';
  const label = [...element.attributes].find(({ localName }) => localName === 'label')?.value ?? '';
  return (element.getAttribute('data-name') ?? (title.trim() || label || element.getAttribute('id') || '')).trim().replace(/\s+/g, ' ').slice(0, 60);
}

function saysGrain(element: Element): boolean {
  const words = [element.getAttribute('id'), element.getAttribute('class'), nameOf(element)];
  return element.hasAttribute('data-grain') || element.hasAttribute('data-grainline') || words.some((word) => /grain/i.test(word ?? ''));
}

/** The path that a basic shape is (SVG 2, chapter 10). */
function pathData(element: Element): string | null {
  const n = (name: string): number => Number.parseFloat(element.getAttribute(name) ?? '') || 0;
  const round = (cx: number, cy: number, rx: number, ry: number): string | null => (rx > 0 && ry > 0 ? `M${cx - rx} ${cy}A${rx} ${ry} 0 1 1 ${cx + rx} ${cy}A${rx} ${ry} 0 1 1 ${cx - rx} ${cy}Z` : null);
  switch (element.localName) {
    case 'path': return element.getAttribute('d');
    case 'polygon': return `M${element.getAttribute('points') ?? ''}Z`;
    case 'polyline': return `M${element.getAttribute('points') ?? ''}`;
    case 'line': return `M${n('x1')} ${n('y1')}L${n('x2')} ${n('y2')}`;
    case 'circle': return round(n('cx'), n('cy'), n('r'), n('r'));
    case 'ellipse': return round(n('cx'), n('cy'), n('rx'), n('ry'));
    case 'rect': {
      const [x, y, w, h] = [n('x'), n('y'), n('width'), n('height')];
      if (!(w > 0 && h > 0)) return null;
      const rx = Math.min(n('rx') || n('ry'), w / 2), ry = Math.min(n('ry') || n('rx'), h / 2);
      if (!(rx > 0 && ry > 0)) return `M${x} ${y}h${w}v${h}h${-w}Z`;
      return `M${x + rx} ${y}H${x + w - rx}A${rx} ${ry} 0 0 1 ${x + w} ${y + ry}V${y + h - ry}A${rx} ${ry} 0 0 1 ${x + w - rx} ${y + h}H${x + rx}A${rx} ${ry} 0 0 1 ${x} ${y + h - ry}V${y + ry}A${rx} ${ry} 0 0 1 ${x + rx} ${y}Z`;
    }
    default: return null;
  }
}

/** A line within an outline is a seam line or a hole: the outermost is what is cut. */
function withoutInner(closed: readonly Drawn[], sentences: string[]): readonly Drawn[] {
  const areas = closed.map(({ outline }) => areaOf(outline));
  return closed.filter(({ name, outline }, i) => {
    const around = closed.findIndex((other, j) => j !== i && areas[j]! > areas[i]! && outline.every((point) => inside(point, other.outline)));
    if (around >= 0) sentences.push(`“${name || 'An outline'}” lies within “${closed[around]!.name || 'another outline'}”, and was left out: the outermost line is taken.`);
    return around < 0;
  });
}

function inside([x, y]: Point, outline: Outline): boolean {
  let within = false;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) within = !within;
  });
  return within;
}

/** The marked line that lies in the piece, else the longest plain one, else upright. */
function grainOf(name: string, outline: Outline, lines: readonly Drawn[], sentences: string[]): SvgShape['grain'] {
  const length = ({ outline: [a, b] }: Drawn): number => Math.hypot(b![0] - a![0], b![1] - a![1]);
  const within = lines.filter((line) => length(line) > 1 && inside([(line.outline[0]![0] + line.outline[1]![0]) / 2, (line.outline[0]![1] + line.outline[1]![1]) / 2], outline));
  const [best] = within.sort((a, b) => Number(b.grain) - Number(a.grain) || length(b) - length(a));
  if (best) {
    const [a, b] = best.outline as readonly [Point, Point];
    const [upper, lower] = a[1] <= b[1] ? [a, b] : [b, a];
    return [{ x: fine(upper[0]), y: fine(upper[1]) }, { x: fine(lower[0]), y: fine(lower[1]) }];
  }
  sentences.push(`“${name}” has no grain line in it, so it was taken to be upright: turn it on the board if it is not.`);
  const { from, to } = boundsOf(outline);
  const middle = fine((from[0] + to[0]) / 2), quarter = (to[1] - from[1]) / 4;
  return [{ x: middle, y: fine(from[1] + quarter) }, { x: middle, y: fine(to[1] - quarter) }];
}
