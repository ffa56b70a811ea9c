/** A finger or a pen that is held still for a while. One at a time. */
const HELD = 500;
/** Further than this is a drag. */
const STILL = 10;

export class LongPress {
  #timer = 0;
  #at = { x: 0, y: 0 };
  /** Held long enough: the click that may follow is none. */
  fired = false;

  constructor(private readonly held: (x: number, y: number) => void) {}

  down(event: PointerEvent): void {
    this.cancel();
    this.fired = false;
    if (!event.isPrimary) return;
    this.#at = { x: event.clientX, y: event.clientY };
    this.#timer = window.setTimeout(() => {
      this.#timer = 0;
      this.fired = true;
      this.held(this.#at.x, this.#at.y);
    }, HELD);
  }

  move(event: PointerEvent): void {
    if (this.#timer && Math.hypot(event.clientX - this.#at.x, event.clientY - this.#at.y) > STILL) this.cancel();
  }

  cancel(): void {
    clearTimeout(this.#timer);
    this.#timer = 0;
  }
}
