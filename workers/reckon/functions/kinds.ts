/**
 * Figures that are to be of one kind: all lengths, say, or all plain numbers.
 * Takes down the first of each kind so that a mixture can be named.
 */
import { exactText } from '../../../src/quantities/index.ts';
import type { Dimension, UnitCode } from '../../../src/quantities/index.ts';
import { spanSentence } from '../arithmetic.ts';
import { ErrorType, PercentNumber } from '../internals.ts';
import { Bracket, Measure, quantityOf, Refusal, sayOf } from '../values.ts';

/** A figure and the way to name the cell it stands in. */
export interface Sample {
  readonly value: unknown;
  readonly name: () => string | undefined;
}

const DIMENSIONS: readonly Dimension[] = ['number', 'length', 'area', 'angle'];
export const PLURALS: Readonly<Record<Dimension, string>> = { number: 'plain numbers', length: 'lengths', area: 'areas', angle: 'angles' };

export interface Kind {
  readonly dimension: Dimension;
  /** The unit of the first; `%` when all are percents. */
  readonly unit: UnitCode;
}

export class Kinds {
  readonly #first: (Sample | undefined)[] = [];
  #span: Sample | undefined;
  #bare = false;

  add(value: unknown, name: Sample['name']): void {
    if (value instanceof Bracket) {
      this.#span ??= { value, name };
      return;
    }
    if (!(value instanceof PercentNumber) && !(value instanceof Measure)) this.#bare = true;
    const place = value instanceof Measure ? DIMENSIONS.indexOf(value.dimension) : 0;
    this.#first[place] ??= { value, name };
  }

  /** What kind they all are; a refusal when they are of several. */
  verdict(): Kind | Refusal {
    if (this.#span) return new Refusal(ErrorType.VALUE, named(this.#span, spanSentence(this.#span.value as Bracket)));
    const [number, ...rest] = DIMENSIONS.map((_, i) => this.#first[i]);
    const [measured, other] = rest.filter((sample) => sample !== undefined);
    if (!measured) return { dimension: 'number', unit: number && !this.#bare ? '%' : '' };
    const one = measured.value as Measure;
    if (number) {
      const figure = exactText(quantityOf(number.value) ?? { value: NaN, dimension: 'number', unit: '' });
      return new Refusal(ErrorType.VALUE, `${number.name() ?? 'One of the figures'} is ${figure} without a unit among ${PLURALS[one.dimension]} such as ${described(measured)}: give it its unit.`);
    }
    if (other) {
      return new Refusal(ErrorType.VALUE, `${PLURALS[one.dimension]} and ${PLURALS[(other.value as Measure).dimension]} do not go together: ${described(measured)} and ${described(other)}.`.replace(/^./, (c) => c.toUpperCase()));
    }
    return { dimension: one.dimension, unit: one.unit };
  }
}

function described({ value, name }: Sample): string {
  const cell = name();
  return cell === undefined ? sayOf(value as Measure) : `${sayOf(value as Measure)} in ${cell}`;
}

function named({ name }: Sample, sentence: string): string {
  const cell = name();
  return cell === undefined ? sentence : `${cell}: ${sentence}`;
}
