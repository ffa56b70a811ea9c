/**
 * The main job, from a published size chart to numbers to cut by, with the keys alone.
 *
 * Chart: ASTM D5585-11e1, Standard Tables of Body Measurements for Adult Female
 * Misses Figure Type, Table 1, as on the publisher's public catalogue page. In
 * it a straight waist is 30 1/2 in at size 10 and 32 1/4 in at size 12, so that
 * 31 in stands at 10 + 2 × 0.5 / 1.75 = 10.571, and the bust of 37 in is nearest to
 * 37 1/4 in, size 10.
 */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { readQuantity, show, type Quantity } from '../../src/quantities/index.ts';
import { readRows } from '../../src/tables/index.ts';
import { App, press, soon, spaced, words } from './app.ts';

const CHART = new URL('../unit/tables/fixtures/astm-d5585-11e1-misses-in-fractions.csv', import.meta.url);

let app: App;
let kept: Awaited<ReturnType<App['everything']>>;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(function () { this.currentTest!.timeout(60_000); });
afterEach(() => app.expectNoTrouble());
after(() => app.close());

/** The rows of one of the side-by-side tables, as they are read. */
function compared(caption: string): string[][] {
  const tables = [...app.inside('tt-side-by-side').querySelectorAll('table')];
  const table = tables.find((each) => each.caption?.textContent === caption);
  if (!table) throw new Error(`No table “${caption}” beside the cells.`);
  return [...table.rows].map((row) => [...row.cells].map((cell) => cell.querySelector('input')?.value ?? (cell.localName === 'th' ? spaced(cell) : words(cell.textContent))));
}

async function comparedSoon(): Promise<string[][]> {
  const tables = () => app.inside('tt-side-by-side').querySelectorAll('table');
  await soon(() => tables().length === 2 && !app.read('tt-side-by-side').includes('Working it out'), 'no results side by side');
  return compared('Results that depend on them');
}

function rowsOf(content: ArrayBuffer): readonly (readonly string[])[] {
  const table = readRows(new Uint8Array(content));
  if ('sentence' in table) throw new Error(table.sentence);
  return table.rows;
}

/** A field of a file as its cell would show it. */
const shownAs = (raw: string): string => {
  const read = readQuantity(raw);
  return read.kind === 'quantity' ? show(read.quantity, { system: 'own', inchStep: 8 }).main.replace(/\u00a0/g, ' ') : raw;
};

function figure(raw: string): Quantity {
  const read = readQuantity(raw);
  if (read.kind !== 'quantity') throw new Error(`“${raw}” is no figure.`);
  return read.quantity;
}

it('imports the chart: a sheet and a name', async () => {
  await app.run('Size chart from a CSV file…');
  await app.choose('tt-import-chart', await (await fetch(CHART)).text(), 'astm-misses.csv');
  expect(words(app.part('[role=status]', app.inside('tt-import-chart')).textContent)).to.equal('12 sizes, 00 to 20, and 9 measures: 108 figures read, none left over.');
  await app.tabTo('Name of the chart, for formulas');
  await sendKeys({ type: 'misses' });
  await app.tabTo('Make the chart');
  await app.press('Enter');
  expect(app.openSheetName).to.equal('astm misses');
  expect(app.focusInCells, 'she goes on in the chart').to.equal(true);
  expect(app.shown('A6')).to.equal('bust girth');
  expect([app.shown('B1'), app.shown('B6'), app.shown('H10')]).to.deep.equal(['00', '31 ⅛ in', '30 ½ in']);
  expect(app.errors()).to.deep.equal({});
});

it('finds size and position on a new sheet', async () => {
  await app.run('Add a blank sheet');
  await app.run('Rename this sheet…');
  await app.tabTo('This sheet');
  await sendKeys({ type: 'Fitting' });
  await app.press('Enter');
  expect(app.openSheetName).to.equal('Fitting');
  await app.fill('A1', [
    ['Bust', '37 in'],
    ['Waist, straight', '31 in'],
    ['Nearest size at the bust', '=SIZE.AT(misses, "bust girth", B1)'],
    ['Waist between sizes', '=SIZE.BETWEEN(misses, "waist girth straight", B2)'],
    ['Size to cut', '10'],
    ['Its waist', '=SIZE.MEASURE(misses, "waist girth straight", B5)'],
    ['Room at the waist', '=EASE(B6 + 1 1/2 in, B2)'],
  ]);
  expect(app.texts()).to.deep.equal({
    A1: 'Bust', B1: '37 in', A2: 'Waist, straight', B2: '31 in',
    A3: 'Nearest size at the bust', B3: '10', A4: 'Waist between sizes', B4: '10.571',
    A5: 'Size to cut', B5: '10', A6: 'Its waist', B6: '30 ½ in', A7: 'Room at the waist', B7: '1 in',
  });
});

