import { expect } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import type { SheetView } from '../../../src/grid/index.ts';
import { active, cellOf, click, drag, field, middle, press, settled, sheet, type, type Model } from './fixture.ts';

const CELLS = Object.fromEntries('ABCDEFGH'.split('').flatMap((letter) => Array.from({ length: 90 }, (_, i) => [`${letter}${i + 1}`, `${letter}${i + 1}`])));
const withMore = (more: Partial<SheetView>, size: { wide?: number; high?: number } = {}) => sheet(CELLS, { more, ...size });
const frozen = (rows: number, cols: number, size = {}) => withMore({ frozen: { rows, cols } }, size);

async function scroll(model: Model, left: number, top: number): Promise<void> {
  model.grid.scroller.scrollTo(left, top);
  await settled(model);
}

/** What of the page is at the middle of a cell. */
function atTop(model: Model, name: string): Element | null {
  const [x, y] = middle(cellOf(model, name)!);
  return model.grid.shadowRoot!.elementFromPoint(x, y);
}

describe('rows and columns that stay in view', () => {
  it('are where they were, over the rest, however it is scrolled', async () => {
    const model = await frozen(2, 1);
    const before = ['A1', 'A2', 'C1', 'A9'].map((name) => cellOf(model, name)!.getBoundingClientRect());
    await scroll(model, 130, 95);
    const after = ['A1', 'A2', 'C1', 'A9'].map((name) => cellOf(model, name)!.getBoundingClientRect());
    expect([after[0]!.left, after[0]!.top]).to.deep.equal([before[0]!.left, before[0]!.top]);
    expect([after[1]!.left, after[1]!.top]).to.deep.equal([before[1]!.left, before[1]!.top]);
    expect([after[2]!.left, after[2]!.top]).to.deep.equal([before[2]!.left - 130, before[2]!.top]);
    expect([after[3]!.left, after[3]!.top]).to.deep.equal([before[3]!.left, before[3]!.top - 95]);
    for (const name of ['A1', 'A2', 'D1', 'A9', 'D9']) expect(atTop(model, name), name).to.equal(cellOf(model, name));
    expect(model.grid.renderRoot.querySelectorAll('[aria-rowindex="2"]')).to.have.length(1);
  });

  it('leave the mark on the active cell when the first column begins to stay', async () => {
    const model = await frozen(0, 0);
    await press(model, 'ArrowRight', 'ArrowRight');
    model.grid.view = { ...model.grid.view, frozen: { rows: 0, cols: 1 } };
    await settled(model);
    expect([...model.grid.renderRoot.querySelectorAll('.cell[id]')].map((cell) => [cell.id, cell.getAttribute('aria-colindex')])).to.deep.equal([['cell-0-2', '4']]);
  });

  it('never cover the active cell', async () => {
    const model = await frozen(2, 1);
    await scroll(model, 300, 900);
    await press(model, 'ArrowDown', 'ArrowDown', 'ArrowRight');
    expect(active(model)).to.equal('B3');
    const stays = cellOf(model, 'A2')!.getBoundingClientRect();
    const cell = cellOf(model, 'B3')!.getBoundingClientRect();
    expect(cell.top).to.be.at.least(stays.bottom - 1);
    expect(cell.left).to.be.at.least(stays.right - 1);
    expect(atTop(model, 'B3')).to.equal(cellOf(model, 'B3'));
    await press(model, 'Control+End', 'Control+ArrowUp', 'Control+ArrowLeft');
    expect(active(model)).to.equal('A1');
    await press(model, 'PageDown', 'PageDown', 'PageUp');
    expect(atTop(model, active(model))).to.equal(cellOf(model, active(model)));
  });

  it('are selected, edited and dragged through where they are seen', async () => {
    const model = await frozen(2, 1);
    await scroll(model, 100, 95);
    await click(model, 'C1');
    expect(active(model)).to.equal('C1');
    expect(model.grid.scroller.scrollLeft, 'nothing moves').to.equal(100);
    await type(model, 'new');
    const editor = field(model).getBoundingClientRect();
    const cell = cellOf(model, 'C1')!.getBoundingClientRect();
    expect(Math.abs(editor.left - cell.left)).to.be.at.most(2);
    expect(Math.abs(editor.top - cell.top)).to.be.at.most(2);
    const [x, y] = middle(cellOf(model, 'C1')!);
    expect(model.grid.shadowRoot!.elementFromPoint(x, y)!.closest('.cell-editor'), 'the editor lies over what stays').to.not.be.null;
    await scroll(model, 100, 400);
    expect(Math.abs(field(model).getBoundingClientRect().top - cell.top), 'and stays with it').to.be.at.most(2);
    await press(model, 'Enter');
    expect(model.raw(0, 2)).to.equal('new');
    await scroll(model, 100, 95);
    await drag(model, middle(cellOf(model, 'A1')!), middle(cellOf(model, 'D8')!));
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 0, col: 0 }, focus: { row: 7, col: 3 } });
  });

  it('show an outline in its parts, which meet', async () => {
    const model = await frozen(2, 1);
    await press(model, ...new Array<string>(4).fill('Shift+ArrowDown'), 'Shift+ArrowRight', 'Shift+ArrowRight');
    const boxes = [...model.grid.renderRoot.querySelectorAll('.range')].map((box) => box.getBoundingClientRect());
    expect(boxes).to.have.length(4);
    const whole = [cellOf(model, 'A1')!, cellOf(model, 'C5')!].map((cell) => cell.getBoundingClientRect());
    expect(Math.min(...boxes.map((box) => box.left))).to.be.closeTo(whole[0]!.left, 1.5);
    expect(Math.max(...boxes.map((box) => box.bottom))).to.be.closeTo(whole[1]!.bottom, 1.5);
    await scroll(model, 60, 45);
    const corner = [...model.grid.renderRoot.querySelectorAll('.range')].map((box) => box.getBoundingClientRect()).find((box) => Math.abs(box.left - whole[0]!.left) < 2 && Math.abs(box.top - whole[0]!.top) < 2);
    expect(corner, 'the part in the corner stays').to.not.be.undefined;
  });

  it('are fewer where the view has not the room', async () => {
    const model = await frozen(12, 4, { wide: 420, high: 260 });
    await press(model, ...new Array<string>(11).fill('ArrowDown'), ...new Array<string>(3).fill('ArrowRight'));
    expect(active(model)).to.equal('D12');
    expect(atTop(model, 'D12')).to.equal(cellOf(model, 'D12'));
    const box = model.grid.getBoundingClientRect();
    const cell = cellOf(model, 'D12')!.getBoundingClientRect();
    expect(cell.right).to.be.at.most(box.right);
    expect(cell.bottom).to.be.at.most(box.bottom);
  });

  it('pass axe', async () => {
    const model = await frozen(2, 2);
    await scroll(model, 130, 95);
    await expect(model.grid).to.be.accessible();
  });
});

