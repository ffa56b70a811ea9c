import { expect } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import { lineField, middle, press, settled, sheet, type } from './fixture.ts';

describe('the entry line', () => {
  it('shows where the active cell is and what was typed in it', async () => {
    const model = await sheet({ B2: '=EASE(A1, A2)' });
    await press(model, 'ArrowDown', 'ArrowRight');
    expect(model.line.renderRoot.querySelector<HTMLInputElement>('#where')!.value).to.equal('B2');
    expect(lineField(model).value).to.equal('=EASE(A1, A2)');
    expect(model.line.renderRoot.querySelector('.underlay .t-function')!.textContent).to.equal('EASE');
  });

  it('asks to go to what is typed in its place', async () => {
    const model = await sheet();
    model.line.renderRoot.querySelector<HTMLInputElement>('#where')!.focus();
    await type(model, 'full bust');
    await press(model, 'Enter');
    expect(model.of('tt-go')).to.deep.equal([{ text: 'full bust' }]);
  });

  it('gives names and takes them away', async () => {
    const model = await sheet();
    const button = model.line.renderRoot.querySelector<HTMLElement>('.where button')!;
    await sendMouse({ type: 'click', position: middle(button) });
    await settled(model);
    await type(model, 'hem');
    await press(model, 'Enter');
    model.line.name = 'hem';
    await settled(model);
    await sendMouse({ type: 'click', position: middle(button) });
    await settled(model);
    const take = [...model.line.renderRoot.querySelectorAll('button')].find((each) => each.textContent === 'Take it away')!;
    await sendMouse({ type: 'click', position: middle(take) });
    expect(model.of('tt-name')).to.deep.equal([{ text: 'hem' }, { text: '' }]);
  });

  it('goes back to the cells by Escape, leaving the text as it was', async () => {
    const model = await sheet({ A1: 'waist' });
    lineField(model).focus();
    await type(model, ' line');
    await press(model, 'Escape');
    expect(model.of('tt-commit')).to.have.length(0);
    expect(lineField(model).value).to.equal('waist');
    expect(document.activeElement).to.equal(model.grid);
  });

  it('says what is wrong, tied to the field', async () => {
    const model = await sheet();
    model.line.fault = 'EASE needs a length for body; it got 91 without a unit: write 91 cm.';
    await settled(model);
    const note = model.line.renderRoot.querySelector(`#${lineField(model).getAttribute('aria-describedby')}`)!;
    expect(note.textContent).to.contain('write 91 cm');
    await expect(model.line).to.be.accessible();
  });
});
