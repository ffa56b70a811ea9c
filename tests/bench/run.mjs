/**
 * Bundles the benchmarks as the worker is bundled and runs them:
 *   node --expose-gc tests/bench/run.mjs [part of a name]
 * Prints ratios measured in one process; absolute times say more about the
 * machine than about the program.
 */
import { build } from 'esbuild';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const here = fileURLToPath(new URL('.', import.meta.url));
const folder = await mkdtemp(join(tmpdir(), 'tape-and-tally-bench-'));
try {
  for (const name of ['engine', 'opening', 'trials']) {
    const outfile = join(folder, `${name}.mjs`);
    await build({
      entryPoints: [join(here, `${name}.bench.ts`)], outfile, bundle: true, format: 'esm', platform: 'node', target: 'es2022',
      tsconfig: join(here, '../../tsconfig.json'), logLevel: 'warning',
    });
    const { run } = await import(pathToFileURL(outfile).href);
    await run(process.argv[2] ?? '');
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}
