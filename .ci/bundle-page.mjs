/**
 * Bundles the page: what the first sight of it needs as one chunk, and each part
 * that comes later as chunks of its own; and the engine's worker, as one file.
 */
import { rolldown } from 'rolldown';
import { leanTemplates } from './lean-templates.mjs';
import { slimEngineInBuild } from './slim-engine.mjs';

/** Folders whose files do nothing when they are loaded: of these only what is used goes into a chunk. */
const PURE = /\/src\/(formula|keeping|lay|pictures|quantities|reckoning|sewing|tables|workbook)\//;
const ENTRY = '/src/app/main.ts';
const WORKER_URL = /\/src\/reckoning\/worker-url\.ts$/;
const WORKER_IN_SOURCE = "'../../workers/reckon/reckon.worker.ts'";

/** Points the page at the worker's hashed name. */
const workerAddress = (worker) => ({
  name: 'worker-address',
  transform: {
    filter: { id: WORKER_URL },
    handler(source, path) {
      if (!source.includes(WORKER_IN_SOURCE)) throw new Error(`${path} no longer names the worker as ${WORKER_IN_SOURCE}; change .ci/bundle-page.mjs with it.`);
      return { code: source.replace(WORKER_IN_SOURCE, `'./${worker}'`), map: null };
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
 * @param worker file name of the engine's worker
 * @returns the file that starts the page, and all that is fetched with it
 */
export async function bundlePage({ root, out, worker }) {
  const bundle = await rolldown({
    ...bundling(root, { page: ENTRY.slice(1) }),
    treeshake: { moduleSideEffects: [{ test: PURE, sideEffects: false }] },
    plugins: [workerAddress(worker), leanTemplates()],
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

/** @returns the worker's file name */
export async function bundleWorker({ root, out }) {
  const bundle = await rolldown({ ...bundling(root, { reckon: 'workers/reckon/reckon.worker.ts' }), plugins: [slimEngineInBuild] });
  try {
    const [{ fileName }] = chunksOf(await bundle.write({ ...WRITTEN, dir: out }));
    return fileName;
  } finally {
    await bundle.close();
  }
}
