/**
 * Opening a workbook of 50,000 filled cells with 10,000 edits in its journal,
 * beside parsing the same JSON and building it in plain HyperFormula. Ours reads
 * and checks every piece of the file, makes every edit again and works all of
 * it out with units; the time of the storage itself is not in it.
 */
import { HyperFormula } from '../../workers/reckon/internals.ts';
import { replay } from '../../src/keeping/replay.ts';
import { apply, emptyBook, writeBook, type Book, type Edit } from '../../src/workbook/index.ts';
import { Engine } from '../../workers/reckon/engine.ts';
import { median, race, report } from './measure.ts';

const PLAIN = { licenseKey: 'gpl-v3', maxRows: 1_000_000, maxColumns: 1_000, undoLimit: 0 };
const ROWS = 5_000;
const EDITS = 10_000;

/** Ten columns: three figures and a text, and six formulas on them. */
function filled(): Book {
  const texts = (row: number): string[] => {
    const r = row + 1;
    return [`${10 + (row % 500) / 10} cm`, `${3 + (row % 7)} 1/4 in`, String(row % 9 + 1), `row ${r}`,
      `=A${r}+B${r}`, `=E${r}*2`, `=F${r}-B${r}+1 cm`, `=(E${r}+F${r})/C${r}`, `=G${r}/A${r}`, `=MAX(A${r},B${r})`];
  };
  const cells = Array.from({ length: ROWS }, (_, row) => texts(row).map((raw, col) => ({ row, col, cell: { raw } }))).flat();
  return apply({ do: 'setCells', sheet: 1, cells }, emptyBook('bench')).book;
}

interface FileOfCells {
  readonly sheets: readonly { readonly cells: readonly (readonly [row: number, col: number, raw: string])[] }[];
}

/** As the plain library takes them: it knows no units, so that figures and formulas have none. */
function plainGrid(json: string, edits: readonly Edit[]): string[][] {
  const rows: string[][] = [];
  for (const [row, col, raw] of (JSON.parse(json) as FileOfCells).sheets[0]!.cells) (rows[row] ??= [])[col] = raw.replace(/ (1\/4 in|cm)$/, '');
  for (const edit of edits) if (edit.do === 'setCells') for (const { row, col, cell } of edit.cells) rows[row]![col] = cell!.raw.replace(/ cm$/, '');
  return rows;
}

export function run(which: string): void {
  if (!'opening'.includes(which)) return;
  const json = JSON.stringify(writeBook(filled()));
  const edits = Array.from({ length: EDITS }, (_, i): Edit => ({ do: 'setCells', sheet: 1, cells: [{ row: (i * 7) % ROWS, col: i % 3, cell: { raw: i % 3 === 2 ? String(i % 11 + 1) : `${i % 90 + 1} cm` } }] }));
  const journal = JSON.stringify(edits);
  const stored = () => ({
    card: undefined, snapshot: { id: 'bench', savedAt: '', seq: 0, json },
    entries: (JSON.parse(journal) as Edit[]).map((edit, i) => ({ book: 'bench', seq: i + 1, at: '', edit })),
  });
  const open = (): void => {
    const { book, problems } = replay('bench', stored());
    if (problems.length > 0) throw new Error(problems[0]);
    new Engine().open(1, book);
  };
  const plain = (): void => {
    (HyperFormula as unknown as { buildFromArray(grid: string[][], config: object): unknown }).buildFromArray(plainGrid(json, JSON.parse(journal) as Edit[]), PLAIN);
  };
  const [ours, other, reading] = race([
    { name: 'ours', run: open }, { name: 'plain', run: plain }, { name: 'reading alone', run: () => replay('bench', stored()) },
  ], 7) as [number[], number[], number[]];
  report('open 50,000 cells and a journal of 10,000 edits', ours, other, '<= 1.5');
  console.log(`  of which reading and making the edits again: ${median(reading).toFixed(0)} ms`);
}
