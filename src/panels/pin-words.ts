/** A caution as one sentence with its figure in it, as the sheet shows figures. */
import { readQuantity, type ShowAs } from '../quantities/index.ts';
import type { CellCaution, Result } from '../reckoning/index.ts';
import { shownResult, type ShownResult } from './shown.ts';

/** The last “this” of the sentence stands for the figure. */
export function cautionInWords({ sentence, mend, cure }: Pick<CellCaution, 'sentence' | 'mend' | 'cure'>, as: ShowAs): string {
  if (!mend) return sentence;
  const figure = (part: (shown: ShownResult) => string | undefined): string | undefined => onTheSafeSide(mend, cure?.way, (result) => part(shownResult(result, as)));
  const [main, also] = [figure((shown) => shown.main) ?? '', figure((shown) => shown.also)];
  const words = also ? `${main} (${also})` : main;
  const at = sentence.lastIndexOf('this');
  return at < 0 ? `${sentence} ${words}` : sentence.slice(0, at) + words + sentence.slice(at + 'this'.length);
}

/** Typed as it is shown, a least figure must not be less, nor a greatest one more: it is shown by the next step up, or down. */
function onTheSafeSide(mend: Result, way: 'atLeast' | 'atMost' | 'just' | undefined, shown: (result: Result) => string | undefined): string | undefined {
  const text = shown(mend);
  if (mend.kind !== 'quantity' || text === undefined || way === undefined || way === 'just') return text;
  const sign = way === 'atLeast' ? 1 : -1;
  const { value } = mend;
  const short = (words: string): number => {
    const reading = readQuantity(words);
    return reading.kind === 'quantity' ? sign * (value - reading.quantity.value) : 0;
  };
  const near = 1e-9 * Math.max(1, Math.abs(value));
  let nearest = text;
  // Doubled, what is lacking reaches the next step before it could pass it by.
  for (let lacks = short(text); lacks > near && lacks < Math.abs(value) + 1e3; lacks *= 2) {
    nearest = shown({ ...mend, value: value + sign * lacks }) ?? text;
    if (short(nearest) <= near) return nearest;
  }
  return nearest;
}
