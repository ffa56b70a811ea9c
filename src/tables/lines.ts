/** The table's lines: what runs along its top and its side, which of the two are sizes, and what each measure holds. */
import { isNoFigure, startsLikeFigure, type FieldReader } from './figure.ts';
import {
  endAlone, looksLikeSize, namesMeasures, namesNoLength, namesSizes, readLabel, unitAlone, type Label,
} from './labels.ts';
import type { Location } from './locate.ts';
import type { ChartChoices, ChartUnit, Decision, MeasureKind, SizesRun } from './reading.ts';

/** A row or column of the table, by its heading. */
export interface Line {
  /** As it stands in the file; a second heading row's "from" or "to" is added. */
  readonly text: string;
  readonly label: Label;
  /** From a column or row that holds only units. */
  readonly besideUnit: ChartUnit | null;
  /** Row or column of the file. */
  readonly at: number;
}

type Rows = readonly (readonly string[])[];

const run = (from: number, to: number): number[] => Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);

/** Lines across the top and down the side; rows and columns with nothing in them are left out. */
export function tableLines(rows: Rows, place: Location): { readonly across: readonly Line[]; readonly down: readonly Line[] } {
  const at = (row: number, col: number): string => rows[row]?.[col] ?? '';
  const top = place.headerRow.value;
  const left = place.firstColumn.value;
  const inRows = run(top + 1, place.bottom).filter((row) => row !== place.subRow);
  const inCols = run(left + 1, place.right).filter((col) => col !== place.unitColumn);

  let group = '';
  const across = inCols
    .filter((col) => [top, ...inRows].some((row) => at(row, col) !== ''))
    .map((col): Line => {
      const text = at(top, col);
      if (place.subRow === null) return { text, label: readLabel(text), besideUnit: null, at: col };
      if (text !== '') group = text;
      const sub = at(place.subRow, col);
      const whole = endAlone(sub) ? `${group} ${sub}` : group;
      return { text: whole, label: readLabel(whole), besideUnit: unitAlone(sub), at: col };
    });
  const down = inRows
    .filter((row) => [left, ...inCols].some((col) => at(row, col) !== ''))
    .map((row): Line => {
      const text = at(row, left);
      const beside = place.unitColumn === null ? '' : at(row, place.unitColumn);
      const label = readLabel(text);
      const otherUnit = label.otherUnit ?? (beside === '' ? null : readLabel(`x (${beside})`).otherUnit);
      return { text, label: { ...label, otherUnit }, besideUnit: unitAlone(beside), at: row };
    });
  return { across, down };
}

/** Which way the sizes run, from what the headings look like; a tie is broken by the corner's words. */
export function sizesRun(across: readonly Line[], down: readonly Line[], corner: string, choices: ChartChoices): Decision<SizesRun> {
  if (choices.sizes) return { value: choices.sizes, why: 'you chose it', by: 'you' };
  const share = (lines: readonly Line[]): number => {
    const named = lines.filter(({ text }) => text !== '' && !namesSizes(text));
    return named.length === 0 ? 0 : named.filter(({ text, label }) => label.unit === null && looksLikeSize(text)).length / named.length;
  };
  const top = share(across);
  const side = share(down);
  if (top > side + 0.2) return { value: 'across', why: `the headings across look like sizes (${sample(across)})`, by: 'file' };
  if (side > top + 0.2) return { value: 'down', why: `the first column looks like sizes (${sample(down)})`, by: 'file' };
  if (namesMeasures(corner)) return { value: 'across', why: `the first column is headed “${corner}”`, by: 'file' };
  if (namesSizes(corner)) return { value: 'down', why: `the first column is headed “${corner}”`, by: 'file' };
  return { value: 'down', why: 'the headings do not tell sizes from measures', by: 'guess' };
}

function sample(lines: readonly Line[]): string {
  const texts = lines.map(({ text }) => text).filter((text) => text !== '');
  return texts.length <= 3 ? texts.join(', ') : `${texts[0]}, ${texts[1]} … ${texts.at(-1)}`;
}

/** What a measure's fields hold. `texts` are its fields, one a size. */
export function measureKind(line: Line, texts: readonly string[], read: FieldReader): MeasureKind {
  const said = texts.filter((text) => !isNoFigure(text));
  const { label } = line;
  if (said.length === 0) return texts.every((text) => text === '') && label.unit === null && line.besideUnit === null ? 'heading' : 'lengths';
  const hasUnit = label.unit !== null || line.besideUnit !== null;
  if (!hasUnit && namesSizes(line.text) && !namesMeasures(line.text)) return 'sizes';
  if (!hasUnit && said.every((text) => !startsLikeFigure(text) && read(text, 'in').kind !== 'figure')) return 'words';
  if (label.otherUnit !== null || (!hasUnit && namesNoLength(line.text))) return 'numbers';
  return 'lengths';
}
