/** Every picture with usual and with extreme inputs, by family: what the contact sheet shows and the visual test compares. */
import {
  biasSquare, blend, blendedEdge, bodyEase, buttonEdge, buttonhole, buttonStand, circleOnCloth, circlePiece, dart, gathers, godet, gores, goreShape, goresOnCloth, hem, hemFullness,
  movedDart, pleatDeepen, pleatEdges, pleatMarks, pleatPanel, pleatSection, seamEdge, seamShift, sharedDarts, sizeGap, sizeOutline, tierDepths, tiers, twoLengths,
  type Picture,
} from '../../../src/pictures/index.ts';
import type { ShowAs } from '../../../src/quantities/index.ts';

export interface Entry {
  readonly caption: string;
  readonly picture: Picture;
}

export interface Family {
  /** Also the name of its reference picture. */
  readonly name: string;
  readonly entries: readonly Entry[];
}

const CM: ShowAs = { system: 'cm', inchStep: 8 };
const IN: ShowAs = { system: 'in', inchStep: 8 };
const BOTH: ShowAs = { system: 'both', inchStep: 16 };
const cm = { unit: 'cm' } as const;
const e = (caption: string, picture: Picture | undefined): Entry => {
  if (picture === undefined) throw new Error(`There is no picture of “${caption}”.`);
  return { caption, picture };
};

