import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { drawn, pictureFor, pictureStyles } from '../pictures/index.ts';
import { inBase, type Quantity, type ShowAs } from '../quantities/index.ts';
import type { Result, Working } from '../reckoning/index.ts';

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
    const result = figure(this.result);
    if (!this.call || result === undefined) return nothing;
    const given = this.call.given.flatMap(({ name, value }) => {
      const read = figure(value);
      return read === undefined ? [] : [{ name, value: read }];
    });
    const picture = pictureFor({ name: this.call.name, given, result }, this.as);
    return picture ? html`<figure>${drawn(picture)}</figure>` : nothing;
  }
}

function figure(result: Result): Quantity | string | undefined {
  if (result.kind === 'quantity') return inBase(result.value, result.unit);
  return result.kind === 'text' ? result.text : undefined;
}

declare global {
  interface HTMLElementTagNameMap { 'tt-picture': PicturePanel }
}
