/**
 * Usual values, read from tables in the workbook, where they can be seen and
 * changed. Each table is an argument: the figures come from nowhere else.
 */
import { define } from './define.ts';
import { lengthIn, rangeIn, textIn } from './usual-table.ts';

const table = (columns: string) => ({ name: 'table', kind: 'block', about: `the table, its headings with it: ${columns}` }) as const;
const CLOTH = { name: 'cloth', kind: 'text', about: 'which row, such as "poplin"' } as const;
const SOURCE = 'the source that the table names for the row';

export const USUAL_FUNCTIONS = [
  define({
    name: 'EASE.USUAL',
    topic: 'usual',
    about: 'The usual ease for a garment at a level, as the table has it; sources differ, so it is a choice.',
    asks: ['how much ease is usual', 'usual ease for a dress', 'how loose should it be'],
    args: [
      table('garment, level, fit, from, to, source'),
      { name: 'garment', kind: 'text', about: 'such as "dress"' },
      { name: 'level', kind: 'text', about: 'such as "bust"' },
      { name: 'fit', kind: 'text', about: 'such as "fitted"; without it every fit that the table has', usual: '' },
    ],
    gives: 'span',
    rule: 'the figures of the row; from the least to the most where several rows fit',
    source: SOURCE,
    example: '=EASE.USUAL(usual ease, "dress", "bust", "fitted")',
    work([block, garment, level, fit], pad) {
      return rangeIn(block, [['garment', garment], ['level', level], ['fit', fit]], 'length', pad);
    },
  }),
  define({
    name: 'FULLNESS.USUAL',
    topic: 'usual',
    about: 'The usual fullness of gathers, pleats or tiers, cut length for each finished length.',
    asks: ['how full should gathers be', 'usual fullness', 'ratio for a ruffle'],
    args: [table('style, from, to, source'), { name: 'style', kind: 'text', about: 'such as "gathers, medium"' }],
    gives: 'span',
    rule: 'the figures of the row',
    source: SOURCE,
    example: '=FULLNESS.USUAL(usual fullness, "gathers, medium cloth")',
    work([block, style], pad) {
      return rangeIn(block, [['style', style]], 'number', pad);
    },
  }),
  define({
    name: 'ALLOWANCE.USUAL',
    topic: 'usual',
    about: 'The usual seam or hem allowance at a place.',
    asks: ['how wide a seam allowance', 'usual hem allowance', 'seam allowance for a neckline'],
    args: [table('where, from, to, source'), { name: 'where', kind: 'text', about: 'such as "side seam"' }],
    gives: 'span',
    rule: 'the figures of the row',
    source: SOURCE,
    example: '=ALLOWANCE.USUAL(usual allowances, "side seam")',
    work([block, where], pad) {
      return rangeIn(block, [['where', where]], 'length', pad);
    },
  }),
  define({
    name: 'SHOP.STEP',
    topic: 'usual',
    about: 'The step in which a shop sells, for CLOTH.BUY to round up to.',
    asks: ['what does the shop sell in', 'smallest length to buy', 'sold by the metre'],
    args: [table('sold, step, source'), { name: 'sold', kind: 'text', about: 'such as "cloth by the metre"' }],
    gives: 'length',
    rule: 'the figure of the row',
    source: SOURCE,
    example: '=SHOP.STEP(usual steps, "cloth by the metre")',
    work([block, sold], pad) {
      return lengthIn(block, [['sold', sold]], 'step', pad);
    },
  }),
  define({
    name: 'NEEDLE.USUAL',
    topic: 'usual',
    about: 'The usual machine needle for a cloth.',
    asks: ['which needle', 'needle size for jersey', 'needle for denim'],
    args: [table('cloth, needle, stitch from, stitch to, source'), CLOTH],
    gives: 'text',
    rule: 'the words of the row',
    source: SOURCE,
    example: '=NEEDLE.USUAL(usual needles, "poplin")',
    work([block, cloth], pad) {
      return textIn(block, [['cloth', cloth]], 'needle', pad);
    },
  }),
  define({
    name: 'STITCH.USUAL',
    topic: 'usual',
    about: 'The usual stitch length for a cloth as the dial of a machine has it: plain numbers, in mm.',
    asks: ['stitch length for this cloth', 'how long a stitch', 'stitch size for jersey'],
    args: [table('cloth, needle, stitch from, stitch to, source'), CLOTH],
    gives: 'span',
    rule: 'the figures of the row',
    source: SOURCE,
    example: '=STITCH.USUAL(usual needles, "poplin")',
    work([block, cloth], pad) {
      return rangeIn(block, [['cloth', cloth]], 'number', pad, 'stitch from', 'stitch to');
    },
  }),
];
