/** From a result to the shop and to the cutting table, with the keys alone. */
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

const inside = (tag: string): string => words(app.part(tag).shadowRoot?.textContent ?? '');
const ticked = (): string[] => [...app.part('aside tt-to-buy').shadowRoot!.querySelectorAll<HTMLInputElement>('.tick input')].filter((each) => each.checked).map((each) => each.ariaLabel ?? '');
const total = (): string => words(app.part('aside tt-to-buy').shadowRoot!.querySelector('.total')?.textContent ?? '');
const focusedName = (): string => app.focused?.getAttribute('aria-label') ?? app.focused?.getAttribute('name') ?? '';

describe('the list to buy', () => {
  it('takes a result of any sheet by one edit, which is undone by one key', async () => {
    await app.openSheet('Circle skirt');
    await app.go('B19');
    const length = app.shown('B19');
    await app.run('Put this on the list to buy…');
    await soon(() => focusedName() === 'what', 'the list does not ask what it is');
    expect(total()).to.equal('Together85.75');
    await sendKeys({ type: 'Wool crepe' });
    await app.press('Enter');
    await soon(() => inside('aside tt-to-buy').includes('Wool crepe is on the list in To buy.'), 'it is not put on the list');
    const list = inside('aside tt-to-buy');
    expect(list).to.contain(`Circle skirt ${length}`);
    expect(list).to.contain('It is on the list already.');
    expect(list).to.contain('No shrinkage is allowed for');
    expect(list).to.contain('Without one thing that has no price yet.');
    await app.press('Escape', 'Control+z');
    expect(app.said).to.equal('Undone: put Wool crepe on the list to buy');
    await app.run('To buy: the list for the shop');
    await soon(() => !inside('aside tt-to-buy').includes('Wool crepe,'), 'it is still on the list');
    await app.press('Escape');
  });

  it('is ticked in the shop, and the tick is there the next time', async () => {
    await app.openSheet('To buy');
    await app.go('A1');
    await app.run('To buy: the list for the shop');
    await soon(() => focusedName() === 'Bought: Main cloth', 'the first box has not the focus');
    await app.press('Space');
    expect(ticked()).to.deep.equal(['Bought: Main cloth']);
    await app.kept();
    app.close();
    app = await App.openTab();
    await app.run('To buy: the list for the shop');
    await soon(() => app.frame.contentDocument!.querySelector('tt-app')!.shadowRoot!.querySelector('aside tt-to-buy')?.shadowRoot?.querySelector('.tick'), 'the list does not come');
    expect(ticked()).to.deep.equal(['Bought: Main cloth']);
    await app.press('Escape');
  });

  it('says when the cloth that was bought is another length now', async () => {
    await app.openSheet('To buy');
    await app.put('C3', '2 m');
    await app.run('To buy: the list for the shop');
    await soon(() => inside('aside tt-to-buy').includes('330 cm was bought, and the figure is another now.'), 'it does not say so');
    await app.press('Escape');
  });
});

describe('at the table', () => {
  it('goes step by step, ticks, and goes on there the next time', async () => {
    await app.run('At the table: one step after another');
    await soon(() => inside('tt-at-the-table').includes('Look at this before you cut'), 'the reading view does not come');
    await app.press('ArrowRight');
    expect(inside('tt-at-the-table')).to.contain('Blade: shut the rotary cutter');
    await app.press('ArrowRight');
    const heading = () => words(app.part('tt-at-the-table').shadowRoot!.querySelector('h3')?.textContent ?? '');
    const first = heading();
    await app.press('Space');
    expect(words(app.part('tt-at-the-table').shadowRoot!.querySelector('[aria-pressed=true]')?.textContent ?? '')).to.match(/^✓ (?:Cut|Done)$/);
    await app.press('Escape');
    await soon(() => app.focusInCells, 'the cells have not the focus');
    await app.run('At the table: one step after another');
    await soon(() => heading() !== '' && heading() !== first, 'it does not go on at the next step');
    await app.press('ArrowLeft');
    expect(heading()).to.equal(first);
    await app.press('Escape');
    await soon(() => app.focusInCells, 'the cells have not the focus');
    await app.press('Control+z');
    expect(app.said).to.equal('Undone: keep the ticks');
  });
});
