/** The demo garment at first start, looked through as it opens. */
import { expect } from '@open-wc/testing';
import { App } from './app.ts';

const SYSTEMS = {
  own: 'Show each length in the unit it was typed in',
  cm: 'Show lengths in centimetres',
  in: 'Show lengths in inches',
  both: 'Show lengths in both systems',
} as const;

let app: App;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(function () { this.currentTest!.timeout(60_000); });
afterEach(() => app.expectNoTrouble());
after(() => app.close());

it('opens every sheet with results and without an error', async () => {
  expect(app.sheetNames).to.include.members(['Size chart', 'Measures', 'Fit', 'Skirt', 'Front fastening', 'Circle skirt', 'To buy']);
  for (const name of app.sheetNames) {
    await app.openSheet(name);
    expect(app.errors(), name).to.deep.equal({});
    expect(Object.keys(app.texts()).length, `${name} has something in it`).to.be.greaterThan(20);
    expect(Object.values(app.texts()).join(' '), name).not.to.match(/NaN|undefined|Infinity|#REF/);
  }
});

it('shows lengths in four ways, and comes back to the same texts', async () => {
  const seen = new Map<string, Record<string, Record<string, string>>>();
  for (const [system, command] of Object.entries(SYSTEMS)) {
    await app.run(command);
    seen.set(system, await app.everything());
  }
  const shown = (system: keyof typeof SYSTEMS, sheet: string, place: string) => seen.get(system)![sheet]![place]!;
  let lengths = 0;
  for (const sheet of app.sheetNames) {
    for (const place of Object.keys(seen.get('own')![sheet]!)) {
      const where = `${sheet} ${place}`;
      const [own, cm, inches, both] = [shown('own', sheet, place), shown('cm', sheet, place), shown('in', sheet, place), shown('both', sheet, place)];
      if (cm === inches) {
        expect([own, both], where).to.deep.equal([cm, cm]);
        expect(cm, where).not.to.match(/^−?[\d.]+ (?:mm|cm|m|in|yd)$/);
        continue;
      }
      lengths++;
      // One figure, or two in one cell.
      expect(cm, where).to.match(/^−?\d[\d.]*(?:–\d[\d.]*)? (?:mm|cm|m)$/);
      expect(inches, where).to.match(/^−?(?:\d+ yd )?(?:(?:\d+(?: [¼-¾⅐-⅞])?|[¼-¾⅐-⅞])–)?(?:\d+(?: [¼-¾⅐-⅞])?|[¼-¾⅐-⅞]) in$/);
      expect(own, where).to.be.oneOf([cm, inches]);
      expect(both, where).to.equal(own === cm ? `${cm} ${inches}` : `${inches} ${cm}`);
    }
  }
  expect(lengths).to.be.greaterThan(100);

  await app.run(SYSTEMS.own);
  expect(await app.everything()).to.deep.equal(seen.get('own'));
  for (const system of ['both', 'in', 'cm'] as const) {
    await app.press('Control+z');
    expect(app.texts(), `taken back to ${system}`).to.deep.equal(seen.get(system)![app.openSheetName]);
  }
});

it('shows finer fractions when asked, and keeps that choice', async () => {
  await app.openSheet('Fit');
  await app.run(SYSTEMS.in);
  // 77.5 cm is 30.51 in.
  expect(app.shown('C2')).to.equal('30 ½ in');
  await app.run('Show inches to 1/32');
  const fine = await app.everything();
  // 94 cm is 37.008 in; 101 cm is 39.764 in, nearest to 39 24/32.
  expect([app.shown('B2'), app.shown('D2')]).to.deep.equal(['37 in', '39 ¾ in']);
  // 2 cm is 0.787 in, nearest to 25/32; 92 cm is 36.22 in, nearest to 36 7/32.
  expect([app.shown('B7'), app.shown('B6')]).to.deep.equal(['25⁄32 in', '36 7⁄32 in']);
  await app.kept();
  await app.reload();
  expect(await app.everything()).to.deep.equal(fine);
});
