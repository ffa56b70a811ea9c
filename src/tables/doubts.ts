/** What can be read but looks wrong: a unit that makes a giant, a figure that falls where the others rise, two sizes of one name. */
import { UNITS, type Quantity, type Span } from '../quantities/index.ts';
import { magnitude, unitOf } from './figure.ts';
import type { ChartCell, Measure, SizeLabel, SizesRun } from './reading.ts';
import { NO_GIRTH } from './units.ts';

/** Girths of the trunk outside of these are nobody's, from infants to the largest sizes sold; in mm (common practice). */
const GIRTH = { named: /bust|chest|hip|seat|waist/i, from: 350, to: 1900 } as const;

/** Falls are worth a word only where the other steps rise. */
const MOST_FALLS = 2;

export interface Doubtful {
  readonly measures: readonly Measure[];
  readonly sizeLabels: readonly SizeLabel[];
  readonly cells: readonly (readonly ChartCell[])[];
  readonly sizes: SizesRun;
}

export function doubts({ measures, sizeLabels, cells, sizes }: Doubtful): string[] {
  const found: string[] = [];
  measures.forEach((measure, m) => {
    if (measure.kind !== 'lengths') return;
    const figures = cells[m]!.flatMap((cell, s) => (cell.kind === 'figure' ? [{ cell, size: sizeLabels[s]!.label, mm: magnitude(cell.value) }] : []));
    found.push(...giants(measure.name, figures), ...falls(measure.name, figures));
  });
  const line = sizes === 'across' ? 'column' : 'row';
  const seen = new Map<string, number>();
  sizeLabels.forEach(({ label, at }, s) => {
    if (label === '') {
      if (cells.some((row) => row[s]!.kind !== 'none')) found.push(`The ${line} ${at + 1} of the file has figures but no size: type its size in the sheet, or the chart cannot be read.`);
      return;
    }
    const before = seen.get(label.toLowerCase());
    if (before !== undefined) found.push(`Size ${label} stands there twice, in the ${line}s ${before + 1} and ${at + 1} of the file: give one of them another name in the sheet.`);
    else seen.set(label.toLowerCase(), at);
  });
  return found;
}

interface Figure {
  readonly cell: { readonly raw: string; readonly value: Quantity | Span };
  readonly size: string;
  readonly mm: number;
}

function giants(name: string, figures: readonly Figure[]): string[] {
  if (!GIRTH.named.test(name) || NO_GIRTH.test(name)) return [];
  const outside = figures.filter(({ mm }) => mm < GIRTH.from || mm > GIRTH.to);
  const worst = outside[0];
  if (!worst) return [];
  if (outside.length * 2 < figures.length) return [`${name} ${worst.cell.raw} at size ${worst.size} is nobody’s measure: check that figure.`];
  const other = UNITS[unitOf(worst.cell.value)].system === 'inch' ? `${Math.round(worst.mm / 10)} cm` : `${Math.round(worst.mm / 25.4)} in`;
  return [`${name} ${worst.cell.raw} at size ${worst.size} would be ${other}: is the unit right?`];
}

function falls(name: string, figures: readonly Figure[]): string[] {
  const steps = figures.slice(1).map((figure, i) => ({ from: figures[i]!, to: figure, rise: figure.mm - figures[i]!.mm }));
  const fallen = steps.filter(({ rise }) => rise < 0);
  const risen = steps.filter(({ rise }) => rise > 0);
  if (fallen.length === 0 || fallen.length > MOST_FALLS || risen.length < fallen.length * 2) return [];
  return fallen.map(({ from, to }) => `${name} falls from ${from.cell.raw} at size ${from.size} to ${to.cell.raw} at size ${to.size}: check both figures.`);
}
