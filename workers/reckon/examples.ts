/**
 * Works the examples of the reference out, in a little workbook of their own
 * that holds the samples: nothing that happens there can touch the open one.
 */
import type { SheetName } from '../../src/formula/index.ts';
import type { Example } from '../../src/reckoning/protocol.ts';
import type { Area } from '../../src/workbook/types.ts';
import { resultOf } from './columns.ts';
import { Host } from './host.ts';
import { ArrayFormulaVertex } from './internals.ts';
import type { Place } from './internals.ts';
import { SAMPLE_LAYOUT, SAMPLE_PIECES, SAMPLES } from './samples.ts';
import { Teller } from './telling.ts';

/** Rows and columns of a block of results that are given; the rest is counted. */
const MOST_ROWS = 8;
const MOST_COLUMNS = 6;

/** The sheet on which an example stands, alone; each sample has a sheet after it. */
const SHEET = 1;
const HERE: Place = { sheet: SHEET, row: 0, col: 0 };

export class Examples {
  #host: Host | undefined;

  /** What a formula gives in an empty cell. */
  work(formula: string): Example {
    const host = this.#host ??= hostOfSamples();
    host.setCell(HERE, formula);
    host.recompute();
    try {
      return read(host);
    } finally {
      host.setCell(HERE, '');
      host.recompute();
      host.changed.take();
    }
  }
}

function read(host: Host): Example {
  const { tell } = new Teller(host);
  const vertex = host.graphs.addressMapping.getCell(HERE);
  const block = vertex instanceof ArrayFormulaVertex ? vertex.getRange() : { start: HERE, end: HERE };
  const height = block.end.row - block.start.row + 1;
  const width = block.end.col - block.start.col + 1;
  const results = Array.from({ length: Math.min(height, MOST_ROWS) }, (_, row) => Array.from({ length: Math.min(width, MOST_COLUMNS) }, (__, col) => {
    const place = { sheet: SHEET, row, col };
    return resultOf(host.valueAt(place), place, tell);
  }));
  return { results, height, width };
}

function hostOfSamples(): Host {
  const host = new Host();
  const all = [...SAMPLES, SAMPLE_PIECES];
  const sheets: SheetName[] = [{ id: SHEET, name: 'Example' }, ...all.map(({ name }, i) => ({ id: SHEET + 1 + i, name }))];
  const names = all.map(({ name, rows }, i): { name: string; area: Area } => ({
    name, area: { sheet: SHEET + 1 + i, top: 0, left: 0, bottom: rows.length - 1, right: Math.max(...rows.map((row) => row.length)) - 1 },
  }));
  host.names.setSheets(sheets);
  host.formulas.setMeanings(sheets, names.map(({ name }) => name));
  host.build([{ id: SHEET, rows: [] }, ...all.map(({ rows }, i) => ({ id: SHEET + 1 + i, rows: rows.map((row) => row.map((raw) => ({ raw }))) }))], names);
  const pieces = names.find(({ name }) => name === SAMPLE_PIECES.name)!.area;
  // The layout is as new as its pieces, whatever their print is.
  host.setLayouts({ lays: [{ ...SAMPLE_LAYOUT, pieces, print: '' }], shapes: [] });
  host.recompute();
  host.setLayouts({ lays: [{ ...SAMPLE_LAYOUT, pieces, print: host.tools.lays.prints[0] ?? '' }], shapes: [] });
  return host;
}
