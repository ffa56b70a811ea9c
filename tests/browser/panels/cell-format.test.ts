import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type { CellFormatPanel, LookChange } from '../../../src/panels/index.ts';
import type { Look } from '../../../src/workbook/types.ts';
import '../../../src/panels/cell-format.ts';
import { accessible, button, find, focused, heard, press, tabTo, words } from './support.ts';

async function panel(look: Look = {}): Promise<CellFormatPanel> {
  const made = await fixture<CellFormatPanel>(html`<tt-cell-format .place=${'Fit B4:B9'} .sample=${'74.5 cm'} .look=${look}></tt-cell-format>`);
  made.focus();
  return made;
}
function field<T extends HTMLElement>(made: CellFormatPanel, name: string): T {
  const label = [...made.renderRoot.querySelectorAll('label')].find((each) => words(each.textContent).startsWith(name));
  if (!label) throw new Error(`There is no field “${name}”.`);
  return label.querySelector<T>('input, select')!;
}
const has = (made: CellFormatPanel, name: string): boolean => [...made.renderRoot.querySelectorAll('label')].some((each) => words(each.textContent).startsWith(name));

describe('how cells show', () => {
  it('says of which cells, and how the active one shows now', async () => {
    const made = await panel();
    expect(words(made.renderRoot.textContent)).to.contain('Fit B4:B9').and.to.contain('Shows as 74.5 cm');
    expect(focused(made) === field(made, 'Kind')).to.equal(true);
    made.mixed = true;
    await made.updateComplete;
    expect(words(made.renderRoot.textContent)).to.contain('They do not all look alike');
    await accessible(made);
  });

  it('kind, unit, step and decimals, by keys', async () => {
    const made = await panel();
    const asked = heard<LookChange>(made, 'tt-look');
    made.addEventListener('tt-look', (event) => { made.look = { ...made.look, ...(event as CustomEvent<Look>).detail }; });
    await sendKeys({ type: 'Length' });
    // The units of the kind are there before it is asked for.
    await tabTo(made, field(made, 'Unit'));
    await sendKeys({ type: 'inches' });
    await tabTo(made, field(made, 'Inches to'));
    await sendKeys({ type: '1/8' });
    await tabTo(made, field(made, 'Decimals'));
    await sendKeys({ type: '2' });
    await press('Enter');
    expect(asked).to.deep.equal([{ unit: 'cm' }, { unit: 'in' }, { step: 8 }, { decimals: 2 }]);
    await accessible(made);
  });

  it('asks once for what keys choose, however many lines they pass', async () => {
    const made = await panel();
    const asked = heard<LookChange>(made, 'tt-look');
    await tabTo(made, field(made, 'Decimals'));
    await press('ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowUp');
    expect(field<HTMLSelectElement>(made, 'Decimals').value).to.equal('1');
    expect(asked).to.deep.equal([]);
    expect(words(made.renderRoot.textContent)).to.contain('Enter or Tab uses it.');
    await press('Tab');
    expect(asked).to.deep.equal([{ decimals: 1 }]);
  });

  it('leaves what was chosen by keys with Escape or undo, and uses it before another command', async () => {
    const made = await panel();
    const asked = heard<LookChange>(made, 'tt-look');
    for (const key of ['Escape', 'Control+z']) {
      await tabTo(made, field(made, 'Decimals'));
      await press('ArrowDown', key);
      expect(field<HTMLSelectElement>(made, 'Decimals').value, key).to.equal('');
    }
    expect(asked).to.deep.equal([]);
    await press('ArrowDown', 'Alt+PageDown');
    expect(asked).to.deep.equal([{ decimals: 0 }]);
  });

  it('uses what was chosen by keys before a press elsewhere selects other cells', async () => {
    const made = await panel();
    const order: string[] = [];
    made.addEventListener('tt-look', () => order.push('asked'));
    const other = await fixture<HTMLButtonElement>(html`<button @pointerdown=${() => order.push('pressed')}>Other</button>`);
    await tabTo(made, field(made, 'Decimals'));
    await press('ArrowDown');
    other.scrollIntoView();
    const { left, top } = other.getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(left) + 5, Math.round(top) + 5] });
    expect(order).to.deep.equal(['asked', 'pressed']);
  });

  it('offers for each kind its own units, and steps only where there are inches', async () => {
    const made = await panel({ unit: '%' });
    expect([...field<HTMLSelectElement>(made, 'Unit').options].map(({ text }) => text)).to.deep.equal(['plain', 'percent']);
    expect(has(made, 'Inches to')).to.equal(false);
    made.look = { unit: 'cm' };
    await made.updateComplete;
    expect(has(made, 'Inches to')).to.equal(false);
    made.look = {};
    await made.updateComplete;
    expect([has(made, 'Unit'), has(made, 'Inches to')]).to.deep.equal([false, true]);
    await accessible(made);
  });

  it('emphasis, place and border are put on and taken off', async () => {
    const made = await panel({ strong: true, border: 'below' });
    const [asked, input, off] = [heard<LookChange>(made, 'tt-look'), heard(made, 'tt-mark-input'), heard(made, 'tt-look-off')];
    for (const name of ['Strong', 'Italic', 'Input, to be filled in']) {
      await tabTo(made, field(made, name));
      await press('Space');
    }
    await tabTo(made, field(made, 'Stands'));
    await sendKeys({ type: 'In the middle' });
    await tabTo(made, field(made, 'Border'));
    await sendKeys({ type: 'None' });
    await tabTo(made, button(made, 'Show as if nothing was chosen'));
    await press('Enter');
    expect(asked).to.deep.equal([{ strong: undefined }, { italic: true }, { align: 'centre' }, { border: undefined }]);
    expect([input.length, off.length]).to.deep.equal([1, 1]);
  });

  it('shows what the cell has, however often it is asked for something else', async () => {
    const made = await panel({ italic: true });
    const box = field<HTMLInputElement>(made, 'Italic');
    expect(box.checked).to.equal(true);
    await tabTo(made, box);
    await press('Space');
    // The app could not grant it.
    made.requestUpdate();
    await made.updateComplete;
    expect(box.checked).to.equal(true);
  });

  it('changes nothing where nothing can be changed', async () => {
    const made = await panel();
    made.readonly = true;
    await made.updateComplete;
    expect([...made.renderRoot.querySelectorAll('fieldset')].every(({ disabled }) => disabled)).to.equal(true);
    expect(find<HTMLButtonElement>(made, '.off').disabled).to.equal(true);
  });
});
