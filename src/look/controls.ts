/** Styles that every component with a form or a button takes in, so that a button is the same thing everywhere. */
import { css } from 'lit';

export const controls = css`
  :host { box-sizing: border-box; font: var(--size)/1.4 var(--face); color: var(--ink); }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: inherit; }

  button, select, input, textarea { font: inherit; color: inherit; }
  button {
    min-height: var(--hand); padding: 4px 12px; border: 1px solid var(--rule); border-radius: var(--round);
    background: var(--sheet); cursor: pointer;
  }
  button:hover { background: var(--chalk-wash); }
  button:disabled { color: var(--soft); border-style: dashed; background: none; cursor: default; }
  button.main { background: var(--ink); color: var(--paper); border-color: var(--ink); }
  button.main:hover { background: var(--chalk); border-color: var(--chalk); }
  button.main:disabled { background: none; color: var(--soft); }
  button.bare { border-color: transparent; background: none; }
  button.bare:hover { background: var(--chalk-wash); }
  button[aria-pressed='true'] { background: var(--ink); color: var(--paper); }
  input, select, textarea {
    min-height: var(--hand); padding: 4px 8px; border: 1px solid var(--rule); border-radius: 6px; background: var(--sheet);
  }
  input[type='checkbox'], input[type='radio'] { min-height: 0; width: 18px; height: 18px; accent-color: var(--chalk); }
  :is(button, input, select, textarea, [tabindex]):focus-visible { outline: 2px solid var(--chalk); outline-offset: 1px; }
  label { display: inline-flex; align-items: center; gap: var(--gap-2); min-height: 24px; }
  h2, h3 { font-family: var(--face-title); margin: 0; }
  h2 { font-size: 1.15rem; }
  h3 { font-size: 1rem; }
  .soft { color: var(--soft); font-size: var(--size-small); }
  .fault { color: var(--pin); background: var(--pin-wash); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); }
  .note { background: var(--thread-wash); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); }

  dialog {
    border: 1px solid var(--rule); border-radius: 12px; background: var(--paper); color: var(--ink);
    padding: 0; width: min(960px, calc(100vw - 32px)); max-height: min(92vh, 860px); box-shadow: var(--shadow);
  }
  dialog::backdrop { background: rgb(20 28 36 / 45%); }
  dialog > header { display: flex; align-items: center; gap: var(--gap-3); padding: var(--gap-3) var(--gap-4); border-bottom: 1px solid var(--line); position: sticky; top: 0; background: var(--paper); z-index: 1; }
  dialog > header h2 { flex: 1; }
  :is(dialog, dialog > form) > .body { padding: var(--gap-4); }
  :is(dialog, dialog > form) > footer { display: flex; flex-wrap: wrap; gap: var(--gap-2); justify-content: flex-end; padding: var(--gap-3) var(--gap-4); border-top: 1px solid var(--line); position: sticky; bottom: 0; background: var(--paper); }
  @media (max-width: 640px) {
    dialog { width: 100vw; max-width: 100vw; margin: auto 0 0; border-radius: 16px 16px 0 0; max-height: 92vh; }
  }
  /* Where little is in view at once, all of it scrolls. */
  @media (max-height: 400px) {
    dialog > header, :is(dialog, dialog > form) > footer { position: static; }
  }
  @media (prefers-reduced-motion: no-preference) {
    button { transition: background-color 0.12s; }
  }
`;
