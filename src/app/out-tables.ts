/** What leaves as CSV: the open sheet or a part of it, and the side-by-side table. */
import { inBase } from '../quantities/index.ts';
import type { OutCell } from '../tables/index.ts';
import type { Comparison } from '../panels/index.ts';
import type { Result } from '../reckoning/index.ts';
import { cellAt, seenIn, usedArea, type Area } from '../workbook/index.ts';
import type { Desk } from './desk.ts';

export function outCell(result: Result): OutCell {
  switch (result.kind) {
    case 'quantity':
      return { kind: 'quantity', quantity: inBase(result.value, result.unit) };
    case 'span':
      return { kind: 'span', span: { low: inBase(result.low, result.unit), high: inBase(result.high, result.unit) } };
    default:
      return result;
  }
}

/** What shows of a block; whatever is hidden in it is left out. A selection of whole columns goes only as far as anything is filled. */
export function sheetTable(desk: Desk, area: Area): OutCell[][] {
  const used = usedArea(desk.sheet);
  const { rows, columns } = seenIn(desk.sheet, { ...area, bottom: Math.min(area.bottom, used?.bottom ?? area.top), right: Math.min(area.right, used?.right ?? area.left) });
  return Array.from(rows, (row) => Array.from(columns, (col) => {
    const out = outCell(desk.results.at(area.sheet, row, col));
    // Before the engine has answered, what was typed still goes out.
    return out.kind === 'empty' ? typed(cellAt(desk.sheet, row, col)?.raw ?? '') : out;
  }));
}

function typed(raw: string): OutCell {
  return raw === '' ? { kind: 'empty' } : { kind: 'text', text: raw };
}

export function comparisonTable({ cases, inputs, outputs, against }: Comparison): OutCell[][] {
  const text = (words: string): OutCell => (words === '' ? { kind: 'empty' } : { kind: 'text', text: words });
  const others = cases.map((_, at) => at).filter((at) => at !== against);
  const differences = others.map((at) => text(`${cases[at]} less ${cases[against]}`));
  return [
    [text('Place'), text('Input or result'), ...cases.map(text), ...differences],
    ...inputs.map((input) => [text(input.place), text(input.label), ...input.values.map((raw) => text(raw ?? input.now)), ...differences.map(() => text(''))]),
    ...(outputs ?? []).map((output) => [
      text(output.place), text(output.label),
      ...output.results.map(outCell),
      ...others.map((at) => output.differences[at]).map((difference) => (difference ? outCell(difference) : text(''))),
    ]),
  ];
}
