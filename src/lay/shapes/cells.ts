/** One cell of a row: a length, a count, a word; or the sentence why it is none. */
import { inBase, show, UNITS } from '../../quantities/index.ts';
import type { Dimension, UnitCode } from '../../quantities/index.ts';
import type { Cut } from '../types.ts';
import { COLUMNS, textOf, type Column, type Headings } from './columns.ts';
import type { PieceCell } from './types.ts';

/** One sentence that names the piece. */
export class RowFault extends Error {}

/** Longer than this, in mm, is no piece of a garment. */
const MOST_LENGTH = 50_000;
const MOST_COUNT = 300;
const MOST_TILT = 45;

const said = (value: number, unit: UnitCode): string => show(inBase(value, unit), { system: 'own', inchStep: 16 }).main;

function shown(cell: Exclude<PieceCell, { kind: 'error' | 'empty' }>): string {
  switch (cell.kind) {
    case 'quantity': return said(cell.value, cell.unit);
    case 'span': return 'a span of two figures';
    case 'text': return `“${cell.text}”`;
    case 'truth': return cell.truth ? 'TRUE' : 'FALSE';
  }
}

/** The cells of a row, each asked for by its column. */
export class RowCells {
  constructor(readonly name: string, private readonly headings: Headings, private readonly cells: readonly PieceCell[] | undefined) {}

  has(column: Column): boolean {
    return this.headings.has(column);
  }

  /** @throws RowFault for a cell with an error */
  at(column: Column): Exclude<PieceCell, { kind: 'error' }> {
    const cell = this.headings.at(this.cells, column);
    if (cell.kind === 'error') throw new RowFault(`The ${COLUMNS[column]} of “${this.name}” cannot be worked out: ${cell.sentence}`);
    return cell.kind === 'text' && cell.text.trim() === '' ? { kind: 'empty' } : cell;
  }

  word(column: Column): string {
    const cell = this.at(column);
    if (cell.kind === 'empty') return '';
    if (cell.kind !== 'text') throw new RowFault(`“${this.name}” needs a word for ${COLUMNS[column]}, and ${shown(cell)} is none.`);
    return textOf(cell).toLowerCase();
  }

  /** In base units; `undefined` where nothing is filled in. @throws RowFault */
  figure(column: Column): number | undefined {
    const cell = this.at(column);
    if (cell.kind === 'empty') return undefined;
    const part = column === 'part' ? FRACTION.exec(textOf(cell)) : null;
    if (part && Number(part[1]) > 0 && Number(part[2]) > 0) return Number(part[1]) / Number(part[2]);
    const dimension: Dimension = column === 'part' ? 'number' : 'length';
    const due = dimension === 'length' ? 'a length' : 'a plain number, such as 1/2,';
    if (cell.kind !== 'quantity') throw new RowFault(`“${this.name}” needs ${due} for ${COLUMNS[column]}, and ${shown(cell)} is none.`);
    const { value, unit } = cell;
    if (UNITS[unit].dimension !== dimension) {
      const bare = dimension === 'length' && unit === '';
      throw new RowFault(bare ? `The ${COLUMNS[column]} of “${this.name}” has no unit: write ${shown(cell)} cm or ${shown(cell)} in.` : `“${this.name}” needs ${due} for ${COLUMNS[column]}, and ${shown(cell)} is none.`);
    }
    const wide = ZERO_MAY.has(column) ? value >= 0 : value > 0;
    if (!wide) throw new RowFault(`The ${COLUMNS[column]} of “${this.name}” is ${shown(cell)}: it has to be ${ZERO_MAY.has(column) ? '0 or more' : 'more than 0'}.`);
    if (dimension === 'length' && !(value <= MOST_LENGTH)) throw new RowFault(`The ${COLUMNS[column]} of “${this.name}” is ${shown(cell)}, which is longer than any piece: look at its unit.`);
    return value;
  }

