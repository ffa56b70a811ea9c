/** Shoulders: narrower or wider than the pattern's, and how steep they are. */
import { degrees, define, mm } from './define.ts';

export const SHOULDER_FUNCTIONS = [
  define({
    name: 'SHOULDER.CHANGE',
    topic: 'shoulder',
    about: 'How much each shoulder seam must change: below 0 for shoulders narrower than the pattern’s.',
    asks: ['narrow shoulder adjustment', 'broad shoulder adjustment', 'shoulder seam too long'],
    args: [
      { name: 'pattern', kind: 'length', about: 'shoulder seam of the pattern, neck seam to armhole seam', above: 0 },
      { name: 'body', kind: 'length', about: 'shoulder length of the body, one side', above: 0 },
      { name: 'extra', kind: 'length', about: 'what the style has beyond the shoulder point, or below 0 inside it', usual: 0 },
    ],
    gives: 'length',
    rule: 'body + extra − pattern',
    source: 'exact arithmetic',
    example: '=SHOULDER.CHANGE(13.5 cm, 12.5 cm)',
    work([pattern, body, extra], pad) {
      const wanted = pad.length('shoulder seam wanted', [mm(body), ' + ', mm(extra)], body + extra);
      return pad.length('minus the pattern’s', [mm(wanted), ' − ', mm(pattern)], wanted - pattern);
    },
  }),
  define({
    name: 'SHOULDER.SIDE',
    topic: 'shoulder',
    about: 'How much each side must change for a shoulder width taken right across: below 0 for narrower.',
    asks: ['across shoulder too wide', 'shoulder width adjustment', 'armhole hangs off the shoulder'],
    args: [
      { name: 'pattern', kind: 'length', about: 'the pattern from armhole seam to armhole seam over the back neck point, all the way', above: 0 },
      { name: 'body', kind: 'length', about: 'shoulder width of the body, shoulder point to shoulder point', above: 0 },
    ],
    gives: 'length',
    rule: '(body − pattern) ÷ 2',
    source: 'exact arithmetic',
    example: '=SHOULDER.SIDE(40 cm, 38 cm)',
    work([pattern, body], pad) {
      const whole = pad.length('body minus pattern', [mm(body), ' − ', mm(pattern)], body - pattern);
      return pad.length('half on each side', [mm(whole), ' ÷ 2'], whole / 2);
    },
  }),
  define({
    name: 'SHOULDER.PIVOT',
    topic: 'shoulder',
    about: 'The angle by which the armhole part swings when the pattern is slashed from the shoulder to the armhole and lapped or spread; the armhole seam keeps its length.',
    asks: ['slash and overlap a shoulder', 'swing the armhole in', 'narrow shoulder by slashing'],
    args: [
      { name: 'change', kind: 'length', about: 'how much is lapped (below 0) or spread at the shoulder seam' },
      { name: 'slash', kind: 'length', about: 'length of the slash, from the shoulder seam to the armhole seam', above: 0 },
    ],
    gives: 'angle',
    rule: '2 × arcsin(change ÷ 2 ÷ slash), below 0 when lapped',
    source: 'exact geometry',
    example: '=SHOULDER.PIVOT(-1 cm, 14 cm)',
    work([change, slash], pad) {
      if (Math.abs(change) > slash) pad.refuse(`A change of ${pad.say(change)} is more than a slash of ${pad.say(slash)} can swing: slash further down.`);
      const half = pad.length('half the change', [mm(change), ' ÷ 2'], change / 2);
      return pad.angle('twice the angle that half of it makes', ['2 × arcsin(', mm(half), ' ÷ ', mm(slash), ')'], (2 * Math.asin(half / slash) * 180) / Math.PI);
    },
  }),
  define({
    name: 'SHOULDER.SLOPE',
    topic: 'shoulder',
    about: 'How steep a shoulder is.',
    asks: ['sloping shoulders', 'square shoulders', 'angle of the shoulder'],
    args: [
      { name: 'length', kind: 'length', about: 'shoulder length, along the slope', above: 0 },
      { name: 'drop', kind: 'length', about: 'how much lower the shoulder point lies than the side neck point', atLeast: 0 },
    ],
    gives: 'angle',
    rule: 'arcsin(drop ÷ length)',
    source: 'exact geometry',
    example: '=SHOULDER.SLOPE(12.5 cm, 4.5 cm)',
    work([length, drop], pad) {
      if (drop > length) pad.refuse(`A shoulder ${pad.say(length)} long cannot drop by ${pad.say(drop)}: check the figures.`);
      return pad.angle('angle from the level', ['arcsin(', mm(drop), ' ÷ ', mm(length), ')'], (Math.asin(drop / length) * 180) / Math.PI);
    },
  }),
  define({
    name: 'SHOULDER.DROP',
    topic: 'shoulder',
    about: 'How far to raise (above 0) or lower (below 0) the shoulder point of the pattern so that its slope becomes the body’s.',
    asks: ['adjust for sloping shoulders', 'adjust for square shoulders', 'raise the shoulder point'],
    args: [
      { name: 'length', kind: 'length', about: 'shoulder seam, along the slope', above: 0 },
      { name: 'pattern', kind: 'angle', about: 'slope of the pattern’s shoulder', atLeast: 0, below: 90 },
      { name: 'body', kind: 'angle', about: 'slope of the body’s shoulder', atLeast: 0, below: 90 },
    ],
    gives: 'length',
    rule: 'length × (sin(pattern) − sin(body)); move the armhole up or down with it',
    source: 'exact geometry',
    example: '=SHOULDER.DROP(12.5 cm, 21°, 25°)',
    work([length, pattern, body], pad) {
      const sine = (angle: number): number => Math.sin((angle * Math.PI) / 180);
      const [has, wants] = [
        pad.length('the pattern’s shoulder point lies lower than its neck by', [mm(length), ' × sin(', degrees(pattern), ')'], length * sine(pattern)),
        pad.length('the body’s lies lower by', [mm(length), ' × sin(', degrees(body), ')'], length * sine(body)),
      ];
      return pad.length('the difference', [mm(has), ' − ', mm(wants)], has - wants);
    },
  }),
];
