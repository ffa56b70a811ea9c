/**
 * The engine with quantities beside plain HyperFormula with plain numbers, in
 * the same process. Nothing here fails a build; the ratios are to be read.
 */
import { MessageChannel, receiveMessageOnPort } from 'node:worker_threads';
import { HyperFormula } from '../../workers/reckon/internals.ts';
import { cellName } from '../../src/formula/index.ts';
import { Results } from '../../src/reckoning/results.ts';
import type { ChangeSet, Result } from '../../src/reckoning/protocol.ts';
import type { Book, Effect } from '../../src/workbook/types.ts';
import { buffersOf } from '../../workers/reckon/columns.ts';
import { Engine } from '../../workers/reckon/engine.ts';
import { median, race, report } from './measure.ts';

type Grid = readonly (readonly string[])[];

/** Plain HyperFormula, set up as the engine is. */
const PLAIN = { licenseKey: 'gpl-v3', maxRows: 1_000_000, maxColumns: 1_000, undoLimit: 0 };
const plain = (grid: Grid): ReturnType<typeof HyperFormula.buildEmpty> & PlainEngine =>
  (HyperFormula as unknown as { buildFromArray(grid: Grid, config: object): never }).buildFromArray(grid, PLAIN);

interface PlainEngine {
  setCellContents(place: object, content: unknown): unknown[];
  addRows(sheet: number, ...at: [number, number][]): unknown[];
  getCellValue(place: object): unknown;
}

function book(grid: Grid): Book {
  return {
    id: 'bench', title: 'Bench', person: '', settings: { show: 'own', inchStep: 8 }, names: [], nextSheetId: 2,
    sheets: [{ id: 1, name: 'Sheet 1', widths: {}, rows: grid.map((row) => row.map((raw) => (raw === '' ? undefined : { raw }))) }],
  };
}

function open(grid: Grid): Engine {
  const engine = new Engine();
  engine.open(1, book(grid));
  return engine;
}

/** 20,000 rows of two figures and five formulas each. */
function rows(first: (i: number) => string, second: (i: number) => string, extra: string): Grid {
  return Array.from({ length: 20_000 }, (_, i) => {
    const r = i + 1;
    return [first(i), second(i), `=A${r}+B${r}`, `=C${r}*2`, `=D${r}-B${r}${extra}`, `=(C${r}+D${r})/2`, `=E${r}/A${r}`];
  });
}

