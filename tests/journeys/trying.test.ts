/** Other values than those in the sheet, with the keys alone: worked back to, run through, kept side by side. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, soon, spaced, words } from './app.ts';
import { nameOf } from './words.ts';

let app: App;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(function () { this.timeout(60_000); });
afterEach(() => app.expectNoTrouble());
after(() => app.close());

const text = (tag: string): string => words(app.inside(tag).textContent);
const rowsOf = (tag: string, caption: string): string[][] => {
  const table = [...app.inside(tag).querySelectorAll('table')].find((each) => each.caption?.textContent === caption);
  return [...table?.rows ?? []].map((row) => [...row.cells].map((cell) => cell.querySelector('input')?.value ?? (cell.localName === 'th' ? spaced(cell) : words(cell.textContent))));
};
/** By the Tab key, unless the focus is there already. */
async function come(name: string, back = false): Promise<void> {
  const at = app.focused;
  if (!at || !nameOf(at).startsWith(name)) await app.tabTo(name, { back });
}
/** Replaces what stands in a field. */
async function write(name: string, what: string, back = false): Promise<void> {
  await come(name, back);
  await app.press('Control+a');
  await sendKeys({ type: what });
  await app.press('Tab');
}
async function push(name: string, back = false): Promise<void> {
  await come(name, back);
  await app.press('Enter');
}

const CELLS = [['Waist', '74 cm'], ['Pleats', '8'], ['Depth', '5 cm'], ['Flat width', '=PLEAT.CLOTH(B1, B2, B3, "box", 1.5 cm)'], ['Spacing', '=PLEAT.SPACING(B1, B2)']];

describe('working back', () => {
  it('finds the depth for the cloth she has, and leaves the sheet as it is', async () => {
    await app.run('Add a blank sheet');
    await app.run('Rename this sheet…');
    await app.tabTo('This sheet');
    await sendKeys({ type: 'Pleating' });
    await app.press('Enter');
    await app.fill('A1', CELLS);
    expect(app.shown('B4')).to.equal('237.0 cm');
    await app.go('B4');
    await app.press('Alt+k');
    await soon(() => text('tt-work-back').includes('Depth: 5.0 cm'), 'no figures to change');
    const before = app.texts();
    // The field of what is wanted has the focus.
    await sendKeys({ type: '220 cm' });
    await app.press('Tab');
    await push('Depth: 5.0 cm');
    await push('Work it out');
    // 74 + 2 × 16 × depth + 3 = 220: depth 4.46875 cm; to the millimetre 4.5 cm, which gives 221 cm.
    await soon(() => text('tt-work-back').includes('This gives exactly 220.0 cm.'), 'no answer');
    expect(text('tt-work-back')).to.contain('4.5 cm (1 ¾ in)').and.to.contain('The nearest to 220.0 cm that can be cut.').and.to.contain('Gives 221.0 cm (87 in).').and.to.contain('4.4688 cm');
    expect(app.texts()).to.deep.equal(before);
  });

  it('puts the answer in as one change, which can be undone', async () => {
    await push('Put 4.5 cm into Pleating B3', true);
    expect([app.shown('B3'), app.shown('B4')]).to.deep.equal(['4.5 cm', '221.0 cm']);
    expect(app.said).to.equal('Put 4.5 cm into Depth · Pleating B3.');
    await app.press('Escape');
    expect(app.focusInCells).to.equal(true);
    await app.press('Control+z');
    expect([app.shown('B3'), app.shown('B4')]).to.deep.equal(['5.0 cm', '237.0 cm']);
  });

  it('goes in whole numbers for a count, and says why there is no exact answer', async () => {
    await app.go('B4');
    await app.press('Alt+k');
    await push('Leave Depth as it is');
    await push('Pleats: 8');
    await push('Work it out');
    await soon(() => text('tt-work-back').includes('No whole number gives exactly 220.0 cm: 7 gives 217.0 cm, and 8 gives 237.0 cm.'), 'no reason');
    expect(text('tt-work-back')).to.contain('Put 7 into Pleating B2');
  });

  it('says when the sheet has changed since', async () => {
    await app.press('Escape');
    await app.put('B1', '70 cm');
    await app.press('Alt+k');
    await soon(() => text('tt-work-back').includes('The sheet has changed since this was worked out. Work it out again.'), 'it does not say that it is out of date');
    await app.press('Escape', 'Control+z');
    expect(app.shown('B1')).to.equal('74.0 cm');
  });
});

