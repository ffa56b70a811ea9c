import { expect } from '@open-wc/testing';
import { devtools, field, press, sheet, settled, type, type Model } from './fixture.ts';

/** The browser's clipboard event; the system's clipboard is not a test's to write on. */
function clip(model: Model, kind: 'copy' | 'cut' | 'paste', text?: string): DataTransfer {
  const data = new DataTransfer();
  if (text !== undefined) data.setData('text/plain', text);
  const event = new ClipboardEvent(kind, { clipboardData: data, bubbles: true, composed: true, cancelable: true });
  field(model).dispatchEvent(event);
  return data;
}

describe('the clipboard', () => {
  it('gives and takes cells as text, with quotes, tabs and line breaks in them', async () => {
    const model = await sheet({ A1: '2 1/4"', B1: 'say "cut"', A2: 'tab\there', B2: 'plain' });
    model.put(2, 0, 'two\nlines');
    model.show();
    await press(model, 'Shift+ArrowRight', 'Shift+ArrowDown', 'Shift+ArrowDown');
    const data = clip(model, 'copy');
    expect(model.of('tt-copy')[0]!.area).to.deep.equal({ top: 0, left: 0, bottom: 2, right: 1 });
    expect(data.getData('text/html')).to.contain('<td>two<br>lines</td>');
    await press(model, 'ArrowDown', 'ArrowRight', 'ArrowRight');
    clip(model, 'paste', data.getData('text/plain'));
    const { row, col } = model.grid.selection.focus;
    for (const [r, c] of [[0, 0], [0, 1], [1, 0], [1, 1], [2, 0], [2, 1]] as const) expect(model.raw(row + r, col + c)).to.equal(model.raw(r, c));
  });

  it('says what was cut', async () => {
    const model = await sheet({ A1: 'x' });
    const data = clip(model, 'cut');
    expect(data.getData('text/plain')).to.equal('x');
    expect(model.of('tt-cut')).to.have.length(1);
  });

  it('copies a whole column as far as it is filled', async () => {
    const model = await sheet({ A1: '1', A2: '2' });
    await press(model, 'Control+Space');
    expect(clip(model, 'copy').getData('text/plain')).to.equal('1\n2');
  });

  it('is the text field’s own while a cell is edited', async () => {
    const model = await sheet();
    await type(model, 'abc');
    clip(model, 'copy');
    clip(model, 'paste', 'x\ty');
    expect(model.of('tt-copy')).to.have.length(0);
    expect(model.of('tt-paste')).to.have.length(0);
    await press(model, 'Escape');
  });

  it('takes nothing where nothing may be changed', async () => {
    const model = await sheet({ A1: 'a' });
    model.grid.readonly = true;
    await settled(model);
    clip(model, 'paste', 'x');
    clip(model, 'cut');
    expect(model.of('tt-paste')).to.have.length(0);
    expect(model.of('tt-cut')).to.have.length(0);
    expect(model.of('tt-copy')).to.have.length(1);
  });

  it('comes by the browser’s own commands, though nothing is selected in the text field', async () => {
    const model = await sheet({ A1: 'by key' });
    document.execCommand('copy');
    document.execCommand('cut');
    expect(model.of('tt-copy')[0]!.text).to.equal('by key');
    expect(model.of('tt-cut')[0]!.text).to.equal('by key');
  });

  it('comes by the keys, there and back', async function () {
    const model = await sheet({ A1: '2 1/4"', B1: '38 ⅝ in' });
    const key = async (letter: string, command: string) => {
      const there = await devtools('Input.dispatchKeyEvent', { type: 'keyDown', key: letter, code: `Key${letter.toUpperCase()}`, modifiers: 2, commands: [command] });
      if (there) await devtools('Input.dispatchKeyEvent', { type: 'keyUp', key: letter, code: `Key${letter.toUpperCase()}`, modifiers: 2 });
      return there;
    };
    await press(model, 'Shift+ArrowRight');
    if (!(await key('c', 'copy'))) this.skip();
    expect(model.of('tt-copy')).to.have.length(1);
    await press(model, 'ArrowDown', 'ArrowDown', 'Home');
    await key('v', 'paste');
    await settled(model);
    expect(model.of('tt-paste')).to.have.length(1);
    expect([model.raw(2, 0), model.raw(2, 1)]).to.deep.equal(['2 1/4"', '38 ⅝ in']);
  });
});
