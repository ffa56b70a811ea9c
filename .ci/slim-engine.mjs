/**
 * Leaves out of the engine library and of the clipping library what nothing
 * here asks for. Shared by the build, the development server and the browser
 * tests, so that all of them run the same workers. A part is named by its whole
 * path: when a version of a library has it elsewhere, nothing is built.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const packages = fileURLToPath(new URL('../node_modules/', import.meta.url));

/** A file of a library, and what stands there instead. */
const INSTEAD = {
  // Descriptions of its functions for programmers; ours are in src/formula/standard.
  'hyperformula/es/interpreter/functionMetadata/index.mjs': 'export const FUNCTION_DOCS = Object.create(null);\nexport * from "./FunctionDescription.mjs";\n',
  // Only unions and offsets are made.
  'clipper2-ts/dist/RectClip.js': 'export class OutPt2 {}\nexport class RectClip64 {}\nexport class RectClipLines64 {}\n',
  'clipper2-ts/dist/Triangulation.js': 'export const TriangulateResult = {};\nexport class Delaunay {}\n',
};

const FILES = /[\\/]node_modules[\\/](?:hyperformula[\\/]es[\\/]interpreter[\\/]functionMetadata[\\/]index\.mjs|clipper2-ts[\\/]dist[\\/](?:RectClip|Triangulation)\.js)$/;

function instead(path) {
  return INSTEAD[path.replaceAll('\\', '/').split('/node_modules/').at(-1)];
}

for (const file of Object.keys(INSTEAD)) {
  if (!existsSync(`${packages}${file}`) || !FILES.test(`${packages}${file}`)) throw new Error(`There is no ${file} among the libraries: look at .ci/slim-engine.mjs.`);
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
