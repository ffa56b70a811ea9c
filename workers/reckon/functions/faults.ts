/**
 * What an error of the engine's own functions means: which function, which of the
 * values between its brackets, and what to do. The engine knows the kind of error
 * only; the names of the values are those that the reference has for them.
 */
import { STANDARD_FUNCTIONS } from '../../../src/formula/standard/index.ts';
import { CellError, EmptyValue, ErrorMessage, ErrorType, SimpleRangeValue } from '../internals.ts';
import type { Parameter } from '../internals.ts';
import { OURS, sentenceOf } from '../sentences.ts';
import { isNumeric, Refusal } from '../values.ts';
import type { Call, Given } from './tools.ts';

const DESCRIBED = new Map(STANDARD_FUNCTIONS.map((fn) => [fn.name, fn]));

/** Errors of these kinds come out of cells and names, and a function only hands them on. */
const HANDED_ON: ReadonlySet<string> = new Set([ErrorType.CYCLE, ErrorType.REF, ErrorType.NAME, ErrorType.SPILL, ErrorType.ERROR, ErrorType.LIC]);

/** A result of the engine's own function; an error with its sentence. */
export function toldResult(call: Call, result: unknown): unknown {
  if (typeof result === 'number') return Number.isFinite(result) ? result : told(call, new CellError(ErrorType.NUM, ErrorMessage.NaN as string));
  return result instanceof CellError && !(result instanceof Refusal) ? told(call, result) : result;
}

function told(call: Call, error: CellError): CellError {
  if (call.args.length === 0 && error.message === undefined) return error;
  if (error.message?.includes(OURS) || (HANDED_ON.has(error.type) && error.message !== ErrorMessage.IndexLarge)) return error;
  return new Refusal(error.type, sentence(call, error), undefined, undefined, error.root);
}

function sentence(call: Call, error: CellError): string {
  switch (error.message) {
    case ErrorMessage.WrongArgNumber: return wrongCount(call);
    case ErrorMessage.EmptyArg: return `${call.name} has an empty place between its brackets: put a value there, or take the sign before it away.`;
    case ErrorMessage.ValueNotFound: return notFound(call, call.given[0]!, call.given[1]).sentence;
    case ErrorMessage.PatternNotFound: return `${call.name} did not find ${shown(call, call.given[0]!)} in ${shown(call, call.given[1]!)}: look for a text that is there, or say with IFERROR what to give instead.`;
    case ErrorMessage.NoConditionMet: return `None of the tests of ${call.name} is true: put TRUE and a value after them, for every other case.`;
    case ErrorMessage.NoDefault: return `None of the cases of ${call.name} fits: put a value for every other case after them.`;
    case ErrorMessage.Selector: return `${call.name} got ${shown(call, call.given[0]!)} as the place of a value, and there are ${call.args.length - 1}: choose one from 1 to ${call.args.length - 1}.`;
    case ErrorMessage.EmptyRange: return `${call.name} has nothing left to give: none of the tests is true. Change them, or say with IFERROR what to give instead.`;
    case ErrorMessage.EqualLength: case ErrorMessage.WrongDimension: case ErrorMessage.ArrayDimensions: return sizes(call);
    case ErrorMessage.ValueLarge: case ErrorMessage.ValueSmall: return blamed(call, error) ?? noPlace(call) ?? general(call, error);
    default: return blamed(call, error) ?? general(call, error);
  }
}

export function wrongCount(call: Call): string {
  return `${call.name} has too few or too many values in its brackets: it takes ${due(call.name)}, and got ${call.args.length}.`;
}

/** How many values a function takes, with their names. */
function due(name: string): string {
  const fn = DESCRIBED.get(name);
  if (fn === undefined) return 'another number of them';
  const most = fn.args.length;
  const least = fn.args.filter(({ optional }) => !optional).length;
  if (most === 0) return 'none';
  const count = fn.repeats > 0 ? `${least} or more` : least === most ? String(most) : `${least} to ${most}`;
  return `${count} (${fn.args.map((arg) => arg.name).join('; ')})`;
}

/** What a look-up says that found nothing. */
export function notFound(call: Call, asked: Given, among: Given | undefined): Refusal {
  if (asked.value === EmptyValue) return new Refusal(ErrorType.NA, `${call.nameOf(asked) ?? 'The cell to look for'} has no value yet.`);
  const where = among && call.areaOf(among);
  return new Refusal(ErrorType.NA, `${call.name} did not find ${shown(call, asked)}${where === undefined ? '' : ` among ${where}`}: look for a value that is there, or say with IFNA what to give instead.`);
}

/** A value as a sentence has it. */
function shown(call: Call, given: Given): string {
  const { value } = given;
  if (value instanceof SimpleRangeValue) return call.areaOf(given) ?? 'a block of cells';
  if (value === EmptyValue) return given.ast.type === 'EMPTY' ? 'nothing' : `${call.nameOf(given) ?? 'an empty cell'}`;
  const text = call.tools.arithmetic.text(value).replace(/^-/, '−');
  if (typeof value !== 'string') return text;
  return `“${text.length > 40 ? `${text.slice(0, 39)}…` : text}”`;
}

