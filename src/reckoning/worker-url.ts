/**
 * The only address a worker may be started from. The build puts the bundled
 * worker's name in place of the one below.
 */
export const reckonWorkerUrl = new URL('../../workers/reckon/reckon.worker.ts', import.meta.url);

const OURS: ReadonlySet<string> = new Set([reckonWorkerUrl.href]);

/** @throws {TypeError} when the address is not one of our own workers'. */
function checkedWorkerUrl(url: string): string {
  if (!OURS.has(url)) throw new TypeError(`No worker of this page is at ${url}.`);
  return url;
}

interface Policies {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): object };
}

const policy = (globalThis as { trustedTypes?: Policies }).trustedTypes?.createPolicy('tt-worker', { createScriptURL: checkedWorkerUrl });

export function startReckonWorker(): Worker {
  const url = policy?.createScriptURL(reckonWorkerUrl.href) ?? checkedWorkerUrl(reckonWorkerUrl.href);
  // Worker's type does not know of TrustedScriptURL, which it takes.
  return new Worker(url as string, { type: 'module', name: 'reckon' });
}
