/** The look of the reference: a list beside a card; one of the two where there is no room for both. */
import { css } from 'lit';

export const referenceStyles = css`
  dialog[open] { display: flex; flex-direction: column; width: min(1120px, calc(100vw - 32px)); height: min(92vh, 860px); overflow: hidden; }
  .sides { flex: 1; min-height: 0; display: grid; grid-template-columns: minmax(280px, 2fr) 3fr; }
  .side { min-width: 0; min-height: 0; display: flex; flex-direction: column; }
  .side.list { border-right: 1px solid var(--line); }
  .find { padding: var(--gap-3) var(--gap-4) var(--gap-2); }
  .find input { width: 100%; }
  .found { flex: 1; min-height: 0; overflow: auto; padding: 0 var(--gap-2) var(--gap-3); }
  .found h3 { font: 600 0.75rem var(--face); letter-spacing: 0.04em; color: var(--soft); padding: var(--gap-3) var(--gap-2) var(--gap-1); }
  .found [role='option'] { display: block; width: 100%; border: 0; background: none; text-align: left; padding: 4px var(--gap-2); border-radius: 6px; cursor: pointer; scroll-margin-block: 32px; content-visibility: auto; contain-intrinsic-size: auto 44px; }
  .found [role='option']:hover { background: var(--chalk-wash); }
  .found [role='option'][aria-selected='true'] { background: var(--chalk-wash); box-shadow: inset 3px 0 var(--chalk); }
  .found b { font: 600 var(--size)/1.35 var(--face-sum); overflow-wrap: anywhere; }
  .found .tells { display: block; font-size: var(--size-small); color: var(--soft); overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  .none { padding: 0 var(--gap-4); }

  .card { flex: 1; min-height: 0; overflow: auto; padding: var(--gap-4) var(--gap-5) var(--gap-5); }
  .card .back { display: none; }
  .card h3 { font: 600 1.05rem/1.4 var(--face-sum); overflow-wrap: anywhere; }
  .card h3.plain { font-family: var(--face-title); }
  .card h3 .rest { font-weight: 400; }
  .card h4 { font: 600 var(--size) var(--face); margin: var(--gap-4) 0 var(--gap-1); }
  .card p { margin: var(--gap-2) 0; }
  .about { font-size: var(--size-large); }
  .rule { font-style: italic; overflow-wrap: anywhere; }
  dl { display: grid; grid-template-columns: minmax(5em, auto) 1fr; gap: var(--gap-1) var(--gap-3); margin: var(--gap-1) 0; }
  dt { font-family: var(--face-sum); overflow-wrap: anywhere; }
  dd { margin: 0; }
  dd .soft { white-space: normal; }
  .try { background: var(--tissue); border-radius: var(--round); padding: var(--gap-3); margin-top: var(--gap-4); }
  .try label { display: block; font-weight: 600; }
  .try textarea { width: 100%; font-family: var(--face-sum); resize: vertical; min-height: 34px; field-sizing: content; }
  .try .result { margin: var(--gap-2) 0; min-height: 1.9em; }
  .try .result p { margin: 0; }
  .try .answer { font: 600 1.25rem/1.3 var(--face); overflow-wrap: anywhere; }
  .try .answer small { font: 400 var(--size) var(--face); color: var(--soft); margin-left: var(--gap-2); }
  .try > p:last-child { margin-bottom: 0; }
  .tools { display: flex; flex-wrap: wrap; gap: var(--gap-2); }
  .topics { margin: 0 -12px; gap: 0; }
  .cells { max-width: 100%; overflow-x: auto; margin: var(--gap-1) 0; }
  table { border-collapse: collapse; background: var(--sheet); font-size: var(--size-small); font-variant-numeric: tabular-nums; }
  td { border: 1px solid var(--line); padding: 3px 8px; min-width: 2em; height: 1.6em; white-space: nowrap; }
  caption { text-align: left; padding: 2px 0; }

  @media (max-width: 760px) {
    dialog[open] { width: 100vw; height: 92vh; }
    .sides { grid-template-columns: 1fr; }
    .side.list { border-right: 0; }
    .sides.reading .side.list, .sides:not(.reading) .side.one { display: none; }
    .card { padding: var(--gap-3) var(--gap-4) var(--gap-5); }
    .card .back { display: inline-block; margin-bottom: var(--gap-3); }
  }
  @media (forced-colors: active) {
    .found [role='option'][aria-selected='true'] { outline: 2px solid Highlight; outline-offset: -2px; }
  }
`;
