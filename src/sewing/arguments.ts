/**
 * From what the cells hold to what a function works with: kinds and bounds are
 * checked and usual values filled in, here and nowhere else. Every refusal is
 * one sentence that names the function and the argument.
 */
import { exactText, showSpan, UNITS, unitNamed } from '../quantities/index.ts';
import type { Quantity, Span, UnitCode } from '../quantities/index.ts';
import { CellBlock } from './cell-block.ts';
import type { Arg, Figure, Given, SewingFunction, Value } from './define.ts';
import { KeptLayout } from './kept-layout.ts';
import { Refusal, sayFigure, sayQuantity } from './pad.ts';
import { SizeChart } from './size-chart.ts';

export interface Taken {
  readonly given: readonly Given[];
  /** The unit in which the working's lengths show. */
  readonly lengthUnit: UnitCode;
}

const isQuantity = (value: Value): value is Quantity => typeof value === 'object' && value !== null && 'dimension' in value;
const isSpan = (value: Value): value is Span => typeof value === 'object' && value !== null && 'low' in value;

/** @throws Refusal */
export function takeArguments(fn: SewingFunction, values: readonly Value[]): Taken {
  const most = fn.repeats ? Infinity : fn.args.length;
  if (values.length > most) {
    throw new Refusal(`${fn.name} takes ${countOf(fn.args.length)} and got ${values.length}: ${signature(fn)}.`);
  }
  const lengthUnit = unitOfLengths(fn, values);
  const given: Given[] = [];
  const total = Math.max(fn.args.length, values.length);
  for (let i = 0; i < total; i += 1) {
    const arg = fn.args[Math.min(i, fn.args.length - 1)] as Arg;
    const value = values[i];
    if (value === undefined || value === null) {
      if (arg.usual === undefined) {
        throw new Refusal(i < values.length ? `${fn.name} has no value for ${arg.name} yet.` : `${fn.name} needs ${arg.name} too: ${signature(fn)}.`);
      }
      given.push(arg.usual);
    } else {
      given.push(take(fn, arg, value, lengthUnit));
    }
  }
  return { given, lengthUnit };
}

export function signature(fn: SewingFunction): string {
  return `${fn.name}(${fn.args.map((arg) => arg.name).join(', ')}${fn.repeats ? ', …' : ''})`;
}

function countOf(n: number): string {
  return n === 1 ? 'one value' : `${n} values`;
}

/** The first length given decides; without one, the first span of lengths or area; the charts' own unit is set by the functions that read them. */
function unitOfLengths(fn: SewingFunction, values: readonly Value[]): UnitCode {
  let span: UnitCode | undefined;
  let area: UnitCode | undefined;
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i] as Value;
    if (isQuantity(value)) {
      const kind = fn.args[Math.min(i, fn.args.length - 1)]?.kind;
      if (value.dimension === 'length' && (kind === 'length' || kind === 'span')) return value.unit;
      if (value.dimension === 'area') area ??= value.unit.slice(0, -1) as UnitCode;
    } else if (isSpan(value) && value.low.dimension === 'length') {
      span ??= value.low.unit;
    }
  }
  return span ?? area ?? 'cm';
}

const DUE: Record<Arg['kind'], string> = {
  length: 'a length',
  area: 'an area',
  angle: 'an angle',
  number: 'a plain number',
  count: 'a whole number of at least 1',
  percent: 'a percent',
  choice: 'a word',
  text: 'a text',
  size: 'a size',
  chart: 'a size chart',
  span: 'two figures in one cell',
  block: 'a block of cells',
  layout: 'the name of a kept layout',
  unit: 'the name of a unit',
};

const IS_A: Record<Quantity['dimension'], string> = { length: 'a length', area: 'an area', angle: 'an angle', number: 'a plain number' };

/** A value as people write it, for sentences. */
function said(value: Exclude<Value, SizeChart | CellBlock | KeptLayout | null>): string {
  if (typeof value === 'string') return `“${value}”`;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return isSpan(value) ? showSpan(value, { system: 'own', inchStep: 32 }).main : sayQuantity(value);
}

type Wrong = (why: string) => never;

function take(fn: SewingFunction, arg: Arg, value: Exclude<Value, null>, lengthUnit: UnitCode): Given {
  if (arg.kind === 'chart' && value instanceof SizeChart) return value;
  const wrong: Wrong = (why) => {
    throw new Refusal(`${fn.name} needs ${DUE[arg.kind]} for ${arg.name}, and ${why}.`);
  };
  if (value instanceof SizeChart) return wrong('it got a block of cells: give one cell');
  if (value instanceof CellBlock) return arg.kind === 'block' ? value : wrong('it got a block of cells: give one cell');
  if (value instanceof KeptLayout) return arg.kind === 'layout' ? value : wrong('it got a layout');
  if (arg.kind === 'layout') return wrong(`${said(value)} is none`);
  if (arg.kind === 'block') return wrong(`${said(value)} is none: give the whole block, its labels with it`);
  if (arg.kind === 'chart') return wrong(`${said(value)} is none: give the block of cells that holds the chart, its labels with it`);
  if (typeof value === 'boolean') return wrong(`${said(value)} is none`);
  if (arg.kind === 'span') return takeSpan(wrong, value);
  if (isSpan(value)) return wrong(`${said(value)} is a span: give one figure of it, with SPAN.LOW or SPAN.HIGH`);
  switch (arg.kind) {
    case 'text':
      if (typeof value !== 'string') return wrong(`${said(value)} is ${IS_A[value.dimension]}: put it in quotation marks if it is meant as a text`);
      return value.trim() === '' ? wrong('it got an empty one') : value.trim();
    case 'choice':
      return takeChoice(fn, arg, value);
    case 'unit':
      return takeUnit(wrong, value);
    case 'size':
      return takeSize(wrong, value);
    default:
      return takeFigure(fn, arg, value, lengthUnit, wrong);
  }
}

