/** The answers of working back in words: whole sentences with the figures of the sheet. Pure. */
import { UNITS, inBase, show, type ShowAs, type UnitCode } from '../quantities/index.ts';
import { cautionInWords, shownResult, type BackBound, type BackFound, type BackOffer, type BackPin, type ShownResult } from '../panels/index.ts';
import type { BackAnswer, BackPoint, Result, TrialPin } from '../reckoning/index.ts';
import type { Limits } from './work-back-limits.ts';
import { typedText } from './work-back-limits.ts';

export interface BackQuestion {
  /** What the result and the input are called. */
  readonly result: string;
  readonly input: string;
  readonly wanted: { readonly value: number; readonly unit: UnitCode };
  readonly bound: BackBound;
  readonly unit: UnitCode;
  readonly limits: Limits;
  readonly resultAs: ShowAs;
  readonly inputAs: ShowAs;
  /** Pins on what depends on the input, as they are now. */
  readonly pinsNow: readonly TrialPin[];
  readonly placeOf: (pin: TrialPin) => string;
}

export function foundInWords(answer: BackAnswer, question: BackQuestion): BackFound {
  const words = new Words(question);
  return { sentences: words.why(answer), offers: words.offers(answer) };
}

class Words {
  constructor(private readonly question: BackQuestion) {}

  why(answer: BackAnswer): readonly string[] {
    const { result, input, bound, limits } = this.question;
    const { why, best, jump, gaps, without, exact, cut, depends } = answer;
    const [from, to, wanted] = [this.#input(limits.low), this.#input(limits.high), this.#wanted];
    const sentences: string[] = [];
    const bestAt = best && `${this.#main(best.result)}, with ${this.#input(best.input)}`;
    if (why === 'nothing') return [`There is no result anywhere from ${from} to ${to}. ${without ?? ''}`.trim()];
    if (!depends) return [`${result} does not depend on ${input}: nothing that is put there changes it.`];
    if (why === 'flat') sentences.push(`${result} is ${best ? this.#main(best.result) : 'the same'} whatever ${input} is from ${from} to ${to}.`);
    else if (why === 'beyond' && bound === 'exactly') sentences.push(`${wanted} cannot be reached from ${from} to ${to}. The nearest is ${bestAt}.`);
    else if (why === 'beyond') sentences.push(cut ? `${result} stays on the right side of ${wanted} from ${from} to ${to}.` : `Nothing from ${from} to ${to} keeps to ${wanted}. The nearest is ${bestAt}.`);
    else if (why === 'jumps' && jump && bound === 'exactly') sentences.push(this.#jump(jump));
    else if (!cut && !exact) sentences.push(`No step from ${from} to ${to} keeps to ${wanted}.`);
    if (gaps.length > 0) {
      const [first, last] = [gaps[0]![0], gaps[0]![1]];
      const where = first === last ? `With ${this.#input(first)}` : `From ${this.#input(first)} to ${this.#input(last)}`;
      sentences.push(gaps.length === 1 ? `${where} there is no result: ${without}` : `${where}, and elsewhere too, there is no result: ${without}`);
    }
    return sentences;
  }

  offers({ exact, cut, best, why, depends }: BackAnswer): readonly BackOffer[] {
    if (!depends || why === 'flat' || why === 'nothing') return [];
    const { bound, limits, result } = this.question;
    const wanted = this.#wanted;
    const offers: BackOffer[] = [];
    if (cut && limits.step !== null) {
      const met = exact !== null && Math.abs(cut.input - exact.input) <= 1e-12 * Math.abs(exact.input);
      const sentence = met ? `This gives exactly ${wanted}, and can be cut.`
        : bound === 'exactly' ? `The nearest to ${wanted} that can be cut.`
          : bound === 'atMost' ? `The nearest that can be cut with ${result} not above ${wanted}.` : `The nearest that can be cut with ${result} not below ${wanted}.`;
      offers.push(this.#offer('cut', cut, sentence, true));
      if (met) return offers;
    }
    if (exact && !limits.whole) offers.push(this.#offer('exact', exact, `This gives exactly ${wanted}.`, true, true));
    else if (!exact && cut && limits.step === null) offers.push(this.#offer('cut', cut, bound === 'exactly' ? `The nearest to ${wanted} that there is.` : `The nearest that keeps to ${wanted}.`, true, true));
    else if (offers.length === 0 && best) offers.push(this.#offer('best', best, `The nearest to ${wanted} that there is; it is not what was asked for.`, false));
    return offers;
  }

  #jump([before, after]: NonNullable<BackAnswer['jump']>): string {
    const { result, wanted, limits } = this.question;
    const [one, other] = [before, after].map((point) => this.#main({ kind: 'quantity', value: point.result, unit: wanted.unit }));
    const near = Math.abs(after.input - before.input) <= 1e-9 * Math.max(Math.abs(after.input), Math.abs(before.input));
    if (limits.whole) return `No whole number gives exactly ${this.#wanted}: ${this.#input(before.input)} gives ${one}, and ${this.#input(after.input)} gives ${other}.`;
    if (near) return `${result} is never exactly ${this.#wanted}: at ${this.#input(before.input)} it goes from ${one} to ${other} at once.`;
    return `${result} is never exactly ${this.#wanted}: it goes from ${one}, with ${this.#input(before.input)}, to ${other}, with ${this.#input(after.input)}, and has no result in between.`;
  }

  #offer(which: BackOffer['which'], point: BackPoint, sentence: string, sound: boolean, fine = false): BackOffer {
    const { unit, inputAs, resultAs, pinsNow } = this.question;
    const key = ({ cell, caution }: TrialPin): string => `${cell.sheet} ${cell.row} ${cell.col} ${caution.by} ${caution.sentence}`;
    const [before, after] = [new Set(pinsNow.map(key)), new Set(point.pins.map(key))];
    const input = inBase(point.input, unit);
    const as: ShowAs = { ...inputAs, system: 'both' };
    return {
      which, sentence, sound, working: point.working,
      input: fine ? fineShown(point.input, unit, as) : show(input, as),
      result: shownResult(point.result, { ...resultAs, system: 'both' }),
      raw: typedText(input),
      pins: point.pins.filter((pin) => !before.has(key(pin))).map((pin) => this.#pin(pin)),
      gone: pinsNow.filter((pin) => !after.has(key(pin))).map((pin) => this.#pin(pin)),
    };
  }

  #pin(pin: TrialPin): BackPin {
    const { resultAs, placeOf } = this.question;
    return { place: placeOf(pin), sentence: cautionInWords(pin.caution, { ...resultAs, unit: undefined, decimals: undefined }) };
  }

  #input(value: number): string {
    return fineShown(value, this.question.unit, { ...this.question.inputAs, system: 'own' }).main;
  }

  #main(result: Result): string {
    const { resultAs } = this.question;
    return shownResult(result, { ...resultAs, system: resultAs.system === 'both' ? 'own' : resultAs.system }).main;
  }

  get #wanted(): string {
    return this.#main({ kind: 'quantity', ...this.question.wanted });
  }
}

/** As it shows; with four decimals where rounding would hide that it lies between two steps. */
function fineShown(value: number, unit: UnitCode, as: ShowAs): ShownResult {
  const figure = inBase(value, unit);
  const usual = show(figure, as);
  if (usual.exact || UNITS[unit].dimension === 'area') return usual;
  return { ...show(figure, { ...as, decimals: 4 }), ...(usual.also !== undefined && { also: usual.also }) };
}
