/** The page itself, with a stand-in for the engine: what no journey goes through. */
import { expect, fixture, html, waitUntil } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import { demoBook, demoOpens } from '../../../src/app/demo.ts';
import { Desk } from '../../../src/app/desk.ts';
import type { App } from '../../../src/app/shell.ts';
import '../../../src/app/shell.ts';
import { fetchLater } from '../../../src/app/summon.ts';
import { restoreTheme, setTheme } from '../../../src/app/theme.ts';
import type { KeepState, Keeper } from '../../../src/keeping/index.ts';
import type { Supervisor, SupervisorState } from '../../../src/reckoning/index.ts';
import { accessible, button, find, focused, press, tabTo, words } from '../panels/support.ts';

/** Has no results; the page shows what was typed. */
class StandInEngine extends EventTarget {
  state: SupervisorState = 'ready';
  opened = 0;
  revision = 0;
  apply = () => ++this.revision;
  open = () => { this.opened++; };
  working = () => new Promise(() => undefined);
  become(state: SupervisorState): void {
    this.state = state;
    this.dispatchEvent(new Event('state'));
  }
}

class StandInKeeper extends EventTarget {
  state: KeepState = { state: 'kept', at: null };
  retried = 0;
  keep = async () => undefined;
  retry = () => { this.retried++; };
  become(state: KeepState): void {
    this.state = state;
    this.dispatchEvent(new Event('state'));
  }
}

interface Page {
  readonly app: App;
  readonly desk: Desk;
  readonly engine: StandInEngine;
  readonly keeper: StandInKeeper;
}

async function page(width = 1280, height = 800): Promise<Page> {
  await setViewport({ width, height });
  document.body.style.margin = '0';
  const desk = new Desk(demoBook('page'));
  desk.openSheet(demoOpens(desk.book).sheet);
  const engine = new StandInEngine();
  const keeper = new StandInKeeper();
  const app = await fixture<App>(html`<tt-app .desk=${desk}></tt-app>`);
  desk.attach(engine as unknown as Supervisor, keeper as unknown as Keeper);
  await app.updateComplete;
  return { app, desk, engine, keeper };
}

const banner = ({ app }: Page): string => words(app.renderRoot.querySelector('[role=alert]')?.textContent);
const inCells = ({ app }: Page): boolean => focused(app)?.localName === 'tt-grid';

async function run(at: Page, wish: string): Promise<void> {
  await press('Control+.');
  await sendKeys({ type: wish });
  await press('Enter');
  await at.app.updateComplete;
}

afterEach(async () => {
  setTheme('auto');
  await setViewport({ width: 800, height: 600 });
});

before(fetchLater);

