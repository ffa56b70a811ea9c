/**
 * LET gives words to values for the rest of its brackets. A word that stands for
 * cells is replaced by them, so that all that looks at cells still sees them; any
 * other value is worked out once. Outside its brackets the word means nothing,
 * and inside them it goes before a name of the workbook.
 */
import { workedOut } from '../evaluate.ts';
import type { Ast } from '../internals.ts';
import { refuse } from '../values.ts';
import type { Refusal } from '../values.ts';
import { tooMany } from './rounding.ts';
import type { Own } from './tools.ts';

type Words = ReadonlyMap<string, Ast>;

const CELLS: ReadonlySet<string> = new Set(['CELL_REFERENCE', 'CELL_RANGE', 'COLUMN_RANGE', 'ROW_RANGE']);

/** A part of a formula with the words in it replaced. */
function replaced(part: Ast, words: Words): Ast {
  if (words.size === 0) return part;
  switch (part.type) {
    case 'NAMED_EXPRESSION':
      return words.get(keyOf(part)) ?? part;
    case 'FUNCTION_CALL':
      return { ...part, args: part.procedureName === 'LET' ? inside(part.args ?? [], words) : (part.args ?? []).map((arg) => replaced(arg, words)) };
    case 'ARRAY':
      return { ...part, args: (part.args as unknown as readonly (readonly Ast[])[]).map((row) => row.map((cell) => replaced(cell, words))) as unknown as readonly Ast[] };
    default: {
      const value = typeof part.value === 'object' ? { value: replaced(part.value, words) } : {};
      return {
        ...part, ...value,
        ...(part.left && { left: replaced(part.left, words) }), ...(part.right && { right: replaced(part.right, words) }),
        ...(part.expression && { expression: replaced(part.expression, words) }),
      };
    }
  }
}

/** What stands between the brackets of a LET within another: its own words are left to it. */
function inside(args: readonly Ast[], words: Words): readonly Ast[] {
  const left = new Map(words);
  return args.map((arg, i) => {
    const isWord = i % 2 === 0 && i < args.length - 1;
    if (!isWord) return replaced(arg, left);
    if (arg.type === 'NAMED_EXPRESSION') left.delete(keyOf(arg));
    return arg;
  });
}

const keyOf = (word: Ast): string => word.expressionName!.toLowerCase();

/** The last part with every word in it replaced. `valueOf`: what a word stands for, given the words before it. */
function bound(args: readonly Ast[], valueOf: (part: Ast) => Ast): Ast | Refusal {
  const words = new Map<string, Ast>();
  for (let i = 0; i + 2 < args.length; i += 2) {
    const word = args[i]!;
    if (word.type !== 'NAMED_EXPRESSION') return refuse(`LET needs a word of your own in place ${i + 1}, such as ‘ease’; a figure, a text or a cell such as A1 cannot be one.`);
    words.set(keyOf(word), valueOf(replaced(args[i + 1]!, words)));
  }
  return replaced(args.at(-1)!, words);
}

function cellsIn(part: Ast): boolean {
  return part.type === 'PARENTHESES' ? cellsIn(part.expression!) : CELLS.has(part.type);
}

export const LET: Own = (call) => {
  const { args, state, tools: { interpreter } } = call;
  if (args.length < 3 || args.length % 2 === 0) return tooMany(call, 'a word and its value, as often as you like, and then a formula with the words', args.length);
  const part = bound(args, (value) => (cellsIn(value) ? value : workedOut(interpreter.evaluateAst(value, state), { type: 'STRING' })));
  return 'sentence' in part ? part : interpreter.evaluateAst(part, state);
};

/** The formula that a LET comes to, for telling how many cells its result fills; `undefined` where there is none. */
export function formulaOf(args: readonly Ast[]): Ast | undefined {
  if (args.length < 3 || args.length % 2 === 0) return undefined;
  const part = bound(args, (value) => value);
  return 'sentence' in part ? undefined : part;
}
