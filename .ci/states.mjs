/**
 * Every screen and state of the built app at four widths, light and dark, on
 * one page to look at: tests/screens/states/index.html. Looks itself for what
 * a picture shows badly: what axe finds, a page that scrolls sideways, buttons
 * whose words are cut off. `npm run states [-- --only lay --width 390]`.
 */
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs, promisify } from 'node:util';
import { chromium } from 'playwright-core';
import { CHROMIUM_ARGS, ensureChromium } from './chromium.mjs';
import { serve } from './serve.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = `${root}tests/screens/states/`;
const { values: { only = '', width: onlyWidth = '' } } = parseArgs({ options: { only: { type: 'string' }, width: { type: 'string' } } });

const WIDTHS = [[390, 844], [820, 1180], [1360, 860], [1920, 1080]];
const LOOKS = ['light', 'dark'];
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

const command = (label) => async (page) => {
  await page.keyboard.press('Control+.');
  await page.waitForTimeout(150);
  await page.keyboard.type(label);
  await page.keyboard.press('Enter');
};
const go = (place) => async (page) => {
  await page.evaluate((text) => {
    const [sheet, cell] = text.split('!');
    const { desk } = document.querySelector('tt-app');
    const [, column, row] = /^([A-Z])(\d+)$/.exec(cell);
    const at = { row: Number(row) - 1, col: column.charCodeAt(0) - 65 };
    desk.select({ anchor: at, focus: at }, desk.book.sheets.find(({ name }) => name === sheet).id);
  }, place);
  await page.evaluate(() => document.querySelector('tt-app').shadowRoot.querySelector('tt-grid').focus());
};
const type = (text) => (page) => page.keyboard.type(text);
const press = (key) => (page) => page.keyboard.press(key);

/** What is done to come there, from the demo garment as it opens; each starts anew. */
const STATES = {
  'as it opens': [],
  'the first empty workbook': [command('New workbook'), (page) => page.waitForTimeout(2500)],
  'long names': [go('Fit!A2'), type('A very long label of a row that has no end and goes on'), press('Enter'), command('Rename the workbook'), (page) => page.waitForTimeout(300)],
  'right to left': [go('Fit!A3'), type('מידת חזה'), press('Enter')],
  'an error': [go('Fit!F4'), type('=B2 + 2'), press('Enter'), go('Fit!F4')],
  'a formula typed': [go('Fit!F4'), type('=EASE(B12, si')],
  'a pin': [go('Fit!B13')],
  pins: [command('Pins: what')],
  history: [go('Fit!B11'), type('9 cm'), press('Enter'), command('History: every')],
  'find and replace': [command('Find and replace'), type('waist')],
  'how cells show': [go('Fit!B11'), command('How cells show')],
  'side by side': [go('Fit!B11'), command('Side by side')],
  'choose the size': [command('Choose the size')],
  'work back': [go('Fit!B13'), command('Work back')],
  'run of values': [go('Fit!B11'), command('Run of values')],
  people: [command('People')],
  'start my own': [command('Start my own')],
  'to buy': [command('To buy: the list')],
  'at the table': [command('At the table')],
  lay: [command('The lay'), (page) => page.waitForTimeout(5000)],
  'print a sheet': [command('Print…')],
  'print a ticket': [command('Print a cutting ticket')],
  shelf: [command('Workbooks on this device')],
  templates: [command('Start a sheet from a template')],
  'a chart from CSV': [command('Size chart from')],
  functions: [command('What functions are there')],
  names: [command('Names…')],
  'sort rows': [go('Fit!B11'), command('Sort rows')],
  'rows that match': [go('Fit!B11'), command('Show only rows that match…')],
  'a note': [go('Fit!B11'), command('Note on this cell')],
  commands: [press('Control+.')],
};

