/** Puts an element where a block of cells is. By code, not by a `style` attribute: the page's policy forbids those. */
import { noChange } from 'lit';
import { Directive, PartType, directive, type ElementPart, type PartInfo } from 'lit/directive.js';

/** In CSS pixels; without a size the element has its own. */
export interface Spot {
  readonly left: number;
  readonly top: number;
  readonly width?: number;
  readonly height?: number;
}

class Placed extends Directive {
  constructor(part: PartInfo) {
    super(part);
    if (part.type !== PartType.ELEMENT) throw new Error('placed() stands on an element.');
  }

  override render(_: Spot): unknown {
    return noChange;
  }

  override update({ element }: ElementPart, [spot]: [Spot]): unknown {
    place(element as HTMLElement, spot);
    return noChange;
  }
}

export const placed = directive(Placed);

/** The box's last pixel lies on the line between cells, so that neighbouring outlines share it. */
function place({ style }: HTMLElement, { left, top, width, height }: Spot): void {
  style.left = `${left - 1}px`;
  style.top = `${top - 1}px`;
  style.width = width === undefined ? '' : `${width + 1}px`;
  style.height = height === undefined ? '' : `${height + 1}px`;
}
