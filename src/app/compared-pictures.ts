/** The pictures of one result under several cases, all to one scale. */
import { PICTURED, picturesBeside, type Picture } from '../pictures/index.ts';
import { inBase, type Quantity, type ShowAs } from '../quantities/index.ts';
import type { Result, Working } from '../reckoning/index.ts';

/** A formula that is one call of a function with a picture, as far as its beginning says. */
export function mayHavePicture(raw: string): boolean {
  const name = /^=\s*([A-Z.]+)\s*\(/i.exec(raw)?.[1];
  return name !== undefined && PICTURED.includes(name.toUpperCase());
}

export function picturesOf(workings: readonly (Working | undefined)[], as: ShowAs): readonly (Picture | null)[] {
  return picturesBeside(workings.map((working) => {
    const result = working?.call && figure(working.result);
    if (!working?.call || result === undefined) return null;
    const given = working.call.given.flatMap(({ name, value }) => {
      const read = figure(value);
      return read === undefined ? [] : [{ name, value: read }];
    });
    return { name: working.call.name, given, result };
  }), as);
}

function figure(result: Result): Quantity | string | undefined {
  if (result.kind === 'quantity') return inBase(result.value, result.unit);
  return result.kind === 'text' ? result.text : undefined;
}