function sizes(call: Call): string {
  const blocks = call.given.filter(({ value }) => value instanceof SimpleRangeValue).map((given) => {
    const block = given.value as SimpleRangeValue;
    return `${call.areaOf(given) ?? 'a block'} has ${block.height()} × ${block.width()} cells`;
  });
  return `${call.name} needs blocks of cells that fit each other${blocks.length > 0 ? `: ${blocks.join(', ')}` : ''}. Name blocks of one size.`;
}

const NUMBERS: ReadonlySet<string> = new Set(['NUMBER', 'INTEGER']);

/** The value that is not as the engine's table of arguments asks. */
function blamed(call: Call, error: CellError): string | undefined {
  const { parameters = [], repeatLastArgs = 0 } = call.tools.interpreter.functionRegistry.getMetadata(call.name) ?? {};
  for (const [i, given] of call.given.entries()) {
    const place = i < parameters.length || repeatLastArgs === 0 ? i : parameters.length - repeatLastArgs + ((i - parameters.length) % repeatLastArgs);
    const parameter = parameters[place];
    if (parameter === undefined || given.value instanceof CellError) continue;
    const wanted = wantedOf(call, parameter, given, error);
    if (wanted !== undefined) return `${call.name} needs ${wanted} as its ${ordinal(i + 1)} value${nameOf(call.name, place)}, and ${got(call, given)}: put ${wanted} there.`;
  }
  return undefined;
}

function wantedOf(call: Call, parameter: Parameter, { value }: Given, error: CellError): string | undefined {
  if (!NUMBERS.has(parameter.argumentType)) return undefined;
  if (value instanceof SimpleRangeValue) return error.message === ErrorMessage.ScalarExpected ? 'one number' : undefined;
  const number = call.tools.helper.coerceScalarToNumberOrError(value);
  if (!isNumeric(number)) return 'a number';
  const bare = typeof number === 'number' ? number : number.val;
  const { minValue, maxValue, lessThan, greaterThan } = parameter;
  if (minValue !== undefined && bare < minValue) return `a number of ${say(minValue)} or more`;
  if (maxValue !== undefined && bare > maxValue) return `a number up to ${say(maxValue)}`;
  if (greaterThan !== undefined && bare <= greaterThan) return `a number above ${say(greaterThan)}`;
  if (lessThan !== undefined && bare >= lessThan) return `a number below ${say(lessThan)}`;
  return parameter.argumentType === 'INTEGER' && !Number.isInteger(bare) ? 'a whole number' : undefined;
}

const say = (number: number): string => number.toLocaleString('en', { maximumFractionDigits: 6 }).replace('-', '−');

const nameOf = (name: string, place: number): string => {
  const arg = DESCRIBED.get(name)?.args[place];
  return arg === undefined ? '' : ` (${arg.name})`;
};

function got(call: Call, given: Given): string {
  const cell = call.nameOf(given);
  return cell === undefined || given.value instanceof SimpleRangeValue ? `got ${shown(call, given)}` : given.value === EmptyValue ? `${cell} has no value yet` : `${cell} is ${shown(call, given)}`;
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];
const ordinal = (n: number): string => ORDINALS[n - 1] ?? `${n}th`;

/** LARGE and SMALL, asked for a place that there is not. */
function noPlace(call: Call): string | undefined {
  const [block, place] = call.given;
  if ((call.name !== 'LARGE' && call.name !== 'SMALL') || !block || !place || typeof place.value !== 'number') return undefined;
  const count = block.value instanceof SimpleRangeValue ? block.value.data.flat().filter(isNumeric).length : 1;
  return `${call.name} was asked for place ${say(place.value)}, and ${call.areaOf(block) ?? 'its block'} has ${count} figures: choose a place from 1 to ${count}.`;
}

/** The values it got, the engine's reason, and what it takes. */
function general(call: Call, error: CellError): string {
  const reason = error.type === ErrorType.DIV_BY_ZERO && error.message === undefined ? 'it would divide by 0.' : sentenceOf(error).replace(/^[A-Z](?=[a-z ])/, (letter) => letter.toLowerCase());
  const takes = DESCRIBED.get(call.name)?.args.filter((_, i) => isNumeric(call.given[i]?.value)).map(({ name, about }) => `${name} (${about})`).join(', ');
  const values = call.given.slice(0, 4).map((given) => (given.value instanceof CellError ? 'an error' : shown(call, given)));
  const list = values.length > 1 ? `${values.slice(0, -1).join(', ')} and ${values.at(-1)}` : values.join('');
  return `${call.name} got ${list || 'nothing'}: ${reason}${takes ? ` It takes ${takes}.` : ''}`;
}
