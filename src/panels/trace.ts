import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import type { TraceView } from './shape-parts.ts';

/**
 * Straightening a photograph by a rectangle whose sides are known. Says
 * `tt-trace-choose` {across, down or middles}, `tt-trace-straighten`,
 * `tt-trace-corners` to set them again, and `tt-trace-end`.
 */
@customElement('tt-trace')
export class TracePanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; }
    section { border: 1px solid var(--line); border-radius: var(--round); background: var(--sheet); padding: var(--gap-3); display: grid; gap: var(--gap-3); }
    .sides { display: grid; grid-template-columns: 1fr 1fr; gap: var(--gap-2); }
    .field { display: grid; gap: 2px; }
    .field input { width: 100%; min-width: 0; }
    .buttons { display: flex; flex-wrap: wrap; gap: var(--gap-2); }
    p { margin: 0; }
  `];

  @property({ attribute: false }) view: TraceView | null = null;
  @property({ type: Boolean }) readonly = false;

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    return html`<section aria-labelledby="photo"><h3 id="photo">Photograph ${view.file}</h3>
      ${view.setting ? html`
        <div class="sides">${this.#side('across', 'Rectangle, across', view.across)}${this.#side('down', 'Rectangle, down', view.down)}</div>
        <label><input type="checkbox" .checked=${live(view.middles)} @change=${(event: Event) => this.#say('tt-trace-choose', { middles: (event.target as HTMLInputElement).checked })}> Set the middles of the sides too</label>
        <p class="soft">Photograph from straight above and from far away, so that the piece lies as flat as the mat.</p>
        ${view.sentence ? html`<p class="fault" role="alert">${view.sentence}</p>` : nothing}
        <div class="buttons"><button class="main" ?disabled=${this.readonly} @click=${() => this.#say('tt-trace-straighten', {})}>Straighten</button><button @click=${() => this.#say('tt-trace-end', {})}>Leave it</button></div>`
        : html`
        <p role="status">${view.fit}</p>
        <p class="soft">The squares that are drawn have to lie on those of the mat. Drag the points to the edge of the piece and bend the edges along it.</p>
        <div class="buttons"><button @click=${() => this.#say('tt-trace-corners', {})}>Set the corners again</button><button class="main" @click=${() => this.#say('tt-trace-end', {})}>Done with the photograph</button></div>`}
    </section>`;
  }

  #side(field: 'across' | 'down', label: string, value: string): TemplateResult {
    return html`<label class="field">${label}<input name=${field} .value=${live(value)} @change=${(event: Event) => this.#say('tt-trace-choose', { [field]: (event.target as HTMLInputElement).value })}></label>`;
  }

  #say(type: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-trace': TracePanel }
}
