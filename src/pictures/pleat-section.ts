/** Pleats seen from the hem: how the cloth lies in folds, and where folds lie on one another. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { box, hatch, line, turn } from './draw.ts';
import type { Point } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit, place } from './scale.ts';
import { counted, sayIn, sentences } from './words.ts';

export type PleatKind = 'knife' | 'box' | 'inverted';

export interface PleatSection {
  readonly kind: PleatKind;
  /** Of one fold, mm. */
  readonly depth: number;
  /** From a pleat to the next, mm; without it one pleat is shown by itself. */
  readonly spacing?: number;
  /** Width of the front of a box pleat, mm; the spacing where it is left out. */
  readonly face?: number;
  readonly pleats?: number;
  readonly unit: UnitCode;
}

/** From one layer of cloth to the next. Thickness is not to scale. */
const LAYER = 9;
const SLANT = 4 * LAYER;
/** Cloth that goes on beyond the pleats shown. */
const STUB = 8;

export function pleatSection(input: PleatSection, as: ShowAs): Picture {
  const { kind, depth, pleats } = input;
  const say = sayIn(input.unit, as);
  const alone = input.spacing === undefined;
  const spacing = input.spacing ?? Math.max(depth * (kind === 'knife' ? 1.8 : 2.4), 1);
  const face = kind === 'box' ? Math.min(input.face ?? spacing, spacing) : spacing;
  const shown = alone ? 1 : Math.min(pleats ?? 2, kind === 'knife' ? 3 : 2);
  const over = alone ? 0 : overlap(kind, depth, spacing, face);
  const shape = { depth, spacing, face, shown };
  const [from, to] = SHAPES[kind].reach(shape);

  const plate = new Plate();
  const k = fit(to - from, 0, plate.width - 2 * MARGIN - 20, 0);
  const x = (mm: number): number => MARGIN + 10 + (mm - from) * k;
  const { step, fold, zone } = SHAPES[kind].dims(shape);

  if (!alone) plate.above([span(step, x, `${say.length(spacing)} apart`)]);
  const top = plate.y + 6;
  const height = kind === 'knife' || over > 0 ? SLANT : 2 * LAYER;
  if (over > 0) {
    const [left, right] = [x(zone[0]), x(zone[1])];
    plate.path('zone', box(left, top - 4, right - left, height + 8));
    plate.path('hatch', hatch(left, top - 4, right - left, height + 8));
  }
  plate.path('layer', SHAPES[kind].cloth(shape, x, top, k, over > 0));
  const below: Dim[] = [{ ...span(fold, x, `${say.length(depth)} deep`), reach: 8 }];
  if (over > 0) below.push({ ...span(zone, x, `overlap ${say.length(over)}`), look: 'pin', reach: 8 });
  plate.below(below, top + height + 6);

  const name = `${kind} pleat`;
  const many = pleats ?? 1;
  plate.notes(
    alone || many <= shown ? `Seen from the hem, the right side up.` : `${shown} of ${many} ${name}s, seen from the hem, the right side up.`,
    'Thickness is not to scale.',
  );
  return plate.done(sentences(
    alone ? `Cross-section of a ${name}: each fold is ${say.length(depth)} deep.` : `Cross-section of ${pleats === undefined ? `${name}s` : counted(pleats, name)}, ${say.length(spacing)} apart; each fold is ${say.length(depth)} deep.`,
    !alone && (over > 0 ? `Folds overlap on the wrong side by ${say.length(over)}.` : 'Folds do not overlap.'),
  ));
}

/** How much the folds of one pleat, or of neighbours, lie on one another, mm. */
export function overlap(kind: PleatKind, depth: number, spacing: number, face: number = spacing): number {
  const over = kind === 'knife' ? depth - spacing : 2 * depth - (kind === 'box' ? face : spacing);
  return over > 1e-9 * spacing ? over : 0;
}

type Range = readonly [number, number];
type ToX = (mm: number) => number;

interface Shape {
  readonly depth: number;
  readonly spacing: number;
  readonly face: number;
  readonly shown: number;
}

interface Drawing {
  /** From the leftmost to the rightmost of the cloth, mm. */
  reach(shape: Shape): Range;
  dims(shape: Shape): { readonly step: Range; readonly fold: Range; readonly zone: Range };
  cloth(shape: Shape, x: ToX, top: number, k: number, overlapped: boolean): string;
}

const span = ([from, to]: Range, x: ToX, text: string): Dim => ({ from: x(from), to: x(to), text });

const onTo = (...points: readonly Point[]): string => points.map(([x, y]) => `L${place(x)} ${place(y)}`).join('');

/**
 * Edges lie at 1, 2, … spacings. Each face slants from the inner fold of its
 * pleat up to the next edge, so that no line crosses another however deep the
 * folds are.
 */
