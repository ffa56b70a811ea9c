/** Darts: folded wedges. */
import { define, degrees, mm, NOT_MORE, plain } from './define.ts';

const INTAKE = { name: 'intake', kind: 'length', about: 'width of the dart’s mouth', atLeast: 0 } as const;
const LENGTH = { name: 'length', kind: 'length', about: 'from the mouth to the point, along the dart’s middle', above: 0 } as const;

export const DART_FUNCTIONS = [
  define({
    name: 'DART.INTAKE',
    topic: 'dart',
    about: 'How much each dart takes in between a wide and a narrow level.',
    asks: ['how wide should the darts be', 'dart intake', 'how much to take out in darts'],
    args: [
      { name: 'wide', kind: 'length', about: 'girth at the wide level, ease with it', atLeast: 0 },
      { name: 'narrow', kind: 'length', about: 'girth at the narrow level, ease with it', atLeast: 0 },
      { name: 'darts', kind: 'count', about: 'how many darts share it', usual: 1 },
      { name: 'most', kind: 'length', about: 'the most that one dart can take in before it pokes, to be told when it is more', above: 0, usual: NOT_MORE },
    ],
    gives: 'length',
    rule: '(wide − narrow) ÷ darts',
    source: 'exact geometry',
    example: '=DART.INTAKE(104 cm, 72 cm, 8)',
    work([wide, narrow, darts, most], pad) {
      if (narrow > wide) pad.refuse(`The narrow level, ${pad.say(narrow)}, is wider than the wide one, ${pad.say(wide)}: a dart cannot add cloth.`);
      const whole = pad.length('wide minus narrow', [mm(wide), ' − ', mm(narrow)], wide - narrow);
      const each = pad.length('shared by the darts', [mm(whole), ' ÷ ', plain(darts)], whole / darts);
      if (each > most * (1 + 1e-9)) pad.caution('So deep a dart pokes at its point: share the intake among more darts, or let the seams take some. At least so many darts are needed.', plain(Math.ceil(whole / most - 1e-9)), 'darts', 'atLeast');
      return each;
    },
  }),
  define({
    name: 'DART.ANGLE',
    topic: 'dart',
    about: 'The angle at a dart’s point.',
    asks: ['angle of a dart', 'how sharp is the dart'],
    args: [INTAKE, LENGTH],
    gives: 'angle',
    rule: '2 × arctan(intake ÷ 2 ÷ length)',
    source: 'exact geometry',
    example: '=DART.ANGLE(2 cm, 9 cm)',
    work([intake, length], pad) {
      const half = pad.length('half the intake', [mm(intake), ' ÷ 2'], intake / 2);
      return pad.angle('twice the angle between the middle and a leg', ['2 × arctan(', mm(half), ' ÷ ', mm(length), ')'], (2 * Math.atan2(half, length) * 180) / Math.PI);
    },
  }),
  define({
    name: 'DART.WIDTH',
    topic: 'dart',
    about: 'The intake of a dart with a given angle at its point and a given length.',
    asks: ['dart from its angle', 'make a dart longer', 'dart width at another length'],
    args: [{ name: 'angle', kind: 'angle', about: 'angle at its point', above: 0, below: 180 }, LENGTH],
    gives: 'length',
    rule: '2 × length × tan(angle ÷ 2)',
    source: 'exact geometry',
    example: '=DART.WIDTH(12°, 9 cm)',
    work([angle, length], pad) {
      const half = pad.angle('half the angle', [degrees(angle), ' ÷ 2'], angle / 2);
      return pad.length('twice what the middle and a leg are apart', ['2 × ', mm(length), ' × tan(', degrees(half), ')'], 2 * length * Math.tan((half * Math.PI) / 180));
    },
  }),
  define({
    name: 'DART.LEG',
    topic: 'dart',
    about: 'The length of each side of a dart.',
    asks: ['length of the dart leg', 'how long is the side of the dart'],
    args: [INTAKE, LENGTH],
    gives: 'length',
    rule: '√(length² + (intake ÷ 2)²)',
    source: 'exact geometry',
    example: '=DART.LEG(2 cm, 9 cm)',
    work([intake, length], pad) {
      pad.showIn(pad.unitGiven(1) ?? 'cm');
      const half = pad.length('half the intake', [mm(intake), ' ÷ 2'], intake / 2);
      return pad.length('slant of the triangle', ['√(', mm(length), '² + ', mm(half), '²)'], Math.hypot(length, half));
    },
  }),
  define({
    name: 'DART.MOVED',
    topic: 'dart',
    about: 'The intake of a dart that is moved to another seam, about the same point.',
    asks: ['move a dart', 'rotate a dart', 'shoulder dart to side seam'],
    args: [
      INTAKE,
      { name: 'leg', kind: 'length', about: 'length of its legs where it is now', above: 0 },
      { name: 'new leg', kind: 'length', about: 'length of its legs where it goes', above: 0 },
    ],
    gives: 'length',
    rule: 'intake × new leg ÷ leg',
    source: 'exact geometry: the angle at the point stays the same',
    example: '=DART.MOVED(1.5 cm, 8 cm, 16 cm)',
    work([intake, leg, newLeg], pad) {
      if (intake > 2 * leg) pad.refuse(`A dart with legs of ${pad.say(leg)} cannot be ${pad.say(intake)} wide: its legs would not meet.`);
      const angle = pad.angle('angle at the point', ['2 × arcsin(', mm(intake), ' ÷ 2 ÷ ', mm(leg), ')'], (2 * Math.asin(intake / 2 / leg) * 180) / Math.PI);
      return pad.length('the same angle at the new length', [mm(intake), ' × ', mm(newLeg), ' ÷ ', mm(leg), ', still ', degrees(angle)], (intake * newLeg) / leg);
    },
  }),
];
