import { expect, it } from 'vitest';
import { Desk } from './desk.ts';
it('smoke', () => {
  const d = new Desk({ A1: '10 cm', A2: '2 1/4 in', A3: '3', A4: '5 %', A5: '86–90 cm', B1: '=A1+A2', B2: '=A1*A3', B3: '=A1+A3', B4: '=A1*A1', B5: '=B4/A2', C1: '=SUM(A1:A2)', C2: '=A1*A4', C3: '=A9+A1', C4: '=D1', D1: '=C4', C5: '=A5*2', C6: '=1/0', C7:'=C6+1', C8: '=PI()', C9: '=nope+1', D2:'=NOPE(1)', D3: '=SIN(A1)', D4:'="x"&A2', D5: '=SUM(A1:A3)', E1: '=EASE(A1; A2)', E2: '=(', E3:'=A1>5 cm', E4: '=A1>5', E5: '=-2^2', E6:'=IF(A1>5 cm, A2, A1)' });
  for (const c of ['A1','A2','A3','A4','A5','B1','B2','B3','B4','B5','C1','C2','C3','C4','D1','C5','C6','C7','C8','C9','D2','D3','D4','D5','E1','E2','E3','E4','E5','E6']) console.log(c, d.show(c));
  d.type({ A1: '20 cm' });
  for (const s of d.last.sheets) console.log(s.row.length);
  console.log(d.show('B1'), d.show('C1'));
  expect(1).toBe(1);
});
