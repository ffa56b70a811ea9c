/** Buttons down a stand, and the buttonhole for a button. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { arc, box, circle, line } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit } from './scale.ts';
import { LINE, shortened } from './text.ts';
import { counted, sayIn, sentences } from './words.ts';

export interface ButtonStand {
  /** Places of the first and the last button, mm from the point they are measured from, which is drawn where it lies near. */
  readonly first: number;
  readonly last: number;
  readonly buttons: number;
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
function written(buttons: number, gap: number, marked: number | undefined): { labelled: number[]; every: number } {
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
  return { labelled: labelled.sort((a, b) => a - b), every };
}

export function buttonStand(input: ButtonStand, as: ShowAs): Picture {
  const { first, last, buttons, marked } = input;
  const say = sayIn(input.unit, as);
  const gap = (last - first) / Math.max(1, buttons - 1);
  const levels = (input.levels ?? []).slice(0, MOST_LEVELS);
  const at = (n: number): number => (n === buttons ? last : first + (n - 1) * gap);
  // The point of measuring is drawn unless it is so far away that the buttons would be squeezed.
  const origin = first >= 0 && first <= last - first;
  const ends = [first, last, ...levels.map((level) => level.at), ...(origin ? [0] : [])];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const k = fit(0, high - low, 0, HEIGHT);

  const plate = new Plate(1);
  const two = (text: string): string[] => (text.includes(' (') ? [text.slice(0, text.indexOf(' (')), text.slice(text.indexOf(' (') + 1)] : [text]);
  const top = MARGIN + 12;
  const y = (mm: number): number => top + (mm - low) * k;
  const { labelled, every } = written(buttons, gap * k, marked);
  const right: SideLabel[] = labelled.map((n) => ({ y: y(at(n)), lines: [`${n}: ${say.length(at(n))}${n === marked ? ' ←' : ''}`] }));
  const left: SideLabel[] = levels.map((level) => ({ y: y(level.at), lines: [shortened(level.name, NAME_ROOM), ...two(say.length(level.at))] }));
  const middle = buttons > 2 ? Math.floor(buttons / 2) : 1;
  if (buttons > 1) left.push({ y: (y(at(middle)) + y(at(middle + 1))) / 2, lines: two(`${say.length(gap)}`).concat('apart'), brace: [y(at(middle)), y(at(middle + 1))] });
  const rooms = [sideRoom(left), sideRoom(right)] as const;
  const sized = new Plate(widthFor(STAND + 16, ...rooms));
  return stand(sized, plate.left);

  function stand(sheet: Plate, margin: number): Picture {
    const spare = sheet.width - 2 * margin - rooms[0] - rooms[1] - STAND;
    const x = margin + rooms[0] + spare / 2;
    const bottom = y(high) + 12;
    sheet.path('cloth', box(x, top - (origin ? 0 : 10), STAND, bottom - top + (origin ? 0 : 10)));
    if (origin) sheet.path('new', line([x - 4, y(0)], [x + STAND + 4, y(0)]));
    sheet.path('level', line([x + STAND / 2, y(low)], [x + STAND / 2, bottom]));
    for (const level of levels) sheet.path('old', line([x - 6, y(level.at)], [x + STAND + 6, y(level.at)]));
    const radius = Math.max(1, Math.min(6, gap * k * 0.4));
    for (let n = 1; n <= buttons; n += 1) sheet.path(n === marked ? 'chosen' : 'piece', circle([x + STAND / 2, y(at(n))], radius));
    const lowest = Math.max(
      sheet.beside('right', x + STAND, right, MARGIN, bottom + 4),
      sheet.beside('left', x, left, MARGIN, bottom + 4),
    );
    sheet.y = Math.max(lowest, bottom) + 4;
    sheet.key([...(origin ? [['new', 'places are measured from here'] as const] : []), ...(levels.length > 0 ? [['old', 'level that should have a button'] as const] : [])]);
    sheet.notes(
      `${counted(buttons, 'button')}${every > 1 ? `, only some of their places … are written` : ''}.`,
      'To scale along the stand, its width is not.',
    );
    return sheet.done(sentences(
      `${counted(buttons, 'button')} ${buttons > 1 ? `${say.length(gap)} apart, ` : ''}from ${say.length(first)} to ${say.length(last)}.`,
      marked !== undefined && `Button ${marked} is at ${say.length(at(marked))}.`,
      levels.length > 0 && `Levels that should have a button: ${levels.map((level) => `${level.name} at ${say.length(level.at)}`).join(', ')}.`,
    ));
  }
}
