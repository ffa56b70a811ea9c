import { expect } from '@open-wc/testing';
import { emulateMedia, sendKeys, sendMouse } from '@web/test-runner-commands';
import { active, cellOf, click, devtools, drag, field, middle, press, settled, sheet, type, type Model } from './fixture.ts';

const handle = ({ grid }: Model, kind: string): HTMLElement | null => grid.renderRoot.querySelector(`.handle.${kind}`);
const touch = async (kind: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', ...points: [number, number][]): Promise<boolean> =>
  devtools('Input.dispatchTouchEvent', { type: kind, touchPoints: points.map(([x, y]) => ({ x, y })) });
const held = () => new Promise((done) => setTimeout(done, 600));

async function tap(model: Model, name: string): Promise<boolean> {
  const there = await touch('touchStart', middle(cellOf(model, name)!));
  if (there) await touch('touchEnd');
  await settled(model);
  return there;
}

describe('the needle and spool', () => {
  it('is at least 24 pixels to hold on to, and fills the way it is dragged', async () => {
    const model = await sheet({ B2: '10', B3: '12' });
    await press(model, 'ArrowRight', 'ArrowDown', 'Shift+ArrowDown');
    const at = handle(model, 'fill')!.getBoundingClientRect();
    expect(at.width).to.be.at.least(24);
    expect(at.height).to.be.at.least(24);
    const [x, y] = middle(handle(model, 'fill')!);
    await drag(model, [x, y], middle(cellOf(model, 'C7')!));
    expect(model.of('tt-fill')).to.deep.equal([{ from: { top: 1, left: 1, bottom: 2, right: 1 }, to: { top: 1, left: 1, bottom: 6, right: 1 } }]);
    expect(model.grid.selection, 'what was filled is selected').to.deep.equal({ anchor: { row: 6, col: 1 }, focus: { row: 1, col: 1 } });
  });

  it('fills up and across, and says what it is going to do', async () => {
    const model = await sheet({ C5: '1' });
    await click(model, 'C5');
    const from = middle(handle(model, 'fill')!);
    await sendMouse({ type: 'move', position: from });
    await sendMouse({ type: 'down' });
    const words = async (name: string) => {
      await sendMouse({ type: 'move', position: middle(cellOf(model, name)!) });
      await settled(model);
      return model.grid.renderRoot.querySelector<HTMLElement>('.box.fill')?.dataset['label'];
    };
    expect(await words('F5')).to.equal('Fill 3 columns to the right');
    expect(await words('B5')).to.equal('Fill 1 column to the left');
    expect(await words('C2')).to.equal('Fill 3 rows up');
    expect(await words('C5'), 'back on the cell itself').to.be.undefined;
    await words('C1');
    await sendMouse({ type: 'up' });
    await settled(model);
    expect(model.of('tt-fill').map(({ to }) => to)).to.deep.equal([{ top: 0, left: 2, bottom: 4, right: 2 }]);
  });

  it('is given up with Escape', async () => {
    const model = await sheet({ A1: '1' });
    await sendMouse({ type: 'move', position: middle(handle(model, 'fill')!) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: middle(cellOf(model, 'A6')!) });
    await sendKeys({ press: 'Escape' });
    await sendMouse({ type: 'up' });
    await settled(model);
    expect(model.of('tt-fill')).to.have.length(0);
    expect(model.grid.renderRoot.querySelector('.box.fill')).to.be.null;
    expect(active(model)).to.equal('A1');
  });

  it('leaves the selection where it was when the fill is refused', async () => {
    const model = await sheet({ A1: '1' });
    model.grid.addEventListener('tt-fill', (event) => event.preventDefault());
    await drag(model, middle(handle(model, 'fill')!), middle(cellOf(model, 'A6')!));
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 0, col: 0 }, focus: { row: 0, col: 0 } });
  });

  it('is not there while a formula takes cells by pointing, nor where nothing may be changed', async () => {
    const model = await sheet();
    await type(model, '=');
    expect(handle(model, 'fill')).to.be.null;
    await press(model, 'Escape');
    expect(handle(model, 'fill')).to.not.be.null;
    model.grid.readonly = true;
    await settled(model);
    expect(handle(model, 'fill')).to.be.null;
  });

  it('can be seen with colours forced', async () => {
    await emulateMedia({ forcedColors: 'active' });
    try {
      const model = await sheet({ A1: '1' });
      const stroke = getComputedStyle(handle(model, 'fill')!.querySelector('.wood')!).stroke;
      expect(stroke).to.not.equal(getComputedStyle(model.grid).backgroundColor);
      await expect(model.grid).to.be.accessible();
    } finally {
      await emulateMedia({ forcedColors: 'none' });
    }
  });
});

