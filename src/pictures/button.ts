/** Buttons down a stand: their places, the gap, and the levels that should have one. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { box, circle, line } from './draw.ts';
import type { Look, Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit } from './scale.ts';
import { LINE, shortened } from './text.ts';
import { counted, inTwo, sayIn, sentences } from './words.ts';
import type { Say } from './words.ts';

export interface ButtonStand {
  /** Places of the first and the last button, mm from the point they are measured from, which is drawn where it lies near. */
  readonly first: number;
  readonly last: number;
  readonly buttons: number;
  /** Where each button is, in order, when they are not even. */
  readonly places?: readonly number[];
  /** One to mark, 1 for the first. */
  readonly marked?: number;
  /** Levels that should have a button, such as the bust, mm from the same point. */
  readonly levels?: readonly { readonly name: string; readonly at: number }[];
  readonly unit: UnitCode;
}

const STAND = 30;
const HEIGHT = 230;
/** A name of the user's that is longer is cut. */
const NAME_ROOM = 90;
/** More levels than this cannot be labelled apart. */
const MOST_LEVELS = 6;

/** Places to write down: as many as have room, the first, the last and the marked one among them. */
function written(buttons: number, gap: number, marked: number | undefined): { labelled: number[]; sparse: boolean } {
  const every = Math.max(1, Math.ceil((LINE + 3) / gap));
  const labelled: number[] = [];
  for (let n = 1; n <= buttons; n += every) labelled.push(n);
  if (labelled.at(-1) !== buttons) {
    if (labelled.length > 1 && buttons - labelled.at(-1)! < every) labelled.pop();
    labelled.push(buttons);
  }
  if (marked !== undefined && !labelled.includes(marked)) {
    const nearest = labelled.slice(1, -1).sort((a, b) => Math.abs(a - marked) - Math.abs(b - marked))[0];
    if (nearest !== undefined) labelled.splice(labelled.indexOf(nearest), 1);
    labelled.push(marked);
  }
  return { labelled: labelled.sort((a, b) => a - b), sparse: every > 1 };
}

export function buttonStand(input: ButtonStand, as: ShowAs): Picture {
  const { first, last, buttons, marked } = input;
  const say = sayIn(input.unit, as);
  const gap = (last - first) / Math.max(1, buttons - 1);
  const at = (n: number): number => input.places?.[n - 1] ?? (n === buttons ? last : first + (n - 1) * gap);
  const levels = (input.levels ?? []).slice(0, MOST_LEVELS);
  // The point of measuring is drawn unless it is so far away that the buttons would be squeezed.
  const origin = first >= 0 && first <= last - first;
  const ends = [first, last, ...levels.map((level) => level.at), ...(origin ? [0] : [])];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const k = fit(0, high - low, 0, HEIGHT);
  const top = MARGIN + 12;
  const y = (mm: number): number => top + (mm - low) * k;

  const gaps = input.places === undefined ? [] : input.places.slice(1).map((place, i) => place - at(i + 1));
  const narrowest = gaps.length > 0 ? Math.min(...gaps) : gap;
  const { labelled, sparse } = written(buttons, gap * k, marked);
  const right: SideLabel[] = labelled.map((n) => ({ y: y(at(n)), lines: [`${n}: ${say.length(at(n))}${n === marked ? ' ←' : ''}`] }));
  const left: SideLabel[] = levels.map((level) => ({ y: y(level.at), lines: levelLines(level.name, level.at, missOf(level.at, buttons, at), say) }));
  const middle = Math.max(1, Math.floor(buttons / 2));
  const braced = (n: number, word: string): SideLabel =>
    ({ y: y((at(n) + at(n + 1)) / 2), lines: [...inTwo(say.length(at(n + 1) - at(n))), word], brace: [y(at(n)), y(at(n + 1))] });
  if (gaps.length > 0) left.push(braced(gaps.indexOf(Math.max(...gaps)) + 1, 'widest'), braced(gaps.indexOf(narrowest) + 1, 'narrowest'));
  else if (buttons > 1) left.push(braced(middle, 'apart'));

  const rooms = [sideRoom(left), sideRoom(right)] as const;
  const plate = new Plate(widthFor(STAND + 16, ...rooms));
  const x = MARGIN + rooms[0] + (plate.width - 2 * MARGIN - rooms[0] - rooms[1] - STAND) / 2;
  const edge = origin ? top : top - 10;
  const bottom = y(high) + 12;
  plate.path('cloth', box(x, edge, STAND, bottom - edge));
  if (origin) plate.path('new', line([x - 4, y(0)], [x + STAND + 4, y(0)]));
  plate.path('level', line([x + STAND / 2, edge], [x + STAND / 2, bottom]));
  for (const level of levels) plate.path('old', line([x - 6, y(level.at)], [x + STAND + 6, y(level.at)]));
  const radius = Math.max(1, Math.min(6, narrowest * k * 0.4));
  const every = Math.max(1, Math.ceil(2.4 / (gap * k)));
  const draw = (n: number): void => plate.path(n === marked ? 'chosen' : 'piece', circle([x + STAND / 2, y(at(n))], radius));
  for (let n = 1; n < buttons; n += every) draw(n);
  draw(buttons);
  if (marked !== undefined) draw(marked);
  const lowest = [
    plate.beside('right', x + STAND, right, MARGIN, bottom + 4),
    plate.beside('left', x, left, MARGIN, bottom + 4),
  ];
  plate.y = Math.max(...lowest, bottom) + 4;
  const key: (readonly [Look, string])[] = [];
  if (origin) key.push(['new', 'places are measured from here']);
  if (levels.length > 0) key.push(['old', 'level that should have a button']);
  plate.key(key);
  plate.notes(
    sparse ? `${buttons} buttons; 1 … ${buttons}, not every place is written.` : `${counted(buttons, 'button')}.`,
    'To scale along the stand; its width is not.',
  );
  return plate.done(sentences(
    `${counted(buttons, 'button')} ${buttons > 1 && gaps.length === 0 ? `${say.length(gap)} apart, ` : ''}from ${say.length(first)} to ${say.length(last)}.`,
    gaps.length > 0 && `The widest gap is ${say.length(Math.max(...gaps))}, the narrowest ${say.length(narrowest)}.`,
    marked !== undefined && `Button ${marked} is at ${say.length(at(marked))}.`,
    levels.length > 0 && `Levels that should have a button: ${levels.map((level) => `${level.name} at ${say.length(level.at)}`).join(', ')}.`,
  ));
}

/** How far a level lies from the nearest button, mm. */
function missOf(level: number, buttons: number, at: (n: number) => number): number {
  const gap = (at(buttons) - at(1)) / Math.max(1, buttons - 1);
  const n = gap > 0 ? Math.max(1, Math.min(buttons, 1 + Math.round((level - at(1)) / gap))) : 1;
  return Math.abs(level - at(n));
}

function levelLines(name: string, at: number, miss: number, say: Say): string[] {
  const off = miss < 0.05 ? [] : [`${say.length(miss)} off`];
  return [shortened(name, NAME_ROOM), ...inTwo(say.length(at)), ...off];
}
