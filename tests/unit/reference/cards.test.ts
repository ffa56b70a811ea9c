/** What the reference tells of every function, held against the engine that works it out. */
import { describe, expect, it } from 'vitest';
import { AN_ERROR, DIFFERENCES, OPEN_FORMULA_NAMES, PLAIN, STANDARD_FUNCTIONS, sectionOf } from '../../../src/formula/standard/index.ts';
import { COUNTED, FIRST, SAME, SQUARED } from '../../../src/formula/standard/entry.ts';
import { exactText, inBase, UNITS } from '../../../src/quantities/index.ts';
import type { Example, Result } from '../../../src/reckoning/protocol.ts';
import { FUNCTIONS } from '../../../src/sewing/index.ts';
import { POLICY_NAMES, policyOf } from '../../../workers/reckon/functions/policy.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { Host } from '../../../workers/reckon/host.ts';
import { SAMPLES } from '../../../workers/reckon/samples.ts';

const engine = new Engine();
const cards = engine.catalogue();
const registry = new Host().inside._functionRegistry;
const sewing = new Set(FUNCTIONS.map(({ name }) => name));
const standard = new Map(STANDARD_FUNCTIONS.map((fn) => [fn.name, fn]));
const errorIn = ({ results }: Example): string | undefined => results.flat().map((result) => (result.kind === 'error' ? result.sentence : undefined)).find(Boolean);

/** The engine does not say that there is no such function, or that it cannot be used. */
const known = (name: string): boolean => !/^(There is no function|OFFSET cannot be used)/.test(errorIn(engine.example(`=${name}()`)) ?? '');
const callable = [...new Set([...registry.getRegisteredFunctionIds(), ...POLICY_NAMES, ...STANDARD_FUNCTIONS.map(({ name }) => name), ...sewing])].filter(known);

function text(result: Result): string {
  switch (result.kind) {
    case 'error': return AN_ERROR;
    case 'quantity': return exactText(inBase(result.value, result.unit));
    case 'truth': return result.truth ? 'TRUE' : 'FALSE';
    case 'text': return result.text;
    default: return result.kind;
  }
}

