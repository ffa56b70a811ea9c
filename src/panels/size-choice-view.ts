/** What the panel for choosing a size is shown, and what it asks for. */
import type { Picture } from '../pictures/index.ts';

export interface SizeLevelRow {
  /** As the choice knows it: "bust". */
  readonly level: string;
  readonly label: string;
  /** As she typed it, or where it is taken from: "=Measures!B3". */
  readonly raw: string;
  /** What it reads as, in her units; empty where there is nothing to read. */
  readonly reads: string;
  readonly fault: string;
  /** Something to know about it: how it is taken, or that it is an unlikely figure. */
  readonly hint: string;
  /** The ease wanted, where the chart has finished measures for this level. */
  readonly ease?: { readonly low: string; readonly high: string; readonly usual: string; readonly fault: string };
}

export interface SizeBesideRow {
  readonly label: string;
  /** The next smaller size, the chosen one, the next larger; each with what it leaves. */
  readonly sizes: readonly ({ readonly size: string; readonly continued: boolean; readonly left: string; readonly under: boolean } | null)[];
  /** What is told of the sizes: "ease", or "chart less body". */
  readonly what: string;
}

export interface ChosenLevel {
  readonly label: string;
  readonly size: string;
  readonly continued: boolean;
  readonly why: string;
  readonly pins: readonly string[];
}

export interface SizeBlendRow {
  /** The upper of its two levels. */
  readonly level: string;
  /** "Waist to hip". */
  readonly label: string;
  /** Whole sentence: from which size to which, and how far the lines lie apart. */
  readonly sentence: string;
  readonly raw: string;
  /** The usual distance, in her units; empty where there is none. */
  readonly usual: string;
  readonly fault: string;
}

export interface SizeAnswer {
  /** The sizes in one sentence. */
  readonly sentence: string;
  readonly levels: readonly ChosenLevel[];
  readonly beside: readonly SizeBesideRow[];
  readonly bust: string;
  readonly blends: readonly SizeBlendRow[];
  readonly outline: Picture;
  /** Not there where no size changes. */
  readonly edge?: Picture;
}

export interface SizeChoiceView {
  readonly charts: readonly string[];
  readonly chart: string;
  readonly styles: readonly { readonly style: string; readonly words: string }[];
  readonly style: string;
  /** The garments of the table of usual ease; empty where the chart has no finished measures. */
  readonly garments: readonly string[];
  readonly garment: string;
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly levels: readonly SizeLevelRow[];
  readonly change: string;
  readonly changeFault: string;
  readonly apart: string;
  readonly seams: string;
  /** How it is weighed. */
  readonly cost: string;
  /** `null`, and `sentence` says what is missing. */
  readonly answer: SizeAnswer | null;
  readonly sentence: string;
  /** Where the choice would go: "Fit B20 to I33"; and why it cannot, or empty. */
  readonly target: string;
  /** It was put there already. */
  readonly isThere: boolean;
  readonly targetFault: string;
  /** The selected cell, where its figure could be taken: "Measures B3". */
  readonly candidate: string;
  /** The selected block, where its rows have names and lengths. */
  readonly block: string;
  readonly readonly: boolean;
}

export type SizeChoiceChange =
  | { readonly change: 'chart' | 'style' | 'garment' | 'changeCost' | 'apart' | 'seams' | 'person'; readonly value: string }
  | { readonly change: 'measure' | 'down'; readonly level: string; readonly value: string }
  | { readonly change: 'ease'; readonly level: string; readonly end: 'low' | 'high'; readonly value: string }
  /** From the selected cell, or all from the selected block. */
  | { readonly change: 'take'; readonly level: string }
  | { readonly change: 'take-block' }
  | { readonly change: 'put' };
