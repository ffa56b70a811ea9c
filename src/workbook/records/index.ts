/**
 * What a workbook keeps besides its cells: people, cases compared, layouts,
 * ticks… Each is a *record*: an id and plain JSON data of one kind. All kinds
 * are in `KINDS`; a new one is a file here and a line there. Records are
 * changed only by the edit `setRecord`.
 *
 * A record that points at cells holds formulas (`=Fit!B4`, always with the
 * sheet) in the places that its kind names, and they follow as a cell's do.
 */
import { personKind, type Person } from './person.ts';
import { layKind, type Lay } from './lay.ts';
import { markKind, type Mark } from './mark.ts';
import { shapeKind, type Shape } from './shape.ts';
import { comparisonKind, type ComparisonRecord } from './comparison.ts';
import { runKind, type RunRecord } from './run.ts';
import { ticketKind, type Ticket } from './ticket.ts';
import { ticksKind, type Ticks } from './ticks.ts';
import type { RecordKindCard } from './kind.ts';

/** The data of every kind, by its kind. */
export interface RecordData {
  readonly comparison: ComparisonRecord;
  readonly run: RunRecord;
  readonly person: Person;
  readonly ticket: Ticket;
  readonly ticks: Ticks;
  readonly lay: Lay;
  readonly shape: Shape;
  readonly mark: Mark;
}

export type RecordKind = keyof RecordData;

export const KINDS: { readonly [K in RecordKind]: RecordKindCard<RecordData[K]> } = {
  comparison: comparisonKind,
  run: runKind,
  person: personKind,
  ticket: ticketKind,
  ticks: ticksKind,
  lay: layKind,
  shape: shapeKind,
  mark: markKind,
};

export type BookRecord = { readonly [K in RecordKind]: { readonly kind: K; readonly id: string; readonly data: RecordData[K] } }[RecordKind];

export const isRecordKind = (kind: unknown): kind is RecordKind => typeof kind === 'string' && Object.hasOwn(KINDS, kind);

export type { AtLevel, MeasureSet, Person, PutMeasure, TakenMeasure, Worked } from './person.ts';
export type { ClothTyped, KeptLayout, Lay, LayCloth, LayPlace, LayRectangle } from './lay.ts';
export type { Shape, ShapeMark, ShapePlace, ShapePoint } from './shape.ts';
export type { Mark } from './mark.ts';
export type { Ticket } from './ticket.ts';
export type { Tick, Ticks } from './ticks.ts';
export { MOST_CASES, type ComparisonInput, type ComparisonRecord } from './comparison.ts';
export { MOST_RUN_RESULTS, type RunRecord } from './run.ts';
export type { RecordKindCard } from './kind.ts';
