import { expect } from '@open-wc/testing';
import { active, cellOf, field, press, sheet, type } from './fixture.ts';

describe('keys on the grid', () => {
  it('arrows go to the next cell and stop at the edges', async () => {
    const model = await sheet();
    await press(model, 'ArrowRight', 'ArrowDown', 'ArrowDown');
    expect(active(model)).to.equal('B3');
    await press(model, 'ArrowLeft', 'ArrowLeft', 'ArrowUp', 'ArrowUp', 'ArrowUp');
    expect(active(model)).to.equal('A1');
  });

  it('Home, End and their Ctrl forms go to the ends of what is used', async () => {
    const model = await sheet({ A1: 'Waist', D1: '72 cm', B9: '8' });
    await press(model, 'End');
    expect(active(model)).to.equal('D1');
    await press(model, 'Control+End');
    expect(active(model)).to.equal('D9');
    await press(model, 'Home');
    expect(active(model)).to.equal('A9');
    await press(model, 'ArrowRight', 'Control+Home');
    expect(active(model)).to.equal('A1');
  });

  it('Ctrl with an arrow goes to the end of the block', async () => {
    const model = await sheet({ B2: '1', B3: '2', B4: '3', B8: '4' });
    await press(model, 'ArrowRight', 'ArrowDown', 'Control+ArrowDown');
    expect(active(model)).to.equal('B4');
    await press(model, 'Control+ArrowDown');
    expect(active(model)).to.equal('B8');
    await press(model, 'Control+ArrowUp', 'Control+ArrowUp');
    expect(active(model)).to.equal('B2');
  });

  it('Page Down goes a screen on and shows it', async () => {
    const model = await sheet();
    await press(model, 'PageDown');
    const { row } = model.grid.selection.focus;
    expect(row).to.be.within(9, 13);
    const box = cellOf(model, active(model))!.getBoundingClientRect();
    const view = model.grid.getBoundingClientRect();
    expect(box.top).to.be.at.least(view.top + 28);
    expect(box.bottom).to.be.at.most(view.bottom);
    await press(model, 'PageUp');
    expect(active(model)).to.equal('A1');
  });

  it('Shift extends from the cell it began in, and marks every cell of the block', async () => {
    const model = await sheet();
    await press(model, 'ArrowRight', 'ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowRight');
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 1, col: 1 }, focus: { row: 3, col: 2 } });
    expect(model.grid.renderRoot.querySelectorAll('[role=gridcell][aria-selected=true]')).to.have.length(6);
    await press(model, 'ArrowUp');
    expect(active(model)).to.equal('C3');
    expect(model.grid.renderRoot.querySelectorAll('[role=gridcell][aria-selected=true]')).to.have.length(1);
  });

  it('Ctrl+A, Shift+Space and Ctrl+Space select all, the row, the column', async () => {
    const model = await sheet();
    await press(model, 'ArrowDown', 'ArrowRight', 'Shift+Space');
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 1, col: 25 }, focus: { row: 1, col: 0 } });
    await press(model, 'ArrowDown', 'ArrowRight', 'Control+Space');
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 99, col: 1 }, focus: { row: 0, col: 1 } });
    await press(model, 'Control+a');
    expect(model.grid.selection).to.deep.equal({ anchor: { row: 99, col: 25 }, focus: { row: 0, col: 0 } });
    expect(field(model).value, 'nothing was typed').to.equal('');
  });

  it('Delete asks for the selected block to be emptied', async () => {
    const model = await sheet({ A1: 'a', A2: 'b', A3: 'c' });
    await press(model, 'Shift+ArrowDown', 'Delete');
    expect(model.of('tt-clear')).to.deep.equal([{ area: { top: 0, left: 0, bottom: 1, right: 0 } }]);
    expect(model.raw(2, 0)).to.equal('c');
  });

  it('asks for more rows at the last one and goes on into them', async () => {
    const model = await sheet({}, { rowCount: 3 });
    await press(model, 'ArrowDown', 'ArrowDown', 'ArrowDown');
    expect(model.of('tt-more-rows')).to.have.length(1);
    expect(active(model)).to.equal('A4');
  });

  it('leaves keys it has no use for to the page', async () => {
    const model = await sheet();
    const free: string[] = [];
    const hear = (event: KeyboardEvent) => { if (!event.defaultPrevented && event.key.length > 1) free.push(event.key); };
    document.addEventListener('keydown', hear);
    await press(model, 'F6', 'ArrowDown', 'Control+k', 'Escape');
    document.removeEventListener('keydown', hear);
    expect(free).to.include('F6').and.to.include('Escape').and.not.to.include('ArrowDown');
  });

  it('only reads when it is for reading', async () => {
    const model = await sheet({ A1: 'a' });
    model.grid.readonly = true;
    await type(model, 'x');
    await press(model, 'F2', 'Enter', 'Delete', 'ArrowDown');
    expect(model.of('tt-clear')).to.have.length(0);
    expect(model.of('tt-commit')).to.have.length(0);
    expect(model.grid.editing).to.be.false;
    expect(active(model)).to.equal('A2');
  });
});

describe('Tab', () => {
  it('passes a grid that was only come to', async () => {
    const model = await sheet();
    document.querySelector<HTMLElement>('#before')!.focus();
    // Entry line: the place, its name, the text; then the cells; then on.
    await press(model, 'Tab', 'Tab', 'Tab', 'Tab');
    expect(document.activeElement).to.equal(model.grid);
    await press(model, 'Tab');
    expect(document.activeElement!.id).to.equal('after');
    await press(model, 'Shift+Tab', 'Shift+Tab');
    expect(document.activeElement).to.equal(model.line);
  });

  it('goes to the next cell once the grid is in use, until Escape', async () => {
    const model = await sheet();
    await press(model, 'ArrowDown', 'Tab', 'Tab', 'Shift+Tab');
    expect(active(model)).to.equal('B2');
    await press(model, 'Escape', 'Tab');
    expect(document.activeElement!.id).to.equal('after');
  });

  it('goes on through the page from the first and the last cell of a row', async () => {
    const model = await sheet({}, { colCount: 2 });
    await press(model, 'ArrowDown', 'Tab', 'Tab');
    expect(document.activeElement!.id).to.equal('after');
  });

  it('is remembered, so that Enter begins the next row', async () => {
    const model = await sheet();
    await press(model, 'ArrowRight');
    await type(model, '1');
    await press(model, 'Tab');
    await type(model, '2');
    await press(model, 'Tab');
    await type(model, '3');
    await press(model, 'Enter');
    expect(active(model)).to.equal('B2');
    await type(model, '4');
    await press(model, 'Tab', 'Enter');
    expect([model.raw(0, 1), model.raw(0, 2), model.raw(0, 3), model.raw(1, 1)]).to.deep.equal(['1', '2', '3', '4']);
  });
});