describe('a finger', () => {
  it('gets buttons of at least 24 pixels at the corners, and moves them', async function () {
    const model = await sheet();
    expect(handle(model, 'end'), 'none for a mouse').to.be.null;
    if (!(await tap(model, 'C4'))) this.skip();
    for (const kind of ['start', 'end', 'fill']) {
      const box = handle(model, kind)!.getBoundingClientRect();
      expect(Math.min(box.width, box.height), kind).to.be.at.least(24);
    }
    const move = async (kind: string, name: string) => {
      await touch('touchStart', middle(handle(model, kind)!));
      const [x, y] = middle(cellOf(model, name)!);
      await touch('touchMove', [x - 20, y - 8]);
      await touch('touchMove', [x, y]);
      await touch('touchEnd');
      await settled(model);
    };
    await move('end', 'D7');
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 3, col: 2 }, focus: { row: 6, col: 3 } });
    await move('start', 'B2');
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 6, col: 3 }, focus: { row: 1, col: 1 } });
    expect(model.grid.scroller.scrollTop, 'nothing scrolled').to.equal(0);
    await move('fill', 'B10');
    expect(model.of('tt-fill').map(({ to }) => to)).to.deep.equal([{ top: 1, left: 1, bottom: 9, right: 3 }]);
  });

  it('held on a cell asks for its commands, and lifting it is no tap', async function () {
    const model = await sheet();
    const at = middle(cellOf(model, 'C4')!);
    if (!(await touch('touchStart', at))) this.skip();
    await held();
    expect(model.of('tt-menu')).to.deep.equal([{ x: at[0], y: at[1], part: 'cell' }]);
    expect(active(model)).to.equal('C4');
    await touch('touchEnd');
    await settled(model);
    expect(model.grid.editing).to.be.false;
    expect(model.of('tt-menu')).to.have.length(1);
    // The next taps are taps again.
    await tap(model, 'B6');
    await tap(model, 'B6');
    expect(model.grid.editing).to.be.true;
    await press(model, 'Escape');
  });

  it('held within a selected block leaves the block selected', async function () {
    const model = await sheet();
    await press(model, 'Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowRight');
    const at = middle(cellOf(model, 'B2')!);
    if (!(await touch('touchStart', at))) this.skip();
    await held();
    await touch('touchEnd');
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 0, col: 0 }, focus: { row: 2, col: 1 } });
    expect(model.of('tt-menu')).to.have.length(1);
  });

  it('that moves meanwhile scrolls, selects nothing and asks for nothing', async function () {
    const model = await sheet();
    const [x, y] = middle(cellOf(model, 'C9')!);
    if (!(await touch('touchStart', [x, y]))) this.skip();
    await new Promise((done) => setTimeout(done, 300));
    for (let i = 1; i <= 10; i++) await touch('touchMove', [x, y - i * 15]);
    await held();
    await touch('touchEnd');
    await settled(model);
    expect(model.grid.scroller.scrollTop).to.be.greaterThan(100);
    expect(active(model)).to.equal('A1');
    expect(model.of('tt-menu')).to.have.length(0);
  });
});

describe('the menu', () => {
  it('is asked for with the right button, at what is under it', async () => {
    const model = await sheet();
    const at = middle(cellOf(model, 'C4')!);
    await sendMouse({ type: 'click', position: at, button: 'right' });
    await settled(model);
    expect(model.of('tt-menu')).to.deep.equal([{ x: at[0], y: at[1], part: 'cell' }]);
    expect(active(model)).to.equal('C4');
    await sendMouse({ type: 'click', position: middle(model.grid.renderRoot.querySelector('.head [aria-colindex="4"]')!), button: 'right' });
    await settled(model);
    expect(model.of('tt-menu')[1]!.part).to.equal('column');
    expect(model.grid.selection.anchor).to.deep.equal({ row: 99, col: 2 });
    await sendMouse({ type: 'click', position: middle(model.grid.renderRoot.querySelector('[aria-rowindex="6"] [role=rowheader]')!), button: 'right' });
    await settled(model);
    expect(model.of('tt-menu')[2]!.part).to.equal('row');
  });

  it('is asked for by its keys, at the active cell', async () => {
    const model = await sheet();
    await press(model, 'ArrowDown', 'ArrowRight', 'Shift+F10');
    const cell = cellOf(model, 'B2')!.getBoundingClientRect();
    const [menu] = model.of('tt-menu');
    expect(model.of('tt-menu')).to.have.length(1);
    expect(menu!.x).to.be.closeTo(cell.left, 2);
    expect(menu!.y).to.be.closeTo(cell.bottom, 2);
  });

  it('is the text field’s own while a cell is edited', async () => {
    const model = await sheet();
    await type(model, 'x');
    field(model).dispatchEvent(new MouseEvent('contextmenu', { bubbles: true, composed: true, cancelable: true }));
    expect(model.of('tt-menu')).to.have.length(0);
    await press(model, 'Escape');
  });
});

