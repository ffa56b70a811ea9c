import { expect } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { active, cellOf, click, field, lineField, middle, press, settled, sheet, type } from './fixture.ts';

const helper = (model: Awaited<ReturnType<typeof sheet>>) => model.grid.renderRoot.querySelector<HTMLElement>('.helper')!;
const options = (model: Awaited<ReturnType<typeof sheet>>) => [...helper(model).querySelectorAll('[role=option] b')].map((each) => each.textContent);

describe('typing', () => {
  it('replaces what was there, and Enter keeps it and goes down', async () => {
    const model = await sheet({ A1: 'old' });
    await type(model, 'New label');
    expect(model.grid.editing).to.be.true;
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('New label');
    expect(active(model)).to.equal('A2');
    expect(model.of('tt-commit')).to.deep.equal([{ sheet: 1, row: 0, col: 0, raw: 'New label', then: 'down' }]);
  });

  it('loses no key of fast typing over many cells', async () => {
    const model = await sheet();
    for (let row = 0; row < 12; row++) {
      await sendKeys({ type: `${row}.5 cm` });
      await sendKeys({ press: 'Enter' });
    }
    await settled(model);
    expect(Array.from({ length: 12 }, (_, row) => model.raw(row, 0))).to.deep.equal(Array.from({ length: 12 }, (_, row) => `${row}.5 cm`));
  });

  it('goes on by arrows, Tab and Shift with them', async () => {
    const model = await sheet();
    await press(model, 'ArrowDown', 'ArrowRight');
    await type(model, 'a');
    await press(model, 'ArrowRight');
    await type(model, 'b');
    await press(model, 'Shift+Tab');
    await type(model, 'c');
    await press(model, 'Shift+Enter');
    expect(active(model)).to.equal('B1');
    expect([model.raw(1, 1), model.raw(1, 2)]).to.deep.equal(['c', 'b']);
  });

  it('Escape leaves the cell as it was', async () => {
    const model = await sheet({ A1: 'old' });
    await type(model, 'new');
    await press(model, 'Escape');
    expect(model.grid.editing).to.be.false;
    expect(model.of('tt-commit')).to.have.length(0);
    expect(active(model)).to.equal('A1');
    expect(field(model).value).to.equal('');
  });

  it('Backspace asks for the cell to be emptied, and typing after it begins anew', async () => {
    const model = await sheet({ A1: 'old' });
    await press(model, 'Backspace');
    expect(model.raw(0, 0)).to.equal('');
    await type(model, 'x');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('x');
  });

  it('stays open when what was typed is refused', async () => {
    const model = await sheet();
    model.grid.addEventListener('tt-commit', (event) => event.preventDefault(), { once: true });
    await type(model, 'x');
    await press(model, 'Enter');
    expect(model.grid.editing).to.be.true;
    expect(field(model).value).to.equal('x');
    expect(active(model)).to.equal('A1');
  });

  it('is shown over the cell, at least as large as it, and not beyond the view', async () => {
    const model = await sheet();
    await press(model, 'ArrowDown', 'ArrowRight');
    await type(model, 'The quick brown seam allowance jumps over the lazy hem and goes on and on, further than the grid is wide by far and more');
    const box = model.grid.renderRoot.querySelector('.cell-editor')!.getBoundingClientRect();
    const cell = cellOf(model, 'B2')!.getBoundingClientRect();
    expect(box.width).to.be.at.least(cell.width);
    expect(box.height).to.be.greaterThan(cell.height);
    expect(box.right).to.be.at.most(model.grid.getBoundingClientRect().right);
  });
});

describe('editing within a cell', () => {
  it('F2, Enter and a double click open it on its text, where arrows move the caret', async () => {
    const model = await sheet({ A1: 'wast' });
    await press(model, 'F2', 'ArrowLeft', 'ArrowLeft');
    await type(model, 'i');
    await press(model, 'Enter', 'ArrowUp', 'Enter');
    expect(field(model).value).to.equal('waist');
    await type(model, '!');
    await press(model, 'Enter');
    const at = middle(cellOf(model, 'A1')!);
    await sendMouse({ type: 'click', position: at });
    await sendMouse({ type: 'click', position: at });
    await settled(model);
    // Two clicks by the protocol are not a double click of the browser's; the event is.
    cellOf(model, 'A1')!.dispatchEvent(new MouseEvent('dblclick', { bubbles: true, composed: true, clientX: at[0], clientY: at[1], detail: 2 }));
    await settled(model);
    expect(field(model).value).to.equal('waist!');
    expect(model.grid.editing).to.be.true;
  });

  it('commits nothing when nothing was changed', async () => {
    const model = await sheet({ A1: 'waist' });
    await press(model, 'F2', 'Enter');
    expect(model.of('tt-commit')).to.have.length(0);
    expect(active(model)).to.equal('A2');
  });

  it('Alt+Enter makes a line break', async () => {
    const model = await sheet();
    await type(model, 'front');
    await press(model, 'Alt+Enter');
    await type(model, 'facing');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('front\nfacing');
    expect(cellOf(model, 'A1')!.getBoundingClientRect().height).to.equal(30);
  });

  it('is kept when the user clicks elsewhere, in the grid or out of it', async () => {
    const model = await sheet();
    await type(model, 'one');
    await click(model, 'C3');
    expect(model.raw(0, 0)).to.equal('one');
    expect(active(model)).to.equal('C3');
    await type(model, 'two');
    await sendMouse({ type: 'click', position: middle(document.querySelector('#after')!) });
    await settled(model);
    expect(model.raw(2, 2)).to.equal('two');
    expect(model.grid.editing).to.be.false;
  });

  it('is kept for its own sheet when another one is shown', async () => {
    const model = await sheet();
    await type(model, 'one');
    model.grid.view = { ...model.view(), id: 2 };
    await settled(model);
    expect(model.of('tt-commit')).to.deep.equal([{ sheet: 1, row: 0, col: 0, raw: 'one', then: 'stay' }]);
    expect(model.grid.editing).to.be.false;
  });
});

