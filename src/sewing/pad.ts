/** The pad that takes a working down: steps, cautions, the last value, or a refusal. */
import { exactText, inBase, isFault, showText, UNITS } from '../quantities/index.ts';
import type { Fault, Quantity, UnitCode } from '../quantities/index.ts';
import { degrees, mm, mm2, plain, share } from './define.ts';
import type { Caution, Cure, Figure, FigureSpan, Pad, Step, Value } from './define.ts';

/** Ends a working without a result. */
export class Refusal extends Error {}

/** A quantity as text for a sentence: exactly where that is short, otherwise to a 32nd of an inch or a millimetre. */
export function sayQuantity(q: Quantity): string {
  const exact = exactText(q);
  return exact.length <= 10 && UNITS[q.unit].system !== 'inch' ? exact.replace('-', '−') : showText(q, { system: 'own', inchStep: 32 });
}

/** The same of a value in base units. */
export function sayFigure(value: number, unit: UnitCode): string {
  return sayQuantity(inBase(value, unit));
}

export class Notes implements Pad {
  readonly steps: Step[] = [];
  readonly cautions: Caution[] = [];
  last: number | string | FigureSpan | undefined;
  /** The last step's figure, where it is one. */
  lastFigure: Figure | undefined;

  constructor(
    private readonly keepSteps: boolean,
    public lengthUnit: UnitCode,
    private readonly values: readonly Value[] = [],
  ) {}

  length(words: string, sum: Step['sum'], value: number): number {
    return this.take(words, sum, value, mm);
  }

  area(words: string, sum: Step['sum'], value: number): number {
    return this.take(words, sum, value, mm2);
  }

  angle(words: string, sum: Step['sum'], value: number): number {
    return this.take(words, sum, value, degrees);
  }

  number(words: string, sum: Step['sum'], value: number): number {
    return this.take(words, sum, value, plain);
  }

  percent(words: string, sum: Step['sum'], value: number): number {
    return this.take(words, sum, value, share);
  }

  text(words: string, sum: Step['sum'], value: string): string {
    this.last = value;
    if (this.keepSteps) this.steps.push({ words, sum, value });
    return value;
  }

  figure(words: string, sum: Step['sum'], figure: Figure): number {
    return this.take(words, sum, figure.value, (value) => ({ ...figure, value }));
  }

  span(words: string, sum: Step['sum'], span: FigureSpan): FigureSpan {
    if (!Number.isFinite(span.low.value) || !Number.isFinite(span.high.value)) this.tooLarge(words);
    this.last = span;
    if (this.keepSteps) this.steps.push({ words, sum, value: span });
    return span;
  }

  caution(sentence: string, mend?: Figure, put?: string, way: Cure['way'] = 'just'): void {
    this.cautions.push({ sentence, ...(mend && { mend }), ...(put !== undefined && { cure: { put, way } }) });
  }

  refuse(sentence: string): never {
    throw new Refusal(sentence);
  }

  say(value: number): string {
    return sayFigure(value, this.lengthUnit);
  }

  showIn(unit: UnitCode): void {
    this.lengthUnit = unit;
  }

  unitGiven(place: number): UnitCode | undefined {
    const value = this.values[place];
    return typeof value === 'object' && value !== null && 'dimension' in value ? value.unit : undefined;
  }

  private take(words: string, sum: Step['sum'], value: number, figure: (value: number) => Figure): number {
    if (!Number.isFinite(value)) this.tooLarge(words);
    // A minus zero would show as "−0".
    const clean = value === 0 ? 0 : value;
    this.last = clean;
    this.lastFigure = figure(clean);
    if (this.keepSteps) this.steps.push({ words, sum, value: this.lastFigure });
    return clean;
  }

  private tooLarge(words: string): never {
    this.refuse(`These figures are too large or too small to work out “${words}”: check them for a slip of the decimal mark.`);
  }
}

/** What the chart answered, or the end of this working with its sentence. */
export function orRefuse<T>(answer: T | Fault, pad: Pad): T {
  return isFault(answer) ? pad.refuse(answer.sentence) : answer;
}
