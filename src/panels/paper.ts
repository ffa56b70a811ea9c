import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { pictureStyles } from '../pictures/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import { layPaperStyles, layPlanPages, layScalePages } from './lay-paper.ts';
import { layPictureStyles } from './lay-picture.ts';
import type { PaperHead, Printed } from './paper-parts.ts';
import { curvePages } from './paper-scale.ts';
import { sheetPages } from './paper-sheet.ts';
import { shoppingPages } from './paper-shopping.ts';
import { paperStyles } from './paper-styles.ts';
import { ticketPage } from './paper-ticket.ts';

/** What is printed, or how it will look. Plain: no part of it can be worked. */
@customElement('tt-paper')
export class PaperPanel extends LitElement {
  static override styles = [pictureStyles, layPictureStyles, paperStyles, layPaperStyles];

  @property({ attribute: false }) pages: readonly Printed[] = [];
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };

  /** At once: a browser that is about to print waits for nothing. */
  showNow(pages: readonly Printed[], as: ShowAs): void {
    this.pages = pages;
    this.as = as;
    this.performUpdate();
  }

  override render(): TemplateResult {
    return html`${this.pages.map((page) => html`<article>${this.#page(page)}</article>`)}`;
  }

  #page(page: Printed): TemplateResult | TemplateResult[] {
    switch (page.what) {
      case 'sheet': return sheetPages(page, head);
      case 'ticket': return ticketPage(page, this.as, head);
      case 'shopping': return shoppingPages(page, head);
      case 'lay plan': return layPlanPages(page, head);
      case 'lay to scale': return layScalePages(page, head);
      case 'curve': return curvePages(page, head);
    }
  }
}

const head = ({ person, date }: PaperHead, title: string): TemplateResult =>
  html`<header class="head"><h1>${title}</h1><span>${person ? `for ${person}` : ''}</span><span>${date}</span></header>`;

declare global {
  interface HTMLElementTagNameMap { 'tt-paper': PaperPanel }
}
