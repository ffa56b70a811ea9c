/** What was understood of a size chart's file, each decision beside a select that corrects it. */
import { html, nothing, type TemplateResult } from 'lit';
import { UNITS } from '../quantities/index.ts';
import type { ChartChoices, ChartReading, Decision } from '../tables/index.ts';

/** Rows and columns that can be chosen as headings. */
const MOST_ROWS = 60;
const MOST_COLUMNS = 30;

interface Option {
  readonly value: string;
  readonly words: string;
}

interface Question {
  readonly key: keyof ChartChoices;
  readonly label: string;
  readonly options: readonly Option[];
  readonly found: Decision<unknown> | null;
  readonly chosen: string;
  /** From the select's value to the choice. */
  readonly read: (value: string) => unknown;
}

const same = (value: string): string => value;
const SEPARATORS: readonly Option[] = [{ value: ',', words: 'comma' }, { value: ';', words: 'semicolon' }, { value: '\t', words: 'tab' }];
const ENCODINGS: readonly Option[] = [
  { value: 'utf-8', words: 'UTF-8' }, { value: 'utf-16le', words: 'UTF-16, little end first' },
  { value: 'utf-16be', words: 'UTF-16, big end first' }, { value: 'windows-1252', words: 'Windows-1252' },
];
const MARKS: readonly Option[] = [{ value: '.', words: 'point: 84.5' }, { value: ',', words: 'comma: 84,5' }];
const UNIT_OPTIONS: readonly Option[] = (['cm', 'in', 'mm'] as const).map((unit) => ({ value: unit, words: UNITS[unit].words }));
const RUNS: readonly Option[] = [{ value: 'across', words: 'across the top' }, { value: 'down', words: 'down the side' }];
const HOLDS: readonly Option[] = [{ value: 'names', words: 'only names the sizes' }, { value: 'figures', words: 'is a measure too' }];

/** The beginning of a row or column, to know it by. */
const sample = (texts: readonly string[]): string => {
  const said = texts.filter((text) => text !== '').slice(0, 4).join(', ');
  return said.length > 36 ? `${said.slice(0, 35)}…` : said || 'empty';
};

function questions(reading: ChartReading | null, rows: ChartReading['rows'], choices: ChartChoices, isFile: boolean): Question[] {
  const top = reading?.table.top ?? 0;
  const rowOptions = rows.slice(0, MOST_ROWS).map((row, r) => ({ value: String(r), words: `row ${r + 1}: ${sample(row)}` }));
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const columnOptions = Array.from({ length: Math.min(width, MOST_COLUMNS) }, (_, c) => ({
    value: String(c), words: `column ${c + 1}: ${sample(rows.slice(top, top + 6).map((row) => row[c] ?? ''))}`,
  }));
  const ask = (key: keyof ChartChoices, label: string, options: readonly Option[], read: Question['read'] = same): Question =>
    ({ key, label, options, read, found: reading?.[key] ?? null, chosen: choices[key] === undefined ? '' : String(choices[key]) });
  return [
    ask('unit', 'Bare figures are', UNIT_OPTIONS),
    ask('sizes', 'Sizes run', RUNS),
    ask('headerRow', 'Row of headings', rowOptions, Number),
    ask('firstColumn', 'First column', columnOptions, Number),
    ...(reading?.firstColumnHolds.value === 'figures' || choices.firstColumnHolds ? [ask('firstColumnHolds', 'The first column', HOLDS)] : []),
    ask('separator', 'Fields are parted by', SEPARATORS),
    ask('decimalMark', 'Decimals have a', MARKS),
    ...(isFile ? [ask('encoding', 'Characters are in', ENCODINGS)] : []),
  ];
}

const UNIT_WORDS: Readonly<Record<string, string>> = { mixed: 'each as it is marked', none: 'no lengths' };

function foundWords({ key, options, found }: Question): string {
  if (!found || found.by === 'you') return 'as found';
  const value = String(found.value);
  const words = options.find((option) => option.value === value)?.words
    ?? (key === 'unit' ? UNIT_WORDS[value] : key === 'headerRow' ? `row ${Number(value) + 1}` : key === 'firstColumn' ? `column ${Number(value) + 1}` : value);
  return `as found: ${words}`;
}

/**
 * The list of questions. `change` gets the new choices, with the answered one
 * left out when she takes what was found.
 */
export function chartDecisions(
  reading: ChartReading | null, rows: ChartReading['rows'], choices: ChartChoices, isFile: boolean, change: (choices: ChartChoices) => void,
): TemplateResult {
  const answer = (question: Question, value: string): void => {
    const others: { -readonly [K in keyof ChartChoices]: ChartChoices[K] } = { ...choices };
    delete others[question.key];
    change(value === '' ? others : { ...others, [question.key]: question.read(value) });
  };
  return html`<div class="decisions">${questions(reading, rows, choices, isFile).map((question) => html`<div class="decision">
    <label for=${`choose-${question.key}`}>${question.label}</label>
    <select id=${`choose-${question.key}`} aria-describedby=${`why-${question.key}`} @change=${(event: Event) => answer(question, (event.target as HTMLSelectElement).value)}>
      <option value="" .selected=${question.chosen === ''}>${foundWords(question)}</option>
      ${question.options.map((option) => html`<option value=${option.value} .selected=${question.chosen === option.value}>${option.words}</option>`)}
    </select>
    <div id=${`why-${question.key}`} class="soft">${question.found?.by === 'guess' ? html`<strong class="guess">⚠ A guess:</strong> ` : nothing}${question.found?.why ?? ''}</div>
  </div>`)}</div>`;
}
