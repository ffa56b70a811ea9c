/**
 * Figures far outside anything that is cut or sewn, in every place of every
 * function: each is answered at once. Some functions of the library count up to
 * a figure one by one, and would otherwise never end.
 */
import { describe, expect, test } from 'vitest';
import { Desk } from './desk.ts';

const FAR = ['1e17', '-1e17', '1e300', '1e9', '1.5', '""'];
const LONGEST = 1_000;

const desk = new Desk({ A1: '74 cm', A2: '3', A3: '1e300' });

/** The values between a formula's outermost brackets. */
function argumentsOf(formula: string): string[] {
  const inside = formula.slice(formula.indexOf('(') + 1, -1);
  const parts = [''];
  let depth = 0;
  let quoted = false;
  for (const sign of inside) {
    if (sign === '"') quoted = !quoted;
    if (!quoted && '({'.includes(sign)) depth++;
    if (!quoted && ')}'.includes(sign)) depth--;
    if (!quoted && depth === 0 && (sign === ',' || sign === ';')) parts.push('');
    else parts[parts.length - 1] += sign;
  }
  return parts;
}

function timed(formula: string): number {
  const start = performance.now();
  desk.type({ D1: formula });
  return performance.now() - start;
}

test('in every place of every function', () => {
  let count = 0;
  for (const { name, example, args, repeats } of desk.engine.catalogue()) {
    const own = new RegExp(`^=${name.replaceAll('.', '\\.')}\\(.*\\)$`, 's').test(example) ? argumentsOf(example) : [];
    const given = Array.from({ length: args.length + (repeats > 0 ? 1 : 0) }, (_, place) => own[place] ?? '2');
    for (let place = 0; place < given.length; place++) {
      for (const far of FAR) {
        const formula = `=${name}(${given.with(place, far).join(',')})`;
        let took = timed(formula);
        // A busy machine makes anything slow once.
        if (took > LONGEST) took = timed(formula);
        expect(took, formula).toBeLessThan(LONGEST);
        count++;
      }
    }
  }
  console.log(`${count.toLocaleString('en')} calls with a far figure`);
});

describe('what is counted one by one', () => {
  test.each([
    ['=MULTINOMIAL(2,3)', '10'],
    ['=MULTINOMIAL(7e121)', '! MULTINOMIAL counts one by one up to this figure, and 7e+121 is too far: 1,000,000 is the most.'],
    ['=POISSON.DIST({1;2;1000000},3,TRUE)', '! POISSON.DIST counts one by one up to this figure, and 1000000 is too far: 333,333 is the most for so many cells.'],
    ['=BESSELJ(1.5,A3)', '! BESSELJ counts one by one up to this figure, and 1e300 is too far: 1,000,000 is the most.'],
    ['=CUMIPMT(1%,12,1000,1,1e12,0)', '! CUMIPMT counts one by one up to this figure, and 1000000000000 is too far: 1,000,000 is the most.'],
    ['=WORKDAY(DATE(2026,11,3),1e17)', '! WORKDAY goes no further than the year 9999: give it an earlier date, or fewer days.'],
    ['=WORKDAY(DATE(2026,11,3),10)', '2026-11-17'],
  ])('%s', (formula, result) => {
    expect(desk.work(formula)).toBe(result);
  });
});

describe('SUBSTITUTE', () => {
  test.each([
    ['=SUBSTITUTE("left front left","left","right")', 'right front right'],
    ['=SUBSTITUTE("left front left","left","right",2)', 'left front right'],
    ['=SUBSTITUTE("5 pounds","5","$& $1 $$")', '$& $1 $$ pounds'],
    ['=SUBSTITUTE("abc","","x",1.5)', 'abc'],
    ['=SUBSTITUTE("abc","","x")', 'abc'],
    ['=SUBSTITUTE("abc",,"x",1e300)', 'abc'],
    ['=SUBSTITUTE("abc","b","$$",1)', 'a$$c'],
  ])('%s', (formula, result) => {
    expect(desk.work(formula)).toBe(result);
  });
});
