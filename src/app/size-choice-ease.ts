/** The usual ease for a garment and style: from the workbook's table, else from the one that comes with it. */
import { isFault } from '../quantities/index.ts';
import type { Quantity } from '../quantities/index.ts';
import { CellBlock, functionNamed, work, type Style, type Value } from '../sewing/index.ts';
import { nameCalled, type Book, type Template } from '../workbook/index.ts';
import type { Results } from '../reckoning/index.ts';
import { blockOf, valueOfRaw } from './size-choice-cells.ts';

const TABLE = 'usual ease';

/** Which of the table's words mean a style, the best first. */
const FITS: Readonly<Record<Style, readonly string[]>> = {
  fitted: ['fitted', 'close', 'tailored', 'average'],
  'semi-fitted': ['semi-fitted', 'average', 'loose'],
  'full skirt': ['fitted', 'average', 'tailored'],
  knit: ['close', 'relaxed'],
};

export interface UsualEase {
  readonly low: Quantity;
  /** Not there where the table has only the least. */
  readonly high?: Quantity;
  readonly source: string;
}

export class EaseTable {
  constructor(private readonly table: CellBlock) {}

  /** Its garments, as they stand in it. */
  get garments(): readonly string[] {
    return [...new Set(this.table.rows.slice(1).flatMap(([garment]) => (typeof garment === 'string' ? [garment] : [])))];
  }

  /** Undefined where the table has none. */
  usual(garment: string, level: string, style: Style): UsualEase | undefined {
    for (const fit of FITS[style]) {
      const outcome = work(functionNamed('EASE.USUAL')!, [this.table, garment, level, fit], true);
      if (isFault(outcome) || typeof outcome.value === 'string') continue;
      const { value, cautions } = outcome;
      const words = outcome.steps[0]?.words ?? '';
      const source = words.slice(words.indexOf('; their source: ') + 2);
      if ('low' in value) return { low: value.low, high: value.high, source };
      return cautions.some(({ sentence }) => sentence.includes('only the least')) ? { low: value, source } : { low: value, high: value, source };
    }
    return undefined;
  }
}

export function easeTable(book: Book, results: Results, shipped: Template): EaseTable {
  const area = nameCalled(book, TABLE)?.area;
  return new EaseTable(area ? blockOf(results, area) : shippedBlock(shipped));
}

function shippedBlock({ sheet, names }: Template): CellBlock {
  const named = names.find(({ name }) => name === TABLE)?.area;
  if (!named) throw new Error(`The shipped template has no ${TABLE}.`);
  const [top, left, bottom, right] = named;
  const rows: Value[][] = Array.from({ length: bottom - top + 1 }, () => Array.from({ length: right - left + 1 }, () => null));
  for (const [row, col, raw] of sheet.cells) if (row >= top && row <= bottom && col >= left && col <= right) rows[row - top]![col - left] = valueOfRaw(raw);
  return new CellBlock(rows);
}
