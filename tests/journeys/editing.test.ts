/** Writing, changing, moving and taking back, with the keys alone. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press } from './app.ts';

type Texts = ReturnType<App['texts']>;

let app: App;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(async function () {
  this.timeout(60_000);
  this.currentTest!.timeout(60_000);
  await app.run('Add a blank sheet');
});
afterEach(async () => {
  // Should a test have ended in a dialog.
  await press('Escape');
  app.expectNoTrouble();
});
after(() => app.close());

const SKIRT = [['Waist', '76 cm'], ['Ease', '2 cm'], ['Finished', '=B1 + B2'], ['Half', '=B3 / 2'], ['In inches', '=CONVERT(B3, "in")']];

async function typedIn(place: string): Promise<string> {
  await app.go(place);
  return app.typed;
}

it('takes back every edit, and does it again, to the letter', async () => {
  await app.fill('A1', SKIRT);
  const seen: Texts[] = [app.texts()];
  const then = async (act: () => Promise<unknown>) => {
    await act();
    const texts = app.texts();
    expect(texts, 'an edit that shows').not.to.deep.equal(seen.at(-1));
    seen.push(texts);
  };
  await then(() => app.put('B1', '30 1/2"'));
  await then(async () => { await app.go('A2'); await app.press('Delete'); });
  await then(() => app.put('C1', '=B1 * 2 + 1,5 cm'));
  await then(async () => { await app.go('A2'); await app.press('Alt+Insert'); });
  await then(async () => { await app.go('B1'); await app.press('Alt+Shift+Insert'); });
  await then(async () => { await app.go('C1'); await app.press('Control+c'); await app.go('F9'); await app.press('Control+v'); });
  await then(async () => { await app.go('C3'); await app.press('Control+x'); await app.go('E4'); await app.press('Control+v'); });
  await then(async () => { await app.go('C4'); await app.press('Alt+Delete'); });
  await then(async () => { await app.go('A1'); await app.press('F2', 'Home'); await sendKeys({ type: 'Natural ' }); await app.press('Enter'); });
  await then(() => app.run('Show lengths in both systems'));

  for (let at = seen.length - 2; at >= 0; at--) {
    await app.press('Control+z');
    expect(app.texts(), `taken back to ${at}`).to.deep.equal(seen[at]);
  }
  for (let at = 1; at < seen.length; at++) {
    await app.press('Control+Shift+Z');
    expect(app.texts(), `done again to ${at}`).to.deep.equal(seen[at]);
  }
  await app.run('Show each length in the unit it was typed in');
});

it('lets references follow rows that come and go', async () => {
  await app.fill('A1', SKIRT);
  await app.go('A2');
  await app.press('Shift+ArrowDown', 'Alt+Insert');
  expect([app.shown('A4'), app.shown('B5'), app.shown('B6')]).to.deep.equal(['Ease', '78.0 cm', '39.0 cm']);
  expect([await typedIn('B5'), await typedIn('B6')]).to.deep.equal(['=B1 + B4', '=B5 / 2']);
  await app.put('B4', '4 cm');
  expect(app.shown('B5')).to.equal('80.0 cm');
  await app.go('A2');
  await app.press('Shift+ArrowDown', 'Alt+Delete');
  expect([await typedIn('B3'), app.shown('B3')]).to.deep.equal(['=B1 + B2', '80.0 cm']);
  await app.go('B2');
  await app.press('Alt+Delete');
  expect([await typedIn('B2'), app.shown('B2'), app.remark]).to.deep.equal(['=B1 + #REF!', 'Points at cells that were removed.', 'Points at cells that were removed.']);
  await app.press('Control+z');
  expect([await typedIn('B3'), app.shown('B3')]).to.deep.equal(['=B1 + B2', '80.0 cm']);
});

it('copies cells so that formulas read their own neighbours, and moves them so that nothing changes', async () => {
  await app.fill('A1', SKIRT);
  await app.fill('D1', [['100 cm'], ['6 cm']]);
  await app.go('B3');
  await app.press('Shift+ArrowDown', 'Control+c');
  await app.go('D3');
  await app.press('Control+v');
  expect([app.shown('D3'), app.shown('D4'), await typedIn('D3')]).to.deep.equal(['106.0 cm', '53.0 cm', '=D1 + D2']);
  await app.go('B1');
  await app.press('Control+x');
  await app.go('F7');
  await app.press('Control+v');
  expect([app.shown('F7'), await typedIn('B3'), app.shown('B3')]).to.deep.equal(['76.0 cm', '=F7 + B2', '78.0 cm']);
});

it('gives cells to other programs as text, and takes theirs', async () => {
  await app.fill('A1', SKIRT);
  await app.go('A1');
  await app.press('Shift+ArrowRight', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Control+c');
  const elsewhere = document.createElement('textarea');
  document.body.append(elsewhere);
  elsewhere.focus();
  await press('Control+v');
  expect(elsewhere.value).to.equal('Waist\t76.0 cm\nEase\t2.0 cm\nFinished\t78.0 cm');
  elsewhere.value = 'Hip\t39 1/2"\nRoom\t1/2 in';
  elsewhere.select();
  await press('Control+c');
  elsewhere.remove();
  await app.click('D1');
  await app.press('Control+v');
  expect([app.shown('D1'), app.shown('E1'), app.shown('E2')]).to.deep.equal(['Hip', '39 ½ in', '½ in']);
  await app.put('E3', '=E1 + E2');
  expect(app.shown('E3')).to.equal('40 in');
});

it('names a cell at the entry line; formulas read it, and follow its new name', async () => {
  await app.fill('A1', SKIRT);
  await app.go('B1');
  await press('Escape', 'Shift+Tab', 'Shift+Tab', 'Enter', 'Escape');
  await app.settled();
  expect(app.focused?.localName, 'giving it up comes back to the button').to.equal('button');
  await press('Enter');
  await sendKeys({ type: 'skirt waist' });
  await app.press('Enter');
  expect(app.focusInCells, 'she goes on in the cells').to.equal(true);
  await app.put('D1', '=skirt waist + 2 in');
  expect(app.shown('D1')).to.equal('81.1 cm');
  await app.run('Names…');
  await app.tabTo('Name of New sheet 5 B1');
  await sendKeys({ type: 'band' });
  await app.press('Enter', 'Escape');
  expect([await typedIn('D1'), app.shown('D1')]).to.deep.equal(['=band + 2 in', '81.1 cm']);
  await app.go('band');
  expect(app.active).to.equal('B1');
});

it('lets formulas follow sheets that are renamed, moved, removed and brought back', async () => {
  const looked = ['Measures', 'Skirt', 'To buy'];
  const before = await app.everything(looked);
  await app.openSheet('Skirt');
  await app.run('Rename this sheet…');
  await app.tabTo('This sheet');
  await sendKeys({ type: 'Box pleats, 2026' });
  await app.press('Enter');
  await app.openSheet('To buy');
  expect([await typedIn('C2'), app.shown('C2')]).to.deep.equal(["='Box pleats, 2026'!B26", before['To buy']!.C2]);
  await app.run('Move this sheet up the list');
  await app.openSheet('Box pleats, 2026');
  await app.run('Remove this sheet');
  await app.openSheet('To buy');
  expect(Object.keys(app.errors())).to.include('C2');
  await app.press('Control+z', 'Control+z', 'Control+z');
  expect(await app.everything(looked)).to.deep.equal(before);
});

it('says in a sentence what is wrong, and keeps what was typed', async () => {
  const wrong: readonly (readonly [string, RegExp])[] = [
    ['=76 cm + 3', /^3 has no unit: write 3 cm or 3 in\.$/],
    ['=1 / 0', /^Divides by 0\b/],
    ['=EASE(2 cm', /^The bracket after ‘EASE’ is not closed/],
    ['=NOSUCH(2)', /^There is no function NOSUCH\b/],
    ['=thimble + 2 cm', /^There is no name ‘thimble’ in this workbook/],
    ['=SIZE.AT(chart, "thimble", 30 cm)', /^The size chart has no measure called “thimble”; it has bust, waist, hip/],
    ['=EASE("wide", 3 cm)', /^EASE needs a length for finished, and “wide” is a text\.$/],
    ['=A8 + 1', /\bitself\b/],
    ['=A20 + 2 cm', /^A20 has no value yet\.$/],
    ['2 5/4 in', /^The fraction of “2 5\/4” is not below 1/],
    ['1/0 in', /^“1\/0” divides by 0: write a fraction/],
  ];
  await app.fill('A1', wrong.map(([raw]) => [raw]));
  for (const [at, [raw, sentence]] of wrong.entries()) {
    const place = `A${at + 1}`;
    await app.go(place);
    expect(app.typed, 'kept as typed').to.equal(raw);
    expect(app.shown(place), raw).to.match(sentence);
    expect(app.spoken(place), raw).to.match(/^Error: /);
    // After it may stand what would mend it, or where it began.
    expect(app.remark.slice(0, app.shown(place).length), raw).to.equal(app.shown(place));
  }
  // Nothing of it went away; mending the first one is enough for a result.
  await app.put('A1', '=76 cm + 3 cm');
  expect(app.shown('A1')).to.equal('79.0 cm');
});

it('shows nothing for a cell that reads an empty one, and keeps an unknown unit as text with a remark', async () => {
  await app.fill('A1', [['=A20'], ['3 furlong']]);
  expect([app.shown('A1'), app.errors()]).to.deep.equal(['', {}]);
  await app.go('A2');
  expect([app.typed, app.shown('A2')]).to.deep.equal(['3 furlong', '3 furlong']);
  expect(app.remark).to.match(/“furlong” is not a unit known here/);
  await app.put('A20', '4 cm');
  expect(app.shown('A1')).to.equal('4.0 cm');
});

it('goes straight down after Enter, where a run of Tabs was left by going elsewhere', async () => {
  await app.fill('A1', [['Waist', '76 cm']]);
  await app.put('D1', '100 cm');
  expect(app.active).to.equal('D2');
});
