/** What a kept layout takes and leaves. It is found and proven elsewhere; a figure that may be out of date is never given. */
import { define, mm, share } from './define.ts';
import type { Pad } from './define.ts';
import type { KeptLayout, LayoutFigures } from './kept-layout.ts';

const LAYOUT = { name: 'layout', kind: 'layout', about: 'the name of a lay whose layout was kept' } as const;

function fresh({ figures }: KeptLayout, pad: Pad): LayoutFigures {
  const { name, state, length, unit } = figures;
  pad.showIn(unit);
  if (state === 'older') pad.refuse(`The layout “${name}”, ${pad.say(length)} long, is older than its pieces: lay them again and keep the layout.`);
  if (state === 'lost') pad.refuse(`The pieces of the layout “${name}” can no longer be read, so that nobody knows whether it still fits: show the lay its list of pieces again.`);
  return figures;
}

const SOURCE = 'worked out by the search for layouts; a layout is kept only after a proof that its pieces lie within the cloth and none on another';

export const LAY_FUNCTIONS = [
  define({
    name: 'LAY.LENGTH',
    topic: 'cloth',
    about: 'The length of cloth that a kept layout takes; what the cloth loses in washing is in it where the lay was told of it.',
    asks: ['how much cloth does my layout need', 'length of a lay', 'cloth for the cutting layout'],
    args: [LAYOUT],
    gives: 'length',
    rule: 'from the cut end to the furthest piece, of the cloth opened out',
    source: SOURCE,
    example: '=LAY.LENGTH("dress")',
    work([layout], pad) {
      const { length, width } = fresh(layout, pad);
      return pad.length('cloth to cut for the kept layout', ['on cloth ', mm(width), ' wide'], length);
    },
  }),
  define({
    name: 'LAY.LEFT',
    topic: 'cloth',
    about: 'The largest rectangle of cloth that a kept layout leaves: its length, its width or its area.',
    asks: ['what is left of the cloth', 'largest remnant of a layout', 'leftover cloth'],
    args: [LAYOUT, { name: 'what', kind: 'choice', about: 'length, along the cloth; width, across it; or area', choices: ['length', 'width', 'area'], usual: 'length' }],
    gives: 'figure',
    rule: 'of the largest free rectangle that the search found, or of what lies behind the pieces where a length of cloth is at hand',
    source: SOURCE,
    example: '=LAY.LEFT("dress", "area")',
    work([layout, what], pad) {
      const { name, left } = fresh(layout, pad);
      if (left === null) return pad.refuse(`The layout “${name}” was laid on cloth of no given length, so that it leaves nothing: give the lay the length at hand.`);
      if (what === 'area') return pad.area('the rectangle that is left', [mm(left.length), ' × ', mm(left.width)], left.length * left.width);
      return pad.length(what === 'length' ? 'the rectangle that is left, along the cloth' : 'the rectangle that is left, across the cloth', [mm(left.length), ' by ', mm(left.width)], left[what]);
    },
  }),
  define({
    name: 'LAY.DENSITY',
    topic: 'cloth',
    about: 'The part of the cloth used that the pieces of a kept layout cover.',
    asks: ['how well does the layout use the cloth', 'waste of a layout', 'share of cloth used'],
    args: [LAYOUT],
    gives: 'percent',
    rule: 'area of all pieces ÷ area of the cloth used',
    source: SOURCE,
    example: '=LAY.DENSITY("dress")',
    work([layout], pad) {
      const { density, length, width } = fresh(layout, pad);
      pad.length('cloth used', ['on cloth ', mm(width), ' wide'], length);
      return pad.percent('of it covered by pieces', [share(density)], density);
    },
  }),
];
