/** Which unit the chart's bare figures have: told by headings, by figures with a unit, by notes, or guessed from their size. */
import { UNITS, quantity } from '../quantities/index.ts';
import { magnitude, type FieldReader } from './figure.ts';
import { unitInNotes } from './labels.ts';
import type { Line } from './lines.ts';
import type { ChartChoices, ChartUnit, Decision, MeasureKind } from './reading.ts';

export interface UnitsFound {
  readonly decision: Decision<ChartUnit | 'mixed' | 'none'>;
  /** The unit of a bare figure of measure `m` and size `s`; `''` where it has none. */
  unitAt(m: number, s: number): ChartUnit | '';
}

export interface UnitEvidence {
  readonly measures: readonly Line[];
  readonly kinds: readonly MeasureKind[];
  readonly sizes: readonly Line[];
  /** `texts[m][s]`. */
  readonly texts: readonly (readonly string[])[];
  readonly corner: { readonly text: string; readonly unit: ChartUnit | null };
  readonly notes: readonly string[];
  readonly read: FieldReader;
}

const isChartUnit = (unit: string | null): unit is ChartUnit => unit === 'mm' || unit === 'cm' || unit === 'in';
const words = (unit: ChartUnit): string => UNITS[unit].words;

/** The units that figures of each measure carry themselves. */
function ownUnits({ texts, kinds, read }: UnitEvidence): readonly (readonly ChartUnit[])[] {
  return texts.map((line, m) => (kinds[m] !== 'lengths' ? [] : line.flatMap((text) => {
    const field = read(text, 'in');
    return field.kind === 'figure' && isChartUnit(field.ownUnit) ? [field.ownUnit] : [];
  })));
}

const only = <T>(values: readonly T[]): T | null => (new Set(values).size === 1 ? values[0]! : null);

export function decideUnits(evidence: UnitEvidence, choices: ChartChoices): UnitsFound {
  const { measures, kinds, sizes, corner } = evidence;
  const own = ownUnits(evidence);
  if (!kinds.includes('lengths')) {
    return { decision: { value: 'none', why: 'no measure holds lengths', by: 'file' }, unitAt: () => '' };
  }
  const bySize = sizes.map((line) => line.besideUnit ?? (/[([]/.test(line.text) ? line.label.unit : null));
  const byMeasure = measures.map((line, m) => line.label.unit ?? line.besideUnit ?? only(own[m]!));
  const noted = unitInNotes(evidence.notes);
  const carried = only(own.flat());
  const needsMore = kinds.some((kind, m) => kind === 'lengths' && !byMeasure[m] && bySize.some((unit) => !unit));

  const rest = (): Decision<ChartUnit> => {
    if (corner.unit) return { value: corner.unit, why: `the heading “${corner.text}” says so`, by: 'file' };
    if (noted && noted !== 'both') return { value: noted.unit, why: `the line “${noted.line}” says so`, by: 'file' };
    if (carried && own.flat().length * 2 >= evidence.texts.flat().filter((text) => text !== '').length) {
      return { value: carried, why: 'the other figures carry it', by: 'file' };
    }
    const headed = only(byMeasure.filter((unit) => unit !== null));
    if (headed) return { value: headed, why: `other headings say ${words(headed)}; some say nothing`, by: 'guess' };
    return guess(evidence);
  };
  const chosen: Decision<ChartUnit> | null = choices.unit ? { value: choices.unit, why: 'you chose it', by: 'you' } : null;
  const others = chosen ?? (needsMore ? rest() : null);
  const unitAt = (m: number, s: number): ChartUnit | '' => {
    if (kinds[m] !== 'lengths') return '';
    return chosen?.value ?? byMeasure[m] ?? bySize[s] ?? others?.value ?? '';
  };

  const used = new Set<ChartUnit>(own.flat());
  measures.forEach((_, m) => sizes.forEach((_, s) => {
    const unit = unitAt(m, s);
    if (unit !== '' && own[m]!.length < sizes.length) used.add(unit);
  }));
  if (used.size > 1) {
    return { unitAt, decision: { value: 'mixed', by: others?.by ?? 'file', why: chosen ? 'some figures carry another unit than the one you chose' : 'headings or figures have different units, each is read in its own' } };
  }
  if (others) return { unitAt, decision: others };
  const why = measures.some((line, m) => kinds[m] === 'lengths' && (line.label.unit ?? line.besideUnit)) ? 'the headings of the measures say so'
    : own.flat().length > 0 ? 'the figures carry it' : 'the headings of the sizes say so';
  return { unitAt, decision: { value: [...used][0]!, why, by: 'file' } };
}

/** Where inches end and centimetres begin for a girth's middle figure, by the measure's name. Common practice: adults' busts run from 28 to 60 in, 70 to 150 cm. */
const GIRTHS: readonly { readonly named: RegExp; readonly inchesTo: number }[] = [
  { named: /bust|chest/i, inchesTo: 62 },
  { named: /hip|seat/i, inchesTo: 66 },
  { named: /waist/i, inchesTo: 50 },
];
const MILLIMETRES_FROM = 300;
/** Other words in a heading show that it is no girth. */
export const NO_GIRTH = /length|depth|height|width|point|\bto\b|drop|rise|level|front|back|dart/i;

function guess({ measures, kinds, texts, read }: UnitEvidence): Decision<ChartUnit> {
  if (texts.some((line, m) => kinds[m] === 'lengths' && line.some((text) => /\d\s*[\/⁄]\s*\d|[¼-¾⅐-⅞]/.test(text) && read(text, 'in').kind === 'figure'))) {
    return { value: 'in', why: 'some figures are fractions, as inches are; nothing in the file says so', by: 'guess' };
  }
  const middles = measures.map((_, m) => (kinds[m] === 'lengths' ? middle(texts[m]!, read) : null));
  for (const { named, inchesTo } of GIRTHS) {
    const m = measures.findIndex((line, i) => named.test(line.text) && !NO_GIRTH.test(line.text) && middles[i] !== null);
    const size = middles[m];
    if (size === undefined || size === null) continue;
    const unit = size >= MILLIMETRES_FROM ? 'mm' : size > inchesTo ? 'cm' : 'in';
    return { value: unit, why: `“${measures[m]!.text}” is about ${round(size)}, which is likely ${words(unit)}; nothing in the file says so`, by: 'guess' };
  }
  const largest = Math.max(...middles.filter((size) => size !== null));
  const unit = largest >= MILLIMETRES_FROM ? 'mm' : largest > 75 ? 'cm' : 'in';
  return { value: unit, why: `the largest measure is about ${round(largest)}, which is likely ${words(unit)}; nothing in the file says so`, by: 'guess' };
}

const round = (size: number): number => Math.round(size * 10) / 10;

/** The middle bare figure of a measure, as a plain number. */
function middle(texts: readonly string[], read: FieldReader): number | null {
  const one = quantity(1, 'mm').value;
  const values = texts.flatMap((text) => {
    const field = read(text, 'mm');
    return field.kind === 'figure' && field.ownUnit === null ? [magnitude(field.value) / one] : [];
  }).sort((a, b) => a - b);
  return values.length === 0 ? null : values[Math.floor(values.length / 2)]!;
}
