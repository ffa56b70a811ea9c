/**
 * Basting threads over the cells: from the cell asked about to each cell it
 * uses, or that uses it, with a number at the far end. An end out of view has
 * a label at the edge that it lies beyond, one in another sheet a label at the
 * upper right; both say where it is. Drawn over the view, not on the plane, and
 * moved with every scroll. Nothing of it is read aloud: whoever asks for
 * threads says the same in words.
 */
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Geometry, Port } from './geometry.ts';
import { clipped } from './overlay.ts';
import { placed } from './placed.ts';
import { HEAD_HEIGHT } from './window.ts';
import type { CellArea, SheetView, Threads } from './view.ts';

/** More threads than these would hide the cells; what asks for them says how many there are. */
export const MOST_THREADS = 24;
const TAG = 18;
const LINE = 22;
const EDGE = 4;
/** How far a thread hangs through, as a share of its length, and at most. */
const SLACK = 0.2;
const MOST_SLACK = 60;
/** Threads begin and end near the left edge of a cell, where they hide no figure. */
const START = 12;

interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where a stretch of rows or columns is seen, from `from` to `to` on the plane: those before `stays` do not scroll. */
function seen(from: number, to: number, first: number, last: number, stays: number, stayEnd: number, scroll: number, head: number): [number, number] {
  const start = first < stays ? from : Math.max(stayEnd, from - scroll);
  const end = last < stays ? to : Math.max(first < stays ? stayEnd : -Infinity, to - scroll);
  return [head + start, head + end];
}

/** A block as it lies in the view; it may lie outside of it. */
function rectOf({ top, left, bottom, right }: CellArea, { edges, rows, stay, rowHead }: Geometry, port: Port): Rect {
  const [x1, x2] = seen(edges[left]!, edges[right + 1]!, left, right, stay.cols, stay.width, port.left, rowHead);
  const [y1, y2] = seen(rows.top(top), rows.top(bottom + 1), top, bottom, stay.rows, stay.height, port.top, HEAD_HEIGHT);
  return { left: x1, top: y1, right: x2, bottom: y2 };
}

const clamp = (n: number, low: number, high: number): number => Math.max(low, Math.min(Math.max(low, high), n));
const within = ({ x, y }: Point, rect: Rect): Point => ({ x: clamp(x, rect.left, rect.right), y: clamp(y, rect.top, rect.bottom) });
/** In the middle of the first line of a cell, at its left. */
const startOf = ({ left, top, right, bottom }: Rect): Point => ({ x: Math.min(left + START, (left + right) / 2), y: Math.min(top + 15, (top + bottom) / 2) });
/** Of a block the row nearest to where the thread comes from. */
const nearest = ({ y }: Point, rect: Rect): Point => ({ ...startOf(rect), y: clamp(y, startOf(rect).y, rect.bottom - 15) });
const middle = (rect: Rect): Point => ({ x: (rect.left + rect.right) / 2, y: (rect.top + rect.bottom) / 2 });
const isOut = (rect: Rect, view: Rect): boolean => rect.right <= view.left || rect.left >= view.right || rect.bottom <= view.top || rect.top >= view.bottom;

/** Which way an end out of view lies. */
function arrowTo(rect: Rect, view: Rect): string {
  const down = rect.top >= view.bottom ? '↓' : rect.bottom <= view.top ? '↑' : '';
  const across = rect.left >= view.right ? '→' : rect.right <= view.left ? '←' : '';
  return ({ '↓→': '↘', '↓←': '↙', '↑→': '↗', '↑←': '↖' } as Record<string, string>)[down + across] ?? (down || across);
}

export function threadsTemplate(threads: Threads | null, view: SheetView, geometry: Geometry, port: Port): TemplateResult | typeof nothing {
  if (!threads || port.width === 0) return nothing;
  const cells: Rect = { left: geometry.rowHead, top: HEAD_HEIGHT, right: port.width, bottom: port.height };
  const start = rectOf({ top: threads.of.row, bottom: threads.of.row, left: threads.of.col, right: threads.of.col }, geometry, port);
  const from = within(startOf(start), inset(cells, 10));
  const boxes: TemplateResult[] = [];
  const lines: TemplateResult[] = [];
  const tags: TemplateResult[] = [];
  let elsewhere = 0;
  threads.ends.slice(0, MOST_THREADS).forEach(({ area, words }, index) => {
    const number = index + 1;
    const shown = area && clipped(area, view);
    const rect = shown && rectOf(shown, geometry, port);
    if (!rect) {
      const at = { x: cells.right - EDGE, y: cells.top + EDGE + elsewhere++ * LINE };
      tags.push(tag(at, number, words, 'far'));
      lines.push(line(from, { x: at.x - 12, y: at.y + TAG / 2 }, threads.way, index));
    } else if (isOut(rect, cells)) {
      const at = within(middle(rect), inset(cells, TAG));
      tags.push(tag(at, number, `${words} ${arrowTo(rect, cells)}`, at.x > (cells.left + cells.right) / 2 ? 'far' : ''));
      lines.push(line(from, at, threads.way, index));
    } else {
      boxes.push(html`<div class="reach" ${placed({ left: rect.left, top: rect.top, width: rect.right - rect.left, height: rect.bottom - rect.top })}></div>`);
      tags.push(tag({ x: rect.left, y: rect.top }, number, '', ''));
      lines.push(line(from, nearest(from, rect), threads.way, index));
    }
  });
  return html`<div class="cloth" ${placed({ left: 1, top: 1, width: port.width - 1, height: port.height - 1 })}>
    <svg width=${port.width} height=${port.height}>${lines}<circle class="knot" cx=${from.x} cy=${from.y} r="4"></circle></svg>${boxes}${tags}</div>`;
}

const inset = (rect: Rect, by: number): Rect => ({ left: rect.left + by, top: rect.top + by, right: rect.right - by, bottom: rect.bottom - by });

function tag({ x, y }: Point, number: number, words: string, side: string): TemplateResult {
  return html`<div class="tag ${side}" ${at(x, y)}><b>${number}</b>${words ? html` ${words}` : nothing}</div>`;
}

const at = (x: number, y: number): unknown => placed({ left: x + 1, top: y + 1 });

/** A slack thread with the point of a needle at the end that figures flow to. Each hangs a little further than the one before. */
function line(cell: Point, end: Point, way: Threads['way'], index: number): TemplateResult {
  const [from, to] = way === 'uses' ? [end, cell] : [cell, end];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const far = Math.hypot(dx, dy) || 1;
  // Upright threads hang to the left, where cells have their beginning, the others down.
  const side = Math.abs(dy) > Math.abs(dx) / 3 ? -Math.sign(dy || 1) : Math.sign(dx || 1);
  const slack = Math.min(MOST_SLACK, far * SLACK) + (index % 5) * 6;
  const bend = { x: (from.x + to.x) / 2 - (dy / far) * slack * -side, y: (from.y + to.y) / 2 + (dx / far) * slack * -side };
  const angle = (Math.atan2(to.y - bend.y, to.x - bend.x) * 180) / Math.PI;
  return svg`<path class="thread-under" d="M${from.x} ${from.y}Q${bend.x} ${bend.y} ${to.x} ${to.y}"></path>
    <path class="thread" d="M${from.x} ${from.y}Q${bend.x} ${bend.y} ${to.x} ${to.y}"></path>
    <path class="needle" transform="translate(${to.x} ${to.y}) rotate(${angle})" d="M-30 -2.4L-10 0L-30 2.4Z"></path>`;
}
