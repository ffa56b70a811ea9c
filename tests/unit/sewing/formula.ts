/**
 * A small evaluator of formulas, apart from the engine, so that the examples
 * and the published checks can be run against the functions themselves.
 * Knows + − × ÷ ^ &, brackets, unit literals, texts, names and sewing functions.
 */
import { add, divide, isFault, multiply, negate, power, readQuantity, subtract } from '../../../src/quantities/index.ts';
import type { Fault, Quantity } from '../../../src/quantities/index.ts';
import { CellBlock, functionNamed, KeptLayout, SizeChart, work } from '../../../src/sewing/index.ts';
import type { Outcome, SewingFunction, Value } from '../../../src/sewing/index.ts';

const UNIT = '(?:mm|cm|m|in|ft|yd)\\b|%|°';
const LITERAL = new RegExp(`^(?:\\d+\\s+\\d+/\\d+|\\d+/\\d+(?=\\s*(?:${UNIT}))|\\d+(?:\\.\\d+)?)\\s*(?:${UNIT})?`);

/** Thrown for a formula that has a sentence instead of a result. */
export class Told extends Error {}

export function evaluate(formula: string, names: Readonly<Record<string, Value>> = {}): Exclude<Value, null> {
  if (!formula.startsWith('=')) throw new Error(`no formula: ${formula}`);
  const reader = new Reader(formula.slice(1), names);
  const value = reader.joined();
  if (value === null || reader.rest !== '') throw new Error(`cannot read “${reader.rest}” in ${formula}`);
  return value;
}

/** The outcome, cautions and steps with it, of the function that a formula calls last, which is the outermost. */
export function outcomeOf(formula: string, names: Readonly<Record<string, Value>> = {}): Exclude<Outcome, Fault> {
  const reader = new Reader(formula.slice(1), names);
  reader.joined();
  if (reader.lastCall === undefined) throw new Error(`no call in ${formula}`);
  return told(work(reader.lastCall.fn, reader.lastCall.values, true));
}

class Reader {
  lastCall: { readonly fn: SewingFunction; readonly values: readonly Value[] } | undefined;

  constructor(
    public rest: string,
    private readonly names: Readonly<Record<string, Value>>,
  ) {}

  private eat(pattern: RegExp): string | null {
    this.rest = this.rest.trimStart();
    const found = pattern.exec(this.rest)?.[0] ?? null;
    if (found !== null) this.rest = this.rest.slice(found.length);
    this.rest = this.rest.trimStart();
    return found;
  }

  joined(): Value {
    let left = this.sum();
    while (this.eat(/^&/) !== null) left = written(left) + written(this.sum());
    return left;
  }

  private sum(): Value {
    let left = this.product();
    for (let sign = this.eat(/^[+−-]/); sign !== null; sign = this.eat(/^[+−-]/)) {
      left = told((sign === '+' ? add : subtract)(figure(left), figure(this.product())));
    }
    return left;
  }

  private product(): Value {
    let left = this.factor();
    for (let sign = this.eat(/^[*/×÷]/); sign !== null; sign = this.eat(/^[*/×÷]/)) {
      left = told((sign === '*' || sign === '×' ? multiply : divide)(figure(left), figure(this.factor())));
    }
    return left;
  }

  private factor(): Value {
    if (this.eat(/^[−-]/) !== null) return negate(figure(this.factor()));
    let value = this.atom();
    while (this.eat(/^\^/) !== null) value = told(power(figure(value), figure(this.atom())));
    return value;
  }

  /** A name of the caller's, which may have spaces in it. */
  private known(): string | null {
    const names = Object.keys(this.names).sort((a, b) => b.length - a.length);
    const found = names.find((name) => this.rest.startsWith(name) && !/^[A-Za-z0-9.(]/.test(this.rest.slice(name.length)));
    if (found !== undefined) this.rest = this.rest.slice(found.length).trimStart();
    return found ?? null;
  }

  private atom(): Value {
    if (this.eat(/^\(/) !== null) {
      const value = this.sum();
      if (this.eat(/^\)/) === null) throw new Error(`bracket not closed before “${this.rest}”`);
      return value;
    }
    const text = this.eat(/^"[^"]*"/);
    if (text !== null) return text.slice(1, -1);
    const literal = this.eat(LITERAL);
    if (literal !== null) return readLiteral(literal);
    const known = this.known();
    if (known !== null) return this.named(known);
    const name = this.eat(/^[A-Za-z][A-Za-z0-9.]*/);
    if (name === null) throw new Error(`cannot read “${this.rest}”`);
    if (this.eat(/^\(/) === null) throw new Error(`no name ${name}`);
    return this.call(name);
  }

  private named(name: string): Value {
    const value = this.names[name];
    if (value === undefined) throw new Error(`no name ${name}`);
    return value;
  }

  private call(name: string): Value {
    const values: Value[] = [];
    while (this.eat(/^\)/) === null) {
      values.push(this.sum());
      if (this.eat(/^[,;]/) === null && !this.rest.startsWith(')')) throw new Error(`cannot read “${this.rest}”`);
    }
    const fn = functionNamed(name);
    if (fn === undefined) throw new Error(`no function ${name}`);
    // A layout is named by a text, which the engine looks up.
    const taken = values.map((value, i) => (fn.args[i]?.kind === 'layout' ? this.named(String(value)) : value));
    this.lastCall = { fn, values: taken };
    return told(work(fn, taken)).value;
  }
}

function readLiteral(text: string): Quantity {
  const reading = readQuantity(text);
  if (reading.kind === 'quantity') return reading.quantity;
  throw new Error(`${text} is no quantity`);
}

function written(value: Value): string {
  return typeof value === 'string' ? value : String(figure(value).value);
}

function figure(value: Value): Quantity {
  if (typeof value === 'object' && value !== null && !(value instanceof SizeChart || value instanceof CellBlock || value instanceof KeptLayout) && 'dimension' in value) return value;
  throw new Error(`${String(value)} is no figure`);
}

function told<T extends object>(answer: T | Fault): Exclude<T, Fault> {
  if (isFault(answer)) throw new Told(answer.sentence);
  return answer as Exclude<T, Fault>;
}

/** A cell's typed text as its value, the way a sheet reads it. */
export function cellValue(raw: string): Value {
  if (raw.trim() === '') return null;
  if (raw.startsWith("'")) return raw.slice(1);
  const reading = readQuantity(raw);
  if (reading.kind === 'quantity') return reading.quantity;
  return reading.kind === 'span' ? reading.span : raw;
}
