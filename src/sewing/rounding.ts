/** Rounding to a step inside a working, by the workbook's one rule for it. */
import { down, inBase, nearest, up } from '../quantities/index.ts';
import { mm } from './define.ts';
import type { Pad } from './define.ts';
import { orRefuse } from './pad.ts';

const WAYS = {
  nearest: { round: nearest, words: 'to the nearest step, a tie to the greater' },
  up: { round: up, words: 'up to a whole step' },
  down: { round: down, words: 'down to a whole step' },
} as const;

/** `length` and `step` were given at these places of the arguments. */
export function toStep(way: keyof typeof WAYS, mmOfLength: number, mmOfStep: number, places: { readonly length: number; readonly step: number }, pad: Pad): number {
  const { round, words } = WAYS[way];
  const unit = pad.unitGiven(places.length) ?? 'mm';
  const rounded = orRefuse(round(inBase(mmOfLength, unit), inBase(mmOfStep, pad.unitGiven(places.step) ?? unit)), pad);
  // 25 cm to sixteenths of an inch is wanted in inches.
  pad.showIn(rounded.unit);
  return pad.length(words, [mm(mmOfLength), ' in steps of ', mm(mmOfStep)], rounded.value);
}
