/** What goes on paper, as plain data. Pure functions of `src/app` make it; `tt-paper` sets it in type. */
import type { CellAddress, SheetId } from '../workbook/index.ts';
import type { Result, WorkingCall } from '../reckoning/index.ts';
import type { LayPlan, LayToScale } from './lay-paper.ts';
import type { Shopping } from './to-buy-parts.ts';

/** What every page says of itself. */
export interface PaperHead {
  readonly title: string;
  readonly person: string;
  readonly date: string;
}

export interface PrintedCell {
  readonly text: string;
  /** The same in the other system. */
  readonly also?: string;
  /** Columns that it reaches over; the ones it does not fill are empty. */
  readonly span: number;
  readonly align: 'start' | 'centre' | 'end';
  /** `typed`: a figure that was typed, `error`: the sentence of a cell without a result. */
  readonly kind: 'text' | 'figure' | 'typed' | 'error';
  readonly strong: boolean;
  readonly italic: boolean;
  readonly border?: 'above' | 'below' | 'around';
  /** Numbers of its footnotes. */
  readonly marks: readonly number[];
}

export interface PrintedRow {
  /** As it stands beside the cells, counted from 1. */
  readonly number: number;
  readonly cells: readonly PrintedCell[];
}

export interface PrintedTable {
  /** `share`: percent of the table's width. */
  readonly columns: readonly { readonly letter: string; readonly share: number }[];
  /** Percent that no column takes, at the right. */
  readonly spare: number;
  /** Again at the head of each page that the table reaches. */
  readonly heading: readonly PrintedRow[];
  readonly rows: readonly PrintedRow[];
}

export interface Footnote {
  readonly number: number;
  readonly place: string;
  readonly kind: 'note' | 'pin' | 'acknowledged';
  readonly text: string;
}

export interface PrintedSheet extends PaperHead {
  readonly what: 'sheet';
  readonly name: string;
  readonly about: string;
  readonly tables: readonly PrintedTable[];
  readonly footnotes: readonly Footnote[];
  /** What is not on the paper, in sentences. */
  readonly missing: readonly string[];
}

export interface TicketFigure {
  readonly cell: CellAddress;
  /** The heading above it; empty where it has none. */
  readonly head: string;
  /** As the grid shows it. */
  readonly main: string;
  /** In the other system. */
  readonly also?: string;
  readonly kind: 'figure' | 'typed' | 'text' | 'error';
}

export interface TicketRow {
  /** Its sheet and its place there. */
  readonly key: string;
  readonly sheet: SheetId;
  readonly label: string;
  /** The sheet, where the part that it stands in does not say so. */
  readonly from: string;
  readonly figures: readonly TicketFigure[];
  /** How much it is cut by: 0 for what is no use at the table. */
  readonly weight: number;
  /** The cell whose working has a picture. */
  readonly pictured: CellAddress | null;
}

export interface TicketPart {
  readonly name: string;
  readonly rows: readonly TicketRow[];
}

export interface TicketPicture {
  readonly label: string;
  readonly call: WorkingCall;
  readonly result: Result;
}

export interface Ticket extends PaperHead {
  readonly what: 'ticket';
  readonly parts: readonly TicketPart[];
  /** Pins that nobody acknowledged, on the sheets that are on the ticket. */
  readonly cautions: readonly { readonly place: string; readonly text: string }[];
  readonly pictures: readonly TicketPicture[];
  /** How many rows of each part are not on it. */
  readonly left: readonly { readonly name: string; readonly rows: number }[];
}

export interface FullSizeCurve extends PaperHead {
  readonly what: 'curve';
  readonly label: string;
  /** mm. */
  readonly radius: number;
  /** The radius in words, both systems. */
  readonly shown: string;
}

export type Printed = PrintedSheet | Ticket | Shopping | LayPlan | LayToScale | FullSizeCurve;
