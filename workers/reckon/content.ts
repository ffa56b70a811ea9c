/** What is typed in a cell, as the engine is to take it. */
import { columnName, engineSheet, isFormula, MAX_COLUMNS, MAX_ROWS } from '../../src/formula/index.ts';
import { readQuantity } from '../../src/quantities/index.ts';
import type { Area } from '../../src/workbook/types.ts';
import { CellContent, CellError, ErrorType } from './internals.ts';
import { sentenceOf } from './sentences.ts';
import { Bracket, Refusal, refuse, valueOf } from './values.ts';

/** A formula that is in the engine's dialect already; any other text is one that was typed. */
export class EngineFormula {
  constructor(readonly text: string) {}
}

/** A formula that gives a block of cells, always the same ones whatever stands where. */
export function pointingAt({ sheet, top, left, bottom, right }: Area): EngineFormula {
  const before = `=${engineSheet(sheet)}!`;
  // Of whole columns and rows the engine looks at filled cells only.
  if (top === 0 && bottom >= MAX_ROWS - 1) return new EngineFormula(`${before}$${columnName(left)}:$${columnName(right)}`);
  if (left === 0 && right >= MAX_COLUMNS - 1) return new EngineFormula(`${before}$${top + 1}:$${bottom + 1}`);
  const first = `${before}$${columnName(left)}$${top + 1}`;
  return new EngineFormula(top === bottom && left === right ? first : `${first}:$${columnName(right)}$${bottom + 1}`);
}

/** Takes the place of a formula where a name's cells were removed. */
export class NoCells {
  constructor(readonly sentence: string) {}
}

/** A figure that was not typed but is tried; in the engine's own form. */
export class TriedFigure {
  constructor(readonly value: unknown) {}
}

/** Plain figures, the most there are in a sheet: no need to look for units and fractions in them. */
const PLAIN_FIGURE = /^-?\d{1,15}(?:\.\d{1,15})?$/;

/** What texts were read as; charts and columns hold the same ones over and over. */
const READ = new Map<string, unknown>();
const KEPT = 10_000;

const ERROR_WORDS: ReadonlyMap<string, string> = new Map([
  ['#CYCLE!', ErrorType.CYCLE], ['#DIV/0!', ErrorType.DIV_BY_ZERO], ['#ERROR!', ErrorType.ERROR], ['#N/A', ErrorType.NA],
  ['#NAME?', ErrorType.NAME], ['#NUM!', ErrorType.NUM], ['#REF!', ErrorType.REF], ['#SPILL!', ErrorType.SPILL], ['#VALUE!', ErrorType.VALUE],
]);

/** @param content what the engine was given for a cell: the text typed, an `EngineFormula`, a `TriedFigure`, a `NoCells`, or `null` for an empty one */
export function readContent(content: unknown): unknown {
  if (content === null || content === undefined) return CellContent.Empty.getSingletonInstance();
  if (content instanceof TriedFigure) return new CellContent.Number(content.value);
  if (content instanceof NoCells) return failed(new Refusal(ErrorType.REF, content.sentence));
  if (content instanceof EngineFormula || isFormula(content as string)) return new CellContent.Formula(content);
  const raw = content as string;
  if (PLAIN_FIGURE.test(raw)) return new CellContent.Number(Number(raw));
  let read = READ.get(raw);
  if (read === undefined) {
    if (READ.size >= KEPT) READ.clear();
    READ.set(raw, read = readTyped(raw));
  }
  return read;
}

function readTyped(raw: string): unknown {
  if (raw === '') return CellContent.Empty.getSingletonInstance();
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
