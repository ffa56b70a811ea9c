import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { RenamePanel, Titles } from '../../../src/panels/index.ts';
import '../../../src/panels/rename.ts';
import { accessible, find, heard, press, tabTo } from './support.ts';

const TITLES: Titles = { title: 'Tea dress', person: 'Aunt Oda', sheet: 'Fit', about: 'size and ease' };

async function panel(): Promise<RenamePanel> {
  const made = await fixture<RenamePanel>(html`<tt-rename></tt-rename>`);
  made.open(TITLES);
  await made.updateComplete;
  return made;
}
const fields = (made: RenamePanel): HTMLInputElement[] => [...made.renderRoot.querySelectorAll('input')];
const isOpen = (made: RenamePanel): boolean => find<HTMLDialogElement>(made, 'dialog').open;

describe('what garment and sheet are called', () => {
  it('is changed by keys', async () => {
    const made = await panel();
    const wished = heard<Titles>(made, 'tt-rename');
    expect(fields(made).map(({ value }) => value)).to.deep.equal(['Tea dress', 'Aunt Oda', 'Fit', 'size and ease']);
    await accessible(made);
    await tabTo(made, fields(made)[2]!);
    await sendKeys({ type: 'Fitting' });
    await press('Tab', 'Delete', 'Enter');
    expect(wished).to.deep.equal([{ ...TITLES, sheet: 'Fitting', about: '' }]);
    expect(isOpen(made), 'the app closes it, when the names will do').to.equal(true);
    made.close();
    expect(isOpen(made)).to.equal(false);
  });

  it('stays as typed when it is refused, with a sentence', async () => {
    const made = await panel();
    await tabTo(made, fields(made)[2]!);
    await sendKeys({ type: 'Size chart' });
    await press('Enter');
    made.sentence = 'There is a sheet “Size chart” already.';
    await made.updateComplete;
    expect(fields(made)[2]!.value).to.equal('Size chart');
    expect(find(made, '[role=alert]').textContent).to.equal('There is a sheet “Size chart” already.');
    await accessible(made);
  });

  it('needs names for the garment and the sheet, and starts anew when it was closed', async () => {
    const made = await panel();
    const wished = heard<Titles>(made, 'tt-rename');
    await tabTo(made, fields(made)[0]!);
    await press('Delete', 'Enter');
    expect([wished.length, isOpen(made)]).to.deep.equal([0, true]);
    await press('Escape');
    expect(isOpen(made)).to.equal(false);
    made.open(TITLES);
    await made.updateComplete;
    expect(fields(made)[0]!.value).to.equal('Tea dress');
  });
});
