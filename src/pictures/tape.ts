/** Where the tape goes: a body outline with one measure on it. No figures, no scale. */
import { area, circle, flowOn, line } from './draw.ts';
import type { Point } from './draw.ts';
import type { Look, Mark, Picture } from './marks.ts';
import { place } from './scale.ts';

const WIDTH = 160;
const HEIGHT = 318;
const MIDDLE = WIDTH / 2;

type View = 'front' | 'back' | 'seated';

type Tape =
  /** Level all round: half as wide as it is drawn. `x` is its middle. */
  | { readonly view: View; readonly round: readonly [x: number, y: number, half: number] }
  /** Round a limb where it joins: an upright oval. */
  | { readonly view: View; readonly oval: readonly [x: number, y: number, across: number, down: number] }
  /** Along the body; `behind` goes on where it is out of sight. */
  | { readonly view: View; readonly along: readonly Point[]; readonly behind?: readonly Point[] };

const WAIST = 138;
const HIP = 174;
const LEG = 95;
const ARM: readonly Point[] = [[113, 66], [121, 118], [128, 166]];
const round = (x: number, y: number, half: number): Tape => ({ view: 'front', round: [x, y, half] });
const front = (...along: readonly Point[]): Tape => ({ view: 'front', along });
const back = (...along: readonly Point[]): Tape => ({ view: 'back', along });

const TAPES: Readonly<Record<string, Tape>> = {
  height: front([144, 14], [144, 302]),
  bust: round(MIDDLE, 100, 26),
  'upper chest': round(MIDDLE, 87, 25),
  underbust: round(MIDDLE, 113, 22.5),
  waist: round(MIDDLE, WAIST, 19),
  'high hip': round(MIDDLE, 156, 25),
  hip: round(MIDDLE, HIP, 29),
  'waist to hip': front([99, WAIST], [104, 155], [109, HIP]),
  'back waist length': back([MIDDLE, 55], [MIDDLE, WAIST]),
  'front waist length': front([89, 56], [92, 100], [91, WAIST]),
  'bust depth': front([89, 56], [92, 100]),
  'bust point width': front([68, 100], [92, 100]),
  'shoulder length': front([89, 56], [113, 66]),
  'shoulder width': back([47, 66], [MIDDLE, 57], [113, 66]),
  'back width': back([57, 84], [103, 84]),
  'front width': front([57, 84], [103, 84]),
  'neck base': round(MIDDLE, 55, 10),
  'armhole depth': back([MIDDLE, 55], [MIDDLE, 92]),
  'round both shoulders': round(MIDDLE, 80, 42),
  head: round(MIDDLE, 24, 14.5),
  'arm length': front(...ARM),
  'back neck to wrist': back([MIDDLE, 55], ...ARM),
  'upper arm': round(117, 92, 7),
  'body armhole': { view: 'front', oval: [109, 79, 6, 15] },
  elbow: round(121, 120, 6),
  wrist: round(128, 164, 4.5),
  'body rise': { view: 'seated', along: [[70, 138], [70, 208]] },
  'crotch length': { view: 'front', along: [[MIDDLE, WAIST], [MIDDLE, 189]], behind: [[MIDDLE + 6, 189], [MIDDLE + 6, WAIST]] },
  'outside leg': front([99, WAIST], [109, HIP], [106, 240], [100, 302]),
  'inside leg': front([83, 190], [87, 302]),
  thigh: round(LEG, 199, 13.5),
  knee: round(LEG + 1, 242, 8.5),
  calf: round(LEG, 260, 8.5),
  ankle: round(LEG - 1, 292, 5.5),
};

export const TAPED: readonly string[] = Object.keys(TAPES);

/** @returns `null` for a measure that has no drawing: one of her own */
export function tapeOnBody(key: string): Picture | null {
  const tape = Object.hasOwn(TAPES, key) ? TAPES[key]! : undefined;
  if (!tape) return null;
  const marks: Mark[] = [...(tape.view === 'seated' ? seated() : standing(tape.view)), ...taped(tape)];
  const seen = { front: 'from the front', back: 'from the back', seated: 'from the side, sitting on a chair' }[tape.view];
  return { alt: `A body ${seen}, with the tape where the ${key} is taken.`, width: WIDTH, height: HEIGHT, marks };
}