it('shows how a figure came about', async () => {
  await app.go('B4');
  await soon(() => app.inside('tt-working').querySelector('ol'), 'no working');
  const working = app.read('tt-working');
  expect(working).to.contain('Waist between sizes').and.to.contain('Fitting B4').and.to.contain('10.571');
  for (const figure of ['30 ½ in', '32 ¼ in', '31 in']) expect(working, 'the steps name what went in').to.contain(figure);
});

it('gives the waist a name', async () => {
  await app.go('B2');
  await app.press('Alt+n');
  await app.tabTo('Name for Fitting B2');
  await sendKeys({ type: 'straight waist' });
  await app.press('Enter', 'Escape');
  await app.go('A1');
  await app.go('straight waist');
  expect(app.active).to.equal('B2');
});

it('starts a pleated skirt that reads it', async () => {
  await app.press('Alt+t');
  await app.tabTo('Start Pleated skirt');
  await app.press('Enter');
  expect(app.openSheetName).to.equal('Pleated skirt');
  await app.put('B2', '=straight waist');
  // 31 in + 2 cm; (106 cm - 80.74 cm) / (8 pleats × 4); 106 cm + 8 × 4 × 2 1/4 in + 2 panels × 2 × 1.5 cm.
  expect([app.shown('B2'), app.shown('B6'), app.shown('B12'), app.shown('B15')]).to.deep.equal(['31 in', '31 ¾ in', '0.8 cm', '294.9 cm']);
  expect(app.errors()).to.deep.equal({});
});

it('sees everything follow when the waist changes', async () => {
  await app.openSheet('Fitting');
  await app.put('B2', '33 in');
  // 12 + 2 × 0.75 / 1.75.
  expect(app.shown('B4')).to.equal('12.857');
  await app.openSheet('Pleated skirt');
  // 33 in + 2 cm; (106 cm - 85.82 cm) / 32.
  expect([app.shown('B2'), app.shown('B6'), app.shown('B12'), app.shown('B15')]).to.deep.equal(['33 in', '33 ¾ in', '0.6 cm', '294.9 cm']);
  await app.openSheet('Fitting');
  await app.press('Control+z');
  expect([app.shown('B2'), app.shown('B4')]).to.deep.equal(['31 in', '10.571']);
  await app.put('B5', '12');
  expect([app.shown('B6'), app.shown('B7')]).to.deep.equal(['32 ¼ in', '2 ¾ in']);
  await app.press('Control+z');
  expect([app.shown('B5'), app.shown('B6'), app.shown('B7')]).to.deep.equal(['10', '30 ½ in', '1 in']);
});

it('compares two sizes side by side, and leaves the sheet as it is', async () => {
  await app.go('B5');
  const before = app.texts();
  await app.press('Alt+b', 'Escape');
  await app.tabTo('Compare over Size to cut · Fitting B5');
  await press('Enter');
  await comparedSoon();
  // She goes on in the field of the value to try.
  await sendKeys({ type: '14' });
  await press('Enter');
  await soon(() => app.read('tt-side-by-side').includes('+3 ½ in'), 'no difference');
  expect(compared('Inputs')).to.deep.equal([['Input', 'As it is', 'Tried', ''], ['Size to cut Fitting B5 ↗', '10', '14', '✕']]);
  expect(await comparedSoon()).to.deep.equal([
    ['Result', 'As it is', 'Tried', 'Difference'],
    ['Its waist Fitting B6 ↗', '30 ½ in', '34 in', '+3 ½ in'],
    ['Room at the waist Fitting B7 ↗', '1 in', '4 ½ in', '+3 ½ in'],
  ]);
  expect(app.texts()).to.deep.equal(before);
});

it('follows the sheet while the comparison stands', async () => {
  await app.tabTo('Fitting B5 ↗', { back: true });
  await app.press('Enter');
  expect([app.focusInCells, app.active]).to.deep.equal([true, 'B5']);
  await app.put('B2', '31 1/2 in');
  await soon(() => app.read('tt-side-by-side').includes('½ in4 in'), 'the comparison does not follow');
  expect((await comparedSoon()).at(-1)).to.deep.equal(['Room at the waist Fitting B7 ↗', '½ in', '4 in', '+3 ½ in']);
  await app.press('Control+z', 'Escape');
  await soon(() => app.read('tt-side-by-side').includes('1 in4 ½ in'), 'the comparison does not go back');
});