describe('the page', () => {
  for (const theme of ['Light: pattern tissue', 'Dark: chalk on cloth']) {
    it(`can be read by everyone: ${theme}`, async () => {
      const at = await page();
      await run(at, theme);
      await accessible(at.app);
    });
  }

  it('is light or dark as was chosen, and again the next time', async () => {
    const at = await page();
    const paper = () => getComputedStyle(at.app).backgroundColor;
    await run(at, 'Light: pattern');
    const light = paper();
    await run(at, 'Dark: chalk');
    expect(document.documentElement.dataset.theme).to.equal('dark');
    expect(paper()).not.to.equal(light);
    delete document.documentElement.dataset.theme;
    restoreTheme();
    expect(document.documentElement.dataset.theme).to.equal('dark');
    await run(at, 'as the device is');
    restoreTheme();
    expect(document.documentElement.dataset.theme).to.equal(undefined);
  });

  it('says how lengths show, and follows what is taken back', async () => {
    const at = await page();
    const pressed = () => [...at.app.renderRoot.querySelectorAll('.choice [aria-pressed=true]')].map((each) => words(each.textContent));
    const fraction = find<HTMLSelectElement>(at.app, 'header select');
    expect(pressed()).to.deep.equal(['as typed']);
    await press('Escape');
    await tabTo(at.app, button(at.app, 'in'));
    await press('Enter');
    expect(pressed()).to.deep.equal(['in']);
    await tabTo(at.app, fraction);
    await press('ArrowDown');
    await at.app.updateComplete;
    expect([at.desk.book.settings.inchStep, fraction.value]).to.deep.equal([16, '16']);
    at.desk.undo();
    await at.app.updateComplete;
    expect([at.desk.book.settings.inchStep, fraction.value]).to.deep.equal([8, '8']);
    at.desk.setReading('open in another tab');
    fraction.value = '32';
    fraction.dispatchEvent(new Event('change'));
    await at.app.updateComplete;
    expect([at.desk.book.settings.inchStep, fraction.value]).to.deep.equal([8, '8']);
  });

  it('leaves a text that is being typed its own undo', async () => {
    const at = await page();
    at.desk.do({ do: 'setTitle', title: 'Other dress', person: '' });
    await sendKeys({ type: 'abc' });
    await press('Control+z');
    expect(at.desk.book.title).to.equal('Other dress');
    await press('Escape');
    await press('Control+z');
    expect(at.desk.book.title).not.to.equal('Other dress');
  });

  it('shows what was typed before the engine is there', async () => {
    const at = await page();
    at.engine.become('starting');
    await at.app.updateComplete;
    expect(words(find(at.app, '.took').textContent)).to.equal('Getting ready…');
    at.desk.openSheet(at.desk.book.sheets.find(({ name }) => name === 'Measures')!.id);
    await at.app.updateComplete;
    const grid = find<HTMLElement & { updateComplete: Promise<unknown> }>(at.app, 'tt-grid');
    await grid.updateComplete;
    expect(words(grid.shadowRoot!.querySelector('[aria-rowindex="4"] [aria-colindex="3"]')!.textContent)).to.equal('94.0 cm');
  });
});

describe('when something stands in the way', () => {
  it('says that figures cannot be worked out, and tries again', async () => {
    const at = await page();
    at.engine.become('stopped');
    await at.app.updateComplete;
    expect(banner(at)).to.equal('The figures cannot be worked out just now. Nothing typed is lost. Try again');
    await accessible(at.app);
    await press('Escape');
    await tabTo(at.app, button(at.app, 'Try again'));
    await press('Enter');
    expect(at.engine.opened).to.equal(1);
    at.engine.become('ready');
    await at.app.updateComplete;
    expect(banner(at)).to.equal('');
  });

  it('says that nothing is kept, and why, and tries again', async () => {
    const at = await page();
    at.keeper.become({ state: 'not kept', why: 'full', sentence: 'the device is full.', waiting: 2 });
    await at.app.updateComplete;
    expect(banner(at)).to.equal('Not kept: the device is full. Try again Save a copy as a file');
    expect(words(find(at.app, '.whom').textContent)).to.contain('not kept: the device is full.');
    await press('Escape');
    await tabTo(at.app, button(at.app, 'Try again'));
    await press('Enter');
    expect(at.keeper.retried).to.equal(1);
    at.keeper.become({ state: 'kept', at: '2026-11-03T10:20:00' });
    await at.app.updateComplete;
    expect([banner(at), words(find(at.app, '.whom').textContent)]).to.deep.equal(['', 'kept at 10:20 on this device · for Aunt Oda']);
  });

  it('says in the dialog why a name is refused, the second time too', async () => {
    const at = await page();
    const rename = find(at.app, 'tt-rename').shadowRoot!;
    for (let time = 0; time < 2; time++) {
      await run(at, 'Rename this sheet');
      expect(rename.querySelector('[role=alert]') === null, 'nothing of the last visit').to.equal(true);
      const field = rename.querySelectorAll('input')[2]!;
      for (let tabs = 0; tabs < 6 && rename.activeElement !== field; tabs++) await press('Tab');
      await sendKeys({ type: 'Measures' });
      await press('Enter');
      await waitUntil(() => /Measures/.test(rename.querySelector('[role=alert]')?.textContent ?? ''), `visit ${time + 1}`, { timeout: 10_000 });
      await press('Escape');
    }
    expect(at.desk.sheet.name).to.equal('Fit');
  });
});

