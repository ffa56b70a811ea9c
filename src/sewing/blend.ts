/** Lines that run from one size to another. */
import { define, mm, plain } from './define.ts';
import { orRefuse } from './pad.ts';
import { figureOrContinued } from './size-choice-continued.ts';

export const BLEND_FUNCTIONS = [
  define({
    name: 'BLEND.WIDTH',
    topic: 'blend',
    about: 'How wide the piece is at a point of a line that runs from one size to another.',
    asks: ['blend between sizes', 'width in the middle of a blend', 'from one size at the bust to another at the hip', 'grade between sizes'],
    args: [
      { name: 'from', kind: 'length', about: 'width where the blend starts', atLeast: 0 },
      { name: 'to', kind: 'length', about: 'width where it ends', atLeast: 0 },
      { name: 'distance', kind: 'length', about: 'how long the blend is', above: 0 },
      { name: 'at', kind: 'length', about: 'how far along it the point lies', atLeast: 0 },
      { name: 'line', kind: 'choice', about: 'straight, or smooth: in the direction of the piece’s length at both ends', choices: ['straight', 'smooth'], usual: 'straight' },
    ],
    gives: 'length',
    rule: 'from + (to − from) × part, where part = at ÷ distance; for a smooth line part² × (3 − 2 × part) in its stead',
    source: 'exact geometry; a smooth line is the cubic that is tangent at both ends',
    example: '=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 15 cm)',
    work([from, to, distance, at, line], pad) {
      if (at > distance) pad.refuse(`The point at ${pad.say(at)} lies beyond the end of the blend at ${pad.say(distance)}: give a point on it.`);
      const part = pad.number('part of the way along', [mm(at), ' ÷ ', mm(distance)], at / distance);
      const share = line === 'straight' ? part : pad.number('part of the widening that is done there', [plain(part), '² × (3 − 2 × ', plain(part), ')'], part * part * (3 - 2 * part));
      // Written so that both ends come out exactly.
      const width = share === 1 ? to : from + (to - from) * share;
      return pad.length('width at the start plus that part of the difference', [mm(from), ' + (', mm(to), ' − ', mm(from), ') × ', plain(share)], width);
    },
  }),
  define({
    name: 'BLEND.GAP',
    topic: 'blend',
    about: 'How far apart the lines of two nested sizes lie on one edge of a piece.',
    asks: ['distance between size lines', 'how far apart are nested sizes', 'gap between two sizes on the pattern'],
    args: [
      { name: 'chart', kind: 'chart', about: 'the size chart, its labels with it' },
      { name: 'measure', kind: 'text', about: 'which girth of the chart, such as "hip"' },
      { name: 'size', kind: 'size', about: 'one size' },
      { name: 'other', kind: 'size', about: 'the other size' },
      { name: 'seams', kind: 'count', about: 'seams that share the girth; each has two edges', usual: 2 },
    ],
    gives: 'length',
    rule: '(larger figure − smaller figure) ÷ (2 × seams); past the chart’s ends its figures go on by its own last step',
    source: 'exact geometry',
    example: '=BLEND.GAP(chart, "hip", 12, 14, 2)',
    work([chart, measure, size, other, seams], pad) {
      const column = orRefuse(chart.measure(measure), pad);
      pad.showIn(column.unit);
      const figures = [figureOrContinued(column, size, pad), figureOrContinued(column, other, pad)];
      const [small, large] = [Math.min(...figures), Math.max(...figures)];
      return pad.length('difference shared by both edges of every seam', ['(', mm(large), ' − ', mm(small), ') ÷ (2 × ', plain(seams), ')'], (large - small) / (2 * seams));
    },
  }),
];
