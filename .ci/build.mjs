/**
 * Makes `dist/`: one static folder for any web host, under any path. Scripts are
 * named by the hash of their content; the service worker keeps all of it on the
 * device. `node .ci/build.mjs somewhere` makes it there.
 */
import { copyFile, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundleOffline } from './bundle-offline.mjs';
import { bundlePage, bundleWorkers } from './bundle-page.mjs';
import { placeFonts } from './place-fonts.mjs';
import { headersFile, policy } from './policy.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = resolve(root, process.argv[2] ?? 'dist');

const MANIFEST = {
  name: 'Tape & Tally', short_name: 'Tape & Tally', description: 'A workbook whose cells know lengths, for people who sew clothes.',
  id: './', start_url: './', scope: './', display: 'standalone', background_color: '#fbf7ef', theme_color: '#22313b',
  icons: [{ src: './icon.svg', type: 'image/svg+xml', sizes: 'any' }],
};

await rm(out, { recursive: true, force: true });
await mkdir(out, { recursive: true });

const workers = await bundleWorkers({ root, out });
const { entry, start } = await bundlePage({ root, out, workers });

const { style, fonts } = await placeFonts({ from: `${root}src/look/fonts/`, out });

const html = (await readFile(`${root}src/index.html`, 'utf8'))
  .replace('./app/main.ts', `./${entry}`)
  .replace('./look/fonts/fonts.css', `./${style}`)
  .replace('<link rel="icon"', [
    `<meta http-equiv="Content-Security-Policy" content="${policy()}">`,
    // All of the start at once, not one after the other as each is read.
    ...start.filter((file) => file !== entry).map((file) => `<link rel="modulepreload" href="./${file}">`),
    ...fonts.map((file) => `<link rel="preload" href="./${file}" as="font" type="font/woff2" crossorigin>`),
    '<link rel="manifest" href="./app.webmanifest">', '<link rel="icon"',
  ].join('\n    '));
await writeFile(`${out}/index.html`, html);
await writeFile(`${out}/app.webmanifest`, `${JSON.stringify(MANIFEST, null, 2)}\n`);
await copyFile(`${root}src/icon.svg`, `${out}/icon.svg`);
await bundleOffline({ root, out });
await writeFile(`${out}/_headers`, headersFile((await readdir(out)).filter((name) => !name.endsWith('.map'))));

console.log(`Built ${out}. Serve it as it is from any web host, or by npm run serve.`);
