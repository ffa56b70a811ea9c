/** The grid's look: a tape for the column headings, tissue for the row headings, basting under typed figures. */
import { css } from 'lit';

export const gridStyles = css`
  :host { display: block; position: relative; isolation: isolate; min-height: 0; min-width: 0; font: var(--size)/1.3 var(--face); color: var(--ink); background: var(--paper); }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  .hidden { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }

  .scroller { position: absolute; inset: 0; overflow: auto; overflow-anchor: none; touch-action: manipulation; outline: none; }
  .plane { position: relative; display: flow-root; }
  [role='grid'] { position: absolute; inset: 0; }
  .row { display: grid; grid-template-columns: var(--tracks); width: 100%; height: 30px; }
  .lines-2 { height: 50px; }
  .lines-3 { height: 70px; }
  .lines-4 { height: 90px; }
  .lines-5 { height: 110px; }
  .lines-6 { height: 130px; }
  .kept { position: sticky; left: 0; z-index: 4; display: grid; grid-template-columns: var(--kept); background: var(--sheet); }
  .body .kept.more { overflow: clip; }
  .head { position: sticky; top: 0; z-index: 6; }
  .head .heads { height: 28px; }
  /* Where what stays in view ends: a double line, as of a seam stitched twice. */
  .kept.more::after, .head.more::after { content: ''; position: absolute; border: double var(--soft); pointer-events: none; z-index: 1; }
  .kept.more::after { inset: 0 0 0 auto; border-width: 0 3px 0 0; }
  .head.more::after { inset: auto 0 0 0; border-width: 0 0 3px 0; z-index: 5; }
  /* Outlines in columns that stay in view. */
  .over { position: sticky; left: 0; width: 0; height: 0; z-index: 5; }
  /* The lines go on where rows are still to come, so that nothing is ever bare while scrolling fast. */
  [role='grid'] { background: linear-gradient(var(--line) 1px, transparent 1px) 0 27px / 100% 30px var(--sheet); }
  .body { position: absolute; left: 0; right: 0; }

  .cell {
    border: solid var(--line); border-width: 0 1px 1px 0; padding: 0 10px; line-height: 29px; height: 100%;
    white-space: nowrap; overflow: hidden; text-overflow: ellipsis; font-variant-numeric: tabular-nums; cursor: cell;
  }
  .row { background: var(--sheet); }
  .full { background: var(--sheet); }
  .end { text-align: end; }
  .centre { text-align: center; }
  .cell small { margin-inline-start: 2px; color: var(--soft); font-size: var(--size-small); }
  .strong, .heading { font-weight: 600; }
  .italic { font-style: italic; }
  .lined { white-space: pre; line-height: 20px; padding-block: 5px 4px; }
  .cell .rest { color: var(--soft); font-size: var(--size-small); }
  .line-above { border-top: 2px solid var(--ink); line-height: 27px; }
  .line-below { border-bottom: 2px solid var(--ink); line-height: 28px; }
  .line-around { border: 2px solid var(--ink); line-height: 26px; padding: 0 9px 0 8px; }
  .lined:is(.line-above, .line-below, .line-around) { line-height: 20px; padding-block: 3px; }
  /* A chalk ring around what was found. */
  .found { border-radius: 12px; box-shadow: inset 0 0 0 2px var(--thread), inset 0 0 0 4px var(--thread-wash); }
  .heading { background-color: var(--paper); }
  .waiting { color: var(--soft); font-style: italic; }
  .error { color: var(--pin); font-size: var(--size-small); }
  .spill { overflow: visible; border-right-color: transparent; background: none; }
  .under { border-right-color: transparent; }
  .typed, .input {
    background-image: repeating-linear-gradient(90deg, var(--chalk) 0 7px, transparent 7px 12px);
    background-size: calc(100% - 16px) 1.5px; background-repeat: no-repeat; background-position: 8px calc(100% - 4px);
  }
  .input { background-color: var(--thread-wash); }
  .draft { font-family: var(--face-sum); }

  /* Cells paint one after another: a text that reaches over empty cells ends at the next full one, and is read through the wash. */
  .cell[aria-selected='true'] { background-color: color-mix(in srgb, var(--chalk) 14%, transparent); }
  .full[aria-selected='true'] { background-color: color-mix(in srgb, var(--chalk) 14%, var(--sheet)); }
  .spill[aria-selected='true'] { background-color: color-mix(in srgb, var(--chalk) 14%, transparent); }
  .cell[id] { outline: 2px solid var(--rule); outline-offset: -2px; }
  .scroller:focus-within .cell[id] { outline-color: var(--chalk); }

  .corner, .column { background-color: var(--tape); color: var(--tape-ink); height: 28px; }
  .column {
    position: relative; border-right: 1px solid rgb(0 0 0 / 12%); font-weight: 600; font-size: 0.78rem; line-height: 24px; text-align: center; cursor: default;
    background-image: repeating-linear-gradient(90deg, color-mix(in srgb, var(--tape-ink) 45%, transparent) 0 1px, transparent 1px 12px);
    background-size: 100% 6px; background-repeat: no-repeat; background-position: bottom;
  }
  .column.on { box-shadow: inset 0 -3px 0 var(--tape-ink); }
  .column span:not(.hidden) { display: block; padding: 0 10px; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  .only { font-weight: 400; text-decoration: underline dotted; text-underline-offset: 2px; }
  .edge { position: absolute; top: 0; right: -12px; width: 24px; height: 28px; cursor: col-resize; touch-action: none; z-index: 1; }
  .edge:hover { background: linear-gradient(var(--tape-ink), var(--tape-ink)) center / 3px 60% no-repeat; }
  .column:last-child .edge { right: 0; }
  .kept > .column:last-child .edge { right: -12px; }
  .corner, .number { border-right: 1px solid var(--rule); }
  .number {
    position: relative; background: var(--tissue); color: var(--soft); font-size: 0.78rem; line-height: 29px; text-align: center; height: 100%;
    border-bottom: 1px solid var(--line); cursor: default;
  }
  .number.on { color: var(--ink); font-weight: 600; box-shadow: inset 3px 0 0 var(--chalk); }
  /* Hidden rows and columns are taken up like a tuck: a folded line where they lie. */
  .number.tucked::before, .number.tucked-end::before, .column.tucked::before, .column.tucked-end::before {
    content: ''; position: absolute; z-index: 2; border: double var(--ink);
  }
  .number.tucked::before { inset: -2px 2px auto; border-width: 3px 0 0; }
  .number.tucked-end::before { inset: auto 2px -1px; border-width: 3px 0 0; }
  .column.tucked::before { inset: 3px auto 3px -2px; border-width: 0 0 0 3px; border-color: var(--tape-ink); }
  .column.tucked-end::before { inset: 3px -1px 3px auto; border-width: 0 0 0 3px; border-color: var(--tape-ink); }
  .kept > .cell:last-child { overflow: hidden; }

  .cell i { font-style: normal; }
  /* A pin is a round head on a slanted shank; a fault is a filled diamond with a stroke; a note is a turned-down corner. */
  .pinned, .noted { position: relative; }
  .pinned { padding-left: 22px; }
  .pin { position: absolute; left: 5px; top: 5px; width: 9px; height: 9px; border-radius: 50%; background: var(--pin); }
  .pin::after { content: ''; position: absolute; left: 7px; top: 7px; width: 9px; height: 1.5px; background: var(--pin); transform: rotate(45deg); transform-origin: left; }
  /* An acknowledged pin has a hollow head and no shank: it is laid aside. */
  .pin.settled { background: none; border: 2px solid var(--pin); }
  .pin.settled::after { display: none; }
  .wrong {
    display: inline-block; width: 16px; height: 16px; margin-right: 6px; line-height: 16px; text-align: center; font-weight: 700; font-size: 11px;
    color: var(--sheet); background: var(--pin); clip-path: polygon(50% 0, 100% 50%, 50% 100%, 0 50%);
  }
  .note { position: absolute; right: 0; top: 0; border: 5px solid; border-color: var(--thread) var(--thread) transparent transparent; }

  .box { position: absolute; pointer-events: none; z-index: 1; }
  .range { border: 2px solid var(--chalk); }
  .pointed { border: 2px dashed var(--thread); background: color-mix(in srgb, var(--thread) 10%, transparent); }
  .used { border: 1.5px dashed var(--thread); }
  .fill { border: 2px dashed var(--chalk); }
  .cut-top { border-top: 0; }
  .cut-bottom { border-bottom: 0; }
  .cut-left { border-left: 0; }
  .cut-right { border-right: 0; }
  .used[data-label]::before, .fill[data-label]::after {
    content: attr(data-label); position: absolute; padding: 0 3px; line-height: 14px; font-size: 11px; font-weight: 600; text-align: center; color: var(--sheet); white-space: nowrap;
  }
  .used[data-label]::before { left: -1px; top: -1px; min-width: 15px; background: var(--thread); }
  .fill[data-label]::after { right: -2px; bottom: -24px; padding: 3px 8px; background: var(--chalk); border-radius: 4px; }

  .handle { position: absolute; z-index: 2; display: grid; place-items: center; touch-action: none; cursor: move; }
  .handle.fill { border: 0; cursor: crosshair; }
  .handle svg { display: block; pointer-events: none; overflow: visible; filter: drop-shadow(0 0 1.5px var(--sheet)); }
  .wood { fill: var(--sheet); stroke: var(--chalk); stroke-width: 1.4; }
  .wound { fill: var(--chalk); }
  .turns { fill: none; stroke: var(--sheet); stroke-width: 0.8; }
  .spool .needle { fill: none; stroke: var(--chalk); stroke-width: 1.4; stroke-linecap: round; }
  .holes { fill: none; stroke: var(--chalk); stroke-width: 1.6; stroke-linecap: round; }
  .handle:hover .wood { fill: var(--chalk-wash); }

  .threads { position: absolute; inset: 0; overflow: clip; pointer-events: none; z-index: 8; }
  .cloth, .cloth > * { position: absolute; }
  .cloth svg { inset: 0; }
  .thread, .thread-under { fill: none; stroke-linecap: round; }
  .thread-under { stroke: var(--sheet); stroke-width: 4; opacity: 0.75; }
  .thread { stroke: var(--thread); stroke-width: 2; stroke-dasharray: 8 6; }
  .threads .needle { fill: var(--ink); stroke: var(--sheet); stroke-width: 0.8; }
  .knot { fill: var(--thread); stroke: var(--sheet); stroke-width: 1.5; }
  .reach { border: 1.5px dashed var(--thread); }
  .tag { padding: 0 5px; line-height: 18px; font-size: 12px; white-space: nowrap; color: var(--sheet); background: var(--thread); border-radius: 9px; }
  .tag.far { transform: translateX(-100%); }

  /* In the flow and sticky, so that over a cell that stays in view it stays without being moved. */
  .cell-editor { position: sticky; z-index: 0; opacity: 0; pointer-events: none; overflow: hidden; }
  .cell-editor.open { opacity: 1; pointer-events: auto; z-index: 3; background: var(--sheet); outline: 2px solid var(--chalk); outline-offset: -2px; box-shadow: var(--shadow); }
  .cell-editor .underlay, .cell-editor textarea { padding: 4px 9px; line-height: 21px; }

  @media (forced-colors: active) {
    .typed, .input { position: relative; }
    .typed::after, .input::after { content: ''; position: absolute; left: 8px; right: 8px; bottom: 3px; border-bottom: 1.5px dashed; }
    .input { outline: 1px dotted; outline-offset: -3px; }
    .cell[aria-selected='true'] { forced-color-adjust: none; background: Highlight; color: HighlightText; }
    .cell[aria-selected='true'] small { color: HighlightText; }
    .cell[id], .scroller:focus-within .cell[id] { outline: 3px solid CanvasText; outline-offset: -3px; }
    .column.on, .number.on { forced-color-adjust: none; background: Highlight; color: HighlightText; }
    .column { border-bottom: 1px dashed; }
    .pin, .pin::after { forced-color-adjust: none; background: LinkText; }
    .pin.settled { background: none; border-color: LinkText; }
    .wrong { forced-color-adjust: none; background: LinkText; color: Canvas; }
    .note { forced-color-adjust: none; border-color: LinkText LinkText transparent transparent; }
    .used::before, .fill::after, .tag { border: 1px solid; }
    .found { outline: 3px dotted; outline-offset: -4px; }
    .wood, .thread-under { fill: Canvas; stroke: CanvasText; }
    .thread-under { fill: none; stroke: Canvas; }
    .thread, .spool .needle, .holes { stroke: CanvasText; }
    .wound, .knot, .threads .needle { fill: CanvasText; }
  }
`;
