/** Every state of the cells on the page, in every look and at every size: axe passes, the active cell can be seen, nothing needs to be scrolled both ways. */
import { expect, waitUntil } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import { App } from './app.ts';

let app: App;

/** 1360, and what is left of 1280 x 1024 at 200 % and 400 %. */
const SIZES = { wide: { width: 1360, height: 860 }, tablet: { width: 820, height: 1000 }, phone: { width: 390, height: 844 }, 'at 200 %': { width: 640, height: 512 }, 'at 400 %': { width: 320, height: 256 } };
const LOOKS = {
  light: { colorScheme: 'light' }, dark: { colorScheme: 'dark' }, 'colours forced': { forcedColors: 'active' },
} as const;

const grid = (): ShadowRoot => app.inside('tt-grid');

/** The active cell's middle belongs to it, or to the editor over it. */
function expectActiveSeen(): void {
  const active = app.part('.cell[id]', grid());
  const { left, top, right, bottom } = active.getBoundingClientRect();
  const inside = app.part('tt-grid').getBoundingClientRect();
  // Of a cell wider than the view its beginning.
  const [x, y] = [Math.min((left + right) / 2, inside.right - 4), Math.min((top + bottom) / 2, inside.bottom - 4)];
  const hit = grid().elementFromPoint(x, y);
  expect(hit === active || active.contains(hit) || hit?.closest('.cell-editor, .handle, .threads') !== null, `over the active cell lies ${hit?.outerHTML.slice(0, 120)}`).to.equal(true);
}

const STATES: Record<string, () => Promise<unknown>> = {
  'at rest': () => app.go('B13'),
  'a block selected': async () => { await app.go('B2'); await app.press('Shift+ArrowDown', 'Shift+ArrowRight'); },
  'a cell edited': async () => { await app.go('B11'); await sendKeys({ press: 'F2' }); },
  'a formula typed, words offered': async () => { await app.go('F2'); await sendKeys({ type: '=EASE(B12, si' }); },
  'threads shown': async () => { await app.go('B2'); await app.press('Alt+Shift+U'); await waitUntil(() => grid().querySelector('.tag')); },
  'the menu open': async () => { await app.go('B2'); await app.press('Shift+F10'); await waitUntil(() => app.inside('tt-cell-menu').querySelector('.menu:popover-open')); },
  'rows kept in view, rows hidden': async () => {
    await app.go('B3');
    await app.run('Keep the rows above and the columns to the left in view');
    await app.go('A6:A8');
    await app.run('Hide the rows');
    await app.go('B14');
  },
};

async function leave(state: string): Promise<void> {
  await app.press('Escape', 'Escape');
  if (state.startsWith('rows kept')) await app.press('Control+z', 'Control+z');
}

describe('the cells', function () {
  this.timeout(240_000);

  before(async () => {
    app = await App.open();
    await app.openSheet('Fit');
  });
  afterEach(async () => {
    await emulateMedia({ colorScheme: 'light' });
    await emulateMedia({ forcedColors: 'none' });
    app.expectNoTrouble();
  });
  after(() => app.close());

  for (const [size, viewport] of Object.entries(SIZES)) {
    for (const [look, media] of Object.entries(LOOKS)) {
      it(`${size}, ${look}`, async () => {
        await setViewport(viewport);
        await emulateMedia(media as { colorScheme: 'light' });
        for (const [state, reach] of Object.entries(STATES)) {
          await reach();
          expect(app.window.document.documentElement.scrollWidth, `${state}: the page itself does not scroll across`).to.be.at.most(viewport.width);
          if (!/menu|words/.test(state)) expectActiveSeen();
          for (const part of ['tt-grid', 'tt-entry-line', 'tt-cell-menu']) {
            await expect(app.part(part), `${state}: ${part}`).to.be.accessible();
          }
          await leave(state);
        }
      });
    }
  }
});
