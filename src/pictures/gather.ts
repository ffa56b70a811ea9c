/** Gathers: cloth drawn up to a shorter edge; and tiers, each gathered to the one above. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, box, line } from './draw.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate, sideRoom, widthFor } from './plate.ts';
import type { SideLabel } from './plate.ts';
import { fit } from './scale.ts';
import { counted, inTwo, sayIn, sentences } from './words.ts';

export interface Gathers {
  /** Cut length and length when gathered, mm. */
  readonly cloth: number;
  readonly finished: number;
  readonly unit: UnitCode;
}

const STRIP = 30;

/** Short folds along an edge, the closer the fuller the cloth is. */
function folds(left: number, right: number, top: number, height: number, fullness: number): string {
  const count = Math.max(2, Math.min(Math.round(((right - left) / 14) * Math.min(fullness, 4)), Math.floor((right - left) / 2.5)));
  let d = '';
  for (let i = 1; i < count; i += 1) {
    const x = left + ((right - left) * i) / count;
    d += line([x, top], [x, top + height * (i % 3 === 0 ? 0.45 : i % 3 === 1 ? 0.8 : 0.6)]);
  }
  return d;
}

export function gathers({ cloth, finished, unit }: Gathers, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const ratio = cloth / finished;
  const plate = new Plate();
  const k = fit(Math.max(cloth, finished), 0, plate.width - 2 * MARGIN - 20, 0);
  const middle = plate.width / 2;
  const [half, drawnUp] = [(cloth * k) / 2, (finished * k) / 2];
  plate.above([{ from: middle - half, to: middle + half, text: `cut ${say.length(cloth)}` }]);
  plate.path('cloth', box(middle - half, plate.y, 2 * half, STRIP));
  plate.path('place', line([middle - half, plate.y + 5], [middle + half, plate.y + 5]));
  const top = plate.y + STRIP + 26;
  for (const side of [-1, 1]) plate.path('thin', line([middle + side * half, plate.y + STRIP + 3], [middle + side * drawnUp, top - 3]));
  plate.path('cloth', box(middle - drawnUp, top, 2 * drawnUp, STRIP));
  if (ratio > 1) plate.path('thin', folds(middle - drawnUp, middle + drawnUp, top, STRIP, ratio));
  plate.path('new', line([middle - drawnUp, top], [middle + drawnUp, top]));
  plate.below([{ from: middle - drawnUp, to: middle + drawnUp, text: `gathered ${say.length(finished)}` }], top + STRIP);
  plate.key([['place', 'gathering thread'], ['new', 'gathered edge']]);
  plate.notes(ratio > 1 ? `${say.number(ratio)} times as long as when it is gathered.` : 'Nothing is gathered.', 'Lengths are to scale.');
  return plate.done(`Cloth cut ${say.length(cloth)} long is gathered to ${say.length(finished)}: ${say.number(ratio)} times the finished length.`);
}

export interface Tiers {
  /** Edge that the first tier is gathered to, mm. */
  readonly top: number;
  readonly ratio: number;
  readonly tiers: number;
  /** All tiers together, mm, where that is asked for. */
  readonly total?: number;
  readonly unit: UnitCode;
}

const ROW = 20;

/** Which tiers are drawn: all of a few, otherwise the first and the last ones. 0 is the top edge. */
function drawnTiers(count: number): (number | '…')[] {
  if (count <= 5) return Array.from({ length: count + 1 }, (_, i) => i);
  return [0, 1, 2, '…', count - 1, count];
}

