import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import './board.ts';
import './trace.ts';
import type { ShapeRow, ShapesView } from './shape-parts.ts';

/**
 * Drawn shapes: the list, the board with the one that is open, and its figures.
 * Says `tt-shape-new`, `tt-shape-open` {id}, `tt-shape-file` {file},
 * `tt-shape-photo` {file}, `tt-shape-name` {name}, `tt-shape-step` {step},
 * `tt-shape-type` {part, field, text}, `tt-shape-straight` {at}, `tt-shape-mark`
 * {mark}, `tt-shape-undo`, `tt-shape-redo`, `tt-shape-take-away`, `tt-close`, and
 * what its board and `tt-trace` say.
 */
@customElement('tt-shapes')
export class ShapesPanel extends LitElement {
  static override shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: false };
  static override styles = [controls, css`
    :host { display: block; height: 100%; container-type: inline-size; }
    header { display: flex; flex-wrap: wrap; align-items: baseline; gap: var(--gap-1) var(--gap-3); padding: var(--gap-2) var(--gap-4); border-bottom: 1px solid var(--line); }
    header button { margin-left: auto; }
    h2:focus { outline: none; }
    .parts { display: grid; grid-template-columns: 250px minmax(0, 1fr) 330px; gap: var(--gap-4); padding: var(--gap-3) var(--gap-4); align-items: start; }
    .parts > * { display: grid; gap: var(--gap-3); min-width: 0; }
    ul { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-1); }
    .list button { width: 100%; text-align: start; display: grid; }
    .list button[aria-current='true'] { border-color: var(--chalk); box-shadow: inset 3px 0 var(--chalk); background: var(--chalk-wash); }
    .in { display: grid; gap: var(--gap-2); }
    .in > * { width: 100%; }
    .file { position: relative; display: grid; border: 1px solid var(--rule); border-radius: var(--round); background: var(--sheet); min-height: var(--hand); padding: 4px 12px; cursor: pointer; }
    .file:hover { background: var(--chalk-wash); }
    .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; width: 100%; }
    .file:focus-within { outline: 2px solid var(--chalk); outline-offset: 1px; }
    .tools { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
    tt-board { height: clamp(300px, calc(100vh - 240px), 760px); }
    table { border-collapse: collapse; width: 100%; }
    th, td { text-align: start; padding: 2px 4px; font-weight: 400; }
    th { font-size: var(--size-small); color: var(--soft); }
    tbody th { color: var(--ink); font-size: var(--size); }
    tr.chosen th { font-weight: 600; box-shadow: inset 3px 0 var(--chalk); }
    td input { width: 5.6em; }
    .scroll { max-height: clamp(220px, calc(100vh - 330px), 640px); overflow: auto; }
    p { margin: 0; }
    form { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: end; }
    .field { display: grid; gap: 2px; }
    .field input { width: 100%; }
    @container (max-width: 1000px) { .parts { grid-template-columns: 220px minmax(0, 1fr); } .figures { grid-column: 1 / -1; } }
    @container (max-width: 620px) { .parts { grid-template-columns: minmax(0, 1fr); padding: var(--gap-2); } header { padding: var(--gap-2); } header .soft { display: none; } tt-board { height: 58vh; } }
  `];

  @property({ attribute: false }) view: ShapesView | null = null;
  @state() private mark = '';
  @query('h2') private heading!: HTMLElement;

  override focus(): void {
    this.heading.focus();
  }

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    return html`
      <header><h2 tabindex="-1">Drawn shapes</h2><span class="soft">outlines that a list of pieces calls by their names</span><button @click=${() => this.#say('tt-close', {})}>Back to the cells</button></header>
      <div class="parts">
        <div class="choose">${this.#list(view)}</div>
        <div class="drawing">${this.#drawing(view)}</div>
        <div class="figures">${view.trace ? html`<tt-trace .view=${view.trace} ?readonly=${view.readonly}></tt-trace>` : nothing}${this.#figures(view)}</div>
      </div>`;
  }

  #list({ shapes, id, readonly, sentences }: ShapesView): TemplateResult {
    return html`
      <div class="in">
        <button ?disabled=${readonly} @click=${() => this.#say('tt-shape-new', {})}>Draw on the board</button>
        ${this.#fileButton('Bring in an SVG drawing', '.svg,image/svg+xml', 'tt-shape-file', readonly)}
        ${this.#fileButton('Trace a photograph', 'image/*', 'tt-shape-photo', readonly)}
      </div>
      ${sentences.length > 0 ? html`<ul class="note" role="status">${sentences.map((sentence) => html`<li>${sentence}</li>`)}</ul>` : html`<p class="soft" role="status">The files stay on this machine; a photograph is looked at and not kept.</p>`}
      ${shapes.length > 0 ? html`<ul class="list" aria-label="Shapes of this workbook">${shapes.map((shape) => html`<li><button aria-current=${shape.id === id} @click=${() => this.#say('tt-shape-open', { id: shape.id })}><span>${shape.name}</span><span class="soft">${shape.about}</span></button></li>`)}</ul>` : nothing}`;
  }

  #fileButton(label: string, accept: string, type: string, disabled: boolean): TemplateResult {
    return html`<label class="file">${label}<input type="file" accept=${accept} ?disabled=${disabled} @change=${(event: Event) => {
      const field = event.target as HTMLInputElement;
      const file = field.files?.[0];
      field.value = '';
      if (file) this.#say(type, { file });
    }}></label>`;
  }

  #drawing(view: ShapesView): TemplateResult {
    if (!view.board) return html`<p class="note">A shape is the outline of a pattern piece. Draw one on the board, bring one in from a drawing, or trace a photograph of the piece on a cutting mat; then write its name under Shape in a list of pieces.</p>`;
    const { chosen, trace } = view;
    const setting = trace?.setting === true;
    return html`
      ${setting ? nothing : html`<div class="tools" role="toolbar" aria-label="Drawing">
        <button ?disabled=${view.readonly || !view.bendable} @click=${() => chosen && this.#say('tt-board-add', { part: chosen })}>Add a point after it</button>
        <button ?disabled=${view.readonly || !view.bendable} @click=${() => chosen && this.#say('tt-shape-straight', { at: chosen.at })}>Straight edge</button>
        <button ?disabled=${view.readonly || !view.removable} @click=${() => chosen && this.#say('tt-board-remove', { part: chosen })}>Take it away</button>
        <label>Step <select @change=${(event: Event) => this.#say('tt-shape-step', { step: (event.target as HTMLSelectElement).value })}>${view.steps.map((step) => html`<option ?selected=${step === view.step}>${step}</option>`)}</select></label>
        <button ?disabled=${view.readonly || !view.canUndo} @click=${() => this.#say('tt-shape-undo', {})}>Undo</button>
        <button ?disabled=${view.readonly || !view.canRedo} @click=${() => this.#say('tt-shape-redo', {})}>Redo</button>
      </div>`}
      <tt-board .view=${view.board} ?readonly=${view.readonly}></tt-board>
      ${setting ? html`<p class="soft">Drag the four squares to the corners of a rectangle whose sides you know: the printed field of a cutting mat, say. With the keys: Tab to a corner, then the arrows; Shift goes ten times as far.</p>`
        : html`<p class="soft">Round points are corners; dashed ones bend their edge; the squares are the ends of the grain line. With the keys: Tab to a point, then the arrows by a step, with Shift by ten; Insert adds a point, Delete takes it away.</p>`}`;
  }

  #figures(view: ShapesView): TemplateResult | typeof nothing {
    if (view.name === '' || view.trace?.setting) return nothing;
    return html`
      <label class="field">Name <input name="name" maxlength="60" .value=${live(view.name)} ?disabled=${view.readonly} @change=${(event: Event) => this.#say('tt-shape-name', { name: (event.target as HTMLInputElement).value })}></label>
      <p>${view.about}</p>
      <div class="scroll" tabindex="0" role="group" aria-label="Figures of the shape"><table>
        <thead><tr><td></td><th scope="col">Across</th><th scope="col">Down</th><th scope="col">Bends out</th></tr></thead>
        <tbody>${view.rows.map((row) => this.#row(row, view))}</tbody>
      </table></div>
      <form @submit=${this.#addMark}>
        <label class="field">A mark that meets the print <input name="mark" maxlength="60" .value=${live(this.mark)} ?disabled=${view.readonly} @input=${(event: Event) => { this.mark = (event.target as HTMLInputElement).value; }}></label>
        <button ?disabled=${view.readonly || this.mark.trim() === ''}>Add the mark</button>
      </form>
      <button ?disabled=${view.readonly} @click=${() => this.#say('tt-shape-take-away', {})}>Take the shape away</button>`;
  }

  #row(row: ShapeRow, { chosen, readonly }: ShapesView): TemplateResult {
    const field = (name: 'x' | 'y' | 'bend', value: string, words: string): TemplateResult => html`<td><input aria-label="${row.label}, ${words}" .value=${live(value)} ?disabled=${readonly}
      @focus=${() => this.#say('tt-board-pick', { part: row.part })} @change=${(event: Event) => this.#say('tt-shape-type', { part: row.part, field: name, text: (event.target as HTMLInputElement).value })}></td>`;
    return html`<tr class=${chosen?.kind === row.part.kind && chosen.at === row.part.at ? 'chosen' : ''}><th scope="row">${row.label}</th>
      ${field('x', row.x, 'across')}${field('y', row.y, 'down')}${row.bend === null ? html`<td></td>` : field('bend', row.bend, 'how far its edge bends out')}</tr>`;
  }

  #addMark(event: Event): void {
    event.preventDefault();
    const mark = this.mark.trim();
    this.mark = '';
    if (mark !== '') this.#say('tt-shape-mark', { mark });
  }

  #say(type: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-shapes': ShapesPanel }
}
