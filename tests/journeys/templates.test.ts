/** One's own templates: kept, saved as a file, removed, opened again, started from. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press, soon, words } from './app.ts';

let app: App;
let file = '';
let texts: ReturnType<App['texts']>;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(function () { this.currentTest!.timeout(60_000); });
afterEach(async () => {
  await press('Escape');
  app.expectNoTrouble();
});
after(() => app.close());

/** The names under "Made by you". */
function own(): string[] {
  const panel = app.inside('tt-templates');
  return [...panel.querySelectorAll('li')].filter((card) => [...card.querySelectorAll('button')].some((button) => button.textContent!.startsWith('Remove'))).map((card) => words(card.querySelector('h4')!.textContent));
}
const fault = (): string => words(app.inside('tt-templates').querySelector('[role=alert]')?.textContent);

it('keeps a filled skirt as a template', async () => {
  await app.openSheet('Skirt');
  await app.put('B8', '12');
  await app.put('B9', 'knife');
  texts = app.texts();
  await app.run('Keep this sheet as a template…');
  await app.tabTo('Name');
  await sendKeys({ type: 'Twelve knife pleats' });
  await app.press('Enter');
  await soon(() => app.said === 'Kept as the template “Twelve knife pleats”.', 'it is not kept');
});

it('saves it as a file', async () => {
  await app.press('Alt+t');
  expect(own()).to.deep.equal(['Twelve knife pleats']);
  await app.tabTo('Save as a file: Twelve knife pleats');
  const saved = await app.nextFile(() => press('Enter'));
  expect(saved.name).to.equal('Twelve-knife-pleats.json');
  expect(saved.blob.type).to.equal('application/json');
  file = await saved.blob.text();
});

it('removes it, for good', async () => {
  await app.press('Alt+t');
  await app.tabTo('Remove Twelve knife pleats');
  await app.press('Enter');
  expect(own(), 'asked once more').to.deep.equal(['Twelve knife pleats']);
  expect(app.read('tt-templates')).to.contain('Removing cannot be undone.');
  await app.press('Enter');
  await soon(() => own().length === 0, 'it stays');
  await app.press('Escape');
  await app.reload();
  await app.press('Alt+t');
  expect(own()).to.deep.equal([]);
  expect(app.read('tt-templates')).to.contain('None yet.');
});

it('refuses a damaged file with a sentence, and changes nothing', async () => {
  const before = await app.everything();
  await app.press('Alt+t');
  const damaged: Record<string, [string, RegExp]> = {
    'cut short': [file.slice(0, file.length / 2), /^“cut short\.json” is not a template of this workbook: it is not JSON\. Choose a file/],
    'not ours': ['{"format": "other", "rows": []}', /^“not ours\.json” is not a template of this workbook\./],
    'a picture': ['\u0089PNG\r\n', /it is not JSON/],
    'too new': [file.replace(/"version": 1/, '"version": 99'), /^“too new\.json” is not a template of this workbook\. .*version/],
    'a list': ['[1, 2, 3]', /^“a list\.json” is not a template of this workbook\./],
  };
  for (const [name, [content, sentence]] of Object.entries(damaged)) {
    await app.choose('tt-templates', content, `${name}.json`);
    await soon(() => sentence.test(fault()), `${name}: “${fault()}”`);
    expect(own(), name).to.deep.equal([]);
  }
  await app.press('Escape');
  expect(await app.everything()).to.deep.equal(before);
});

it('opens the file again and starts a sheet from it that gives the same figures', async () => {
  await app.press('Alt+t');
  expect(fault(), 'an old sentence is gone').to.equal('');
  await app.choose('tt-templates', file, 'Twelve-knife-pleats.json');
  await soon(() => own().includes('Twelve knife pleats'), 'it is not opened');
  await app.tabTo('Start Twelve knife pleats');
  await app.press('Enter');
  expect(app.openSheetName).to.equal('Twelve knife pleats');
  expect(app.texts()).to.deep.equal(texts);
  expect(app.focusInCells, 'she goes on in the new sheet').to.equal(true);
  // 101 cm + 6 cm round the hip, 12 knife pleats of 2 × 5.715 cm, 2 panels with 1.5 cm on both sides: 107 + 137.16 + 6.
  expect(app.shown('B15')).to.equal('250.2 cm');
  expect(app.spoken('B8')).to.contain('to fill in');
});

it('says what a template misses, where the workbook has no such chart', async () => {
  await app.run('Names…');
  await app.tabTo('Remove chart');
  await app.press('Enter');
  await app.tabTo('Remove all the same');
  await app.press('Enter', 'Escape');
  await app.press('Alt+t');
  await app.tabTo('Start Fit between sizes');
  await app.press('Enter');
  expect(app.said).to.match(/^This sheet uses chart, which this workbook does not have: add a sheet or a name called so/);
  expect(app.shown('B4')).to.match(/^There is no name ‘chart’ in this workbook/);
  // Her own measures are there all the same, and the rest comes with the name.
  expect(app.shown('B2')).to.equal('92.0 cm');
  await app.openSheet('Size chart');
  await app.go('A2:H7');
  await app.run('Names…');
  await app.tabTo('Name for Size chart A2:H7');
  await sendKeys({ type: 'chart' });
  await app.tabTo('It is a size chart');
  await press('Space');
  await app.tabTo('Give the name');
  await app.press('Enter', 'Escape');
  await app.openSheet('Fit between sizes');
  expect(app.errors()).to.deep.equal({});
  expect(app.shown('B4')).to.equal('16');
});
