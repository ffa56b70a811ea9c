/** Every state of the page, in every look and at every size: axe passes, the active cell can be seen, nothing needs to be scrolled both ways. */
import { expect, waitUntil } from '@open-wc/testing';
import { emulateMedia, executeServerCommand, sendKeys, setViewport } from '@web/test-runner-commands';
import type { Desk } from '../../src/app/desk.ts';
import { App } from './app.ts';

let app: App;

/** 1360, and what is left of 1280 x 1024 at 200 % and 400 %. */
const SIZES = { wide: { width: 1360, height: 860 }, tablet: { width: 820, height: 1000 }, phone: { width: 390, height: 844 }, 'at 200 %': { width: 640, height: 512 }, 'at 400 %': { width: 320, height: 256 } };
const LOOKS = {
  light: { colorScheme: 'light' }, dark: { colorScheme: 'dark' }, 'colours forced': { forcedColors: 'active' },
} as const;

const grid = (): ShadowRoot => app.inside('tt-grid');
const desk = (): Desk => (app.part('tt-app', app.window.document) as HTMLElement & { desk: Desk }).desk;

/** The active cell's middle belongs to it, or to the editor over it. */
function expectActiveSeen(state: string): void {
  const active = app.part('.cell[id]', grid());
  const { left, top, right, bottom } = active.getBoundingClientRect();
  const inside = app.part('tt-grid').getBoundingClientRect();
  // Of a cell wider than the view its beginning.
  const [x, y] = [Math.min((left + right) / 2, inside.right - 4), Math.min((top + bottom) / 2, inside.bottom - 4)];
  const hit = grid().elementFromPoint(x, y);
  expect(hit === active || active.contains(hit) || hit?.closest('.cell-editor, .handle, .threads') !== null, `${state}: over ${active.id} lies ${hit?.outerHTML.slice(0, 120)}`).to.equal(true);
}

const dialogOpen = (tag: string) => waitUntil(() => app.inside(tag).querySelector<HTMLDialogElement>('dialog')!.open, `${tag} does not open`);

const CELLS: Record<string, () => Promise<unknown>> = {
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
  'an error in a cell': async () => { await app.put('F2', '=B2+'); await app.go('F2'); },
};

/** Taken back afterwards: so many steps. */
const STEPS: Record<string, number> = { 'a filter on': 1, 'rows kept in view, rows hidden': 2, 'an error in a cell': 1 };

const PANELS: Record<string, () => Promise<unknown>> = {
  'find and replace': async () => { await app.press('Control+Alt+f'); await sendKeys({ type: 'waist' }); await waitUntil(() => app.inside('tt-find').querySelector('[role=status]')!.textContent!.includes('found')); },
  'nothing found': async () => { await app.press('Control+f'); await sendKeys({ type: 'zzzz' }); },
  'how cells show': async () => { await app.go('B11'); await app.press('Alt+Shift+F'); },
  history: () => app.press('Alt+Shift+H'),
};

const DIALOGS: Record<string, () => Promise<unknown>> = {
  'a note': async () => { await app.go('B11'); await app.press('Alt+Shift+N'); await dialogOpen('tt-note'); },
  'sorting rows': async () => { await app.go('B11'); await app.press('Alt+Shift+S'); await dialogOpen('tt-sort'); },
  'rows that match': async () => { await app.go('B11'); await app.press('Alt+Shift+M'); await dialogOpen('tt-filter'); },
  'the list of commands': async () => { await app.press('Control+.'); await dialogOpen('tt-command-list'); },
};

/** What stands in the way of trusting the page: said in the banner and beside the title. */
const TROUBLES: Record<string, () => Promise<unknown>> = {
  'a filter on': async () => {
    await app.go('B11');
    desk().do({ do: 'setFilter', sheet: desk().sheetId, filter: { area: { top: 10, left: 0, bottom: 14, right: 2 }, conditions: [{ col: 0, test: 'has', text: 'a' }], hides: [[12, 13]] } });
    await waitUntil(() => desk().sheet.filter);
  },
  'the sums stopped': async () => { desk().engine!.stop(); await waitUntil(() => app.page.querySelector('.banner.fault')); },
  'not kept': async () => {
    desk().keepState = { state: 'not kept', why: 'full', sentence: 'There is no room left for it on this device.', waiting: 2 };
    desk().say('');
    await waitUntil(() => app.page.querySelector('.banner.fault')?.textContent?.includes('Not kept'));
  },
};

const AFTER: Record<string, () => Promise<unknown>> = {
  'the sums stopped': async () => { desk().engine!.open(); await app.settled(); },
  // The next edit that is kept says so.
  'not kept': async () => { await app.put('F2', 'kept'); await app.kept(); await app.press('Control+z'); await app.kept(); },
};

const STATES: Record<string, () => Promise<unknown>> = { ...CELLS, ...PANELS, ...DIALOGS, ...TROUBLES };

/** What axe has to say of the whole page. */
const faults = async (): Promise<readonly string[]> => await executeServerCommand('axe') as readonly string[];

async function leave(state: string): Promise<void> {
  await AFTER[state]?.();
  await app.press('Escape', 'Escape');
  if (!app.focusInCells) await app.press('Escape');
  for (let steps = STEPS[state] ?? 0; steps > 0; steps--) await app.press('Control+z');
}

describe('the page', function () {
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
      // Colours do not depend on the size: each look is looked through in full once, each size once.
      const full = size === 'wide' || look === 'light';
      it(`${size}, ${look}`, async () => {
        await setViewport(viewport);
        await emulateMedia(media as { colorScheme: 'light' });
        const wrong: string[] = [];
        for (const [state, reach] of Object.entries(full ? STATES : { 'at rest': CELLS['at rest']! })) {
          await reach();
          // Buttons fade from one colour to another.
          await new Promise((done) => setTimeout(done, 200));
          expect(app.window.document.documentElement.scrollWidth, `${state}: the page itself does not scroll across`).to.be.at.most(viewport.width);
          if (state in CELLS && !/menu|words/.test(state)) expectActiveSeen(state);
          wrong.push(...(await faults()).map((fault) => `${state}: ${fault}`));
          await leave(state);
        }
        expect(wrong).to.deep.equal([]);
      });
    }
  }

  it('with less motion asked for, moves nothing', async () => {
    await setViewport(SIZES.phone);
    await emulateMedia({ reducedMotion: 'reduce' });
    await app.go('B11');
    await app.press('Alt+Shift+H');
    const moving: string[] = [];
    const look = (root: ParentNode): void => {
      for (const each of root.querySelectorAll('*')) {
        const { transitionDuration, animationName, scrollBehavior } = app.window.getComputedStyle(each);
        if (/[1-9]/.test(transitionDuration) || animationName !== 'none' || scrollBehavior === 'smooth') moving.push(`${each.localName}.${each.className}`);
        if (each.shadowRoot) look(each.shadowRoot);
      }
    };
    look(app.page);
    await emulateMedia({ reducedMotion: 'no-preference' });
    expect([...new Set(moving)]).to.deep.equal([]);
    await app.press('Escape');
  });
});
