/** Chance that can be repeated: the same seed gives the same layout on every machine, which the platform's own generator does not promise. */
export class Random {
  #a: number;
  #b: number;
  #c: number;
  #count = 1;

  /** The small fast counting generator (Chris Doty-Humphrey's sfc32, public domain), written from its definition. */
  constructor(seed: number) {
    this.#a = seed | 0;
    this.#b = (seed / 0x1_0000_0000) | 0;
    this.#c = 0x2545f491;
    for (let i = 0; i < 12; i++) this.next();
  }

  /** At least 0, less than 1. */
  next(): number {
    const sum = (((this.#a + this.#b) | 0) + this.#count) | 0;
    this.#count = (this.#count + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = (((this.#c << 21) | (this.#c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 0x1_0000_0000;
  }

  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  shuffle(list: Int32Array, length = list.length): void {
    for (let i = length - 1; i > 0; i--) {
      const j = this.below(i + 1);
      const kept = list[i]!;
      list[i] = list[j]!;
      list[j] = kept;
    }
  }
}
