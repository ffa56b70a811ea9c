/**
 * Leaves out of the engine library what nothing here asks for. Shared by the
 * build, the development server and the browser tests, so that all of them run
 * the same engine. A part is named by its whole path: when a version of the
 * library has it elsewhere, nothing is built.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const library = fileURLToPath(new URL('../node_modules/hyperformula/es/', import.meta.url));

/** A file of the library, and what stands there instead. */
const INSTEAD = {
  // Descriptions of its functions for programmers; ours are in src/formula/standard.
  'interpreter/functionMetadata/index.mjs': 'export const FUNCTION_DOCS = Object.create(null);\nexport * from "./FunctionDescription.mjs";\n',
};

const FILES = /[\\/]hyperformula[\\/]es[\\/]interpreter[\\/]functionMetadata[\\/]index\.mjs$/;

function instead(path) {
  return INSTEAD[path.replaceAll('\\', '/').split('/hyperformula/es/')[1]];
}

for (const file of Object.keys(INSTEAD)) {
  if (!existsSync(`${library}${file}`) || !FILES.test(`${library}${file}`)) throw new Error(`The engine library has no ${file}: look at .ci/slim-engine.mjs.`);
}

/** For esbuild. */
export const slimEngine = {
  name: 'slim-engine',
  setup({ onLoad }) {
    onLoad({ filter: FILES }, ({ path }) => ({ contents: instead(path), loader: 'js' }));
  },
};

/** For rolldown. */
export const slimEngineInBuild = {
  name: 'slim-engine',
  load: { filter: { id: FILES }, handler: instead },
};
