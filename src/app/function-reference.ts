/** What the reference asks of the workbook: to work an example out, to fit one to the names that there are, and which function is meant. */
import { sameName, tokenize } from '../formula/index.ts';
import type { Tried } from '../panels/index.ts';
import type { FunctionCard, Supervisor } from '../reckoning/index.ts';
import type { Book } from '../workbook/index.ts';

export async function tryExample(engine: Supervisor | null, formula: string): Promise<Tried> {
  if (!engine) return { formula, sentence: 'The sums are not ready yet. Try again in a moment.' };
  try {
    return { formula, example: await engine.example(formula) };
  } catch (error) {
    return { formula, sentence: error instanceof Error ? error.message : String(error) };
  }
}

/** An example with the workbook's own size chart in the place of the sample that stood for one. */
export function fitted(formula: string, needs: FunctionCard['needs'], book: Book): string {
  const chart = book.names.find(({ kind, area }) => kind === 'chart' && area !== null);
  const strange = needs.filter(({ kind, name }) => kind === 'chart' && !book.names.some((own) => sameName(own.name, name))).map(({ name }) => name);
  if (!chart || strange.length === 0) return formula;
  return tokenize(formula, strange).map(({ kind, text }) => (kind === 'name' && strange.includes(text) ? chart.name : text)).join('');
}

/** The first function that a formula calls. */
export function functionIn(raw: string): string | undefined {
  return raw.startsWith('=') ? tokenize(raw).find(({ kind }) => kind === 'function')?.text.toUpperCase() : undefined;
}
