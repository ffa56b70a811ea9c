/**
 * Cuts the app's typefaces down to the characters that it uses: `npm run fonts`,
 * after a change here or a new version of the packages. Kept in the figures: tabular
 * widths and fractions of any two numbers.
 */
import { copyFile, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import subset from 'subset-font';

const packages = fileURLToPath(new URL('../node_modules/', import.meta.url));
const out = fileURLToPath(new URL('../src/look/fonts/', import.meta.url));

const FACES = [
  { name: 'inter', from: 'inter-ui/variable/InterVariable.woff2', licence: 'inter-ui/LICENSE.txt', axes: { wght: { min: 400, max: 700 }, opsz: 14 } },
  { name: 'literata', from: '@fontsource-variable/literata/files/literata-latin-wght-normal.woff2', licence: '@fontsource-variable/literata/LICENSE', axes: { wght: 600 } },
];

const range = (first, last) => Array.from({ length: last - first + 1 }, (_, at) => String.fromCodePoint(first + at)).join('');
/** Latin with all its European accents, fractions, and the signs of sums and of the screen. */
const CHARACTERS = [
  range(0x20, 0x7e), range(0xa0, 0x17f), range(0x2150, 0x215e), range(0x2190, 0x2199),
  '\u2007\u2009\u202f\u2010\u2011\u2012–—‘’‚“”„†•…‹›′″⁄€−×÷≈≠≤≥±√∞π·⚠✕✓✗№',
].join('');

for (const { name, from, licence, axes } of FACES) {
  const cut = await subset(await readFile(packages + from), CHARACTERS, { targetFormat: 'woff2', variationAxes: axes });
  await writeFile(`${out}${name}.woff2`, cut);
  await copyFile(packages + licence, `${out}${name}-licence.txt`);
  console.log(`${name}: ${cut.length} bytes`);
}
