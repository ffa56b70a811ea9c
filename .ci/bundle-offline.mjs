/** Makes the service worker of a built folder: it holds the list of the folder's files, each with its content's hash. */
import { rolldown } from 'rolldown';
import { getManifest } from 'workbox-build';

export async function bundleOffline({ root, out }) {
  const { manifestEntries, warnings } = await getManifest({
    globDirectory: out, globPatterns: ['*.{html,js,css,svg,woff2,webmanifest}'], globIgnores: ['service-worker.js'],
    dontCacheBustURLsMatching: /-[\w-]{8}\.(js|css|woff2)$/, maximumFileSizeToCacheInBytes: 4_000_000,
  });
  if (warnings.length > 0) throw new Error(warnings.join('\n'));
  const bundle = await rolldown({
    cwd: root, input: 'workers/offline/service-worker.ts', platform: 'browser', tsconfig: `${root}tsconfig.json`,
    transform: { target: 'es2022', define: { BUILT_FILES: JSON.stringify(manifestEntries), 'process.env.NODE_ENV': '"production"' } },
  });
  try {
    await bundle.write({ format: 'iife', minify: true, sourcemap: true, file: `${out}/service-worker.js` });
  } finally {
    await bundle.close();
  }
}
