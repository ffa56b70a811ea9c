/**
 * The values that travel through the engine's arithmetic beside its own plain
 * numbers, texts and truths: figures with a unit, spans, and errors that carry
 * a sentence. Percents and dates are the engine's own classes.
 */
import { exactText, isFault, showSpan, showText } from '../../src/quantities/index.ts';
import type { Dimension, Quantity, ShowAs, Span, UnitCode } from '../../src/quantities/index.ts';
import {
  CellError, DateNumber, DateTimeNumber, ErrorType, PercentNumber, RichNumber, TimeNumber,
} from './internals.ts';
import type { Place, Vertex } from './internals.ts';

/** What every one of the engine's own functions must be kept away from: its bare number says too little. */
export abstract class Dimensioned extends RichNumber {
  /** The engine asks this of its number classes; to it, these are numbers. */
  getDetailedType(): string {
    return 'NUMBER_RAW';
  }
}

/** A length, an area or an angle. Is a `Quantity`, so that the arithmetic of `src/quantities` takes it as it is. */
export class Measure extends Dimensioned implements Quantity {
  constructor(val: number, readonly dimension: Exclude<Dimension, 'number'>, readonly unit: UnitCode) {
    super(val);
  }

  get value(): number {
    return this.val;
  }

  /** The engine copies its numbers so whenever it tidies one up. */
  override fromNumber(val: number): this {
    return new Measure(val, this.dimension, this.unit) as this;
  }
}

/** Two figures kept as one. It can be shown and handed on, never reckoned with. */
export class Bracket extends Dimensioned {
  constructor(readonly span: Span) {
    super(span.low.value);
  }

  override fromNumber(): this {
    return this;
  }
}

/** Which operand of a sum an error speaks of. */
export type Side = 'left' | 'right';

/** An error with its sentence. */
export class Refusal extends CellError {
  constructor(
    type: string,
    sentence: string,
    /** The cell that it arose in, where that is known. */
    readonly at?: Place,
    /** The operand that is to blame, and whether because it is empty; used to name its cell. */
    readonly blame?: { readonly side: Side; readonly empty: boolean },
    root?: Vertex,
  ) {
    super(type, sentence, root);
  }

  get sentence(): string {
    return this.message ?? '';
  }

  /** The engine calls this to note the first cell of a chain of errors; `at` does that here. */
  override attachRootVertex(): this {
    return this;
  }

  arisenAt(at: Place): Refusal {
    return new Refusal(this.type, this.sentence, at, undefined, this.root);
  }
}

export function refuse(sentence: string): Refusal {
  return new Refusal(ErrorType.VALUE, sentence);
}

export function isDate(value: unknown): value is DateNumber | TimeNumber | DateTimeNumber {
  return value instanceof DateNumber || value instanceof DateTimeNumber || value instanceof TimeNumber;
}

export const isNumeric = (value: unknown): value is number | RichNumber => typeof value === 'number' || value instanceof RichNumber;

/** `undefined` for what is no figure of arithmetic: text, truths, errors, spans, dates, nothing. */
export function quantityOf(value: unknown): Quantity | undefined {
  if (typeof value === 'number') return { value, dimension: 'number', unit: '' };
  if (value instanceof Measure) return value;
  if (value instanceof PercentNumber) return { value: value.val, dimension: 'number', unit: '%' };
  return undefined;
}

/** The engine's value for what a sum in `src/quantities` gave. */
export function valueOf(outcome: Quantity | { readonly sentence: string }): number | RichNumber | Refusal {
  if (isFault(outcome)) return refuse(outcome.sentence);
  return valueIn(outcome.value, outcome.dimension, outcome.unit);
}

/** The engine's value for so many base units. */
export function valueIn(value: number, dimension: Dimension, unit: UnitCode): number | RichNumber {
  if (dimension !== 'number') return new Measure(value, dimension, unit);
  return unit === '%' ? new PercentNumber(value) : value;
}

/** How figures show where no cell shows them: in sentences, and when they are joined to text. */
const AS_TEXT: ShowAs = { system: 'own', inchStep: 32 };

/** A figure in a sentence: exactly where that is short, otherwise as text. */
export function sayOf(value: Dimensioned): string {
  if (value instanceof Bracket) return textOf(value);
  const exact = exactText(value as Measure);
  return exact.length <= 14 ? exact.replace('-', '−') : textOf(value);
}

/** A figure as text, in its own unit, inches to 1/32. */
export function textOf(value: Dimensioned): string {
  return value instanceof Bracket ? showSpan(value.span, AS_TEXT).main : showText(value as Measure, AS_TEXT);
}

/** Equal results, so that a change can stop where it changes nothing. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (a instanceof Measure) return b instanceof Measure && a.val === b.val && a.unit === b.unit;
  if (a instanceof CellError) return b instanceof CellError && sameError(a, b);
  if (a instanceof RichNumber) {
    if (!(b instanceof RichNumber) || b instanceof Measure || a.constructor !== b.constructor || a.val !== b.val) return false;
    return !(a instanceof Bracket) || sameSpan(a.span, (b as Bracket).span);
  }
  return false;
}

const sameSpan = (a: Span, b: Span): boolean => a.high.value === b.high.value && a.low.unit === b.low.unit;

function sameError(a: CellError, b: CellError): boolean {
  // A circle is told by its cells, and they may be others though it begins in the same one.
  if (a.type === ErrorType.CYCLE || a.type !== b.type || a.message !== b.message || a.root !== b.root) return false;
  const [first, second] = [(a as Refusal).at, (b as Refusal).at];
  return first === second || (first !== undefined && second !== undefined
    && first.row === second.row && first.col === second.col && first.sheet === second.sheet);
}
