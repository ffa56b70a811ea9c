/** What would fail a journey is seen: a test of the others' own watch. */
import { expect } from '@open-wc/testing';
import { App, soon } from './app.ts';

let app: App;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(() => { app.troubles.length = 0; });
after(() => app.close());

const seen = (what: RegExp) => soon(() => app.troubles.some((each) => what.test(each)), `${what} is not seen among ${app.troubles.join(' | ')}`);

it('sees nothing where there is nothing', () => app.expectNoTrouble());

it('sees a style attribute', async () => {
  app.window.document.body.setAttribute('style', 'color: red');
  await seen(/^policy: style-src-attr/);
  expect(() => app.expectNoTrouble()).to.throw();
});

it('sees text and scripts that are made into elements without a policy', async () => {
  expect(() => { app.window.document.createElement('p').innerHTML = '<b>bold</b>'; }).to.throw();
  expect(() => { app.window.document.createElement('script').src = '/elsewhere.js'; }).to.throw();
  await seen(/^policy: require-trusted-types-for/);
});

it('sees a connection, though the policy forbids it', async () => {
  await app.window.fetch('/package.json').catch(() => undefined);
  await seen(/^policy: connect-src/);
});

it('sees something fetched from the page’s own server', async () => {
  const picture = new app.window.Image();
  picture.src = '/nothing.png';
  await seen(/^network: .*nothing\.png/);
});

it('sees an error that nobody caught, and a promise that was given up', async () => {
  app.window.reportError(new Error('thrown in the page'));
  await seen(/^error: .*thrown in the page/);
  app.window.dispatchEvent(new PromiseRejectionEvent('unhandledrejection', { promise: Promise.resolve(), reason: 'given up' }));
  await seen(/^rejected: given up/);
});
