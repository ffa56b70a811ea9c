/** Ease: what a garment has beyond the body. */
import { define, mm } from './define.ts';

const FINISHED = { name: 'finished', kind: 'length', about: 'the garment’s measure, seam to seam, closed', atLeast: 0 } as const;
const BODY = { name: 'body', kind: 'length', about: 'the same measure of the body', above: 0 } as const;
const TIGHT = 'The garment is smaller than the body here: right only for cloth that stretches.';

export const FIT_FUNCTIONS = [
  define({
    name: 'EASE',
    topic: 'fit',
    about: 'How much larger the finished garment is than the body.',
    asks: ['how much ease', 'will it be tight', 'garment minus body', 'wearing ease'],
    args: [FINISHED, BODY],
    gives: 'length',
    rule: 'finished − body',
    source: 'exact geometry',
    example: '=EASE(98 cm, 92 cm)',
    work([finished, body], pad) {
      if (finished < body) pad.caution(TIGHT, mm(body));
      return pad.length('finished measure minus body measure', [mm(finished), ' − ', mm(body)], finished - body);
    },
  }),
  define({
    name: 'EASE.PERCENT',
    topic: 'fit',
    about: 'Ease as a share of the body’s measure.',
    asks: ['ease in percent', 'how much ease for this size', 'negative ease of a knit'],
    args: [FINISHED, BODY],
    gives: 'percent',
    rule: '(finished − body) ÷ body',
    source: 'exact geometry',
    example: '=EASE.PERCENT(98 cm, 92 cm)',
    work([finished, body], pad) {
      if (finished < body) pad.caution(TIGHT, mm(body));
      const ease = pad.length('finished measure minus body measure', [mm(finished), ' − ', mm(body)], finished - body);
      return pad.percent('ease as a share of the body', [mm(ease), ' ÷ ', mm(body)], ease / body);
    },
  }),
];
