/** Filling down, up and across: what stands at one end of a block goes on through the rest of it. */
import { isFormula, shiftCopy } from '../formula/index.ts';
import { areaHeight, areaWidth, isArea, sameArea, within } from './area.ts';
import { cellAt } from './book.ts';
import { LIMITS, counted, plural } from './limits.ts';
import { mustHaveSheet } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { seriesOf } from './series.ts';
import type { Series } from './series.ts';
import { inRuns } from './runs.ts';
import { hiddenColumns, hiddenRows } from './showing.ts';
import { chartSizes } from './sizes.ts';
import type { Area, Book, Cell, CellChange, Edit, Runs, Sheet } from './types.ts';

export interface FillOptions {
  /** Copy what is there, even where it could go on: 1, 2 gives 1, 2, 1, 2. */
  readonly copy?: boolean;
}

interface Line {
  readonly cellAt: (place: number) => Cell | undefined;
  readonly change: (place: number, cell: Cell | null) => CellChange;
  /** The formula of one place as it stands at another. */
  readonly shifted: (formula: string, from: number, to: number) => string;
}

/**
 * The edit that fills a block from the part of it that is given: one step.
 * Rows and columns that do not show are neither read nor filled.
 *
 * @param source lies in `target`, at one edge of it, and reaches over its whole breadth
 * @throws EditRefused when it does not, or when that is too much at once
 */
export function fillEdit(book: Book, source: Area, target: Area, { copy = false }: FillOptions = {}): Edit {
  const sheet = mustHaveSheet(book, target.sheet);
  const down = source.left === target.left && source.right === target.right;
  const across = source.top === target.top && source.bottom === target.bottom;
  if (!isArea(source) || !isArea(target) || !within(source, target) || sameArea(source, target) || down === across) {
    throw new EditRefused('Cells are filled in one direction at a time: down, up, to the right or to the left.');
  }
  const size = areaHeight(target) * areaWidth(target);
  if (size > LIMITS.paste) {
    throw new EditRefused(`That would fill ${counted(size)} cells of ${sheet.name}; at most ${counted(LIMITS.paste)} are filled at once. Choose a smaller block.`);
  }
  const charts = chartSizes(book);
  const [lines, ends] = down
    ? [shown(target.left, target.right, hiddenColumns(sheet)).map((col) => columnLine(sheet, col)), [target.top, source.top, source.bottom, target.bottom] as const]
    : [shown(target.top, target.bottom, hiddenRows(sheet)).map((row) => rowLine(sheet, row)), [target.left, source.left, source.right, target.right] as const];
  const hidden = down ? hiddenRows(sheet) : hiddenColumns(sheet);
  const given = shown(ends[1], ends[2], hidden);
  const before = shown(ends[0], ends[1] - 1, hidden).reverse();
  const after = shown(ends[2] + 1, ends[3], hidden);
  const cells = lines.flatMap((line) => [
    ...filled(line, given, after, 1, copy, charts),
    ...filled(line, given, before, -1, copy, charts),
  ]);
  const label = `fill ${plural((before.length + after.length) * lines.length, 'cell')} in ${sheet.name}`;
  return { do: 'many', label, edits: [{ do: 'setCells', sheet: sheet.id, cells }] };
}

function shown(first: number, last: number, hidden: Runs): number[] {
  const places: number[] = [];
  for (let place = first; place <= last; place++) if (!inRuns(hidden, place)) places.push(place);
  return places;
}

const columnLine = (sheet: Sheet, col: number): Line => ({
  cellAt: (row) => cellAt(sheet, row, col),
  change: (row, cell) => ({ row, col, cell }),
  shifted: (formula, from, to) => shiftCopy(formula, to - from, 0),
});

const rowLine = (sheet: Sheet, row: number): Line => ({
  cellAt: (col) => cellAt(sheet, row, col),
  change: (col, cell) => ({ row, col, cell }),
  shifted: (formula, from, to) => shiftCopy(formula, 0, to - from),
});

/** One line of cells, onwards from the given ones or backwards before them. */
function filled(line: Line, given: readonly number[], empty: readonly number[], way: 1 | -1, copy: boolean, charts: readonly (readonly string[])[]): CellChange[] {
  if (given.length === 0 || empty.length === 0) return [];
  const sources = given.map(line.cellAt);
  const texts = sources.map((cell) => cell?.raw ?? '');
  const series: Series | null = copy || texts.some((text) => text === '' || isFormula(text)) ? null : seriesOf(texts, charts);
  const changes: CellChange[] = [];
  for (const [at, place] of empty.entries()) {
    const index = way === 1 ? given.length + at : -1 - at;
    const which = ((index % given.length) + given.length) % given.length;
    const raw = series ? series(index) : isFormula(texts[which]!) ? line.shifted(texts[which]!, given[which]!, place) : texts[which]!;
    // Past the end of a series a cell stays as it is.
    if (raw === null) continue;
    const look = sources[which]?.look;
    const input = sources[which]?.input;
    const note = line.cellAt(place)?.note;
    changes.push(line.change(place, { raw, ...(look && { look }), ...(input && { input }), ...(note && { note }) }));
  }
  return changes;
}