describe('a run of values', () => {
  it('goes from one to another, with the pins along the way, and is kept', async () => {
    await app.go('B2');
    await app.press('Alt+r');
    await push('Run over Pleats · Pleating B2');
    await soon(() => rowsOf('tt-run-of-values', 'What comes of each').length > 1, 'no run');
    await write('Pleats, from', '6');
    await write('Pleats, to', '9');
    await soon(() => rowsOf('tt-run-of-values', 'What comes of each').length === 5, 'not from 6 to 9');
    const rows = rowsOf('tt-run-of-values', 'What comes of each');
    expect(rows.map((row) => row.slice(0, 3))).to.deep.equal([
      ['Pleats', 'Flat width ✕', 'Spacing ✕'], ['6', '197.0 cm', '12.3 cm'], ['7', '217.0 cm', '10.6 cm'], ['8 as it is', '237.0 cm', '9.3 cm'], ['9', '257.0 cm', '8.2 cm'],
    ]);
    // Box pleats meet on the wrong side when a fold is half the face: 5 cm deep, 10 cm wide.
    expect(rows.map((row) => row[3])).to.deep.equal(['Pins', '', '', '⚑ 1', '⚑ 1']);
    expect(text('tt-run-of-values')).to.contain('⚑ Flat width · Pleating B4, from 8 to 9.');
    expect(app.inside('tt-run-of-values').querySelectorAll('figure svg').length).to.equal(2);
  });

  it('goes out as a table', async () => {
    await push('Save as CSV…', true);
    await app.tabTo('Save the file');
    const file = await app.nextFile(() => app.press('Enter'));
    const lines = (await file.blob.text()).trimEnd().split('\r\n');
    expect(lines.map((line) => line.split(',').slice(0, 3).join())).to.deep.equal(['Pleats,Flat width,Spacing', '6,197.0 cm,12.3 cm', '7,217.0 cm,10.6 cm', '8,237.0 cm,9.3 cm', '9,257.0 cm,8.2 cm']);
    await app.press('Escape');
    expect(app.focusInCells).to.equal(true);
  });
});

describe('cases side by side', () => {
  it('are as many as she likes, and the picture of each is drawn', async () => {
    await app.go('B2');
    await app.press('Alt+b', 'Escape');
    await push('Compare over Pleats · Pleating B2');
    await soon(() => rowsOf('tt-side-by-side', 'Results that depend on them').length === 3, 'no results');
    await write('Pleats, Tried', '10');
    await push('Add a case');
    await write('Pleats, Case 3', '12', true);
    await soon(() => rowsOf('tt-side-by-side', 'Results that depend on them').at(-1)?.at(-1) === '−3.1 cm', 'no third case');
    await app.tabTo('Differences from');
    await app.press('ArrowDown', 'Tab');
    await soon(() => rowsOf('tt-side-by-side', 'Results that depend on them')[0]?.at(-1) === 'Case 3 less Tried', 'not the difference from the second');
    expect(rowsOf('tt-side-by-side', 'Results that depend on them').slice(1)).to.deep.equal([
      ['Flat width Pleating B4 ↗', '237.0 cm', '277.0 cm', '317.0 cm', '−40.0 cm', '+40.0 cm'], ['Spacing Pleating B5 ↗', '9.3 cm', '7.4 cm', '6.2 cm', '+1.9 cm', '−1.2 cm'],
    ]);
    await app.tabTo('Picture of');
    await app.press('ArrowDown', 'Enter');
    await soon(() => app.inside('tt-side-by-side').querySelectorAll('figure svg').length === 3, 'no pictures');
    await app.press('Alt+b');
    expect(app.focusInCells).to.equal(true);
  });

  it('are kept with the workbook and follow their cells', async () => {
    await app.go('A1');
    await app.press('Alt+Insert');
    await app.kept();
    await app.reload();
    await app.openSheet('Pleating');
    await app.press('Alt+b', 'Escape');
    await soon(() => rowsOf('tt-side-by-side', 'Results that depend on them').length === 3, 'no results after loading again');
    expect(rowsOf('tt-side-by-side', 'Inputs')[1]?.slice(0, 4)).to.deep.equal(['Pleats Pleating B3 ↗', '8', '10', '12']);
    expect(rowsOf('tt-side-by-side', 'Results that depend on them')[2]?.[0]).to.equal('Spacing Pleating B6 ↗');
    await app.press('Alt+b');
    await app.press('Alt+r');
    await soon(() => rowsOf('tt-run-of-values', 'What comes of each').length === 5, 'no run after loading again');
    await app.press('Escape');
  });

  it('are put into the sheet as one change', async () => {
    await app.press('Alt+b', 'Escape');
    await push('Put Case 3 in');
    expect([app.shown('B3'), app.shown('B5')]).to.deep.equal(['12', '317.0 cm']);
    await app.press('Alt+b');
    await app.press('Control+z');
    expect(app.shown('B3')).to.equal('8');
  });
});