describe('hidden rows and columns', () => {
  const hidden = { rows: [[1, 3], [60, 89]], cols: [[1, 1]] } as const;

  it('take no room, and say at the headings that they are there', async () => {
    const model = await withMore({ hidden });
    expect(cellOf(model, 'A2')).to.be.null;
    expect(cellOf(model, 'B1')).to.be.null;
    expect(cellOf(model, 'A5')!.getBoundingClientRect().top).to.equal(cellOf(model, 'A1')!.getBoundingClientRect().bottom);
    expect(cellOf(model, 'C1')!.getBoundingClientRect().left).to.equal(cellOf(model, 'A1')!.getBoundingClientRect().right);
    expect(model.grid.renderRoot.querySelector('[aria-rowindex="6"] [role=rowheader]')!.getAttribute('aria-label')).to.equal('5, rows 2 to 4 are hidden above it');
    const heading = model.grid.renderRoot.querySelector('[role=columnheader][aria-colindex="4"]')!;
    expect(heading.textContent!.replace(/\s+/g, ' ').trim()).to.equal('C, column B is hidden before it');
    expect(cellOf(model, 'C5')!.getAttribute('aria-colindex')).to.equal('4');
  });

  it('are passed over by keys, the mouse and the wheel', async () => {
    const model = await withMore({ hidden });
    await press(model, 'ArrowDown', 'ArrowRight');
    expect(active(model)).to.equal('C5');
    await drag(model, middle(cellOf(model, 'A1')!), middle(cellOf(model, 'C6')!));
    expect(model.grid.selection.focus).to.deep.equal({ row: 5, col: 2 });
    await scroll(model, 0, 30 * 50);
    const box = model.grid.getBoundingClientRect();
    const rows = [...model.grid.renderRoot.querySelectorAll('.body [role=row]')].filter((row) => {
      const { top, bottom } = row.getBoundingClientRect();
      return bottom > box.top + 28 && top < box.bottom;
    }).map((row) => Number(row.getAttribute('aria-rowindex')) - 1);
    expect(rows[0]).to.equal(54);
    expect(rows).to.not.include(61);
    expect(rows).to.include(91);
  });

  it('never hold the active cell: the next one that shows is active, and she is told', async () => {
    const model = await withMore({});
    await press(model, 'ArrowDown', 'ArrowDown');
    Object.assign(model.options, { more: { hidden } });
    model.show();
    await settled(model);
    await settled(model);
    expect(active(model)).to.equal('A5');
    expect(model.of('tt-select').at(-1)!.selection.focus).to.deep.equal({ row: 4, col: 0 });
    const status = [...model.grid.renderRoot.querySelectorAll('[role=status]')].at(-1)!;
    expect(status.textContent).to.equal('A3 is hidden; this is A5.');
    await press(model, 'ArrowUp');
    expect(active(model)).to.equal('A1');
  });

  it('are not filled, and the mark says how many rows are', async () => {
    const model = await withMore({ hidden });
    const handle = model.grid.renderRoot.querySelector('.handle.fill')!;
    await sendMouse({ type: 'move', position: middle(handle) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: middle(cellOf(model, 'A7')!) });
    await settled(model);
    expect(model.grid.renderRoot.querySelector<HTMLElement>('.box.fill')!.dataset['label']).to.equal('Fill 3 rows down');
    await sendMouse({ type: 'up' });
    await settled(model);
    expect(model.of('tt-fill')).to.deep.equal([{ from: { top: 0, left: 0, bottom: 0, right: 0 }, to: { top: 0, left: 0, bottom: 6, right: 0 } }]);
  });

  it('may be nearly all: a filter that leaves every tenth of 100,000 rows scrolls without a gap', async () => {
    const model = await sheet({}, {
      rowCount: 100_000, cell: (row, col) => ({ text: `${row},${col}`, kind: 'text', input: false, formula: false }),
      more: { hidden: { rows: Array.from({ length: 10_000 }, (_, i): [number, number] => [10 * i + 1, 10 * i + 9]), cols: [] }, filtered: (col) => (col === 1 ? 'more than 5 cm' : undefined) },
    });
    for (const by of [90, 900, 20_000, 200_000, -50_000]) {
      model.grid.scroller.scrollTop += by;
      await new Promise(requestAnimationFrame);
      await model.grid.updateComplete;
      const box = model.grid.getBoundingClientRect();
      const shown = [...model.grid.renderRoot.querySelectorAll('.body [role=row]')].filter((row) => row.getBoundingClientRect().bottom > box.top + 28 && row.getBoundingClientRect().top < box.bottom);
      const numbers = shown.map((row) => Number(row.getAttribute('aria-rowindex')) - 2);
      expect(numbers.length).to.be.at.least(13);
      numbers.forEach((number, at) => expect(number).to.equal(numbers[0]! + 10 * at));
    }
    expect(model.grid.renderRoot.querySelector('[role=columnheader][aria-colindex="3"]')!.textContent).to.contain('only more than 5 cm').and.to.contain('only rows where it is more than 5 cm');
    await expect(model.grid).to.be.accessible();
  });
});

