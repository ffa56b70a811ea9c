/**
 * What cannot be laid, said before the search begins: one sentence that names
 * the piece and says what to do.
 */
import { bandOf, clothLength, clothWidth, foldDepth } from './cloth.ts';
import { tiesOf } from './matching.ts';
import { boundsOf, crossing, isThin, laidOutline, withoutRepeats } from './outline.ts';
import { foldChoices, givesTwo, headToTail, placesOf } from './places.ts';
import type { Cloth, Piece, Place } from './types.ts';

/** More points than this make no better layout of a sewing pattern, only a slower one. */
export const MOST_POINTS = 2_000;
export const MOST_PLACES = 300;
/** Different outlines: their number squared is what the search has to prepare. */
export const MOST_OUTLINES = 60;
const MOST_SHRINKAGE = 0.5;

/** Sentences for the screen; empty when everything can be laid. */
export function layFaults(pieces: readonly Piece[], cloth: Cloth): readonly string[] {
  const faults = [...clothFaults(cloth), ...pieces.flatMap((piece) => pieceFault(piece) ?? [])];
  if (faults.length > 0) return faults;
  if (pieces.every(({ count }) => count === 0)) return ['There is no piece to lay: give at least one piece a count of 1 or more.'];
  const sizes = pieces.flatMap((piece) => sizeFault(piece, cloth) ?? []);
  if (sizes.length > 0) return sizes;
  const turned = pieces.flatMap((piece) => headFault(piece, cloth) ?? []);
  if (turned.length > 0) return turned;
  // Where the search may choose the fold, one that fits is enough.
  const choices = cloth.fold === 'partly' ? foldChoices(pieces, cloth).map((foldAt) => ({ ...cloth, foldAt })) : [cloth];
  if (choices.length === 0) return [`Folded partly the cloth is ${short(cloth.width / 2)} mm deep at most, and a piece on the fold needs more: open the cloth.`];
  const all = choices.map((choice) => roomFaults(pieces, choice));
  return all.find((sentences) => sentences.length === 0) ?? all[0]!;
}

/** Of the cloth's width: a piece that is shorter than this part of it was given in another unit. */
const NO_PIECE = 400;
/** Times longer or shorter than the other pieces, so that inches among millimetres are seen. */
const UNLIKE = 20;

/** What can be laid and is probably not meant: a piece far smaller or larger than the others. */
export function layCautions(pieces: readonly Piece[]): readonly string[] {
  const sizes = pieces.map(({ outline }) => {
    const { from, to } = boundsOf(outline);
    return [to[0] - from[0], to[1] - from[1]] as const;
  });
  return pieces.flatMap(({ name, count }, i) => {
    const others = sizes.filter((_, k) => k !== i && pieces[k]!.count > 0).map((size) => Math.max(...size)).sort((a, b) => a - b);
    const usual = others[Math.floor(others.length / 2)];
    const [length, width] = sizes[i]!;
    const longest = Math.max(length, width);
    if (count === 0 || usual === undefined) return [];
    if (longest * UNLIKE < usual) return [`“${name}” is ${short(length)} mm by ${short(width)} mm, far smaller than the other pieces: check the unit it is given in.`];
    return longest > usual * UNLIKE ? [`“${name}” is ${short(length)} mm by ${short(width)} mm, far larger than the other pieces: check the unit it is given in.`] : [];
  });
}

function sizeFault({ name, outline, count }: Piece, { width }: Cloth): string | null {
  const { from, to } = boundsOf(outline);
  const longest = Math.max(to[0] - from[0], to[1] - from[1]);
  if (count === 0 || longest * NO_PIECE >= width) return null;
  return `“${name}” is only ${longest.toPrecision(2)} mm long on cloth ${short(width)} mm wide: check the unit it is given in.`;
}

function roomFaults(pieces: readonly Piece[], cloth: Cloth): readonly string[] {
  const places = placesOf(pieces, cloth);
  const fits = new Set(places.flatMap((place) => widthFault(pieces[place.piece]!, place, cloth) ?? lengthFault(pieces[place.piece]!, place, cloth) ?? []));
  if (fits.size > 0) return [...fits];
  const count = places.reduce((sum, place) => sum + place.count, 0);
  if (count > MOST_PLACES) return [`These are ${count} places to lay, and ${MOST_PLACES} is the most: lay fewer pieces at a time.`];
  if (places.length > MOST_OUTLINES) return [`These are ${places.length} different outlines, and ${MOST_OUTLINES} is the most: lay fewer pieces at a time.`];
  return tiesOf(places, cloth, (place) => `“${pieces[places[place]!.piece]!.name}”`).faults;
}

