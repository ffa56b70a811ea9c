/** What a cell refuses, and the sentence that says what to write instead. */
import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../../src/quantities/index.ts';

function refusal(text: string, meant: 'figure' | 'text'): string {
  const reading = readQuantity(text);
  if (reading.kind !== 'refused') throw new Error(`${text}: ${JSON.stringify(reading)}`);
  expect(reading.meant).toBe(meant);
  return reading.sentence;
}

describe('figures that are wrong', () => {
  it.each([
    ['1/0', '“1/0” divides by 0: write a fraction such as 1/2 or 2 1/4.'],
    ['2 1/0 in', '“2 1/0” divides by 0: write a fraction such as 1/2 or 2 1/4.'],
    ['0/0', '“0/0” divides by 0: write a fraction such as 1/2 or 2 1/4.'],
    ['2 5/4 in', 'The fraction of “2 5/4” is not below 1: write 3 1/4 in if that is meant.'],
    ['5/4 in', 'The fraction of “5/4” is not below 1: write 1 1/4 in if that is meant.'],
    ['8/8 in', 'The fraction of “8/8” is not below 1: write 1 in if that is meant.'],
    ['2 5/4', 'The fraction of “2 5/4” is not below 1: write 3 1/4 if that is meant.'],
    ['1-5/4 in', 'The fraction of “5/4” is not below 1: write 1 1/4 in if that is meant.'],
    ['1/3 in', '“1/3”: a tape is not marked in thirds, so they are read only in yards. Write ⅓ in if a third is meant.'],
    ['2 2/3 cm', '“2 2/3”: a tape is not marked in thirds, so they are read only in yards. Write 2⅔ cm if a third is meant.'],
    ['1/10 in', '“1/10”: fractions are read in halves, 4ths, 8ths, 16ths, 32nds and 64ths. Write a decimal, such as 0.1 in.'],
    ['2 3/7 cm', '“2 3/7”: fractions are read in halves, 4ths, 8ths, 16ths, 32nds and 64ths. Write a decimal, such as 2.4286 cm.'],
    ['1 1/128 in', '“1 1/128”: fractions are read in halves, 4ths, 8ths, 16ths, 32nds and 64ths. Write a decimal, such as 1.0078 in.'],
    ['⅕ in', '“⅕”: fractions are read in halves, 4ths, 8ths, 16ths, 32nds and 64ths. Write a decimal, such as 0.2 in.'],
    ['2.5 1/4 in', '“2.5 1/4” has decimals and a fraction: write one or the other, such as 2.25 or 2 1/4.'],
    ['2 14 in', '“2 14 in” has more than one number for one unit: write one, such as 2 1/4 in, and no space between thousands.'],
    ['1 234 m', '“1 234 m” has more than one number for one unit: write one, such as 2 1/4 in, and no space between thousands.'],
    ['1,234', '“1,234” can be read in two ways: write 1234 or 1.234.'],
    ['1,234 m', '“1,234” can be read in two ways: write 1234 m or 1.234 m.'],
    ['1.234,5', '“1.234,5” has marks between its thousands: write 1234.5.'],
    ['1,234.5 cm', '“1,234.5” has marks between its thousands: write 1234.5 cm.'],
    ['1,234,567', '“1,234,567” has marks between its thousands: write 1234567.'],
    ['1.2.3 cm', '“1.2.3” has more than one decimal mark: write one, such as 5.5.'],
    ['1 yd 4', 'In “1 yd 4” the 4 has no unit: write it, as in 1 yd 4 in.'],
    ['1 m 20', 'In “1 m 20” the 20 has no unit: write it, as in 1 yd 4 in.'],
    ['4 in 1 yd', '“4 in 1 yd”: write the larger unit first and each unit once, as in 1 yd 4 in.'],
    ['4 in 4 in', '“4 in 4 in”: write the larger unit first and each unit once, as in 1 yd 4 in.'],
    ['1 yd 5 cm', '“1 yd 5 cm” mixes units that do not go together: write one figure, such as 1 yd 4 in or 1 m 20 cm.'],
    ['3 % 4 cm', '“3 % 4 cm” mixes units that do not go together: write one figure, such as 1 yd 4 in or 1 m 20 cm.'],
    ['2 m 3 cm²', '“2 m 3 cm²” mixes units that do not go together: write one figure, such as 1 yd 4 in or 1 m 20 cm.'],
    ['2 m² 3 cm²', '“2 m² 3 cm²” mixes units that do not go together: write one figure, such as 1 yd 4 in or 1 m 20 cm.'],
    ['3 yd 2 ft 5 cm', '“3 yd 2 ft 5 cm” mixes units that do not go together: write one figure, such as 1 yd 4 in or 1 m 20 cm.'],
    ["5'12", '“5\'12” has 12 inches or more after its feet: write inches below 12, or the unit after them.'],
    ["5.5'-6\"", '“5.5\'-6"” runs from the greater to the less: write the smaller figure first. (To take one from the other, start with =.)'],
    ['5 ft -6 in', '“5 ft -6 in” runs from the greater to the less: write the smaller figure first. (To take one from the other, start with =.)'],
    ['5 ft- 6 in', '“5 ft- 6 in” runs from the greater to the less: write the smaller figure first. (To take one from the other, start with =.)'],
    ['1-4/4 in', 'The fraction of “4/4” is not below 1: write 1 in if that is meant.'],
    ['123,456', '“123,456” can be read in two ways: write 123456 or 123.456.'],
    ['5yd2', '“5yd2” can be read in two ways: write 5 yd 2 in or 5 yd².'],
    ["5'14", '“5\'14” has 12 inches or more after its feet: write inches below 12, or the unit after them.'],
    ['5ft2', '“5ft2” can be read in two ways: write 5 ft 2 in or 5 ft².'],
    ['90–86 cm', '“90–86 cm” runs from the greater to the less: write the smaller figure first. (To take one from the other, start with =.)'],
    ['90 to 86', '“90 to 86” runs from the greater to the less: write the smaller figure first. (To take one from the other, start with =.)'],
    ['2 - 1/4 in', '“2 - 1/4 in” runs from the greater to the less: write the smaller figure first. (To take one from the other, start with =.)'],
    ['86 cm – 5 %', 'The two ends of “86 cm – 5 %” are not of one kind: give both the same sort of unit, as in 86–90 cm.'],
    ['1000000000000000 mm', '“1000000000000000 mm” is larger than a cell can keep: write a number of at most 15 figures before the point.'],
  ])('%s', (text, sentence) => {
    expect(refusal(text, 'figure')).toBe(sentence);
  });

  it('refuses numbers of 400 figures with a sentence, however long', () => {
    for (const length of [16, 60, 400, 401, 100_000]) {
      expect(refusal('9'.repeat(length), 'figure')).toMatch(/ than a cell can keep: write .*at most 15 figures before the point\.$/);
      expect(refusal(`-${'9'.repeat(length)}`, 'figure')).toMatch(/than a cell can keep/);
    }
  });

  it('quotes no more of a long text than a sentence can carry', () => {
    for (const text of ['9'.repeat(399), `1/${'9'.repeat(300)} in`, `5 ${'x'.repeat(300)}`, `${'1 '.repeat(190)}in`, `${'1 yd '.repeat(70)}x`, `${'1'.repeat(300)} 1/3 in`, `1,${'234,'.repeat(90)}234 in`, `${'1'.repeat(300)}ft2`, `1${' 250'.repeat(90)}`]) {
      const reading = readQuantity(text);
      expect(reading.kind === 'refused' && reading.sentence.length <= 220, text).toBe(true);
    }
  });
});

