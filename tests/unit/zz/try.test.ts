import { test } from 'vitest';
import { Desk } from '../reckon/desk.ts';
test('x', () => {
  const desk = new Desk({ A1: '10 cm', A2: '20 cm', A3: '30 cm', A4: '20 cm', B1: '1', B2: '2', B3: '4', B4: '3', C1: 'S', C2: 'M', C3: 'L', C4: 'M', D1: '=SUBTOTAL(9;A1:A2)', D2: '=SUBTOTAL(9;A3:A4)', D3: '=SUBTOTAL(9;D1:D2;A1:A4)', E1: '=1/0', E2: '5 cm', E3: 'x', G1: '2 1/4 in', G2: '3/8"', G3: '1/2' });
  const out: string[] = [];
  for (const f of (process.env.F ?? '').split('\n').filter(Boolean)) out.push(`${f}  ->  ${desk.work(f)}`);
  console.log(out.join('\n'));
});
