/**
 * The trade's arithmetic. One file a topic; each function is defined once, with
 * its arguments, rule, working, cautions and source (`define.ts` is the shape).
 * Pure: values in, an outcome or a sentence out. Imports only `quantities`.
 * To add a function, add a `define({...})` to its topic's list.
 */
export type { Arg, ArgKind, Caution, Cure, Figure, FigureSpan, Gives, Outcome, SewingFunction, Step, Value } from './define.ts';
export { signature } from './arguments.ts';
export { CellBlock } from './cell-block.ts';
export { FUNCTIONS, functionNamed } from './functions.ts';
export { readChart, SizeChart } from './size-chart.ts';
export { figureIn, work } from './work.ts';
