/**
 * How marks look, from the tokens of the app. Ink for the edges of cloth, chalk
 * for folds, thread for what changes, tape for dimensions, a pin for what is
 * wrong; each has a dash, a width or a hatching of its own as well, and in print
 * all of them are black.
 */
import { css } from 'lit';

export const pictureStyles = css`
  .tt-picture {
    --picture-ground: var(--sheet);
    display: block; width: 100%; max-width: 34rem; height: auto; box-sizing: border-box; overflow: hidden;
    background: var(--picture-ground); border: 1px solid var(--line); border-radius: 8px; break-inside: avoid;
  }
  .tt-picture path { fill: none; stroke: var(--ink); stroke-width: 1.3; stroke-linejoin: round; }
  .tt-picture .cloth { fill: var(--tissue); }
  .tt-picture .piece { fill: var(--picture-ground); }
  .tt-picture .under { fill: var(--tissue); stroke: none; }
  .tt-picture .layer { stroke-width: 2; stroke-linecap: round; }
  .tt-picture .edge { stroke-width: 1.6; }
  .tt-picture .thin { stroke: var(--soft); stroke-width: 0.9; }
  .tt-picture .fold { stroke: var(--chalk); stroke-dasharray: 7 3; stroke-width: 1.5; }
  .tt-picture .place { stroke: var(--chalk); stroke-dasharray: 0.1 3.6; stroke-linecap: round; stroke-width: 2; }
  .tt-picture .level { stroke: var(--soft); stroke-dasharray: 9 3 1.5 3; stroke-width: 1.2; }
  .tt-picture .seam { stroke: var(--ink); stroke-dasharray: 3 2; stroke-width: 1; }
  .tt-picture .old { stroke: var(--soft); stroke-dasharray: 4 3; stroke-width: 1.4; }
  .tt-picture .new { stroke: var(--thread); stroke-width: 2.4; }
  .tt-picture .new-cloth { fill: var(--thread-wash); stroke: var(--thread); stroke-width: 1.6; }
  .tt-picture .body { fill: var(--tissue); stroke: var(--soft); stroke-width: 1.2; stroke-dasharray: 4 3; }
  .tt-picture .zone { fill: var(--pin-wash); stroke: none; }
  .tt-picture .hatch { stroke: var(--pin); stroke-width: 0.9; }
  .tt-picture .tape { stroke: var(--tape); stroke-width: 5; }
  .tt-picture .dim, .tt-picture .reach { stroke-width: 0.9; }
  .tt-picture .dim-new { stroke: var(--thread); stroke-width: 1.4; }
  .tt-picture .dim-pin { stroke: var(--pin); stroke-width: 1.4; }
  .tt-picture .reach { stroke: var(--soft); stroke-width: 0.7; }
  .tt-picture .arrow, .tt-picture .dot { fill: var(--ink); stroke: none; }
  .tt-picture .chosen { fill: var(--thread); stroke: var(--ink); }
  .tt-picture text {
    font: 400 11px/1 var(--face, sans-serif); fill: var(--ink); letter-spacing: 0; word-spacing: 0;
    paint-order: stroke; stroke: var(--picture-ground); stroke-width: 3px; stroke-linejoin: round;
  }
  .tt-picture text.soft { fill: var(--soft); }
  @media print {
    .tt-picture {
      --sheet: #fff; --tissue: #f0f0f0; --line: #999; --ink: #000; --soft: #000; --chalk: #000; --thread: #000; --thread-wash: #e2e2e2;
      --pin: #000; --pin-wash: #fff; --tape: #d4d4d4; --picture-ground: #fff;
      print-color-adjust: exact;
    }
  }
  @media (forced-colors: active) {
    .tt-picture {
      --sheet: Canvas; --tissue: Canvas; --line: CanvasText; --ink: CanvasText; --soft: CanvasText; --chalk: LinkText; --thread: LinkText;
      --thread-wash: Canvas; --pin: CanvasText; --pin-wash: Canvas; --tape: GrayText; --picture-ground: Canvas;
    }
  }
`;