export function tiers({ top, ratio, tiers: count, total, unit }: Tiers, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const length = (tier: number): number => top * ratio ** tier;
  const plate = new Plate();
  const k = fit(Math.max(top, length(count)), 0, plate.width - 2 * MARGIN - 4, 0);
  const middle = plate.width / 2;
  for (const tier of drawnTiers(count)) {
    if (tier === '…') {
      plate.caption(`… ${counted(count - 4, 'tier')} between`);
      continue;
    }
    const half = (length(tier) * k) / 2;
    plate.caption(tier === 0 ? `Top edge ${say.length(top)}` : `Tier ${tier}: cut ${say.length(length(tier))}`);
    if (tier === 0) plate.path('edge', line([middle - half, plate.y + 2], [middle + half, plate.y + 2]));
    else {
      plate.path(tier === count ? 'new-cloth' : 'cloth', area([middle - half, plate.y], [middle + half, plate.y], [middle + half, plate.y + ROW], [middle - half, plate.y + ROW]));
      if (ratio > 1) plate.path('thin', folds(middle - half, middle + half, plate.y, ROW, ratio));
    }
    plate.y += (tier === 0 ? 5 : ROW) + 6;
  }
  plate.notes(`Each tier is ${say.number(ratio)} times the one above.`, total !== undefined && `All of them: ${say.length(total)}.`, 'Lengths are to scale.');
  return plate.done(sentences(
    `${counted(count, 'tier')}, each ${say.number(ratio)} times the one above: the top edge is ${say.length(top)}, tier ${count} is cut ${say.length(length(count))}.`,
    total !== undefined && `All of them together are ${say.length(total)}.`,
  ));
}

export interface TierDepths {
  /** Finished length of all tiers together, and how much deeper each is than the one above, mm. */
  readonly length: number;
  readonly step: number;
  readonly tiers: number;
  /** One to mark, 1 for the top one. */
  readonly marked: number;
  readonly unit: UnitCode;
}

/** Tiers one below the other, their depths to scale. Every tier has some depth. */
export function tierDepths({ length, step, tiers: count, marked, unit }: TierDepths, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const depth = (tier: number): number => length / count + step * (tier - (count + 1) / 2);
  const above = (tier: number): number => ((tier - 1) * length) / count + step * (tier - 1) * ((tier - count - 1) / 2);
  const height = 190;
  const k = fit(0, length, 0, height);
  const written = [...new Set([1, marked, count])].sort((a, b) => a - b);
  const texts = written.map((tier) => [`tier ${tier}`, ...inTwo(say.length(depth(tier)))]);
  const whole = ['in all', ...inTwo(say.length(length))];
  const rooms = [sideRoom([{ lines: whole, brace: true }]), sideRoom(texts.map((lines) => ({ lines, brace: true })))] as const;
  const plate = new Plate(widthFor(100, ...rooms));
  const top = plate.y + 8;
  const [left, right] = [MARGIN + rooms[0], plate.width - MARGIN - rooms[1]];
  for (let tier = 1; tier <= count; tier += 1) {
    // Each is gathered to the one above, so each is wider; by how much is not given here.
    const inset = ((right - left) * 0.25 * (count - tier)) / count;
    const [from, deep] = [top + above(tier) * k, depth(tier) * k];
    plate.path(tier === marked ? 'new-cloth' : 'cloth', box(left + inset, from, right - left - 2 * inset, deep));
    if (deep > 8) plate.path('thin', folds(left + inset, right - inset, from, deep, 1.5));
  }
  const bottom = top + height;
  const labels: SideLabel[] = written.map((tier, i) => {
    const from = top + above(tier) * k;
    return { y: from + (depth(tier) * k) / 2, lines: texts[i]!, brace: [from, from + depth(tier) * k], look: tier === marked ? 'new' : undefined };
  });
  const lowest = [
    plate.beside('left', left, [{ y: (top + bottom) / 2, lines: whole, brace: [top, bottom] }], MARGIN, bottom),
    plate.beside('right', right, labels, MARGIN, bottom),
  ];
  plate.y = Math.max(bottom, ...lowest) + 4;
  plate.notes(
    count > written.length ? `${count} tiers: 1 … ${count}.` : `${counted(count, 'tier')}.`,
    step !== 0 && `Each is ${say.length(Math.abs(step))} ${step > 0 ? 'deeper' : 'shallower'} than the one above.`,
    'Depths are to scale, widths are not.',
  );
  const graded = step === 0 ? 'all equally deep' : `each ${say.length(Math.abs(step))} ${step > 0 ? 'deeper' : 'shallower'} than the one above`;
  return plate.done(`${counted(count, 'tier')} make up ${say.length(length)}, ${graded}: tier ${marked} is ${say.length(depth(marked))} deep.`);
}
