/** Gathers: cloth drawn up to a shorter edge; and tiers, each gathered to the one above. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, box, line } from './draw.ts';
import type { Picture } from './marks.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { counted, sayIn } from './words.ts';

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
  plate.path('thin', folds(middle - drawnUp, middle + drawnUp, top, STRIP, ratio));
  plate.path('new', line([middle - drawnUp, top], [middle + drawnUp, top]));
  plate.below([{ from: middle - drawnUp, to: middle + drawnUp, text: `gathered ${say.length(finished)}` }], top + STRIP);
  plate.key([['place', 'gathering thread'], ['new', 'gathered edge']]);
  plate.notes(`${say.number(ratio)} times as long as it is when gathered.`, 'Lengths are to scale.');
  return plate.done(`Cloth cut ${say.length(cloth)} long is gathered to ${say.length(finished)}: ${say.number(ratio)} times the finished length.`);
}

export interface Tiers {
  /** Edge that the first tier is gathered to, mm. */
  readonly top: number;
  readonly ratio: number;
  readonly tiers: number;
  readonly unit: UnitCode;
}

const ROW = 20;

/** Which tiers are drawn: all of a few, otherwise the first and the last ones. 0 is the top edge. */
function drawnTiers(count: number): (number | '…')[] {
  if (count <= 5) return Array.from({ length: count + 1 }, (_, i) => i);
  return [0, 1, 2, '…', count - 1, count];
}

export function tiers({ top, ratio, tiers: count, unit }: Tiers, as: ShowAs): Picture {
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
  plate.notes(`Each tier is ${say.number(ratio)} times the one above. Lengths are to scale.`);
  return plate.done(`${counted(count, 'tier')}, each ${say.number(ratio)} times the one above: the top edge is ${say.length(top)}, tier ${count} is cut ${say.length(length(count))}.`);
}
