/** The picture of a layout as SVG, on the screen and on paper. */
import { css, nothing, svg, type SVGTemplateResult } from 'lit';
import type { DrawnPiece, LayMark, LayPicture, LayRuler } from '../pictures/index.ts';

export function layMark(mark: LayMark): SVGTemplateResult {
  if (mark.kind === 'path') return svg`<path class=${mark.look} d=${mark.d}></path>`;
  const { x, y } = mark;
  return svg`<text class=${mark.look} x=${x} y=${y} text-anchor=${mark.anchor} transform=${mark.turned ? `rotate(-90 ${x} ${y})` : nothing}>${mark.text}</text>`;
}

/** A piece of cloth, and what of it is told by a pattern: a second list, or that it lies wrong. */
export const layPiece = ({ d, second, wrong }: DrawnPiece): SVGTemplateResult => svg`
  <path class="lay-piece" d=${d}></path>
  ${second ? svg`<path d=${d} fill="url(#lay-second)"></path>` : nothing}
  ${wrong ? svg`<path class="lay-wrong" d=${d} fill="url(#lay-wrong)"></path>` : nothing}`;

/** The patterns that pieces are filled with; once in each picture. */
export const layPatterns = (unit: number): SVGTemplateResult => svg`<defs>
  <pattern id="lay-second" width=${8 * unit} height=${8 * unit} patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="lay-line" d="M0 0V${8 * unit}"></path></pattern>
  <pattern id="lay-wrong" width=${7 * unit} height=${7 * unit} patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="lay-line-wrong" d="M0 0V${7 * unit}M0 0H${7 * unit}"></path></pattern>
</defs>`;

/** @param room how thick the ruler is, in units of the picture */
export function layRulerMarks(ruler: LayRuler, axis: 'along' | 'across', room: number, text: number): SVGTemplateResult {
  const numbers = ruler.numbers.map(({ at, text: said }) => (axis === 'along'
    ? svg`<text class="lay-number" x=${at} y=${room * 0.45} text-anchor="middle">${said}</text>`
    : svg`<text class="lay-number" x=${room * 0.45} y=${at} text-anchor="middle" transform="rotate(-90 ${room * 0.45} ${at})">${said}</text>`));
  return svg`<path class="lay-tick" d=${ruler.ticks}></path><g font-size=${text}>${numbers}</g>`;
}

/** All of it where nothing is moved. */
export const layMarks = (picture: LayPicture, unit: number): SVGTemplateResult => svg`${layPatterns(unit)}
  ${picture.under.map(layMark)}${picture.pieces.map((piece) => svg`<g>${layPiece(piece)}${piece.marks.map(layMark)}</g>`)}${picture.over.map(layMark)}`;

export const layPictureStyles = css`
  .lay path { stroke: var(--ink); stroke-width: var(--lay-line, 1.2); stroke-linejoin: round; }
  .lay path:not([fill]) { fill: none; }
  .lay .lay-cloth.lay-cloth { fill: var(--tissue); stroke: none; }
  .lay .lay-odd { stroke: var(--line); stroke-dasharray: 3 3; }
  .lay .lay-flaw.lay-flaw { fill: var(--pin-wash); stroke: var(--pin); stroke-dasharray: 2 2; }
  .lay .lay-selvedge { stroke: var(--ink); stroke-width: calc(var(--lay-line, 1.2) * 2.4); }
  .lay .lay-fold { stroke: var(--chalk); stroke-width: calc(var(--lay-line, 1.2) * 2.4); stroke-dasharray: 9 4; }
  .lay .lay-cut { stroke: var(--thread); stroke-width: calc(var(--lay-line, 1.2) * 1.5); stroke-dasharray: 8 3 2 3; }
  .lay .lay-left.lay-left { fill: var(--sheet); stroke: var(--leaf); stroke-dasharray: 4 3; }
  .lay .lay-dim, .lay .lay-way { stroke: var(--ink); stroke-width: calc(var(--lay-line, 1.2) * 0.8); }
  .lay .lay-piece.lay-piece { fill: var(--sheet); stroke: var(--ink); }
  .lay .lay-wrong { stroke: var(--pin); stroke-width: calc(var(--lay-line, 1.2) * 2); stroke-dasharray: 5 3; }
  .lay .lay-line { stroke: var(--rule); stroke-width: calc(var(--lay-line, 1.2) * 0.9); }
  .lay .lay-line-wrong { stroke: var(--pin); stroke-width: calc(var(--lay-line, 1.2) * 0.9); }
  .lay .lay-grain { stroke: var(--soft); stroke-width: calc(var(--lay-line, 1.2) * 0.8); }
  .lay .lay-head.lay-head { fill: var(--soft); stroke: none; }
  .lay .lay-point.lay-point { fill: var(--ink); stroke: none; }
  .lay .lay-tick { stroke: var(--tape-ink); stroke-width: calc(var(--lay-line, 1.2) * 0.7); }
  .lay text { font-family: var(--face); font-size: var(--lay-text, 11px); fill: var(--ink); paint-order: stroke; stroke: var(--sheet); stroke-width: calc(var(--lay-line, 1.2) * 2.2); stroke-linejoin: round; }
  .lay .lay-strong { font-weight: 600; }
  .lay .lay-soft { fill: var(--soft); stroke: var(--paper); }
  .lay .lay-number { fill: var(--tape-ink); stroke: none; font-size: inherit; }
`;
