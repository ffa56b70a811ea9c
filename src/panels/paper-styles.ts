import { css } from 'lit';

/**
 * Paper: black on white whatever the screen wears; nothing is told by colour or
 * by a ground that a printer may leave out. Lengths of type are points, lengths
 * of what is measured are millimetres.
 */
export const paperStyles = css`
  :host {
    --paper: #fff; --sheet: #fff; --tissue: #f0f0f0; --line: #999; --rule: #000; --ink: #000; --soft: #000; --chalk: #000;
    --thread: #000; --thread-wash: #e2e2e2; --pin: #000; --pin-wash: #fff; --tape: #d4d4d4;
    /* A line at the very edge of the page's area is cut off where pixels do not come out even. */
    padding-inline-end: 0.5mm;
    color-scheme: light; display: block; box-sizing: border-box; background: #fff; color: #000; font: 8.5pt/1.3 var(--face);
  }
  *, *::before, *::after { box-sizing: inherit; }
  article + article { break-before: page; }
  h1 { font: 600 14pt/1.2 var(--face-title); margin: 0; }
  h2 { font: 600 10pt/1.25 var(--face-title); margin: 0 0 1mm; }
  p { margin: 0; }
  .head { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 5mm; border-bottom: 0.6mm solid #000; padding-bottom: 1.5mm; margin-bottom: 3mm; }
  .head h1 { flex: 1; }
  .missing { margin: 0 0 2mm; font-style: italic; }

  table { width: 100%; border-collapse: collapse; table-layout: fixed; margin-bottom: 4mm; }
  th, td { padding: 0.7mm 1mm; vertical-align: top; text-align: start; overflow-wrap: anywhere; white-space: pre-line; border-bottom: 0.2mm solid #bbb; font-weight: 400; }
  .number { color: #444; font-size: 6.5pt; padding: 0.9mm 1mm 0 0; border: 0; text-align: end; }
  .letters th { font-size: 6.5pt; color: #444; padding-block: 0; border: 0; text-align: center; }
  .heading :is(th:not(.number), td) { font-weight: 700; border-bottom: 0.5mm solid #000; }
  thead { display: table-header-group; }
  tr { break-inside: avoid; }
  .heading { break-after: avoid; }
  .strong { font-weight: 700; }
  .italic { font-style: italic; }
  .end { text-align: end; }
  .centre { text-align: center; }
  :is(td, th).typed > span:first-child, .figure.typed b { text-decoration: underline dashed 0.2mm; text-underline-offset: 0.45mm; }
  .error { font-style: italic; }
  .error > span::before { content: '✕ '; font-style: normal; }
  .above { border-top: 0.4mm solid #000; }
  .below { border-bottom: 0.4mm solid #000; }
  .around { border: 0.4mm solid #000; }
  .also { display: inline-block; font-size: 7pt; margin-inline-start: 1.2mm; white-space: nowrap; }
  sup { font-size: 6.5pt; line-height: 0; }
  .footnotes { list-style: none; margin: 0; padding: 2mm 0 0; border-top: 0.3mm solid #000; }
  .footnotes li { break-inside: avoid; padding: 0.4mm 0 0.4mm 7mm; text-indent: -7mm; }
  .footnotes .which { display: inline-block; width: 7mm; text-indent: 0; }
  .key { font-size: 7pt; margin-bottom: 2mm; }

  .ticket h1 { font-size: 13pt; }
  .parts { columns: 2; column-gap: 6mm; font-size: 7.5pt; line-height: 1.22; }
  .part { margin-bottom: 2.2mm; }
  .part h2 { font-size: 8.5pt; border-bottom: 0.4mm solid #000; margin: 0; break-after: avoid; }
  .part ul { list-style: none; margin: 0; padding: 0; }
  .part li { display: grid; grid-template-columns: var(--row, 3.4mm minmax(0, 1fr) minmax(0, 1.1fr)); gap: 0 1.2mm; padding: 0.35mm 0; border-bottom: 0.15mm solid #bbb; break-inside: avoid; }
  .box { display: inline-block; width: 2.8mm; height: 2.8mm; border: 0.3mm solid #000; margin-top: 0.3mm; }
  .figures { display: flex; flex-wrap: wrap; justify-content: flex-end; gap: 0 2.2mm; }
  .many .figures { line-height: 1.45; }
  .part .many { --row: 3.4mm minmax(0, 1fr); }
  .many .figures { grid-column: 2; justify-content: flex-start; }
  .figure { text-align: end; }
  .figure b { white-space: nowrap; }
  .figure .also { font-size: inherit; margin-inline-start: 0.8mm; }
  .figure .of { font-size: 6.5pt; }
  .from { font-size: 6.5pt; }
  .cautions { border: 0.5mm solid #000; padding: 1.5mm 2mm; margin: 0 0 3mm; break-inside: avoid; font-size: 7.5pt; }
  .cautions ul { margin: 0; padding-inline-start: 4mm; }
  .done { display: flex; flex-wrap: wrap; gap: 2mm 8mm; margin-top: 3mm; break-inside: avoid; }
  .done span { flex: 1; min-width: 45mm; border-bottom: 0.2mm solid #000; padding-bottom: 4mm; }
  .pictures { display: grid; grid-template-columns: minmax(0, 1fr) 103mm; gap: 3mm; margin-top: 3mm; align-items: start; }
  .pictures .scale { grid-area: 1 / 2 / span 2; }
  .pictures figure { margin: 0; break-inside: avoid; }
  .pictures figcaption { font-weight: 700; margin-bottom: 0.8mm; }
  .pictures .tt-picture { max-width: none; border-radius: 0; }
  .measure { font-weight: 700; margin: 2mm 0; }

  .shopping { font-size: 10pt; }
  .shopping table { table-layout: auto; }
  .shopping :is(th, td) { white-space: normal; }
  .shopping :is(th, td):last-child { white-space: nowrap; }
  .shopping tr.strong { border-top: 0.4mm solid #000; }
  .shopping th:first-child, .shopping td:first-child { width: 40%; }
  .shopping .box { width: 4mm; height: 4mm; line-height: 3.6mm; text-align: center; vertical-align: middle; }
  .shopping .also { font-size: 8pt; }
  .shopping ul { margin: 0 0 3mm; padding-inline-start: 5mm; }

  .tile { break-inside: avoid; }
  .tile + .tile { break-before: page; }
  .tile .head { margin-bottom: 1.5mm; }
  .tile .measure { margin: 0 0 1.5mm; }
  .tile svg, .check { display: block; overflow: visible; }
  .tile .edge { fill: none; stroke: #000; stroke-width: 0.25; stroke-dasharray: 3 1.5; }
  .curve { fill: none; stroke: #000; stroke-width: 0.6; }
  .mark { fill: none; stroke: #000; stroke-width: 0.3; }
  .square { fill: none; stroke: #000; stroke-width: 0.2; }
  .inch { fill: none; stroke: #000; stroke-width: 0.2; stroke-dasharray: 1.5 1; }
  svg text { font: 3.2px var(--face); fill: #000; }
  svg .letter { font-size: 5px; font-weight: 700; paint-order: stroke; stroke: #fff; stroke-width: 1.2; }
`;
