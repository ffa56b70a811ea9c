/** A choice of sizes as cells of a sheet: formulas that show their working, and the figures they go by. */
import { cellName } from '../formula/index.ts';
import { cellAt, type Cell, type CellAddress, type CellChange, type Edit, type Sheet } from '../workbook/index.ts';

export interface PutLevel {
  readonly name: string;
  /** As it is typed in a cell: a figure, or a formula that points at one. */
  readonly raw: string;
  /** The least and the most ease wanted, where finished measures decide. */
  readonly ease?: { readonly low: string; readonly high: string };
  /** The chart's name for the measure whose lines lie on the piece. */
  readonly measure: string;
}

/** All figures as they are typed. */
export interface PutWish {
  /** The chart's name in the workbook. */
  readonly chart: string;
  readonly style: string;
  readonly change: string;
  readonly apart: string;
  readonly seams: string;
  /** From the top down. */
  readonly levels: readonly PutLevel[];
  /** What a size leaves is ease. */
  readonly isEase: boolean;
  /** Distances down from each level but the last, and whether it is the usual one. */
  readonly downs: readonly { readonly raw: string; readonly usual: boolean }[];
  /** The high bust, where the bust is fuller than the pattern is drawn for. `measure`: the chart's bust; `usual`: a difference that is the chart's own. */
  readonly bust?: { readonly raw: string; readonly measure: string; readonly usual: string };
}

const heading = (raw: string): Cell => ({ raw, look: { heading: true } });
/** Over figures. */
const over = (raw: string): Cell => ({ raw, look: { heading: true, align: 'end' } });
const input = (raw: string, note?: string): Cell => ({ raw, input: true, ...(note !== undefined && { note }) });
const plain = (raw: string): Cell => ({ raw });
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const titled = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The cells, row by row from the first; `undefined` stays empty. */
export function sizeRows(wish: PutWish, at: { readonly row: number; readonly col: number }): readonly (readonly (Cell | undefined)[])[] {
  const { chart, levels, downs, bust } = wish;
  const eased = levels.some(({ ease }) => ease);
  const columns = eased ? { size: 4, width: 8 } : { size: 2, width: 6 };
  const place = (row: number, col: number, fixed = false): string => {
    const name = cellName(at.row + row, at.col + col);
    return fixed ? name.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2') : name;
  };
  const measured = [...(bust ? [{ name: 'high bust', raw: bust.raw }] : []), ...levels];
  const first = 1;
  const rowOf = (level: number): number => first + (bust ? 1 : 0) + level;
  const wishes = first + measured.length + 1;
  const block = `${place(first, 0, true)}:${place(first + measured.length - 1, columns.size - 1, true)}`;
  const call = (row: number): string => `=SIZE.CHOOSE(${chart}, ${block}, ${place(row, 0)}, ${[0, 1, 2].map((i) => place(wishes + i, 1, true)).join(', ')})`;
  const leaves = (row: number, further: string): string => `=SIZE.EASE(${chart}, ${place(row, 0)}, ${place(row, 1)}, ${place(row, columns.size)}${further})`;
  const left = wish.isEase ? 'Ease' : 'Chart less body';
  const rows: (Cell | undefined)[][] = [[
    heading('Sizes by level'), over('Body'), ...(eased ? [over('Ease from'), over('Ease to')] : []),
    over('Size'), over(`${left}, one smaller`), over(left), over(`${left}, one larger`),
  ]];
  for (const [i, { name, raw }] of measured.entries()) {
    const level = levels[i - (bust ? 1 : 0)];
    const row = first + i;
    const body = raw.startsWith('=') ? plain(raw) : input(raw);
    const ease = eased ? [level?.ease, level?.ease].map((each, end) => (each ? input(end === 0 ? each.low : each.high) : undefined)) : [];
    rows.push([plain(name), body, ...ease, ...(level ? [{ raw: call(row), look: { strong: true } as const }, plain(leaves(row, ', -1')), plain(leaves(row, '')), plain(leaves(row, ', 1'))] : [])]);
  }
  rows.push([]);
  rows.push([plain('Style'), { ...input(wish.style), look: { align: 'end' } }], [plain('Each change of size counts as'), input(wish.change)], [plain('Sizes apart at most'), input(wish.apart)]);
  if (levels.length > 1) {
    const seams = wishes + 4;
    rows.push([], [heading('Blend'), over('From size'), over('To size'), over('Over'), over('Lines apart above'), over('Lines apart below')]);
    for (const [i, down] of downs.entries()) {
      const [upper, lower] = [levels[i], levels[i + 1]];
      if (!upper || !lower) continue;
      const row = rows.length;
      const gap = ({ measure }: PutLevel): Cell => plain(`=BLEND.GAP(${chart}, ${quoted(measure)}, ${place(row, 1)}, ${place(row, 2)}, ${place(seams + downs.length + 1, 1, true)})`);
      rows.push([
        plain(`${titled(upper.name)} to ${lower.name}`), plain(`=${place(rowOf(i), columns.size)}`), plain(`=${place(rowOf(i + 1), columns.size)}`),
        input(down.raw, down.usual ? 'The usual distance (common practice): measure it on the body or the pattern.' : undefined), gap(upper), gap(lower),
      ]);
    }
    rows.push([plain('Seams that share a girth'), input(wish.seams)]);
  }
  const level = levels.findIndex(({ name }) => name === 'bust');
  if (bust && level >= 0) {
    const row = rowOf(level);
    rows.push([], [heading('Bust fuller than the pattern is drawn for'), heading('')]);
    rows.push([plain('The size is chosen for a bust of'), plain(`=BUST.BASIS(${place(row, 1)}, ${place(first, 1)}${bust.usual === '' ? '' : `, ${bust.usual}`})`)]);
    rows.push([plain('Widen each half of the front by'), plain(`=BUST.SPREAD(${place(row, 1)}, SIZE.CONTINUED(${chart}, ${quoted(bust.measure)}, ${place(row, columns.size)}))`)]);
  }
  return rows;
}

