import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { pictureStyles } from '../pictures/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { Result, Working } from '../reckoning/index.ts';
import { pictureOf } from './picture-of.ts';

/** The picture of one call of a sewing function, if there is one. Loaded when a working is first shown. */
@customElement('tt-picture')
export class PicturePanel extends LitElement {
  static override styles = [controls, pictureStyles, css`
    :host { display: block; }
    figure { margin: var(--gap-2) 0; }
    svg { display: block; width: 100%; height: auto; max-height: 46vh; }
  `];

  @property({ attribute: false }) call: Working['call'];
  @property({ attribute: false }) result: Result = { kind: 'empty' };
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };

  override render() {
    const picture = this.call && pictureOf(this.call, this.result, this.as);
    return picture ? html`<figure>${picture}</figure>` : nothing;
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-picture': PicturePanel }
}
