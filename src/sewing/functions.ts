/** All functions of the trade. A topic's file lists its own; adding a function there is all it takes. */
import { BAND_FUNCTIONS } from './band.ts';
import { BIAS_FUNCTIONS } from './bias.ts';
import { BLEND_FUNCTIONS } from './blend.ts';
import { BUTTON_FUNCTIONS } from './button.ts';
import { BUYING_FUNCTIONS } from './buying.ts';
import { CHILD_FUNCTIONS } from './child.ts';
import { CIRCLE_FUNCTIONS } from './circle.ts';
import { CLOTH_FUNCTIONS } from './cloth.ts';
import { DART_FUNCTIONS } from './dart.ts';
import type { SewingFunction } from './define.ts';
import { FIT_FUNCTIONS } from './fit.ts';
import { GATHER_FUNCTIONS } from './gather.ts';
import { GORE_FUNCTIONS } from './gore.ts';
import { HEM_FUNCTIONS } from './hem.ts';
import { LAY_FUNCTIONS } from './lay.ts';
import { LENGTHEN_FUNCTIONS } from './lengthen.ts';
import { MEASURE_FUNCTIONS } from './measure.ts';
import { PLEAT_FUNCTIONS } from './pleat.ts';
import { SEAM_FUNCTIONS } from './seam.ts';
import { SHOULDER_FUNCTIONS } from './shoulder.ts';
import { SIZE_CHOICE_FUNCTIONS } from './size-choice-functions.ts';
import { SIZE_FUNCTIONS } from './size.ts';
import { SLEEVE_FUNCTIONS } from './sleeve.ts';
import { SPAN_FUNCTIONS } from './spans.ts';
import { STRETCH_FUNCTIONS } from './stretch.ts';
import { USUAL_FUNCTIONS } from './usual.ts';

export const FUNCTIONS: readonly SewingFunction[] = [
  ...FIT_FUNCTIONS,
  ...SIZE_FUNCTIONS,
  ...SIZE_CHOICE_FUNCTIONS,
  ...BLEND_FUNCTIONS,
  ...SEAM_FUNCTIONS,
  ...DART_FUNCTIONS,
  ...PLEAT_FUNCTIONS,
  ...GATHER_FUNCTIONS,
  ...CIRCLE_FUNCTIONS,
  ...GORE_FUNCTIONS,
  ...BUTTON_FUNCTIONS,
  ...HEM_FUNCTIONS,
  ...BAND_FUNCTIONS,
  ...LENGTHEN_FUNCTIONS,
  ...SHOULDER_FUNCTIONS,
  ...CLOTH_FUNCTIONS,
  ...BUYING_FUNCTIONS,
  ...LAY_FUNCTIONS,
  ...BIAS_FUNCTIONS,
  ...STRETCH_FUNCTIONS,
  ...SLEEVE_FUNCTIONS,
  ...CHILD_FUNCTIONS,
  ...USUAL_FUNCTIONS,
  ...SPAN_FUNCTIONS,
  ...MEASURE_FUNCTIONS,
];

const BY_NAME = new Map(FUNCTIONS.map((fn) => [fn.name, fn]));

/** The function of this name, in capitals or not. */
export function functionNamed(name: string): SewingFunction | undefined {
  return BY_NAME.get(name.toUpperCase());
}
