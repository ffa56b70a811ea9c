/** Random keys on the real page: afterwards the page shows what a page that is opened anew shows, and all of it can be taken back. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import fc from 'fast-check';
import { App } from './app.ts';
import { press } from './keys.ts';

/** Named by one string each, so that a failing run can be read. */
const keys = fc.constantFrom(
  'ArrowDown', 'ArrowRight', 'ArrowUp', 'ArrowLeft', 'Tab', 'Home', 'Control+Home', 'Control+ArrowDown', 'Control+End',
  'Shift+ArrowDown', 'Shift+ArrowRight', 'Delete', 'Control+c', 'Control+x', 'Control+v', 'Control+z', 'Control+Shift+Z',
  'Alt+Insert', 'Alt+Delete', 'Alt+Shift+Insert', 'Alt+Shift+D', 'Alt+Shift+R', 'Alt+i', 'Alt+s', 'Alt+Shift+ArrowRight', 'Alt+u', 'F2,Escape',
);
const typed = fc.constantFrom('70 cm', '2 1/4 in', '5', '=A1', '=B1+B2', '=SUM(A1:B4)', '=A2*2', 'waist', '=EASE(A1,B1)', '86–90 cm', '=C1+1 in').map((text) => `type ${text}`);
const STEPS = 160;

describe('random keys', function () {
  this.timeout(240_000);
  let app: App;

  before(async () => {
    app = await App.open();
    await app.run('Add a blank sheet');
    await app.fill('A1', [['12 cm', '=A1*2'], ['3 in', '=A2+B1']]);
  });
  after(() => app.close());

  it(`${STEPS} of them leave the page, the workbook and the engine agreeing`, async () => {
    const seed = Math.floor(Math.random() * 1e9);
    const [steps] = fc.sample(fc.array(fc.oneof({ weight: 3, arbitrary: keys }, { weight: 1, arbitrary: typed }), { minLength: STEPS, maxLength: STEPS }), { numRuns: 1, seed });
    /** Every sheet as it shows from its first cell on; she comes back to the sheet she was on. */
    const allShown = async (): Promise<Record<string, Record<string, string>>> => {
      const shown: Record<string, Record<string, string>> = {};
      const back = app.openSheetName;
      for (const name of app.sheetNames) {
        await app.openSheet(name);
        await app.press('Control+Home');
        shown[name] = app.texts();
      }
      await app.openSheet(back);
      return shown;
    };
    const start = await allShown();
    const undos = (): number => app.window.document.querySelector<HTMLElement & { desk: { history: { done: readonly unknown[] } } }>('tt-app')!.desk.history.done.length;
    const before = undos();
    for (const step of steps!) {
      if (step.startsWith('type ')) {
        await sendKeys({ type: step.slice(5) });
        await press('Enter');
      } else await press(...step.split(','));
      expect(app.focusInCells, `seed ${seed}: after ${step} she is in the cells`).to.equal(true);
    }
    await app.settled();
    const end = await allShown();
    await app.kept();
    const taken = undos() - before;
    for (let at = 0; at < taken; at++) await press('Control+z');
    await app.settled();
    expect(await allShown(), `seed ${seed}: all taken back`).to.deep.equal(start);
    for (let at = 0; at < taken; at++) await press('Control+Shift+Z');
    await app.settled();
    expect(await allShown(), `seed ${seed}: all done again`).to.deep.equal(end);
    await app.kept();
    await app.reload();
    expect(await allShown(), `seed ${seed}: as a page that is opened anew`).to.deep.equal(end);
    app.expectNoTrouble();
  });
});
