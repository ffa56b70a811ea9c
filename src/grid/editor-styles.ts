/** The shared editor's look: a text area over a coloured copy of its text, and the helper panel. */
import { css } from 'lit';

export const editorStyles = css`
  .underlay, .editor-field {
    margin: 0; border: 0; width: 100%; min-height: 100%; font: var(--size)/21px var(--face); letter-spacing: normal; tab-size: 4; text-align: start;
    white-space: pre-wrap; overflow-wrap: anywhere; font-variant-numeric: tabular-nums;
  }
  .underlay { color: var(--ink); }
  .formula .underlay, .formula .editor-field { font-family: var(--face-sum); }
  .editor-field {
    position: absolute; inset: 0; height: 100%; resize: none; overflow: hidden; outline: none; border-radius: 0;
    background: none; color: transparent; caret-color: var(--ink);
  }
  .editor-field::selection { background: color-mix(in srgb, var(--chalk) 30%, transparent); color: transparent; }
  .t-function { color: var(--chalk); font-weight: 600; }
  .t-reference, .t-name { color: var(--leaf); }
  .t-number, .t-unit { color: var(--thread); }
  .t-string { color: var(--soft); font-style: italic; }
  .t-bad, .t-error { color: var(--pin); text-decoration: underline wavy var(--pin); }

  .helper {
    position: fixed; inset: auto; margin: 0; padding: 0; width: max-content; min-width: 220px; overflow: auto;
    border: 1px solid var(--rule); border-radius: var(--round); background: var(--paper); color: var(--ink); box-shadow: var(--shadow); font: var(--size)/1.35 var(--face);
    /* Cells under the signature can be pointed at through it. */
    pointer-events: none;
  }
  .helper ul { pointer-events: auto; list-style: none; margin: 0; padding: 4px; }
  .helper ul[hidden] { display: none; }
  .helper li { padding: 4px 8px; min-height: 28px; border-radius: 4px; cursor: pointer; max-width: 560px; white-space: nowrap; overflow: hidden; text-overflow: ellipsis; }
  .helper li:hover { background: var(--chalk-wash); }
  .helper li[aria-selected='true'] { background: var(--chalk-wash); outline: 2px solid var(--chalk); outline-offset: -2px; }
  .helper li b { font: 600 var(--size)/1.35 var(--face-sum); }
  .helper li span, .signature > span { color: var(--soft); font-size: var(--size-small); }
  .signature { margin: 0; padding: 8px 12px; border-bottom: 1px solid var(--line); background: var(--tissue); max-width: 620px; }
  .signature code { font: var(--size)/1.4 var(--face-sum); display: block; }
  .signature .more { float: right; margin-left: 12px; }
  .signature strong { color: var(--chalk); text-decoration: underline; text-underline-offset: 3px; }

  @media (forced-colors: active) {
    /* The system paints the text area's own text, so the coloured copy goes. */
    .underlay { visibility: hidden; }
    .helper li[aria-selected='true'] { outline: 3px solid Highlight; outline-offset: -3px; }
  }
`;
