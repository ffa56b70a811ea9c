/**
 * The main job by someone who cannot see it: from a pasted size chart to cloth
 * to buy, by the keyboard alone, reading only what a screen reader is given.
 */
import { expect, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App } from './app.ts';
import { press } from './keys.ts';
import { Reader } from './reader.ts';

const CHART = 'size\t10\t12\t14\nbust\t32 1/2"\t34"\t36"\nwaist\t25"\t26 1/2"\t28"\nhip\t34 1/2"\t36"\t38"';

let app: App;
let her: Reader;

describe('without seeing the page', function () {
  this.timeout(180_000);

  before(async () => {
    app = await App.open();
    her = new Reader(app);
  });
  afterEach(() => app.expectNoTrouble());
  after(() => app.close());

  it('begins in the cells, which say where she is and how to go on', async () => {
    const heard = await her.heard();
    expect([heard.role, heard.name]).to.deep.equal(['textbox', app.openSheetName]);
    expect(heard.description).to.contain('Arrow keys move').and.to.contain('Escape');
    await her.press('ArrowDown');
    const { place, says } = await her.cell();
    expect(place).to.equal('B5');
    expect(says).to.not.equal('');
  });

  it('finds every control of the page by Tab, each with a name', async () => {
    await press('Escape');
    const seen = new Map<string, number>();
    for (let tabs = 0; tabs < 60; tabs++) {
      await press('Tab');
      const { role, name } = await her.heard();
      // Past the last control comes the window's own frame.
      if (['none', 'RootWebArea', 'generic'].includes(role)) continue;
      expect(name, `a ${role} without a name`).to.not.equal('');
      seen.set(`${role} ${name}`, (seen.get(`${role} ${name}`) ?? 0) + 1);
      if (seen.get(`${role} ${name}`)! > 1 && role === 'textbox') break;
    }
    expect([...seen.keys()].join('\n')).to.contain('button Commands').and.to.contain('combobox Go to a cell or a name');
  });

  it('makes a size chart of rows that she pastes', async () => {
    await her.run('Size chart from a CSV file…');
    await her.tabTo('textbox', 'Pasted rows');
    await sendKeys({ type: CHART.split('\t').join(',').replaceAll('"', ' in') });
    await her.tabTo('textbox', 'Name of the chart, for formulas');
    await press('Control+a');
    await her.say('misses');
    await her.tabTo('button', 'Make the chart');
    await her.press('Enter');
    expect(await her.read('B3')).to.contain('25').and.to.contain('in');
  });

  it('writes figures on a sheet of her own, and hears what came of them', async () => {
    await her.run('Add a blank sheet');
    await her.fill('A1', [['Waist', '27 in'], ['Nearest size', '=SIZE.AT(misses, "waist", B1)'], ['Its waist', '=SIZE.MEASURE(misses, "waist", B2)'], ['Room', '=EASE(B3 + 1 1/2 in, B1)']]);
    expect(await her.read('B1')).to.equal('27 in, typed');
    expect(await her.read('B2')).to.equal('12, worked out');
    expect(await her.read('B3')).to.equal('26 ½ in, worked out');
    expect(await her.read('B4')).to.equal('1 in, worked out');
  });

  it('hears what is wrong, in a sentence, and mends it', async () => {
    await her.fill('D1', [['=B1 + 2']]);
    expect(await her.read('D1')).to.match(/^Error: 2 has no unit: write 2 in or 2 cm\., worked out$/);
    await press('F2', 'End');
    await her.say(' in');
    await her.press('Enter');
    expect(await her.read('D1')).to.equal('29 in, worked out');
  });

  it('is offered words while she writes a formula, and hears which one', async () => {
    await her.go('D2');
    await her.say('=SIZE.');
    await waitUntil(async () => (await her.heard()).active?.role === 'option', 'no words are offered');
    const first = (await her.heard()).active!.name;
    expect(first).to.match(/^SIZE\./);
    await press('ArrowDown');
    expect((await her.heard()).active!.name).to.not.equal(first);
    await press('Escape', 'Escape');
    await app.settled();
    expect(await her.cell()).to.deep.equal({ place: 'D2', says: '' });
  });

  it('hears what a cell uses, and what uses it, and goes along', async () => {
    await her.go('B1');
    her.announced();
    await her.press('Alt+Shift+U');
    const heard: string[] = [];
    await waitUntil(() => heard.push(...her.announced()) && heard.length > 0, 'nothing is said', { timeout: 10_000 });
    expect(heard).to.deep.equal(['B1 is used by 3 places: 1 Waist, D1, 29 in; 2 Nearest size, B2, 12; 3 Room, B4, 1 in; 1 more cell depends on it through those.']);
    await her.press('Alt+j', 'Alt+j');
    expect((await her.cell()).place).to.equal('B2');
    await her.press('Alt+Shift+J');
    expect((await her.cell()).place).to.equal('B1');
  });

  it('selects, and hears how much once', async () => {
    await her.go('A1');
    her.announced();
    await her.press('Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowRight');
    await waitUntil(() => her.announced().filter((said) => said === 'A1 to B3 selected, 3 rows, 2 columns').length === 1, 'not said once', { timeout: 5_000 });
  });

  it('opens the commands of a cell as a menu, and leaves it', async () => {
    await her.go('B1');
    await her.press('Shift+F10');
    await waitUntil(async () => (await her.at()).startsWith('menuitem'), 'no menu', { timeout: 5_000 });
    expect(await her.at()).to.equal('menuitem Cut Ctrl + X');
    await press('End');
    expect(await her.at()).to.equal('menuitem All commands Ctrl + .');
    await press('ArrowDown', 'c', 'c');
    expect(await her.at()).to.match(/^menuitem C/);
    await her.press('Escape');
    expect((await her.cell()).place).to.equal('B1');
  });

  it('compares two sizes side by side', async () => {
    await her.go('B1');
    await her.press('Alt+b', 'Escape');
    await her.tabTo('button', 'Compare over Waist');
    await her.press('Enter');
    await waitUntil(async () => (await her.all('rowheader')).some((row) => row.startsWith('Its waist')), 'no results', { timeout: 20_000, interval: 200 });
    expect(await her.at()).to.match(/^textbox Waist, Tried/);
    await press('Control+a');
    await her.say('28 in');
    await her.press('Enter');
    await waitUntil(async () => (await her.all('cell')).includes('+1 ½ in'), 'it does not follow', { timeout: 20_000, interval: 200 });
    await her.tabTo('button', 'Close', { back: true });
    await her.press('Enter');
  });

  it('takes back what she did, and hears what that was', async () => {
    await her.fill('B1', [['28 in']]);
    her.announced();
    await her.press('Control+z');
    expect(her.announced().join(' ')).to.match(/Undone: .*B1/);
    expect(await her.read('B1')).to.equal('27 in, typed');
  });
});
