/** What hangs on a cell in words: the pins to look at, and those that were acknowledged. */
import { cautionInWords } from '../panels/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { CellCaution } from '../reckoning/index.ts';
import type { Acknowledged, Cell } from '../workbook/index.ts';

export const acknowledgedOf = (cell: Cell | undefined, { print }: CellCaution): Acknowledged | null =>
  cell?.acknowledged?.find((each) => each.print === print) ?? null;

export function pinTexts(cautions: readonly CellCaution[], cell: Cell | undefined, as: ShowAs): { readonly caution?: string; readonly acknowledged?: string } {
  if (cautions.length === 0) return {};
  const seen = (caution: CellCaution): Acknowledged | null => acknowledgedOf(cell, caution);
  const open = cautions.filter((caution) => !seen(caution)).map((caution) => cautionInWords(caution, as));
  const settled = cautions.filter(seen).map((caution) => [cautionInWords(caution, as), seen(caution)!.note].filter((words) => words !== '').join(' '));
  return { ...(open.length > 0 && { caution: open.join(' ') }), ...(settled.length > 0 && { acknowledged: settled.join(' ') }) };
}
