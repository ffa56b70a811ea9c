/** The row along the top: the garment, whether it is kept, how lengths show, and the commands that are asked for most. */
import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { ShowSystem } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { keptInWords } from './kept.ts';

const SYSTEMS: readonly { readonly show: ShowSystem; readonly label: string; readonly title: string }[] = [
  { show: 'own', label: 'as typed', title: 'Each length in the unit it was typed in' },
  { show: 'cm', label: 'cm', title: 'Lengths in centimetres' },
  { show: 'in', label: 'in', title: 'Lengths in inches, as fractions' },
  { show: 'both', label: 'cm + in', title: 'Lengths in both systems' },
];

export interface HeadState {
  readonly sheetsOpen: boolean;
  readonly comparing: boolean;
  readonly openSheets: () => void;
  readonly run: (id: string) => void;
}

export function head(desk: Desk, { sheetsOpen, comparing, openSheets, run }: HeadState): TemplateResult {
  const { book, history } = desk;
  const kept = keptInWords(desk);
  const done = history.done.at(-1);
  const undone = history.undone.at(-1);
  return html`<header>
    <button class="menu" aria-expanded=${sheetsOpen} @click=${openSheets}>☰ Sheets</button>
    <div class="title"><h1><button title="Rename" @click=${() => run('rename')}>${book.title}</button></h1>
      <span class="whom ${kept.trouble ? 'not' : ''}">${kept.words}${book.person ? ` · for ${book.person}` : ''}</span></div>
    <fieldset><legend>How lengths show</legend><span class="choice shown">${SYSTEMS.map(({ show, label, title }) => html`
      <button title=${title} aria-pressed=${book.settings.show === show} @click=${() => run(`show-${show}`)}>${label}</button>`)}</span></fieldset>
    <select class="roomy shown" aria-label="Inches shown to" title="Inches shown to the nearest" @change=${(event: Event) => run(`inches-${(event.target as HTMLSelectElement).value}`)}>
      ${[8, 16, 32].map((step) => html`<option value=${step} .selected=${live(book.settings.inchStep === step)}>1/${step} in</option>`)}
    </select>
    <button class="undo" title=${done ? `Undo: ${done.label}` : 'Nothing to undo'} aria-label=${done ? `Undo: ${done.label}` : 'Undo'} ?disabled=${!done} @click=${() => run('undo')}>Undo</button>
    <button class="roomy" title=${undone ? `Do again: ${undone.label}` : 'Nothing to do again'} aria-label=${undone ? `Do again: ${undone.label}` : 'Do again'} ?disabled=${!undone} @click=${() => run('redo')}>Do again</button>
    <button class="roomy" aria-pressed=${comparing} @click=${() => run('side-by-side')}>Side by side</button>
    <button @click=${() => run('commands')}>Commands</button>
  </header>`;
}