export const FAMILIES: readonly Family[] = [
  {
    name: 'pleat-sections',
    entries: [
      e('knife', pleatSection({ kind: 'knife', depth: 40, spacing: 50, pleats: 18, ...cm }, CM)),
      e('knife that overlap', pleatSection({ kind: 'knife', depth: 100, spacing: 50, pleats: 20, ...cm }, BOTH)),
      e('one knife pleat', pleatSection({ kind: 'knife', depth: 30, spacing: 200, pleats: 1, ...cm }, CM)),
      e('60 knife pleats, ten times as deep as they are apart', pleatSection({ kind: 'knife', depth: 160, spacing: 16, pleats: 60, ...cm }, IN)),
      e('box', pleatSection({ kind: 'box', depth: 57.15, spacing: 136, pleats: 8, unit: 'in' }, BOTH)),
      e('box that overlap', pleatSection({ kind: 'box', depth: 76, spacing: 136, pleats: 8, ...cm }, CM)),
      e('box with a narrow front', pleatSection({ kind: 'box', depth: 40, spacing: 160, face: 80, pleats: 4, ...cm }, CM)),
      e('one box pleat', pleatSection({ kind: 'box', depth: 20, spacing: 700, pleats: 1, ...cm }, CM)),
      e('inverted', pleatSection({ kind: 'inverted', depth: 50, spacing: 120, pleats: 6, ...cm }, CM)),
      e('inverted that overlap', pleatSection({ kind: 'inverted', depth: 80, spacing: 120, pleats: 6, ...cm }, BOTH)),
      e('a pleat by itself', pleatSection({ kind: 'inverted', depth: 50, ...cm }, CM)),
      e('pleats without depth', pleatSection({ kind: 'box', depth: 0, spacing: 100, pleats: 5, ...cm }, CM)),
    ],
  },
  {
    name: 'pleat-panels',
    entries: [
      e('knife', pleatPanel({ kind: 'knife', pleats: 18, depth: 40, finished: 920, allowance: 15, ...cm }, CM)),
      e('three knife pleats', pleatPanel({ kind: 'knife', pleats: 3, depth: 25, finished: 240, allowance: 15, ...cm }, BOTH)),
      e('box', pleatPanel({ kind: 'box', pleats: 8, depth: 57.15, finished: 1090, allowance: 0, unit: 'in' }, BOTH)),
      e('one box pleat', pleatPanel({ kind: 'box', pleats: 1, depth: 30, finished: 400, allowance: 10, ...cm }, CM)),
      e('inverted that overlap', pleatPanel({ kind: 'inverted', pleats: 6, depth: 80, finished: 720, allowance: 15, ...cm }, CM)),
      e('60 knife pleats', pleatPanel({ kind: 'knife', pleats: 60, depth: 8, finished: 960, allowance: 15, ...cm }, IN)),
      e('marks', pleatMarks({ kind: 'knife', spacing: 50, depth: 40, marked: 3, ...cm }, BOTH)),
      e('mark of the 40th', pleatMarks({ kind: 'box', spacing: 50, depth: 10, marked: 40, ...cm }, CM)),
      e('edges', pleatEdges({ pleats: 18, finished: 920, ...cm }, CM)),
      e('edges of one', pleatEdges({ pleats: 1, finished: 300, ...cm }, BOTH)),
      e('knife, hip to waist', pleatDeepen({ kind: 'knife', pleats: 20, hip: 1000, waist: 760, ...cm }, CM)),
      e('box, waist wider', pleatDeepen({ kind: 'box', pleats: 6, hip: 900, waist: 960, ...cm }, BOTH)),
    ],
  },
  {
    name: 'circles',
    entries: [
      e('radius of a half circle', circlePiece({ part: 0.5, radius: 214.18, seamRadius: 229.18, waist: 720, ...cm }, CM)),
      e('sweep of a whole circle', circlePiece({ part: 1, radius: 115, length: 600, sweep: 4492.5, ...cm }, BOTH)),
      e('three quarters', circlePiece({ part: 0.75, radius: 150, length: 500, sweep: 3063, ...cm }, CM)),
      e('a circle and a half', circlePiece({ part: 1.5, radius: 76, length: 600, sweep: 6371, ...cm }, IN)),
      e('with its hem', circlePiece({ part: 0.5, radius: 229, length: 600, hem: 20, ...cm }, CM)),
      e('radius 2 cm, length 120 cm', circlePiece({ part: 0.25, radius: 20, length: 1200, sweep: 1916, ...cm }, BOTH)),
      e('part of a circle', circlePiece({ part: 0.03, radius: 1200, waist: 226, ...cm }, CM)),
      e('whole on wide cloth', circleOnCloth({ radius: 110, length: 550, part: 1, width: 1500, allowance: 15, ...cm }, CM)),
      e('whole with joins', circleOnCloth({ radius: 110, length: 650, part: 1, width: 1400, allowance: 15, ...cm }, BOTH)),
      e('half', circleOnCloth({ radius: 214, length: 600, part: 0.5, width: 1500, allowance: 15, ...cm }, CM)),
      e('two circles on narrow cloth', circleOnCloth({ radius: 60, length: 600, part: 2, width: 900, allowance: 15, ...cm }, IN)),
      e('radius 2 cm', circleOnCloth({ radius: 20, length: 80, part: 0.75, width: 1400, allowance: 10, ...cm }, CM)),
      e('radius 120 cm', circleOnCloth({ radius: 1200, length: 300, part: 0.5, width: 1120, allowance: 15, ...cm }, CM)),
    ],
  },
  {
    name: 'gores-and-godets',
    entries: [
      e('6 gores', gores({ girth: 1016, gores: 6, allowance: 15.875, unit: 'in' }, IN)),
      e('2 gores', gores({ girth: 760, gores: 2, allowance: 15, ...cm }, BOTH)),
      e('60 gores without allowance', gores({ girth: 1100, gores: 60, allowance: 0, ...cm }, CM)),
      e('1 gore, wide allowance', gores({ girth: 100, gores: 1, allowance: 60, ...cm }, CM)),
      e('godet', godet({ length: 300, arc: 200, ...cm }, CM)),
      e('quarter circle', godet({ length: 300, arc: 471.24, ...cm }, BOTH)),
      e('three quarters of a circle', godet({ length: 250, arc: 1178, ...cm }, CM)),
      e('narrow', godet({ length: 600, arc: 10, ...cm }, CM)),
      e('hem of a gore', goreShape({ length: 600, top: 170, bottom: 350, rise: true, ...cm }, CM)),
      e('lengthened', goreShape({ length: 600, top: 170, bottom: 350, longer: 80, ...cm }, BOTH)),
      e('shortened', goreShape({ length: 600, top: 170, bottom: 350, longer: -80, ...cm }, CM)),
      e('wide and short', goreShape({ length: 20, top: 900, bottom: 100, longer: 2, ...cm }, BOTH)),
      e('six gores head to tail', goresOnCloth({ gores: 6, length: 650, top: 200, bottom: 380, width: 1400, cloth: 1300, turned: true, ...cm }, CM)),
      e('six gores one way', goresOnCloth({ gores: 6, length: 650, top: 200, bottom: 380, width: 1400, cloth: 1300, turned: false, ...cm }, BOTH)),
      e('sixty gores', goresOnCloth({ gores: 60, length: 300, top: 20, bottom: 40, width: 1120, cloth: 900, turned: false, ...cm }, CM)),
    ],
  },
  {
    name: 'gathers-and-tiers',
    entries: [
      e('one and a half', gathers({ cloth: 1050, finished: 700, ...cm }, CM)),
      e('sevenfold', gathers({ cloth: 4900, finished: 700, ...cm }, BOTH)),
      e('not gathered', gathers({ cloth: 700, finished: 700, ...cm }, IN)),
      e('three tiers', tiers({ top: 760, ratio: 1.5, tiers: 3, ...cm }, CM)),
      e('twelve tiers', tiers({ top: 760, ratio: 1.3, tiers: 12, ...cm }, BOTH)),
      e('depths', tierDepths({ length: 750, step: 40, tiers: 3, marked: 2, ...cm }, CM)),
      e('depths of fifty', tierDepths({ length: 1000, step: -0.5, tiers: 50, marked: 49, ...cm }, BOTH)),
      e('one tier', tiers({ top: 300, ratio: 8, tiers: 1, ...cm }, CM)),
    ],
  },
  {
    name: 'buttons',
    entries: [
      e('11 buttons, the fourth', buttonStand({ first: 20, last: 620, buttons: 11, marked: 4, ...cm }, CM)),
      e('with the bust level', buttonStand({ first: 15, last: 600, buttons: 9, levels: [{ name: 'bust', at: 200 }, { name: 'waist', at: 380 }], ...cm }, CM)),
      e('in both units', buttonStand({ first: 20, last: 620, buttons: 9, levels: [{ name: 'bust', at: 245 }], ...cm }, BOTH)),
      e('2 buttons', buttonStand({ first: 0, last: 40, buttons: 2, ...cm }, CM)),
      e('40 buttons, the 17th', buttonStand({ first: 10, last: 1100, buttons: 40, marked: 17, ...cm }, IN)),
      e('levels close together', buttonStand({ first: 20, last: 620, buttons: 13, levels: [{ name: 'bust', at: 240 }, { name: 'under the bust', at: 248 }, { name: 'a level with a very long name', at: 255 }], ...cm }, BOTH)),
      e('measured from far away', buttonStand({ first: 900, last: 1200, buttons: 6, ...cm }, CM)),
      e('measured from within', buttonStand({ first: -100, last: 300, buttons: 6, ...cm }, CM)),
      e('uneven', buttonStand({ first: 20, last: 300, buttons: 5, places: [20, 80, 140, 230, 300], ...cm }, CM)),
      e('two at one place', buttonStand({ first: 20, last: 300, buttons: 4, places: [20, 20, 25, 300], ...cm }, BOTH)),
      e('stand', buttonEdge({ diameter: 18, beyond: 6, unit: 'mm' }, CM)),
      e('stand, in both units', buttonEdge({ diameter: 38.1, beyond: 0, unit: 'in' }, BOTH)),
      e('buttonhole', buttonhole({ diameter: 25.4, thickness: 6.35, unit: 'in' }, BOTH)),
      e('flat button', buttonhole({ diameter: 15, thickness: 0, ...cm }, CM)),
      e('thick button', buttonhole({ diameter: 4, thickness: 30, unit: 'mm' }, CM)),
      e('ball button', buttonhole({ diameter: 12, unit: 'mm' }, CM)),
    ],
  },
  {
    name: 'darts',
    entries: [
      e('dart', dart({ intake: 20, length: 90, ...cm }, CM)),
      e('both units', dart({ intake: 38, length: 240, ...cm }, BOTH)),
      e('blunt', dart({ intake: 300, length: 20, ...cm }, BOTH)),
      e('no intake', dart({ intake: 0, length: 90, ...cm }, CM)),
      e('moved', movedDart({ intake: 15, leg: 80, newLeg: 160, ...cm }, CM)),
      e('moved, blunt', movedDart({ intake: 150, leg: 80, newLeg: 60, ...cm }, BOTH)),
      e('8 darts', sharedDarts({ wide: 1040, narrow: 720, darts: 8, ...cm }, CM)),
      e('1 dart', sharedDarts({ wide: 500, narrow: 480, darts: 1, ...cm }, BOTH)),
      e('60 darts', sharedDarts({ wide: 1040, narrow: 100, darts: 60, ...cm }, CM)),
    ],
  },
  {
    name: 'seams',
    entries: [
      e('let out', seamEdge({ allowance: 15, shift: 5, least: 6, ...cm }, CM)),
      e('let out too far', seamEdge({ allowance: 15.875, shift: 12, least: 6, unit: 'in' }, BOTH)),
      e('taken in', seamEdge({ allowance: 12.7, shift: -9.525, least: 6, unit: 'in' }, IN)),
      e('all of it let out', seamEdge({ allowance: 10, shift: 10, least: 6, ...cm }, CM)),
      e('not moved', seamEdge({ allowance: 15, shift: 0, least: 6, ...cm }, CM)),
      e('taken in by far', seamEdge({ allowance: 5, shift: -120, least: 6, ...cm }, BOTH)),
      e('most that can be let out', seamEdge({ allowance: 15, shift: 9, least: 6, seams: 2, ...cm }, CM)),
      e('hem let down', seamEdge({ allowance: 50, shift: 20, least: 20, hem: true, ...cm }, CM)),
      e('shift, out', seamShift({ shift: 2.5, seams: 4, ...cm }, CM)),
      e('shift, in', seamShift({ shift: -9.525, seams: 2, unit: 'in' }, BOTH)),
      e('no shift', seamShift({ shift: 0, seams: 2, ...cm }, CM)),
    ],
  },
  {
    name: 'sizes-by-level',
    entries: [
      e('edge, 12 to 14 below the waist', blendedEdge({
        levels: [{ name: 'bust', size: 0, down: 170, usual: true }, { name: 'waist', size: 0, down: 200 }, { name: 'hip', size: 1 }],
        sizes: [{ name: '12', girths: [920, 740, 980] }, { name: '14', girths: [960, 780, 1020] }], seams: 2, ...cm,
      }, CM)),
      e('edge of three sizes, both units', blendedEdge({
        levels: [{ name: 'bust', size: 0, down: 165.1 }, { name: 'waist', size: 2, down: 203.2, usual: true }, { name: 'hip', size: 1 }],
        sizes: [{ name: 'M', girths: [940, 780, 1020] }, { name: 'L', girths: [1025, 865, 1105] }, { name: 'L + 1', girths: [1115, 955, 1195] }], seams: 1, unit: 'in',
      }, BOTH)),
      e('outline by finished measures', sizeOutline({
        levels: [
          { name: 'bust', body: 930, size: '12', girth: 980, left: 50, smaller: 940, larger: 1020 }, { name: 'waist', body: 760, size: '12', girth: 780, left: 20, smaller: 740, larger: 820 },
          { name: 'hip', body: 1030, size: '14', girth: 1080, left: 50, smaller: 1040, larger: 1120 },
        ], isEase: true, ...cm,
      }, CM)),
      e('outline by body measures, both units, one level larger than the chart', sizeOutline({
        levels: [{ name: 'bust', body: 1250, size: '20 + 2', girth: 1168, left: -82, smaller: 1118 }, { name: 'waist', body: 1010, size: '20', girth: 1029, left: 19, smaller: 972 }], isEase: false, unit: 'in',
      }, BOTH)),
    ],
  },
  {
    name: 'sizes',
    entries: [
      e('straight', blend({ from: 220, to: 260, distance: 400, at: 150, line: 'straight', ...cm }, CM)),
      e('smooth', blend({ from: 220, to: 260, distance: 400, at: 150, line: 'smooth', ...cm }, BOTH)),
      e('narrower', blend({ from: 260, to: 180, distance: 120, at: 120, line: 'smooth', ...cm }, CM)),
      e('short and wide', blend({ from: 100, to: 900, distance: 15, at: 0, line: 'straight', ...cm }, IN)),
      e('long and narrow', blend({ from: 2, to: 0, distance: 900, at: 450, line: 'smooth', ...cm }, BOTH)),
      e('gap', sizeGap({ gap: 12.5, smaller: '12', larger: '14', measure: 'hip', seams: 2, ...cm }, BOTH)),
      e('no gap, long names', sizeGap({ gap: 0, smaller: 'Extra extra small petite', larger: 'Extra small petite', measure: 'upper arm', seams: 1, ...cm }, CM)),
    ],
  },
  {
    name: 'bodies-and-ease',
    entries: [
      e('dress', bodyEase({ levels: [{ name: 'bust', body: 920, finished: 980 }, { name: 'waist', body: 740, finished: 780 }, { name: 'hip', body: 1000, finished: 1050 }], ...cm }, CM)),
      e('both units, some smaller', bodyEase({ levels: [{ name: 'bust', body: 1040, finished: 960 }, { name: 'waist', body: 900, finished: 900 }, { name: 'hip', body: 1100, finished: 1250 }, { name: 'thigh', body: 640, finished: 700 }], ...cm }, BOTH)),
      e('one level', bodyEase({ levels: [{ name: 'hip', body: 1000, finished: 1600 }], ...cm }, CM)),
      e('ten levels', bodyEase({ levels: Array.from({ length: 10 }, (_, i) => ({ name: `level ${i + 1} of this chart`, body: 700 + 40 * i, finished: 760 + 40 * i })), ...cm }, IN)),
      e('ease', twoLengths({ base: { name: 'Body', of: 'the body', length: 920 }, other: { name: 'Garment', length: 980 }, more: 'ease', less: 'smaller by', ...cm }, CM)),
      e('smaller than the body', twoLengths({ base: { name: 'Body', of: 'the body', length: 1000 }, other: { name: 'Garment', length: 900 }, more: 'ease', less: 'smaller by', ...cm }, BOTH)),
      e('cap too short', twoLengths({ base: { name: 'Armhole', of: 'the armhole', length: 440 }, other: { name: 'Sleeve cap', length: 425 }, more: 'ease', less: 'too short by', lessIsWrong: true, ...cm }, IN)),
      e('no ease', twoLengths({ base: { name: 'Body', of: 'the body', length: 920 }, other: { name: 'Garment', length: 920 }, more: 'ease', less: 'smaller by', ...cm }, CM)),
      e('nothing yet', twoLengths({ base: { name: 'Body', of: 'the body', length: 920 }, other: { name: 'Garment', length: 0 }, more: 'ease', less: 'smaller by', ...cm }, CM)),
    ],
  },
  {
    name: 'bias-and-hems',
    entries: [
      e('square', biasSquare({ strip: 50.8, side: 508, length: 5080, unit: 'in' }, IN)),
      e('narrow strips', biasSquare({ strip: 10, side: 1000, length: 100_000, ...cm }, BOTH)),
      e('one strip', biasSquare({ strip: 90, side: 100, length: 111, ...cm }, CM)),
      e('step', biasSquare({ strip: 50.8, unit: 'in' }, BOTH)),
      e('hem', hem({ finished: 585, seam: 15, hem: 40, under: 10, ...cm }, CM)),
      e('no turn-under, both units', hem({ finished: 585, seam: 15, hem: 40, under: 0, ...cm }, BOTH)),
      e('hem deeper than the piece is long', hem({ finished: 20, seam: 2, hem: 200, under: 6, ...cm }, CM)),
      e('no hem', hem({ finished: 585, seam: 15, hem: 0, under: 0, ...cm }, CM)),
      e('half circle', hemFullness({ hem: 20, part: 0.5, sewnDown: false, ...cm }, CM)),
      e('a circle and a half', hemFullness({ hem: 30, part: 1.5, sewnDown: true, ...cm }, BOTH)),
      e('a tenth of a circle', hemFullness({ hem: 30, part: 0.1, sewnDown: false, ...cm }, CM)),
    ],
  },
];
