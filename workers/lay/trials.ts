/**
 * What the search may choose besides the places of the pieces: how deep cloth
 * is folded, and how the pieces lie to the print. Each choice is searched for a
 * while; the better half goes on, until one is left.
 */
import { bandOf, boundsOf, foldChoices, laidOutline, placesOf, tiesOf, type Cloth, type Piece, type Place, type Ties } from '../../src/lay/index.ts';
import type { Phases } from './grid.ts';

export interface Choice {
  readonly cloth: Cloth;
  readonly places: readonly Place[];
  readonly phases: Phases;
}

const MOST_CHOICES = 6;
const QUARTERS = 4;
const MOST_ACROSS = 3;

/** Every choice worth a trial; none when the print cannot meet within the width. */
export function choicesOf(pieces: readonly Piece[], cloth: Cloth, fits: (cloth: Cloth) => boolean): readonly Choice[] {
  const cloths = cloth.fold === 'partly' ? foldChoices(pieces, cloth).map((foldAt) => ({ ...cloth, foldAt })).filter(fits) : [cloth];
  const all = cloths.flatMap((each) => {
    const places = placesOf(pieces, each);
    return phasesOf(places, each).map((phases) => ({ cloth: each, places, phases }));
  });
  // Each takes its while: of many, some that are spread over them all.
  return all.length <= MOST_CHOICES ? all : Array.from({ length: MOST_CHOICES }, (_, i) => all[Math.round((i * (all.length - 1)) / (MOST_CHOICES - 1))]!);
}

/** The ways to lay each group to the print. Along: its largest piece at the start of the cloth, and a quarter, half and three quarters of a repeat behind. Across: where all fit. */
function phasesOf(places: readonly Place[], cloth: Cloth): readonly Phases[] {
  const ties = tiesOf(places, cloth, String);
  const still = ties.across.every((tie, p) => tie?.group !== null || fitsAcross(places[p]!, tie.offset, cloth));
  if (!still) return [];
  if (ties.groups === 0) return [[]];
  const along: number[] = [], across: number[][] = [];
  for (let group = 0; group < ties.groups; group++) {
    const first = ties.along.findIndex((tie) => tie?.group === group);
    along.push(first < 0 ? 0 : -boundsOf(laidOutline(places[first]!.outline, places[first]!.ways[0]!, [0, 0])).from[0] - ties.along[first]!.offset);
    const possible = acrossOf(group, places, ties, cloth);
    if (possible.length === 0) return [];
    across.push(possible);
  }
  const every = cloth.repeat?.along ?? 0;
  const shifts = every > 0 ? Array.from({ length: QUARTERS }, (_, k) => (k / QUARTERS) * every) : [0];
  const sides = Math.min(MOST_ACROSS, Math.max(...across.map(({ length }) => length)));
  return shifts.flatMap((shift) => Array.from({ length: sides }, (_, k) => along.map((value, group) => [value + shift, across[group]![k % across[group]!.length]!] as const)));
}

/** Phases with which every piece of the group fits across: one of them lies at the edge of where it may. */
function acrossOf(group: number, places: readonly Place[], { across }: Ties, cloth: Cloth): number[] {
  const members = places.flatMap((place, p) => (across[p]?.group === group ? [{ place, offset: across[p].offset }] : []));
  if (members.length === 0) return [0];
  const found: number[] = [];
  for (const { place, offset } of members) {
    const { low, high } = roomAcross(place, cloth);
    for (const at of [low, high]) {
      const phase = at - offset;
      const known = found.some((other) => Math.abs((phase - other) / cloth.repeat!.across - Math.round((phase - other) / cloth.repeat!.across)) < 1e-6);
      if (!known && members.every((each) => fitsAcross(each.place, phase + each.offset, cloth))) found.push(phase);
    }
  }
  return found;
}

/** Where the place's origin may lie across. */
function roomAcross(place: Place, cloth: Cloth): { low: number; high: number } {
  const { from, to } = boundsOf(laidOutline(place.outline, place.ways[0]!, [0, 0]));
  const [low, high] = place.onFold ? [0, 0] : bandOf(place, cloth);
  return place.onFold ? { low: 0, high: 0 } : { low: low - from[1], high: high - to[1] };
}

function fitsAcross(place: Place, at: number, cloth: Cloth): boolean {
  const { low, high } = roomAcross(place, cloth);
  const every = cloth.repeat!.across, slack = cloth.width * 1e-8;
  const next = at + Math.ceil((low - slack - at) / every) * every;
  return next <= high + slack;
}
