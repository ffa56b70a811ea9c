/** A layout on paper: a plan to lay it by with a tape, and the layout itself to scale over pages. */
import { css, html, svg, type TemplateResult } from 'lit';
import { TILE, layPages, layPicture, type DrawnLay } from '../pictures/index.ts';
import { layMarks } from './lay-picture.ts';
import type { PaperHead } from './paper-parts.ts';
import { MEASURE, checkSquare, joinMark, joinWords } from './paper-scale.ts';

/** A piece by the order of cutting, and how far two points of it lie from the cut end and from the selvedge. */
export interface LayPlanRow {
  readonly order: number;
  readonly name: string;
  readonly count: string;
  readonly a: readonly [along: string, across: string];
  readonly b: readonly [along: string, across: string];
}

export interface LayPlan extends PaperHead {
  readonly what: 'lay plan';
  readonly name: string;
  readonly sentences: readonly string[];
  readonly drawing: DrawnLay;
  /** What the two distances are measured from. */
  readonly from: readonly [along: string, across: string];
  readonly rows: readonly LayPlanRow[];
}

export interface LayToScale extends PaperHead {
  readonly what: 'lay to scale';
  readonly name: string;
  readonly sentences: readonly string[];
  readonly drawing: DrawnLay;
  /** One to so many. */
  readonly scale: number;
}

type Head = (of: PaperHead, title: string) => TemplateResult;

/** mm of paper. */
const PAGE = { width: 184, height: 118 } as const;
const TEXT = 2.7;
const EDGE = 5;

/** All of it on one page, with what is said of it drawn over it. */
function overview(drawing: DrawnLay, alt: string, over: (scale: number) => TemplateResult | readonly unknown[] = () => []): TemplateResult {
  const scale = Math.min((PAGE.width - 2 * EDGE) / drawing.length, (PAGE.height - 2 * EDGE) / drawing.width);
  const picture = layPicture(drawing, { scale, text: TEXT });
  const [width, height] = [picture.width + 2 * EDGE, picture.height + 2 * EDGE];
  return html`<svg class="lay" width="${width}mm" height="${height}mm" viewBox="${-EDGE} ${-EDGE} ${width} ${height}" role="img" aria-label=${alt}>${layMarks(picture, 0.3)}${over(scale)}</svg>`;
}

export function layPlanPages(plan: LayPlan, head: Head): TemplateResult {
  const [along, across] = plan.from;
  return html`<section class="plan">${head(plan, plan.name)}
    ${plan.sentences.map((sentence) => html`<p>${sentence}</p>`)}
    ${overview(plan.drawing, plan.name)}
    <p>Lay the pieces in this order. Of each, put point A and then point B where the tape says, with the grain line along the cloth.</p>
    <table><thead><tr><th>Piece</th><th>Cut</th><th class="end">A: ${along}</th><th class="end">A: ${across}</th><th class="end">B: ${along}</th><th class="end">B: ${across}</th></tr></thead>
      <tbody>${plan.rows.map(({ order, name, count, a, b }) => html`<tr><td><b>${order} ${name}</b></td><td>${count}</td>${[...a, ...b].map((text) => html`<td class="end">${text}</td>`)}</tr>`)}</tbody></table>
  </section>`;
}

export function layScalePages(lay: LayToScale, head: Head): TemplateResult[] {
  const { drawing, scale } = lay;
  const { width, height, tiles } = layPages(drawing, scale);
  const picture = layPicture(drawing, { scale: 1 / scale, text: 3.2 });
  const pages = tiles.length;
  const title = scale === 1 ? `${lay.name}, full size` : `${lay.name}, one to ${scale}`;
  const first = html`<section class="tile">${head(lay, title)}
    ${lay.sentences.map((sentence) => html`<p>${sentence}</p>`)}
    ${overview(drawing, title, (small) => tiles.map((tile, at) => {
      const [x, y, w, h] = [tile.x, tile.y, Math.min(TILE.width, width - tile.x), Math.min(TILE.height, height - tile.y)].map((mm) => mm * scale * small) as [number, number, number, number];
      return svg`<path class="tile-edge" d="M${x} ${y}h${w}v${h}h${-w}Z"></path><text class="letter" x=${x + w / 2} y=${y + h / 2 + 1.5} text-anchor="middle">${at + 2}</text>`;
    }))}
    <p>The numbers are those of the pages that follow.</p>
    <p class="measure">${MEASURE}</p>${checkSquare()}
  </section>`;
  return [first, ...tiles.map((tile, at) => html`<section class="tile">${head(lay, `${title}: page ${at + 2} of ${pages + 1}`)}
    <p>${joinWords(tile)}</p>
    <svg class="lay to-scale" width="${TILE.width}mm" height="${TILE.height}mm" viewBox="${tile.x} ${tile.y} ${TILE.width} ${TILE.height}" role="img" aria-label="Page ${at + 2} of ${pages + 1}">
      ${layMarks(picture, 0.4)}
      <g transform="translate(${tile.x} ${tile.y})"><path class="edge" d="M0 0H${TILE.width}V${TILE.height}H0Z"></path>${tile.joins.map(joinMark)}</g>
    </svg></section>`)];
}

export const layPaperStyles = css`
  .lay { --lay-line: 0.3; --lay-text: 2.7px; --leaf: #000; --tape-ink: #000; display: block; margin: 2mm 0; }
  .lay .lay-soft { stroke: #fff; fill: #000; }
  .lay.to-scale { --lay-line: 0.4; --lay-text: 3.2px; margin: 0; overflow: hidden; }
  .lay .tile-edge { stroke: #000; stroke-width: 0.25; stroke-dasharray: 1.5 1; }
  .plan p { margin-bottom: 1mm; }
  .plan td { white-space: nowrap; }
  .plan td:first-child { white-space: normal; }
`;
