/**
 * Rows of a block change places inside the engine. Each cell stays the vertex
 * that it is and keeps what it is joined with: only where it stands is another
 * place. That holds for formulas which use what is as far from them afterwards
 * as before; all others are taken out before and put in again after this (see
 * the effects of `src/workbook/order-rows.ts`).
 */
import { shiftCopy } from '../../src/formula/index.ts';
import type { Area } from '../../src/workbook/types.ts';
import { ArrayFormulaVertex, ParsingErrorVertex, ScalarFormulaVertex } from './internals.ts';
import type { Inside, Place, RangeVertex, Vertex } from './internals.ts';

/** @returns where each row of the block stands now */
export function orderRows(inside: Inside, area: Area, order: readonly number[]): (row: number) => number {
  const { sheet, top, left, right } = area;
  const to = new Int32Array(order.length);
  for (let at = 0; at < order.length; at++) to[order[at]!] = top + at;
  const rowAfter = (row: number): number => (row < top || row > area.bottom ? row : to[row - top]!);

  moveRanges(inside, area, rowAfter);
  const arrays: ArrayFormulaVertex[] = [];
  for (let col = left; col <= right; col++) moveColumn(inside, { sheet, top, col }, order, arrays);
  const { arrayMapping, graph } = inside._dependencyGraph;
  for (const vertex of arrays) arrayMapping.setArray(vertex.getRange(), vertex);
  graph.markChangingWithStructureNodesAsDirty();
  return rowAfter;
}

function moveColumn(inside: Inside, { sheet, top, col }: { readonly sheet: number; readonly top: number; readonly col: number }, order: readonly number[], arrays: ArrayFormulaVertex[]): void {
  const { _dependencyGraph: { addressMapping, arrayMapping }, _lazilyTransformingAstService: lazy } = inside;
  const cells: (Vertex | undefined)[] = [];
  for (let at = 0; at < order.length; at++) cells.push(addressMapping.getCell({ sheet, row: top + at, col }));
  for (let at = 0; at < order.length; at++) {
    if (order[at] === at) continue;
    const place: Place = { sheet, row: top + at, col };
    const vertex = cells[order[at]!];
    if (vertex === undefined) {
      if (cells[at] !== undefined) addressMapping.removeCell(place);
      continue;
    }
    addressMapping.setCell(place, vertex);
    if (vertex instanceof ScalarFormulaVertex) {
      // What came and went before must be reckoned with from the old place.
      vertex.getFormula(lazy);
      vertex.cellAddress = place;
    } else if (vertex instanceof ArrayFormulaVertex) {
      arrayMapping.removeArray(vertex.getRange());
      vertex.setAddress(place);
      arrays.push(vertex);
    }
  }
}

/** A block of one row goes with it; what reaches over rows that change places has them in another order. */
function moveRanges({ _dependencyGraph: { rangeMapping, graph } }: Inside, area: Area, rowAfter: (row: number) => number): void {
  const moved: [RangeVertex, number][] = [];
  for (const range of rangeMapping.rangesInSheet(area.sheet)) {
    const { start, end } = range.range;
    if (end.row < area.top || start.row > area.bottom || end.col < area.left || start.col > area.right) continue;
    if (start.row === end.row && start.col >= area.left && end.col <= area.right) {
      const by = rowAfter(start.row) - start.row;
      if (by !== 0) moved.push([range, by]);
    } else {
      range.clearCache();
      graph.markNodeAsDirty(range);
    }
  }
  for (const [range] of moved) rangeMapping.removeVertexIfExists(range);
  for (const [range, by] of moved) {
    range.range.shiftByRows(by);
    range.clearCache();
    rangeMapping.addOrUpdateVertex(range);
  }
}

/** The formulas of the block that could not be read, where they stand now, as they read there. */
export function unreadIn({ _dependencyGraph: { addressMapping } }: Inside, { sheet, top, left, bottom, right }: Area, rowAfter: (row: number) => number): [Place, string][] {
  const found: [Place, string][] = [];
  for (let row = top; row <= bottom; row++) {
    for (let col = left; col <= right; col++) {
      const place: Place = { sheet, row: rowAfter(row), col };
      const vertex = addressMapping.getCell(place);
      if (vertex instanceof ParsingErrorVertex) found.push([place, shiftCopy(vertex.rawInput as string, place.row - row, 0)]);
    }
  }
  return found;
}
