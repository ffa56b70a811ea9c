/** A pin that is met, mended, acknowledged and met again, with the keys alone. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, soon, words } from './app.ts';

let app: App;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(function () { this.timeout(60_000); });
afterEach(() => app.expectNoTrouble());
after(() => app.close());

/** "3 pins" beside the open sheet in the list; empty for none. */
const counted = (): string => words(app.inside('tt-sheet-list').querySelector('[aria-current] .count')?.textContent ?? '');
const marks = (): string[] => [...app.inside('tt-grid').querySelectorAll('.pin')].map((each) => each.className);
const panel = (): string => words(app.part('aside tt-pins').shadowRoot?.textContent ?? '');

describe('a pin', () => {
  it('is put on the cell whose figures go wrong, told at the foot of the page, and counted in the list of sheets', async () => {
    await app.run('Add a blank sheet');
    await app.fill('A1', [['Finished', '90 cm'], ['Body', '94.03 cm'], ['Ease', '=EASE(B1, B2)']]);
    expect(marks()).to.deep.equal(['pin']);
    expect(counted()).to.equal('1 pin');
    await app.go('B3');
    expect(words(app.part('footer').textContent)).to.contain('it needs at least 94.1 cm. Alt + M puts 94.1 cm in B1.');
  });

  it('is mended by a key, and comes back when that is undone', async () => {
    await app.press('Alt+M');
    expect(app.shown('B1')).to.equal('94.1 cm');
    expect(marks()).to.deep.equal([]);
    expect(app.said).to.contain('B1 of New sheet is 94.1 cm now');
    await app.press('Control+z');
    expect(app.shown('B1')).to.equal('90.0 cm');
    expect(marks()).to.deep.equal(['pin']);
  });

  it('is acknowledged with a note, which is kept with it through a reload', async () => {
    await app.go('B3');
    await app.press('Alt+Shift+A');
    await sendKeys({ type: 'a knit that gives' });
    await app.press('Enter');
    expect(panel()).to.contain('a knit that gives');
    expect(marks()).to.deep.equal(['pin settled']);
    expect(counted()).to.equal('');
    await app.kept();
    await app.reload();
    await app.openSheet('New sheet');
    expect(marks()).to.deep.equal(['pin settled']);
  });

  it('moves with its row, and comes back when a figure changes', async () => {
    await app.go('A1');
    await app.press('Alt+Insert');
    expect(marks()).to.deep.equal(['pin settled']);
    await app.put('B2', '89 cm');
    expect(marks()).to.deep.equal(['pin']);
    expect(counted()).to.equal('1 pin');
  });

  it('is gone to from anywhere, over the sheets', async () => {
    await app.go('A9');
    for (let steps = 0; steps < 12 && app.openSheetName !== 'New sheet'; steps++) await app.press('Alt+P');
    await app.openSheet('New sheet');
    await app.go('A1');
    await app.press('Alt+P');
    expect(app.active).to.equal('B4');
    await app.press('Alt+Shift+P');
    await soon(() => app.focused?.getAttribute('aria-label')?.includes('B4'), 'the panel does not begin at the pin of the cell');
    await app.press('Escape');
    expect(app.focusInCells).to.equal(true);
  });
});
