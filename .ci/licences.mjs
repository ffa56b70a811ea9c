/**
 * Lists the licence of every package in the lock file, and fails when one of
 * them may not be combined with GPL-3.0-only or says nothing: `npm run licences`.
 *
 * What may is the Free Software Foundation's list, “Various Licenses and
 * Comments about Them” (gnu.org/licenses/license-list.html), in SPDX's names.
 * BlueOak-1.0.0, MIT-0 and WTFPL ask for no more than the MIT licence does.
 */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const COMPATIBLE = new Set([
  '0BSD', 'Apache-2.0', 'BlueOak-1.0.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BSL-1.0', 'CC-BY-4.0', 'CC0-1.0', 'GPL-3.0-only', 'GPL-3.0-or-later', 'ISC',
  'LGPL-3.0-only', 'LGPL-3.0-or-later', 'MIT', 'MIT-0', 'MPL-2.0', 'Python-2.0', 'Unlicense', 'WTFPL', 'Zlib',
]);

/** Packages whose manifest does not say it, looked at by hand. A version that was not looked at fails again. */
const LOOKED_AT = {
  'splaytree-ts@1.0.2': { licence: 'BSD-3-Clause', why: 'its LICENSE file is that text; the manifest misspells the name' },
  'inter-ui@4.1.1': { licence: 'OFL-1.1', why: 'a typeface, which stands beside the program with its own licence' },
  '@fontsource-variable/literata@5.3.0': { licence: 'OFL-1.1', why: 'a typeface, which stands beside the program with its own licence' },
  'only@0.0.2': { licence: 'not said', why: 'a tool of the development server, in nothing that is given to others' },
};

const root = new URL('../', import.meta.url);
const read = (path) => JSON.parse(readFileSync(new URL(path, root), 'utf8'));

function licenceOf(path, { license }) {
  if (typeof license === 'string') return license;
  const own = `${path}/package.json`;
  if (!existsSync(fileURLToPath(new URL(own, root)))) return 'not said';
  const said = read(own);
  return said.license?.type ?? said.license ?? said.licenses?.map(({ type }) => type).join(' OR ') ?? 'not said';
}

/** “(MIT OR X) AND Y”: one of those joined by OR is enough, all of those joined by AND are needed. */
function compatible(expression) {
  const text = expression.trim().replace(/^\((.*)\)$/, '$1');
  if (/ AND /.test(text)) return text.split(/ AND /).every(compatible);
  if (/ OR |\//.test(text)) return text.split(/ OR |\//).some(compatible);
  return COMPATIBLE.has(text);
}

const packages = Object.entries(read('package-lock.json').packages)
  .filter(([path]) => path !== '')
  .map(([path, about]) => {
    const name = path.replace(/^.*node_modules\//, '');
    const known = LOOKED_AT[`${name}@${about.version}`];
    return { name, version: about.version, licence: known?.licence ?? licenceOf(path, about), shipped: !about.dev && !about.devOptional, known };
  });

const byLicence = new Map();
for (const { licence, shipped } of packages) {
  const count = byLicence.get(licence) ?? { shipped: 0, tools: 0 };
  count[shipped ? 'shipped' : 'tools']++;
  byLicence.set(licence, count);
}
console.log('In the built page:');
for (const { name, version, licence } of packages.filter(({ shipped }) => shipped)) console.log(`  ${name} ${version}: ${licence}`);
console.log('All packages, with the tools that are not shipped:');
for (const [licence, { shipped, tools }] of [...byLicence].sort(([a], [b]) => a.localeCompare(b))) console.log(`  ${licence}: ${shipped} in the page, ${tools} tools`);

for (const { name, version, licence, known } of packages) if (known) console.log(`Looked at: ${name} ${version}: ${licence}, ${known.why}.`);
const bad = packages.filter(({ licence, shipped, known }) => !compatible(licence) && (shipped || !known));
for (const { name, version, licence, shipped } of bad) console.error(`${name} ${version}${shipped ? '' : ' (a tool)'}: ${licence} is not known to go with GPL-3.0-only.`);
console.log(bad.length === 0 ? `${packages.length} packages: all go with GPL-3.0-only, or are tools that were looked at.` : `${bad.length} of ${packages.length} packages do not.`);
if (bad.length > 0) process.exit(1);
