/** Finding a function by what one wants, trying it, and taking it into the sheet, with the keys alone. */
import { expect, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press, words } from './app.ts';

let app: App;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
  await app.run('Add a blank sheet');
});
afterEach(() => app.expectNoTrouble());
after(() => app.close());

const reference = () => app.inside('tt-reference');
const isOpen = () => app.part<HTMLDialogElement>('dialog', reference()).open;
const answer = () => words(reference().querySelector('.result')?.textContent);
const title = () => words(reference().querySelector('#card-title')?.textContent);

it('finds, tries with other figures, and puts into the cell', async () => {
  await app.go('B2');
  await press('F1');
  await sendKeys({ type: 'how deep should pleats be' });
  await press('Enter');
  await waitUntil(() => answer().startsWith('5.0 cm'), 'the example is not worked out');
  expect(title()).to.match(/^PLEAT\.DEPTH\(cloth, finished, pleats/);
  await app.tabTo('Try it');
  await press('Control+a');
  await sendKeys({ type: '=PLEAT.DEPTH(150 cm, 70 cm, 16)' });
  await press('Enter');
  await waitUntil(() => answer().startsWith('2.5 cm'), 'the changed example is not worked out');
  await app.tabTo('Put it into');
  await app.press('Enter');
  expect([isOpen(), app.focusInCells, app.active, app.typed, app.shown('B2')]).to.deep.equal([false, true, 'B2', '=PLEAT.DEPTH(150 cm, 70 cm, 16)', '2.5 cm']);
  await app.press('Control+z');
  expect(app.typed).to.equal('');
});

it('reads the workbook’s own chart once it is in a cell, and not the invented one', async () => {
  await app.go('B3');
  await press('F1');
  await sendKeys({ type: 'which size am I' });
  await press('Enter');
  await waitUntil(() => answer() === '10', 'the example with a chart is not worked out');
  await app.tabTo('Put it into');
  await app.press('Enter');
  expect([app.typed.replace(/\(.*?,/, '(…,'), app.remark]).to.deep.equal(['=SIZE.AT(…, "bust", 37 in)', '']);
  // The demo garment’s chart, which is not the one of the example.
  expect(app.shown('B3')).to.equal('16');
});

it('opens at the function that is being typed, and goes back to the text', async () => {
  await app.go('B5');
  await sendKeys({ type: '=2 * SEAM.SHIFT(2 cm, ' });
  await press('F1');
  await waitUntil(() => isOpen() && title().startsWith('SEAM.SHIFT('), 'the reference does not open at the function');
  await press('Escape');
  await waitUntil(() => app.focusInCells, 'the cells do not get the focus back');
  await sendKeys({ type: '4)' });
  await app.press('Enter');
  await app.go('B5');
  expect([app.typed, app.shown('B5')]).to.deep.equal(['=2 * SEAM.SHIFT(2 cm, 4)', '0.5 cm']);
  await press('F1');
  await waitUntil(() => title().startsWith('SEAM.SHIFT('), 'the reference does not open at the function of the cell');
  await press('Escape');
});