describe('on narrow screens', () => {
  for (const [width, height] of [[1280, 800], [1000, 700], [820, 1100], [390, 800]] as const) {
    it(`fits ${width} pixels, with targets of 24`, async () => {
      const at = await page(width, height);
      expect(document.documentElement.scrollWidth).to.be.at.most(width);
      for (const target of at.app.renderRoot.querySelectorAll<HTMLElement>('header button, header select, footer button')) {
        const box = target.getBoundingClientRect();
        if (box.width === 0) continue;
        expect(Math.min(box.width, box.height), target.outerHTML).to.be.at.least(23.9);
        expect(box.right, target.outerHTML).to.be.at.most(width + 0.5);
      }
      const cells = find(at.app, 'tt-grid').getBoundingClientRect();
      expect(cells.height, 'room for the cells').to.be.greaterThan(150);
      await accessible(at.app);
    });
  }

  it('has the sheets in a drawer: opened, walked through and closed by keys', async () => {
    const at = await page(820, 1100);
    const list = find(at.app, 'tt-sheet-list');
    const menu = button(at.app, '☰ Sheets');
    const seen = () => getComputedStyle(list).visibility === 'visible';
    expect([seen(), menu.getAttribute('aria-expanded')]).to.deep.equal([false, 'false']);
    await press('Escape');
    await tabTo(at.app, menu);
    await press('Enter');
    await waitUntil(seen, 'it is not seen', { timeout: 10_000 });
    expect(list.shadowRoot!.activeElement?.getAttribute('aria-current')).to.equal('page');
    expect(menu.getAttribute('aria-expanded')).to.equal('true');
    await accessible(at.app);
    await press('Escape');
    await waitUntil(() => !seen(), 'it stays', { timeout: 10_000 });
    expect(focused(at.app) === menu, 'back where it was opened').to.equal(true);
    await press('Enter');
    await waitUntil(seen, 'it is not seen', { timeout: 10_000 });
    const { sheets } = at.desk.book;
    const next = sheets[sheets.indexOf(at.desk.sheet) + 1]!;
    await press('Tab', 'Enter');
    await waitUntil(() => !seen(), 'it stays', { timeout: 10_000 });
    expect([at.desk.sheet.name, inCells(at)]).to.deep.equal([next.name, true]);
  });

  it('closes the drawer by a touch beside it', async () => {
    const at = await page(820, 1100);
    button(at.app, '☰ Sheets').click();
    await at.app.updateComplete;
    button(at.app, 'Close the list of sheets').click();
    await at.app.updateComplete;
    expect(at.app.renderRoot.querySelector('.veil') === null).to.equal(true);
  });

  it('has the working as a sheet from below on a phone', async () => {
    const at = await page(390, 800);
    const aside = find(at.app, 'aside');
    const seen = () => getComputedStyle(aside).visibility === 'visible';
    const opener = find(at.app, '.show-panel');
    expect(seen()).to.equal(false);
    await press('Escape');
    await tabTo(at.app, opener);
    await press('Enter');
    await waitUntil(seen, 'it is not seen', { timeout: 10_000 });
    expect(focused(at.app)?.className).to.equal('panel-close');
    await accessible(at.app);
    await press('Enter');
    await waitUntil(() => !seen(), 'it stays', { timeout: 10_000 });
    expect(focused(at.app) === opener, 'back where it was opened').to.equal(true);
    await press('Alt+b');
    await waitUntil(seen, 'it is not seen', { timeout: 10_000 });
    expect(aside.getAttribute('aria-label')).to.equal('Side by side');
  });
});
