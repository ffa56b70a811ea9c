import { describe, expect, it } from 'vitest';
import { unbroken } from '../../../src/panels/unbroken.ts';

describe('a figure in a sentence', () => {
  it.each([
    ['at least 100.4 cm (39 ⅝ in).', 'at least 100.4·cm (39·⅝·in).'],
    ['Last time 27 3/4 in.', 'Last time 27·3/4·in.'],
    ['1 yd 4 in of it', '1·yd 4·in of it'],
    ['7 inches, 3 metres and 2 pieces', '7 inches, 3 metres and 2 pieces'],
  ])('keeps its fraction and its unit beside it: %s', (text, kept) => {
    expect(unbroken(text)).toBe(kept.replaceAll('·', '\u00a0'));
  });
});
