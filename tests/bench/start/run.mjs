/**
 * How the built app starts, beside the least that could: first paint beside a
 * page that only loads Lit and the same cells; first result beside the engine
 * library alone in a worker with as many formulas. All in one run, in turn,
 * each in a browser profile that has seen nothing. `npm run bench:start`.
 */
import { build } from 'esbuild';
import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { chromium } from 'playwright-core';
import { CHROMIUM_ARGS, ensureChromium } from '../../../.ci/chromium.mjs';
import { serve } from '../../../.ci/serve.mjs';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const ROUNDS = 15;
const VIEW = { width: 1360, height: 860 };

const folder = await mkdtemp(join(tmpdir(), 'tape-and-tally-start-'));
const median = (times) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)];

/** In the page, before anything else: the worker's beginning, and when its first results are taken in. */
function watchStart() {
  window.times = {};
  const Own = window.Worker;
  window.Worker = class extends Own {
    constructor(...given) {
      super(...given);
      window.times.worker ??= performance.now();
      this.addEventListener('message', () => { window.times.up ??= performance.now(); });
    }
  };
  new MutationObserver(() => {
    const desk = document.querySelector('tt-app')?.desk;
    if (!desk || window.times.seen) return;
    window.times.seen = true;
    desk.addEventListener('results', () => { window.times.result ??= performance.now(); });
  }).observe(document, { childList: true, subtree: true });
}

const painted = () => new Promise((done) => new PerformanceObserver((list) => {
  const entry = list.getEntriesByName('first-contentful-paint')[0];
  if (entry) done(entry.startTime);
}).observe({ type: 'paint', buffered: true }));

async function bundled(entry, name) {
  const { outputFiles: [{ text }] } = await build({ entryPoints: [`${root}tests/bench/start/${entry}`], bundle: true, minify: true, write: false, format: 'esm', target: 'es2022', tsconfig: `${root}tsconfig.json` });
  await writeFile(join(folder, 'floor', name), text);
}

try {
  const executablePath = await ensureChromium();
  await promisify(execFile)(process.execPath, ['.ci/build.mjs', join(folder, 'app')], { cwd: root });
  await promisify(execFile)('mkdir', [join(folder, 'floor')]);
  await bundled('floor.ts', 'floor.js');
  await bundled('bare.worker.ts', 'bare.js');
  const [app, floor] = [await serve(join(folder, 'app')), await serve(join(folder, 'floor'))];
  const browser = await chromium.launch({ executablePath, args: CHROMIUM_ARGS });
  const fresh = async (visit) => {
    const context = await browser.newContext({ viewport: VIEW, serviceWorkers: 'block' });
    try {
      return await visit(await context.newPage());
    } finally {
      await context.close();
    }
  };

  // What the app shows at first, and what its engine is given.
  const { cells, sheets } = await fresh(async (page) => {
    await page.goto(app.address);
    await page.waitForFunction(() => document.querySelector('tt-app')?.desk.results.revision > 0);
    return page.evaluate(() => {
      const { desk, shadowRoot } = document.querySelector('tt-app');
      const grid = shadowRoot.querySelector('tt-grid').shadowRoot;
      return {
        cells: [...grid.querySelectorAll('[role=row]')].map((row) => [...row.children].map((cell) => cell.textContent.trim())),
        // Sums of as many cells: the trade's functions are ours, and the library knows none of them.
        sheets: Object.fromEntries(desk.book.sheets.map(({ name, rows }) => [name, rows.map((row) => (row ?? []).map((cell, col) => (
          !cell?.raw.startsWith('=') ? cell?.raw ?? '' : `=SUM(A1:${String.fromCharCode(65 + (col > 0 ? col - 1 : 0))}1)+${col}`)))])),
      };
    });
  });
  await writeFile(join(folder, 'floor', 'cells.js'), `window.cells = ${JSON.stringify(cells)};`);
  await writeFile(join(folder, 'floor', 'index.html'), '<!doctype html><meta charset="utf-8"><title>Floor</title><script src="./cells.js"></script><script type="module" src="./floor.js"></script>');

  const times = { paint: [], least: [], cells: [], result: [], bare: [] };
  for (let round = 0; round < ROUNDS; round++) {
    times.least.push(await fresh(async (page) => {
      await page.goto(floor.address);
      return page.evaluate(painted);
    }));
    await fresh(async (page) => {
      await page.addInitScript(watchStart);
      await page.goto(app.address);
      times.paint.push(await page.evaluate(painted));
      times.cells.push(await page.evaluate(() => new Promise((done) => {
        const look = () => (document.querySelector('tt-app')?.shadowRoot?.querySelector('tt-grid')?.shadowRoot?.querySelector('[role=gridcell]') ? requestAnimationFrame(() => done(performance.now())) : requestAnimationFrame(look));
        look();
      })));
      await page.waitForFunction(() => window.times.result !== undefined);
      const { up, result } = await page.evaluate(() => window.times);
      times.result.push(result - up);
    });
    times.bare.push(await fresh(async (page) => {
      await page.goto(floor.address);
      return page.evaluate((data) => new Promise((done) => {
        // Under the app's own policy, which asks for this.
        const url = window.trustedTypes.createPolicy('tt-worker', { createScriptURL: (given) => given }).createScriptURL(new URL('./bare.js', location.href).href);
        const worker = new Worker(url, { type: 'module' });
        let up;
        worker.onmessage = (event) => {
          if (event.data === 'up') {
            up = performance.now();
            worker.postMessage(data);
          } else done(performance.now() - up);
        };
      }), sheets);
    }));
  }
  const [paint, least, first, result, bare] = ['paint', 'least', 'cells', 'result', 'bare'].map((name) => median(times[name]));
  const line = (what, ratio, aim, words) => console.log(`${what.padEnd(58)} ${ratio.toFixed(2)}   aim ${aim}   (${words})`);
  console.log(`Start of the built app, medians of ${ROUNDS} in turn`);
  line('first contentful paint, beside Lit and the same cells', paint / least, '<= 1.3', `${paint.toFixed(0)} and ${least.toFixed(0)} ms`);
  line('first cells of the workbook, beside the same', first / least, '-', `${first.toFixed(0)} ms`);
  line('first result after the worker is up, beside a bare engine', result / bare, '<= 1.5', `${result.toFixed(0)} and ${bare.toFixed(0)} ms`);
  await browser.close();
  await Promise.all([app.stop(), floor.stop()]);
} finally {
  await rm(folder, { recursive: true, force: true });
}