describe('texts of several lines', () => {
  it('make their row taller, and say how many lines do not show', async () => {
    const model = await sheet({ A1: 'a', B2: 'Cut two\non the fold\nnotch', A3: 'a\nb\nc\nd\ne\nf\ng\nh', A4: 'after' }, { more: { tall: [[1, 3], [2, 8]] } });
    expect(cellOf(model, 'B2')!.getBoundingClientRect().height).to.equal(70);
    expect(cellOf(model, 'B2')!.textContent).to.equal('Cut two\non the fold\nnotch');
    expect(cellOf(model, 'B2')!.scrollHeight).to.be.at.most(70);
    expect(cellOf(model, 'A3')!.textContent).to.contain('f + 2 lines');
    expect(cellOf(model, 'A3')!.getAttribute('aria-label')).to.equal('a\nb\nc\nd\ne\nf\ng\nh');
    expect(cellOf(model, 'A4')!.getBoundingClientRect().top - cellOf(model, 'A1')!.getBoundingClientRect().top).to.equal(30 + 70 + 130);
    await click(model, 'A4');
    expect(active(model)).to.equal('A4');
    await press(model, 'ArrowUp', 'Enter');
    expect(field(model).value).to.equal('a\nb\nc\nd\ne\nf\ng\nh');
    await press(model, 'Escape');
  });

  it('are typed with Alt + Enter', async () => {
    const model = await sheet();
    await type(model, 'front');
    await press(model, 'Alt+Enter');
    await type(model, 'facing');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('front\nfacing');
  });
});

describe('marks', () => {
  it('of a cell are its lines, and that it was found, in words too', async () => {
    const look = (border: 'above' | 'below' | 'around') => ({ text: border, kind: 'text' as const, input: false, formula: false, border });
    const model = await sheet({}, {
      cell: (row, col) => (col === 0 && row < 3 ? look((['above', 'below', 'around'] as const)[row]!) : null),
      more: { matches: (row, col) => row === 1 && col === 0 },
    });
    const lines = (name: string) => { const { borderTopWidth: top, borderBottomWidth: bottom, borderLeftWidth: left } = getComputedStyle(cellOf(model, name)!); return [top, bottom, left]; };
    expect([lines('A1'), lines('A2'), lines('A3')]).to.deep.equal([['2px', '1px', '0px'], ['0px', '2px', '0px'], ['2px', '2px', '2px']]);
    expect(cellOf(model, 'A2')!.classList.contains('found')).to.be.true;
    expect(cellOf(model, 'A2')!.getAttribute('aria-label')).to.equal('below, found');
    await expect(model.grid).to.be.accessible();
  });
});
