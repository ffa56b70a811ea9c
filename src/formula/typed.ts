/**
 * Between what is typed and what is kept. A formula is kept with decimal points
 * whatever the workbook's decimal sign is, so that it means the same everywhere;
 * it is shown and typed with that sign.
 *
 * In a workbook with a decimal comma `1,2` between a function's brackets is a
 * number or two arguments. How many arguments the function takes may tell; else
 * it is refused, with both readings.
 */
import { commaFrames, decimalCommas } from './decimal-comma.ts';
import type { CommaFrame } from './decimal-comma.ts';
import { isFormula, tokenize } from './tokens.ts';
import type { Token } from './types.ts';

export type DecimalMark = '.' | ',';

/** How many arguments a function takes; `undefined` for one that is not known. */
export type CountOf = (name: string) => { readonly least: number; readonly most: number } | undefined;

export interface Manner {
  readonly mark: DecimalMark;
  readonly names: readonly string[];
  readonly countOf: CountOf;
}

export interface TwoReadings {
  /** `1,2`, as it was typed. */
  readonly piece: string;
  /** The whole formula, as it would be kept, in either meaning. */
  readonly oneNumber: string;
  readonly twoArguments: string;
}

/** What was typed, as it is to be kept; or the two things that it may mean. */
export function asKept(typed: string, { mark, names, countOf }: Manner): { readonly formula: string } | TwoReadings {
  if (!isFormula(typed) || !typed.includes(',')) return { formula: typed };
  const tokens = tokenize(typed, names);
  const commas = new Set<number>();
  for (const frame of commaFrames(tokens)) {
    const maybe = decimalCommas(tokens, frame);
    if (maybe.length === 0) continue;
    const sure = frame.kind === 'sum' || (frame.kind === 'call' && frame.semicolon);
    const reading = sure ? 'number' : mark === '.' ? readingWithPoint(tokens, maybe) : readingWithComma(frame, maybe, countOf);
    if (reading === 'either') {
      return {
        piece: `${tokens[maybe[0]! - 1]!.text},${tokens[maybe[0]! + 1]!.text}`,
        oneNumber: written(tokens, new Set([...commas, ...maybe]), NO_COMMAS),
        twoArguments: written(tokens, commas, new Set(maybe)),
      };
    }
    if (reading === 'number') for (const at of maybe) commas.add(at);
  }
  return { formula: commas.size === 0 ? typed : written(tokens, commas, NO_COMMAS) };
}

const NO_COMMAS: ReadonlySet<number> = new Set();

type Meaning = 'number' | 'arguments' | 'either';

/** With a decimal point a comma parts arguments, but `5,5 cm` looks too much like one length to be taken for two figures. */
function readingWithPoint(tokens: readonly Token[], maybe: readonly number[]): Meaning {
  return maybe.some((at) => tokens[at + 1]!.kind === 'unit') ? 'either' : 'arguments';
}

function readingWithComma({ opener, separators, kind }: CommaFrame, maybe: readonly number[], countOf: CountOf): Meaning {
  const count = kind === 'call' ? countOf(opener!.text.toUpperCase()) : undefined;
  if (count === undefined) return 'either';
  const all = separators.length + 1;
  const takes = (n: number): boolean => n >= count.least && n <= count.most;
  const [asNumber, asArguments] = [takes(all - maybe.length), takes(all)];
  if (asNumber === asArguments) return 'either';
  return asNumber ? 'number' : 'arguments';
}

/** The formula with some commas as decimal points and others as `;`. */
function written(tokens: readonly Token[], points: ReadonlySet<number>, semicolons: ReadonlySet<number>): string {
  return tokens.map(({ text }, at) => (points.has(at) ? '.' : semicolons.has(at) ? ';' : text)).join('');
}

/** A kept formula as it is shown. What is shown means the same when it is typed. */
export function asShown(formula: string, { mark, names, countOf }: Manner): string {
  if (mark === '.' || !isFormula(formula) || !/[.,]/.test(formula)) return formula;
  const tokens = tokenize(formula, names);
  const frames = framesOf(tokens);
  return tokens.map((token, at) => {
    const frame = frames[at]!;
    if (token.kind === 'separator' && token.text === ',' && frame.kind === 'call') return ';';
    if (token.kind !== 'number' && token.kind !== 'unit') return token.text;
    const alone = frame.kind === 'call' && frame.separators.length === 0 && countOf(frame.opener!.text.toUpperCase())?.most !== 1;
    return alone || frame.kind === 'list' ? token.text : token.text.replace(/(\d)\.(?=\d)/g, '$1,');
  }).join('');
}

/** The frame that each token stands in. */
function framesOf(tokens: readonly Token[]): readonly CommaFrame[] {
  const all = commaFrames(tokens);
  const open: CommaFrame[] = [];
  let next = 0;
  open.push(all[next++]!);
  return tokens.map((token) => {
    const frame = open.at(-1)!;
    if (token.kind === 'bracket' && (token.text === '(' || token.text === '{')) open.push(all[next++]!);
    else if (token.kind === 'bracket' && open.length > 1) open.pop();
    return frame;
  });
}
