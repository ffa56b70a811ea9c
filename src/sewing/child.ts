/**
 * Children's clothes: cords, nightwear and fire, small parts. The figures are
 * those of rules that bind sellers, each named beside its function; a figure
 * within them does not make a garment comply with anything.
 */
import { define, mm } from './define.ts';

const CHANNEL = { name: 'channel', kind: 'length', about: 'the channel, with the garment opened to its fullest width', above: 0 } as const;
/** 3 in. */
const MOST = { name: 'most', kind: 'length', about: 'the most that each end may stand out; 3 in by that rule', atLeast: 0, usual: 76.2 } as const;
const RULE = '16 CFR 1120 and ASTM F1816 (United States), waist and bottom of upper outerwear, sizes 2T to 16, read at cpsc.gov; what holds for your garment and place, local rules and licensed practice decide';

const DECIDES = 'local rules and licensed practice decide';

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
      if (cord > (channel + 2 * most) * (1 + 1e-9)) {
        pad.caution('Each end stands out further than the United States rule has for children’s upper outerwear (16 CFR 1120, ASTM F1816). Use elastic or a snap, or a cord no longer than this; local rules and licensed practice decide.', mm(channel + 2 * most), 'cord', 'atMost');
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
  define({
    name: 'CORD.PLACE',
    topic: 'child',
    about: 'What to do about a cord or drawstring at a place of a child’s garment. A note, not a statement that a garment complies with anything; local rules and licensed practice decide.',
    asks: ['drawstring in a hood', 'cord at the neck of a child’s garment', 'is a cord safe for a child'],
    args: [
      { name: 'place', kind: 'choice', about: 'hood, neck, waist or hem', choices: ['hood', 'neck', 'waist', 'hem'] },
      { name: 'years', kind: 'number', about: 'the child’s age in years', atLeast: 0 },
    ],
    gives: 'text',
    rule: 'hood and neck: none under 14 years; waist and hem: short ends, with no toggle or knot, the cord sewn through at its middle',
    source: '16 CFR 1120 and ASTM F1816 (United States, upper outerwear), read at cpsc.gov; EN 14682 (Europe), read at tukes.fi; its lengths by body zone were not read; what holds for your garment and place, local rules and licensed practice decide',
    example: '=CORD.PLACE("hood", 5)',
    work([place, years], pad) {
      if (years >= 14) return pad.text('beyond the ages of these rules', [], 'as you like; mind doors and machines');
      if (place === 'waist' || place === 'hem') return pad.text('a cord here may stand out by a little', [], 'short ends, no toggle or knot, sewn through: see CORD.FREE');
      pad.caution(`A cord at the ${place} of a child’s garment can catch and strangle: rules of Europe (EN 14682) and the United States (16 CFR 1120, ASTM F1816) have none there, or from 7 years none with free ends; ${DECIDES}.`);
      return pad.text('no cord here', [], 'leave it out: use elastic or a snap');
    },
  }),
  define({
    name: 'NIGHTWEAR.OVER',
    topic: 'child',
    about: 'How much wider a child’s nightgown, pyjamas or robe is at a level than the greatest width of a close-fitting one; below 0 when it is narrower.',
    asks: ['children’s pyjamas and fire', 'is a nightgown too loose', 'flammability of children’s nightwear'],
    args: [
      { name: 'finished', kind: 'length', about: 'the garment’s girth at the level', above: 0 },
      { name: 'most', kind: 'length', about: 'the greatest width that the rule has for the size and level; the child’s own measure where you have not looked it up', above: 0 },
    ],
    gives: 'length',
    rule: 'finished − most',
    source: '16 CFR 1615 and 1616 (United States, sizes 0 to 14), read at cpsc.gov; their greatest widths go by size and level; what holds for your garment and place, local rules and licensed practice decide',
    example: '=NIGHTWEAR.OVER(60 cm, 60 cm)',
    work([finished, most], pad) {
      if (finished > most * (1 + 1e-9)) pad.caution(`Ease takes children’s nightwear out of the tight-fitting class of 16 CFR 1615 and 1616, and loose plain cotton catches fire and burns fast; ${DECIDES}. To stay close, its girth is at most this.`, mm(most), 'finished', 'atMost');
      return pad.length('finished girth minus the greatest', [mm(finished), ' − ', mm(most)], finished - most);
    },
  }),
  define({
    name: 'NIGHTWEAR.INFANT',
    topic: 'child',
    about: 'How much longer an infant’s garment (nine months or less) is than those that the nightwear rule of the United States leaves out; below 0 when it is shorter.',
    asks: ['baby nightgown length', 'infant sleepwear rule', 'how long may a baby garment be'],
    args: [
      { name: 'length', kind: 'length', about: 'length of the garment; of the longer piece when there are two', above: 0 },
      { name: 'most', kind: 'length', about: '25 3/4 in for a garment in one piece; give 15 3/4 in for each of two', above: 0, usual: 654.05 },
    ],
    gives: 'length',
    rule: 'length − most: 25 3/4 in in one piece, 15 3/4 in each in two',
    source: '16 CFR 1615 (United States), read at cpsc.gov; beside 25 3/4 in it prints 64.8 cm, which is 65.4 cm; what holds for your garment and place, local rules and licensed practice decide',
    example: '=NIGHTWEAR.INFANT(60 cm)',
    work([length, most], pad) {
      if (length > most * (1 + 1e-9)) pad.caution(`An infant’s garment of this length is not among those that the nightwear rule of the United States (16 CFR 1615) leaves out; ${DECIDES}. Those are at most as long as this.`, mm(most), 'length', 'atMost');
      return pad.length('minus the greatest length of those', [mm(length), ' − ', mm(most)], length - most);
    },
  }),
  define({
    name: 'SMALL.PART',
    topic: 'child',
    about: 'How much larger across a button, bead or other trim is than what fits the test cylinder for small parts; below 0 when it fits in, and a child under three can choke on it once it is loose.',
    asks: ['buttons on baby clothes', 'choking on small parts', 'are these buttons too small'],
    args: [
      { name: 'across', kind: 'length', about: 'the part’s greatest measure', above: 0 },
      { name: 'years', kind: 'number', about: 'the child’s age in years', atLeast: 0 },
      { name: 'cylinder', kind: 'length', about: 'width of the test cylinder: 1 1/4 in, from memory', above: 0, usual: 31.75 },
    ],
    gives: 'length',
    rule: 'across − width of the cylinder, 1 1/4 in',
    source: 'size of the cylinder from memory; 16 CFR 1501 (United States, under three years), whose 1501.3(d) leaves out children’s clothes and names their buttons, read at edocket.access.gpo.gov; what holds for your garment and place, local rules and licensed practice decide',
    example: '=SMALL.PART(18 mm, 5)',
    work([across, years, cylinder], pad) {
      if (years < 3 && across < cylinder * (1 - 1e-9)) pad.caution(`Loose, a part of this size chokes a child under three, though the rule for small parts (16 CFR 1501) leaves out buttons on clothes: sew shanks through, back them, pull at every one, and leave sewn-on trims off; ${DECIDES}. A part that does not fit the test cylinder is at least as large as this.`, mm(cylinder), 'across', 'atLeast');
      return pad.length('across, minus the cylinder’s width', [mm(across), ' − ', mm(cylinder)], across - cylinder);
    },
  }),
];
