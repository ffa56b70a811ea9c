/** Several pictures of one kind side by side, drawn to one scale. */
import type { ShowAs } from '../quantities/index.ts';
import type { Picture } from './marks.ts';
import { pictureFor, type PictureCall } from './picture-for.ts';
import { atMostScale } from './scale.ts';

/** Each picture of a call (`null` for one that has none), at the scale at which the largest of them fits. */
export function picturesBeside(calls: readonly (PictureCall | null)[], as: ShowAs): readonly (Picture | null)[] {
  const draw = (most: number) => atMostScale(most, () => calls.map((call) => (call && pictureFor(call, as)) ?? null));
  const { least } = draw(Infinity);
  return draw(least).drawn;
}
