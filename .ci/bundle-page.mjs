/**
 * Bundles the page: what the first sight of it needs as one chunk, and each part
 * that comes later as chunks of its own; and each worker, as one file.
 */
import { rolldown } from 'rolldown';
import { leanTemplates } from './lean-templates.mjs';
import { slimEngineInBuild } from './slim-engine.mjs';

/** Folders whose files do nothing when they are loaded: of these only what is used goes into a chunk. */
const PURE = /\/src\/(formula|keeping|lay|pictures|quantities|reckoning|sewing|tables|workbook)\//;
const ENTRY = '/src/app/main.ts';
const WORKER_URL = /\/src\/reckoning\/worker-url\.ts$/;
/** The workers by the names that their files get. */
const WORKERS = { reckon: 'workers/reckon/reckon.worker.ts', 'lay-worker': 'workers/lay/lay.worker.ts' };

/** Points the page at the workers' hashed names. */
const workerAddresses = (workers) => ({
  name: 'worker-addresses',
  transform: {
    filter: { id: WORKER_URL },
    handler(source, path) {
      const code = Object.entries(workers).reduce((text, [name, file]) => {
        const inSource = `'../../${WORKERS[name]}'`;
        if (!text.includes(inSource)) throw new Error(`${path} no longer names a worker as ${inSource}; change .ci/bundle-page.mjs with it.`);
        return text.replace(inSource, `'./${file}'`);
      }, source);
      return { code, map: null };
    },
  },
});

/** The chunks that are fetched with a chunk, itself among them. */
function withImports(chunks, chunk, found = new Set()) {
  if (found.has(chunk)) return found;
  found.add(chunk);
  for (const name of chunk.imports) withImports(chunks, chunks.find(({ fileName }) => fileName === name), found);
  return found;
}

const WRITTEN = { format: 'esm', minify: true, sourcemap: true, entryFileNames: '[name]-[hash].js', chunkFileNames: '[name]-[hash].js' };

const bundling = (root, input) => ({ cwd: root, input, platform: 'browser', tsconfig: `${root}tsconfig.json`, transform: { target: 'es2022' }, checks: { pluginTimings: false } });

const chunksOf = ({ output }) => output.filter(({ type }) => type === 'chunk');

/**
 * @param workers file names of the workers
 * @returns the file that starts the page, and all that is fetched with it
 */
export async function bundlePage({ root, out, workers }) {
  const bundle = await rolldown({
    ...bundling(root, { page: ENTRY.slice(1) }),
    treeshake: { moduleSideEffects: [{ test: PURE, sideEffects: false }] },
    plugins: [workerAddresses(workers), leanTemplates(), slimEngineInBuild],
  });
  try {
    const parted = chunksOf(await bundle.generate(WRITTEN));
    // What is there from the start is never fetched in parts: one file packs better than twenty.
    // The entry stands alone: it awaits what later chunks bring, and they would await it.
    const start = new Set([...withImports(parted, parted.find(({ isEntry }) => isEntry))].flatMap(({ moduleIds }) => moduleIds).filter((id) => !id.endsWith(ENTRY)));
    const chunks = chunksOf(await bundle.write({ ...WRITTEN, dir: out, codeSplitting: { groups: [{ name: 'start', test: (id) => start.has(id) }] } }));
    const entry = chunks.find(({ isEntry }) => isEntry);
    return { entry: entry.fileName, start: [...withImports(chunks, entry)].map(({ fileName }) => fileName) };
  } finally {
    await bundle.close();
  }
}

/** @returns the workers' file names by their names */
export async function bundleWorkers({ root, out }) {
  const files = {};
  // One by one: each is to be whole in its file.
  for (const [name, source] of Object.entries(WORKERS)) {
    const bundle = await rolldown({ ...bundling(root, { [name]: source }), plugins: [slimEngineInBuild] });
    try {
      const [{ fileName }] = chunksOf(await bundle.write({ ...WRITTEN, dir: out }));
      files[name] = fileName;
    } finally {
      await bundle.close();
    }
  }
  return files;
}
