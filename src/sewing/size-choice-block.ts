/** A person's measures from a block of cells: each level with its girth, and the ease wanted there beside it. */
import type { Quantity } from '../quantities/index.ts';
import type { CellBlock } from './cell-block.ts';
import { labelText } from './chart-labels.ts';
import type { Pad, Value } from './define.ts';
import type { Measured } from './size-choice-body.ts';
import type { Reach } from './size-choice-ladder.ts';

const SHAPE = 'Give a block in which each level has its name as in the chart and its measure beside it, such as bust and 92 cm, and after it, where the chart has finished measures, the least and the most ease wanted';

type Line = readonly Value[];

const filled = (line: Line): boolean => line.some((cell) => labelText(cell) !== null);
const isWord = (cell: Value): cell is string => typeof cell === 'string' && labelText(cell) !== null;
const isLength = (cell: Value): cell is Quantity => typeof cell === 'object' && cell !== null && 'dimension' in cell && cell.dimension === 'length';

/** Each level is a line, in rows or in columns: a name and then its figures. */
function linesOf(block: CellBlock): readonly Line[] | undefined {
  const across = Array.from({ length: block.width }, (_, i) => block.rows.map((row) => row[i] ?? null));
  return [block.rows, across]
    .map((lines) => lines.filter(filled))
    .find((lines) => lines.some((line) => line.some(isLength)) && lines.every((line) => line.filter(isWord).length === 1));
}

/** A level whose measure is not filled in yet is left out. */
export function measuredIn(block: CellBlock, pad: Pad): readonly Measured[] {
  const lines = linesOf(block);
  if (lines === undefined) return pad.refuse(`${SHAPE}.`);
  return lines.flatMap((line): Measured[] => {
    const name = line.find(isWord)?.trim() ?? '';
    const [girth, ...others] = line.filter(isLength);
    if (girth === undefined) return [];
    const ease = easeIn(line, others, name, pad);
    return [{ name, girth: girth.value, ...(ease && { ease }) }];
  });
}

/** Two lengths, two figures in one cell, or the least alone. */
function easeIn(line: Line, lengths: readonly Quantity[], name: string, pad: Pad): Reach | undefined {
  for (const cell of line) {
    if (typeof cell === 'object' && cell !== null && 'low' in cell && cell.low.dimension === 'length') return { low: cell.low.value, high: cell.high.value };
  }
  const [low, high] = lengths;
  if (low === undefined) return undefined;
  if (high !== undefined && high.value < low.value) return pad.refuse(`The most ease wanted at the ${name}, ${pad.say(high.value)}, is less than the least, ${pad.say(low.value)}: put the smaller first.`);
  return { low: low.value, high: high?.value ?? Infinity };
}
