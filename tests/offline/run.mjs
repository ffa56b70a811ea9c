/**
 * The app without a network, in a real browser: it is loaded once, the web host
 * is gone, the browser is started again, and a sheet is typed, worked out and
 * saved as a file. Then the host is back with a newer version: it is offered,
 * nothing happens until it is asked for, and nothing typed is lost by it.
 */
import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { bundleOffline } from '../../.ci/bundle-offline.mjs';
import { serve } from '../../.ci/serve.mjs';
import { startBrowser } from '../crash/browser.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const PATIENCE = { timeout: 20_000, polling: 50 };
/** Not at the root of its host: the app works under any path. */
const UNDER = '/some/sewing/path/';

const folder = await mkdtemp(join(tmpdir(), 'tape-and-tally-offline-'));
const profile = await mkdtemp(join(tmpdir(), 'tape-and-tally-profile-'));
const troubles = [];
let served = null;
let browser = null;

/** Runs in the page: all its words, through every shadow. */
const WORDS = `(function seen(node) {
  return [...node.childNodes].map((each) => (each.nodeType === Node.TEXT_NODE ? each.data : (each.shadowRoot ? seen(each.shadowRoot) : '') + ' ' + seen(each))).join('').replace(/\\s+/g, ' ');
})(document.body)`;

async function inPage(page, words, what) {
  const before = Date.now();
  for (;;) {
    const seen = await page.evaluate(WORDS);
    if (seen.includes(words)) return;
    if (Date.now() - before > PATIENCE.timeout) throw new Error(`${what}: “${words}” does not come. The page says: ${seen.slice(0, 3000)}`);
    await page.waitForTimeout(PATIENCE.polling);
  }
}

const workedOut = (page) => inPage(page, 'Worked out in', 'The engine');
const kept = (page) => page.waitForFunction(() => /^\s*kept (at .* )?on this device/.test(document.querySelector('tt-app')?.shadowRoot?.querySelector('.whom')?.textContent ?? ''), null, PATIENCE);
const book = (page) => page.evaluate(() => JSON.stringify(document.querySelector('tt-app').desk.book));
const cell = (page, place) => page.evaluate((index) => {
  const grid = document.querySelector('tt-app').shadowRoot.querySelector('tt-grid').shadowRoot;
  return grid.querySelector(`[aria-rowindex="${index + 1}"] > [role=gridcell][aria-colindex="2"]`)?.textContent.replace(/\s+/g, ' ').trim();
}, place);

async function open(address) {
  browser = await startBrowser(profile);
  const page = browser.context.pages()[0] ?? await browser.context.newPage();
  page.on('pageerror', ({ message }) => troubles.push(`The page threw: ${message}`));
  page.on('console', (message) => { if (/Content.Security.Policy|TrustedScript/i.test(message.text())) troubles.push(message.text()); });
  await page.goto(address);
  await kept(page);
  await workedOut(page);
  return page;
}

/** As a person closes it. */
async function close() {
  const session = await browser.context.browser().newBrowserCDPSession();
  await session.send('Browser.close').catch(() => undefined);
  await browser.kill();
  browser = null;
}

async function run(page, command) {
  await page.keyboard.press('Control+.');
  await page.keyboard.type(command);
  await page.waitForFunction((name) => document.querySelector('tt-app').shadowRoot.querySelector('tt-command-list').shadowRoot.querySelector('[role=option][aria-selected=true] span')?.textContent.startsWith(name), command, PATIENCE);
  await page.keyboard.press('Enter');
}

async function type(page, ...texts) {
  for (const text of texts) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
}

try {
  await promisify(execFile)(process.execPath, [`${root}.ci/build.mjs`, folder]);
  served = await serve(folder, { under: UNDER });
  const { address } = served;
  const port = Number(new URL(address).port);

  let page = await open(address);
  await page.evaluate(async () => { await navigator.serviceWorker.ready; });
  assert.equal(await page.evaluate(() => document.querySelector('tt-app').shadowRoot.querySelector('.banner')?.textContent ?? ''), '', 'the first version is not offered as a new one');
  await close();

  await served.stop();
  served = null;
  page = await open(address);
  await run(page, 'Add a blank sheet');
  await type(page, '94 cm', '=A1 + 5 cm', '=EASE(A2, A1)');
  await inPage(page, '99.0 cm', 'A sum without a network');
  await workedOut(page);
  assert.equal(await cell(page, 2), '99.0 cm');
  assert.equal(await cell(page, 3), '5.0 cm');
  const download = page.waitForEvent('download');
  await run(page, 'Save this sheet as CSV');
  await inPage(page, 'Save as CSV', 'The dialog for saving');
  await page.getByRole('button', { name: /^Save the file/ }).click();
  const csv = await readFile(await (await download).path(), 'utf8');
  assert.match(csv, /99/);
  await page.keyboard.press('Escape');

  // The host is back, with another version.
  const html = await readFile(`${folder}/index.html`, 'utf8');
  await writeFile(`${folder}/index.html`, html.replace('<html lang="en">', '<html lang="en" data-version="2">'));
  await bundleOffline({ root, out: folder });
  served = await serve(folder, { under: UNDER, port });
  await page.reload();
  await kept(page);
  await inPage(page, 'A new version is ready.', 'The offer');
  await page.evaluate(() => { window.sameAsBefore = true; });
  // The page comes back to the sheet that she was on.
  await page.keyboard.press('Control+Home');
  await type(page, '95 cm');
  await inPage(page, '100.0 cm', 'A sum while the new version waits');
  const before = await book(page);
  assert.deepEqual(await page.evaluate(() => [window.sameAsBefore, document.documentElement.dataset.version ?? '1']), [true, '1'], 'the page goes on as it was');
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.waitForFunction(() => document.documentElement.dataset.version === '2', null, PATIENCE);
  await kept(page);
  await workedOut(page);
  assert.equal(await book(page), before, 'the workbook is as it was typed');
  await inPage(page, '100.0 cm', 'The result after the new version');
  await close();
  assert.deepEqual(troubles, []);
  console.log('Offline: opened, worked out, saved and brought up to date; nothing lost.');
} finally {
  await browser?.kill();
  await served?.stop();
  await rm(folder, { recursive: true, force: true });
  await rm(profile, { recursive: true, force: true, maxRetries: 5 });
}