describe('kept as text, with a remark', () => {
  it.each([
    ['8 buttons', '“buttons” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['5 furlongs', '“furlongs” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['8buttons', '“buttons” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['5 m 3 furlongs', '“furlongs” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['10-12 years', '“years” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['5 M', '“M” is kept as text, since it may be a size: write m for metres.'],
    ['140 cm wide', '“wide” stands after “140 cm”, so this is kept as text: write “140 cm” in a cell by itself to reckon with it.'],
    ['2 1/4 in seam', '“seam” stands after “2 1/4 in”, so this is kept as text: write “2 1/4 in” in a cell by itself to reckon with it.'],
    ['1e3', '“1e3” is kept as text, since numbers are not read with an e: write it out in full, such as 1000.'],
    ['1e308', '“1e308” is kept as text, since numbers are not read with an e: write it out in full, such as 1000.'],
    ['2E-5', '“2E-5” is kept as text, since numbers are not read with an e: write it out in full, such as 1000.'],
    ['5e', '“e” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['5 e3', '“e” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['1/3', '“1/3” is kept as text, since it may be a size: write ⅓ or =1/3 for the number.'],
    ['2/3', '“2/3” is kept as text, since it may be a size: write ⅔ or =2/3 for the number.'],
    ['2.5XL', '“XL” is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.'],
    ['1 250', '“1 250” is kept as text, since it may be two numbers: write 1250 for one.'],
  ])('%s', (text, sentence) => {
    expect(refusal(text, 'text')).toBe(sentence);
  });
});
