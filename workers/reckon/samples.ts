/**
 * Small blocks of cells, by the names that examples of functions use for them:
 * a size chart, someone's measures, tables of usual values. All figures are
 * invented, so that examples have something to reckon with.
 */
import type { Sample } from '../../src/reckoning/protocol.ts';
import type { KeptLay } from '../../src/workbook/index.ts';

const sample = (name: string, kind: Sample['kind'], ...lines: readonly string[]): Sample => ({ name, kind, rows: lines.map((line) => line.split('|').map((cell) => cell.trim())) });

export const SAMPLES: readonly Sample[] = [
  sample('chart', 'chart',
    '            | 8         | 10        | 12        | 14',
    'bust        | 36 1/4 in | 37 1/4 in | 38 3/4 in | 40 3/8 in',
    'waist       | 29 1/2 in | 30 1/2 in | 32 1/4 in | 34 in',
    'hip         | 39 in     | 40 in     | 41 1/2 in | 43 in'),
  sample('measures', 'cells',
    'bust        | 37 3/8 in',
    'waist       | 31 in',
    'hip         | 39 3/4 in'),
  sample('usual ease', 'cells',
    'garment     | level | fit    | from | to    | source',
    'dress       | bust  | fitted | 5 cm | 8 cm  | invented',
    'dress       | bust  | loose  | 9 cm | 15 cm | invented'),
  sample('usual fullness', 'cells',
    'style                  | from | to | source',
    'gathers, medium cloth  | 1.5  | 2  | invented',
    'ruffle                 | 2    | 3  | invented'),
  sample('usual allowances', 'cells',
    'where       | from   | to     | source',
    'side seam   | 1.5 cm | 2.5 cm | invented',
    'neck edge   | 6 mm   | 1 cm   | invented'),
  sample('usual steps', 'cells',
    'sold               | step   | source',
    'cloth by the metre | 10 cm  | invented',
    'cloth by the yard  | 1/8 yd | invented'),
  sample('usual needles', 'cells',
    'cloth       | needle            | stitch from | stitch to | source',
    "poplin      | '80/12            | 2           | 2.5       | invented",
    "jersey      | '75/11 ball point | 2.5         | 3         | invented"),
  sample('needs', 'cells',
    'ask for     | for        | needed',
    'main cloth  | skirt      | 1.6 m',
    'main cloth  | bodice     | 90 cm',
    'buttons     | front      | 11'),
  sample('cupboard', 'cells',
    'at home     | width      | there is',
    'main cloth  | 150 cm     | 40 cm',
    'buttons     |            | 3'),
];

/** What the layout that examples name was made from. */
export const SAMPLE_PIECES = sample('dress pieces', 'cells',
  'Piece | Shape     | Length | Width | How many | Allowance',
  'Front | rectangle | 90 cm  | 50 cm | 2        | included',
  'Back  | rectangle | 90 cm  | 60 cm | 1        | included');

/** What is kept of a layout of them, but for the print of them. */
export const SAMPLE_LAYOUT: Omit<KeptLay, 'pieces' | 'print'> = {
  name: 'dress', second: null, which: '', both: false, unit: 'cm', length: 1800, density: 4 / 7, layout: { length: 1800, left: { at: [900, 600], length: 900, width: 800 } },
  cloth: { width: 1400, length: null, flaws: [], oneWay: false, alike: false, fold: 'open', gap: 0 },
};
