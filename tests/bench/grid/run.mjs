/**
 * The grid's benchmark in a browser: our grid beside a bare template of the
 * same cells and beside a general data grid library, on one page in one run;
 * then the built app with the demo workbook. Prints ratios; times say more
 * about the machine than about the program.
 */
import { build } from 'esbuild';
import { execFile } from 'node:child_process';
import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { chromium } from 'playwright-core';
import { CHROMIUM_ARGS, ensureChromium } from '../../../.ci/chromium.mjs';
import { blankFrames } from './frames.mjs';
import { ECHO, editsInDemo } from './demo.mjs';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const TYPES = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.svg': 'image/svg+xml', '.json': 'application/json' };
const PAGE = '<!doctype html><meta charset="utf-8"><title>Bench</title><link rel="stylesheet" href="/library.css"><style>body{margin:0}.box{width:1200px;height:760px;overflow:hidden;position:relative}.box>tt-grid{height:100%}</style><script type="module" src="/bench.js"></script>';

const share = (times, part) => [...times].sort((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * part))];
const ms = (time) => (time < 10 ? time.toFixed(2) : time.toFixed(0));

function print(what, aim, words) {
  console.log(`${what.padEnd(62)} ${words}   aim ${aim}`);
}

/** One line for a measure of all contenders: the ratio to the bare rows and to the library, at the median and at p95. */
function compare(what, aim, times) {
  const at = (name, part) => share(times[name], part);
  for (const other of ['bare rows', 'data grid library']) {
    const ratio = (part) => (at('ours', part) / at(other, part)).toFixed(2);
    print(`${what}, beside ${other}`, other === 'bare rows' ? aim : 'below 1',
      `p50 ${ratio(0.5)}, p95 ${ratio(0.95)}   (${ms(at('ours', 0.5))} / ${ms(at('ours', 0.95))} ms, ${ms(at(other, 0.5))} / ${ms(at(other, 0.95))} ms, of ${times.ours.length})`);
  }
}

async function serve(files) {
  const server = createServer(async ({ url }, response) => {
    const path = decodeURI(url.split('?')[0]);
    const made = files[path];
    try {
      const body = made ?? await readFile(`${root}dist${path.replace(/^\/app/, '').replace(/\/$/, '/index.html')}`);
      response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'text/html' }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  return server;
}

export async function benchGrid({ minutes = 0.3 } = {}) {
  const executablePath = await ensureChromium();
  await promisify(execFile)(process.execPath, ['.ci/build.mjs'], { cwd: root });
  const bundle = await build({
    entryPoints: [`${root}tests/bench/grid/page.ts`], bundle: true, write: false, format: 'esm', target: 'es2022', minify: true,
    tsconfig: `${root}tsconfig.json`, logLevel: 'warning',
  });
  const server = await serve({ ...ECHO, '/': PAGE, '/bench.js': bundle.outputFiles[0].text, '/library.css': await readFile(`${root}node_modules/slickgrid/dist/styles/css/slick.grid.css`) });
  const browser = await chromium.launch({ executablePath, args: [...CHROMIUM_ARGS, '--js-flags=--expose-gc'] });
  const origin = `http://127.0.0.1:${server.address().port}`;
  try {
    const context = await browser.newContext({ viewport: { width: 1240, height: 800 }, permissions: ['clipboard-read', 'clipboard-write'] });
    const page = await context.newPage();
    await page.goto(`${origin}/`);
    await page.waitForSelector('html[data-ready]', { state: 'attached', timeout: 120_000 });
    compare('first draw of 100,000 x 30', '-', await page.evaluate(() => window.bench.firstDraw(9)));
    compare('scroll step, script and layout', 'p95 <= 1.5', await page.evaluate(() => window.bench.scroll(400)));
    compare('another figure in one cell', '-', await page.evaluate(() => window.bench.edit(60)));
    await page.evaluate(() => window.bench.alone());
    await blankFrames(page, print);
    await copied(browser, page);
    await held(page, minutes);
    await page.close();
    await editsInDemo(context, origin, print);
  } finally {
    await browser.close();
    server.close();
  }
}

/** How long the page could do nothing else is told in processor time, which other programs' work does not lengthen. */
async function copied(browser, page) {
  const runs = [];
  for (let run = 0; run < 3; run++) {
    await browser.startTracing(page, { categories: ['toplevel', 'blink.user_timing'] });
    const { took, cells } = await page.evaluate(() => window.bench.copy());
    const { traceEvents } = JSON.parse((await browser.stopTracing()).toString());
    const at = (name) => traceEvents.find((event) => event.name === name)?.ts;
    const [from, to] = [at('copy begins'), at('copy ends')];
    const { pid, tid } = traceEvents.find((event) => event.name === 'copy begins');
    const tasks = traceEvents.filter((event) => event.pid === pid && event.tid === tid && event.name.endsWith('RunTask') && event.ts >= from && event.ts < to);
    runs.push({ took, cells, longest: Math.max(...tasks.map((task) => task.tdur ?? 0)) / 1000, slices: tasks.length });
  }
  const [took, longest] = ['took', 'longest'].map((each) => share(runs.map((run) => run[each]), 0.5));
  print(`select all, copy ${runs[0].cells.toLocaleString('en-GB')} cells`, 'under 2 s, 50 ms', `${ms(took)} ms, the longest of ${runs[0].slices} tasks ${ms(longest)} ms   (median of ${runs.length})`);
}

/** What the page holds before and after it was used for a while. */
async function held(page, minutes) {
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable');
  const now = async () => {
    await client.send('HeapProfiler.collectGarbage');
    const { metrics } = await client.send('Performance.getMetrics');
    const of = (name) => metrics.find((metric) => metric.name === name).value;
    return { heap: of('JSHeapUsedSize'), listeners: of('JSEventListeners'), ...await page.evaluate(() => ({ rows: window.bench.rows(), elements: window.bench.elements() })) };
  };
  // Once before, so that what is made only the first time is there.
  await page.evaluate(() => window.bench.use(5000));
  const before = await now();
  await page.evaluate((time) => window.bench.use(time), minutes * 60_000);
  const after = await now();
  const perRow = (state) => state.elements / state.rows;
  print(`${minutes} minutes of use: memory`, 'no growth', `${((after.heap - before.heap) / 1024).toFixed(0)} kB of ${(before.heap / 1024 / 1024).toFixed(0)} MB, elements a row ${perRow(before).toFixed(1)} then ${perRow(after).toFixed(1)}, listeners ${before.listeners} then ${after.listeners}`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await benchGrid({ minutes: Number(process.argv[2] ?? 0.3) });
