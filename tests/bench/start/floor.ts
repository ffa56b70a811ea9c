/** The least that shows so many cells: Lit, one element, the texts as they are. */
import { LitElement, css, html } from 'lit';

declare global {
  interface Window { readonly cells: readonly (readonly string[])[] }
}

class Floor extends LitElement {
  static override styles = css`:host { display: block } div { display: flex } span { width: 120px; height: 30px }`;

  override render() {
    return html`${window.cells.map((row) => html`<div>${row.map((text) => html`<span>${text}</span>`)}</div>`)}`;
  }
}
customElements.define('bench-floor', Floor);
document.body.append(document.createElement('bench-floor'));
