/** What is drawn in millimetres: the square to measure before cutting, and a curve over several pages. */
import { html, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { CHECK, TILE, arcTiles, tilePath, type Join, type Tile } from '../pictures/index.ts';
import type { FullSizeCurve, PaperHead } from './paper-parts.ts';

export const MEASURE = 'Measure the square before you cut: 10 cm along the unbroken lines, 4 in along the broken ones. If it is not, print again at 100 %, without “fit to page”.';

/** The square from its lower left corner; y goes down. */
function square(x: number, y: number): SVGTemplateResult {
  const top = y - CHECK.cm;
  return svg`
    <path class="square" d="M${x} ${y}h${CHECK.cm}v${-CHECK.cm}h${-CHECK.cm}Z"></path>
    <path class="inch" d="M${x} ${y}h${CHECK.inch}v${-CHECK.inch}h${-CHECK.inch}Z"></path>
    ${Array.from({ length: 9 }, (_, n) => svg`<path class="square" d="M${x + 10 * (n + 1)} ${y}v-2M${x} ${y - 10 * (n + 1)}h2"></path>`)}
    ${[1, 2, 3].map((n) => svg`<path class="square" d="M${x + 25.4 * n} ${y - CHECK.inch}v3M${x + CHECK.inch} ${y - 25.4 * n}h-3"></path>`)}
    <text x=${x + 3} y=${top + 8}>unbroken: 10 cm each way</text>
    <text x=${x + 3} y=${top + 12.5}>broken: 4 in each way</text>`;
}

export function checkSquare(): TemplateResult {
  const side = CHECK.inch + 1;
  return html`<svg class="check" width="${side}mm" height="${side}mm" viewBox="0 0 ${side} ${side}" role="img" aria-label="A square of 10 cm, and one of 4 in">${square(0.5, side - 0.5)}</svg>`;
}

export function curvePages(curve: FullSizeCurve, head: (of: PaperHead, title: string) => TemplateResult): TemplateResult[] {
  const tiles = arcTiles(curve.radius);
  return tiles.map((tile, at) => html`<section class="tile">
    ${head(curve, `${curve.label}: piece ${at + 1} of ${tiles.length}`)}
    <p>A quarter circle, radius ${curve.shown}, from a square corner at its centre. ${joinWords(tile)}</p>
    <p class="measure">${MEASURE}</p>
    <svg width="${TILE.width}mm" height="${TILE.height}mm" viewBox="0 0 ${TILE.width} ${TILE.height}" role="img" aria-label="Piece ${at + 1} of ${tiles.length}">
      <path class="edge" d="M0 0H${TILE.width}V${TILE.height}H0Z"></path>
      ${square(tile.check[0], TILE.height - tile.check[1])}
      ${tile.joins.map(joinMark)}
      ${straightEdges(tile, curve.radius)}
      <path class="curve" d=${tilePath(tile, curve.radius)}></path>
    </svg>
  </section>`);
}

export function joinWords({ joins }: Pick<Tile, 'joins'>): string {
  if (joins.length === 0) return 'It is all on this page.';
  const each = joins.map(({ side, letter, page }) => `its ${side === 'top' ? 'upper' : side === 'bottom' ? 'lower' : side} edge to page ${page} at ${letter}`);
  return `Cut along the broken edge and lay it edge to edge: ${each.join('; ')}.`;
}

/** Half of a diamond, whose other half is on the page that lies there. */
export function joinMark({ side, letter }: Join): SVGTemplateResult {
  const { width, height } = TILE;
  const [x, y] = side === 'left' ? [0, height / 2] : side === 'right' ? [width, height / 2] : side === 'top' ? [width / 2, 0] : [width / 2, height];
  const upright = side === 'left' || side === 'right';
  const inwards = side === 'left' || side === 'top' ? 1 : -1;
  const d = upright ? `M${x} ${y - 6}l${6 * inwards} 6l${-6 * inwards} 6` : `M${x - 6} ${y}l6 ${6 * inwards}l6 ${-6 * inwards}`;
  const [tx, ty] = upright ? [x + 9 * inwards, y + 1.8] : [x, y + 9 * inwards + 1.8];
  return svg`<path class="mark" d=${d}></path><text class="letter" x=${tx} y=${ty} text-anchor="middle">${letter}</text>`;
}

/** From the centre along the edges of the quarter, as far as they lie on this page. */
function straightEdges(tile: Tile, radius: number): SVGTemplateResult {
  const { width, height } = TILE;
  const across = Math.min(width, radius - tile.column * width);
  const up = Math.min(height, radius - tile.row * height);
  return svg`
    ${tile.row === 0 && across > 0 ? svg`<path class="curve" d="M0 ${height}H${across}"></path>` : ''}
    ${tile.column === 0 && up > 0 ? svg`<path class="curve" d="M0 ${height}V${height - up}"></path>` : ''}
    ${tile.row === 0 && tile.column === 0 ? svg`<text x="3" y=${height - 3}>centre</text>` : ''}`;
}
