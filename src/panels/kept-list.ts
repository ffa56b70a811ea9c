/** Several of a kind kept with the workbook: which one is open, its name, another, and taking it away. */
import { css, html, nothing, type TemplateResult } from 'lit';

export interface KeptList {
  readonly id: string;
  readonly all: readonly { readonly id: string; readonly title: string }[];
}

export type KeptWish =
  | { readonly kept: 'open'; readonly id: string }
  | { readonly kept: 'title'; readonly title: string }
  | { readonly kept: 'another' | 'take away' };

export const keptStyles = css`
  .kept-list { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: end; margin: var(--gap-2) 0; }
  .kept-list label { display: grid; gap: 2px; font-size: var(--size-small); color: var(--soft); flex: 1 1 140px; }
  .kept-list :is(input, select) { color: var(--ink); min-width: 0; width: 100%; }
`;

/** @param words what one is called: "comparison" */
export function keptList({ id, all }: KeptList, words: string, ask: (wish: KeptWish) => void, readonly: boolean): TemplateResult {
  const open = all.find((each) => each.id === id);
  return html`<div class="kept-list">
    ${all.length > 1 || (all.length === 1 && !open) ? html`<label>Open<select name="kept" @change=${(event: Event) => ask({ kept: 'open', id: (event.target as HTMLSelectElement).value })}>
      ${all.map((each) => html`<option value=${each.id} ?selected=${each.id === id}>${each.title || `${words} ${each.id}`}</option>`)}${open ? nothing : html`<option value=${id} selected>new ${words}</option>`}</select></label>` : nothing}
    ${open ? html`<label>Name of it<input name="title" autocomplete="off" ?disabled=${readonly} .value=${open.title} @change=${(event: Event) => ask({ kept: 'title', title: (event.target as HTMLInputElement).value.trim() })}></label>
      <button ?disabled=${readonly} @click=${() => ask({ kept: 'another' })}>Another</button>
      <button ?disabled=${readonly} @click=${() => ask({ kept: 'take away' })}>Take away</button>` : nothing}
  </div>`;
}
