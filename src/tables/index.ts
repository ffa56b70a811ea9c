/**
 * Tables in files: CSV in and out, and size charts read from them. Pure
 * functions over bytes, texts and plain data; quantities do the figures.
 * A field is text until it is read as a figure, and never a formula.
 */
export type {
  ChartCell, ChartChoices, ChartReading, ChartUnit, DecimalMark, Decision, Encoding, FirstColumnHolds, Measure, MeasureKind,
  Separator, SizeLabel, SizesRun, Unreadable,
} from './reading.ts';
export { decode, type Decoded } from './decode.ts';
export { LIMITS, readRows, sizeFault, type Table } from './read.ts';
export { readTable, understand } from './understand.ts';
export { asText, chartSheet, type ChartSheet } from './chart-sheet.ts';
export { needsGuard, writeCsv, type CsvOptions, type CsvText, type OutCell } from './write.ts';
