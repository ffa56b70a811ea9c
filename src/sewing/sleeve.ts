/** Set-in sleeves. */
import { define, mm } from './define.ts';
import type { Pad } from './define.ts';

const CAP = { name: 'cap', kind: 'length', about: 'seam line of the sleeve’s cap', above: 0 } as const;
const ARMHOLE = { name: 'armhole', kind: 'length', about: 'seam line of the armhole', above: 0 } as const;

function easeOf(cap: number, armhole: number, pad: Pad): number {
  if (cap < armhole) pad.caution('The cap is shorter than the armhole: the armhole would have to be eased into the sleeve.', mm(armhole));
  return pad.length('cap minus armhole', [mm(cap), ' − ', mm(armhole)], cap - armhole);
}

export const SLEEVE_FUNCTIONS = [
  define({
    name: 'CAP.EASE',
    topic: 'sleeve',
    about: 'How much longer the sleeve’s cap is than the armhole.',
    asks: ['sleeve cap ease', 'does the sleeve fit the armhole'],
    args: [CAP, ARMHOLE],
    gives: 'length',
    rule: 'cap − armhole',
    source: 'exact geometry',
    example: '=CAP.EASE(45 cm, 42 cm)',
    work([cap, armhole], pad) {
      return easeOf(cap, armhole, pad);
    },
  }),
  define({
    name: 'CAP.SHARE',
    topic: 'sleeve',
    about: 'Cap ease as a share of the armhole.',
    asks: ['cap ease in percent'],
    args: [CAP, ARMHOLE],
    gives: 'percent',
    rule: '(cap − armhole) ÷ armhole',
    source: 'exact geometry',
    example: '=CAP.SHARE(45 cm, 42 cm)',
    work([cap, armhole], pad) {
      const ease = easeOf(cap, armhole, pad);
      return pad.percent('as a share of the armhole', [mm(ease), ' ÷ ', mm(armhole)], ease / armhole);
    },
  }),
];
