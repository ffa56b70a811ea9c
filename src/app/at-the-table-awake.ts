/** Keeps the screen on for as long as it is wanted, where the browser can (Screen Wake Lock, W3C). */
import type { Awake } from '../panels/index.ts';

export class KeptAwake {
  state: Awake = 'cannot';
  #wanted = false;
  #lock: WakeLockSentinel | null = null;

  constructor(private readonly changed: () => void) {}

  begin(): void {
    this.#wanted = true;
    document.addEventListener('visibilitychange', this.#again);
    void this.#ask();
  }

  end(): void {
    this.#wanted = false;
    document.removeEventListener('visibilitychange', this.#again);
    void this.#lock?.release().catch(() => undefined);
    this.#lock = null;
  }

  /** The browser lets go whenever the page is out of sight. */
  readonly #again = (): void => {
    if (this.#wanted && document.visibilityState === 'visible' && (this.#lock?.released ?? true)) void this.#ask();
  };

  async #ask(): Promise<void> {
    // Older browsers have none, whatever the types say.
    const { wakeLock } = navigator as Partial<Navigator>;
    if (!wakeLock) {
      this.#become('cannot');
      return;
    }
    try {
      const lock = await wakeLock.request('screen');
      if (!this.#wanted) {
        await lock.release();
        return;
      }
      this.#lock = lock;
      this.#become('on');
    } catch {
      // A low battery, or a page out of sight.
      this.#become('refused');
    }
  }

  #become(state: Awake): void {
    this.state = state;
    this.changed();
  }
}
