/** Ring sectors on cloth: the box that a piece of a circle skirt takes, and the fewest pieces that fit a width. */
import { degrees, mm, plain } from './define.ts';
import type { Pad } from './define.ts';

interface Box {
  readonly along: number;
  readonly across: number;
}

export interface Pieces extends Box {
  readonly pieces: number;
}

/** More joins than this are no longer a circle skirt but gores. */
const MOST = 16;

/**
 * The box round a ring sector whose first straight edge points at `turn` (in
 * radians from the length of the cloth), with strips of seam allowance along
 * both straight edges.
 */
export function sectorBox(inner: number, outer: number, angle: number, allowance: number, turn: number): Box {
  const xs: number[] = [];
  const ys: number[] = [];
  const mark = (radius: number, at: number, aside: number): void => {
    xs.push(radius * Math.cos(at) - aside * Math.sin(at));
    ys.push(radius * Math.sin(at) + aside * Math.cos(at));
  };
  for (const radius of [inner, outer]) {
    for (const aside of [0, -allowance]) mark(radius, turn, aside);
    for (const aside of [0, allowance]) mark(radius, turn + angle, aside);
  }
  // Where the outer edge runs along or across the cloth it reaches furthest.
  const quarter = Math.PI / 2;
  for (let n = Math.ceil(turn / quarter - 1e-9); n * quarter <= turn + angle + 1e-9; n += 1) mark(outer, n * quarter, 0);
  return { along: Math.max(...xs) - Math.min(...xs), across: Math.max(...ys) - Math.min(...ys) };
}

/** The ways a piece is laid: a straight edge or its middle along or across the cloth. */
function boxes(inner: number, outer: number, angle: number, allowance: number): Box[] {
  return [0, -angle / 2].flatMap((turn) => {
    const box = sectorBox(inner, outer, angle, allowance, turn);
    return [box, { along: box.across, across: box.along }];
  });
}

/** The fewest equal pieces that fit, laid the way that takes least length. */
export function fewestPieces(inner: number, outer: number, part: number, width: number, allowance: number, pad: Pad): Pieces {
  for (let pieces = Math.ceil(part - 1e-9); pieces <= MOST; pieces += 1) {
    const angle = (2 * Math.PI * part) / pieces;
    // A whole circle in one piece has no straight edges.
    const whole = angle > 2 * Math.PI - 1e-9;
    const fitting = boxes(inner, outer, Math.min(angle, 2 * Math.PI), whole ? 0 : allowance).filter((box) => box.across <= width * (1 + 1e-9));
    const cloth = (box: Box): number => Math.ceil(pieces / Math.floor(width / box.across + 1e-9)) * box.along;
    const [best] = fitting.sort((a, b) => cloth(a) - cloth(b));
    if (best === undefined) continue;
    pad.length('radius of the hem', [], outer);
    const each = pad.angle('angle of each of the fewest equal pieces that fit the width', ['360° × ', plain(part), ' ÷ ', plain(pieces)], (360 * part) / pieces);
    pad.number('the number of them', [degrees(each), ' each, on ', mm(width)], pieces);
    return { pieces, ...best };
  }
  return pad.refuse(`Cloth ${pad.say(width)} wide is too narrow for this skirt even in ${MOST} pieces, whose hem lies ${pad.say(outer)} from the centre.`);
}

/**
 * The greatest outer radius of a sector that lies on the width in one piece;
 * `inner` when not even a ring of no depth does. Every corner of the box moves
 * outwards with the radius, so there is one such radius, found by halving.
 */
export function widestOuter(inner: number, part: number, width: number, allowance: number): number {
  const angle = 2 * Math.PI * part;
  const edge = angle > 2 * Math.PI - 1e-9 ? 0 : allowance;
  const lies = (outer: number): boolean => boxes(inner, outer, Math.min(angle, 2 * Math.PI), edge).some((box) => box.across <= width);
  if (part > 1 + 1e-9 || !lies(inner)) return inner;
  let [low, high] = [inner, inner + width];
  while (lies(high)) [low, high] = [high, 2 * high];
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (lies(middle)) low = middle;
    else high = middle;
  }
  return low;
}
