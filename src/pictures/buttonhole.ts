/** The buttonhole for a button, and how far cloth reaches beyond it. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { arc, area, box, circle, line, torn } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { sayIn } from './words.ts';

export interface Buttonhole {
  /** Across the button, mm. */
  readonly diameter: number;
  /** Of a flat button, mm; without it the button is a ball. */
  readonly thickness?: number;
  readonly unit: UnitCode;
}

export function buttonhole({ diameter, thickness, unit }: Buttonhole, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const ball = thickness === undefined;
  const slit = ball ? (Math.PI * diameter) / 2 : diameter + thickness;
  const plate = new Plate();
  const start = MARGIN + 14;
  const k = fit(slit, ball ? diameter : thickness, plate.width - 2 * start, 110);
  const left = (plate.width - slit * k) / 2;
  const dims: Dim[] = [{ from: left, to: left + diameter * k, text: `${say.length(diameter)} across` }];
  plate.above(dims);
  const top = plate.y + 2;
  if (ball) {
    const radius = (diameter * k) / 2;
    plate.path('cloth', circle([left + radius, top + radius], radius));
    plate.path('new', arc([left + radius, top + radius], radius, Math.PI, 2 * Math.PI));
    plate.y = top + 2 * radius + 12;
  } else {
    plate.path('cloth', box(left, top, diameter * k, Math.max(thickness * k, 1)));
    plate.y = top + thickness * k + 12;
  }
  const slitY = plate.y + 4;
  plate.path('new', line([left, slitY], [left + slit * k, slitY]));
  for (const end of [left, left + slit * k]) plate.path('edge', line([end, slitY - 5], [end, slitY + 5]));
  const below: Dim[] = [];
  if (!ball && thickness > 0) below.push({ from: left + diameter * k, to: left + slit * k, text: `${say.length(thickness)} thick`, reach: 4 });
  below.push({ from: left, to: left + slit * k, text: `buttonhole ${say.length(slit)}`, reach: 4, look: 'new' });
  plate.below(below, slitY + 6);
  plate.notes(ball ? 'Half the way round the ball.' : 'The button from its side: across it and through it.', 'To scale.');
  return plate.done(ball
    ? `A ball button ${say.length(diameter)} across needs a buttonhole of ${say.length(slit)}, half the way round it.`
    : `A flat button ${say.length(diameter)} across and ${say.length(thickness)} thick needs a buttonhole of ${say.length(slit)}.`);
}

export interface ButtonEdge {
  /** Across the button, and the cloth beyond its edge, mm. */
  readonly diameter: number;
  readonly beyond: number;
  readonly unit: UnitCode;
}

const HEIGHT = 90;

/** A button on the centre line and the finished edge beyond it. */
export function buttonEdge({ diameter, beyond, unit }: ButtonEdge, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const stand = diameter / 2 + beyond;
  const plate = new Plate();
  const inside = Math.max(diameter * 0.8, stand * 0.3);
  const k = fit(inside + stand, diameter, plate.width - 2 * MARGIN - 20, HEIGHT - 12);
  const middle = (plate.width + (inside - stand) * k) / 2;
  const [start, edge] = [middle - inside * k, middle + stand * k];
  const radius = (diameter / 2) * k;
  plate.above([{ from: middle, to: edge, text: `stand ${say.length(stand)}`, look: 'new' }]);
  const top = plate.y;
  plate.path('cloth', area([edge, top], [edge, top + HEIGHT], ...torn(start, top, top + HEIGHT).reverse()));
  plate.path('level', line([middle, top], [middle, top + HEIGHT]));
  plate.path('piece', circle([middle, top + HEIGHT / 2], radius));
  plate.path('new', line([edge, top], [edge, top + HEIGHT]));
  const reach = HEIGHT / 2;
  const dims: Dim[] = [{ from: middle, to: middle + radius, text: `half ${say.length(diameter / 2)}`, reach }];
  if (beyond > 0) dims.push({ from: middle + radius, to: edge, text: `beyond ${say.length(beyond)}`, reach });
  plate.below(dims, top + HEIGHT);
  plate.key([['level', 'centre line'], ['new', 'finished edge']]);
  plate.notes('To scale.');
  return plate.done(`A button ${say.length(diameter)} across on the centre line, with ${say.length(beyond)} of cloth beyond it: the front reaches ${say.length(stand)} beyond the line.`);
}
