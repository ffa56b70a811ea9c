/** What is typed in a cell, as the engine is to take it. */
import { isFormula } from '../../src/formula/index.ts';
import { readQuantity } from '../../src/quantities/index.ts';
import { CellContent, CellError, ErrorType } from './internals.ts';
import { sentenceOf } from './sentences.ts';
import { Bracket, Refusal, refuse, valueOf } from './values.ts';

/** A cell's text, or a formula that is already in the engine's dialect. The engine keeps it with the cell. */
export class Typed {
  constructor(readonly raw: string, readonly engineText?: string) {}
}

/** Takes the place of a formula where a name's cells were removed. */
export class NoCells {
  constructor(readonly sentence: string) {}
}

/** Plain figures, the most there are in a sheet: no need to look for units and fractions in them. */
const PLAIN_FIGURE = /^-?\d{1,15}(?:\.\d{1,15})?$/;

const ERROR_WORDS: ReadonlyMap<string, string> = new Map([
  ['#CYCLE!', ErrorType.CYCLE], ['#DIV/0!', ErrorType.DIV_BY_ZERO], ['#ERROR!', ErrorType.ERROR], ['#N/A', ErrorType.NA],
  ['#NAME?', ErrorType.NAME], ['#NUM!', ErrorType.NUM], ['#REF!', ErrorType.REF], ['#SPILL!', ErrorType.SPILL], ['#VALUE!', ErrorType.VALUE],
]);

/** @param content what the engine was given for a cell: a `Typed`, a `NoCells`, or `null` for an empty one */
export function readContent(content: unknown): unknown {
  if (content === null || content === undefined) return CellContent.Empty.getSingletonInstance();
  if (content instanceof NoCells) return failed(new Refusal(ErrorType.REF, content.sentence));
  const typed = content as Typed;
  if (typed.engineText !== undefined || isFormula(typed.raw)) return new CellContent.Formula(typed);
  return readTyped(typed.raw);
}

function readTyped(raw: string): unknown {
  if (raw === '') return CellContent.Empty.getSingletonInstance();
  if (PLAIN_FIGURE.test(raw)) return new CellContent.Number(Number(raw));
  if (raw.startsWith("'")) return new CellContent.String(raw.slice(1));
  const word = raw.trim().toUpperCase();
  if (word === 'TRUE' || word === 'FALSE') return new CellContent.Boolean(word === 'TRUE');
  const error = ERROR_WORDS.get(word);
  if (error !== undefined) return failed(new Refusal(error, sentenceOf(new CellError(error))));
  const reading = readQuantity(raw);
  switch (reading.kind) {
    case 'quantity': {
      const value = valueOf(reading.quantity);
      return value instanceof Refusal ? failed(value) : new CellContent.Number(value);
    }
    case 'span':
      return new CellContent.Number(new Bracket(reading.span));
    case 'refused':
      return reading.meant === 'figure' ? failed(refuse(reading.sentence)) : new CellContent.String(raw);
    default:
      return new CellContent.String(raw);
  }
}

function failed(refusal: Refusal): unknown {
  const content = new CellContent.Error(refusal.type);
  content.value = refusal;
  return content;
}