function taped(tape: Tape): Mark[] {
  const path = (look: Look, d: string): Mark => ({ kind: 'path', look, d });
  if ('along' in tape) return [...(tape.behind ? [path('place', line(...tape.behind))] : []), path('tape', line(...tape.along)), path('edge', line(...tape.along))];
  const [x, y] = 'round' in tape ? tape.round : tape.oval;
  const [across, down] = 'round' in tape ? [tape.round[2] + 2, Math.max(3, tape.round[2] * 0.2)] : [tape.oval[2], tape.oval[3]];
  const half = (sweep: 0 | 1): string => `M${place(x - across)} ${place(y)}A${place(across)} ${place(down)} 0 0 ${sweep} ${place(x + across)} ${place(y)}`;
  return [path('place', half(1)), path('tape', half(0)), path('edge', half(0))];
}

/** One side of the outline, from the neck down to the foot; the other is its mirror. */
const SIDE: readonly Point[] = [[24, 90], [26, 100], [22, 113], [19, WAIST], [25, 156], [29, HIP], [28, 200], [22, 242], [22, 260], [19, 292], [21, 302]];
const INSIDE: readonly Point[] = [[9, 302], [9, 292], [6, 260], [8, 242], [1.5, 190]];

function standing(view: 'front' | 'back'): Mark[] {
  const on = (side: -1 | 1) => ([x, y]: Point): Point => [MIDDLE + side * x, y];
  const half = (side: -1 | 1): string => {
    const neck = on(side)([8, 42]);
    const shoulder: Point[] = ([[9, 55], [33, 66]] as const).map(on(side));
    const [down, up] = [SIDE.map(on(side)), INSIDE.map(on(side))];
    return [line(neck, ...shoulder), flowOn(shoulder[1]!, down), line(up[0]!).replace('M', 'L'), flowOn(up[0]!, up.slice(1)), line([MIDDLE, 188]).replace('M', 'L'), line([MIDDLE, 42]).replace('M', 'L'), 'Z'].join('');
  };
  const arm = (side: -1 | 1): string => area(...([[33, 66], [41, 80], [47, 118], [53, 166], [51, 178], [45, 178], [43, 166], [35, 120], [28, 92]] as const).map(on(side)));
  const path = (d: string, look: Look): Mark => ({ kind: 'path', look, d });
  const parts = [circle([MIDDLE, 29], 15), arm(-1), arm(1), half(-1), half(1)];
  return [
    // Each outlined, then all filled, so that only the outline of the whole is left.
    ...parts.map((d) => path(d, 'thin')), ...parts.map((d) => path(d, 'under')),
    // The bone at the back of the neck, and the line of the back.
    ...(view === 'back' ? [path(circle([MIDDLE, 55], 1.5), 'thin'), path(line([MIDDLE, 58], [MIDDLE, 134]), 'thin')] : []),
    { kind: 'text', x: MIDDLE, y: HEIGHT - 4, anchor: 'middle', text: view === 'front' ? 'front' : 'back', soft: true },
  ];
}

function seated(): Mark[] {
  const path = (look: Look, d: string): Mark => ({ kind: 'path', look, d });
  const parts = [circle([72, 46], 15), area([66, 58], [78, 58], [84, 76], [88, 100], [82, 138], [88, 180], [124, 182], [128, 196], [126, 300], [112, 300], [112, 208], [52, 208], [54, 170], [58, 138], [54, 100], [58, 72])];
  return [
    ...parts.map((d) => path('thin', d)), ...parts.map((d) => path('under', d)),
    path('layer', line([40, 209], [112, 209])), path('layer', line([44, 209], [44, 302])), path('layer', line([104, 209], [104, 302])),
    path('thin', line([56, 138], [84, 138])),
    { kind: 'text', x: MIDDLE, y: HEIGHT - 4, anchor: 'middle', text: 'side, sitting', soft: true },
  ];
}
