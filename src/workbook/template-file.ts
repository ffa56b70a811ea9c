/** Reading a template that comes from outside. */
import { foldName } from '../formula/index.ts';
import { fileCell, fullRoom, rowsFromFile, showingFromFile, widthsFromFile } from './file-cells.ts';
import { refusal } from './file.ts';
import { nameTextFault, sheetTextFault, tidyName } from './names.ts';
import { Problems } from './problems.ts';
import { TEMPLATE_FORMAT, TEMPLATE_VERSION, blockSchema, kindSchema, lineSchema, noteSchema, read, recordSchema } from './schema.ts';
import type { FileCell, FileWidth } from './schema.ts';
import type { Template, TemplateName } from './templates.ts';

export interface ReadTemplate {
  /** `null` when nothing of it can be used. */
  readonly template: Template | null;
  /** What was left out or changed, a sentence each, with where. */
  readonly problems: string[];
}

function readNames(value: unknown, problems: Problems): TemplateName[] {
  if (!Array.isArray(value)) {
    problems.add('The names for cells could not be read.');
    return [];
  }
  const names = new Map<string, TemplateName>();
  value.forEach((entry: unknown, at) => {
    const record = read(recordSchema, entry);
    const name = typeof record?.['name'] === 'string' ? tidyName(record['name']) : '';
    const area = read(blockSchema, record?.['area']);
    const kind = read(kindSchema, record?.['kind']);
    const fault = nameTextFault(name) ?? (names.has(foldName(name)) ? `the name ${name} is there twice.` : null);
    if (fault === null && area && kind) names.set(foldName(name), { name, kind, area });
    else problems.add(`Entry ${at + 1} of the names for cells was left out: ${fault ?? `what ${name} stands for could not be read.`}`);
  });
  return [...names.values()];
}

function readNeeds(value: unknown, problems: Problems): string[] {
  if (value === undefined) return [];
  const needs = (Array.isArray(value) ? value : []).filter((need): need is string => sheetTextFault(read(lineSchema, need) ?? '') === null);
  if (!Array.isArray(value) || needs.length !== value.length) problems.add('The list of what the template needs could not be read whole.');
  return needs;
}

function readSheet(value: unknown, problems: Problems): Template['sheet'] {
  const sheet = read(recordSchema, value) ?? {};
  const where = 'The sheet';
  const cells: FileCell[] = [];
  rowsFromFile(sheet['cells'], where, problems, fullRoom()).forEach((cellsOfRow, row) => {
    cellsOfRow?.forEach((cell, col) => { if (cell) cells.push(fileCell(row, col, cell)); });
  });
  const widths = Object.entries(widthsFromFile(sheet['widths'], where, problems)).map(([col, width]): FileWidth => [Number(col), width]);
  const about = sheet['about'] === undefined ? '' : read(lineSchema, sheet['about']);
  if (about === undefined) problems.add('The line about the sheet could not be read.');
  // A template takes no filter along: its rows are there to be filled in.
  const { hidden, frozen } = showingFromFile({ hidden: sheet['hidden'], frozen: sheet['frozen'] }, where, problems);
  return { cells, widths, ...(about && { about }), ...(hidden && { hidden }), ...(frozen && { frozen }) };
}

/** Never throws, whatever it is given. */
export function readTemplate(json: unknown): ReadTemplate {
  const refused = refusal(json, TEMPLATE_FORMAT, TEMPLATE_VERSION, 'template file');
  if (refused !== null) return { template: null, problems: [refused] };
  const problems = new Problems();
  const file = read(recordSchema, json) ?? {};
  const given = typeof file['name'] === 'string' ? tidyName(file['name']) : '';
  const fault = sheetTextFault(given);
  if (fault !== null) problems.add(`The template's name could not be read; it is now called Template.`);
  const note = read(noteSchema, file['note']);
  if (note === undefined) problems.add("The template's note could not be read.");
  const needs = readNeeds(file['needs'], problems);
  const template: Template = {
    format: TEMPLATE_FORMAT, version: TEMPLATE_VERSION,
    name: fault === null ? given : 'Template',
    note: note ?? '',
    sheet: readSheet(file['sheet'], problems),
    names: readNames(file['names'], problems),
    ...(needs.length > 0 && { needs }),
  };
  return { template, problems: problems.list() };
}
