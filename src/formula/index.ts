/**
 * The language of formulas: tokens, translation to the engine's dialect,
 * references that follow their cells, and what the entry line needs for
 * colours, completion and signature help.
 *
 * Everything here is a pure function of text. Nothing throws on any text: what
 * cannot be read comes back as a `Fault` with one sentence for the person who
 * typed it. Imports `src/quantities` only.
 *
 * Rows and columns count from 0; formulas count from 1 and A.
 */
export type {
  Box, ChangeOfReferences, Corner, EngineContext, FormulaFault, Instead, LineMove, Reference, Run, SheetName, Token, TokenKind, UnitPart,
} from './types.ts';
export {
  MAX_COLUMNS, MAX_ROWS, areaName, cellName, columnName, columnNumber, looksLikeCell, readArea,
} from './address.ts';
export { engineName, foldName, nameFromEngine, nameShapeFault, sameName } from './names.ts';
export { engineSheet, sheetFromEngine, sheetInFormula } from './sheets.ts';
export { isFormula, tokenize } from './tokens.ts';
export { MAX_DEPTH, MAX_LENGTH, MAX_TERMS, toEngine } from './dialect.ts';
export { QUANTITY_CALL } from './engine-words.ts';
export { plainReferences } from './plain.ts';
export { Repeats } from './repeats.ts';
export { mayBeMoved, replaceCorners, rewriteReferences, sheetOfReference, shiftCopy } from './follow.ts';
export { moveBack, placeAfterMove, runAfterMove } from './move.ts';
export { figuresIn, withUnits, wordMends } from './mend.ts';
export type { WordMend, Words } from './mend.ts';
export { nearest } from './nearest.ts';
export { asKept, asShown } from './typed.ts';
export type { CountOf, DecimalMark, Manner, TwoReadings } from './typed.ts';
export type { Call, FormulaReference, WordAtCaret } from './caret.ts';
export { callAt, referencesIn, wordAt } from './caret.ts';
