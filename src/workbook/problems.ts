import { counted } from './limits.ts';

const MOST = 100;

/** Takes down what could not be read; after the first hundred only their number. */
export class Problems {
  readonly #sentences: string[] = [];
  #more = 0;

  add(sentence: string): void {
    if (this.#sentences.length < MOST) this.#sentences.push(sentence);
    else this.#more++;
  }

  list(): string[] {
    return this.#more === 0 ? this.#sentences : [...this.#sentences, `And ${counted(this.#more)} more of these.`];
  }
}
