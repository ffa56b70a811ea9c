/**
 * Cords in children's clothes. The figures are those of 16 CFR 1120 and ASTM
 * F1816, which bind sellers in the United States; a figure within them does not
 * make a garment comply with anything.
 */
import { define, mm } from './define.ts';

const CHANNEL = { name: 'channel', kind: 'length', about: 'the channel, with the garment opened to its fullest width', above: 0 } as const;
/** 3 in. */
const MOST = { name: 'most', kind: 'length', about: 'the most that each end may stand out; 3 in by that rule', atLeast: 0, usual: 76.2 } as const;
const RULE = '16 CFR 1120 and ASTM F1816 (United States), waist and bottom of upper outerwear, sizes 2T to 16, read at cpsc.gov; what holds for your garment and place, local rules and licensed practice decide';

export const CHILD_FUNCTIONS = [
  define({
    name: 'CORD.FREE',
    topic: 'child',
    about: 'How far each end of a waist or hem cord stands out of its channel. At hood and neck of a child’s garment leave cords out altogether; local rules and licensed practice decide.',
    asks: ['drawstring in children’s clothes', 'how long may a cord hang out', 'waist cord for a child'],
    args: [{ name: 'cord', kind: 'length', about: 'length of the whole cord', above: 0 }, CHANNEL, MOST],
    gives: 'length',
    rule: '(cord − channel) ÷ 2, at most 3 in by that rule, with no toggle or knot at a free end and the cord sewn through at its middle',
    source: RULE,
    example: '=CORD.FREE(84 cm, 70 cm)',
    work([cord, channel, most], pad) {
      if (cord < channel) pad.refuse(`A cord of ${pad.say(cord)} does not reach through a channel of ${pad.say(channel)}.`);
      const out = pad.length('what stands out at both ends', [mm(cord), ' − ', mm(channel)], cord - channel);
      if (out / 2 > most * (1 + 1e-9)) {
        pad.caution('Each end stands out further than the United States rule has for children’s upper outerwear (16 CFR 1120, ASTM F1816). Use elastic or a snap, or a cord no longer than this; local rules and licensed practice decide.', mm(channel + 2 * most));
      }
      return pad.length('half of it at each end', [mm(out), ' ÷ 2'], out / 2);
    },
  }),
  define({
    name: 'CORD.LONGEST',
    topic: 'child',
    about: 'The longest waist or hem cord whose ends stand out no further than a limit. At hood and neck of a child’s garment leave cords out altogether; local rules and licensed practice decide.',
    asks: ['longest drawstring for a child', 'how long a cord to cut', 'cord length in children’s clothes'],
    args: [CHANNEL, MOST],
    gives: 'length',
    rule: 'channel + 2 × most, 3 in by that rule',
    source: RULE,
    example: '=CORD.LONGEST(70 cm)',
    work([channel, most], pad) {
      return pad.length('the channel and both ends', [mm(channel), ' + 2 × ', mm(most)], channel + 2 * most);
    },
  }),
];
