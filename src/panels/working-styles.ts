import { css } from 'lit';

export const workingStyles = css`
  :host { display: block; padding: 14px 16px 24px; }
  h2 { overflow-wrap: anywhere; }
  .answer { font: 600 1.5rem/1.2 var(--face); margin: var(--gap-2) 0; overflow-wrap: anywhere; }
  .answer small { font: 400 1rem var(--face); color: var(--soft); margin-left: var(--gap-2); }
  .answer.words { font-size: 1rem; }
  ol { list-style: none; margin: var(--gap-2) 0; padding: var(--gap-2) var(--gap-3); background: var(--tissue); border-radius: var(--round); }
  ol li { padding: 3px 0; }
  ol li + li { border-top: 1px solid var(--line); }
  .sum { overflow-wrap: anywhere; font-variant-numeric: tabular-nums; }
  .sum b { font-weight: 600; white-space: nowrap; }
  .second { color: var(--soft); white-space: nowrap; }
  dl { display: grid; grid-template-columns: 1fr auto; gap: 0 var(--gap-3); margin: var(--gap-2) 0; align-items: baseline; }
  dd.about { grid-column: 1 / -1; text-align: left; margin-bottom: var(--gap-2); padding-left: 7px; }
  dd { margin: 0; text-align: right; font-variant-numeric: tabular-nums; }
  dd small { color: var(--soft); }
  dt .plain { padding: 0 7px; font-size: var(--size-small); }
  dt button { min-height: 24px; padding: 0 6px; font-size: var(--size-small); text-align: left; }
  h3 { margin-top: var(--gap-4); }
  p { margin: var(--gap-2) 0; }
  .rule { font-style: italic; }
  .kept { border-left: 3px solid var(--thread); padding-left: var(--gap-3); white-space: pre-wrap; overflow-wrap: anywhere; }
  .pin { background: var(--pin-wash); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); }
  .pin strong { color: var(--pin); }

  .mend { display: grid; gap: var(--gap-1); justify-items: start; margin: var(--gap-2) 0; }
  .mend button { display: inline-flex; flex-wrap: wrap; gap: 0 var(--gap-3); align-items: baseline; text-align: left; overflow-wrap: anywhere; }
  .mend kbd { font: inherit; font-size: var(--size-small); color: var(--soft); }
  .circle { display: flex; flex-wrap: wrap; gap: 2px var(--gap-1); align-items: center; }
  .circle button { min-height: 28px; padding: 0 8px; }

  .tree, .tree ul { list-style: none; margin: 0; padding: 0; }
  .tree { margin: var(--gap-2) 0; padding: var(--gap-1) var(--gap-3); background: var(--tissue); border-radius: var(--round); }
  .tree ul { margin-left: 6px; padding-left: 9px; border-left: 1px solid var(--rule); }
  .part { display: flex; flex-wrap: wrap; gap: 0 var(--gap-3); justify-content: space-between; align-items: baseline; padding: 2px 0; }
  .part .text { overflow-wrap: anywhere; min-width: 0; font-size: var(--size-small); }
  .part .value { margin-left: auto; text-align: right; font-variant-numeric: tabular-nums; }
  .part .value b { font-weight: 600; }
  .part button { min-height: 24px; padding: 0 6px; margin-left: -6px; font-size: var(--size-small); text-align: left; overflow-wrap: anywhere; }
  .part .wrong { color: var(--pin); font-size: var(--size-small); }
  details { margin: var(--gap-2) 0; }
  summary { min-height: 28px; padding: 3px 0; font-weight: 600; cursor: pointer; }
`;