function clothFaults(cloth: Cloth): string[] {
  const { width, length, gap, flaws, remnant, fold, foldAt, oneWay, repeat, shrinkage } = cloth;
  if (!(Number.isFinite(width) && width > 0)) return ['The cloth has no width: give its usable width.'];
  if (length !== null && !(Number.isFinite(length) && length > 0)) return ['The length of cloth at hand has to be more than nothing: give it, or leave it empty.'];
  if (!(Number.isFinite(gap) && gap >= 0)) return ['The gap between pieces cannot be less than nothing: give 0 or more.'];
  if (fold === 'crosswise' && oneWay) return ['Folded crosswise, the lower layer of one-way cloth would lie upside down: fold it lengthwise, or lay it open.'];
  if (fold === 'partly' && foldAt !== undefined && !(foldAt > 0 && foldAt <= width / 2)) return [`The folded part has to be more than nothing and at most half of the cloth, ${short(width / 2)} mm deep: give another depth, or leave it empty.`];
  if (repeat && ![repeat.along, repeat.across].every((every) => Number.isFinite(every) && every >= 0)) return ['The repeat of the print cannot be less than nothing: give its lengths, or 0 where it does not repeat.'];
  if (shrinkage && ![shrinkage.along, shrinkage.across].every((part) => part >= 0 && part <= MOST_SHRINKAGE)) return ['The cloth can shrink by 0 % to 50 %: give what a washed square of it has lost.'];
  const odd = [...(remnant ? [['the remnant', remnant] as const] : []), ...flaws.map((flaw, i) => [`flaw ${i + 1}`, flaw] as const)];
  return odd.flatMap(([name, outline]) => {
    const wrong = outlineFault(withoutRepeats(outline));
    return wrong ? [`The outline of ${name} ${wrong}`] : [];
  });
}

function pieceFault({ name, outline: given, count, turns, cut, matches }: Piece): string | null {
  const outline = withoutRepeats(given);
  if (!(Number.isInteger(count) && count >= 0)) return `“${name}” is to be cut ${count} times: give a whole number, 0 or more.`;
  if (turns.length === 0 || !turns.every(Number.isFinite)) return `“${name}” has no allowed turn: allow at least 0°, as drawn.`;
  const wrong = outlineFault(outline);
  if (wrong) return `The outline of “${name}” ${wrong}`;
  if (matches?.some(({ at }) => !at.every(Number.isFinite))) return `“${name}” has a match point without a figure: give it two lengths.`;
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

function headFault(piece: Piece, cloth: Cloth): string | null {
  if (cloth.fold !== 'crosswise' || piece.count === 0 || !givesTwo(piece, cloth) || headToTail(piece, cloth).length > 0) return null;
  return `“${piece.name}” may not be turned round, and folded crosswise its lower layer lies head to tail: allow a half turn, or fold the cloth lengthwise.`;
}

function smallest(place: Place, axis: 0 | 1): number {
  return Math.min(...place.ways.map((way) => {
    const { from, to } = boundsOf(laidOutline(place.outline, way, [0, 0]));
    return to[axis] - from[axis];
  }));
}

function widthFault({ name }: Piece, place: Place, cloth: Cloth): string | null {
  const needs = smallest(place, 1);
  const [from, to] = bandOf(place, cloth);
  const room = to - from;
  if (needs <= room * (1 + 1e-9)) return null;
  if (needs > room * UNLIKE) return `“${name}” needs ${short(needs)} mm across and the cloth is ${short(room)} mm wide: check the unit it is given in.`;
  if (cloth.fold === 'lengthwise') return `“${name}” needs ${short(needs)} mm across and the cloth folded is ${short(room)} mm wide: open the cloth, allow a turn, or piece it together.`;
  if (cloth.fold === 'partly') return `“${name}” needs ${short(needs)} mm across; folded partly the cloth is ${short(foldDepth(cloth))} mm wide in the fold and ${short(clothWidth(cloth) - foldDepth(cloth))} mm beside it: put the fold elsewhere, open the cloth, or allow a turn.`;
  return `“${name}” needs ${short(needs)} mm across and the cloth is ${short(room)} mm wide: allow a turn, choose a wider cloth, or piece it together.`;
}

function lengthFault({ name }: Piece, place: Place, cloth: Cloth): string | null {
  const room = clothLength(cloth);
  if (room === null) return null;
  const needs = smallest(place, 0);
  if (needs <= room * (1 + 1e-9)) return null;
  if (cloth.fold === 'crosswise') return `“${name}” needs ${short(needs)} mm of length and ${short(room)} mm is there when the cloth at hand is folded crosswise: open the cloth, or take more.`;
  return `“${name}” needs ${short(needs)} mm of length and ${short(room)} mm is at hand: allow a turn, or take more cloth.`;
}
