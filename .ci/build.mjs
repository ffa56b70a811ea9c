/**
 * Makes `dist/`: one static folder for any web host, under any path. The page
 * and each worker are a bundle of their own, named by the hash of their content.
 * `node .ci/build.mjs somewhere` makes it there.
 */
import { copyFile, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { policy } from './policy.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = resolve(root, process.argv[2] ?? 'dist');
const common = {
  absWorkingDir: root, bundle: true, format: 'esm', target: 'es2022', minify: true, sourcemap: true,
  metafile: true, outdir: out, entryNames: '[name]-[hash]', chunkNames: '[name]-[hash]', assetNames: '[name]-[hash]',
};

const built = (result) => {
  const [file] = Object.entries(result.metafile.outputs).find(([, output]) => output.entryPoint);
  return basename(file);
};

await rm(out, { recursive: true, force: true });
await mkdir(out, { recursive: true });

const worker = built(await build({ ...common, entryPoints: ['workers/reckon/reckon.worker.ts'] }));

/** Points the page at the worker's hashed name. */
const workerAddress = {
  name: 'worker-address',
  setup({ onLoad }) {
    onLoad({ filter: /src\/reckoning\/worker-url\.ts$/ }, async ({ path }) => {
      const source = await readFile(path, 'utf8');
      const at = "'../../workers/reckon/reckon.worker.ts'";
      if (!source.includes(at)) throw new Error(`${path} no longer names the worker as ${at}; change .ci/build.mjs with it.`);
      return { contents: source.replace(at, `'./${worker}'`), loader: 'ts' };
    });
  },
};
const page = built(await build({ ...common, entryPoints: ['src/app/main.ts'], splitting: true, plugins: [workerAddress] }));

const html = (await readFile(`${root}src/index.html`, 'utf8'))
  .replace('./app/main.ts', `./${page}`)
  .replace('<link rel="icon"', `<meta http-equiv="Content-Security-Policy" content="${policy()}">\n    <link rel="icon"`);
await writeFile(`${out}/index.html`, html);
await copyFile(`${root}src/icon.svg`, `${out}/icon.svg`);

for (const file of [page, worker]) {
  const packed = gzipSync(await readFile(`${out}/${file}`)).length;
  console.log(`${file}  ${(packed / 1024).toFixed(1)} kB gzip`);
}
console.log(`Built ${out}. Serve it as it is from any web host.`);
