/** More than one workbook, files, and a damaged start: nothing that is here is ever touched. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press, soon, words } from './app.ts';

beforeEach(function () { this.currentTest!.timeout(120_000); });

const title = (app: App): string => words(app.part('h1').textContent);
const shelfSays = (app: App): string => app.read('tt-shelf');
const cards = (app: App): string[] => [...app.inside('tt-shelf').querySelectorAll('h4')].map((each) => words(each.textContent));

/** Does something after which the page opens another workbook. */
async function opening(app: App, act: () => Promise<unknown>, wanted: RegExp): Promise<void> {
  const before = app.window.document;
  // The page may be gone before it says that it is settled.
  await act().catch(() => undefined);
  await soon(() => app.window.document !== before && wanted.test(words(app.window.document.querySelector('tt-app')?.shadowRoot?.querySelector('h1')?.textContent)), 'the other workbook does not open');
  // Once more, so that the journey watches this page too.
  await app.reload();
}

async function cardButton(app: App, label: string): Promise<void> {
  await app.tabTo(label);
  await press('Enter');
  await app.settled();
}

it('a new workbook, a copy, the bin, and back to the first: each keeps its own figures', async () => {
  const app = await App.open();
  const first = title(app);
  await app.openSheet('Measures');
  await app.put('B3', '96 cm');
  await app.kept();

  await opening(app, () => app.run('New workbook'), /^$/);
  await app.type('only here');
  await app.kept();
  await app.run('Workbooks on this device…');
  await soon(() => cards(app).length === 2, 'both stand on the shelf');
  expect(cards(app)).to.deep.equal(['Workbook without a title', first]);

  await cardButton(app, 'Rename: Workbook without a title');
  await sendKeys({ type: 'Sunday skirt' });
  await press('Enter');
  await soon(() => title(app) === 'Sunday skirt', 'the open one is renamed');
  await cardButton(app, 'Copy: Sunday skirt');
  await soon(() => cards(app).includes('Sunday skirt (copy)'), 'the copy is there');
  await cardButton(app, 'Delete: Sunday skirt (copy)');
  await soon(() => shelfSays(app).includes('Gone for good in 30 days.'), 'it lies in the bin');

  await opening(app, () => cardButton(app, `Open: ${first}`), new RegExp(`^${first}$`));
  await app.openSheet('Measures');
  expect(app.shown('B3')).to.equal('96.0 cm');
  app.expectNoTrouble();
  app.close();
});

it('a copy saved as a file opens as one more workbook, also when it is damaged', async () => {
  const app = await App.open();
  const first = title(app);
  Object.assign(app.window, { showSaveFilePicker: undefined });
  const file = await app.nextFile(() => app.run('Save a copy as a file…'));
  expect(file.name).to.match(/\.json$/);
  const text = await file.blob.text();
  expect(text).to.contain('"checksum"');
  await soon(() => app.said.startsWith('Saved a copy'), 'it says so');

  await app.run('Workbooks on this device…');
  await app.choose('tt-shelf', 'size;bust\n36;84', 'chart.csv');
  await soon(() => shelfSays(app).includes('“chart.csv” was not opened.'), 'a foreign file is refused');
  expect(cards(app)).to.deep.equal([first]);

  await app.choose('tt-shelf', text.slice(0, text.length / 2), 'half.json');
  await soon(() => shelfSays(app).includes('cut off or damaged'), 'it says what is missing');
  expect(cards(app), 'nothing happened yet').to.deep.equal([first]);
  await opening(app, () => cardButton(app, 'Keep that part and open it'), new RegExp(`^${first}$`));
  await app.run('Workbooks on this device…');
  await soon(() => cards(app).length === 2, 'the part stands beside the first');
  app.expectNoTrouble();
  app.close();
});

it('hostile text in a file is only text', async () => {
  const app = await App.open();
  const hostile = '<img src=x onerror="window.top.hacked=1"><script>window.top.hacked=1</script>';
  const content = {
    format: 'tape-and-tally/workbook', version: 1, id: '__proto__', title: hostile, person: 'javascript:alert(1)', settings: { show: 'cm', inchStep: 8 }, nextSheetId: 2,
    sheets: [{ id: 1, name: '"><svg onload=alert(1)>', about: hostile, widths: [], cells: [
      [0, 0, hostile], [0, 1, '74 cm', { note: hostile }], [1, 0, '\u202Egnp.exe'], [1, 1, '1e308'], [2, 1, '9'.repeat(400)], [3, 0, '{{constructor.constructor("top.hacked=1")()}}'], [4, 1, '=1e308*10'],
    ] }],
    names: [{ name: 'constructor', kind: 'cells', area: [1, 0, 1, 0, 1] }],
  };
  await app.run('Workbooks on this device…');
  await opening(app, () => app.choose('tt-shelf', JSON.stringify(content), 'hostile.json'), /^<img/);
  expect(title(app)).to.equal(words(hostile));
  expect(app.shown('A1')).to.equal(words(hostile));
  for (const text of Object.values(app.texts())) expect(text).not.to.match(/NaN|Infinity|undefined|\[object/);
  expect((window as { hacked?: number }).hacked).to.equal(undefined);
  expect(({} as { onerror?: unknown }).onerror).to.equal(undefined);
  app.expectNoTrouble();
  app.close();
});
