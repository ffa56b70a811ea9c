/**
 * The trade's arithmetic. One file a topic; each function is defined once, with
 * its arguments, rule, working, cautions and source (`define.ts` is the shape).
 * Pure: values in, an outcome or a sentence out. Imports only `quantities`.
 * To add a function, add a `define({...})` to its topic's list.
 */
export type { Arg, ArgKind, Caution, Cure, Figure, FigureSpan, Gives, Outcome, SewingFunction, Step, Value } from './define.ts';
export { signature } from './arguments.ts';
export { CellBlock } from './cell-block.ts';
export { KeptLayout } from './kept-layout.ts';
export type { LayoutFigures } from './kept-layout.ts';
export { FUNCTIONS, functionNamed } from './functions.ts';
export { adviseSizes } from './size-choice-advice.ts';
export type { Advice, BlendAdvice, LevelAdvice, SizeLeaves } from './size-choice-advice.ts';
export type { Measured } from './size-choice-body.ts';
export { COST_IN_WORDS, STYLES, USUAL_PREFERENCES } from './size-choice-cost.ts';
export type { Preferences, Style } from './size-choice-cost.ts';
export { knownLevel, levelsOf, measuresAt, usualDistance } from './size-choice-levels.ts';
export { readChart, SizeChart } from './size-chart.ts';
export { figureIn, work } from './work.ts';
