/**
 * What is measured on a body. Terms as in ISO 8559-1:2017 and its first edition
 * ISO 8559:1989, whose list is printed in Gupta and Zakaria (editors),
 * Anthropometry, Apparel Sizing and Design, table 4.1, read there; how each is
 * taken is told in our own words. What neither list has under such a name says
 * "common practice" as its term.
 *
 * `from` and `to`, in mm, are no limits of anything but belief: outside them a
 * slip of the hand is likelier than the figure. They hold children from about
 * two years, and all 1,986 women of the 2012 survey where it has the measure
 * (tests/published/people.test.ts); the rest is common practice.
 */
export type MeasureGroup = 'main' | 'trunk' | 'arm' | 'leg';

export interface BodyMeasure {
  /** Also the name that is offered for its cell. */
  readonly key: string;
  readonly name: string;
  readonly term: string;
  /** How it is taken. */
  readonly taken: string;
  readonly group: MeasureGroup;
  readonly from: number;
  readonly to: number;
}

export const MEASURE_GROUPS: Readonly<Record<MeasureGroup, string>> = {
  main: 'What most patterns ask for', trunk: 'Neck, shoulders, front and back', arm: 'Arm', leg: 'Leg and seat',
};

const measure = (key: string, term: string, group: MeasureGroup, from: number, to: number, taken: string): BodyMeasure => (
  { key, name: `${key.charAt(0).toUpperCase()}${key.slice(1)}`, term, taken, group, from, to });

const USED = 'common practice';

export const MEASURES: readonly BodyMeasure[] = [
  measure('height', 'height', 'main', 700, 2_200, 'From the floor to the crown, without shoes, standing straight against a wall.'),
  measure('bust', 'bust girth', 'main', 430, 1_800, 'Level all round, over the fullest part of the bust, breathing out, in the underwear that will be worn.'),
  measure('upper chest', 'chest girth at axilla', 'main', 420, 1_700, 'Level all round, high under the arms and above the breasts.'),
  measure('underbust', 'underbust girth', 'main', 400, 1_600, 'Level all round, directly under the breasts.'),
  measure('waist', 'waist girth', 'main', 400, 1_800, 'Level all round, half-way between the lowest rib and the top of the hip bone; not at the navel.'),
  measure('high hip', USED, 'main', 420, 1_900, 'Level all round, half-way from the waist to the hip.'),
  measure('hip', 'hip girth', 'main', 430, 2_000, 'Level all round, over the fullest part of the seat, feet together.'),
  measure('waist to hip', 'waist to hips', 'main', 70, 350, 'Down the side, along the body, from the waist to the level of the hip.'),
  measure('back waist length', 'cervical to waist (back)', 'main', 180, 600, 'From the bone at the back of the neck, down the middle of the back, to the waist.'),
  measure('front waist length', 'neck shoulder to waist', 'trunk', 180, 700, 'From the side of the neck over the bust point and straight down to the waist.'),
  measure('bust depth', 'neck shoulder point to breast point', 'trunk', 100, 480, 'From the side of the neck to the bust point.'),
  measure('bust point width', USED, 'trunk', 80, 350, 'From one bust point to the other, straight across.'),
  measure('shoulder length', 'shoulder length', 'trunk', 50, 200, 'From the side of the neck to the bone at the end of the shoulder, one side.'),
  measure('shoulder width', 'shoulder width', 'trunk', 200, 600, 'From shoulder bone to shoulder bone, over the bone at the back of the neck.'),
  measure('back width', 'back width', 'trunk', 180, 560, 'Across the back from one arm crease to the other, arms hanging.'),
  measure('front width', USED, 'trunk', 170, 560, 'Across the front from one arm crease to the other, arms hanging.'),
  measure('neck base', 'neck-base girth', 'trunk', 220, 600, 'Round the root of the neck, over the bone at the back and the hollow in front.'),
  measure('armhole depth', 'scye depth', 'trunk', 90, 350, 'From the bone at the back of the neck down to the level of the armpit.'),
  measure('round both shoulders', USED, 'trunk', 550, 1_700, 'Level all round, over both upper arms hanging: what a dress without an opening must pass.'),
  measure('head', 'head girth', 'trunk', 430, 680, 'Round the head above the ears: what a neck without an opening must pass.'),
  measure('arm length', 'arm length', 'arm', 220, 800, 'From the shoulder bone over the bent elbow to the wrist bone.'),
  measure('back neck to wrist', 'seventh cervical to wrist length', 'arm', 300, 1_050, 'From the bone at the back of the neck over the shoulder and the bent elbow to the wrist: some 20 cm more than the arm length.'),
  measure('upper arm', 'upper arm girth', 'arm', 130, 650, 'Round the fullest part of the upper arm, hanging.'),
  measure('body armhole', 'armscye girth', 'arm', 190, 700, 'Round the arm where it joins, over the shoulder bone and through the armpit.'),
  measure('elbow', 'elbow girth', 'arm', 120, 500, 'Round the elbow, bent.'),
  measure('wrist', 'wrist girth', 'arm', 95, 300, 'Round the wrist over the bone on the side of the little finger.'),
  measure('body rise', 'body rise', 'leg', 120, 450, 'Sitting upright on a flat chair, from the waist down the side to the seat.'),
  measure('crotch length', USED, 'leg', 350, 1_200, 'From the front of the waist, between the legs, to the back of the waist.'),
  measure('outside leg', 'outside leg length', 'leg', 400, 1_350, 'From the waist down the side, over the hip, to the floor.'),
  measure('inside leg', 'inside leg length', 'leg', 250, 1_050, 'From the lowest point between the legs straight down to the floor.'),
  measure('thigh', 'thigh girth', 'leg', 230, 1_100, 'Level all round, just under the seat.'),
  measure('knee', 'knee girth', 'leg', 180, 700, 'Level all round, over the middle of the kneecap, standing.'),
  measure('calf', 'calf girth', 'leg', 160, 650, 'Level all round, over the fullest part of the calf.'),
  measure('ankle', 'ankle girth', 'leg', 120, 400, 'Round the ankle, over the joint.'),
];

const BY_KEY = new Map(MEASURES.map((one) => [one.key, one]));

export const measureCalled = (key: string): BodyMeasure | undefined => BY_KEY.get(key);

/** "Upper chest"; her own name for a measure of her own. */
export const nameOfMeasure = (of: string): string => BY_KEY.get(of)?.name ?? of;
