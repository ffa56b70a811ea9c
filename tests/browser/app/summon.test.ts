/** Panels that come when they are first asked for, and what is said when they cannot come. */
import { expect, fixture, html, waitUntil } from '@open-wc/testing';
import { demoBook } from '../../../src/app/demo.ts';
import { Desk } from '../../../src/app/desk.ts';
import type { App } from '../../../src/app/shell.ts';
import '../../../src/app/shell.ts';
import { NOT_FETCHED, summon } from '../../../src/app/summon.ts';
import { LATER, type LaterTag } from '../../../src/panels/later.ts';
import { focused, press, words } from '../panels/support.ts';

const loaders = LATER as Record<LaterTag, () => Promise<unknown>>;

async function page(): Promise<{ app: App; desk: Desk }> {
  const desk = new Desk(demoBook('summon'));
  const app = await fixture<App>(html`<tt-app .desk=${desk}></tt-app>`);
  return { app, desk };
}

const dialog = (app: App, tag: LaterTag) => app.renderRoot.querySelector(tag)?.shadowRoot?.querySelector('dialog') ?? null;

describe('a panel that is not here yet', () => {
  it('stands in the page as nothing, comes when it is asked for, and takes the focus', async () => {
    const { app } = await page();
    expect(customElements.get('tt-names')).to.equal(undefined);
    await press('Alt+n');
    await waitUntil(() => dialog(app, 'tt-names')?.open, 'the names do not open', { timeout: 10_000 });
    expect(focused(app)?.localName).to.equal('tt-names');
    dialog(app, 'tt-names')!.close();
    summon(app, 'tt-names', (panel) => panel.open(), () => { throw new Error('it is here'); });
    expect(dialog(app, 'tt-names')!.open, 'at once, once it is here').to.equal(true);
  });

  it('shows in it what it was given before it came', async () => {
    const { app } = await page();
    await press('Alt+n');
    await waitUntil(() => dialog(app, 'tt-names')?.open);
    expect(words(dialog(app, 'tt-names')!.textContent)).to.contain('chart');
  });

  it('is fetched anew after it could not be fetched, which is said', async () => {
    const { app, desk } = await page();
    const load = loaders['tt-note'];
    loaders['tt-note'] = () => Promise.reject(new TypeError('Failed to fetch dynamically imported module'));
    try {
      await press('Alt+Shift+n');
      await waitUntil(() => desk.said === NOT_FETCHED);
      expect(focused(app)?.localName).to.equal('tt-grid');
    } finally {
      loaders['tt-note'] = load;
    }
    await press('Alt+Shift+n');
    await waitUntil(() => dialog(app, 'tt-note')?.open, 'the note does not open', { timeout: 10_000 });
  });

  it('leaves the working at the side when a panel there cannot be fetched', async () => {
    const { app, desk } = await page();
    const load = loaders['tt-find'];
    loaders['tt-find'] = () => Promise.reject(new TypeError('Failed to fetch dynamically imported module'));
    try {
      await press('Control+f');
      await waitUntil(() => desk.said === NOT_FETCHED);
      await app.updateComplete;
      expect(app.renderRoot.querySelector('aside > tt-working') === null).to.equal(false);
    } finally {
      loaders['tt-find'] = load;
    }
  });
});
