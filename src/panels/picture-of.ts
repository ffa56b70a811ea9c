/** The picture of one call of a sewing function as SVG, if there is one. */
import type { SVGTemplateResult } from 'lit';
import { drawn, pictureFor } from '../pictures/index.ts';
import { inBase, type Quantity, type ShowAs } from '../quantities/index.ts';
import type { Result, WorkingCall } from '../reckoning/index.ts';

export function pictureOf(call: Pick<WorkingCall, 'name' | 'given'>, of: Result, as: ShowAs): SVGTemplateResult | undefined {
  const result = figure(of);
  if (result === undefined) return undefined;
  const given = call.given.flatMap(({ name, value }) => {
    const read = figure(value);
    return read === undefined ? [] : [{ name, value: read }];
  });
  const picture = pictureFor({ name: call.name, given, result }, as);
  return picture && drawn(picture);
}

function figure(result: Result): Quantity | string | undefined {
  if (result.kind === 'quantity') return inBase(result.value, result.unit);
  return result.kind === 'text' ? result.text : undefined;
}
