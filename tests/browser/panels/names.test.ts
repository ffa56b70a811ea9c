import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { NameRow, NamesPanel } from '../../../src/panels/index.ts';
import '../../../src/panels/names.ts';
import { accessible, button, find, heard, press, tabTo, texts } from './support.ts';

const NAMES: readonly NameRow[] = [
  { name: 'waist', place: 'Measures B6', lost: false, chart: false },
  { name: 'chart', place: 'Size chart A2:H7', lost: false, chart: true },
  { name: 'old hem', place: 'its cells were removed', lost: true, chart: false },
];

async function panel(names: readonly NameRow[] = NAMES): Promise<NamesPanel> {
  const made = await fixture<NamesPanel>(html`<tt-names .names=${names} .selected=${'Fit B2'}></tt-names>`);
  made.open();
  await made.updateComplete;
  return made;
}
const fields = (made: NamesPanel): HTMLInputElement[] => [...made.renderRoot.querySelectorAll<HTMLInputElement>('td input')];

describe('the names', () => {
  it('are listed with where they stand', async () => {
    const made = await panel();
    expect(fields(made).map(({ value }) => value)).to.deep.equal(['waist', 'chart', 'old hem']);
    expect(texts(made, 'tbody td:nth-child(2)')).to.deep.equal(['Measures B6', 'Size chart A2:H7 size chart', '✕ its cells were removed']);
    expect(button(made, 'Go there: old hem').disabled).to.equal(true);
    await accessible(made);
  });

  it('are gone to and removed by keys', async () => {
    const made = await panel();
    const gone = heard<{ name: string }>(made, 'tt-go-name');
    const removed = heard<{ name: string }>(made, 'tt-remove-name');
    await tabTo(made, button(made, 'Remove old hem'));
    await press('Enter');
    expect(find<HTMLDialogElement>(made, 'dialog').open).to.equal(true);
    await tabTo(made, button(made, 'Go there: chart'));
    await press('Enter');
    expect([gone, removed]).to.deep.equal([[{ name: 'chart' }], [{ name: 'old hem' }]]);
    expect(find<HTMLDialogElement>(made, 'dialog').open).to.equal(false);
  });

  it('are changed where they stand; a refused one stays there to be mended, until the next visit', async () => {
    const made = await panel();
    const renamed = heard<{ from: string; to: string }>(made, 'tt-rename-name');
    await tabTo(made, fields(made)[0]!);
    await sendKeys({ type: ' natural waist ' });
    await press('Enter');
    made.names = [{ ...NAMES[0]!, name: 'natural waist' }, ...NAMES.slice(1)];
    await made.updateComplete;
    await tabTo(made, fields(made)[1]!);
    await sendKeys({ type: 'B2' });
    await press('Enter');
    made.sentence = '“B2” looks like a cell.';
    await made.updateComplete;
    expect(renamed).to.deep.equal([{ from: 'waist', to: 'natural waist' }, { from: 'chart', to: 'B2' }]);
    expect(fields(made)[1]!.value).to.equal('B2');
    expect(find(made, '[role=alert]').textContent).to.equal('“B2” looks like a cell.');
    await press('Escape');
    made.open();
    expect(fields(made).map(({ value }) => value)).to.deep.equal(['natural waist', 'chart', 'old hem']);
  });

  it('cannot be emptied', async () => {
    const made = await panel();
    const renamed = heard(made, 'tt-rename-name');
    await tabTo(made, fields(made)[0]!);
    await press('Delete', 'Enter');
    expect([renamed.length, fields(made)[0]!.value]).to.deep.equal([0, 'waist']);
  });

  it('are given to what is selected, as a chart or not', async () => {
    const made = await panel([]);
    const given = heard<{ name: string; chart: boolean }>(made, 'tt-add-name');
    const name = find<HTMLInputElement>(made, 'form input');
    await tabTo(made, name);
    await sendKeys({ type: 'hem' });
    await press('Enter');
    await made.updateComplete;
    expect(name.value).to.equal('');
    await sendKeys({ type: 'sizes' });
    await tabTo(made, find(made, '[type=checkbox]'));
    await press('Space', 'Tab', 'Enter');
    expect(given).to.deep.equal([{ name: 'hem', chart: false }, { name: 'sizes', chart: true }]);
    await accessible(made);
  });

  it('that are refused stay in the field', async () => {
    const made = await panel();
    made.addEventListener('tt-add-name', (event) => event.preventDefault());
    const name = find<HTMLInputElement>(made, 'form input');
    await tabTo(made, name);
    await sendKeys({ type: 'waist' });
    await press('Enter');
    await made.updateComplete;
    expect(name.value).to.equal('waist');
  });
});
