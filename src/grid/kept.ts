/** Makes something anew only when one of the things it is made of is another. */
export class Kept<T> {
  #of: readonly unknown[] | null = null;
  #is: T | null = null;

  of(parts: readonly unknown[], make: (before: T | null) => T): T {
    if (this.#is === null || parts.some((each, at) => each !== this.#of![at])) {
      this.#of = parts;
      this.#is = make(this.#is);
    }
    return this.#is;
  }
}
