/** Rows of text to a size chart: every decision with its reason, every field read or listed. Pure. */
import type { Fault, UnitCode } from '../quantities/index.ts';
import { doubts } from './doubts.ts';
import { decimalMarks, fieldReader, isNoFigure, type FieldReader } from './figure.ts';
import { readLabel } from './labels.ts';
import { measureKind, sizesRun, tableLines, type Line } from './lines.ts';
import { locate, type Location } from './locate.ts';
import { joinRanges, plainName, type Draft } from './ranges.ts';
import type {
  ChartCell, ChartChoices, ChartReading, DecimalMark, Decision, FirstColumnHolds, Place, SizesRun, Unreadable,
} from './reading.ts';
import { readRows } from './read.ts';
import { decideUnits } from './units.ts';

type Rows = readonly (readonly string[])[];

/** A file's bytes or a pasted text as a size chart. */
export function readTable(input: Uint8Array | string, choices: ChartChoices = {}): ChartReading | Fault {
  const table = readRows(input, choices);
  if ('sentence' in table) return table;
  const reading = understand(table.rows, choices);
  if ('sentence' in reading) return reading;
  return { ...reading, encoding: table.encoding, separator: table.separator, remarks: [...table.remarks, ...reading.remarks] };
}

/** Rows of fields as a size chart. Nothing is lost: what is not read stays as text, and is listed. */
export function understand(given: Rows, choices: ChartChoices = {}): ChartReading | Fault {
  const rows = given.map((row) => row.map((field) => field.replace(/[\s\u00A0\u202F\u2009]+/g, ' ').trim()));
  const decimalMark = chooseMark(rows, choices);
  const readOne = fieldReader(decimalMark.value);
  const place = locate(rows, readOne, choices);
  if ('sentence' in place) return place;

  const left = place.firstColumn.value;
  const top = place.headerRow.value;
  const cornerText = rows[top]?.[left] ?? '';
  const corner = readLabel(cornerText);
  const lines = tableLines(rows, place);
  const sizes = sizesRun(lines.across, lines.down, cornerText, choices);
  const holds = chooseHolds(lines.down, cornerText, sizes.value, readOne, choices);
  const sizeLines = sizes.value === 'across' ? lines.across : lines.down;
  const measureLines = withNames(sizes.value === 'across' ? lines.down : lines.across, cornerText, left, holds.value);

  const at = (measure: Line, size: Line): Place =>
    (sizes.value === 'across' ? { row: measure.at, col: size.at } : { row: size.at, col: measure.at });
  const textAt = ({ row, col }: Place): string => rows[row]?.[col] ?? '';
  const texts = measureLines.map((measure) => sizeLines.map((size) => textAt(at(measure, size))));
  const kinds = measureLines.map((measure, m) => measureKind(measure, texts[m]!, readOne));
  const units = decideUnits({
    measures: measureLines, kinds, sizes: sizeLines, texts, read: readOne,
    corner: holds.value === 'figures' ? { text: cornerText, unit: null } : { text: cornerText, unit: corner.unit },
    notes: notesAround(rows, place),
  }, choices);

  const unreadable: Unreadable[] = [];
  const readCell = (m: number, s: number): ChartCell => {
    const where = at(measureLines[m]!, sizeLines[s]!);
    const text = texts[m]![s]!;
    if (isNoFigure(text)) return { kind: 'none', at: where };
    const kind = kinds[m]!;
    if (kind === 'words' || kind === 'sizes') return { kind: 'words', raw: text, at: where };
    const field = readOne(text, units.unitAt(m, s));
    if (field.kind === 'figure') return { kind: 'figure', raw: field.raw, value: field.value, at: where };
    unreadable.push({ ...where, text, sentence: field.kind === 'unreadable' ? field.sentence : '' });
    return { kind: 'unreadable', raw: text, at: where };
  };
  const drafts = measureLines.map((line, m): Draft => ({
    // Plain numbers keep the unit that the workbook does not know in their heading: "weight (kg)".
    name: spoken(kinds[m] === 'numbers' ? line.text : line.label.name || line.text),
    kind: kinds[m]!,
    unit: oneUnit(sizeLines.map((_, s) => units.unitAt(m, s))),
    at: line.at,
    end: line.label.end && { of: spoken(line.label.end.of), which: line.label.end.which },
    cells: sizeLines.map((_, s) => readCell(m, s)),
  }));
  const ranges = joinRanges(drafts);
  const named = toldApart(ranges.drafts);
  const cells = named.drafts.map((draft) => draft.cells);
  const sizeLabels = sizeLines.map((line) => ({ label: sizeText(line), at: line.at }));
  const measures = named.drafts.map(({ name, kind, unit, at: where }) => ({ name, kind, unit, at: where }));
  unreadable.sort((a, b) => a.row - b.row || a.col - b.col);

  return {
    encoding: null,
    separator: null,
    decimalMark,
    unit: units.decision,
    sizes,
    headerRow: place.headerRow,
    firstColumn: place.firstColumn,
    firstColumnHolds: holds,
    rows,
    table: { top, left, bottom: place.bottom, right: place.right },
    corner: spoken(corner.name),
    measures,
    sizeLabels,
    cells,
    unreadable,
    remarks: [...ranges.remarks, ...named.remarks, ...kindRemarks(named.drafts), ...placeRemarks(place)],
    doubts: doubts({ measures, sizeLabels, cells, sizes: sizes.value }),
  };
}

