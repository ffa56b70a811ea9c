/** A list that asks at once when it is pointed at, and when it is left or confirmed when it is gone through by keys: choosing is one edit. */
export class SettledList {
  #byKeys = false;
  #held: string | null = null;

  constructor(private readonly ask: (value: string) => void) {}

  readonly change = (event: Event): void => {
    const { value } = event.target as HTMLSelectElement;
    if (this.#byKeys) this.#held = value;
    else this.ask(value);
  };

  readonly key = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') this.left();
    else this.#byKeys = true;
  };

  readonly pointer = (): void => {
    this.#byKeys = false;
  };

  readonly left = (): void => {
    const held = this.#held;
    this.#held = null;
    if (held !== null) this.ask(held);
  };
}
