import { css } from 'lit';

export const peopleStyles = css`
  :host { display: block; padding: 14px 16px 24px; }
  :host(tt-set-form) { padding: 0; }
  header { display: flex; gap: var(--gap-2); align-items: center; }
  header h2 { flex: 1; }
  section { border-top: 1px solid var(--line); margin-top: var(--gap-4); padding-top: var(--gap-3); }
  section > h3 { margin-bottom: var(--gap-2); }
  .tools { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; margin: var(--gap-2) 0; }
  .ask { display: grid; gap: var(--gap-1); flex: 1 1 10em; min-width: 0; }
  .ask > :is(input, select, textarea) { width: 100%; }
  textarea { resize: vertical; }
  .scroll { overflow-x: auto; }
  table { border-collapse: collapse; background: var(--sheet); font-variant-numeric: tabular-nums; width: 100%; }
  th.words { text-align: left; }
  caption { text-align: left; font-weight: 600; padding: var(--gap-1) 0; }
  th, td { padding: 5px 8px; border: 1px solid var(--line); text-align: right; vertical-align: baseline; }
  th[scope='row'], thead th:first-child { text-align: left; font-weight: 400; }
  thead th { background: var(--tissue); font-weight: 600; }
  small { display: block; color: var(--soft); font-weight: 400; font-size: 0.72rem; }
  td.detail, .detail > td { text-align: left; }
  button.small { min-height: 24px; padding: 0 6px; font-size: 0.72rem; font-weight: 400; }
  button.name { min-height: 28px; border: 0; background: none; padding: 0; text-align: left; text-decoration: underline dotted; }
  tr.open { background: var(--chalk-wash); }
  .moved { color: var(--thread); }
  .one { display: flex; flex-wrap: wrap; gap: var(--gap-3); }
  .one .tape { width: 130px; flex: none; }
  .one .told { flex: 1 1 220px; min-width: 0; }
  .told p { margin: 0 0 var(--gap-2); }
  td { white-space: nowrap; }
  td.detail, .detail > td, .detail td { white-space: normal; }
  .course { margin-top: var(--gap-2); }
  .list { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-2); }
  .list > li { background: var(--sheet); border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); overflow-wrap: anywhere; }
  .list p { margin: 0; white-space: pre-line; }
  form { display: grid; gap: var(--gap-3); }
  .note p, .note ul { margin: 0 0 var(--gap-1); }
  details { margin-top: var(--gap-2); }
  summary { min-height: 24px; cursor: pointer; }
  /* What is folded stands in a box of the browser’s own, and would take its way of counting widths. */
  details > * { box-sizing: border-box; }
  .told .tt-picture { max-width: 340px; }
  .choice { display: flex; flex-wrap: wrap; gap: var(--gap-2) var(--gap-4); }
  fieldset { border: 1px solid var(--line); border-radius: var(--round); margin: 0; padding: var(--gap-2) var(--gap-3); min-width: 0; }
  .levels { display: grid; gap: var(--gap-2); grid-template-columns: repeat(auto-fill, minmax(min(100%, 150px), 1fr)); }
`;
