/** One figure of two that stand in one cell. */
import { define } from './define.ts';
import type { Figure } from './define.ts';

const SPAN = { name: 'span', kind: 'span', about: 'two figures in one cell, such as 4–5 cm; a single figure stands for both' } as const;

export const SPAN_FUNCTIONS = [
  define({
    name: 'SPAN.LOW',
    topic: 'measure',
    about: 'The lower of two figures in one cell, so that it can be reckoned with.',
    asks: ['least of a range', 'lower figure', 'take one figure of a span'],
    args: [SPAN],
    gives: 'figure',
    rule: 'the first of the two',
    source: 'exact arithmetic',
    example: '=SPAN.LOW(8 cm)',
    work([span], pad) {
      return pad.figure('the lower figure', [], span.low);
    },
  }),
  define({
    name: 'SPAN.HIGH',
    topic: 'measure',
    about: 'The higher of two figures in one cell, so that it can be reckoned with.',
    asks: ['most of a range', 'higher figure'],
    args: [SPAN],
    gives: 'figure',
    rule: 'the second of the two',
    source: 'exact arithmetic',
    example: '=SPAN.HIGH(8 cm)',
    work([span], pad) {
      return pad.figure('the higher figure', [], span.high);
    },
  }),
  define({
    name: 'SPAN.MIDDLE',
    topic: 'measure',
    about: 'The figure half-way between two figures in one cell.',
    asks: ['middle of a range', 'average of a span'],
    args: [SPAN],
    gives: 'figure',
    rule: '(lower + higher) ÷ 2',
    source: 'exact arithmetic',
    example: '=SPAN.MIDDLE(8 cm)',
    work([span], pad) {
      const middle: Figure = { ...span.low, value: span.low.value + (span.high.value - span.low.value) / 2 };
      return pad.figure('half-way between them', ['(', span.low, ' + ', span.high, ') ÷ 2'], middle);
    },
  }),
];
