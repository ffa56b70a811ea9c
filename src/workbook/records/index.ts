/**
 * What a workbook keeps besides its cells: people, cases compared, layouts,
 * ticks… Each is a *record*: an id and plain JSON data of one kind. All kinds
 * are in `KINDS`; a new one is a file here and a line there. Records are
 * changed only by the edit `setRecord`.
 *
 * A record that points at cells holds formulas (`=Fit!B4`, always with the
 * sheet) in the places that its kind names, and they follow as a cell's do.
 */
import { ticketKind, type Ticket } from './ticket.ts';
import type { RecordKindCard } from './kind.ts';

/** The data of every kind, by its kind. */
export interface RecordData {
  readonly ticket: Ticket;
}

export type RecordKind = keyof RecordData;

export const KINDS: { readonly [K in RecordKind]: RecordKindCard<RecordData[K]> } = {
  ticket: ticketKind,
};

export type BookRecord = { readonly [K in RecordKind]: { readonly kind: K; readonly id: string; readonly data: RecordData[K] } }[RecordKind];

export const isRecordKind = (kind: unknown): kind is RecordKind => typeof kind === 'string' && Object.hasOwn(KINDS, kind);

export type { Ticket } from './ticket.ts';
export type { RecordKindCard } from './kind.ts';
