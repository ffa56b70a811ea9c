/**
 * Cells as text for other programs and back: tab-separated lines, a field in
 * quotes when it holds a tab, a quote or a line break, as RFC 4180 has it for
 * commas. The HTML that other programs put beside it is not read: what it
 * says is in the text too, and reading it would need an HTML parser, which the
 * page's policy (Trusted Types) rightly keeps shut.
 */
import Papa from 'papaparse';

export type Table = readonly (readonly string[])[];

export function toTsv(table: Table): string {
  return Papa.unparse(table as string[][], { delimiter: '\t', newline: '\n' });
}

const ENTITIES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ENTITIES[sign]!).replace(/\n/g, '<br>');

export function toHtml(table: Table): string {
  const rows = table.map((row) => `<tr>${row.map((text) => `<td>${escaped(text)}</td>`).join('')}</tr>`);
  return `<table>${rows.join('')}</table>`;
}

/**
 * Text from the clipboard as rows of cells, at least one by one. Quotes count
 * only around a whole field; text whose quotes do not pair up (an inch mark, a
 * speech cut off) is taken as it stands.
 */
export function fromClipboard(text: string): Table {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
  if (lines === '') return [['']];
  if (!lines.includes('"')) return lines.split('\n').map((line) => line.split('\t'));
  const { data, errors } = Papa.parse<string[]>(lines, { delimiter: '\t', newline: '\n' });
  return errors.some((error) => error.type === 'Quotes') ? lines.split('\n').map((line) => line.split('\t')) : data;
}
