import { css } from 'lit';

/**
 * The page: header, sheets at the left, entry line and grid in the middle, the
 * working at the right. Under 1100 px the working goes below the grid, under
 * 900 px the sheets become a drawer; on a phone the working is a sheet from below.
 */
export const shellStyles = css`
  :host { display: grid; grid-template: auto auto minmax(0, 1fr) auto / 216px minmax(0, 1fr) 356px; height: 100dvh; background: var(--paper); }
  header { grid-column: 1 / -1; display: flex; flex-wrap: wrap; align-items: center; gap: var(--gap-2) var(--gap-3); padding: var(--gap-2) var(--gap-4); border-bottom: 1px solid var(--rule); }
  h1 { margin: 0; font: 600 1.1rem/1.2 var(--face-title); min-width: 0; }
  h1 button { border: 0; padding: 2px 4px; background: none; font: inherit; text-align: left; overflow-wrap: anywhere; min-height: 28px; }
  .title { flex: 1; min-width: 0; display: flex; align-items: baseline; gap: var(--gap-2); }
  .whom { flex: 1 1 0; min-width: 6em; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; font-size: var(--size-small); color: var(--soft); }
  .whom.not { color: var(--pin); font-weight: 600; }
  .choice { display: inline-flex; border: 1px solid var(--rule); border-radius: var(--round); overflow: hidden; }
  .choice button { border: 0; border-radius: 0; }
  .choice button + button { border-left: 1px solid var(--line); }
  .choice button:focus-visible { outline-offset: -3px; }
  fieldset { display: contents; }
  legend { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .menu { display: none; }
  tt-sheet-list { grid-row: 3; grid-column: 1; border-right: 1px solid var(--rule); min-height: 0; }
  main { grid-row: 3; grid-column: 2; display: flex; flex-direction: column; min-width: 0; min-height: 0; }
  .marks { margin: 0; padding: var(--gap-1) var(--gap-3); display: flex; flex-wrap: wrap; align-items: center; gap: var(--gap-1) var(--gap-2); border-bottom: 1px dashed var(--rule); font-size: var(--size-small); color: var(--soft); }
  .marks button { min-height: 28px; padding: 2px var(--gap-2); border-style: dashed; font-size: inherit; }
  tt-grid { flex: 1; min-height: 0; }
  aside { grid-row: 3; grid-column: 3; border-left: 1px solid var(--rule); overflow-y: auto; min-height: 0; background: var(--paper); }
  :host([data-wide-panel]) { grid-template-columns: 216px minmax(0, 1fr) minmax(420px, 38%); }
  .whole { grid-row: 3 / -2; grid-column: 1 / -1; z-index: 21; min-width: 0; min-height: 0; overflow: auto; background: var(--paper); }
  footer { grid-row: -2; grid-column: 1 / -1; display: flex; align-items: center; gap: var(--gap-4); padding: 2px var(--gap-4); min-height: 30px; border-top: 1px solid var(--rule); background: var(--tissue); font-size: var(--size-small); color: var(--soft); }
  footer .end { margin-left: auto; white-space: nowrap; }
  footer .said { color: var(--ink); overflow-wrap: anywhere; }
  .show-panel { display: none; }
  .banner { grid-row: 2; grid-column: 1 / -1; margin: 0; border-radius: 0; padding: var(--gap-2) var(--gap-4); }
  .banner button { margin-left: var(--gap-3); }
  .aloud { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }

  @media (max-width: 1100px) {
    :host, :host([data-wide-panel]) { grid-template: auto auto minmax(0, 1fr) minmax(0, 36dvh) auto / 190px minmax(0, 1fr); }
    tt-sheet-list { grid-row: 3 / span 2; }
    aside { grid-row: 4; grid-column: 2; border-left: 0; border-top: 1px solid var(--rule); }
    :host([data-wide-panel]) { grid-template-rows: auto auto minmax(0, 1fr) minmax(0, 50dvh) auto; }
  }
  @media (max-width: 900px) {
    :host, :host([data-wide-panel]) { grid-template-columns: minmax(0, 1fr); }
    .menu { display: inline-block; }
    .title { flex: 1 1 8em; flex-direction: column; align-items: stretch; gap: 0; }
    .whom { flex: none; min-width: 0; padding-inline: 4px; }
    .shown { order: 1; }
    main, aside { grid-column: 1; }
    tt-sheet-list { position: fixed; inset: 0 auto 0 0; width: min(300px, 86vw); z-index: 20; box-shadow: var(--shadow); visibility: hidden; transform: translateX(-102%); }
    tt-sheet-list.open { visibility: visible; transform: none; }
    .veil { position: fixed; inset: 0; z-index: 19; background: rgb(20 28 36 / 45%); border: 0; border-radius: 0; }
  }
  @media (max-width: 640px) {
    :host, :host([data-wide-panel]) { grid-template: auto auto minmax(0, 1fr) auto / minmax(0, 1fr); }
    header { padding: var(--gap-1) var(--gap-2); gap: var(--gap-1) var(--gap-2); }
    header .roomy { display: none; }
    .undo { order: 2; margin-left: auto; }
    h1 { font-size: 1rem; }
    h1 button { max-width: 100%; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
    header button, header select { padding-inline: var(--gap-2); }
    aside { position: fixed; inset: auto 0 0; max-height: 70dvh; z-index: 18; border: 1px solid var(--rule); border-radius: 16px 16px 0 0; box-shadow: var(--shadow); visibility: hidden; transform: translateY(102%); }
    aside.open { visibility: visible; transform: none; }
    .show-panel { display: inline-block; min-height: 28px; }
    footer { padding: 2px var(--gap-2); gap: var(--gap-2); }
    footer .took, footer .hint { display: none; }
    .panel-close { display: block; position: sticky; top: 4px; float: right; margin: 8px 8px 0 0; z-index: 1; }
  }
  /* As low as at 400 %: the page scrolls, and the cells have the window to themselves. */
  @media (max-height: 340px) {
    :host(:not([data-keyboard])), :host([data-wide-panel]:not([data-keyboard])) { height: auto; min-height: 100dvh; }
    :host(:not([data-keyboard])) tt-grid { flex: none; height: max(150px, calc(100dvh - 34px)); }
    aside { max-height: 94dvh; }
  }
  /* Over an on-screen keyboard: only the cells, and the entry line right above it. */
  :host([data-keyboard]) { position: fixed; inset: 0 0 auto; }
  @media (max-width: 640px) {
    :host([data-keyboard]) header, :host([data-keyboard]) footer, :host([data-keyboard]) .marks { display: none; }
    :host([data-keyboard]) main { flex-direction: column-reverse; }
  }
  @media (min-width: 641px) { .panel-close { display: none; } }
  @media (prefers-reduced-motion: no-preference) {
    aside, tt-sheet-list { transition: transform 0.16s, visibility 0.16s; }
    /* To be seen at once: what is hidden cannot take the focus. */
    aside.open, tt-sheet-list.open { transition: transform 0.16s; }
  }
`;
