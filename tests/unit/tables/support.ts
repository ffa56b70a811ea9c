/** What the tests of tables share. */
import { readFileSync } from 'node:fs';
import { readQuantity, type Quantity, type Span } from '../../../src/quantities/index.ts';
import { readTable, type ChartChoices, type ChartReading } from '../../../src/tables/index.ts';

export const fixture = (name: string): Uint8Array => new Uint8Array(readFileSync(new URL(`fixtures/${name}`, import.meta.url)));

/** Reads what must be readable. */
export function read(input: Uint8Array | string, choices?: ChartChoices): ChartReading {
  const reading = readTable(input, choices);
  if ('sentence' in reading) throw new Error(reading.sentence);
  return reading;
}

/** What a cell with this text holds, as the engine sees it. */
export function valueOf(raw: string): Quantity | Span | string {
  if (raw.startsWith("'")) return raw.slice(1);
  const found = readQuantity(raw);
  return found.kind === 'quantity' ? found.quantity : found.kind === 'span' ? found.span : raw;
}

/** The figure of a measure at a size: what goes into its cell, or why there is none. */
export function figure(reading: ChartReading, measure: string, size: string): string {
  const m = reading.measures.findIndex(({ name }) => name === measure);
  const s = reading.sizeLabels.findIndex(({ label }) => label === size);
  const cell = reading.cells[m]?.[s];
  if (!cell) throw new Error(`no ${measure} at ${size}: there are ${reading.measures.map(({ name }) => name).join(', ')} at ${reading.sizeLabels.map(({ label }) => label).join(', ')}`);
  return cell.kind === 'none' ? '(none)' : cell.kind === 'figure' ? cell.raw : `(${cell.kind}) ${cell.raw}`;
}
