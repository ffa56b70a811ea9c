import { expect } from '@open-wc/testing';
import { LitElement, css, html } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { SheetView } from '../../../src/grid/index.ts';
import { RowAxis } from '../../../src/grid/row-axis.ts';
import { rowWindow } from '../../../src/grid/window.ts';

const axis = new RowAxis({ rowCount: 100_000 });
import { active, cellOf, field, named, press, settled, sheet, type, type Model } from './fixture.ts';

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

  it('tell what one scroll step takes, beside a bare template of the same rows', async function () {
    this.timeout(120_000);
    const model = await big();
    model.grid.style.height = '700px';
    await settled(model);
    const floor = document.createElement('bare-rows') as BareRows;
    floor.cell = model.options.cell!;
    document.body.append(floor);
    await floor.updateComplete;
    try {
      // In turns, so that whatever else the machine does weighs on both.
      const ours: number[] = [];
      const bare: number[] = [];
      for (let i = 0; i < 200; i++) {
        const by = i % 40 < 30 ? 120 : -360;
        const turns = [
          async () => ours.push(await timed(model.grid.scroller, by, () => model.grid.updateComplete)),
          async () => bare.push(await timed(floor, by, () => floor.updateComplete)),
        ];
        for (const turn of i % 2 ? turns : turns.reverse()) {
          await turn();
          await new Promise(requestAnimationFrame);
        }
      }
      const at = (times: number[], share: number) => [...times].sort((a, b) => a - b)[Math.floor(times.length * share)]!;
      const words = (times: number[]) => [0.5, 0.95].map((share) => at(times, share).toFixed(1)).join(' / ');
      const ratio = at(ours, 0.5) / at(bare, 0.5);
      console.log(`scroll step over 100,000 x 30, script and layout, p50 / p95: ${words(ours)} ms; bare rows ${words(bare)} ms; ratio ${ratio.toFixed(2)} / ${(at(ours, 0.95) / at(bare, 0.95)).toFixed(2)}`);
      expect(ratio, 'of the medians').to.be.below(2.5);
    } finally {
      floor.remove();
    }
  });
});

/** One scroll step: the handler, the drawing, and the layout that it makes. */
async function timed(scroller: HTMLElement, by: number, drawn: () => Promise<unknown>): Promise<number> {
  scroller.scrollTop += by;
  const from = performance.now();
  scroller.dispatchEvent(new Event('scroll'));
  await drawn();
  scroller.querySelector('.body')?.getBoundingClientRect();
  scroller.shadowRoot?.querySelector('.body')?.getBoundingClientRect();
  return performance.now() - from;
}

/** The least there can be: the same cells' texts by a keyed template, nothing else. */
class BareRows extends LitElement {
  static override styles = css`
    :host { display: block; overflow: auto; width: 780px; height: 700px; }
    .plane { position: relative; height: 3000000px; width: 3700px; }
    .body { position: absolute; }
    .row { display: grid; grid-template-columns: 46px 160px repeat(29, 110px); height: 30px; }
    .cell { border: solid #ccc; border-width: 0 1px 1px 0; padding: 0 10px; line-height: 29px; white-space: nowrap; overflow: hidden; text-overflow: ellipsis; text-align: end; }
  `;

  cell!: SheetView['cell'];
  run = rowWindow(axis, 0, 700, 0);
  #top = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('scroll', () => {
      if (this.scrollTop === this.#top) return;
      const run = rowWindow(axis, this.scrollTop, 672, this.scrollTop > this.#top ? 1 : -1);
      this.#top = this.scrollTop;
      if (run.first === this.run.first && run.end === this.run.end) return;
      this.run = run;
      this.requestUpdate();
    });
  }

  protected override render() {
    const rows = Array.from({ length: this.run.end - this.run.first }, (_, i) => this.run.first + i);
    return html`<div class="plane"><div class="body">${repeat(rows, (row) => row, (row) => html`<div class="row"><div class="cell">${row + 1}</div>${
      Array.from({ length: 30 }, (_, col) => html`<div class="cell">${this.cell(row, col)!.text} <small>${this.cell(row, col)!.also ?? ''}</small></div>`)}</div>`)}</div></div>`;
  }

  protected override updated(): void {
    this.renderRoot.querySelector<HTMLElement>('.body')!.style.top = `${this.run.first * 30}px`;
  }
}
customElements.define('bare-rows', BareRows);

describe('the view', () => {
  it('goes on into rows that were only just asked for', async () => {
    const model = await sheet({}, { rowCount: 20 });
    await press(model, 'PageDown', 'PageDown', 'PageDown', 'ArrowDown', 'ArrowDown');
    expect(model.grid.selection.focus.row).to.be.above(20);
    const box = cellOf(model, active(model))!.getBoundingClientRect();
    expect(box.bottom).to.be.at.most(model.grid.getBoundingClientRect().bottom);
    const before = model.rowCount;
    model.grid.scroller.scrollTop = 1e9;
    await settled(model);
    expect(model.rowCount, 'and by scrolling').to.equal(before + 100);
  });

  it('of a sheet is where it was left', async () => {
    const model = await sheet();
    model.grid.scroller.scrollTop = 1200;
    await press(model, 'F6');
    const there = model.grid.selection;
    model.grid.selection = { anchor: { row: 45, col: 1 }, focus: { row: 45, col: 1 } };
    await settled(model);
    const { scrollTop } = model.grid.scroller;
    model.grid.view = { ...model.view(), id: 2, rowCount: 30 };
    model.grid.selection = there;
    await settled(model);
    expect(model.grid.scroller.scrollTop).to.equal(0);
    model.grid.view = model.view();
    model.grid.selection = { anchor: { row: 45, col: 1 }, focus: { row: 45, col: 1 } };
    await settled(model);
    expect(model.grid.scroller.scrollTop).to.equal(scrollTop);
    expect(seen(model)).to.include(46);
  });

  it('shows a cell that is selected from outside', async () => {
    const model = await sheet();
    model.grid.selection = { anchor: { row: 80, col: 20 }, focus: { row: 80, col: 20 } };
    await settled(model);
    const cell = cellOf(model, 'U81')!.getBoundingClientRect();
    const box = model.grid.getBoundingClientRect();
    expect(cell.right).to.be.at.most(box.right);
    expect(cell.bottom).to.be.at.most(box.bottom);
  });

  it('changes under an open editor without disturbing it', async () => {
    const model = await sheet();
    await type(model, '12.5 c');
    for (let i = 0; i < 5; i++) {
      model.put(3, 3, `result ${i}`);
      model.show();
      await settled(model);
    }
    await type(model, 'm');
    expect(field(model).value).to.equal('12.5 cm');
    expect(cellOf(model, 'D4')!.textContent).to.equal('result 4');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('12.5 cm');
  });
});

describe('long text', () => {
  it('goes over empty cells and ends at the next full one', async () => {
    const model = await sheet({ A1: 'A label that is much longer than its own column is wide', A2: 'A label that is much longer than its own column is wide', B2: '7' });
    expect(cellOf(model, 'A1')!.classList.contains('spill')).to.be.true;
    expect(cellOf(model, 'A2')!.classList.contains('spill')).to.be.false;
    expect(getComputedStyle(cellOf(model, 'A2')!).textOverflow).to.equal('ellipsis');
    expect(cellOf(model, 'A2')!.getBoundingClientRect().height).to.equal(30);
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
