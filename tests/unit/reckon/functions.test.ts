/**
 * Every function that there is, one by one. Given lengths, what comes back is
 * an error or scales as its unit says: ten times the lengths must give ten
 * times a length, a hundred times an area, and the same plain number. A bare
 * number of millimetres would grow, whatever function let it out.
 */
import { describe, expect, test } from 'vitest';
import { UNITS } from '../../../src/quantities/index.ts';
import type { Result } from '../../../src/reckoning/protocol.ts';
import { functionNamed, FUNCTIONS } from '../../../src/sewing/index.ts';
import type { SewingFunction } from '../../../src/sewing/index.ts';
import { ADDED_NAMES, policyOf, POLICY_NAMES } from '../../../workers/reckon/functions/policy.ts';
import { HyperFormula } from '../../../workers/reckon/internals.ts';
import { Desk, said } from './desk.ts';

const LIBRARY = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3' })._functionRegistry.getRegisteredFunctionIds().sort();
const OURS = FUNCTIONS.map(({ name }) => name);
const ALL = [...new Set([...LIBRARY, ...ADDED_NAMES, ...OURS])];

/** Lists of values with lengths among them; `L`, `M`, `N` are cells with lengths, `B` a block of them, `S` an area, `G` an angle. */
const LISTS: readonly (readonly string[])[] = [
  ['L'], ['B'], ['S'], ['L', 'M'], ['B', 'L'], ['L', 'B'], ['B', 'B'], ['L', '2'], ['2', 'L'], ['B', '2'], ['2', 'B'], ['S', 'L'], ['L', '"x"'], ['"x"', 'L'],
  ['L', 'M', 'N'], ['B', 'L', 'B'], ['L', 'B', 'B'], ['B', 'B', 'L'], ['L', 'B', '0'], ['L', 'B', '2'], ['B', '1', '2'], ['TRUE', 'L', 'M'], ['L', '2', 'M'], ['1', 'L', 'M'], ['2', 'B', 'B'],
  ['L', 'B', '1', 'FALSE'], ['B', '">"&L', 'B'], ['L', '"0.0"'], ['B', 'B', 'B', 'L'], ['L', 'L', '"yes"', '"no"'], ['L', 'B', 'B', 'N'], ['L', 'M', 'N', 'L'], ['1', '2', 'L'], ['L', '1', '2', '3', '4'],
  ['Z', 'L'], ['Z', 'B'], ['B', 'Z'], ['G'], ['B', '0.5'], ['L', '1', '2', '"x"'], [], ['word', 'L', 'word+word'], ['1/0'],
];

const CELLS: Readonly<Record<string, string>> = { L: 'A1', M: 'A2', N: 'A3', B: 'A1:A3', S: 'B1', Z: 'C1:C3', G: 'B2' };

function cells(scale: number): Record<string, string> {
  const length = (cm: number): string => `${cm * scale} cm`;
  return { A1: length(20), A2: length(30), A3: length(50), B1: `${400 * scale * scale} cm2`, B2: '60°', C1: '1', C2: '2', C3: '3' };
}

/** All outcomes of a function, in the order of the lists. */
function outcomes(desk: Desk, name: string): Result[] {
  const formulas = Object.fromEntries(LISTS.map((list, i) => [`H${1 + 6 * i}`, `=${name}(${list.map((word) => word.replace(/\b[LMNBSZG]\b/, (cell) => CELLS[cell]!)).join(';')})`]));
  desk.type(formulas);
  return LISTS.map((_, i) => desk.result(`H${1 + 6 * i}`));
}

function scaled(small: Result, large: Result): string | null {
  if (small.kind === 'error' || large.kind === 'error') return small.kind === large.kind ? null : `${said(small)} became ${said(large)}`;
  if (small.kind !== large.kind) return `${small.kind} became ${large.kind}`;
  if (small.kind === 'truth') return said(small) === said(large) ? null : 'the truth changed';
  if (small.kind !== 'quantity' || large.kind !== 'quantity') return null;
  const power = { number: 0, length: 1, area: 2, angle: 0 }[UNITS[small.unit].dimension];
  const due = small.value * 10 ** power;
  return Math.abs(large.value - due) <= 1e-9 * Math.abs(due) ? null : `${said(small)} became ${said(large)}`;
}

/** Numbers that depend on how a length is written, or on chance, and not on how long it is. */
const NUMBERS = new Set(['FIND', 'LEN', 'SEARCH', 'RAND']);

/** The trade's functions say what they give; their usual values, such as a least allowance, do not scale. */
function unlike(gives: SewingFunction['gives'], result: Result): string | null {
  if (result.kind === 'error' || result.kind === 'text' || result.kind === 'span' || gives === 'figure') return null;
  const due = gives === 'percent' || gives === 'size' ? 'number' : gives;
  return result.kind === 'quantity' && UNITS[result.unit].dimension === due ? null : `${said(result)} is no ${gives}`;
}

