/** Knits and elastic. */
import { define, mm, NOT_MORE, share } from './define.ts';
import type { Pad } from './define.ts';

const BODY = { name: 'body', kind: 'length', about: 'the body’s measure', above: 0 } as const;

const KNIT = { name: 'knit', kind: 'percent', about: 'how far this cloth stretches well, by STRETCH.PERCENT, to be told when it must stretch more', atLeast: 0, usual: NOT_MORE } as const;

const FURTHER = 'It must stretch further than this cloth does';
const beyond = (stretch: number, knit: number): boolean => stretch > knit * (1 + 1e-9);

/** The band that is stretched to `to`; `edge` is what it is sewn to. */
function watchBand(edge: number, part: number, over: number, knit: number, pad: Pad): void {
  const to = Math.max(edge, over);
  if (!beyond(to / (edge * part) - 1, knit)) return;
  const least = to / (1 + knit) / edge;
  if (least <= 1) pad.caution(`${FURTHER}: the band’s share of the edge is to be at least this.`, share(least), 'share', 'atLeast');
  else if (part * (1 + knit) >= 1) pad.caution(`${FURTHER}: to pass, the edge is to measure at least this.`, mm(over / (part * (1 + knit))), 'edge', 'atLeast');
  else pad.caution(`${FURTHER}, whatever the band’s share of the edge: take softer cloth, or a wider edge with more of a band.`);
}

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
    args: [{ name: 'garment', kind: 'length', about: 'the garment’s measure at rest', above: 0 }, BODY, KNIT],
    gives: 'percent',
    rule: 'body ÷ garment − 1',
    source: 'exact geometry',
    example: '=STRETCH.WORN(90 cm, 100 cm)',
    work([garment, body, knit], pad) {
      if (beyond(body / garment - 1, knit)) pad.caution(`${FURTHER}: at rest it needs at least this.`, mm(body / (1 + knit)), 'garment', 'atLeast');
      const gain = pad.length('body minus garment', [mm(body), ' − ', mm(garment)], body - garment);
      return pad.percent('as a share of the garment', [mm(gain), ' ÷ ', mm(garment)], gain / garment);
    },
  }),
  define({
    name: 'STRETCH.GARMENT',
    topic: 'stretch',
    about: 'The measure at rest of a garment that stretches by a share when it is worn.',
    asks: ['how small to make a knit top', 'swimsuit size', 'negative ease'],
    args: [BODY, { name: 'percent', kind: 'percent', about: 'stretch when worn', atLeast: 0 }, KNIT],
    gives: 'length',
    rule: 'body ÷ (1 + percent)',
    source: 'exact geometry',
    example: '=STRETCH.GARMENT(100 cm, 10 %)',
    work([body, percent, knit], pad) {
      if (beyond(percent, knit)) pad.caution(`${FURTHER}: worn, it can stretch by no more than this.`, share(knit), 'percent', 'atMost');
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
      { ...KNIT, name: 'has', about: 'how far this elastic stretches well, to be told when it must stretch more' },
    ],
    gives: 'percent',
    rule: 'over ÷ elastic − 1',
    source: 'exact geometry',
    example: '=ELASTIC.STRETCH(67 cm, 100 cm)',
    work([elastic, over, has], pad) {
      if (beyond(over / elastic - 1, has)) pad.caution('It must stretch further than this elastic does: at rest it needs at least this.', mm(over / (1 + has)), 'elastic', 'atLeast');
      const gain = pad.length('what it must pass minus the elastic', [mm(over), ' − ', mm(elastic)], over - elastic);
      return pad.percent('as a share of the elastic', [mm(gain), ' ÷ ', mm(elastic)], gain / elastic);
    },
  }),
  define({
    name: 'ELASTIC.LENGTH',
    topic: 'stretch',
    about: 'The length of elastic to cut so that it holds, worn, with a stretch of a share.',
    asks: ['how long to cut elastic', 'elastic for a waist', 'elastic for a sleeve'],
    args: [
      BODY,
      { name: 'stretch', kind: 'percent', about: 'stretch when worn; 5 to 15 % for a waist (common practice)', atLeast: 0 },
      { name: 'join', kind: 'length', about: 'what one end laps over the other', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'body ÷ (1 + stretch) + join',
    source: 'exact geometry',
    example: '=ELASTIC.LENGTH(76 cm, 8 %, 2 cm)',
    work([body, stretch, join], pad) {
      const closed = pad.length('closed, at rest', [mm(body), ' ÷ (1 + ', share(stretch), ')'], body / (1 + stretch));
      return pad.length('and the lap', [mm(closed), ' + ', mm(join)], closed + join);
    },
  }),
  define({
    name: 'ELASTIC.CASING',
    topic: 'stretch',
    about: 'How much to turn over for a casing that elastic runs in.',
    asks: ['how wide is the casing', 'channel for elastic', 'fold over for elastic'],
    args: [
      { name: 'elastic', kind: 'length', about: 'width of the elastic', above: 0 },
      { name: 'play', kind: 'length', about: 'room for it to run in', atLeast: 0, usual: 3 },
      { name: 'under', kind: 'length', about: 'what is turned under at the raw edge', atLeast: 0, usual: 10 },
    ],
    gives: 'length',
    rule: 'elastic + play + under',
    source: 'common practice',
    example: '=ELASTIC.CASING(20 mm)',
    work([elastic, play, under], pad) {
      return pad.length('all together', [mm(elastic), ' + ', mm(play), ' + ', mm(under)], elastic + play + under);
    },
  }),
  define({
    name: 'KNIT.BAND',
    topic: 'stretch',
    about: 'The length to cut for a knitted band that is stretched onto an edge, such as a neckband.',
    asks: ['how long is the neckband', 'neckband for a knit top', 'ribbing length', 'will it go over the head'],
    args: [
      { name: 'edge', kind: 'length', about: 'seam line of the edge, all the way round', above: 0 },
      { name: 'share', kind: 'percent', about: 'the band’s share of the edge; 80 to 90 % for a neck (common practice), less for soft rib', above: 0, atMost: 1 },
      { name: 'allowance', kind: 'length', about: 'seam allowance at each end', atLeast: 0, usual: 0 },
      { name: 'over', kind: 'length', about: 'what the finished band must pass, such as the head', atLeast: 0, usual: 0 },
      KNIT,
    ],
    gives: 'length',
    rule: 'edge × share + 2 × allowance',
    source: 'common practice',
    example: '=KNIT.BAND(52 cm, 85 %, 7 mm, 58 cm, 50 %)',
    work([edge, part, allowance, over, knit], pad) {
      const closed = pad.length('the band when closed', [mm(edge), ' × ', share(part)], edge * part);
      watchBand(edge, part, over, knit, pad);
      return pad.length('and a seam allowance at both ends', [mm(closed), ' + 2 × ', mm(allowance)], closed + 2 * allowance);
    },
  }),
];
