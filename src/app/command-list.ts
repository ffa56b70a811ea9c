import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { COMMANDS, keysInWords, type Command } from './commands.ts';
import type { Desk } from './desk.ts';

const GROUPS: readonly Command['group'][] = ['Workbook', 'Sheet', 'Cells', 'Show', 'Help'];

/** Every command, found by typing what one wants. Asks by `tt-run` {id}. */
@customElement('tt-command-list')
export class CommandList extends LitElement {
  static override styles = [controls, css`
    dialog { width: min(560px, calc(100vw - 24px)); }
    .find { padding: var(--gap-3) var(--gap-4); }
    .find input { width: 100%; }
    h3 { font: 600 0.75rem var(--face); letter-spacing: 0.04em; color: var(--soft); padding: var(--gap-2) var(--gap-4) 0; }
    ul { list-style: none; margin: 0; padding: 0 var(--gap-2) var(--gap-2); }
    li button { display: flex; gap: var(--gap-3); width: 100%; border: 0; background: none; text-align: left; }
    li button span { flex: 1; }
    li button.on { background: var(--chalk-wash); box-shadow: inset 3px 0 var(--chalk); }
    kbd { font: inherit; font-size: var(--size-small); color: var(--soft); white-space: nowrap; }
  `];

  @state() private sought = '';
  @state() private at = 0;
  @query('dialog') private dialog!: HTMLDialogElement;
  #desk: Desk | null = null;

  open(desk: Desk): void {
    this.#desk = desk;
    this.sought = '';
    this.at = 0;
    this.requestUpdate();
    this.dialog.showModal();
  }

  override render(): TemplateResult {
    const found = this.#found();
    const mac = /Mac|iPhone|iPad/.test(navigator.userAgent);
    return html`<dialog aria-label="All commands" @close=${() => { this.#desk = null; }}>
      <div class="find"><input type="search" aria-label="What do you want to do?" placeholder="What do you want to do?" role="combobox" aria-expanded=${found.length > 0} aria-controls="list"
        aria-activedescendant=${found[this.at] ? `c-${found[this.at]!.id}` : nothing}
        .value=${this.sought} @input=${this.#search} @keydown=${this.#key}></div>
      <div id="list" role="listbox" aria-label="Commands" ?hidden=${found.length === 0}>
        ${GROUPS.map((group) => {
          const members = found.filter((each) => each.group === group);
          return members.length ? html`<div role="group" aria-label=${group}><h3 role="presentation">${group}</h3><ul role="presentation">${members.map((each) => html`<li role="presentation">
            <button role="option" tabindex="-1" id="c-${each.id}" class=${found[this.at] === each ? 'on' : ''} aria-selected=${found[this.at] === each} @click=${() => this.#run(each)}>
              <span>${each.label}</span>${each.keys ? html`<kbd>${keysInWords(each.keys, mac)}</kbd>` : nothing}</button></li>`)}</ul></div>` : nothing;
        })}
      </div>
      <p class="find soft" role="status" ?hidden=${found.length > 0}>${found.length ? nothing : 'No command has these words. Try one word, such as row, inches or template.'}</p>
    </dialog>`;
  }

  /** In the order they are shown, so that the arrow keys go down the list. */
  #found(): readonly Command[] {
    const desk = this.#desk;
    if (!desk) return [];
    const words = this.sought.toLowerCase().split(/\s+/).filter(Boolean);
    const fitting = COMMANDS.filter((each) => (each.when?.(desk) ?? true) && words.every((word) => each.label.toLowerCase().includes(word)));
    return GROUPS.flatMap((group) => fitting.filter((each) => each.group === group));
  }

  #search(event: Event) {
    this.sought = (event.target as HTMLInputElement).value;
    this.at = 0;
  }

  #key(event: KeyboardEvent) {
    const found = this.#found();
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step && found.length) {
      this.at = (this.at + step + found.length) % found.length;
      event.preventDefault();
      void this.updateComplete.then(() => this.renderRoot.querySelector('.on')?.scrollIntoView({ block: 'nearest' }));
    } else if (event.key === 'Enter' && !event.isComposing && found[this.at]) {
      event.preventDefault();
      this.#run(found[this.at]!);
    }
  }

  #run(each: Command) {
    this.dialog.close();
    this.dispatchEvent(new CustomEvent('tt-run', { detail: { id: each.id }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-command-list': CommandList }
}
