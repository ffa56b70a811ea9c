/**
 * What cannot be laid, said before the search begins: one sentence that names
 * the piece and says what to do.
 */
import { boundsOf, crossing, isThin, laidOutline, withoutRepeats } from './outline.ts';
import { clothWidth, placesOf, waysOf } from './places.ts';
import type { Cloth, Piece } from './types.ts';

/** More points than this make no better layout of a sewing pattern, only a slower one. */
export const MOST_POINTS = 2_000;
export const MOST_PLACES = 300;
/** Different outlines: their number squared is what the search has to prepare. */
export const MOST_OUTLINES = 60;

/** Sentences for the screen; empty when everything can be laid. */
export function layFaults(pieces: readonly Piece[], cloth: Cloth): readonly string[] {
  const faults = [...clothFaults(cloth), ...pieces.flatMap((piece) => pieceFault(piece) ?? [])];
  if (faults.length > 0) return faults;
  if (pieces.every(({ count }) => count === 0)) return ['There is no piece to lay: give at least one piece a count of 1 or more.'];
  const fits = pieces.flatMap((piece) => (piece.count > 0 && (widthFault(piece, cloth) ?? lengthFault(piece, cloth))) || []);
  if (fits.length > 0) return fits;
  const places = placesOf(pieces, cloth);
  const count = places.reduce((sum, place) => sum + place.count, 0);
  if (count > MOST_PLACES) return [`These are ${count} places to lay, and ${MOST_PLACES} is the most: lay fewer pieces at a time.`];
  if (places.length > MOST_OUTLINES) return [`These are ${places.length} different outlines, and ${MOST_OUTLINES} is the most: lay fewer pieces at a time.`];
  return [];
}

function clothFaults({ width, length, gap, flaws, remnant }: Cloth): string[] {
  if (!(Number.isFinite(width) && width > 0)) return ['The cloth has no width: give its usable width.'];
  if (length !== null && !(Number.isFinite(length) && length > 0)) return ['The length of cloth at hand has to be more than nothing: give it, or leave it empty.'];
  if (!(Number.isFinite(gap) && gap >= 0)) return ['The gap between pieces cannot be less than nothing: give 0 or more.'];
  const odd = [...(remnant ? [['the remnant', remnant] as const] : []), ...flaws.map((flaw, i) => [`flaw ${i + 1}`, flaw] as const)];
  return odd.flatMap(([name, outline]) => {
    const wrong = outlineFault(withoutRepeats(outline));
    return wrong ? [`The outline of ${name} ${wrong}`] : [];
  });
}

function pieceFault({ name, outline: given, count, turns, cut }: Piece): string | null {
  const outline = withoutRepeats(given);
  if (!(Number.isInteger(count) && count >= 0)) return `“${name}” is to be cut ${count} times: give a whole number, 0 or more.`;
  if (turns.length === 0 || !turns.every(Number.isFinite)) return `“${name}” has no allowed turn: allow at least 0°, as drawn.`;
  const wrong = outlineFault(outline);
  if (wrong) return `The outline of “${name}” ${wrong}`;
  if (cut !== 'fold') return null;
  const { from, to } = boundsOf(outline);
  const slack = (to[1] - from[1]) * 1e-9;
  if (from[1] < -slack) return `“${name}” is cut on the fold but reaches beyond it: its fold edge has to be its lowest edge, at 0 across.`;
  const onFold = outline.filter(([, across]) => Math.abs(across) <= slack).length;
  return onFold < 2 ? `“${name}” is cut on the fold but has no edge there: draw half of it, with its fold edge at 0 across.` : null;
}

function outlineFault(outline: Piece['outline']): string | null {
  if (outline.some(([along, across]) => !Number.isFinite(along) || !Number.isFinite(across))) return 'has a point without a figure: give every point two lengths.';
  if (outline.length < 3) return `has too few different points: give at least 3.`;
  if (outline.length > MOST_POINTS) return `has ${outline.length} points, and ${MOST_POINTS} is the most: draw its curves with fewer points.`;
  if (isThin(outline)) return 'encloses no area: check its points.';
  const crossed = crossing(outline);
  return crossed ? `crosses or touches itself where edges ${crossed[0]} and ${crossed[1]} meet: put its points in order around it.` : null;
}

const short = (value: number): string => String(Math.round(value * 10) / 10);

function smallest(piece: Piece, cloth: Cloth, axis: 0 | 1): number {
  const [place] = placesOf([{ ...piece, count: 1 }], cloth);
  return Math.min(...waysOf(piece, cloth).map((way) => {
    const { from, to } = boundsOf(laidOutline(place!.outline, way, [0, 0]));
    return to[axis] - from[axis];
  }));
}

function widthFault(piece: Piece, cloth: Cloth): string | null {
  const needs = smallest(piece, cloth, 1);
  const room = clothWidth(cloth);
  if (needs <= room * (1 + 1e-9)) return null;
  const advice = cloth.fold === 'lengthwise' ? 'open the cloth, allow a turn, or piece it together' : 'allow a turn, choose a wider cloth, or piece it together';
  return `“${piece.name}” needs ${short(needs)} mm across and the cloth ${cloth.fold === 'lengthwise' ? 'folded ' : ''}is ${short(room)} mm wide: ${advice}.`;
}

function lengthFault(piece: Piece, cloth: Cloth): string | null {
  if (cloth.length === null) return null;
  const needs = smallest(piece, cloth, 0);
  return needs <= cloth.length * (1 + 1e-9) ? null : `“${piece.name}” needs ${short(needs)} mm of length and ${short(cloth.length)} mm is at hand: allow a turn, or take more cloth.`;
}
