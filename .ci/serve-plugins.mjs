/**
 * What the development server and the browser tests share: TypeScript by
 * esbuild, workers as one bundled module each, packages that are not ES modules
 * wrapped once, and the content security policy on the app's own page.
 */
import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { build, context } from 'esbuild';
import { policy } from './policy.mjs';
import { slimEngine } from './slim-engine.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Packages without an ES module build; the page asks for them at these addresses. */
const WRAPPED = { papaparse: '/__packages/papaparse.js', svgpath: '/__packages/svgpath.js' };

const typescript = esbuildPlugin({ ts: true, target: 'es2022', tsconfig: `${root}tsconfig.json` });

function wrappedPackages() {
  const ready = new Map();
  const wrap = async (name) => {
    const result = await build({ stdin: { contents: `export { default } from '${name}';`, resolveDir: root }, bundle: true, format: 'esm', write: false });
    return result.outputFiles[0].text;
  };
  return {
    name: 'wrapped-packages',
    resolveImport: ({ source }) => WRAPPED[source],
    async serve({ path }) {
      const name = Object.keys(WRAPPED).find((each) => WRAPPED[each] === path);
      if (!name) return undefined;
      if (!ready.has(name)) ready.set(name, wrap(name));
      return { body: await ready.get(name), type: 'js' };
    },
  };
}

function bundledWorkers() {
  const builders = new Map();
  return {
    name: 'bundled-workers',
    async serve({ path }) {
      if (!/^\/workers\/.*\.worker\.ts$/.test(path)) return undefined;
      if (!builders.has(path)) {
        builders.set(path, context({ entryPoints: [`${root}${path.slice(1)}`], bundle: true, format: 'esm', target: 'es2022', sourcemap: 'inline', write: false, plugins: [slimEngine] }));
      }
      const { outputFiles } = await (await builders.get(path)).rebuild();
      return { body: outputFiles[0].text, type: 'js' };
    },
    async serverStop() {
      for (const builder of builders.values()) await (await builder).dispose();
    },
  };
}

/** Data files become modules: asked for as data they would be a connection, which the policy forbids. */
const dataModules = {
  name: 'data-modules',
  transform(context) {
    if (!/^\/sheets\/.*\.json$/.test(context.path)) return undefined;
    return { body: `export default ${context.body};`, headers: { 'content-type': 'text/javascript' } };
  },
  resolveMimeType: ({ path }) => (/^\/sheets\/.*\.json$/.test(path) ? 'js' : undefined),
};

/** The app lives under /src/, so that relative addresses are the same as in the built folder. */
export function appPage({ watch = false } = {}) {
  const header = policy(watch ? { 'connect-src': 'ws: wss:' } : {});
  return function page(context, next) {
    // The test runner's own page is / too, with a question after it.
    if (context.path === '/' && context.search === '') {
      context.redirect('/src/');
      return undefined;
    }
    if (context.path === '/src/' || context.path === '/src/index.html') {
      context.set('Content-Security-Policy', header);
    }
    return next();
  };
}

// Workers go before TypeScript: both want `.worker.ts`, and the first to serve a file wins.
export const servePlugins = [bundledWorkers(), wrappedPackages(), dataModules, typescript];
