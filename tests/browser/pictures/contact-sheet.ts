/** The contact sheet: all pictures on one page, to be looked at in light, dark and print. `npm start`, then open this folder's contact-sheet.html. */
import { css, html, render, type TemplateResult } from 'lit';
import { tokens } from '../../../src/look/index.ts';
import { drawn, pictureStyles } from '../../../src/pictures/index.ts';
import { FAMILIES, type Family } from './sheet-entries.ts';

const page = css`
  h2 { font-size: 16px; margin: 16px; }
  .family { display: grid; grid-template-columns: repeat(4, 322px); gap: 14px; padding: 8px 16px; align-items: start; width: max-content; background: var(--paper); }
  figure { margin: 0; }
  figcaption { font-size: 12px; color: var(--soft); margin-bottom: 4px; }
  h2 { break-after: avoid; }
  figure { break-inside: avoid; }
  @media print { .family { background: #fff; } figcaption { color: #000; } }
`;

/** What the page needs to look as the app does. */
export const sheetStyles = [tokens, pictureStyles, page].map(({ styleSheet }) => styleSheet!);

export function familySheet({ name, entries }: Family): TemplateResult {
  return html`<div class="family" id=${name}>${entries.map(({ caption, picture }) => html`<figure><figcaption>${caption}</figcaption>${drawn(picture)}</figure>`)}</div>`;
}

const main = document.querySelector<HTMLElement>('#contact-sheet');
if (main) {
  document.adoptedStyleSheets = sheetStyles;
  render(FAMILIES.map((family) => html`<h2>${family.name}</h2>${familySheet(family)}`), main);
}