const KNIFE: Drawing = {
  reach: ({ depth, spacing, shown }) => [Math.min(0, spacing - depth), shown * spacing + spacing * 0.6],
  dims: ({ depth, spacing, shown }) => ({
    step: shown > 1 ? [spacing, 2 * spacing] : [0, spacing],
    fold: [shown * spacing - depth, shown * spacing],
    zone: shown > 1 ? [2 * spacing - depth, spacing] : [spacing - depth, 0],
  }),
  cloth({ depth, spacing, shown }, x, top, k) {
    const low = top + SLANT;
    const slope = (at: number): number => low - (SLANT * at) / (spacing + depth);
    const start = Math.min(0, spacing - depth);
    let d = line([x(start), slope(Math.max(0, start + depth))]);
    for (let i = 1; i <= shown; i += 1) {
      const edge = x(i * spacing);
      const inner = x(i * spacing - depth);
      if (depth * k < 1) d += onTo([edge, top]);
      else d += turn(edge, top, top + 5, -1, depth * k * 0.4) + turn(inner, low - 5, low, 1, depth * k * 0.4);
    }
    const last = shown * spacing;
    return d + onTo([x(last + spacing * 0.6), slope(depth + spacing * 0.6)]);
  },
};

/** The first layer below the face carries the left folds, and lower ones the right folds where they overlap. */
const BOX: Drawing = {
  reach: ({ depth, spacing, face, shown }) => {
    const first = (spacing - face) / 2;
    return [Math.min(0, first + face - depth), Math.max(shown * spacing, first + (shown - 1) * spacing + depth)];
  },
  dims: ({ depth, spacing, face, shown }) => {
    const first = (spacing - face) / 2;
    const edge = first + (shown - 1) * spacing;
    return { step: shown > 1 ? [first, first + spacing] : [0, spacing], fold: [edge, edge + depth], zone: [first + face - depth, first + depth] };
  },
  cloth({ depth, spacing, face, shown }, x, top, k, overlapped) {
    const layer = (n: number): number => top + n * LAYER;
    const width = depth * k * 0.4;
    const right = overlapped ? 3 : 1;
    const first = (spacing - face) / 2;
    const flat = depth * k < 1;
    let d = line([x(Math.min(0, first + face - depth)) - STUB, layer(flat ? 0 : 2)]);
    for (let i = 0; i < shown; i += 1) {
      const edge = x(first + i * spacing) + 0.8;
      const far = edge + face * k - 1.6;
      if (flat) d += onTo([edge, top], [far, top]);
      else {
        d += turn(edge + depth * k, layer(2), layer(1), -1, width) + turn(edge, layer(1), top, 1, width);
        d += turn(far, top, layer(right), -1, width) + turn(far - depth * k, layer(right), layer(right + 1), 1, width);
      }
      // Down to the lower layer under this box, up again under the next one.
      if (overlapped && i < shown - 1) {
        const climb = Math.min(14, depth * k * 0.5);
        d += `${onTo([far, layer(4)])}C${place(far + climb)} ${layer(4)} ${place(far)} ${layer(2)} ${place(far + climb)} ${layer(2)}`;
      }
    }
    const end = Math.max(shown * spacing, first + (shown - 1) * spacing + depth);
    return d + onTo([x(end) + STUB, layer(flat ? 0 : right + 1)]);
  },
};

/** The folds of every pleat meet over its underlay; every second underlay lies lower where neighbours overlap. */
const INVERTED: Drawing = {
  reach: ({ depth, spacing, shown }) => [Math.min(0, spacing / 2 - depth), Math.max(shown * spacing, (shown - 0.5) * spacing + depth)],
  dims: ({ depth, spacing, shown }) => {
    const last = (shown - 0.5) * spacing;
    return {
      step: shown > 1 ? [spacing / 2, spacing * 1.5] : [0, spacing],
      fold: [last, last + depth],
      zone: shown > 1 ? [spacing * 1.5 - depth, spacing / 2 + depth] : [spacing, spacing / 2 + depth],
    };
  },
  cloth({ depth, spacing, shown }, x, top, k, overlapped) {
    const layer = (n: number): number => top + n * LAYER;
    const width = depth * k * 0.4;
    let d = line([x(0) - STUB, top]);
    for (let i = 0; i < shown; i += 1) {
      const meet = x((i + 0.5) * spacing);
      const upper = overlapped && i % 2 === 1 ? 3 : 1;
      if (depth * k < 1) d += onTo([meet, top]);
      else {
        d += turn(meet - 1.2, top, layer(upper), -1, width) + turn(meet - depth * k, layer(upper), layer(upper + 1), 1, width);
        d += turn(meet + depth * k, layer(upper + 1), layer(upper), -1, width) + turn(meet + 1.2, layer(upper), top, 1, width);
      }
    }
    return d + onTo([x(shown * spacing) + STUB, top]);
  },
};

const SHAPES: Readonly<Record<PleatKind, Drawing>> = { knife: KNIFE, box: BOX, inverted: INVERTED };
