import { css } from 'lit';

export const sizeChoiceStyles = css`
  :host { display: block; padding: 14px 16px 24px; }
  header { display: flex; gap: var(--gap-2); align-items: center; }
  header h2 { flex: 1; }
  h3 { margin: var(--gap-4) 0 var(--gap-2); }
  p { margin: var(--gap-2) 0; }
  .wishes { display: grid; grid-template-columns: max-content minmax(0, 1fr); gap: var(--gap-2) var(--gap-3); align-items: center; margin: var(--gap-3) 0; }
  .wishes select, .wishes input { width: 100%; min-width: 0; }
  .measure { padding: var(--gap-2) 0; border-top: 1px solid var(--line); }
  .line { display: grid; grid-template-columns: 6.5rem minmax(0, 1fr) max-content; gap: var(--gap-2); align-items: center; }
  .line.two { grid-template-columns: 6.5rem minmax(0, 1fr) max-content minmax(0, 1fr); margin-top: var(--gap-1); }
  .line input { width: 100%; min-width: 0; }
  .line label { min-height: 0; overflow-wrap: anywhere; }
  .measure small, .blend small { display: block; color: var(--soft); font-size: var(--size-small); }
  .wrong { color: var(--pin); font-size: var(--size-small); margin: 2px 0 0; }
  .answer { font-size: var(--size-large); font-weight: 600; }
  .chosen { display: grid; grid-template-columns: max-content minmax(0, 1fr); gap: var(--gap-1) var(--gap-3); margin: var(--gap-2) 0; }
  .chosen dt { font-weight: 700; font-size: var(--size-large); line-height: 1.25; color: var(--thread); }
  .chosen dt small { display: block; font-size: var(--size-small); font-weight: 400; }
  .aloud { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  .chosen dd { margin: 0; }
  .pin { color: var(--pin); margin: 2px 0 0; }
  .wide { overflow-x: auto; }
  table { border-collapse: collapse; width: 100%; background: var(--sheet); font-variant-numeric: tabular-nums; }
  caption { text-align: left; padding: var(--gap-1) 0; color: var(--soft); font-size: var(--size-small); }
  th, td { padding: 5px 8px; border: 1px solid var(--line); text-align: right; vertical-align: baseline; }
  th[scope='row'] { text-align: left; font-weight: 400; }
  th small, td small { display: block; color: var(--soft); font-size: var(--size-small); font-weight: 400; }
  thead th { background: var(--tape); color: var(--tape-ink); font-weight: 600; }
  thead th:first-child { text-align: left; }
  td.mine { font-weight: 700; background: var(--thread-wash); }
  td .under { color: var(--pin); }
  figure { margin: var(--gap-3) 0; }
  .blend { padding: var(--gap-2) 0; border-top: 1px solid var(--line); }
  details { margin: var(--gap-4) 0; }
  summary { cursor: pointer; min-height: 24px; font-weight: 600; }
  summary:focus-visible { outline: 2px solid var(--chalk); outline-offset: 2px; }
  .put { border-top: 1px solid var(--rule); padding-top: var(--gap-3); margin-top: var(--gap-4); }
`;
