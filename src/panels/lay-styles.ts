import { css } from 'lit';

export const layStyles = css`
  :host { display: block; height: 100%; container-type: inline-size; }
  header { display: flex; flex-wrap: wrap; align-items: baseline; gap: var(--gap-1) var(--gap-3); padding: var(--gap-2) var(--gap-4); border-bottom: 1px solid var(--line); }
  header button { margin-left: auto; }
  h2:focus-visible { outline: none; }
  .pair { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: var(--gap-2); align-items: end; }
  .empty { padding: var(--gap-5); max-width: 46rem; display: grid; gap: var(--gap-3); justify-items: start; }
  .parts { display: grid; grid-template-columns: 330px minmax(0, 1fr); gap: var(--gap-4); padding: var(--gap-3) var(--gap-4); align-items: start; }
  .choices, .result { display: grid; gap: var(--gap-3); min-width: 0; }
  .box { border: 1px solid var(--line); border-radius: var(--round); background: var(--sheet); padding: var(--gap-3); display: grid; gap: var(--gap-3); min-width: 0; }
  details.box { display: block; }
  /* What holds the content of details is none of ours and passes nothing of this on. */
  details > * { box-sizing: border-box; }
  summary { cursor: pointer; }
  summary h3 { display: inline; }
  summary + * { margin-top: var(--gap-3); }
  .field { display: grid; gap: 2px; min-width: 0; }
  .field :is(input, select) { width: 100%; min-width: 0; }
  .rows { margin: 0; padding-inline-start: 2.2em; max-height: 190px; overflow-y: auto; }
  .faults { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-1); }
  .faults button { margin-inline-start: var(--gap-2); }
  p { margin: 0; }
  .search { display: flex; flex-wrap: wrap; gap: var(--gap-2) var(--gap-3); align-items: center; }
  .standing { flex: 1 1 16em; }
  .none { padding: var(--gap-4); border: 1px dashed var(--rule); border-radius: var(--round); }
  .layout { display: grid; gap: var(--gap-2); min-width: 0; }
  .headline { font: 600 1.25rem/1.3 var(--face-title); }
  tt-lay-drawing { height: clamp(320px, 58vh, 640px); }
  .buttons { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
  .buttons form { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
  .kept { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-2); }
  .kept li { display: flex; flex-wrap: wrap; gap: var(--gap-2); justify-content: space-between; border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-2); }
  .kept li.shown { border-color: var(--chalk); box-shadow: inset 3px 0 var(--chalk); }
  [aria-invalid='true'] { border-color: var(--pin); border-width: 2px; }
  @container (max-width: 820px) {
    .parts { grid-template-columns: minmax(0, 1fr); padding: var(--gap-2); }
    header { padding: var(--gap-2); }
    header .soft { display: none; }
  }
`;