describe('the cards', () => {
  it('are one for each function that can be called, and no other', () => {
    expect(cards.map(({ name }) => name).sort()).toEqual(callable.sort());
    expect(callable.filter((name) => !sewing.has(name) && policyOf(name).does === 'absent')).toEqual([]);
    const waiting = STANDARD_FUNCTIONS.map(({ name }) => name).filter((name) => !callable.includes(name));
    console.log(`${cards.length} of ${callable.length} functions have a card: ${FUNCTIONS.length} of the trade, ${cards.length - FUNCTIONS.length} standard ones.${waiting.length ? ` Told of, but not in the engine: ${waiting.join(', ')}.` : ''}`);
  });

  it('have the trade first', () => {
    expect(cards.slice(0, FUNCTIONS.length).map(({ name }) => name)).toEqual(FUNCTIONS.map(({ name }) => name));
  });

  it('are told of once each', () => {
    const names = STANDARD_FUNCTIONS.map(({ name }) => name);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  it.each(cards.map((card) => [card.name, card] as const))('%s is told in plain words', (_, card) => {
    expect(card.about).toMatch(/^[A-Z0-9πe].*[.]$/);
    expect(card.topic).toMatch(/^[A-Z]/);
    expect(card.units).toMatch(/^[A-Z].*\.$/);
    expect(card.source).not.toBe('');
    expect(card.example.startsWith('=')).toBe(true);
    expect(card.example).toContain(`${card.name}(`);
    expect(card.repeats).toBeLessThanOrEqual(card.args.length);
    expect(new Set(card.args.map(({ name }) => name)).size).toBe(card.args.length);
    for (const [i, arg] of card.args.entries()) {
      expect(arg.name).toMatch(/^[A-Za-z]/);
      expect(arg.about).not.toBe('');
      if (arg.optional) expect(card.args.slice(i).every(({ optional }) => optional)).toBe(true);
    }
  });

  it('say of units what the engine’s table of functions does, where it is the engine’s own doing', () => {
    for (const { name, units } of standard.values()) {
      if (registry.getFunction(name) === undefined || sewing.has(name)) continue;
      // What the table has a function of ours for, only its own words can tell.
      expect(`${name} ${units !== ''}`).toBe(`${name} ${policyOf(name).does === 'own'}`);
    }
  });
});

describe('examples', () => {
  it.each(cards.map((card) => [card.example, card] as const))('%s has a result', (_, card) => {
    expect(errorIn(engine.example(card.example))).toBeUndefined();
  });

  it('work in an empty cell of any workbook, but for those that name a sample or a kept layout', () => {
    const alone = cards.filter(({ needs, args }) => needs.length === 0 && !args.some(({ kind }) => kind === 'the name of a kept layout'));
    // Far enough apart for every block of results.
    const rows = alone.flatMap(({ example }) => [[{ raw: example }], ...Array.from({ length: 5 }, () => [])]);
    const book = { id: 'examples', title: '', person: '', settings: { show: 'own', inchStep: 8 }, sheets: [{ id: 1, name: 'Examples', rows, widths: {} }], names: [], nextSheetId: 2 } as const;
    const { sheets } = new Engine().open(1, book);
    expect(sheets[0]!.kind.filter((kind) => kind === 4)).toHaveLength(0);
    const named = cards.filter(({ needs }) => needs.length > 0);
    console.log(`${alone.length} examples stand alone; ${named.length} name a sample: ${named.map(({ name }) => name).join(', ')}.`);
  });

  it('name only samples that there are, and every sample is used', () => {
    const used = new Set(cards.flatMap(({ needs }) => needs.map(({ name }) => name)));
    expect(SAMPLES.map(({ name }) => name).filter((name) => !used.has(name))).toEqual([]);
  });

  it('leave nothing behind for the next', () => {
    expect(engine.example('=SEQUENCE(20, 20)')).toMatchObject({ height: 20, width: 20 });
    expect(engine.example('=A2')).toEqual({ results: [[{ kind: 'empty' }]], height: 1, width: 1 });
    expect(engine.example('92 cm').results).toEqual([[{ kind: 'quantity', value: 920, unit: 'cm' }]]);
  });

  it('never touch the open workbook', () => {
    const other = new Engine();
    const book = { id: 'b', title: '', person: '', settings: { show: 'own', inchStep: 8 }, sheets: [{ id: 1, name: 'Fit', rows: [[{ raw: '5 cm' }]], widths: {} }], names: [], nextSheetId: 2 } as const;
    other.open(1, book);
    other.example('=SEQUENCE(4, 4)');
    expect(other.working({ sheet: 1, row: 0, col: 0 }).result).toEqual({ kind: 'quantity', value: 50, unit: 'cm' });
    expect(other.apply(2, []).sheets).toEqual([]);
  });

  it('give a sentence for what cannot be read', () => {
    expect(errorIn(engine.example('=SUM('))).toMatch(/not closed/);
    expect(errorIn(engine.example('=PLEAT.DEPHT(1)'))).toBeTruthy();
  });
});

describe('arguments', () => {
  // Ours take more than the library's do.
  const OTHERWISE = new Set(['CEILING', 'FLOOR']);
  const compared = cards.filter(({ name }) => !sewing.has(name) && !OTHERWISE.has(name) && (registry.getMetadata(name)?.parameters?.length ?? 0) > 0);
  it.each(compared.map((card) => [card.name, card] as const))('%s has as many as the library takes', (name, card) => {
    const { parameters = [], repeatLastArgs = 0 } = registry.getMetadata(name) as { parameters?: { defaultValue?: unknown; optionalArg?: boolean }[]; repeatLastArgs?: number };
    expect(card.args.length).toBe(parameters.length);
    expect(card.args.map(({ optional }) => optional)).toEqual(parameters.map(({ defaultValue, optionalArg }) => defaultValue !== undefined || optionalArg === true));
    expect(card.repeats).toBe(repeatLastArgs);
  });
  it('are compared for nearly all', () => {
    console.log(`Arguments of ${compared.length} functions agree with the library’s.`);
    expect(compared.length).toBeGreaterThan(380);
  });
});

describe('what is said of units is so', () => {
  const saying = (units: string) => [...standard.values()].filter((fn) => fn.units === units && registry.getFunction(fn.name) !== undefined).map(({ name }) => name);
  const dimension = (formula: string) => {
    const result = engine.example(formula).results[0]![0]!;
    return result.kind === 'quantity' ? UNITS[result.unit].dimension : result.kind;
  };
  const refused = cards.filter(({ name, units, args }) => !sewing.has(name) && units === PLAIN && args.some(({ optional }) => !optional));

  it.each(saying(SAME))('%s keeps the unit', (name) => {
    expect(dimension(name === 'ABS' ? '=ABS(2 cm)' : `=${name}(2 cm, 3 cm, 6 cm, 6 cm)`)).toBe('length');
    expect(dimension(name === 'ABS' ? '=ABS(2 cm2)' : `=${name}(2 cm2, 3 cm2, 6 cm2, 6 cm2)`)).toBe('area');
  });
  it.each(saying(FIRST))('%s keeps the unit of the first', (name) => {
    const by = name.startsWith('PERCENTILE') ? '0.5' : '1';
    expect(dimension(`=${name}({2 cm;3 cm;6 cm}, ${by})`)).toBe('length');
    expect(dimension(`=${name}({2 cm;3 cm;6 cm}, ${by} cm)`)).toBe('error');
  });
  it.each(saying(SQUARED))('%s makes areas of lengths', (name) => {
    expect(dimension(`=${name}(2 cm, 3 cm, 6 cm)`)).toBe('area');
  });
  it.each(saying(COUNTED))('%s makes plain numbers of lengths', (name) => {
    const given = { RANK: '2 cm, {2 cm;3 cm}', PERCENTRANK: '{2 cm;3 cm}, 2 cm', SIGN: '2 cm', DELTA: '2 cm, 2 cm', ATAN2: '2 cm, 2 cm' }[name] ?? '2 cm, 3 cm, 6 cm';
    expect(dimension(`=${name}(${given})`)).toBe('number');
  });
  it.each(refused.map((card) => [card.name, card] as const))('%s takes no length', (name, { args }) => {
    const needed = args.filter(({ optional }) => !optional).map(() => '2 cm');
    const result = engine.example(`=${name}(${needed.join(', ')})`).results[0]![0]!;
    expect(result).toMatchObject({ kind: 'error', sentence: expect.stringMatching(/take|length|unit/) as string });
  });
});

describe('differences from OpenFormula', () => {
  it.each(DIFFERENCES.flatMap((difference) => difference.shown))('$formula', ({ formula, here, there }) => {
    expect(text(engine.example(formula).results[0]![0]!)).toBe(here);
    expect(there).not.toBe(here);
  });

  it('are about functions that there are', () => {
    const names = new Set(cards.map(({ name }) => name));
    expect(DIFFERENCES.flatMap(({ functions }) => functions).filter((name) => !names.has(name))).toEqual([]);
  });

  it('place functions in the chapters as the published checks have them', () => {
    // OASIS OpenDocument 1.4 part 4, table of contents.
    expect(['POWER', 'CEILING', 'TRUNC', 'MATCH', 'INDEX', 'CONVERT', 'SUMPRODUCT', 'ODD', 'FDIST', 'ZTEST', 'UPPER', 'SHEET'].map(sectionOf))
      .toEqual(['6.16.46', '6.17.1', '6.17.8', '6.14.9', '6.14.6', '6.16.18', '6.16.64', '6.16.44', '6.18.23', '6.18.87', '6.20.27', '6.13.31']);
    expect(sectionOf('XLOOKUP')).toBeUndefined();
    expect(new Set(OPEN_FORMULA_NAMES).size).toBeGreaterThan(380);
  });
});
