import { expect, waitUntil } from '@open-wc/testing';
import { Results, Supervisor, startReckonWorker } from '../../../src/reckoning/index.ts';
import { apply, emptyBook, type Book, type Edit } from '../../../src/workbook/index.ts';

const typed = (row: number, raw: string): Edit => ({ do: 'setCells', sheet: 1, cells: [{ row, col: 0, cell: { raw } }] });

/** The page's side in small: a workbook, its results, and the engine in a real worker. */
class Desk {
  book: Book = emptyBook('a');
  readonly results = new Results();
  readonly workers: Worker[] = [];
  readonly engine = new Supervisor({
    book: () => this.book,
    start: () => {
      const worker = startReckonWorker();
      this.workers.push(worker);
      return worker;
    },
    // A worker that died without a word shows only by its silence.
    limits: { apply: 1_500, question: 1_500 },
  });

  constructor() {
    this.engine.addEventListener('changes', ({ changes }) => this.results.apply(changes));
  }

  do(edit: Edit): void {
    const applied = apply(edit, this.book);
    this.book = applied.book;
    this.results.shift(this.engine.apply(applied.effects), applied.effects);
  }

  settled = () => waitUntil(() => this.engine.state === 'ready' && this.results.revision >= this.engine.revision, 'settled', { timeout: 15_000 });

  millimetres(row: number): number {
    const result = this.results.at(1, row, 0);
    return result.kind === 'quantity' ? Math.round(result.value * 1e6) / 1e6 : NaN;
  }
}

describe('the engine in a real worker', () => {
  let desk: Desk;
  beforeEach(async () => {
    desk = new Desk();
    desk.do(typed(0, '2 1/4 in'));
    desk.do(typed(1, '=A1 + 5 cm'));
    desk.engine.open();
    await desk.settled();
  });
  afterEach(() => desk.engine.stop());

  it('opens a workbook, follows edits and rows, and answers questions', async () => {
    expect(desk.millimetres(1)).to.equal(107.15);
    desk.do(typed(0, '10 cm'));
    desk.do({ do: 'insertRows', sheet: 1, at: 0, count: 2 });
    // The rows have moved before the worker has said a word.
    expect(desk.millimetres(3)).to.equal(107.15);
    await desk.settled();
    expect(desk.millimetres(3)).to.equal(150);
    expect(await desk.engine.dependents([{ sheet: 1, row: 2, col: 0 }])).to.deep.equal([{ sheet: 1, row: 3, col: 0 }]);
    expect((await desk.engine.catalogue()).map(({ name }) => name)).to.include('EASE');
    expect((await desk.engine.example('=SORT({98 cm|86 cm})')).results).to.deep.equal([[{ kind: 'quantity', value: 860, unit: 'cm' }], [{ kind: 'quantity', value: 980, unit: 'cm' }]]);
    expect(desk.workers).to.have.length(1);
  });

  it('dies without a word: another is started from the workbook as it is by then, and nothing hangs', async () => {
    desk.workers[0]!.terminate();
    desk.do(typed(0, '20 cm'));
    const working = desk.engine.working({ sheet: 1, row: 1, col: 0 });
    await desk.settled();
    expect(desk.millimetres(1)).to.equal(250);
    expect((await working).result).to.deep.include({ kind: 'quantity' });
    expect(desk.workers).to.have.length(2);
  });

  it('dies in the middle of a question: it is asked again', async () => {
    const working = desk.engine.working({ sheet: 1, row: 1, col: 0 });
    await new Promise((resolve) => setTimeout(resolve));
    desk.workers[0]!.terminate();
    expect((await working).result).to.deep.include({ kind: 'quantity' });
  });
});
