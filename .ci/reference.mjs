/**
 * Writes the reference of all functions as Markdown, from the same definitions
 * and by the same engine as the app: `npm run reference [file]`, by default to
 * dist/reference.md.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const file = resolve(process.argv[2] ?? `${root}dist/reference.md`);

const { outputFiles } = await build({
  stdin: {
    contents: `
      export { Engine } from './workers/reckon/engine.ts';
      export { AN_ERROR, DIFFERENCES, OPEN_FORMULA_NAMES } from './src/formula/standard/index.ts';
      export { argumentInWords, signatureOf } from './src/panels/reference-words.ts';
      export { shownResult } from './src/panels/shown.ts';`,
    resolveDir: root, loader: 'ts',
  },
  bundle: true, format: 'esm', platform: 'node', target: 'node20', write: false,
});
const { AN_ERROR, DIFFERENCES, Engine, OPEN_FORMULA_NAMES, argumentInWords, shownResult, signatureOf } = await import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`);

const engine = new Engine();
const cards = engine.catalogue();
const names = new Set(cards.map(({ name }) => name));
const topics = [...new Set(cards.map(({ topic }) => topic))];
const code = (text) => `\`${text}\``;
const list = (words) => words.map(code).join(', ');
const anchor = (text) => text.toLowerCase().replace(/[^\p{L}\p{N} -]/gu, '').replaceAll(' ', '-');

/** Functions whose results are others every day or every time. */
const CHANGING = new Set(['NOW', 'TODAY', 'RAND', 'RANDBETWEEN']);
/** As the app shows them: beside its own unit, the other system. */
const AS = { system: 'own', inchStep: 8 };

function shown(result) {
  const { main } = shownResult(result, AS);
  const both = shownResult(result, { ...AS, system: 'both' });
  const other = result.kind === 'error' ? undefined : [both.main, both.also].find((text) => text !== undefined && text !== main);
  return other ? `${main} (${other})` : main;
}

function outcome({ name, example }) {
  if (CHANGING.has(name)) return 'is another each time';
  const { results, height, width } = engine.example(example);
  if (height === 1 && width === 1) return `gives ${shown(results[0][0])}`;
  return `fills ${height} × ${width} cells: ${results.map((row) => row.map(shown).filter(Boolean).join(' · ')).filter(Boolean).join(' / ')}`;
}

const functionText = (card) => [
  `### ${card.name}`, '',
  code(signatureOf(card)), '',
  card.about, '',
  ...(card.rule ? [`Rule: ${card.rule}`, ''] : []),
  ...card.args.map((arg, i) => `- **${arg.name}**: ${arg.about}${argumentInWords(card, i) ? ` *(${argumentInWords(card, i)})*` : ''}`),
  ...(card.args.length ? [''] : []),
  `Units: ${card.units}`, '',
  `Example: ${code(card.example)} ${outcome(card)}.`, '',
  ...(card.needs.length ? [`The example names ${list(card.needs.map(({ name }) => name))}, [invented figures](#cells-that-examples-name).`, ''] : []),
  ...(card.differs ? [`Not as in the standard: ${card.differs}`, ''] : []),
  `Source: ${card.source}.`, '',
];

function sampleText({ name, rows }) {
  const width = Math.max(...rows.map((row) => row.length));
  const line = (cells) => `| ${Array.from({ length: width }, (_, i) => (cells[i] ?? '').replace(/^'/, '')).join(' | ')} |`;
  return [`${code(name)}:`, '', line(rows[0]), line(Array(width).fill('---')), ...rows.slice(1).map(line), ''];
}

const differenceText = ({ functions, sentence, why, shown: examples }) => [
  `- ${functions.length ? `${list(functions)}: ` : ''}${sentence}${why ? ` *${why}*` : ''}`,
  ...examples.map(({ formula, here, there }) => `  - ${code(formula)}: here ${here === AN_ERROR ? here : code(here)}, in OpenFormula ${/^[-\d.]+$|^[A-Z]+$/.test(there) ? code(there) : there}`),
];

const language = DIFFERENCES.filter(({ functions }) => functions.length === 0);
const missing = [...new Set(OPEN_FORMULA_NAMES)].filter((name) => !names.has(name)).sort();
const own = cards.filter(({ trade, source }) => !trade && !source.startsWith('OpenFormula')).map(({ name }) => name).sort();
const samples = [...new Map(cards.flatMap(({ needs }) => needs).map((sample) => [sample.name, sample])).values()];

const text = [
  '# What functions there are', '',
  `${cards.length} functions: ${cards.filter(({ trade }) => trade).length} of the trade, and ${cards.filter(({ trade }) => !trade).length} standard ones. Made by \`npm run reference\` from the definitions that the app works with; each example was worked out by its engine.`, '',
  'A formula begins with `=`. A figure keeps the unit it is written with: `2 1/4 in`, `5.5 cm`, `30°`, `3 %`. Arguments are parted by `,` or `;`; those in `[ ]` may be left out. A list in `{ }` stands for a block of cells: `;` parts columns and `|` rows.', '',
  '## Contents', '',
  ...topics.map((topic) => `- [${topic}](#${anchor(topic)}): ${cards.filter((card) => card.topic === topic).map(({ name }) => `[${name}](#${anchor(name)})`).join(', ')}`),
  '- [Cells that examples name](#cells-that-examples-name)', '- [Where we differ](#where-we-differ)', '',
  ...topics.flatMap((topic) => [`## ${topic}`, '', ...cards.filter((card) => card.topic === topic).flatMap(functionText)]),
  '## Cells that examples name', '', 'All figures are invented.', '', ...samples.flatMap(sampleText),
  '## Where we differ', '',
  'The standard functions follow OpenFormula, part 4 of OpenDocument 1.4 (OASIS Standard of 6 October 2025). Here is where they do not.', '',
  '### In the language', '', ...language.flatMap(differenceText), '',
  '### In functions', '', ...DIFFERENCES.filter((each) => !language.includes(each)).flatMap(differenceText), '',
  '### Where OpenFormula is followed, though it may surprise', '',
  '- A sign before a figure binds before a power: `-2^2` is 4. Write `-(2^2)` for the other.',
  '- Powers go from left to right: `2^3^2` is 64.',
  '- `ROUND` sends a half away from zero, and `MROUND` to the greater: `ROUND(-2.5)` is -3, `MROUND(-2.5 cm, 1 cm)` is -2 cm.',
  '- `MOD` has the sign of what one divides by: `MOD(-7, 3)` is 2.', '',
  '### What OpenFormula has and this workbook has not', '', `${list(missing)}.`, '',
  '### What this workbook has and OpenFormula has not', '', `Besides the functions of the trade: ${list(own)}.`, '',
].join('\n');

await mkdir(dirname(file), { recursive: true });
await writeFile(file, text);
console.log(`${cards.length} functions written to ${file}`);
