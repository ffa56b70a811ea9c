/** What cells give and show, for sorting, matching and finding: results where there are any, else what was typed. */
import { UNITS, readQuantity, type UnitCode } from '../quantities/index.ts';
import type { Result } from '../reckoning/index.ts';
import { cellAt, sheetById, type PlainValue, type SheetId, type ValueAt } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { sheetView } from './sheet-view.ts';

export function valueAt(desk: Desk, sheet: SheetId): ValueAt {
  const page = sheetById(desk.book, sheet);
  return (row, col) => plain(desk.results.at(sheet, row, col), (page && cellAt(page, row, col)?.raw) ?? '');
}

/** As the grid shows it, without the other system's figure. */
export function textAt(desk: Desk, sheet: SheetId): (row: number, col: number) => string {
  const page = sheetById(desk.book, sheet);
  if (!page) return () => '';
  const view = sheetView(page, desk.results, desk.showAs, desk.waiting);
  return (row, col) => view.cell(row, col)?.text ?? '';
}

function plain(result: Result, raw: string): PlainValue {
  switch (result.kind) {
    case 'quantity': return figure(result.value, result.unit);
    case 'span': return figure(result.low, result.unit);
    case 'text':
    case 'truth': return result;
    case 'error': return { kind: 'error' };
    case 'empty': return typed(raw);
  }
}

const figure = (value: number, unit: UnitCode): PlainValue => ({ kind: 'number', value, dimension: UNITS[unit].dimension });

/** Before the engine has answered. */
function typed(raw: string): PlainValue {
  if (raw === '' || raw.startsWith('=')) return { kind: 'empty' };
  const reading = readQuantity(raw);
  if (reading.kind === 'quantity') return figure(reading.quantity.value, reading.quantity.unit);
  if (reading.kind === 'span') return figure(reading.span.low.value, reading.span.low.unit);
  return { kind: 'text', text: raw.replace(/^'/, '') };
}
