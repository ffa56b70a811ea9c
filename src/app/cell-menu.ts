import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { COMMANDS, keysInWords, type Command, type MenuPart } from './commands.ts';
import type { Desk } from './desk.ts';

const EDGE = 8;

/**
 * The commands for what is selected, beside it: those of the command table that
 * are marked for a cell, a row or a column. Asks by `tt-run` {id}; sends
 * `tt-menu-left` when it closed without one.
 */
@customElement('tt-cell-menu')
export class CellMenu extends LitElement {
  static override styles = [controls, css`
    .menu {
      position: fixed; inset: auto; margin: 0; padding: var(--gap-1); min-width: 230px; max-width: calc(100vw - 16px); max-height: calc(100dvh - 16px); overflow-y: auto;
      border: 1px solid var(--rule); border-radius: var(--round); background: var(--paper); color: var(--ink); box-shadow: var(--shadow);
    }
    h2 { font: 600 0.78rem var(--face); color: var(--soft); padding: var(--gap-1) var(--gap-3); overflow-wrap: anywhere; }
    button { display: flex; gap: var(--gap-4); align-items: baseline; width: 100%; border: 0; border-radius: 5px; background: none; text-align: left; }
    button span { flex: 1; }
    button:focus { background: var(--chalk-wash); outline: 2px solid var(--chalk); outline-offset: -2px; }
    kbd { font: inherit; font-size: var(--size-small); color: var(--soft); white-space: nowrap; }
    @media (pointer: coarse) { button { min-height: 44px; align-items: center; } }
  `];

  @state() private commands: readonly Command[] = [];
  @state() private heading = '';
  @query('.menu') private menu!: HTMLElement;
  #ran = false;
  #pressed = false;

  /** @param x, y where it was asked for, in the window */
  async open(desk: Desk, part: MenuPart, heading: string, x: number, y: number): Promise<void> {
    const here = COMMANDS.filter((each) => each.menu?.includes(part) && (each.when?.(desk) ?? true));
    // What the browser does by its own keys is what most come for.
    this.commands = [...here.filter(({ native }) => native), ...here.filter(({ native }) => !native)];
    this.heading = heading;
    this.#ran = false;
    this.#pressed = false;
    await this.updateComplete;
    this.menu.showPopover();
    window.addEventListener('pointerdown', this.#elsewhere, { capture: true });
    const { width, height } = this.menu.getBoundingClientRect();
    const seen = window.visualViewport ?? { width: innerWidth, height: innerHeight };
    const { style } = this.menu;
    style.left = `${Math.max(EDGE, Math.min(x, seen.width - width - EDGE))}px`;
    style.top = `${Math.max(EDGE, Math.min(y, seen.height - height - EDGE))}px`;
    this.#buttons[0]?.focus();
  }

  override render(): TemplateResult {
    const mac = /Mac|iPhone|iPad/.test(navigator.userAgent);
    return html`<div class="menu" popover="manual" @toggle=${this.#toggled} @keydown=${this.#key} @focusout=${this.#left} @pointerdown=${() => { this.#pressed = true; }} @contextmenu=${(event: Event) => event.preventDefault()}>
      <h2 id="of">${this.heading}</h2>
      <div role="menu" aria-labelledby="of">${this.commands.map((each) => html`
        <button role="menuitem" tabindex="-1" @click=${(event: MouseEvent) => this.#run(each, event)}><span>${each.label}</span>${
          each.keys ? html`<kbd>${keysInWords(each.keys, mac)}</kbd>` : nothing}</button>`)}</div>
    </div>`;
  }

  get #buttons(): HTMLElement[] {
    return [...this.renderRoot.querySelectorAll('button')];
  }

  #key(event: KeyboardEvent) {
    const buttons = this.#buttons;
    const at = buttons.indexOf((this.renderRoot as ShadowRoot).activeElement as HTMLElement);
    if (event.key === 'Escape') {
      event.preventDefault();
      event.stopPropagation();
      this.menu.hidePopover();
      return;
    }
    const to = { ArrowDown: (at + 1) % buttons.length, ArrowUp: (at <= 0 ? buttons.length : at) - 1, Home: 0, End: buttons.length - 1 }[event.key]
      ?? (event.key === 'Tab' ? -1 : this.#lettered(event, buttons, at));
    if (to === undefined) return;
    event.preventDefault();
    if (to < 0) this.menu.hidePopover();
    else buttons[to]?.focus();
  }

  /** The next command that begins with a letter. */
  #lettered({ key, ctrlKey, metaKey, altKey }: KeyboardEvent, buttons: readonly HTMLElement[], at: number): number | undefined {
    if (key.length !== 1 || key === ' ' || ctrlKey || metaKey || altKey) return undefined;
    const found = [...buttons.keys()].map((each) => (at + 1 + each) % buttons.length).find((each) => buttons[each]!.textContent!.trim().toLowerCase().startsWith(key.toLowerCase()));
    return found;
  }

  #run(each: Command, click: MouseEvent) {
    // The finger whose holding brought the menu is lifted over it: that chooses nothing. A key's click has no count.
    if (click.detail > 0 && !this.#pressed) return;
    this.#ran = true;
    this.menu.hidePopover();
    this.dispatchEvent(new CustomEvent('tt-run', { detail: { id: each.id }, bubbles: true, composed: true }));
  }

  /**
   * Closed by hand and not by the browser ("auto"): that takes the lifting of
   * the finger which asked for the menu for a press beside it.
   */
  readonly #elsewhere = (event: PointerEvent): void => {
    if (!event.composedPath().includes(this.menu)) this.menu.hidePopover();
  };

  readonly #left = ({ relatedTarget }: FocusEvent): void => {
    if (relatedTarget instanceof Node && !this.menu.contains(relatedTarget) && this.menu.matches(':popover-open')) this.menu.hidePopover();
  };

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('pointerdown', this.#elsewhere, { capture: true });
  }

  #toggled(event: ToggleEvent) {
    if (event.newState === 'closed') window.removeEventListener('pointerdown', this.#elsewhere, { capture: true });
    if (event.newState === 'closed' && !this.#ran) this.dispatchEvent(new CustomEvent('tt-menu-left', { bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-cell-menu': CellMenu }
}
