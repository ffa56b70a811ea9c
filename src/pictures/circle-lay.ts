/** The pieces of a circle skirt laid on their cloth, in rows without nesting, as CIRCLE.PIECES and CIRCLE.CLOTH count them. */
import { inBase, isFault } from '../quantities/index.ts';
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { functionNamed, work } from '../sewing/index.ts';
import { extentOf } from './circle.ts';
import type { Extent } from './circle.ts';
import { area, box, line, polar, sector } from './draw.ts';
import type { Point } from './draw.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import { fit } from './scale.ts';
import { circleWords, counted, inTwo, sayIn, sentences } from './words.ts';

export interface CircleLay {
  /** All mm: to the waist, from there to the hem, usable width of the cloth, and the allowance at straight edges. */
  readonly radius: number;
  readonly length: number;
  readonly part: number;
  readonly width: number;
  readonly allowance: number;
  /** How much of the length is hem, mm. */
  readonly hem?: number;
  readonly unit: UnitCode;
}

const TURN = 2 * Math.PI;

interface Piece {
  /** The straight edges, from the length of the cloth. */
  readonly from: number;
  readonly to: number;
  readonly extent: Extent;
}

interface Lay {
  readonly piece: Piece;
  readonly pieces: number;
  readonly side: number;
  readonly rows: number;
  readonly cloth: number;
}

/** Undefined where the skirt does not come out of this cloth. */
export function circleOnCloth(input: CircleLay, as: ShowAs): Picture | undefined {
  const lay = layOf(input);
  if (lay === undefined) return undefined;
  const { radius, length, part, width, allowance, hem = 0 } = input;
  const { piece, pieces, side, rows, cloth } = lay;
  const say = sayIn(input.unit, as);
  const across = piece.extent.bottom - piece.extent.top;
  const along = piece.extent.right - piece.extent.left;

  const widthText = ['width', ...inTwo(say.length(width))];
  const room = sideRoom([{ lines: widthText, brace: true }]);
  const plate = new Plate(widthFor(120, room));
  const k = fit(cloth, width, plate.width - 2 * MARGIN - room - 10, 190);
  const left = MARGIN + 8;
  plate.above([{ from: left, to: left + cloth * k, text: `${say.length(cloth)} of cloth` }]);
  const top = plate.y;
  const [clothLength, clothWidth] = [cloth * k, width * k];
  plate.path('cloth', box(left, top, clothLength, clothWidth));
  for (const selvedge of [top + 2, top + clothWidth - 2]) if (clothWidth > 12) plate.path('thin', line([left, selvedge], [left + clothLength, selvedge]));
  for (let n = 0; n < pieces; n += 1) {
    const [row, place] = [Math.floor(n / side), n % side];
    const centre: Point = [left + (row * along - piece.extent.left) * k, top + (place * across - piece.extent.top) * k];
    draw(plate, piece, centre, radius * k, (radius + length) * k, allowance * k);
  }
  const bottom = plate.beside('right', left + clothLength, [{ y: top + clothWidth / 2, lines: widthText, brace: [top, top + clothWidth] }], top, top + clothWidth);
  plate.y = Math.max(bottom, top + clothWidth) + 4;

  const whole = piece.to - piece.from > TURN - 1e-9;
  const joins = whole ? 'no joins' : counted(pieces, 'join');
  const key: (readonly [Look, string])[] = [];
  if (!whole) key.push(['new', `edge that is joined${allowance > 0 ? `, allowance ${say.length(allowance)}` : ''}`]);
  if (!whole && allowance > 0) key.push(['seam', 'seam line']);
  plate.key(key);
  const name = `${circleWords(part, say)} in ${pieces === 1 ? 'one piece' : `${pieces} equal pieces`}, ${joins}`;
  plate.notes(`${name.slice(0, 1).toUpperCase()}${name.slice(1)}.`, `Radius ${say.length(radius)}, length ${say.length(length - hem)}${hem > 0 ? ` and ${say.length(hem)} of hem` : ''}.`, 'To scale, selvedges above and below.');
  return plate.done(sentences(
    `A circle skirt on cloth ${say.length(width)} wide: ${name}, in ${counted(rows, 'row')} on ${say.length(cloth)} of cloth.`,
    `Radius ${say.length(radius)}, length ${say.length(length - hem)}${hem > 0 ? ` and ${say.length(hem)} of hem` : ''}.`,
    !whole && allowance > 0 && `The straight edges have an allowance of ${say.length(allowance)}.`,
  ));
}

function draw(plate: Plate, { from, to }: Piece, centre: Point, inner: number, outer: number, allowance: number): void {
  plate.path('piece', sector(centre, inner, outer, from, to));
  if (to - from > TURN - 1e-9) return;
  for (const [edge, away] of [[from, -1], [to, 1]] as const) {
    const aside = (point: Point): Point => polar(point, allowance, edge + (away * Math.PI) / 2);
    const [waist, hem] = [polar(centre, inner, edge), polar(centre, outer, edge)];
    if (allowance > 0) {
      plate.path('piece', area(waist, hem, aside(hem), aside(waist)));
      plate.path('seam', line(waist, hem));
    }
    plate.path('new', line(aside(waist), aside(hem)));
  }
}

/**
 * How the pieces lie. Their number and the cloth are those of the functions;
 * the way a piece is turned is the one that takes that cloth.
 */
function layOf({ radius, length, part, width, allowance, unit }: CircleLay): Lay | undefined {
  const values = [inBase(radius, unit), inBase(length, unit), inBase(part, ''), inBase(width, unit), inBase(allowance, unit)];
  const figure = (name: string): number | undefined => {
    const outcome = work(functionNamed(name)!, values);
    return !isFault(outcome) && typeof outcome.value === 'object' && 'value' in outcome.value ? outcome.value.value : undefined;
  };
  const [pieces, cloth] = [figure('CIRCLE.PIECES'), figure('CIRCLE.CLOTH')];
  if (pieces === undefined || cloth === undefined) return undefined;
  const angle = Math.min((TURN * part) / pieces, TURN);
  for (const from of [0, -angle / 2, TURN / 4, TURN / 4 - angle / 2]) {
    const piece = pieceAt(radius, radius + length, from, angle, allowance);
    const across = piece.extent.bottom - piece.extent.top;
    const side = Math.floor(width / across + 1e-9);
    if (side < 1) continue;
    const rows = Math.ceil(pieces / side);
    if (Math.abs(rows * (piece.extent.right - piece.extent.left) - cloth) <= 1e-6 * cloth) return { piece, pieces, side, rows, cloth };
  }
  return undefined;
}

function pieceAt(inner: number, outer: number, from: number, angle: number, allowance: number): Piece {
  const to = from + angle;
  const strip = angle > TURN - 1e-9 ? 0 : allowance;
  const corners = [inner, outer].flatMap((radius) => [0, strip].flatMap((aside): Point[] => [
    polar(polar([0, 0], radius, from), aside, from - TURN / 4),
    polar(polar([0, 0], radius, to), aside, to + TURN / 4),
  ]));
  return { from, to, extent: extentOf(corners, outer, from, to) };
}
