/** Set-in sleeves. */
import { define, mm, NOT_MORE } from './define.ts';
import type { Pad } from './define.ts';

const CAP = { name: 'cap', kind: 'length', about: 'seam line of the sleeve’s cap', above: 0 } as const;
const ARMHOLE = { name: 'armhole', kind: 'length', about: 'seam line of the armhole', above: 0 } as const;

const LEAST = { name: 'least', kind: 'length', about: 'the least ease for this sleeve and cloth; 0 for a flat cap', atLeast: 0, usual: 0 } as const;
const MOST = { name: 'most', kind: 'length', about: 'the most that this cloth eases in without a pucker', atLeast: 0, usual: NOT_MORE } as const;

function easeOf(cap: number, armhole: number, least: number, most: number, pad: Pad): number {
  const near = 1e-9 * armhole;
  const ease = cap - armhole;
  if (ease < -near) pad.caution('The cap is shorter than the armhole: the armhole would have to be eased into the sleeve. The cap needs at least this.', mm(armhole + least), 'cap', 'atLeast');
  else if (ease < least - near) pad.caution('The cap has less ease than was asked for: it needs at least this.', mm(armhole + least), 'cap', 'atLeast');
  if (ease > most + near) pad.caution('The cap has more ease than the cloth takes and will pucker: it should be no more than this.', mm(armhole + most), 'cap', 'atMost');
  return pad.length('cap minus armhole', [mm(cap), ' − ', mm(armhole)], ease);
}

export const SLEEVE_FUNCTIONS = [
  define({
    name: 'CAP.EASE',
    topic: 'sleeve',
    about: 'How much longer the sleeve’s cap is than the armhole.',
    asks: ['sleeve cap ease', 'does the sleeve fit the armhole'],
    args: [CAP, ARMHOLE, LEAST, MOST],
    gives: 'length',
    rule: 'cap − armhole',
    source: 'exact geometry',
    example: '=CAP.EASE(45 cm, 42 cm)',
    work([cap, armhole, least, most], pad) {
      return easeOf(cap, armhole, least, most, pad);
    },
  }),
  define({
    name: 'CAP.SHARE',
    topic: 'sleeve',
    about: 'Cap ease as a share of the armhole.',
    asks: ['cap ease in percent'],
    args: [CAP, ARMHOLE, LEAST, MOST],
    gives: 'percent',
    rule: '(cap − armhole) ÷ armhole',
    source: 'exact geometry',
    example: '=CAP.SHARE(45 cm, 42 cm)',
    work([cap, armhole, least, most], pad) {
      const ease = easeOf(cap, armhole, least, most, pad);
      return pad.percent('as a share of the armhole', [mm(ease), ' ÷ ', mm(armhole)], ease / armhole);
    },
  }),
  define({
    name: 'CAP.RISE',
    topic: 'sleeve',
    about: 'The height of a sleeve cap whose straight line from the underarm to the top has a given length.',
    asks: ['how high is the sleeve cap', 'draft a sleeve cap', 'sleeve cap height from the armhole'],
    args: [
      { name: 'line', kind: 'length', about: 'straight line from the underarm point to the top of the cap; half the armhole is a first guess', above: 0 },
      { name: 'width', kind: 'length', about: 'width of the sleeve at the underarm, ease with it', above: 0 },
    ],
    gives: 'length',
    rule: '√(line² − (width ÷ 2)²); the curved seam is longer than the line, so measure it and compare with CAP.EASE',
    source: 'exact geometry; half the armhole as the line is common practice',
    example: '=CAP.RISE(22 cm, 34 cm)',
    work([line, width], pad) {
      if (width >= 2 * line) pad.refuse(`A sleeve ${pad.say(width)} wide is wider than two lines of ${pad.say(line)}: the cap would have no height. Make the sleeve narrower or the armhole larger.`);
      const half = pad.length('half the width', [mm(width), ' ÷ 2'], width / 2);
      return pad.length('third side of the triangle', ['√(', mm(line), '² − ', mm(half), '²)'], Math.sqrt((line - half) * (line + half)));
    },
  }),
  define({
    name: 'SLEEVE.LENGTH',
    topic: 'sleeve',
    about: 'The arm length, shoulder point to wrist, from a length that was taken from the back of the neck.',
    asks: ['sleeve length from the neck', 'centre back sleeve length', 'arm length from back neck to wrist'],
    args: [
      { name: 'neck to wrist', kind: 'length', about: 'back neck point over the shoulder point and the bent elbow to the wrist', above: 0 },
      { name: 'shoulder width', kind: 'length', about: 'shoulder point to shoulder point over the back neck point', above: 0 },
    ],
    gives: 'length',
    rule: 'neck to wrist − shoulder width ÷ 2',
    source: 'exact geometry where both tapes went over the back neck point',
    example: '=SLEEVE.LENGTH(79 cm, 40 cm)',
    work([whole, shoulders], pad) {
      if (whole <= shoulders / 2) pad.refuse(`${pad.say(whole)} from the neck does not reach past half a shoulder width of ${pad.say(shoulders)}: check the figures.`);
      const half = pad.length('from the neck to the shoulder point', [mm(shoulders), ' ÷ 2'], shoulders / 2);
      return pad.length('the rest is the arm', [mm(whole), ' − ', mm(half)], whole - half);
    },
  }),
];
