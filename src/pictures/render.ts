/** A picture as SVG. */
import { svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import type { Mark, Picture } from './marks.ts';

function marked(mark: Mark): SVGTemplateResult {
  if (mark.kind === 'path') return svg`<path class=${mark.look} d=${mark.d}></path>`;
  return svg`<text class=${mark.soft === true ? 'soft' : 'label'} x=${mark.x} y=${mark.y} text-anchor=${mark.anchor}>${mark.text}</text>`;
}

/**
 * The picture as one SVG element that fills the width it is given; needs
 * `pictureStyles` where it stands. Its name for those who do not see it is `alt`.
 */
export function drawn(picture: Picture): SVGTemplateResult {
  // Texts last, so that no line runs over one.
  const texts = picture.marks.filter(({ kind }) => kind === 'text');
  const paths = picture.marks.filter(({ kind }) => kind === 'path');
  return svg`<svg class="tt-picture" viewBox="0 0 ${picture.width} ${picture.height}" role="img" aria-label=${picture.alt}>${[...paths, ...texts].map(marked)}</svg>`;
}
