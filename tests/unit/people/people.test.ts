/** Reading measures, comparing sets, and joining what two workbooks know of a person. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MEASURES, NOBODY, courseOf, joined, measuredOf, newestOf, peopleIn, readMeasure, spellingFault, withUnit } from '../../../src/people/index.ts';
import { tidyRecord, type MeasureSet, type Person } from '../../../src/workbook/index.ts';
import { demoBook } from '../../../src/app/demo.ts';

const set = (id: string, day: string, measures: Record<string, string>, more: Partial<MeasureSet> = {}): MeasureSet => (
  { id, day, by: '', remark: '', measures: Object.entries(measures).map(([of, raw]) => ({ of, raw })), ...more });
const person = (more: Partial<Person> = {}): Person => ({ ...NOBODY, name: 'Mara', ...more });
const OLD = set('a', '2025-10-04', { bust: '36 1/2 in', waist: '74 cm', hip: '98 cm' });
const NEW = set('b', '2026-11-03', { waist: '76 cm', 'round the fist': '22 cm', hip: '' });

describe('a measure as it is typed', () => {
  test.each([
    ['waist', '76', 'cm', 760], ['waist', '30 1/4', 'in', 768.35], ['waist', '76 cm', 'in', 760], ['waist', '30 in', 'cm', 762],
    ['waist', '76,5', 'cm', 765], ['her own', '2', 'cm', 20],
  ] as const)('%s %s with bare figures in %s', (of, raw, unit, mm) => {
    const reading = readMeasure(of, raw, unit);
    expect(reading).toMatchObject({ kind: 'length' });
    expect(reading.kind === 'length' && reading.quantity.value).toBeCloseTo(mm, 9);
    expect(reading).not.toHaveProperty('doubt');
  });

  test('a bare figure is kept with its unit, so that it means the same wherever it goes', () => {
    expect([withUnit(' 76 ', 'cm'), withUnit('30 1/4', 'in'), withUnit('76 cm', 'in'), withUnit('wide', 'cm')]).toEqual(['76 cm', '30 1/4 in', '76 cm', 'wide']);
  });

  test.each([
    ['9.1 cm', 'cm', /^Waist: 9\.1 cm is very small; bodies have 40\.0 cm to 180\.0 cm there\. Is it 91\.0 cm\? It is kept as you typed it\.$/],
    ['910', 'cm', /very large.*Is it 91\.0 cm\?/],
    ['36', 'cm', /Is it 36 in\?/],
    ['94', 'in', /very large; bodies have 16 in to 71 in there\. Is it 94\.0 cm\?/],
    ['2 cm', 'cm', /there\. It is kept/],
  ] as const)('a waist of %s is doubted in one sentence', (raw, unit, sentence) => {
    const reading = readMeasure('waist', raw, unit);
    expect(reading.kind === 'length' && reading.doubt).toMatch(sentence);
  });

  test('of two guesses the one nearer to the last figure is offered', () => {
    const guess = (last?: number) => { const reading = readMeasure('height', '68 cm', 'cm', last); return reading.kind === 'length' ? reading.doubt : ''; };
    expect(guess(1727)).toMatch(/Is it 68 in\?/);
  });

  test.each(['wide', '86-90 cm', '2 1/0 in', '-4 cm', '0 cm', '30 %', '=A1', '12 m2'])('%s is no measure, and the sentence names it', (raw) => {
    const reading = readMeasure('waist', raw, 'cm');
    expect(reading.kind === 'wrong' && reading.sentence).toMatch(/^Waist: .*\.$/);
  });

  test('any text whatever gives nothing, a length or a sentence', () => {
    fc.assert(fc.property(fc.string({ maxLength: 30 }), fc.constantFrom('cm', 'in'), (raw, unit) => {
      const reading = readMeasure('waist', raw, unit);
      if (reading.kind === 'length') expect(reading.quantity.value).toBeGreaterThan(0);
      else if (reading.kind === 'wrong') expect(reading.sentence).toMatch(/^Waist: [^]*[.?]$/);
      else expect(raw.trim()).toBe('');
    }));
  });

  test('every measure has a key that can name a cell, a sentence, and bounds', () => {
    expect(new Set(MEASURES.map(({ key }) => key)).size).toBe(MEASURES.length);
    for (const { taken, from, to, term } of MEASURES) {
      expect(taken).toMatch(/^[A-Z].*\.$/);
      expect(from).toBeLessThan(to);
      expect(term).not.toBe('');
    }
  });
});

describe('sets of measures', () => {
  test('the newest figure of each measure, from whichever set has it; an empty one does not hide an older', () => {
    const found = newestOf(person({ sets: [OLD, NEW] }));
    expect(found.map(({ of, raw, set: { id } }) => [of, raw, id])).toEqual([['bust', '36 1/2 in', 'a'], ['waist', '76 cm', 'b'], ['hip', '98 cm', 'a'], ['round the fist', '22 cm', 'b']]);
    expect(measuredOf(person())).toEqual([]);
  });

  test('one measure over time, without what is no length', () => {
    const course = courseOf(person({ sets: [OLD, set('x', '2026-01-01', { waist: 'as before' }), NEW] }), 'waist');
    expect(course.map(({ day, quantity: { value } }) => [day, value])).toEqual([['2025-10-04', 740], ['2026-11-03', 760]]);
  });

  test('her own measures need a new name', () => {
    expect(spellingFault('Waist', ['waist'])).toMatch(/in the list already/);
    expect(spellingFault(' ', [])).toMatch(/^Type what/);
    expect(spellingFault('x'.repeat(61), [])).toMatch(/61 characters/);
    expect(spellingFault('round the fist', ['waist'])).toBe(null);
  });
});

describe('joined from two workbooks', () => {
  test('what only one has is there, what both have is there once', () => {
    const { person: both, clashes, sets } = joined(person({ sets: [OLD], notes: 'narrow shoulder' }), person({ name: 'M.', child: true, sets: [NEW, OLD], notes: 'narrow shoulder\nbelow the knee' }));
    expect(both).toEqual(person({ child: true, sets: [OLD, NEW], notes: 'narrow shoulder\nbelow the knee' }));
    expect([clashes, sets]).toEqual([[], 1]);
  });

  test('the same set under another id is the same set', () => {
    expect(joined(person({ sets: [OLD] }), person({ sets: [{ ...OLD, id: 'z' }] })).person.sets).toEqual([OLD]);
  });

  test('a set that was corrected in one of them: both stay unless she chooses', () => {
    const mended = set('a', OLD.day, { bust: '37 in' });
    const by = (choice: 'here' | 'there' | 'both') => joined(person({ sets: [OLD] }), person({ sets: [mended] }), () => choice).person.sets;
    const { clashes, person: kept } = joined(person({ sets: [OLD] }), person({ sets: [mended] }));
    expect(clashes).toEqual([{ what: 'set', id: 'a', here: OLD, there: mended }]);
    expect(kept.sets.map(({ id }) => id)).toEqual(['a', 'a 2']);
    expect([by('here'), by('there'), by('both').length]).toEqual([[OLD], [mended], 2]);
    expect(joined(kept, person({ sets: [mended] })).person, 'once more brings nothing').toEqual(kept);
  });

  const sets = fc.uniqueArray(fc.record({
    id: fc.constantFrom('a', 'b', 'c', 'd'), day: fc.constantFrom('2025-01-01', '2026-01-01'), by: fc.constant(''), remark: fc.constantFrom('', 'in winter'),
    measures: fc.uniqueArray(fc.record({ of: fc.constantFrom('waist', 'hip'), raw: fc.constantFrom('70 cm', '30 in', '') }, { noNullPrototype: true }), { selector: ({ of }) => of }),
  }, { noNullPrototype: true }), { selector: ({ id }) => id });
  const people = fc.record({ sets, notes: fc.constantFrom('', 'a', 'a\nb', 'c') }).map((parts) => person(parts));

  test('nothing of either is lost, twice is once, and the record stays one that is kept', () => {
    const content = ({ id: _, ...rest }: MeasureSet) => JSON.stringify(rest);
    fc.assert(fc.property(people, people, (here, there) => {
      const { person: both } = joined(here, there);
      for (const each of [...here.sets, ...there.sets]) expect(both.sets.map(content)).toContain(content(each));
      for (const line of `${here.notes}\n${there.notes}`.split('\n')) expect(both.notes.split('\n')).toContain(line === '' ? both.notes.split('\n')[0] : line);
      expect(joined(both, there).person).toEqual(both);
      expect(tidyRecord('person', 'p', both)?.data).toEqual(both);
    }));
  });
});

describe('who is in a workbook', () => {
  test('the demo garment has no record, so its measures are read from the named cells', () => {
    const [found] = peopleIn(demoBook('demo'), '2026-11-25');
    expect(found).toMatchObject({ fromCells: true, person: { name: 'Aunt Oda', sets: [{ day: '2026-11-03', by: 'herself, with a friend' }] } });
    expect(found!.person.sets[0]!.measures).toContainEqual({ of: 'waist', raw: '77.5 cm' });
  });

  test('a record, without where its measures stand in that workbook', () => {
    const book = { ...demoBook('demo'), records: [{ kind: 'person', id: 'p', data: person({ put: [{ of: 'waist', cell: '=Fit!B2', raw: '70 cm' }] }) } as const] };
    expect(peopleIn(book, '2026-11-25')).toEqual([{ id: 'p', person: person(), fromCells: false }]);
  });
});
