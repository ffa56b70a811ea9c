import { expect } from '@open-wc/testing';
import { active, devtools, field, press, settled, sheet, type Model } from './fixture.ts';

/** A composition as the browser reports one, for the order of events that no key of a test can make. */
function say(model: Model, type: 'compositionstart' | 'compositionend', data = ''): void {
  field(model).dispatchEvent(new CompositionEvent(type, { data, bubbles: true, composed: true }));
}
function write(model: Model, text: string, inputType: string): void {
  field(model).value = text;
  field(model).dispatchEvent(new InputEvent('input', { data: text, inputType, isComposing: true, bubbles: true, composed: true }));
}

describe('an input method', () => {
  it('keeps its first key, through the browser’s own composition', async function () {
    const model = await sheet({ A1: 'old' });
    const compose = (text: string) => devtools('Input.imeSetComposition', { text, selectionStart: text.length, selectionEnd: text.length });
    if (!(await compose('b'))) this.skip();
    await settled(model);
    expect(model.grid.editing, 'opened by the first key').to.be.true;
    expect(field(model).value).to.equal('b');
    await compose('bu');
    await compose('布');
    await devtools('Input.insertText', { text: '布' });
    await settled(model);
    await devtools('Input.insertText', { text: '料' });
    await settled(model);
    expect(field(model).value).to.equal('布料');
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('布料');
    expect(active(model)).to.equal('A2');
  });

  it('has Enter and Escape to itself while it composes', async () => {
    const model = await sheet();
    say(model, 'compositionstart');
    write(model, 'ぬの', 'insertCompositionText');
    for (const key of ['Enter', 'Escape', 'ArrowDown', 'Tab']) {
      field(model).dispatchEvent(new KeyboardEvent('keydown', { key, isComposing: true, bubbles: true, composed: true, cancelable: true }));
    }
    await settled(model);
    expect(model.grid.editing).to.be.true;
    expect(model.of('tt-commit')).to.have.length(0);
    write(model, '布', 'insertCompositionText');
    say(model, 'compositionend', '布');
    // The key that ends it comes once more in some browsers, marked by its code.
    field(model).dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', keyCode: 229, bubbles: true, composed: true, cancelable: true }));
    expect(model.grid.editing).to.be.true;
    await press(model, 'Enter');
    expect(model.raw(0, 0)).to.equal('布');
  });

  it('that is given up leaves the cell as it was', async () => {
    const model = await sheet({ A1: 'old' });
    say(model, 'compositionstart');
    write(model, 'x', 'insertCompositionText');
    write(model, '', 'deleteCompositionText');
    say(model, 'compositionend');
    await settled(model);
    expect(model.grid.editing).to.be.false;
    await press(model, 'ArrowDown');
    expect(model.raw(0, 0)).to.equal('old');
  });
});