describe('formulas', () => {
  it('are completed from a list, by Tab or Enter only while it is open', async () => {
    const model = await sheet();
    await type(model, '=pl');
    expect(options(model)).to.deep.equal(['PLEAT.CLOTH', 'PLEAT.DEPTH']);
    expect(field(model).getAttribute('aria-activedescendant')).to.equal('tt-option-0');
    await press(model, 'ArrowDown', 'Tab');
    expect(field(model).value).to.equal('=PLEAT.DEPTH(');
    expect(model.grid.editing).to.be.true;
    await type(model, '4)');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('=PLEAT.DEPTH(4)');
    expect(active(model)).to.equal('A2');
  });

  it('Escape closes the list first, then the editor', async () => {
    const model = await sheet();
    await type(model, '=pl');
    await press(model, 'Escape');
    expect(options(model)).to.have.length(0);
    expect(model.grid.editing).to.be.true;
    expect(field(model).value).to.equal('=pl');
    await press(model, 'Escape');
    expect(model.grid.editing).to.be.false;
  });

  it('show the signature with the argument being typed', async () => {
    const model = await sheet();
    await type(model, '=PLEAT.DEPTH(280 cm, ');
    expect(helper(model).matches(':popover-open')).to.be.true;
    expect(helper(model).querySelector('.signature strong')!.textContent).to.equal('finished');
    await press(model, 'Escape');
    expect(helper(model).matches(':popover-open')).to.be.false;
  });

  it('a word from the list can be clicked', async () => {
    const model = await sheet();
    await type(model, '=2*wai');
    await sendMouse({ type: 'click', position: middle(helper(model).querySelector('[role=option]')!) });
    await settled(model);
    expect(field(model).value).to.equal('=2*waist');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('=2*waist');
  });

  it('take a clicked cell, a dragged block, and another in place of it', async () => {
    const model = await sheet();
    await type(model, '=EASE(');
    await click(model, 'C4');
    expect(field(model).value).to.equal('=EASE(C4');
    await click(model, 'D5');
    expect(field(model).value).to.equal('=EASE(D5');
    expect(model.grid.renderRoot.querySelector('.pointed')).to.exist;
    await type(model, ',');
    await sendMouse({ type: 'move', position: middle(cellOf(model, 'B2')!) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: middle(cellOf(model, 'C3')!) });
    await sendMouse({ type: 'up' });
    await type(model, ')');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('=EASE(D5,B2:C3)');
    expect(active(model)).to.equal('A2');
  });

  it('take a cell by arrow keys after a sign', async () => {
    const model = await sheet();
    await press(model, 'ArrowRight', 'ArrowDown');
    await type(model, '=');
    await press(model, 'ArrowUp', 'ArrowLeft');
    await type(model, '+');
    await press(model, 'ArrowRight', 'Shift+ArrowDown');
    expect(field(model).value).to.equal('=A1+C2:C3');
    await press(model, 'Enter');
    expect(model.raw(1, 1)).to.equal('=A1+C2:C3');
  });

  it('a click where no reference can stand keeps the formula and selects', async () => {
    const model = await sheet();
    await type(model, '=B2');
    await click(model, 'C4');
    expect(model.raw(0, 0)).to.equal('=B2');
    expect(active(model)).to.equal('C4');
  });

  it('outline the cells they use, in order', async () => {
    const model = await sheet();
    await type(model, '=B2+C3:D4');
    const boxes = [...model.grid.renderRoot.querySelectorAll<HTMLElement>('.used')];
    expect(boxes.map((each) => each.dataset['label'])).to.deep.equal(['1', '2']);
    const first = boxes[0]!.getBoundingClientRect();
    const cell = cellOf(model, 'B2')!.getBoundingClientRect();
    expect(Math.abs(first.left - cell.left)).to.be.at.most(1);
    expect(Math.abs(first.bottom - cell.bottom)).to.be.at.most(1);
  });
});

describe('the grid and the entry line', () => {
  it('show what is typed in the other', async () => {
    const model = await sheet();
    await type(model, '=EASE(B2');
    expect(lineField(model).value).to.equal('=EASE(B2');
    await press(model, 'Escape');
    expect(lineField(model).value).to.equal('');
    lineField(model).focus();
    await type(model, 'from the line');
    expect(cellOf(model, 'A1')!.textContent).to.equal('from the line');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('from the line');
    expect(active(model)).to.equal('A2');
    expect(document.activeElement).to.equal(model.grid);
  });

  it('hand an unfinished text over', async () => {
    const model = await sheet();
    await type(model, '=EASE(B2');
    await sendMouse({ type: 'click', position: middle(lineField(model)) });
    await settled(model);
    expect(model.of('tt-commit')).to.have.length(0);
    expect(model.line.editing).to.be.true;
    await press(model, 'End');
    await type(model, ', B3)');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('=EASE(B2, B3)');
  });

  it('let cells be pointed at for the formula in the line', async () => {
    const model = await sheet();
    lineField(model).focus();
    await type(model, '=EASE(');
    await click(model, 'B3');
    expect(lineField(model).value).to.equal('=EASE(B3');
    expect(document.activeElement).to.equal(model.line);
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('=EASE(B3');
  });

  it('keep the line’s text when the user goes elsewhere', async () => {
    const model = await sheet();
    lineField(model).focus();
    await type(model, 'kept');
    await click(model, 'C3');
    expect(model.raw(0, 0)).to.equal('kept');
    expect(active(model)).to.equal('C3');
  });
});
