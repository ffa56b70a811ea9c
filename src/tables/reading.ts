/** What reading a size chart's file comes to, as plain data: nothing here is text for the engine yet. */
import type { Quantity, Span, UnitCode } from '../quantities/index.ts';

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';
export type Separator = ',' | ';' | '\t';
export type DecimalMark = '.' | ',';
/** Sizes across: a column for each size. Sizes down: a row for each size. */
export type SizesRun = 'across' | 'down';
/** Whether the first column only names its rows, or holds figures that name them too. */
export type FirstColumnHolds = 'names' | 'figures';
/** The unit of a chart's bare figures. */
export type ChartUnit = Extract<UnitCode, 'mm' | 'cm' | 'in'>;

/** One thing that was understood, and why. */
export interface Decision<T> {
  readonly value: T;
  /** In words that can follow the value: "the heading “measurement_in” says so". */
  readonly why: string;
  /** `file`: it follows from what stands there. `guess`: she must confirm it. `you`: it was chosen. */
  readonly by: 'file' | 'guess' | 'you';
}

/** What she corrected; each takes the place of a decision. */
export interface ChartChoices {
  readonly encoding?: Encoding;
  readonly separator?: Separator;
  readonly decimalMark?: DecimalMark;
  /** Every figure without a unit of its own is read in this, whatever the headings say. */
  readonly unit?: ChartUnit;
  readonly sizes?: SizesRun;
  /** Row of the file, from 0. */
  readonly headerRow?: number;
  /** Column of the file, from 0. */
  readonly firstColumn?: number;
  readonly firstColumnHolds?: FirstColumnHolds;
}

/** A place in the file, rows and columns from 0. */
export interface Place {
  readonly row: number;
  readonly col: number;
}

/** One figure of the chart. `raw` is what goes into the sheet's cell. */
export type ChartCell =
  | { readonly kind: 'figure'; readonly raw: string; readonly value: Quantity | Span; readonly at: Place }
  /** Empty, or a sign that says that there is no figure. */
  | { readonly kind: 'none'; readonly at: Place }
  /** Not a figure and not meant as one: "from the shop's leaflet". */
  | { readonly kind: 'words'; readonly raw: string; readonly at: Place }
  | { readonly kind: 'unreadable'; readonly raw: string; readonly at: Place };

/** What a measure's cells hold: lengths, numbers without a unit (age), words, or other names of the sizes. */
export type MeasureKind = 'lengths' | 'numbers' | 'words' | 'sizes' | 'heading';

export interface Measure {
  /** The heading without its unit. */
  readonly name: string;
  readonly kind: MeasureKind;
  /** The unit of its bare figures; `null` where they have none. */
  readonly unit: UnitCode | null;
  /** Row (sizes across) or column (sizes down) of the file. */
  readonly at: number;
}

export interface SizeLabel {
  /** As it stands in the file. */
  readonly label: string;
  /** Column (sizes across) or row (sizes down) of the file. */
  readonly at: number;
}

/** A figure that could not be read. */
export interface Unreadable extends Place {
  readonly text: string;
  readonly sentence: string;
}

export interface ChartReading {
  /** `null` when the text was pasted. */
  readonly encoding: Decision<Encoding> | null;
  /** `null` when the rows did not come from a text. */
  readonly separator: Decision<Separator> | null;
  readonly decimalMark: Decision<DecimalMark>;
  /** `mixed`: measures or cells have different units; `none`: the chart has no lengths. */
  readonly unit: Decision<ChartUnit | 'mixed' | 'none'>;
  readonly sizes: Decision<SizesRun>;
  readonly headerRow: Decision<number>;
  readonly firstColumn: Decision<number>;
  readonly firstColumnHolds: Decision<FirstColumnHolds>;
  /** The file as it was read, every field as text. */
  readonly rows: readonly (readonly string[])[];
  /** Where the table stands in the file; all four ends belong to it. */
  readonly table: { readonly top: number; readonly left: number; readonly bottom: number; readonly right: number };
  /** The heading of the first column, without its unit. */
  readonly corner: string;
  readonly measures: readonly Measure[];
  readonly sizeLabels: readonly SizeLabel[];
  /** `cells[m][s]` is measure `m` of size `s`. */
  readonly cells: readonly (readonly ChartCell[])[];
  readonly unreadable: readonly Unreadable[];
  /** What was done that she might not expect. */
  readonly remarks: readonly string[];
  /** What looks wrong although it can be read. */
  readonly doubts: readonly string[];
}
