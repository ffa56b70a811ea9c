import { appPage, servePlugins } from './.ci/serve-plugins.mjs';

const watch = process.argv.includes('--watch');

export default {
  rootDir: '.',
  nodeResolve: true,
  watch,
  middleware: [appPage({ watch })],
  plugins: servePlugins,
  open: false,
};
