/** From the rows of a sheet to pieces. A row that makes no piece gives a sentence; the others still come. */
import { crossing, isThin, laidOutline, withoutRepeats } from '../outline.ts';
import type { Outline, Point } from '../types.ts';
import { RowCells, RowFault } from './cells.ts';
import { COLUMNS, headingsOf, textOf, type Column, type Headings } from './columns.ts';
import { alongGrain, onFold, type Turned } from './drawn.ts';
import type { DrawnShape, PieceRows, PieceSentence, SeamPiece } from './types.ts';
import { level, SHAPE_WORDS, ShapeFault, shapeWord, type Figures, type Level, type ShapeWord } from './words.ts';

export interface SeamPieces {
  readonly pieces: readonly SeamPiece[];
  readonly sentences: readonly PieceSentence[];
}

const NO_HEADINGS = `There is no row of headings among these: a list of pieces begins with one that has ${COLUMNS.piece} and ${COLUMNS.shape}.`;

/** The pieces without their allowance; `shapes` are those that a row can name. */
export function readSeams(rows: PieceRows, shapes: readonly DrawnShape[]): SeamPieces {
  const headings = headingsOf(rows);
  if (headings === null) return { pieces: [], sentences: [{ row: null, sentence: NO_HEADINGS }] };
  const pieces: SeamPiece[] = [];
  const sentences: PieceSentence[] = [];
  for (let row = headings.row + 1; row < rows.length; row++) {
    if (isBlank(rows, headings, row) || isLevel(rows, headings, row)) continue;
    try {
      pieces.push(pieceAt(rows, headings, row, shapes));
    } catch (fault) {
      if (!(fault instanceof RowFault)) throw fault;
      sentences.push({ row, sentence: fault.message });
    }
  }
  return { pieces, sentences };
}

const isBlank = (rows: PieceRows, headings: Headings, row: number): boolean =>
  (Object.keys(COLUMNS) as Column[]).every((column) => {
    const cell = headings.at(rows[row], column);
    return cell.kind === 'empty' || (cell.kind === 'text' && cell.text.trim() === '');
  });

/** A row without a name and a shape has widths of the piece above it. */
function isLevel(rows: PieceRows, headings: Headings, row: number): boolean {
  const names = (['piece', 'shape'] as const).every((column) => headings.at(rows[row], column).kind !== 'error' && textOf(headings.at(rows[row], column)) === '');
  return names && headings.at(rows[row], 'down').kind !== 'empty';
}

function pieceAt(rows: PieceRows, headings: Headings, row: number, shapes: readonly DrawnShape[]): SeamPiece {
  const name = textOf(headings.at(rows[row], 'piece'));
  if (name === '') throw new RowFault(headings.at(rows[row], 'piece').kind === 'empty' ? `A row of the list has no name for its piece: fill in ${COLUMNS.piece}, or ${COLUMNS.down} for more widths of the piece above it.` : `A row of the list has no word for its ${COLUMNS.piece}: give it a name.`);
  const cells = new RowCells(name, headings, rows[row]);
  const word = cells.word('shape');
  if (word === '') throw new RowFault(`“${name}” has no Shape: write ${allWords(shapes)}.`);
  const cut = cells.cut();
  const known = shapeWord(word);
  const grain = cells.grain() || (known?.bias === true ? 45 : 0);
  if (cut === 'fold' && grain !== 0) throw new RowFault(`“${name}” is cut on the fold, which runs along the grain: leave its Grain lengthwise, or cut it single.`);
  const drawn = known ? null : shapes.find((shape) => shape.name.trim().toLowerCase() === word);
  if (!known && !drawn) throw new RowFault(`“${name}” has “${textOf(cells.at('shape') as { kind: 'text'; text: string })}” for Shape, which is none: write ${allWords(shapes)}.`);
  const whole = known ? { outline: worded(known, cells, rows, headings, row), matches: [] } : alongGrain(drawn!);
  const { outline, matches } = laid(cut === 'fold' ? halved(name, whole, known !== undefined) : whole, grain);
  const seam = withoutRepeats(outline);
  if (seam.length < 3 || isThin(seam)) throw new RowFault(`“${name}” encloses no area: look at its figures.`);
  if (crossing(seam)) throw new RowFault(`The outline of “${name}” crosses itself: ${known ? 'look at its figures' : 'mend its drawn shape'}.`);
  const piece = { name, row, cloth: cells.word('cloth') || MAIN, cut, count: cells.count(), turns: cells.turns(), seam, allowance: cells.allowance() };
  return matches.length === 0 ? piece : { ...piece, matches };
}

/** The cloth of a row that names none. */
export const MAIN = 'main';

function allWords(shapes: readonly DrawnShape[]): string {
  const words = SHAPE_WORDS.map(({ words: [word] }) => word!);
  const drawn = shapes.slice(0, 5).map(({ name }) => `“${name}”`);
  return [...words, ...drawn].reduce((list, one, i, all) => (i === 0 ? one : `${list}${i === all.length - 1 ? ' or' : ','} ${one}`), '');
}

