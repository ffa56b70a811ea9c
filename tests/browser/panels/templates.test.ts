import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { TemplateCard, TemplatesPanel } from '../../../src/panels/index.ts';
import '../../../src/panels/templates.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts, words } from './support.ts';

const SHIPPED: TemplateCard = { id: 'fit', name: 'Fit between sizes', note: 'Which size at bust, waist and hip.', own: false };
const OWN: TemplateCard = { id: 'mine', name: 'Sunday skirt', note: 'with pockets', own: true };

async function panel(more: Partial<TemplatesPanel> = {}): Promise<TemplatesPanel> {
  const made = await fixture<TemplatesPanel>(html`<tt-templates .templates=${[OWN, SHIPPED]} .sheetName=${'Skirt'}></tt-templates>`);
  Object.assign(made, more);
  await made.updateComplete;
  return made;
}
const dialog = (made: TemplatesPanel, id: 'start' | 'keep'): HTMLDialogElement => find<HTMLDialogElement>(made, `#${id}`);

describe('starting from a template', () => {
  it('lists one’s own before the shipped ones', async () => {
    const made = await panel();
    made.openStart();
    await made.updateComplete;
    expect(texts(made, '#start h3, #start h4')).to.deep.equal(['Made by you', 'Sunday skirt', 'Shipped with the workbook', 'Fit between sizes']);
    expect(texts(made, '#start li p')).to.deep.equal(['with pockets', 'Which size at bust, waist and hip.']);
    await accessible(made);
  });

  it('says how to get one, when there is none', async () => {
    const made = await panel({ templates: [SHIPPED] });
    made.openStart();
    expect(words(dialog(made, 'start').textContent)).to.contain('None yet. Open a sheet that worked');
    await accessible(made);
  });

  it('starts one by keys, and closes', async () => {
    const made = await panel();
    const started = heard<{ id: string }>(made, 'tt-start-template');
    made.openStart();
    await tabTo(made, button(made, 'Start Fit between sizes'));
    await press('Enter');
    expect(started).to.deep.equal([{ id: 'fit' }]);
    expect(dialog(made, 'start').open).to.equal(false);
  });

  it('saves any as a file, and stays open', async () => {
    const made = await panel();
    const saved = heard<{ id: string }>(made, 'tt-save-template');
    made.openStart();
    await tabTo(made, button(made, 'Save as a file: Sunday skirt'));
    await press('Enter');
    await tabTo(made, button(made, 'Save as a file: Fit between sizes'));
    await press('Enter');
    expect(saved).to.deep.equal([{ id: 'mine' }, { id: 'fit' }]);
    expect(dialog(made, 'start').open).to.equal(true);
  });

  it('removes only one’s own, and asks once more', async () => {
    const made = await panel();
    const removed = heard<{ id: string }>(made, 'tt-remove-template');
    made.openStart();
    await tabTo(made, button(made, 'Remove Sunday skirt'));
    expect(() => button(made, 'Remove Fit between sizes')).to.throw();
    await press('Enter');
    expect(removed).to.deep.equal([]);
    expect(find(made, '[role=alert]').textContent).to.contain('cannot be undone');
    await accessible(made);
    // Another visit asks anew.
    await press('Escape');
    made.openStart();
    await made.updateComplete;
    await tabTo(made, button(made, 'Remove Sunday skirt'));
    await press('Enter', 'Enter');
    expect(removed).to.deep.equal([{ id: 'mine' }]);
    expect(texts(made, '[role=alert]')).to.deep.equal([]);
  });

  it('opens a file, the same one twice as well, and says why one was refused', async () => {
    const made = await panel();
    const opened = heard<{ file: File }>(made, 'tt-open-template');
    made.openStart();
    await tabTo(made, button(made, 'Open a template file…'));
    for (let time = 0; time < 2; time++) {
      const files = new DataTransfer();
      files.items.add(new File(['{}'], 'skirt.json'));
      const input = find<HTMLInputElement>(made, 'input[type=file]');
      input.files = files.files;
      input.dispatchEvent(new Event('change'));
    }
    expect(opened.map(({ file }) => file.name)).to.deep.equal(['skirt.json', 'skirt.json']);
    made.sentence = '“skirt.json” is not a template of this workbook.';
    await made.updateComplete;
    expect(find(made, '[role=alert]').textContent).to.equal('“skirt.json” is not a template of this workbook.');
    await accessible(made);
  });
});

describe('keeping a sheet as a template', () => {
  it('takes the sheet’s name, a name of one’s own and a note', async () => {
    const made = await panel({ inputs: 3 });
    const kept = heard<{ name: string; note: string }>(made, 'tt-keep-template');
    made.openKeep();
    await made.updateComplete;
    expect(find<HTMLInputElement>(made, '[name=name]').value).to.equal('Skirt');
    expect(words(dialog(made, 'keep').textContent)).to.contain('3 cells are marked as inputs');
    await accessible(made);
    await tabTo(made, find(made, '[name=name]'));
    await sendKeys({ type: '  Sunday skirt ' });
    await press('Tab');
    await sendKeys({ type: 'with pockets' });
    await press('Tab');
    expect(focused(made)?.textContent).to.equal('Keep it');
    await press('Enter');
    expect(kept).to.deep.equal([{ name: 'Sunday skirt', note: 'with pockets' }]);
    expect(dialog(made, 'keep').open).to.equal(false);
  });

  it('keeps nothing without a name, or when it is closed', async () => {
    const made = await panel();
    const kept = heard(made, 'tt-keep-template');
    made.openKeep();
    await made.updateComplete;
    expect(words(dialog(made, 'keep').textContent)).to.contain('No cell is marked as an input.');
    await tabTo(made, find(made, '[name=name]'));
    await sendKeys({ type: '   ' });
    await press('Enter');
    expect(dialog(made, 'keep').open).to.equal(true);
    await press('Escape');
    expect([kept.length, dialog(made, 'keep').open]).to.deep.equal([0, false]);
  });
});