describe('widths', () => {
  it('fit all rows of a column, not only those in view', async () => {
    const model = await sheet({ A1: 'short' }, { rowCount: 5000 });
    model.put(3000, 0, 'A much longer text, far below what can be seen of the sheet');
    model.show();
    await settled(model);
    model.grid.setWidths('fit');
    await settled(model);
    expect(model.of('tt-width')[0]!.widths[0]!.width).to.be.within(380, 520);
    await press(model, 'Control+ArrowDown');
    const cell = cellOf(model, active(model))!;
    expect(cell.scrollWidth).to.be.at.most(cell.clientWidth);
  });

  it('fit a second system, a heading and an error as they are shown, and an empty column gets the usual width', async () => {
    const model = await sheet({}, {
      cell: (_, col) => [
        { text: '72.0 cm', also: '28 ⅜ in', kind: 'figure' as const, input: false, formula: true, strong: true },
        { text: 'EASE needs a length for finished, and “wide” is a text.', kind: 'error' as const, input: false, formula: true }, null,
        { text: 'first\nthe second line is the longest', kind: 'text' as const, input: false, formula: false },
      ][col] ?? null,
      width: () => 60, more: { columnTitle: (col) => (col === 4 ? 'E · a heading of its own' : 'X') },
    });
    await press(model, 'Control+Space', 'Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight');
    model.grid.setWidths('fit');
    await settled(model);
    const widths = model.of('tt-width')[0]!.widths;
    expect(widths.map(({ col }) => col)).to.deep.equal([0, 1, 2, 3]);
    expect(widths[2]!.width).to.be.null;
    for (const name of ['A1', 'B1']) expect(cellOf(model, name)!.scrollWidth, name).to.be.at.most(cellOf(model, name)!.clientWidth);
  });

  it('change for all selected columns at once', async () => {
    const model = await sheet();
    await press(model, 'Control+Space', 'Shift+ArrowRight');
    model.grid.setWidths(1);
    await settled(model);
    expect(model.of('tt-width')).to.deep.equal([{ widths: [{ col: 0, width: 172 }, { col: 1, width: 122 }] }]);
    const edge = model.grid.renderRoot.querySelector('.head [aria-colindex="2"] .edge')!;
    const [x, y] = middle(edge);
    await drag(model, [x, y], [x + 28, y]);
    expect(model.of('tt-width')[1]).to.deep.equal({ widths: [{ col: 0, width: 200 }, { col: 1, width: 200 }] });
  });

  it('stay as they were when a drag is broken off', async () => {
    const model = await sheet();
    const edge = model.grid.renderRoot.querySelector('.head [aria-colindex="3"] .edge')!;
    const [x, y] = middle(edge);
    await sendMouse({ type: 'move', position: [x, y] });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [x + 60, y] });
    await sendKeys({ press: 'Escape' });
    await sendMouse({ type: 'up' });
    await settled(model);
    expect(model.of('tt-width')).to.have.length(0);
    expect(cellOf(model, 'B1')!.getBoundingClientRect().width).to.equal(110);
  });
});

describe('threads', () => {
  const ends = ({ grid }: Model) => [...grid.renderRoot.querySelectorAll('.tag')].map((tag) => tag.textContent!.replace(/\s+/g, ' ').trim());

  it('lead from a cell to what it uses, with numbers, and say where an end out of view is', async () => {
    const model = await sheet({ B3: '=B1+C9+Z9' });
    await click(model, 'B3');
    model.grid.threads = {
      of: { row: 2, col: 1 }, way: 'uses', ends: [
        { area: { top: 0, left: 1, bottom: 0, right: 1 }, words: 'B1' }, { area: { top: 70, left: 2, bottom: 70, right: 2 }, words: 'C71' }, { area: null, words: 'Measures C4' },
      ],
    };
    await settled(model);
    expect(ends(model)).to.deep.equal(['1', '2 C71 ↓', '3 Measures C4']);
    expect(model.grid.renderRoot.querySelectorAll('path.thread')).to.have.length(3);
    const reach = model.grid.renderRoot.querySelector('.reach')!.getBoundingClientRect();
    expect(reach.top).to.be.closeTo(cellOf(model, 'B1')!.getBoundingClientRect().top, 1.5);
    model.grid.scroller.scrollTop = 30 * 65;
    await settled(model);
    expect(ends(model)).to.deep.equal(['1 B1 ↑', '2', '3 Measures C4']);
    await expect(model.grid).to.be.accessible();
    model.grid.threads = null;
    await settled(model);
    expect(ends(model)).to.deep.equal([]);
  });

  it('stay with cells that stay in view', async () => {
    const model = await sheet({}, { more: { frozen: { rows: 1, cols: 1 } } });
    model.grid.threads = { of: { row: 4, col: 2 }, way: 'used by', ends: [{ area: { top: 0, left: 0, bottom: 0, right: 0 }, words: 'A1' }] };
    model.grid.scroller.scrollTo(40, 50);
    await settled(model);
    const reach = model.grid.renderRoot.querySelector('.reach')!.getBoundingClientRect();
    const cell = cellOf(model, 'A1')!.getBoundingClientRect();
    expect([Math.round(reach.left - cell.left), Math.round(reach.top - cell.top)]).to.deep.equal([-1, -1]);
  });
});
