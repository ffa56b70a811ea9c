/**
 * Keeps the whole app on the device, so that it opens and works without a
 * network. A new version is fetched beside the one in use and waits: it comes
 * into use when the page says that she asked for it, or when no page is open.
 */
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';
import { USE_IT_NOW } from '../../src/app/new-version-message.ts';

/** All files of the built folder, put in by `.ci/bundle-offline.mjs`. */
declare const BUILT_FILES: readonly { readonly url: string; readonly revision: string | null }[];

// The page takes nothing from what follows a question mark, so that changes no file.
precacheAndRoute([...BUILT_FILES], { ignoreURLParametersMatching: [/./] });
cleanupOutdatedCaches();

addEventListener('message', ({ data }) => {
  if (data === USE_IT_NOW) void (self as unknown as { skipWaiting(): Promise<void> }).skipWaiting();
});
