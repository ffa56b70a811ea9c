import { expect } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { active, cellOf, click, devtools, drag, field, middle, press, settled, sheet, type Model } from './fixture.ts';

const heading = ({ grid }: Model, letter: string) => grid.renderRoot.querySelector(`.head [aria-colindex="${letter.charCodeAt(0) - 63}"]`)!;
const number = ({ grid }: Model, row: number) => grid.renderRoot.querySelector(`[aria-rowindex="${row + 1}"] [role=rowheader]`)!;

describe('the mouse', () => {
  it('selects by a click and extends by Shift and by dragging', async () => {
    const model = await sheet();
    await click(model, 'B3');
    expect(active(model)).to.equal('B3');
    expect(document.activeElement).to.equal(model.grid);
    await sendKeys({ down: 'Shift' });
    await click(model, 'D5');
    await sendKeys({ up: 'Shift' });
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 2, col: 1 }, focus: { row: 4, col: 3 } });
    await drag(model, middle(cellOf(model, 'E8')!), middle(cellOf(model, 'C6')!));
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 7, col: 4 }, focus: { row: 5, col: 2 } });
  });

  it('selects rows, columns and all by the headings', async () => {
    const model = await sheet();
    await drag(model, middle(heading(model, 'B')), middle(heading(model, 'D')));
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 99, col: 1 }, focus: { row: 0, col: 3 } });
    await drag(model, middle(number(model, 2)), middle(number(model, 4)));
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 1, col: 25 }, focus: { row: 3, col: 0 } });
    expect(number(model, 3).getAttribute('aria-selected')).to.equal('true');
    await sendMouse({ type: 'click', position: middle(model.grid.renderRoot.querySelector('.corner')!) });
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 99, col: 25 }, focus: { row: 0, col: 0 } });
  });

  it('does not scroll when a heading is clicked', async () => {
    const model = await sheet();
    model.grid.scroller.scrollTop = 900;
    await settled(model);
    await sendMouse({ type: 'click', position: middle(heading(model, 'C')) });
    await settled(model);
    expect(model.grid.scroller.scrollTop).to.equal(900);
    expect(active(model)).to.equal('C1');
  });

  it('scrolls on while it is held beyond the edge', async () => {
    const model = await sheet();
    const box = model.grid.getBoundingClientRect();
    await sendMouse({ type: 'move', position: middle(cellOf(model, 'B3')!) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [300, Math.round(box.bottom) + 40] });
    for (let frame = 0; frame < 20; frame++) await new Promise(requestAnimationFrame);
    await sendMouse({ type: 'up' });
    await settled(model);
    expect(model.grid.scroller.scrollTop).to.be.greaterThan(60);
    expect(model.grid.selection.focus.row).to.be.greaterThan(12);
    const { scrollTop } = model.grid.scroller;
    for (let frame = 0; frame < 5; frame++) await new Promise(requestAnimationFrame);
    expect(model.grid.scroller.scrollTop, 'it stops when it is let go').to.equal(scrollTop);
  });

  it('sets a width by a heading’s edge, of at least 24 pixels to hold on to', async () => {
    const model = await sheet();
    const edge = heading(model, 'B').querySelector('.edge')!;
    expect(edge.getBoundingClientRect().width).to.be.at.least(24);
    const [x, y] = middle(edge);
    await drag(model, [x, y], [x + 47, y]);
    expect(model.of('tt-width')).to.deep.equal([{ widths: [{ col: 1, width: 157 }] }]);
    expect(cellOf(model, 'B2')!.getBoundingClientRect().width).to.equal(157);
    expect(active(model)).to.equal('A1');
  });

  it('fits a width by a double click on the edge', async () => {
    const model = await sheet({ B2: 'A label that is rather longer than its column' });
    const edge = heading(model, 'B').querySelector('.edge')!;
    const at = middle(edge);
    await sendMouse({ type: 'click', position: at });
    edge.dispatchEvent(new MouseEvent('dblclick', { bubbles: true, composed: true, clientX: at[0], clientY: at[1] }));
    await settled(model);
    const cell = cellOf(model, 'B2')!;
    expect(cell.scrollWidth).to.be.at.most(cell.clientWidth);
    expect(model.of('tt-width')[0]!.widths[0]!.width).to.be.within(250, 400);
  });

  it('a click without a pointer, as a screen reader makes it, selects', async () => {
    const model = await sheet();
    cellOf(model, 'C2')!.click();
    await settled(model);
    expect(active(model)).to.equal('C2');
  });
});

describe('a finger', () => {
  const touch = async (kind: 'touchStart' | 'touchMove' | 'touchEnd', ...points: [number, number][]): Promise<boolean> =>
    devtools('Input.dispatchTouchEvent', { type: kind, touchPoints: points.map(([x, y]) => ({ x, y })) });

  async function tap(model: Model, name: string): Promise<boolean> {
    const there = await touch('touchStart', middle(cellOf(model, name)!));
    if (there) await touch('touchEnd');
    await settled(model);
    return there;
  }

  it('selects when it is lifted, edits on the second tap', async function () {
    const model = await sheet({ B3: '8' });
    const at = middle(cellOf(model, 'B3')!);
    if (!(await touch('touchStart', at))) this.skip();
    await settled(model);
    expect(active(model), 'not yet').to.equal('A1');
    await touch('touchEnd');
    await settled(model);
    expect(active(model)).to.equal('B3');
    expect(model.grid.editing).to.be.false;
    expect(field(model).inputMode, 'no keyboard yet').to.equal('none');
    await tap(model, 'B3');
    expect(model.grid.editing).to.be.true;
    expect(field(model).value).to.equal('8');
    expect(field(model).inputMode).to.equal('text');
  });

  it('does not select when it scrolls', async function () {
    const model = await sheet();
    const [x, y] = middle(cellOf(model, 'C9')!);
    if (!(await touch('touchStart', [x, y]))) this.skip();
    for (let i = 1; i <= 10; i++) await touch('touchMove', [x, y - i * 15]);
    await touch('touchEnd');
    await new Promise((done) => setTimeout(done, 300));
    await settled(model);
    expect(model.grid.scroller.scrollTop).to.be.greaterThan(50);
    expect(model.of('tt-select')).to.have.length(0);
  });

  it('sets a width by the edge without scrolling', async function () {
    const model = await sheet();
    const [x, y] = middle(heading(model, 'A').querySelector('.edge')!);
    if (!(await touch('touchStart', [x, y]))) this.skip();
    for (let i = 1; i <= 5; i++) await touch('touchMove', [x + i * 8, y]);
    await touch('touchEnd');
    await settled(model);
    expect(model.of('tt-width')).to.deep.equal([{ widths: [{ col: 0, width: 200 }] }]);
    expect(model.grid.scroller.scrollLeft).to.equal(0);
  });

  it('points at a cell for a formula', async function () {
    const model = await sheet();
    await sendKeys({ type: '=EASE(' });
    if (!(await tap(model, 'D6'))) this.skip();
    expect(field(model).value).to.equal('=EASE(D6');
    await press(model, 'Escape');
  });
});
