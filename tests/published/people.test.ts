/**
 * The bounds within which a typed measure is believed hold all 1,986 women of
 * the 2012 Anthropometric Survey of U.S. Army Personnel (Gordon et al., Technical
 * Report NATICK/TR-15/007, 2014): least and greatest of each column, in mm, and
 * the girths woman by woman. Its waist is taken at the navel.
 */
import { expect, test } from 'vitest';
import { measureCalled, readMeasure } from '../../src/people/index.ts';
import { WOMEN } from './data/survey-women.ts';

/** Our measure, the survey's column, its least and greatest. */
const COLUMNS = [
  ['height', 'stature', 1409, 1829], ['neck base', 'neck circumference, base', 302, 457], ['round both shoulders', 'shoulder circumference', 852, 1225],
  ['bust', 'chest circumference', 695, 1266], ['waist', 'waist circumference', 611, 1334], ['hip', 'buttock circumference', 798, 1341],
  ['thigh', 'thigh circumference', 448, 870], ['calf', 'calf circumference', 282, 482], ['ankle', 'ankle circumference', 170, 275],
  ['upper arm', 'biceps circumference, flexed', 216, 435], ['wrist', 'wrist circumference', 124, 183], ['head', 'head circumference', 500, 635],
  ['shoulder length', 'shoulder length', 107, 175], ['back width', 'interscye', 270, 481], ['back waist length', 'waist back length', 345, 532],
  ['crotch length', 'crotch length', 495, 779], ['inside leg', 'crotch height', 610, 947], ['outside leg', 'waist height', 805, 1142],
  ['back neck to wrist', 'sleeve length, spine to wrist', 636, 930], ['arm length', 'sleeve outseam', 410, 662],
] as const;

test.each(COLUMNS)('%s (%s): %d to %d mm are believed', (key, _, least, greatest) => {
  const { from, to } = measureCalled(key)!;
  expect(from).toBeLessThan(least);
  expect(to).toBeGreaterThan(greatest);
});

test('none of the women’s girths is doubted, in cm or typed in inches', () => {
  for (const woman of WOMEN) {
    for (const key of ['bust', 'waist', 'hip'] as const) {
      expect(readMeasure(key, `${woman[key] / 10} cm`, 'cm')).not.toHaveProperty('doubt');
      expect(readMeasure(key, (woman[key] / 25.4).toFixed(2), 'in')).not.toHaveProperty('doubt');
    }
  }
});

test('every one of them typed a tenth is doubted, and the figure meant is offered', () => {
  for (const { waist } of WOMEN) {
    const reading = readMeasure('waist', `${waist / 100} cm`, 'cm');
    expect(reading.kind === 'length' && reading.doubt).toContain(`Is it ${(waist / 10).toFixed(1)} cm?`);
  }
});
