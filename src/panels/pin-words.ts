/** A caution as one sentence with its figure in it, as the sheet shows figures. */
import type { ShowAs } from '../quantities/index.ts';
import type { CellCaution } from '../reckoning/index.ts';
import { shownResult } from './shown.ts';

/** The last “this” of the sentence stands for the figure. */
export function cautionInWords({ sentence, mend }: Pick<CellCaution, 'sentence' | 'mend'>, as: ShowAs): string {
  if (!mend) return sentence;
  const { main, also } = shownResult(mend, as);
  const figure = also ? `${main} (${also})` : main;
  const at = sentence.lastIndexOf('this');
  return at < 0 ? `${sentence} ${figure}` : sentence.slice(0, at) + figure + sentence.slice(at + 'this'.length);
}
