/** From an empty start to “this size, this ease, this much cloth”, by the keyboard alone; then a new set of measures for the same person in her next garment. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press, soon, words } from './app.ts';

beforeEach(function () { this.currentTest!.timeout(180_000); });

const title = (app: App): string => words(app.part('h1').textContent);
const CHART = ['Measure (cm),10,12,14,16,18,20', 'Bust,80,84,88,92,97,102', 'Waist,62,66,70,74,79,85', 'Hip,87,91,95,99,104,109'];

async function begin(app: App): Promise<void> {
  await app.run('Start my own: who, which garment, which unit…');
  await soon(() => app.page.querySelector('tt-start-own'), 'the questions are there');
  await soon(() => app.focused?.id === 'who', 'the first question has the focus');
}

/** Presses Start, and goes on in the workbook that opens. */
async function started(app: App, wanted: string): Promise<void> {
  const before = app.window.document;
  await app.tabTo('Start');
  await press('Enter');
  await soon(() => app.window.document !== before && words(app.window.document.querySelector('tt-app')?.shadowRoot?.querySelector('h1')?.textContent) === wanted, 'the new workbook does not open');
  // Once more, so that the journey watches this page too.
  await app.reload();
}

it('a dress for somebody new, then a skirt for her with what worked', async () => {
  const app = await App.open();
  await begin(app);
  await app.tabTo('Name');
  await sendKeys({ type: 'Nora' });
  await app.tabTo('Dress');
  await press('Space');
  await app.tabTo('Bust');
  await sendKeys({ type: '36 1/2 in' });
  await app.tabTo('Waist');
  await sendKeys({ type: '77' });
  await app.tabTo('Hip');
  await sendKeys({ type: '98.5' });
  await app.tabTo('Rows of the chart');
  for (const line of CHART) {
    await sendKeys({ type: line });
    await press('Enter');
  }
  await started(app, 'Dress');

  // Bust 92.71 cm: 16 has 92; waist 77: 18 has 79; hip 98.5: 16 has 99.
  expect([app.shown('B10'), app.shown('C10'), app.shown('D10')]).to.deep.equal(['16', '18', '16']);
  // 92 + 8 − 92.71, 79 + 4 − 77, 99 + 6 − 98.5.
  expect(['B13', 'C13', 'D13'].map((place) => app.shown(place).split(' cm')[0])).to.deep.equal(['7.3', '6.0', '6.5']);
  expect(app.errors()).to.deep.equal({});
  await app.openSheet('Measures');
  expect([app.shown('B1'), app.shown('B2')]).to.deep.equal(['Nora', '']);

  await app.run('Keep what worked on this garment…');
  await soon(() => app.focused?.id === 'whom', 'the form is there');
  await app.tabTo('Finished length');
  await sendKeys({ type: '105 cm' });
  await app.tabTo('Alterations');
  await sendKeys({ type: 'shoulder 1 cm narrower' });
  await app.tabTo('Keep what worked');
  await press('Enter');
  await soon(() => app.said.startsWith('Kept what worked for Nora'), 'it is kept');
  await app.kept();

  await begin(app);
  await soon(() => app.read('tt-start-own').includes('Nora · Dress'), 'she is known');
  await sendKeys({ type: 'Nora' });
  await app.tabTo('Dress');
  // On through the garments to the pleated skirt.
  await press('ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowDown');
  await app.tabTo('Waist');
  await press('Control+a');
  await sendKeys({ type: '76 cm' });
  expect(app.read('tt-start-own')).to.contain('Length: 105 cm');
  await started(app, 'Pleated skirt');
  expect([app.shown('B2').split(' cm')[0], app.shown('B20').split(' cm')[0]]).to.deep.equal(['76.0', '105.0']);
  expect(app.errors()).to.deep.equal({});
  expect(app.sheetNames).to.include('To remember');

  await app.run('People and their measures');
  await soon(() => app.read('tt-people').includes('Measures of Nora'), 'her measures are there');
  expect(app.inside('tt-people').querySelectorAll('thead th[scope=col] button').length, 'two sets, the old one kept').to.equal(2);
  expect(title(app)).to.equal('Pleated skirt');
  app.expectNoTrouble();
});
