/** The list for the shop, worked by keys. */
import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { Candidate, PutWish, ShoppingItem, ShoppingList, ToBuyPanel } from '../../../src/panels/index.ts';
import '../../../src/panels/to-buy.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts, words } from './support.ts';

const area = { sheet: 1, top: 1, bottom: 1, left: 6, right: 6 };
const item = (what: string, more: Partial<ShoppingItem> = {}): ShoppingItem => ({
  id: what, what, width: { main: '140.0 cm', also: '55 ⅛ in' }, buy: { main: '2.30 m', also: '2 yd 18 ½ in' }, by: '', fault: false, enough: false,
  needed: { main: '2.15 m' }, home: null, needs: [{ words: 'skirt', main: '2.15 m', also: '2 yd 12 ⅝ in', area }], cost: '42.55', cautions: [], bought: { state: 'no' },
  cells: [{ area, place: 'To buy G14' }], ...more,
});
const LIST: ShoppingList = {
  items: [
    item('Main cloth', { cautions: ['No shrinkage is allowed for.'] }),
    item('Lining', { bought: { state: 'changed', was: '1.2 m' } }),
    item('Thread', { width: null, buy: { main: '1' }, by: 'reel, 100 m each', bought: { state: 'yes' } }),
    item('Zip', { fault: true, buy: { main: 'C9 has no value yet.' }, cost: '' }),
    item('Buttons', { enough: true, buy: { main: '0' }, home: { main: '11' }, width: null }),
  ],
  unlisted: [{ what: 'Velvet', words: 'collar', main: '30 cm', area }], total: '85.10', unpriced: 1,
};
const CANDIDATE: Candidate = { place: 'Cloth length, Skirt B26', figure: { main: '229.5 cm', also: '90 ⅜ in' }, what: 'Main cloth', purpose: 'Skirt', wide: true, listed: false };

async function panel(candidate: Candidate | null = null): Promise<ToBuyPanel> {
  const made = await fixture<ToBuyPanel>(html`<tt-to-buy .list=${LIST} .candidate=${candidate} .things=${['Main cloth', 'Lining']}></tt-to-buy>`);
  made.focus();
  return made;
}

describe('the list to buy', () => {
  it('says what to ask for, what it costs together and what lacks a price', async () => {
    const made = await panel();
    expect(texts(made, '.what')).to.deep.equal(['Main cloth, 140.0 cm (55 ⅛ in) wide', 'Lining, 140.0 cm (55 ⅛ in) wide', 'Thread', 'Zip, 140.0 cm (55 ⅛ in) wide', 'Velvet', 'Buttons']);
    expect(texts(made, '.how')).to.deep.equal(['2.30 m (2 yd 18 ½ in)', '2.30 m (2 yd 18 ½ in)', '1 × reel, 100 m each']);
    expect(texts(made, '.total span')).to.deep.equal(['Together', '85.10']);
    expect(texts(made, '.caution')).to.deep.equal(['No shrinkage is allowed for.', '1.2 m was bought, and the figure is another now.']);
    expect(texts(made, '.fault')).to.deep.equal(['C9 has no value yet.']);
    expect(words(find(made, '[role=status]').textContent)).to.equal('3 things are to be bought, of 4.');
    await accessible(made);
  });

  it('begins at the first box, and ticks by the space bar', async () => {
    const made = await panel();
    const ticks = heard<{ id: string; bought: boolean }>(made, 'tt-bought');
    expect(focused(made)?.getAttribute('aria-label')).to.equal('Bought: Main cloth');
    await press('Space');
    expect(ticks).to.deep.equal([{ id: 'Main cloth', bought: true }]);
    expect(find<HTMLInputElement>(made, '[aria-label="Bought: Zip"]').disabled).to.equal(true);
  });

  it('puts the selected cell on the list: what is meant is typed over', async () => {
    const made = await panel(CANDIDATE);
    const wishes = heard<PutWish>(made, 'tt-put');
    expect((focused(made) as HTMLInputElement).value).to.equal('Main cloth');
    await sendKeys({ type: 'Wool crepe' });
    await press('Tab', 'Tab');
    await sendKeys({ type: '150 cm' });
    await press('Enter');
    expect(wishes).to.deep.equal([{ what: 'Wool crepe', purpose: 'Skirt', width: '150 cm' }]);
    await accessible(made);
    // Another cell begins with its own words.
    made.candidate = { ...CANDIDATE, place: 'Interfacing length, Band B23', what: 'Interfacing', purpose: 'Band' };
    await made.updateComplete;
    expect(find<HTMLInputElement>(made, '[name=what]').value).to.equal('Interfacing');
  });

  it('asks for nothing to ask for no more', async () => {
    const made = await panel(CANDIDATE);
    const wishes = heard<PutWish>(made, 'tt-put');
    await press('Delete', 'Enter');
    expect(wishes).to.deep.equal([]);
    made.candidate = { ...CANDIDATE, listed: true };
    await made.updateComplete;
    expect(made.renderRoot.querySelector('[name=what]')).to.equal(null);
    expect(words(find(made, 'form').textContent)).to.contain('It is on the list already.');
  });

  it('goes to cells, copies, saves and prints', async () => {
    const made = await panel();
    const [gone, rows, copied, saved, printed] = [heard(made, 'tt-go'), heard<{ what: string }>(made, 'tt-list-row'), heard(made, 'tt-copy-list'), heard<{ as: string }>(made, 'tt-save-list'), heard(made, 'tt-print-list')];
    await tabTo(made, button(made, 'Go to a need of Main cloth: skirt 2.15 m (2 yd 12 ⅝ in)'));
    await press('Enter');
    await tabTo(made, button(made, 'Work out how much Velvet to buy'));
    await press('Enter');
    for (const name of ['Copy', 'Save as text', 'Save as CSV', 'Print…']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    expect(gone).to.deep.equal([{ area }]);
    expect(rows.map(({ what }) => what)).to.deep.equal(['Velvet']);
    expect([copied.length, saved.map(({ as }) => as), printed.length]).to.deep.equal([1, ['text', 'csv'], 1]);
  });
});