describe('lengths in every function', () => {
  const small = new Desk(cells(1));
  const large = new Desk(cells(10));
  const tally: Record<string, number> = {};

  test.each(ALL)('%s', (name) => {
    const [here, there] = [outcomes(small, name), outcomes(large, name)];
    const given = OURS.includes(name) ? functionNamed(name)!.gives : NUMBERS.has(name) ? 'number' : undefined;
    const leaks = LISTS.flatMap((list, i) => {
      const fault = given === undefined ? scaled(here[i]!, there[i]!) : unlike(given, here[i]!);
      return fault === null ? [] : [`${name}(${list.join('; ')}): ${fault}`];
    });
    expect(leaks).toEqual([]);
    const policy = OURS.includes(name) ? 'the trade’s' : policyOf(name).does;
    tally[policy] = (tally[policy] ?? 0) + 1;
    if (policy === 'refuses') expect(said(here[0]!)).toMatch(new RegExp(`^! ${name.replaceAll('.', '\\.')} does not take a length: A1 is 20 cm; divide it by 1 cm for a plain number\\.$`));
    if (policy === 'absent') expect(said(here[0]!)).toBe(`! There is no function ${name}.`);
    if (policy === 'own') expect(here.some((result) => result.kind !== 'error' || result.sentence.includes('does not take a length')), `${name} gave nothing but errors`).toBe(true);
  });

  test('none was left out', () => {
    const counted = Object.values(tally).reduce((sum, n) => sum + n, 0);
    console.log(`functions tried with lengths: ${counted} of ${ALL.length} (${Object.entries(tally).map(([does, n]) => `${does} ${n}`).join(', ')})`);
    expect(counted).toBe(ALL.length);
    expect(POLICY_NAMES.filter((name) => !LIBRARY.includes(name) && !ADDED_NAMES.includes(name)), 'names in the table that are no functions').toEqual([]);
    expect(ADDED_NAMES.filter((name) => LIBRARY.includes(name)), 'functions that the library has by now').toEqual([]);
  });
});

/** Ours give dates where the library gives the number of days. */
const DATES = new Set(['TIMEVALUE', 'WORKDAY', 'WORKDAY.INTL']);

/** Here the library departs from OpenFormula, and we do not; their rules are checked in `tests/published/formula-language.test.ts`. */
const OPEN_FORMULA = new Set(['CEILING', 'FLOOR', 'INDEX', 'ISREF']);

describe('plain numbers go the way of the library', () => {
  // -2.5 is left out of INT: there the library departs from OpenFormula, and we do not follow it.
  const VALUES = ['3', '-2.5', '7.25', '0', '12', '4'];
  const own = LIBRARY.filter((name) => policyOf(name).does === 'own' && !DATES.has(name) && !OPEN_FORMULA.has(name));
  const listsFor = (name: string): string[] => ['A1', 'A1:A6', ...(name === 'SUBTOTAL' ? [] : ['A1:A6;2']), 'A1;A3', 'A3;A1', '2;A1:A6', 'A1:A6;A1:A6', 'A1:A6;">3"', 'A1:A6;">3";A1:A6', 'A1:A6;A1:A6;">3"', '7.25;A1:A6;0', '7.25;A1:B6;1;FALSE()', '7.25;A1:A6;B1:B6', 'A1;3;"a";"b"', '9;A1:A6', '"x";A1'];
  const rows = VALUES.map((value, i) => [value, String(i)]);

  test.each(own)('%s', (name) => {
    const desk = new Desk(Object.fromEntries(rows.flatMap(([a, b], i) => [[`A${i + 1}`, a!], [`B${i + 1}`, b!]])));
    const plain = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3', dateFormats: ['YYYY-MM-DD'] }) as unknown as Plain;
    plain.addSheet('S');
    plain.setCellContents({ sheet: 0, row: 0, col: 0 }, rows);
    for (const list of listsFor(name)) {
      desk.type({ H1: `=${name}(${list})` });
      plain.setCellContents({ sheet: 0, row: 0, col: 7 }, `=${name}(${list.replaceAll(';', ',')})`);
      const due = plain.getCellValue({ sheet: 0, row: 0, col: 7 });
      const result = desk.result('H1');
      const got = result.kind === 'quantity' ? result.value : result.kind === 'error' ? 'error' : result.kind === 'empty' ? null : said(result);
      const wanted = typeof due === 'object' && due !== null ? 'error' : typeof due === 'boolean' ? String(due).toUpperCase() : due;
      // The library rounds what it hands out to ten digits.
      if (typeof wanted === 'number' && typeof got === 'number') expect(Math.abs(got - wanted), `${name}(${list})`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wanted)));
      else expect(got, `${name}(${list})`).toEqual(wanted);
      desk.type({ H1: '' });
      plain.setCellContents({ sheet: 0, row: 0, col: 7 }, null);
    }
  });
});

interface Plain {
  addSheet(name: string): string;
  setCellContents(place: object, content: unknown): void;
  getCellValue(place: object): unknown;
}
