/** Gathers and tiers: cut length against finished length. */
import { define, mm, plain } from './define.ts';

const FINISHED = { name: 'finished', kind: 'length', about: 'length when gathered', above: 0 } as const;
const RATIO = { name: 'ratio', kind: 'number', about: 'cut length for each finished length, such as 2', atLeast: 1 } as const;

export const GATHER_FUNCTIONS = [
  define({
    name: 'GATHER.CLOTH',
    topic: 'gather',
    about: 'The length to cut for a gathered length.',
    asks: ['how much cloth for gathers', 'ruffle length', 'how full is a gathered skirt'],
    args: [FINISHED, RATIO],
    gives: 'length',
    rule: 'finished × ratio',
    source: 'exact geometry',
    example: '=GATHER.CLOTH(70 cm, 1.5)',
    work([finished, ratio], pad) {
      return pad.length('finished length times the fullness', [mm(finished), ' × ', plain(ratio)], finished * ratio);
    },
  }),
  define({
    name: 'GATHER.RATIO',
    topic: 'gather',
    about: 'The fullness that a length of cloth gives when it is gathered.',
    asks: ['fullness ratio', 'how full will it be'],
    args: [{ name: 'cloth', kind: 'length', about: 'cut length, without seam allowances', above: 0 }, FINISHED],
    gives: 'number',
    rule: 'cloth ÷ finished',
    source: 'exact geometry',
    example: '=GATHER.RATIO(140 cm, 70 cm)',
    work([cloth, finished], pad) {
      if (cloth < finished) pad.refuse(`A cut length of ${pad.say(cloth)} is too short for a finished length of ${pad.say(finished)}: nothing is left to gather.`);
      return pad.number('cut length for each finished length', [mm(cloth), ' ÷ ', mm(finished)], cloth / finished);
    },
  }),
  define({
    name: 'TIER.CLOTH',
    topic: 'gather',
    about: 'The length to cut for a tier of a tiered skirt, each tier gathered to the one above.',
    asks: ['tiered skirt', 'how wide is each tier', 'cloth for the third tier'],
    args: [{ name: 'top', kind: 'length', about: 'edge that the first tier is gathered to', above: 0 }, RATIO, { name: 'tier', kind: 'count', about: 'which tier, 1 for the first', atMost: 50 }],
    gives: 'length',
    rule: 'top × ratio, as many times as the tier’s count',
    source: 'exact geometry',
    example: '=TIER.CLOTH(76 cm, 1.5, 3)',
    work([top, ratio, tier], pad) {
      const fullness = pad.number('fullness of this tier against the top', [plain(ratio), ' to the power ', plain(tier)], ratio ** tier);
      return pad.length('top edge times that', [mm(top), ' × ', plain(fullness)], top * fullness);
    },
  }),
  define({
    name: 'TIER.DEPTH',
    topic: 'gather',
    about: 'How deep a tier is, finished, when the tiers make up a length and each is deeper than the one above by the same step.',
    asks: ['how deep is each tier', 'tiers that get deeper', 'share the length among tiers'],
    args: [
      { name: 'length', kind: 'length', about: 'finished length of all the tiers together', above: 0 },
      { name: 'tiers', kind: 'count', about: 'how many tiers', atMost: 50 },
      { name: 'tier', kind: 'count', about: 'which tier, 1 for the top one' },
      { name: 'step', kind: 'length', about: 'how much deeper each tier is than the one above; 0 for equal tiers', usual: 0 },
    ],
    gives: 'length',
    rule: 'length ÷ tiers + step × (tier − (tiers + 1) ÷ 2)',
    source: 'exact arithmetic',
    example: '=TIER.DEPTH(75 cm, 3, 1, 4 cm)',
    work([length, tiers, tier, step], pad) {
      if (tier > tiers) pad.refuse(`There is no tier ${tier} among ${tiers}: tier goes from 1 to ${tiers}.`);
      const even = pad.length('the length shared evenly', [mm(length), ' ÷ ', plain(tiers)], length / tiers);
      if (Math.abs(step) * (tiers - 1) >= 2 * even) {
        pad.refuse(`With a step of ${pad.say(step)}, the shallowest of ${tiers} tiers would have no depth: take a step of less than ${pad.say((2 * even) / (tiers - 1))}.`);
      }
      const from = pad.number('steps from the middle tier', [plain(tier), ' − (', plain(tiers), ' + 1) ÷ 2'], tier - (tiers + 1) / 2);
      return pad.length('more or less than that by as many steps', [mm(even), ' + ', mm(step), ' × ', plain(from)], even + step * from);
    },
  }),
  define({
    name: 'TIER.TOTAL',
    topic: 'gather',
    about: 'The length of all the strips of a tiered skirt together, each tier gathered to the one above.',
    asks: ['how much cloth for a tiered skirt', 'length of all tiers', 'trim for every tier'],
    args: [{ name: 'top', kind: 'length', about: 'edge that the first tier is gathered to', above: 0 }, RATIO, { name: 'tiers', kind: 'count', about: 'how many tiers', atMost: 50 }],
    gives: 'length',
    rule: 'top × (ratio + ratio² + … up to the count of tiers)',
    source: 'exact geometry',
    example: '=TIER.TOTAL(76 cm, 1.5, 3)',
    work([top, ratio, tiers], pad) {
      let fullness = 0;
      for (let tier = 1; tier <= tiers; tier += 1) fullness += ratio ** tier;
      const whole = pad.number('fullness of all tiers against the top', [plain(ratio), ' to the powers 1 to ', plain(tiers), ', added up'], fullness);
      return pad.length('top edge times that', [mm(top), ' × ', plain(whole)], top * whole);
    },
  }),
];