function worded(word: ShapeWord, cells: RowCells, rows: PieceRows, headings: Headings, row: number): Outline {
  const figures: Partial<Record<Column, number>> = {};
  for (const column of FIGURES) {
    const figure = cells.figure(column);
    if (figure !== undefined) figures[column] = figure;
  }
  const [shape] = word.words;
  for (const column of word.needs) if (figures[column] === undefined) throw new RowFault(lacks(cells, shape!, [column]));
  if (word.oneOf?.every((column) => figures[column] === undefined) === true) throw new RowFault(lacks(cells, shape!, word.oneOf));
  try {
    return word.outline(figures, word.levels === true ? levelsAt(cells, figures, rows, headings, row) : []);
  } catch (fault) {
    if (!(fault instanceof ShapeFault)) throw fault;
    throw new RowFault(`“${cells.name}” ${fault.message}.`);
  }
}

const FIGURES: readonly Column[] = ['length', 'width', 'lower', 'radius', 'part', 'cap', 'down', 'left', 'right'];

function lacks(cells: RowCells, shape: string, columns: readonly Column[]): string {
  const [first] = columns;
  if (columns.length > 1) return `“${cells.name}” is a ${shape}, and needs ${columns.map((column) => COLUMNS[column]).join(' or ')}: fill one in.`;
  return cells.has(first!) ? `“${cells.name}” is a ${shape}, and has no ${COLUMNS[first!]} yet: fill it in.` : `“${cells.name}” is a ${shape}, and needs a column with the heading ${COLUMNS[first!]}: add it and fill it in.`;
}

/** Widths at levels, from the piece's own row and the rows below it, from the top down. */
function levelsAt(own: RowCells, { length, width, lower, down = 0, left, right }: Figures, rows: PieceRows, headings: Headings, row: number): readonly Level[] {
  const levels: Level[] = [];
  const take = (at: number, both: number | undefined, one: number | undefined, other: number | undefined): void => {
    if (both !== undefined && (one !== undefined || other !== undefined)) throw new RowFault(`“${own.name}” has a Width beside a Left or Right: leave one of them empty.`);
    const next = both !== undefined ? level(at, both) : { down: at, left: one ?? 0, right: other ?? 0 };
    const above = levels[levels.length - 1];
    if (above && next.down <= above.down) throw new RowFault(`The widths of “${own.name}” have to stand from the top down: each Down more than the one above it.`);
    levels.push(next);
  };
  let below = row + 1;
  const more = (): boolean => below < rows.length && isLevel(rows, headings, below);
  if (left !== undefined || right !== undefined || (width !== undefined && (more() || lower === undefined))) take(down, width, left, right);
  if (lower !== undefined && more()) throw new RowFault(`“${own.name}” has a Lower width and rows below it with Down: leave one of them out.`);
  for (; more(); below++) {
    const cells = new RowCells(own.name, headings, rows[below]);
    take(cells.figure('down') ?? 0, cells.figure('width'), cells.figure('left'), cells.figure('right'));
  }
  if (levels.length > 0 && levels[0]!.down > 0) throw new RowFault(`The first width of “${own.name}” has to be at its top: leave its Down empty, or 0${length === undefined ? '' : ', or make its Length less'}.`);
  return levels;
}

/** As it lies with its grain at an angle to its length, its top at along = 0. */
function laid({ outline, matches }: Turned, turn: number): Turned {
  if (turn === 0) return { outline, matches };
  const way = { turn, mirrored: false };
  const top = Math.min(...laidOutline(outline, way, [0, 0]).map(([along]) => along));
  return { outline: laidOutline(outline, way, [-top, 0]), matches: matches.map(({ mark, at }) => ({ mark, at: laidOutline([at], way, [-top, 0])[0]! })) };
}

/** What is drawn of a piece on the fold, its fold edge at across = 0. */
function halved(name: string, whole: Turned, byWord: boolean): Turned {
  if (!byWord) {
    const half = onFold(whole);
    if (half === null) throw new RowFault(`“${name}” is cut on the fold, and its drawn shape has no straight edge along its grain line at one side: draw half of the piece, or cut it single.`);
    return half;
  }
  const { outline } = whole;
  const left = Math.max(...outline.map(([, across]) => -across)), right = Math.max(...outline.map(([, across]) => across));
  if (left <= SAME) return whole;
  const alike = outline.every(([along, across]) => outline.some(([a, c]) => Math.abs(a - along) <= SAME && Math.abs(c + across) <= SAME));
  if (!alike || right <= SAME) throw new RowFault(`“${name}” is cut on the fold, and its Left and Right differ: measure half of it, from the fold to the right, with nothing in Left.`);
  return { ...whole, outline: rightOf(outline) };
}

/** Lengths nearer than this, in mm, are one. */
const SAME = 1e-6;

/** The part at across = 0 and more. */
function rightOf(outline: Outline): Outline {
  return outline.flatMap((point, i): Point[] => {
    const next = outline[(i + 1) % outline.length]!;
    const kept: Point[] = point[1] >= 0 ? [point] : [];
    if ((point[1] > 0 && next[1] < 0) || (point[1] < 0 && next[1] > 0)) {
      const share = point[1] / (point[1] - next[1]);
      kept.push([point[0] + share * (next[0] - point[0]), 0]);
    }
    return kept;
  });
}
