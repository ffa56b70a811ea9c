/**
 * How large the built files may be, packed by gzip as web hosts send them. The
 * aim is 70 kB for the start of the page and 175 kB for the engine; these are
 * what was reached, so that it never grows unseen.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
const html = readFileSync(`${dist}index.html`, 'utf8');
const scripts = readdirSync(dist).filter((name) => name.endsWith('.js'));
const fonts = readdirSync(dist).filter((name) => name.endsWith('.woff2'));
const start = scripts.filter((name) => html.includes(name));
const worker = scripts.filter((name) => name.startsWith('reckon-'));
const lay = scripts.filter((name) => name.startsWith('lay-worker-'));
const one = (name, files, limit) => ({ name, path: files.map((file) => `../dist/${file}`), limit, gzip: true });

export default [
  one('Start of the page: its script and style', [...start, 'index.html'], '158 kB'),
  one('Worker: the engine', worker, '297 kB'),
  one('Worker: the lay', lay, '60 kB'),
  { ...one('Fonts', fonts, '80 kB'), gzip: false },
  one('Everything else, fetched after the start', scripts.filter((name) => !start.includes(name) && !worker.includes(name) && !lay.includes(name)), '356 kB'),
];