function chooseMark(rows: Rows, choices: ChartChoices): Decision<DecimalMark> {
  if (choices.decimalMark) return { value: choices.decimalMark, why: 'you chose it', by: 'you' };
  const { commas, unclear, points, figures } = decimalMarks(rows.flat());
  const some = (count: number): string => (count === 1 ? 'a figure has one' : `${count} figures have one`);
  if (commas > points) return { value: ',', why: some(commas), by: points === 0 ? 'file' : 'guess' };
  if (points > 0) return { value: '.', why: some(points), by: commas + unclear === 0 ? 'file' : 'guess' };
  if (unclear > figures * 0.3) return { value: ',', why: 'many figures have a comma before three others, as 84,125 has; in a chart it is hardly a thousand', by: 'guess' };
  if (unclear > 0) return { value: '.', why: 'a comma before three figures may part thousands', by: 'guess' };
  return { value: '.', why: 'no figure has decimals', by: 'file' };
}

/** A first column headed by a measure with its unit (`bust_cm`) both holds that measure and names the sizes. */
function chooseHolds(down: readonly Line[], corner: string, sizes: SizesRun, readOne: FieldReader, choices: ChartChoices): Decision<FirstColumnHolds> {
  if (sizes === 'across') return { value: 'names', why: 'it names the measures', by: 'file' };
  if (choices.firstColumnHolds) return { value: choices.firstColumnHolds, why: 'you chose it', by: 'you' };
  const { unit, name } = readLabel(corner);
  const allFigures = down.length > 0 && down.every(({ text }) => readOne(text, 'cm').kind === 'figure');
  if (unit && name !== '' && !/\b(?:sizes?|codes?)\b/i.test(name) && allFigures) {
    return { value: 'figures', why: `it is headed “${corner}” and holds figures; they name the sizes as well`, by: 'file' };
  }
  return { value: 'names', why: 'it names the sizes', by: 'file' };
}

/** `bust_girth` as people write it. */
const spoken = (name: string): string => name.replace(/_+/g, ' ').trim();

/** The measures, with the first column among them when it holds one. */
function withNames(lines: readonly Line[], corner: string, left: number, holds: FirstColumnHolds): readonly Line[] {
  return holds === 'names' ? lines : [{ text: corner, label: readLabel(corner), besideUnit: null, at: left }, ...lines];
}

function notesAround(rows: Rows, place: Location): string[] {
  return rows.flatMap((row, r) => (r < place.headerRow.value || r > place.bottom ? [row.filter((text) => text !== '').join(' ')] : []))
    .filter((line) => line !== '');
}

function oneUnit(units: readonly UnitCode[]): UnitCode | null {
  const [first] = units;
  return first && units.every((unit) => unit === first) ? first : null;
}

/** A size keeps its text, less a unit in brackets: "10 (in)". */
const sizeText = ({ text, label }: Line): string => (label.unit && /[([]/.test(text) ? label.name : text);

/** Measures of one name get a number, so that each can be asked for. */
function toldApart(drafts: readonly Draft[]): { readonly drafts: readonly Draft[]; readonly remarks: readonly string[] } {
  const taken = new Map<string, number>();
  const remarks: string[] = [];
  const told = drafts.map((draft) => {
    if (draft.kind === 'heading' || draft.name === '') return draft;
    const key = plainName(draft.name);
    const count = (taken.get(key) ?? 0) + 1;
    taken.set(key, count);
    if (count === 1) return draft;
    const name = `${draft.name} (${count})`;
    remarks.push(`“${draft.name}” stands there more than once; ${count === 2 ? 'the second' : `number ${count}`} is called “${name}”.`);
    return { ...draft, name };
  });
  return { drafts: told, remarks };
}

function kindRemarks(drafts: readonly Draft[]): string[] {
  return drafts.flatMap(({ name, kind }) => (kind === 'words' ? [`“${name}” holds words and is kept as text.`]
    : kind === 'sizes' ? [`“${name}” is read as other names of the sizes and is kept as text.`]
    : kind === 'numbers' ? [`“${name}” holds no lengths and is kept as plain numbers.`] : []));
}

function placeRemarks({ otherTable, subRow, unitColumn }: Location): string[] {
  return [
    ...(otherTable ? [`Rows ${otherTable.from + 1} to ${otherTable.to + 1} of the file look like another table; they are put below the chart as they stand. To read them as a chart, import the file again and choose their row of headings.`] : []),
    ...(subRow === null ? [] : [`Row ${subRow + 1} of the file belongs to the headings above it.`]),
    ...(unitColumn === null ? [] : [`Column ${unitColumn + 1} of the file holds units; they are put to the figures.`]),
  ];
}
