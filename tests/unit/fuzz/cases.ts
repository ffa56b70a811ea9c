/**
 * Random bad input, through each way in. `npm test` draws some thousands for
 * each; `npm run test:fuzz` 40,000. What holds for all of them: it ends within
 * a second, throws nothing, shows no figure that is none, changes nothing silently.
 */
import fc from 'fast-check';
import { expect } from 'vitest';

export const CASES = Number(process.env['FUZZ'] ?? 4_000);
const LONGEST = 1_000;
/** Milliseconds for all of them. */
export const TIME = 60_000 + CASES * 30;

/** Prints how many cases there were and how long the slowest took. */
export function fuzz<T>(way: string, cases: fc.Arbitrary<T>, check: (input: T) => void): void {
  let count = 0;
  let slowest = 0;
  const timed = (input: T): number => {
    const start = performance.now();
    check(input);
    return performance.now() - start;
  };
  fc.assert(fc.property(cases, (input) => {
    count++;
    let took = timed(input);
    // A busy machine makes anything slow once; what is slow by itself is slow again.
    if (took > LONGEST) took = timed(input);
    slowest = Math.max(slowest, took);
    expect(took, 'milliseconds').toBeLessThan(LONGEST);
  }), { numRuns: CASES });
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  console.log(`fuzz: ${way}: ${count.toLocaleString('en')} cases, the slowest ${slowest.toFixed(0)} ms`);
}

/** What no figure and no sentence may say. */
export const NO_FIGURE = /NaN|Infinity|undefined|\[object|\bnull\b/;

export const HOSTILE_TEXTS = [
  '<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '{{constructor.constructor("x")()}}', '${7*7}', '__proto__', 'constructor', 'toString',
  '=cmd|\' /C calc\'!A0', '=HYPERLINK("http://x","y")', '@SUM(1)', '+1+1', '-2+3', '\t=1', '\u202Egnp.exe', '\u2066\u2069\u200F', '\uFEFF74 cm', '\u0000', '\uD800', 'e\u0301',
  '1e308', '-1e308', '1e309', '1e-400', '9'.repeat(400), `0.${'0'.repeat(300)}1`, '1/0', '1 1/0 in', '0/0', '5e-324', 'Infinity', 'NaN cm', '٧٤ سم', '７４ cm', '1,234,5', '1.2.3', '--5', '2-1/4-3"',
] as const;

const figure = fc.oneof(
  fc.integer().map(String), fc.double().map(String), fc.constantFrom('1/2', '2 1/4', '2-1/4', '½', '2¼', '1,5', '.5', '5.', '1e3', '0x10', '1_000', '1 000', "5'6", '99999999999999999999'),
);
const unit = fc.constantFrom('', ' cm', 'mm', ' in', '"', "'", '″', ' yd', '%', ' °', ' cm2', ' cm²', ' m', ' ft', ' furlong', ' inches', ' stone');
const joint = fc.constantFrom('', ' ', '-', ' - ', '–', ' to ', '/', '+', '×', '−', '\u00a0', '~', '±', '\n');

/** What people type into a cell, and what they should not. */
export const typed: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(joint, figure, unit, joint, figure, unit).map((parts) => parts.join('')) },
  { weight: 3, arbitrary: fc.tuple(figure, unit).map((parts) => parts.join('')) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
  { weight: 1, arbitrary: fc.constantFrom(...HOSTILE_TEXTS) },
  { weight: 1, arbitrary: fc.tuple(fc.constantFrom('1', '9', '(', '-', ' ', '.', '1/', '½', "5'", '1 '), fc.integer({ min: 1, max: 2_000 })).map(([text, times]) => text.repeat(times)) },
);

/** Changes to make in a JSON value: where, by numbers that pick a way down, and what to put there. */
export type Damage = readonly { readonly way: readonly number[]; readonly value: unknown }[];

const spoiled: fc.Arbitrary<unknown> = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }), fc.constantFrom<unknown>(...HOSTILE_TEXTS), fc.constantFrom<unknown>(null, -1, 0.5, 1e308, -0, 1e15, 2 ** 31, '', 'x'.repeat(40_000), [], {}),
  fc.constant(JSON.parse('{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}') as unknown),
);

export const damage: fc.Arbitrary<Damage> = fc.array(fc.record({ way: fc.array(fc.nat(60), { minLength: 1, maxLength: 6 }), value: spoiled }), { minLength: 1, maxLength: 4 });

/** The same value with the damage done to a copy of it. */
export function damaged(json: unknown, changes: Damage): unknown {
  const copy = JSON.parse(JSON.stringify(json)) as unknown;
  for (const { way, value } of changes) {
    let at = copy as Record<string, unknown>;
    const put = JSON.parse(JSON.stringify(value)) as unknown;
    for (const [depth, step] of way.entries()) {
      const keys = Object.keys(at);
      const key = keys[step % (keys.length + 1)] ?? (Array.isArray(at) ? String(keys.length) : '__proto__');
      const next = Object.hasOwn(at, key) ? at[key] : undefined;
      if (depth === way.length - 1 || typeof next !== 'object' || next === null) {
        Object.defineProperty(at, key, { value: put, enumerable: true, configurable: true, writable: true });
        break;
      }
      at = next as Record<string, unknown>;
    }
  }
  return copy;
}