/** One figure stands for a span that begins and ends with it. */
function takeSpan(wrong: Wrong, value: Quantity | Span | string): Given {
  if (typeof value === 'string') return wrong(`${said(value)} is a text`);
  const [low, high] = isSpan(value) ? [value.low, value.high] : [value, value];
  if (!Number.isFinite(low.value) || !Number.isFinite(high.value)) return wrong('it got no finite number');
  return { low: figureOf(low), high: figureOf(high) };
}

function figureOf({ value, dimension, unit }: Quantity): Figure {
  return unit === '%' ? { value, dimension, percent: true } : { value, dimension };
}

function takeChoice(fn: SewingFunction, arg: Arg, value: Quantity | string): string {
  const choices = arg.choices ?? [];
  const word = typeof value === 'string' ? value.trim().toLowerCase() : '';
  const found = choices.find((choice) => choice === word);
  if (found !== undefined) return found;
  const quoted = choices.map((choice) => `"${choice}"`);
  throw new Refusal(`${fn.name} needs ${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)} for ${arg.name}, and got ${said(value)}.`);
}

function takeUnit(wrong: Wrong, value: Quantity | string): UnitCode {
  const code = typeof value === 'string' ? unitNamed(value.trim()) : undefined;
  if (code !== undefined && UNITS[code].dimension === 'length') return code;
  return wrong(`${said(value)} is no unit of length: write "mm", "cm", "m", "in", "ft" or "yd"`);
}

function takeSize(wrong: Wrong, value: Quantity | string): number | string {
  if (typeof value === 'string') return value.trim() === '' ? wrong('it got an empty text') : value.trim();
  if (value.dimension !== 'number') return exactText(value);
  return Number.isFinite(value.value) ? value.value : wrong('it got no finite number');
}

function takeFigure(fn: SewingFunction, arg: Arg, value: Quantity | string, lengthUnit: UnitCode, wrong: Wrong): number {
  if (typeof value === 'string') return wrong(`${said(value)} is a text`);
  if (!Number.isFinite(value.value)) return wrong('it got no finite number');
  const due = arg.kind === 'length' || arg.kind === 'area' || arg.kind === 'angle' ? arg.kind : 'number';
  if (value.dimension !== due) return wrong(mismatch(arg, value, lengthUnit));
  if (arg.kind === 'percent' && value.unit !== '%' && value.value !== 0) return wrong(bareShare(value));
  if (arg.kind === 'count') {
    const whole = Math.round(value.value);
    // A count that was worked out, 1 m ÷ 0.1 m say, may miss the whole number by its last digit.
    if (whole < 1 || Math.abs(value.value - whole) > 1e-9 * whole) return wrong(`it got ${said(value)}`);
    return bounded(fn, arg, { ...value, value: whole });
  }
  return bounded(fn, arg, value);
}

/** What a figure of another dimension is, and what to write instead. */
function mismatch(arg: Arg, value: Quantity, lengthUnit: UnitCode): string {
  const bare = said(value);
  if (value.dimension !== 'number') return `${bare} is ${IS_A[value.dimension]}`;
  if (value.unit === '%') return `${bare} is a percent`;
  if (arg.kind === 'angle') return `${bare} has no unit: write ${bare}°`;
  const square = arg.kind === 'area' ? '²' : '';
  // A sheet in inches most likely means inches, so those come first.
  const [first, second] = UNITS[lengthUnit].system === 'inch' ? ['in', 'cm'] : ['cm', 'in'];
  return `${bare} has no unit: write ${bare} ${first}${square} or ${bare} ${second}${square}`;
}

/** 0.03 could be 3 % or a slip for 0.03 %, and 3 could be 300 %: only she knows. */
function bareShare(value: Quantity): string {
  const bare = said(value);
  if (Math.abs(value.value) >= 1) return `${bare} has no percent sign: write ${bare} %`;
  return `${bare} has no percent sign: write ${said({ ...value, value: value.value * 100 })} % or ${bare} %`;
}

function bounded(fn: SewingFunction, arg: Arg, value: Quantity): number {
  const figure = value.value;
  const bound = (n: number): string => (n === 0 ? '0' : sayFigure(n, value.unit));
  const outside = (words: string, n: number): never => {
    throw new Refusal(`${fn.name} needs ${arg.name} to be ${words} ${bound(n)}, and got ${said(value)}.`);
  };
  if (arg.above !== undefined && figure <= arg.above) return outside('more than', arg.above);
  if (arg.atLeast !== undefined && figure < arg.atLeast) return outside('at least', arg.atLeast);
  if (arg.below !== undefined && figure >= arg.below) return outside('less than', arg.below);
  if (arg.atMost !== undefined && figure > arg.atMost) return outside('at most', arg.atMost);
  return figure === 0 ? 0 : figure;
}
