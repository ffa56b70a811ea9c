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
];
