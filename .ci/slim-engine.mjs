/**
 * Leaves out of the engine library what nothing here asks for. Shared by the
 * build, the development server and the browser tests, so that all of them run
 * the same engine. A part is named by its whole path: a version of the library
 * that has moved it stops the build instead of coming back in unseen.
 */
const EMPTY_TEXTS = 'export const FUNCTION_DOCS = Object.create(null);\nexport * from "./FunctionDescription.mjs";\n';

/** Path in the library's `es` folder, and what stands there instead. */
const INSTEAD = {
  // Descriptions of its functions for a programmer; ours are in src/formula/standard.
  'interpreter/functionMetadata/index.mjs': EMPTY_TEXTS,
};

export function slimEngine() {
  return {
    name: 'slim-engine',
    setup({ onLoad, onStart, onEnd }) {
      const met = new Set();
      onStart(() => met.clear());
      onLoad({ filter: /hyperformula[\\/]es[\\/]/ }, ({ path }) => {
        const name = path.replaceAll('\\', '/').split('/hyperformula/es/')[1];
        if (!(name in INSTEAD)) return undefined;
        met.add(name);
        return { contents: INSTEAD[name], loader: 'js' };
      });
      onEnd(({ metafile }) => {
        const missing = Object.keys(INSTEAD).filter((name) => !met.has(name));
        const uses = metafile ? Object.keys(metafile.inputs).some((path) => path.includes('hyperformula/es/')) : false;
        return uses && missing.length > 0 ? { errors: [{ text: `The engine library no longer has ${missing.join(', ')}: look at .ci/slim-engine.mjs.` }] } : undefined;
      });
    },
  };
}
