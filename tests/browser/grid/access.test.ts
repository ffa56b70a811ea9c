import { expect } from '@open-wc/testing';
import { emulateMedia } from '@web/test-runner-commands';
import type { CellView } from '../../../src/grid/index.ts';
import { cellOf, field, named, press, settled, sheet, type } from './fixture.ts';

const CELLS: Record<string, CellView> = {
  '0 0': { text: 'Pleated skirt', kind: 'text', input: false, formula: false, heading: true },
  '1 0': { text: 'Body waist', kind: 'text', input: false, formula: false },
  '1 1': { text: '72.0 cm', also: '28 ⅜ in', kind: 'figure', typed: true, input: true, formula: false },
  '2 1': { text: '2.5 cm', also: '1 in', kind: 'figure', input: false, formula: true, caution: 'Little ease.' },
  '3 1': { text: 'EASE needs a length for body.', kind: 'error', input: false, formula: true },
  '4 1': { text: '…', kind: 'waiting', input: false, formula: true, note: 'see toile' },
  '5 1': { text: 'true', kind: 'truth', input: false, formula: true },
};
const full = (wide = 780) => sheet({}, { cell: (row, col) => CELLS[`${row} ${col}`] ?? null, wide });
const label = (model: Awaited<ReturnType<typeof full>>, name: string) => cellOf(model, name)!.getAttribute('aria-label');

describe('what a screen reader is told', () => {
  it('is a grid whose indices count the headings', async () => {
    const model = await full();
    const grid = model.grid.renderRoot.querySelector('[role=grid]')!;
    expect(grid.getAttribute('aria-label')).to.equal('Skirt');
    expect([grid.getAttribute('aria-rowcount'), grid.getAttribute('aria-colcount')]).to.deep.equal(['101', '27']);
    expect(cellOf(model, 'B2')!.getAttribute('aria-colindex')).to.equal('3');
    expect(cellOf(model, 'B2')!.closest('[role=row]')!.getAttribute('aria-rowindex')).to.equal('3');
    expect(grid.querySelectorAll('[role=columnheader]')).to.have.length(27);
  });

  it('is the value, the second system, where it comes from and what hangs on it', async () => {
    const model = await full();
    expect(label(model, 'A2')).to.be.null;
    expect(label(model, 'B2')).to.equal('72.0 cm, 28 ⅜ in, typed, to fill in');
    expect(label(model, 'B3')).to.equal('2.5 cm, 1 in, worked out, Pin: Little ease.');
    expect(label(model, 'B4')).to.equal('Error: EASE needs a length for body., worked out');
    expect(label(model, 'B5')).to.equal('…, being worked out, Note: see toile');
  });

  it('is the active cell through the field that has the focus, but the field itself while it is edited', async () => {
    const model = await full();
    await press(model, 'ArrowDown', 'ArrowRight');
    expect(field(model).getAttribute('aria-controls')).to.equal('cells');
    expect(named(model)).to.equal(cellOf(model, 'B2'));
    await type(model, 'x');
    expect(field(model).hasAttribute('aria-activedescendant')).to.be.false;
    expect(field(model).getAttribute('aria-label')).to.equal('Editing B2');
    await press(model, 'Escape');
    expect(named(model)).to.equal(cellOf(model, 'B2'));
  });

  it('is once how much is selected, and how to leave', async () => {
    const model = await full();
    const status = [...model.grid.renderRoot.querySelectorAll('[role=status]')].at(-1)!;
    await press(model, 'Shift+ArrowDown', 'Shift+ArrowRight');
    await new Promise((done) => setTimeout(done, 350));
    await settled(model);
    expect(status.textContent).to.equal('A1 to B2 selected, 2 rows, 2 columns');
    await press(model, 'Escape');
    expect(status.textContent).to.contain('Tab leaves');
  });
});

describe('axe', () => {
  it('passes the grid at rest, with a block selected, and for reading only', async () => {
    const model = await full();
    await expect(model.grid).to.be.accessible();
    await press(model, 'Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowRight');
    await expect(model.grid).to.be.accessible();
    model.grid.readonly = true;
    await settled(model);
    await expect(model.grid).to.be.accessible();
  });

  it('passes while a formula is typed, with the list open', async () => {
    const model = await full();
    await type(model, '=PLEAT.DEPTH(B2, pl');
    await expect(model.grid).to.be.accessible();
  });

  it('passes in the dark', async () => {
    document.documentElement.dataset['theme'] = 'dark';
    try {
      const model = await full();
      await press(model, 'ArrowDown', 'ArrowRight', 'Shift+ArrowDown');
      await expect(model.grid).to.be.accessible();
      await expect(model.line).to.be.accessible();
    } finally {
      delete document.documentElement.dataset['theme'];
    }
  });

  it('passes narrow', async () => {
    const model = await full(390);
    await expect(model.grid).to.be.accessible();
  });
});

describe('on a narrow view', () => {
  it('the label column stays, and the active cell is never under it', async () => {
    const model = await full(390);
    await press(model, 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowLeft');
    const stays = cellOf(model, 'A2')!.getBoundingClientRect();
    const box = model.grid.getBoundingClientRect();
    expect(stays.left - box.left).to.be.within(30, 60);
    const now = cellOf(model, 'D1')!.getBoundingClientRect();
    expect(now.left).to.be.at.least(stays.right - 1);
    expect(now.right).to.be.at.most(box.right);
  });
});

describe('motion', () => {
  it('is none: moves are at once', async () => {
    await emulateMedia({ reducedMotion: 'reduce' });
    const model = await full();
    await press(model, 'PageDown');
    const { top } = cellOf(model, `A${model.grid.selection.focus.row + 1}`)!.getBoundingClientRect();
    expect(top).to.be.below(model.grid.getBoundingClientRect().bottom);
    await emulateMedia({ reducedMotion: 'no-preference' });
  });
});
