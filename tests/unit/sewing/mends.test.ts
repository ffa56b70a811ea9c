/** The figure that a caution names, put in for its argument, does away with the caution: for every function that names one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isFault, UNITS } from '../../../src/quantities/index.ts';
import type { Quantity } from '../../../src/quantities/index.ts';
import { figureIn, FUNCTIONS, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, Value } from '../../../src/sewing/index.ts';
import { valuesFor } from './random-values.ts';

const RUNS = 2_000;

/** Put in a little beyond it, the way that rounding for a tape goes, it still must. */
const ROUNDED = { atLeast: 1.01, atMost: 0.99, just: 1 } as const;

function mended(fn: SewingFunction, values: readonly Value[], put: string, figure: Quantity): readonly Value[] {
  const at = fn.args.findIndex(({ name }) => name === put);
  const changed = [...values];
  while (changed.length <= at) changed.push(null);
  changed[at] = figure;
  return changed;
}

/** The arguments that cautions were met for, by function. */
const met = new Map<string, Set<string>>();

describe('mending figures', () => {
  it.each(FUNCTIONS.map((fn) => [fn.name, fn] as const))('of %s do away with their caution', (_, fn) => {
    fc.assert(fc.property(valuesFor(fn), (pairs) => {
      const values = pairs.map(({ value }) => value);
      const outcome = work(fn, values);
      if (isFault(outcome)) return;
      for (const { sentence, mend, cure } of outcome.cautions) {
        if (!cure) continue;
        met.set(fn.name, (met.get(fn.name) ?? new Set()).add(cure.put));
        const arg = fn.args.find(({ name }) => name === cure.put);
        expect(arg, `${fn.name} has no ${cure.put}`).toBeDefined();
        expect(mend).toBeDefined();
        const figure = figureIn(mend!, outcome.lengthUnit);
        expect(UNITS[figure.unit].dimension).toBe(arg!.kind === 'length' || arg!.kind === 'area' || arg!.kind === 'angle' ? arg!.kind : 'number');
        const tries = arg!.kind === 'count' || figure.value <= 0 ? [1] : [1, ROUNDED[cure.way]];
        for (const by of tries) {
          const then = work(fn, mended(fn, values, cure.put, { ...figure, value: figure.value * by }));
          // Rounded, a figure may go over the bounds of its argument; exact it may not.
          if (isFault(then) && by !== 1) continue;
          if (isFault(then)) throw new Error(`${sentence}: ${then.sentence}`);
          expect(then.cautions.map((caution) => caution.sentence), `${fn.name} with ${cure.put} ${cure.way} ${figure.value * by}`).not.toContain(sentence);
        }
      }
    }), { numRuns: RUNS, seed: 3 });
  });

  it('are named by the functions that warn of a figure that she chose', () => {
    expect(Object.fromEntries([...met].sort().map(([name, puts]) => [name, [...puts].sort().join(', ')]))).toMatchInlineSnapshot(`
      {
        "BUTTON.COUNT": "gap",
        "BUTTON.EVEN": "about",
        "BUTTON.OFF": "count, first, last",
        "CAP.EASE": "cap",
        "CAP.SHARE": "cap",
        "CIRCLE.OUTER": "hem, length",
        "CIRCLE.PART": "radius",
        "CIRCLE.RADIUS": "part",
        "CORD.FREE": "cord",
        "DART.INTAKE": "darts",
        "EASE": "finished",
        "EASE.PERCENT": "finished",
        "ELASTIC.STRETCH": "elastic",
        "HEM.CURVE": "hem",
        "HEM.EASED": "hem",
        "HEM.LEFT": "down, hem",
        "INTERFACING.SPARE": "interfacing",
        "KNIT.BAND": "share",
        "NIGHTWEAR.INFANT": "length",
        "NIGHTWEAR.OVER": "finished",
        "OPENING.ROOM": "closed",
        "PLEAT.ACROSS": "depth",
        "PLEAT.AT": "depth",
        "PLEAT.CLOTH": "depth",
        "PLEAT.COUNT": "spacing",
        "PLEAT.DEEPEN": "waist",
        "PLEAT.DEPTH": "cloth",
        "SEAM.LEFT": "allowance, shift",
        "SEAM.ROOM": "allowance",
        "SEAM.SHARE": "change",
        "SEAM.SHIFT": "change",
        "SEAM.TAKEN": "in",
        "SMALL.PART": "across",
        "STRETCH.GARMENT": "percent",
        "STRETCH.WORN": "garment",
      }
    `);
  });
});