const CASES: Readonly<Record<string, () => void>> = {
  build() {
    const bare = rows((i) => String(10 + (i % 500) / 10), (i) => String(3 + (i % 7)), '+1');
    const measured = rows((i) => `${10 + (i % 500) / 10} cm`, (i) => `${3 + (i % 7)} 1/4 in`, '+1 cm');
    const [ours, other, same] = race([
      { name: 'ours', run: () => open(measured) },
      { name: 'plain', run: () => plain(bare) },
      { name: 'ours, plain numbers', run: () => open(bare) },
    ], 7) as [number[], number[], number[]];
    report('build 100,000 formulas with quantities', ours, other, '<= 1.15');
    report('  the same with plain numbers in our engine', same, other, '');
  },

  edit() {
    const n = 10_000;
    const grid = (figure: string, step: string): Grid =>
      Array.from({ length: n }, (_, i) => [i === 0 ? figure : String(i), `=A$1*2+${step}`, '']);
    const engine = open(grid('10 cm', '1 cm'));
    const other = plain(grid('10', '1'));
    let turn = 0;
    const [mine, theirs] = race([
      { name: 'ours', run: () => engine.apply(++turn + 1, [{ do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw: `${turn} cm` }] }]) },
      { name: 'plain', run: () => other.setCellContents({ sheet: 0, row: 0, col: 0 }, String(++turn)) },
    ], 25) as [number[], number[]];
    report('one edit with 10,000 dependents', mine, theirs, '<= 1.5');
  },

  stops() {
    const n = 10_000;
    const grid: Grid = Array.from({ length: n }, (_, i) => (i === 0 ? ['10 cm', '=MIN(A1,5 cm)', '=B$1*2'] : ['', '', '=B$1*2']));
    const engine = open(grid);
    let turn = 10;
    const change = (raw: string): Effect[] => [{ do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw }] }];
    const [still, through] = race([
      { name: 'nothing downstream changes', before: () => engine.apply(++turn, change('10 cm')), run: () => engine.apply(++turn, change(`${turn} cm`)) },
      { name: 'everything does', before: () => engine.apply(++turn, change('10 cm')), run: () => engine.apply(++turn, change(`${2 + (turn % 3)} cm`)) },
    ], 15) as [number[], number[]];
    report('an edit that changes nothing downstream, beside one that does', still, through, '< 0.5');
  },

  sum() {
    const grid = (unit: string): Grid => Array.from({ length: 20_000 }, (_, i) => [`${10 + (i % 500) / 10}${unit}`, i === 0 ? '=SUM(A1:A20000)' : '']);
    const engine = open(grid(' cm'));
    const other = plain(grid(''));
    let turn = 1;
    const [mine, theirs] = race([
      { name: 'ours', run: () => engine.apply(++turn, [{ do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw: `${turn} cm` }] }]) },
      { name: 'plain', run: () => other.setCellContents({ sheet: 0, row: 0, col: 0 }, String(++turn)) },
    ], 25) as [number[], number[]];
    report('SUM over 20,000 lengths after an edit of one', mine, theirs, '<= 1.3');
  },

  insert() {
    const bare = rows((i) => String(10 + (i % 500) / 10), (i) => String(3 + (i % 7)), '+1');
    const measured = rows((i) => `${10 + (i % 500) / 10} cm`, (i) => `${3 + (i % 7)} in`, '+1 cm');
    const engine = open(measured);
    const other = plain(bare);
    let turn = 1;
    const [mine, theirs] = race([
      { name: 'ours', run: () => engine.apply(++turn, [{ do: 'insertRows', sheet: 1, at: 0, count: 1 }, { do: 'cells', sheet: 1, cells: [{ row: 1, col: 0, raw: `${turn} cm` }] }]) },
      {
        name: 'plain', run: () => {
          other.addRows(0, [0, 1]);
          other.setCellContents({ sheet: 0, row: 1, col: 0 }, String(++turn));
        },
      },
    ], 9) as [number[], number[]];
    report('insert a row above 100,000 formulas and change a figure', mine, theirs, '<= 1.3');
  },

  absolute() {
    const grid = (formula: (i: number) => string): Grid => Array.from({ length: 100_000 }, (_, i) => [i === 0 ? '10 cm' : '', formula(i + 1)]);
    const [one, each] = race([
      { name: 'one cell', run: () => open(grid((r) => `=$A$1*${r}`)) },
      { name: 'cells of their own', run: () => open(grid((r) => `=A${r}*${r}`)) },
    ], 3) as [number[], number[]];
    report('build 100,000 formulas on one cell, beside each on its own', one, each, '<= 1.5');
  },

  sizes() {
    const chart = (unit: string): string[][] => [
      ['Measure', ...Array.from({ length: 24 }, (_, s) => `${2 * s + 2}`)],
      ...Array.from({ length: 59 }, (_, m) => [`measure ${m + 1}`, ...Array.from({ length: 24 }, (_, s) => `${40 + m + 2 * s}${unit}`)]),
    ];
    const block = `$A$1:$${cellName(59, 24).replace(/(\d+)$/, '$$$1')}`;
    const grid = (formula: (i: number) => string, unit: string): Grid => [
      ...chart(unit), ...Array.from({ length: 10_000 }, (_, i) => [`measure ${1 + (i % 59)}`, `${2 + 2 * (i % 24)}`, formula(61 + i)]),
    ];
    const sized = grid((r) => `=SIZE.MEASURE(${block},A${r},B${r})`, ' cm');
    const matched = grid((r) => `=INDEX(${block},MATCH(A${r},$A$1:$A$60,0),MATCH(B${r},$A$1:$Y$1,0))`, '');
    for (const [words, manner, builds, edits] of [['', {}, 5, 11], [', warm', { warm: true }, 9, 15]] as const) {
      const [ours, other, cells, otherCells] = race([
        { name: 'ours', run: () => open(sized) },
        { name: 'plain', run: () => plain(matched) },
        { name: 'ours, the other cells alone', run: () => open(grid(() => '', ' cm')) },
        { name: 'plain, the other cells alone', run: () => plain(grid(() => '', '')) },
      ], builds, manner) as [number[], number[], number[], number[]];
      report(`build 10,000 SIZE.MEASURE beside INDEX/MATCH${words} (times faster)`, ours, other, '>= 20', true);
      const [without, otherWithout] = [median(cells), median(otherCells)];
      report('  the formulas alone (times faster)', ours.map((ms) => ms - without), other.map((ms) => ms - otherWithout), '>= 20', true);
      const engine = open(sized);
      const library = plain(matched);
      let turn = 0;
      const [edit, otherEdit] = race([
        { name: 'ours', run: () => engine.apply(++turn + 1, [{ do: 'cells', sheet: 1, cells: [{ row: 1, col: 1, raw: `${50 + (++turn % 9)} cm` }] }]) },
        { name: 'plain', run: () => library.setCellContents({ sheet: 0, row: 1, col: 1 }, String(50 + (++turn % 9))) },
      ], edits, manner) as [number[], number[]];
      report('  an edit of the chart (times faster)', edit, otherEdit, '', true);
    }
  },

  receive() {
    const n = 10_000;
    const engine = new Engine();
    engine.open(1, book(Array.from({ length: n }, (_, i) => [i === 0 ? '10 cm' : '', `=A$1*${i + 1}`])));
    let revision = 1;
    const fresh = (): ChangeSet => engine.apply(++revision, [{ do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw: `${revision} cm` }] }]);
    const results = new Results();
    const store = new Map<number, Result>();
    const [ours, other] = race([
      {
        name: 'columns',
        before: () => {
          const changes = fresh();
          return sent(changes, buffersOf(changes.sheets));
        },
        run: (channel: MessageChannel) => { results.apply(received(channel) as ChangeSet); },
      },
      {
        name: 'objects',
        before: () => {
          const { row, number } = fresh().sheets[0]!;
          return sent(Array.from(row, (r, i) => ({ address: { sheet: 1, row: r, col: 1 }, result: { kind: 'quantity', value: number[i]!, unit: 'cm' } })), []);
        },
        run: (channel: MessageChannel) => {
          for (const { address, result } of received(channel) as { address: { row: number; col: number }; result: Result }[]) store.set(address.row * 1024 + address.col, result);
        },
      },
    ], 75, { warm: true, clock: true }) as [number[], number[]];
    report("the page's time to take 10,000 changed cells in, beside objects", ours, other, '< 0.1');
  },
};

function sent(message: unknown, transfer: ArrayBuffer[]): MessageChannel {
  const channel = new MessageChannel();
  channel.port1.postMessage(message, transfer);
  return channel;
}

/** Takes the message out as the page's thread does: this is where it is read from its copy. */
function received(channel: MessageChannel): unknown {
  const { message } = receiveMessageOnPort(channel.port2) as { message: unknown };
  channel.port1.close();
  return message;
}

export async function run(which: string): Promise<void> {
  for (const [name, measure] of Object.entries(CASES)) if (name.includes(which)) measure();
}