it('saves the comparison', async () => {
  await app.tabTo('Save as CSV…');
  await press('Enter');
  await app.tabTo('Save the file');
  const file = await app.nextFile(() => press('Enter'));
  expect(rowsOf(await file.blob.arrayBuffer())).to.deep.equal([
    ['Place', 'Input or result', 'As it is', 'Tried', 'Tried less As it is'],
    ['Fitting B5', 'Size to cut', '10', '14', ''],
    ['Fitting B6', 'Its waist', '30 1/2 in', '34 in', '3 1/2 in'],
    ['Fitting B7', 'Room at the waist', '1 in', '4 1/2 in', '3 1/2 in'],
  ]);
  await app.tabTo('Close', { back: true });
  await app.press('Enter');
  expect(app.focusInCells).to.equal(true);
});

it('keeps the sheet as a template, its inputs marked', async () => {
  for (const place of ['B1', 'B2', 'B5']) {
    await app.go(place);
    await app.press('Alt+i');
    expect(app.spoken(place)).to.contain('to fill in');
  }
  await app.run('Keep this sheet as a template…');
  expect(app.read('tt-templates')).to.contain('3 cells are marked as inputs');
  await app.tabTo('Note: what it is for, what worked');
  await sendKeys({ type: 'for skirts with a band' });
  await app.tabTo('Keep it');
  await app.press('Enter');
  await soon(() => app.said === 'Kept as the template “Fitting”.', 'it is not kept');
});

it('finds all of it after a reload', async () => {
  kept = await app.everything();
  await app.kept();
  await app.reload();
  expect(await app.everything()).to.deep.equal(kept);
  expect(Object.keys(kept)).to.include.members(['astm misses', 'Fitting', 'Pleated skirt']);
  await app.openSheet('Fitting');
  await app.press('Alt+n');
  const names = [...app.inside('tt-names').querySelectorAll('tbody tr')].map((row) => `${row.querySelector('input')!.value}: ${words(row.children[1]!.textContent)}`);
  expect(names).to.include.members(['misses: astm misses A1:M10 size chart', 'straight waist: Fitting B2']);
  await app.press('Escape');
  await app.openSheet('Pleated skirt');
  await app.put('B2', '32 in');
  expect(app.shown('B12'), 'and goes on working').to.equal('0.7 cm');
  await app.press('Control+z');
  expect(app.texts()).to.deep.equal(kept['Pleated skirt']);
});

it('starts another sheet from the template', async () => {
  await app.press('Alt+t');
  const templates = app.inside('tt-templates');
  expect(words(app.part('ul', templates).textContent)).to.contain('Fitting for skirts with a band');
  await app.tabTo('Start Fitting');
  await app.press('Enter');
  expect(app.openSheetName).to.equal('Fitting 2');
  expect(app.texts()).to.deep.equal(kept['Fitting']);
  expect(app.spoken('B2')).to.contain('to fill in');
});

it('saves the sheet as CSV that reads back equal, as shown and exactly', async () => {
  await app.openSheet('Fitting');
  await app.run('Save this sheet as CSV…');
  await app.tabTo('Save the file');
  const shown = await app.nextFile(() => press('Enter'));
  expect(shown.name).to.match(/Fitting\.csv$/);
  const rows = rowsOf(await shown.blob.arrayBuffer());
  expect(rows).to.have.length(7);
  for (const [at, row] of rows.entries()) expect(row.map(shownAs)).to.deep.equal([app.shown(`A${at + 1}`), app.shown(`B${at + 1}`)]);

  await app.run('Save this sheet as CSV…');
  await app.tabTo('As they are shown');
  await press('ArrowDown');
  await app.tabTo('Save the file');
  const exact = await app.nextFile(() => press('Enter'));
  const values = rowsOf(await exact.blob.arrayBuffer()).map(([, raw]) => figure(raw!));
  const inch = 25.4;
  [37 * inch, 31 * inch, 10, 10 + 2 * 0.5 / 1.75, 10, 30.5 * inch, inch].forEach((value, at) => expect(values[at]!.value).to.be.closeTo(value, 1e-9));
  expect(values.map(({ unit }) => unit)).to.deep.equal(['in', 'in', '', '', '', 'in', 'in']);
});
