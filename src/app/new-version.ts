/**
 * The app on the device, for work without a network, and a new version of it:
 * offered when it has been fetched, used when she asks for it. The page never
 * loads itself anew otherwise.
 */
import type { Keeper } from '../keeping/index.ts';
import { USE_IT_NOW } from './new-version-message.ts';

const SERVICE_WORKER = './service-worker.js';

interface Policies {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): object };
}

export class NewVersion extends EventTarget {
  /** `waiting`: it can be used when she wishes. `elsewhere`: another tab has begun to use it. */
  state: 'none' | 'waiting' | 'elsewhere' = 'none';
  /** Why it was not used when she asked. */
  sentence = '';
  #waiting: ServiceWorker | null = null;
  #asked = false;

  constructor(private readonly keeper: Pick<Keeper, 'state' | 'settled'>) {
    super();
  }

  /**
   * Fetches all of the app on to the device and looks for a newer one. Only the
   * built page has a manifest: while it is being developed nothing is kept.
   */
  async begin(): Promise<void> {
    if (!('serviceWorker' in navigator) || !document.querySelector('link[rel=manifest]')) return;
    const { serviceWorker } = navigator;
    // A page that was loaded without one gets its first; that is no new version.
    let known = serviceWorker.controller;
    serviceWorker.addEventListener('controllerchange', () => {
      if (this.#asked) location.reload();
      else if (known) this.#become('elsewhere');
      known = serviceWorker.controller;
    });
    const registration = await serviceWorker.register(checkedAddress()).catch(() => null);
    if (!registration) return;
    const look = (): void => {
      if (!registration.waiting || !serviceWorker.controller) return;
      this.#waiting = registration.waiting;
      this.#become('waiting');
    };
    look();
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', look);
    });
  }

  /** Loads the page anew with it, once all that was typed is kept. */
  async use(): Promise<void> {
    const { keeper } = this;
    if (keeper.state.state === 'keeping') await keeper.settled();
    const { state } = keeper;
    if (state.state === 'not kept' && state.waiting > 0) {
      this.sentence = 'What you typed last is not kept yet: save a copy as a file first.';
      this.dispatchEvent(new Event('change'));
      return;
    }
    this.#asked = true;
    if (this.state === 'elsewhere') location.reload();
    else this.#waiting?.postMessage(USE_IT_NOW);
  }

  #become(state: 'waiting' | 'elsewhere'): void {
    this.state = state;
    this.dispatchEvent(new Event('change'));
  }
}

/** The one service worker there is, as the page's policy wants to be told it. */
function checkedAddress(): string {
  const policy = (globalThis as { trustedTypes?: Policies }).trustedTypes?.createPolicy('tt-offline', {
    createScriptURL: (url) => {
      if (url !== SERVICE_WORKER) throw new TypeError(`No service worker of this page is at ${url}.`);
      return url;
    },
  });
  // The type of `register` does not know of TrustedScriptURL, which it takes.
  return (policy?.createScriptURL(SERVICE_WORKER) ?? SERVICE_WORKER) as string;
}
