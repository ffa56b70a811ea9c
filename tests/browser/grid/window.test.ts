import { expect } from '@open-wc/testing';
import { cellOf, named, press, settled, sheet, type, type Model } from './fixture.ts';

const big = () => sheet({}, {
  rowCount: 100_000, colCount: 30,
  cell: (row, col) => (col === 0 ? { text: `Row ${row + 1}`, kind: 'text', input: false, formula: false } : { text: `${row * 30 + col}.5 cm`, also: '3 ⅛ in', kind: 'figure', typed: col % 2 === 1, input: false, formula: col % 2 === 0 }),
});
const rows = ({ grid }: Model) => [...grid.renderRoot.querySelectorAll('.body [role=row]')];

/** Row numbers that can be seen at the very left of the cells, from top to bottom. */
function seen({ grid }: Model): number[] {
  const box = grid.getBoundingClientRect();
  return rows({ grid } as Model).filter((row) => {
    const { top, bottom } = row.getBoundingClientRect();
    return bottom > box.top + 28 && top < box.bottom;
  }).map((row) => Number(row.getAttribute('aria-rowindex')) - 1);
}

describe('100,000 rows', () => {
  it('have only those near the view in the document', async () => {
    const model = await big();
    expect(rows(model).length).to.be.below(60);
    expect(model.grid.renderRoot.querySelector('[role=grid]')!.getAttribute('aria-rowcount')).to.equal('100001');
    model.grid.scroller.scrollTop = 1_500_000;
    await settled(model);
    const numbers = seen(model);
    expect(numbers[0]).to.equal(50_001);
    expect(numbers).to.deep.equal(Array.from({ length: numbers.length }, (_, i) => 50_001 + i));
    expect(rows(model).length).to.be.below(60);
  });

  it('keep the active row in the document, the same element, however far it is scrolled away', async () => {
    const model = await big();
    await press(model, 'ArrowDown', 'ArrowDown', 'ArrowRight');
    const cell = cellOf(model, 'B3');
    model.grid.scroller.scrollTop = 2_000_000;
    await settled(model);
    expect(cellOf(model, 'B3')).to.equal(cell);
    expect(cell!.isConnected).to.be.true;
    expect(named(model)).to.equal(cell);
    const box = model.grid.getBoundingClientRect();
    expect(cell!.getBoundingClientRect().bottom, 'where it belongs').to.be.below(box.top);
    // And when it lies below.
    await press(model, 'Control+End');
    const last = named(model);
    model.grid.scroller.scrollTop = 0;
    await settled(model);
    expect(last!.isConnected).to.be.true;
    expect(seen(model)[0]).to.equal(1);
    expect(last!.getBoundingClientRect().top - box.top).to.be.within(2_999_900, 3_000_100);
  });

  it('show the active cell again as soon as it is typed in', async () => {
    const model = await big();
    await press(model, 'ArrowDown');
    model.grid.scroller.scrollTop = 900_000;
    await settled(model);
    await type(model, 'x');
    expect(model.grid.scroller.scrollTop).to.be.below(40);
    await press(model, 'Escape');
  });

  it('are drawn without a gap at every step of a fast scroll', async () => {
    const model = await big();
    for (const by of [40, 400, 1200, 5000, -900, -60, 20000, -20000]) {
      for (let i = 0; i < 6; i++) {
        model.grid.scroller.scrollTop += by;
        // The frame in which the browser tells of the scroll is the one that draws it.
        await new Promise(requestAnimationFrame);
        await model.grid.updateComplete;
        const numbers = seen(model);
        const first = Math.floor(model.grid.scroller.scrollTop / 30) + 1;
        expect(numbers[0]).to.equal(first);
        expect(numbers.length).to.be.at.least(13);
        expect(numbers.at(-1)! - numbers[0]!).to.equal(numbers.length - 1);
      }
    }
  });

  it('make no more elements by being scrolled through', async () => {
    const model = await big();
    const count = () => model.grid.renderRoot.querySelectorAll('*').length;
    model.grid.scroller.scrollTop = 3000;
    await settled(model);
    const before = count();
    for (let i = 0; i < 60; i++) {
      model.grid.scroller.scrollTop += 997;
      await new Promise(requestAnimationFrame);
    }
    await settled(model);
    expect(count()).to.be.within(before * 0.8, before * 1.2);
  });

  it('tell what one scroll step takes', async function () {
    this.timeout(60_000);
    const model = await big();
    model.grid.style.height = '700px';
    await settled(model);
    const times: number[] = [];
    for (let i = 0; i < 240; i++) {
      model.grid.scroller.scrollTop += i % 40 < 30 ? 120 : -360;
      const from = performance.now();
      model.grid.scroller.dispatchEvent(new Event('scroll'));
      await model.grid.updateComplete;
      void model.grid.scroller.scrollHeight;
      void cellOf(model, 'A1')?.getBoundingClientRect();
      times.push(performance.now() - from);
      await new Promise(requestAnimationFrame);
    }
    times.sort((a, b) => a - b);
    const at = (share: number) => times[Math.floor(times.length * share)]!.toFixed(1);
    console.log(`scroll step, 100,000 x 30, script and layout: p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, most ${at(0.999)} ms`);
    expect(Number(at(0.5)), 'well within a frame').to.be.below(16);
  });
});

describe('many columns', () => {
  it('have only those near the view in the document, and the active one', async () => {
    const model = await sheet({}, { colCount: 500, cell: (row, col) => ({ text: `${row},${col}`, kind: 'text', input: false, formula: false }) });
    const cells = () => model.grid.renderRoot.querySelectorAll('[aria-rowindex="2"] [role=gridcell]').length;
    expect(cells()).to.be.below(30);
    await press(model, 'ArrowRight');
    model.grid.scroller.scrollLeft = 20_000;
    await settled(model);
    expect(cells()).to.be.below(30);
    const first = [...model.grid.renderRoot.querySelectorAll('[aria-rowindex="2"] [role=gridcell]')].find((cell) => cell.getBoundingClientRect().left > 100)!;
    const col = Number(first.getAttribute('aria-colindex')) - 2;
    expect(first.textContent).to.equal(`0,${col}`);
    expect(Math.round(first.getBoundingClientRect().left + model.grid.scroller.scrollLeft - model.grid.getBoundingClientRect().left)).to.equal(46 + 160 + (col - 1) * 110);
    expect(cellOf(model, 'B1')!.isConnected).to.be.true;
  });
});
