/** The typed figures that a result comes from. */
import type { CellAddress } from '../../src/workbook/types.ts';
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import { ValueCellVertex } from './internals.ts';
import type { Place } from './internals.ts';
import { isNumeric, quantityOf } from './values.ts';

/** A larger block is a table to look things up in, and not a figure to turn. */
const MOST_IN_BLOCK = 40;
const MOST = 200;

/** Every cell with a typed figure on which a result depends, through any number of steps, the nearest first. Not those of large blocks. */
export function inputsOf(host: Host, result: Place): readonly CellAddress[] {
  const { graphs } = host;
  const seen = new Set<unknown>();
  const found: CellAddress[] = [];
  let edge: Place[] = [result];
  while (edge.length > 0 && found.length < MOST) {
    const next: Place[] = [];
    for (const place of edge) {
      const vertex = graphs.addressMapping.getCell(place);
      if (vertex === undefined || seen.has(vertex)) continue;
      seen.add(vertex);
      if (isFormulaVertex(vertex)) {
        for (const used of graphs.dependencyQueryAddresses(vertex)) {
          if (!('start' in used)) next.push(used);
          else if ((used.end.row - used.start.row + 1) * (used.end.col - used.start.col + 1) <= MOST_IN_BLOCK) host.tools.eachPlace(used, (each) => next.push(each));
        }
      } else if (vertex instanceof ValueCellVertex) {
        const value = vertex.getCellValue();
        if (isNumeric(value) && quantityOf(value) !== undefined) found.push({ sheet: place.sheet, row: place.row, col: place.col });
      }
    }
    edge = next;
  }
  return found;
}
