import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countOf, inRuns, joinRuns, normalRuns, runsOf, withoutRun } from '../../../src/workbook/index.ts';
import { moveRuns, shiftRuns } from '../../../src/workbook/runs.ts';

const places = fc.uniqueArray(fc.nat(30), { maxLength: 20 });
const listed = (runs: readonly (readonly [number, number])[]): number[] => runs.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, at) => first + at));
const sorted = (list: Iterable<number>): number[] => [...list].sort((a, b) => a - b);

test('any stretches come into their normal form', () => {
  expect(normalRuns([[5, 6], [1, 2], [3, 3], [9, 8], [6, 7]])).toEqual([[1, 3], [5, 7]]);
  expect(normalRuns([[2, 9]], 5)).toEqual([[2, 4]]);
  expect(normalRuns([])).toEqual([]);
});

test('runs hold just the places they were made of', () => {
  fc.assert(fc.property(places, places, fc.nat(30), fc.nat(5), (some, others, from, length) => {
    const runs = runsOf(some);
    expect(listed(runs)).toEqual(sorted(some));
    expect(runs.every(([first], at) => at === 0 || first > runs[at - 1]![1] + 1)).toBe(true);
    expect(countOf(runs)).toBe(some.length);
    for (let place = 0; place <= 31; place++) expect(inRuns(runs, place)).toBe(some.includes(place));
    expect(joinRuns(runs, runsOf(others))).toEqual(runsOf([...new Set([...some, ...others])]));
    expect(withoutRun(runs, from, from + length)).toEqual(runsOf(some.filter((place) => place < from || place > from + length)));
  }));
});

test('they follow rows that come, go and change places', () => {
  fc.assert(fc.property(places, fc.nat(30), fc.integer({ min: 1, max: 5 }), fc.nat(34), (some, at, count, to) => {
    const runs = runsOf(some);
    const inserted = some.map((place) => (place < at ? place : place + count));
    expect(shiftRuns(runs, { axis: 'rows', kind: 'insert', at, count }, 100)).toEqual(runsOf(inserted));
    const left = some.filter((place) => place < at || place >= at + count).map((place) => (place < at ? place : place - count));
    expect(shiftRuns(runs, { axis: 'rows', kind: 'remove', at, count }, 100)).toEqual(runsOf(left));
    if (to > at && to < at + count) return;
    const order = Array.from({ length: 50 }, (_, place) => place);
    const taken = order.splice(at, count);
    order.splice(to <= at ? to : to - count, 0, ...taken);
    expect(moveRuns(runs, { at, count, to })).toEqual(runsOf(some.map((place) => order.indexOf(place))));
  }));
});

test('what is pushed over the edge is gone', () => {
  expect(shiftRuns([[3, 9]], { axis: 'rows', kind: 'insert', at: 5, count: 3 }, 10)).toEqual([[3, 4], [8, 9]]);
});
