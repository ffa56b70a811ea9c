/** Knits and elastic. */
import { define, mm, share } from './define.ts';

const BODY = { name: 'body', kind: 'length', about: 'the body’s measure', above: 0 } as const;

export const STRETCH_FUNCTIONS = [
  define({
    name: 'STRETCH.PERCENT',
    topic: 'stretch',
    about: 'How far cloth stretches, as a share of its length at rest.',
    asks: ['how stretchy is this knit', 'stretch test'],
    args: [
      { name: 'rest', kind: 'length', about: 'length at rest', above: 0 },
      { name: 'stretched', kind: 'length', about: 'length as far as it stretches well', above: 0 },
    ],
    gives: 'percent',
    rule: '(stretched − rest) ÷ rest',
    source: 'common practice',
    example: '=STRETCH.PERCENT(10 cm, 15 cm)',
    work([rest, stretched], pad) {
      if (stretched < rest) pad.refuse(`Stretched, ${pad.say(stretched)}, it is shorter than at rest, ${pad.say(rest)}: give the length at rest first.`);
      const gain = pad.length('stretched minus at rest', [mm(stretched), ' − ', mm(rest)], stretched - rest);
      return pad.percent('as a share of the length at rest', [mm(gain), ' ÷ ', mm(rest)], gain / rest);
    },
  }),
  define({
    name: 'STRETCH.WORN',
    topic: 'stretch',
    about: 'How far a garment stretches when it is worn; below 0 when it does not.',
    asks: ['how much does it stretch on the body', 'stretch when worn'],
    args: [{ name: 'garment', kind: 'length', about: 'the garment’s measure at rest', above: 0 }, BODY],
    gives: 'percent',
    rule: 'body ÷ garment − 1',
    source: 'exact geometry',
    example: '=STRETCH.WORN(90 cm, 100 cm)',
    work([garment, body], pad) {
      const gain = pad.length('body minus garment', [mm(body), ' − ', mm(garment)], body - garment);
      return pad.percent('as a share of the garment', [mm(gain), ' ÷ ', mm(garment)], gain / garment);
    },
  }),
  define({
    name: 'STRETCH.GARMENT',
    topic: 'stretch',
    about: 'The measure at rest of a garment that stretches by a share when it is worn.',
    asks: ['how small to make a knit top', 'swimsuit size', 'negative ease'],
    args: [BODY, { name: 'percent', kind: 'percent', about: 'stretch when worn', atLeast: 0 }],
    gives: 'length',
    rule: 'body ÷ (1 + percent)',
    source: 'exact geometry',
    example: '=STRETCH.GARMENT(100 cm, 10 %)',
    work([body, percent], pad) {
      return pad.length('what stretches to the body', [mm(body), ' ÷ (1 + ', share(percent), ')'], body / (1 + percent));
    },
  }),
  define({
    name: 'ELASTIC.STRETCH',
    topic: 'stretch',
    about: 'How far a closed elastic must stretch to pass over a measure.',
    asks: ['will the waistband go over the hips', 'elastic over the hip'],
    args: [
      { name: 'elastic', kind: 'length', about: 'closed elastic at rest', above: 0 },
      { name: 'over', kind: 'length', about: 'what it must pass, such as the hip', above: 0 },
    ],
    gives: 'percent',
    rule: 'over ÷ elastic − 1',
    source: 'exact geometry',
    example: '=ELASTIC.STRETCH(67 cm, 100 cm)',
    work([elastic, over], pad) {
      const gain = pad.length('what it must pass minus the elastic', [mm(over), ' − ', mm(elastic)], over - elastic);
      return pad.percent('as a share of the elastic', [mm(gain), ' ÷ ', mm(elastic)], gain / elastic);
    },
  }),
];