  /** @throws RowFault */
  count(): number {
    const cell = this.at('count');
    if (cell.kind === 'empty') return 1;
    if (cell.kind === 'quantity' && cell.unit === '' && Number.isInteger(cell.value) && cell.value >= 0 && cell.value <= MOST_COUNT) return cell.value + 0;
    throw new RowFault(`“${this.name}” is to be cut ${shown(cell)} times: How many has to be a whole number from 0 to ${MOST_COUNT}.`);
  }

  /** @throws RowFault */
  cut(): Cut {
    const word = this.word('cut');
    const cut = CUTS[word];
    if (cut !== undefined) return cut;
    throw new RowFault(`“${this.name}” has “${word}” for Cut: write single, pair or fold.`);
  }

  /** Degrees from the grain line at which it lies. @throws RowFault */
  grain(): number {
    const word = this.word('grain');
    const turn = GRAINS[word];
    if (turn !== undefined) return turn;
    throw new RowFault(`“${this.name}” has “${word}” for Grain: write lengthwise, crosswise or bias.`);
  }

  /** Allowed turns in degrees: a half turn where nothing is filled in. @throws RowFault */
  turns(): readonly number[] {
    const cell = this.at('turns');
    if (cell.kind === 'quantity' && UNITS[cell.unit].dimension === 'angle') return turnsOf([0], this.#tilt(cell.value));
    const word = this.word('turns');
    const found = /^(none|half turn|quarter turn|)(?:(?:^|,? (?:and )?)tilt(?: up to)? (\d+(?:\.\d+)?) ?(?:°|deg|degrees))?$/.exec(word);
    if (!found) throw new RowFault(`“${this.name}” has “${word}” for Turns: write none, half turn, quarter turn, or tilt 5°, or both, as in half turn, tilt 5°.`);
    const [, turn = '', tilt] = found;
    return turnsOf(turn === '' && tilt !== undefined ? [0] : TURNS[turn]!, tilt === undefined ? 0 : this.#tilt(Number(tilt)));
  }

  #tilt(degrees: number): number {
    if (degrees >= 0 && degrees <= MOST_TILT) return degrees;
    throw new RowFault(`“${this.name}” may tilt by ${said(degrees, 'deg')}: at most ${MOST_TILT}° is a tilt.`);
  }

  /** To be added; 0 where it is included. @throws RowFault */
  allowance(): number {
    if (!this.has('allowance')) return 0;
    const cell = this.at('allowance');
    if (cell.kind === 'empty') throw new RowFault(`“${this.name}” has no Allowance: give what is added all round, or write included.`);
    if (cell.kind === 'text') {
      if (this.word('allowance') === 'included') return 0;
      throw new RowFault(`“${this.name}” has ${shown(cell)} for Allowance: give a length, or write included.`);
    }
    // 0 without a unit is as good as one with it.
    return cell.kind === 'quantity' && cell.value === 0 ? 0 : this.figure('allowance') ?? 0;
  }
}

/** A third is no figure in a cell, since no tape has it; as a part of a circle it is one. */
const FRACTION = /^(\d{1,3}) ?\/ ?(\d{1,3})$/;

const ZERO_MAY: ReadonlySet<Column> = new Set(['allowance', 'down', 'left', 'right']);

const CUTS: Readonly<Record<string, Cut>> = { '': 'single', single: 'single', pair: 'pair', pairs: 'pair', fold: 'fold', 'on the fold': 'fold', 'on fold': 'fold' };

const GRAINS: Readonly<Record<string, number>> = { '': 0, lengthwise: 0, along: 0, crosswise: 90, across: 90, bias: 45 };

const TURNS: Readonly<Record<string, readonly number[]>> = { none: [0], '': [0, 180], 'half turn': [0, 180], 'quarter turn': [0, 90, 180, 270] };

/** Wider than this, in degrees, a tilt is also tried half way. */
const WIDE_TILT = 4;

/** Each turn as it is, and tilted to both sides. */
function turnsOf(turns: readonly number[], tilt: number): readonly number[] {
  if (tilt === 0) return turns;
  const tilts = tilt > WIDE_TILT ? [0, -tilt, -tilt / 2, tilt / 2, tilt] : [0, -tilt, tilt];
  return turns.flatMap((turn) => tilts.map((more) => turn + more));
}
