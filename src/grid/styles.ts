/** The grid's look: a tape for the column headings, tissue for the row headings, basting under typed figures. */
import { css } from 'lit';

export const gridStyles = css`
  :host { display: block; position: relative; isolation: isolate; min-height: 0; min-width: 0; font: var(--size)/1.3 var(--face); color: var(--ink); background: var(--paper); }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  .hidden { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }

  .scroller { position: absolute; inset: 0; overflow: auto; overflow-anchor: none; touch-action: manipulation; outline: none; }
  .plane { position: relative; }
  [role='grid'] { position: absolute; inset: 0; }
  .row { display: grid; grid-template-columns: var(--tracks); width: 100%; height: 30px; }
  .head { position: sticky; top: 0; z-index: 5; }
  .head .row { height: 28px; }
  /* The lines go on where rows are still to come, so that nothing is ever bare while scrolling fast. */
  [role='grid'] { background: linear-gradient(var(--line) 1px, transparent 1px) 0 27px / 100% 30px var(--sheet); }
  .body { position: absolute; left: 0; right: 0; }

  .cell {
    border: solid var(--line); border-width: 0 1px 1px 0; padding: 0 10px; line-height: 29px; height: 30px;
    white-space: nowrap; overflow: hidden; text-overflow: ellipsis; font-variant-numeric: tabular-nums; cursor: cell;
  }
  .body .row { background: var(--sheet); }
  .full { background: var(--sheet); }
  .end { text-align: end; }
  .centre { text-align: center; }
  .cell small { margin-inline-start: 2px; color: var(--soft); font-size: var(--size-small); }
  .strong, .heading { font-weight: 600; }
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
  .column span { display: block; padding: 0 10px; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  .edge { position: absolute; top: 0; right: -12px; width: 24px; height: 28px; cursor: col-resize; touch-action: none; z-index: 1; }
  .edge:hover { background: linear-gradient(var(--tape-ink), var(--tape-ink)) center / 3px 60% no-repeat; }
  .column:last-child .edge { right: 0; }
  .corner, .number { position: sticky; left: 0; z-index: 4; border-right: 1px solid var(--rule); }
  .number {
    background: var(--tissue); color: var(--soft); font-size: 0.78rem; line-height: 29px; text-align: center; height: 30px;
    border-bottom: 1px solid var(--line); cursor: default;
  }
  .number.on { color: var(--ink); font-weight: 600; box-shadow: inset 3px 0 0 var(--chalk); }
  .narrow [aria-colindex='2'] { position: sticky; left: var(--row-head); z-index: 2; border-right-color: var(--rule); }
  .narrow .cell[aria-colindex='2'] { background-color: var(--sheet); overflow: hidden; }
  .narrow .cell.heading[aria-colindex='2'] { background-color: var(--paper); }
  .narrow .cell[aria-colindex='2'][aria-selected='true'] { background-color: color-mix(in srgb, var(--chalk) 14%, var(--sheet)); }

  .cell i { font-style: normal; }
  /* A pin is a round head on a slanted shank; a fault is a filled diamond with a stroke; a note is a turned-down corner. */
  .pinned, .noted { position: relative; }
  .pinned { padding-left: 22px; }
  .pin { position: absolute; left: 5px; top: 5px; width: 9px; height: 9px; border-radius: 50%; background: var(--pin); }
  .pin::after { content: ''; position: absolute; left: 7px; top: 7px; width: 9px; height: 1.5px; background: var(--pin); transform: rotate(45deg); transform-origin: left; }
  .wrong {
    display: inline-block; width: 16px; height: 16px; margin-right: 6px; line-height: 16px; text-align: center; font-weight: 700; font-size: 11px;
    color: var(--sheet); background: var(--pin); clip-path: polygon(50% 0, 100% 50%, 50% 100%, 0 50%);
  }
  .note { position: absolute; right: 0; top: 0; border: 5px solid; border-color: var(--thread) var(--thread) transparent transparent; }

  .box { position: absolute; pointer-events: none; z-index: 1; }
  .range { border: 2px solid var(--chalk); }
  .pointed { border: 2px dashed var(--thread); background: color-mix(in srgb, var(--thread) 10%, transparent); }
  .used { border: 1.5px dashed var(--thread); }
  .used::before {
    content: attr(data-number); position: absolute; left: -1px; top: -1px; min-width: 15px; padding: 0 3px; line-height: 14px; font-size: 11px; font-weight: 600;
    text-align: center; color: var(--sheet); background: var(--thread);
  }

  .cell-editor { position: absolute; z-index: 0; opacity: 0; pointer-events: none; overflow: hidden; }
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
    .wrong { forced-color-adjust: none; background: LinkText; color: Canvas; }
    .note { forced-color-adjust: none; border-color: LinkText LinkText transparent transparent; }
    .used::before { border: 1px solid; }
  }
`;
