/** The size for each level, chosen with the keys alone: measures in inches on a chart in centimetres, and into the sheet as one change. */
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

const panel = (): string => words(app.inside('tt-size-choice').textContent);

async function write(name: string, what: string): Promise<void> {
  await app.tabTo(name);
  await app.press('Control+a');
  await sendKeys({ type: what });
  await app.press('Tab');
}

describe('choosing the size', () => {
  it('takes the measures that the workbook has by name, and says sizes and reasons', async () => {
    await app.run('Add a blank sheet');
    await app.press('Alt+Shift+Z');
    await soon(() => app.page.querySelector('tt-size-choice')?.shadowRoot?.querySelector('.answer')?.textContent, 'no answer');
    expect(app.focused?.id).to.equal('chart');
    expect(panel()).to.contain('Bust: size').and.to.contain('Hip: size');
    expect(app.inside('tt-size-choice').querySelector<HTMLInputElement>('#measure-bust')?.value).to.equal('=bust');
  });

  it('follows measures typed in inches, and refuses none of them without a word', async () => {
    // Linden’s size 14 is 88, 70 and 95 cm; its hip of size 18 is 104 cm.
    await write('High bust', '33 in');
    await write('Bust', '34 5/8 in');
    await write('Waist', 'twenty-eight');
    expect(panel()).to.contain('“twenty-eight” is no length');
    await app.tabTo('Waist', { back: true });
    await write('Waist', '27 1/2 in');
    await write('Hip', '41 in');
    await soon(() => panel().includes('Cut size 14 at the bust, 14 at the waist and 18 at the hip.'), 'no sizes');
    expect(panel()).to.contain('From size 14 to size 18 over 8 in (usual).');
  });

  it('goes into the sheet as formulas that give the same, and is undone as one', async () => {
    await app.tabTo('Put it in the sheet');
    await app.press('Enter');
    await app.settled();
    expect(app.focusInCells).to.equal(true);
    expect(['C3', 'C4', 'C5'].map((cell) => app.shown(cell))).to.deep.equal(['14', '14', '18']);
    expect(app.shown('B5')).to.equal('41 in');
    expect(app.errors()).to.deep.equal({});
    await app.put('B5', '37 1/2 in');
    await app.settled();
    expect(app.shown('C5')).to.equal('14');
    await app.press('Control+z', 'Control+z');
    await app.settled();
    expect(app.said).to.contain('put sizes by level');
    expect(app.texts()).to.deep.equal({});
  });
});
