/**
 * The cutting layouts against the literature:
 *   npm run bench:lay -- [--sets=shirts,swim] [--seeds=1,2] [--marks=1,10,60] [--browser | --browser-only] [--garments=50]
 * Without flags: every set, five seeds (tuning used 11 to 13 and never these), at 1, 10 and 60 seconds, in Node and in
 * Chromium's worker. That takes hours; the flags make it shorter. The last line is the mean over the garment sets.
 */
import { createServer } from 'node:http';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { CHROMIUM_ARGS, ensureChromium } from '../../../.ci/chromium.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const flags = Object.fromEntries(process.argv.slice(2).map((flag) => flag.replace(/^--/, '').split('=')));
const numbers = (text) => text.split(',').map(Number);
const wanted = {
  sets: flags.sets ? flags.sets.split(',') : [],
  seeds: numbers(flags.seeds ?? '1,2,3,4,5'),
  marks: numbers(flags.marks ?? '1,10,60'),
  folder: join(here, '../../published/irregular'),
};

const folder = await mkdtemp(join(tmpdir(), 'tape-and-tally-lay-'));
const bundle = (name, platform) => build({
  entryPoints: [join(here, name)], outfile: join(folder, `${name}.mjs`), bundle: true, format: 'esm', platform, target: 'es2022',
  tsconfig: join(here, '../../../tsconfig.json'), logLevel: 'warning', mainFields: ['module', 'main'],
});

async function inChromium(all) {
  await bundle('bench.worker.ts', 'browser');
  const script = await readFile(join(folder, 'bench.worker.ts.mjs'));
  const server = createServer(({ url }, answer) => {
    const worker = url === '/worker.mjs';
    answer.writeHead(200, { 'content-type': worker ? 'text/javascript' : 'text/html' });
    answer.end(worker ? script : '<!doctype html><title>Bench</title>');
  }).listen(0, '127.0.0.1');
  await new Promise((done) => server.once('listening', done));
  const browser = await chromium.launch({ executablePath: await ensureChromium(), args: CHROMIUM_ARGS });
  try {
    const page = await browser.newPage();
    await page.goto(`http://127.0.0.1:${server.address().port}/`);
    const results = [];
    for (const each of all) {
      for (const seed of wanted.seeds) {
        results.push(await page.evaluate((job) => new Promise((done, failed) => {
          const worker = new Worker('/worker.mjs', { type: 'module' });
          worker.onmessage = ({ data }) => {
            worker.terminate();
            done(data);
          };
          worker.onerror = ({ message }) => failed(new Error(message));
          worker.postMessage(job);
        }), { each, seed, marks: wanted.marks }));
      }
    }
    return results;
  } finally {
    await browser.close();
    server.close();
  }
}

try {
  await bundle('lay.bench.ts', 'node');
  const bench = await import(pathToFileURL(join(folder, 'lay.bench.ts.mjs')).href);
  bench.floors(wanted);
  const lines = [];
  if (!('browser-only' in flags)) lines.push(`in Node ${bench.report('Node', bench.inNode(wanted))}`);
  const short = flags.sets || flags.seeds || flags.marks;
  if (!short || 'browser' in flags || 'browser-only' in flags) lines.push(`in Chromium’s worker ${bench.report('Chromium’s worker', await inChromium(bench.cases(wanted)))}`);
  const many = flags.garments ?? (short ? 0 : 50);
  if (Number(many) > 0) bench.garments(Number(many), wanted.marks.at(-1));
  console.log(`\nMean part of the best published, five garment sets: ${lines.join('; ')}`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
