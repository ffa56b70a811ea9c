/**
 * The only addresses a worker may be started from. The build puts the bundled
 * workers' names in place of the ones below.
 */
export const reckonWorkerUrl = new URL('../../workers/reckon/reckon.worker.ts', import.meta.url);
export const layWorkerUrl = new URL('../../workers/lay/lay.worker.ts', import.meta.url);

const OURS: ReadonlySet<string> = new Set([reckonWorkerUrl.href, layWorkerUrl.href]);

/** @throws {TypeError} when the address is not one of our own workers'. */
function checkedWorkerUrl(url: string): string {
  if (!OURS.has(url)) throw new TypeError(`No worker of this page is at ${url}.`);
  return url;
}

interface Policies {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): object };
}

const policy = (globalThis as { trustedTypes?: Policies }).trustedTypes?.createPolicy('tt-worker', { createScriptURL: checkedWorkerUrl });

function start(address: URL, name: string): Worker {
  const url = policy?.createScriptURL(address.href) ?? checkedWorkerUrl(address.href);
  // Worker's type does not know of TrustedScriptURL, which it takes.
  return new Worker(url as string, { type: 'module', name });
}

export const startReckonWorker = (): Worker => start(reckonWorkerUrl, 'reckon');
export const startLayWorker = (): Worker => start(layWorkerUrl, 'lay');
