/** Every function with a picture, for random figures, small and large. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PICTURED, pictureFor } from '../../../src/pictures/index.ts';
import { functionNamed } from '../../../src/sewing/index.ts';
import { callsOf, SHOWN } from './calls.ts';
import { expectSound } from './sound.ts';

const RUNS = 400;

describe.each(PICTURED)('%s', (name) => {
  it('is a function', () => {
    expect(functionNamed(name)).toBeDefined();
  });

  it('has a picture with every label in it and apart from the others', () => {
    let drawn = 0;
    fc.assert(fc.property(callsOf(name), fc.constantFrom(...SHOWN), (call, as) => {
      if (call === null) return;
      const picture = pictureFor(call, as);
      if (picture === undefined) return;
      drawn += 1;
      expectSound(picture);
    }), { numRuns: RUNS, seed: 4 });
    expect(drawn).toBeGreaterThan(RUNS / 20);
  });
});