/** In the page: what lies outside it, and buttons whose words do not fit. */
function unsightly() {
  const found = [];
  if (document.documentElement.scrollWidth > innerWidth + 1) found.push(`the page is ${document.documentElement.scrollWidth - innerWidth} px too wide`);
  (function look(node) {
    for (const each of node.querySelectorAll('*')) {
      if (each.shadowRoot) look(each.shadowRoot);
      if (!each.matches('button, summary, label, legend, th, h2, h3') || !each.checkVisibility({ visibilityProperty: true })) continue;
      const style = getComputedStyle(each);
      if (style.clipPath !== 'none') continue; // for ears only
      if (each.scrollWidth > each.clientWidth + 1 && style.overflowX !== 'visible' && style.textOverflow !== 'ellipsis' && each.clientWidth > 1) found.push(`cut off: ${each.localName} “${each.textContent.trim().slice(0, 40)}”`);
    }
  })(document);
  return found;
}

const folder = await mkdtemp(join(tmpdir(), 'tape-and-tally-states-'));
await rm(out, { recursive: true, force: true });
await mkdir(out, { recursive: true });
await promisify(execFile)(process.execPath, ['.ci/build.mjs', folder], { cwd: root });
const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const app = await serve(folder);
const browser = await chromium.launch({ executablePath: await ensureChromium(), args: CHROMIUM_ARGS });
const shots = [];
let faults = 0;
try {
  for (const [width, height] of WIDTHS.filter(([each]) => onlyWidth === '' || String(each) === onlyWidth)) {
    for (const colorScheme of LOOKS) {
      for (const [state, steps] of Object.entries(STATES).filter(([name]) => name.includes(only))) {
        const context = await browser.newContext({ viewport: { width, height }, colorScheme, serviceWorkers: 'block', bypassCSP: true });
        const page = await context.newPage();
        const said = [];
        page.on('pageerror', ({ message }) => said.push(`the page threw: ${message}`));
        await page.goto(app.address);
        await page.waitForFunction(() => document.querySelector('tt-app')?.desk.results.revision > 0);
        for (const step of steps) await step(page);
        await page.waitForTimeout(700);
        const file = `${state.replaceAll(' ', '-')}-${width}-${colorScheme}.png`;
        await page.screenshot({ path: out + file });
        await page.evaluate(`${axe};0`);
        const { violations } = await page.evaluate(`axe.run(document, { resultTypes: ['violations'], runOnly: ${JSON.stringify(WCAG)} })`);
        said.push(...await page.evaluate(unsightly), // The words offered while a formula is typed scroll along with the arrow keys; the focus stays in the text.
          ...violations.flatMap(({ id, nodes }) => nodes.filter(({ target }) => id !== 'scrollable-region-focusable' || !JSON.stringify(target).includes('.helper')).slice(0, 3).map(({ target, failureSummary }) => `${id}: ${target.flat().at(-1)} ${failureSummary.replace(/\s+/g, ' ').slice(0, 160)}`)));
        for (const fault of said) console.log(`${state}, ${width} ${colorScheme}: ${fault}`);
        faults += said.length;
        shots.push({ state, width, colorScheme, file, said });
        await context.close();
      }
    }
  }
} finally {
  await browser.close();
  await app.stop();
  await rm(folder, { recursive: true, force: true });
}
const escaped = (text) => text.replace(/[&<>"]/g, (each) => `&#${each.charCodeAt(0)};`);
await writeFile(`${out}index.html`, `<!doctype html><meta charset="utf-8"><title>Every screen and state</title><style>body{font:14px system-ui;margin:16px}section{display:flex;flex-wrap:wrap;gap:12px;align-items:start}figure{margin:0}img{max-width:480px;max-height:420px;border:1px solid #888}figcaption{max-width:480px}.fault{color:#a00}</style>
${Object.keys(STATES).map((state) => `<h2>${escaped(state)}</h2><section>${shots.filter((each) => each.state === state).map(({ file, width, colorScheme, said }) => `<figure><a href="${file}"><img loading="lazy" src="${file}" alt=""></a><figcaption>${width} ${colorScheme}${said.map((fault) => `<br><span class="fault">${escaped(fault)}</span>`).join('')}</figcaption></figure>`).join('')}</section>`).join('\n')}`);
console.log(`${shots.length} pictures, ${faults} faults. Open tests/screens/states/index.html.`);
if (faults > 0) process.exitCode = 1;