export interface PutArea {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export function sizeArea(wish: PutWish, at: { readonly row: number; readonly col: number }): PutArea {
  const rows = sizeRows(wish, at);
  return { top: at.row, left: at.col, bottom: at.row + rows.length - 1, right: at.col + Math.max(...rows.map((row) => row.length)) - 1 };
}

/** The first cell that is filled where the choice would go, as its name; undefined where there is room. */
export function inTheWay(sheet: Sheet, { top, left, bottom, right }: PutArea): string | undefined {
  for (let row = top; row <= bottom; row += 1) {
    for (let col = left; col <= right; col += 1) if (cellAt(sheet, row, col)) return cellName(row, col);
  }
  return undefined;
}

/** Wide enough for "Bust fuller than the pattern is drawn for" and for "Chart less body, one smaller", in CSS pixels. */
const [NAME_WIDTH, FIGURE_WIDTH] = [300, 228];

export function putSizesEdit(wish: PutWish, at: CellAddress, sheet: Sheet): Edit {
  const cells = sizeRows(wish, at).flatMap((row, r) => row.flatMap((cell, c): CellChange[] => (cell && (cell.raw !== '' || cell.look) ? [{ row: at.row + r, col: at.col + c, cell }] : [])));
  const { left, right } = sizeArea(wish, at);
  // A width that she set stays as it is.
  const narrow = Array.from({ length: right - left + 1 }, (_, i) => left + i).filter((col) => sheet.widths[col] === undefined);
  return {
    do: 'many', label: 'put sizes by level',
    edits: [
      { do: 'setCells', sheet: at.sheet, cells },
      ...narrow.map((col): Edit => ({ do: 'setWidth', sheet: at.sheet, col, width: col === left ? NAME_WIDTH : FIGURE_WIDTH })),
    ],
  };
}
