/** Which picture shows the working of which function. */
import { inBase, show, UNITS } from '../quantities/index.ts';
import type { Quantity, ShowAs, UnitCode } from '../quantities/index.ts';
import { functionNamed } from '../sewing/index.ts';
import type { SewingFunction } from '../sewing/index.ts';
import { biasSquare } from './bias.ts';
import { buttonStand } from './button.ts';
import { buttonEdge, buttonhole } from './buttonhole.ts';
import { circleOnCloth } from './circle-lay.ts';
import { circlePiece } from './circle.ts';
import { twoLengths } from './compare.ts';
import { dart, movedDart, sharedDarts } from './dart.ts';
import { gathers, tierDepths, tiers } from './gather.ts';
import { goreShape, goresOnCloth } from './gore-shape.ts';
import { godet, gores } from './gore.ts';
import { hem, hemFullness } from './hem.ts';
import type { Picture } from './marks.ts';
import { pleatMarks } from './pleat-marks.ts';
import { pleatDeepen, pleatEdges, pleatPanel } from './pleat-panel.ts';
import { pleatSection } from './pleat-section.ts';
import type { PleatKind } from './pleat-section.ts';
import { seamEdge, seamShift } from './seam.ts';
import { blend, sizeGap } from './size-lines.ts';

/** A function as it was called, and what it gave. */
export interface PictureCall {
  /** In capitals, as `FUNCTIONS` has it. */
  readonly name: string;
  /**
   * What was given, each under its argument's name; one that may be given
   * several times has an entry for each. What was left out has none.
   */
  readonly given: readonly { readonly name: string; readonly value: Quantity | string }[];
  readonly result: Quantity | string;
}

/** The figures of a call in base units, by argument. */
interface Values {
  /** A figure, or the argument's usual one. */
  figure(name: string): number;
  /** The same, or nothing where none was given and the usual one stands for no bound. */
  given(name: string): number | undefined;
  word(name: string): string;
  all(name: string): number[];
  readonly result: number;
  /** The unit in which the picture's lengths show by themselves. */
  readonly unit: UnitCode;
}

type Maker = (values: Values, as: ShowAs) => Picture | undefined;

const TURN = 2 * Math.PI;
const kindOf = (v: Values): PleatKind => v.word('kind') as PleatKind;

const MAKERS: Readonly<Record<string, Maker>> = {
  EASE: easeBars,
  'EASE.PERCENT': easeBars,

  'BLEND.WIDTH': (v, as) => blend({ from: v.figure('from'), to: v.figure('to'), distance: v.figure('distance'), at: v.figure('at'), line: v.word('line') === 'smooth' ? 'smooth' : 'straight', unit: v.unit }, as),
  'BLEND.GAP': (v, as) => {
    const sizes = [v.word('size'), v.word('other')];
    const [smaller = '', larger = ''] = sizes.every((size) => Number.isFinite(Number(size))) ? sizes.sort((a, b) => Number(a) - Number(b)) : sizes;
    return sizeGap({ gap: v.result, smaller, larger, measure: v.word('measure'), seams: v.figure('seams'), unit: v.unit }, as);
  },

  'SEAM.SHIFT': (v, as) => seamShift({ shift: v.result, seams: v.figure('seams'), unit: v.unit }, as),
  'SEAM.GAIN': (v, as) => seamShift({ shift: v.figure('shift'), seams: v.figure('seams'), unit: v.unit }, as),
  'SEAM.LEFT': (v, as) => seamEdge({ allowance: v.figure('allowance'), shift: v.figure('shift'), least: v.figure('least'), unit: v.unit }, as),
  'SEAM.SHARE': (v, as) => {
    const allowance = v.given('allowance');
    return allowance === undefined || v.result > allowance
      ? seamShift({ shift: v.result, seams: 1, unit: v.unit }, as)
      : seamEdge({ allowance, shift: v.result, least: v.figure('least'), unit: v.unit }, as);
  },
  'SEAM.TAKEN': (v, as) => seamEdge({ allowance: v.figure('allowance'), shift: -v.figure('in'), least: 0, unit: v.unit }, as),
  'SEAM.NEEDED': (v, as) => seamEdge({
    allowance: v.result, shift: v.figure('change') / (2 * v.figure('seams')), least: v.figure('least'), seams: v.figure('seams'), unit: v.unit,
  }, as),
  'SEAM.ROOM': (v, as) => seamEdge({
    allowance: v.figure('allowance'), shift: Math.max(0, v.figure('allowance') - v.figure('least')), least: v.figure('least'), seams: v.figure('seams'), unit: v.unit,
  }, as),

  'DART.INTAKE': (v, as) => sharedDarts({ wide: v.figure('wide'), narrow: v.figure('narrow'), darts: v.figure('darts'), unit: v.unit }, as),
  'DART.ANGLE': dartOf,
  'DART.LEG': dartOf,
  'DART.WIDTH': (v, as) => dart({ intake: v.result, length: v.figure('length'), unit: v.unit }, as),
  'DART.MOVED': (v, as) => movedDart({ intake: v.figure('intake'), leg: v.figure('leg'), newLeg: v.figure('new leg'), unit: v.unit }, as),

  'PLEAT.DEPTH': (v, as) => pleatSection({ kind: kindOf(v), depth: v.result, spacing: v.figure('finished') / v.figure('pleats'), pleats: v.figure('pleats'), unit: v.unit }, as),
  'PLEAT.DEEPEN': (v, as) => pleatDeepen({ kind: kindOf(v), pleats: v.figure('pleats'), hip: v.figure('hip'), waist: v.figure('waist'), unit: v.unit }, as),
  'PLEAT.SPACING': (v, as) => pleatEdges({ pleats: v.figure('pleats'), finished: v.figure('finished'), unit: v.unit }, as),
  'PLEAT.COUNT': (v, as) => pleatEdges({ pleats: v.result, finished: v.figure('finished'), unit: v.unit }, as),
  'PLEAT.UNDERLAY': (v, as) => pleatSection({ kind: kindOf(v), depth: v.figure('depth'), unit: v.unit }, as),
  'PLEAT.AT': (v, as) => pleatMarks({ kind: kindOf(v), spacing: v.figure('spacing'), depth: v.figure('depth'), marked: v.figure('n'), unit: v.unit }, as),
  'PLEAT.ACROSS': (v, as) => (v.result < 1 ? undefined : pleatPanel({
    kind: kindOf(v), pleats: v.result, depth: v.figure('depth'), finished: v.result * v.figure('spacing'), allowance: v.figure('allowance'), unit: v.unit,
  }, as)),
  'PLEAT.CLOTH': (v, as) => pleatPanel({
    kind: kindOf(v), pleats: v.figure('pleats'), depth: v.figure('depth'), finished: v.figure('finished'), allowance: v.figure('allowance'), unit: v.unit,
  }, as),

  'GATHER.CLOTH': (v, as) => gathers({ cloth: v.result, finished: v.figure('finished'), unit: v.unit }, as),
  'GATHER.RATIO': (v, as) => gathers({ cloth: v.figure('cloth'), finished: v.figure('finished'), unit: v.unit }, as),
  'TIER.CLOTH': (v, as) => tiers({ top: v.figure('top'), ratio: v.figure('ratio'), tiers: v.figure('tier'), unit: v.unit }, as),

  'TIER.DEPTH': (v, as) => tierDepths({ length: v.figure('length'), step: v.figure('step'), tiers: v.figure('tiers'), marked: v.figure('tier'), unit: v.unit }, as),
  'TIER.TOTAL': (v, as) => tiers({ top: v.figure('top'), ratio: v.figure('ratio'), tiers: v.figure('tiers'), total: v.result, unit: v.unit }, as),

  'CIRCLE.RADIUS': (v, as) => circlePiece({
    part: v.figure('part'), radius: v.result, seamRadius: v.figure('waist') / (TURN * v.figure('part')), waist: v.figure('waist'), unit: v.unit,
  }, as),
  'CIRCLE.OUTER': (v, as) => circlePiece({ part: v.figure('part'), radius: v.figure('radius'), length: v.figure('length'), hem: v.figure('hem'), unit: v.unit }, as),
  'CIRCLE.LONGEST': (v, as) => circleOnCloth({
    radius: v.figure('radius'), length: v.result + v.figure('hem'), part: v.figure('part'), width: v.figure('width'), allowance: v.figure('allowance'), hem: v.figure('hem'), unit: v.unit,
  }, as),
  'CIRCLE.SWEEP': (v, as) => circlePiece({ part: v.figure('part'), radius: v.figure('radius'), length: v.figure('length'), sweep: v.result, unit: v.unit }, as),
  'CIRCLE.PART': (v, as) => circlePiece({ part: v.result, radius: v.figure('radius'), waist: v.figure('waist'), unit: v.unit }, as),
  'CIRCLE.PIECES': circleLay,
  'CIRCLE.CLOTH': circleLay,

  'GORE.WIDTH': (v, as) => gores({ girth: v.figure('girth'), gores: v.figure('gores'), allowance: v.figure('allowance'), unit: v.unit }, as),
  'GORE.SEAM': goreOf,
  'GORE.RISE': (v, as) => goreShape({ length: v.figure('length'), top: v.figure('top'), bottom: v.figure('bottom'), rise: true, unit: v.unit }, as),
  'GORE.CLOTH': (v, as) => goresOnCloth({
    gores: v.figure('gores'), length: v.figure('length'), top: v.figure('top'), bottom: v.figure('bottom'), width: v.figure('width'),
    cloth: v.result, turned: v.word('way') === 'any', unit: v.unit,
  }, as),
  'LENGTHEN.WIDTH': goreOf,
  'LENGTHEN.SEAM': goreOf,
  'GODET.ANGLE': (v, as) => godet({ length: v.figure('length'), arc: v.figure('arc'), unit: v.unit }, as),
  'GODET.ARC': (v, as) => godet({ length: v.figure('length'), arc: v.result, unit: v.unit }, as),

  'BUTTON.GAP': (v, as) => buttonStand({ first: v.figure('first'), last: v.figure('last'), buttons: v.figure('count'), unit: v.unit }, as),
  'BUTTON.COUNT': (v, as) => buttonStand({ first: v.figure('first'), last: v.figure('last'), buttons: v.result, unit: v.unit }, as),
  'BUTTON.AT': (v, as) => buttonStand({ first: v.figure('first'), last: v.figure('last'), buttons: v.figure('count'), marked: v.figure('n'), unit: v.unit }, as),
  'BUTTON.EVEN': (v, as) => {
    const places = v.all('place').sort((a, b) => a - b);
    const [first = 0, last = 0] = [places[0], places.at(-1)];
    const levels = places.slice(1, -1).map((at) => ({ name: 'wanted', at }));
    return v.result > 0 ? buttonStand({ first, last, buttons: Math.round((last - first) / v.result) + 1, levels, unit: v.unit }, as) : undefined;
  },
  'BUTTON.OFF': (v, as) => buttonStand({
    first: v.figure('first'), last: v.figure('last'), buttons: v.figure('count'), levels: [{ name: 'level', at: v.figure('level') }], unit: v.unit,
  }, as),
  'BUTTON.UNEVEN': (v, as) => {
    const places = v.all('place').sort((a, b) => a - b);
    const [first = 0, last = 0] = [places[0], places.at(-1)];
    return last > first ? buttonStand({ first, last, buttons: places.length, places, unit: v.unit }, as) : undefined;
  },
  'BUTTON.STAND': (v, as) => buttonEdge({ diameter: v.figure('diameter'), beyond: v.figure('beyond'), unit: v.unit }, as),
  BUTTONHOLE: (v, as) => buttonhole({ diameter: v.figure('diameter'), thickness: v.figure('thickness'), unit: v.unit }, as),
  'BUTTONHOLE.BALL': (v, as) => buttonhole({ diameter: v.figure('diameter'), unit: v.unit }, as),

  'HEM.CUT': (v, as) => hem({ finished: v.figure('finished'), seam: v.figure('seam'), hem: v.figure('hem'), under: v.figure('under'), unit: v.unit }, as),
  'HEM.DEPTH': (v, as) => hem({ finished: v.figure('finished'), seam: v.figure('seam'), hem: v.result, under: v.figure('under'), unit: v.unit }, as),
  'HEM.LEFT': (v, as) => seamEdge({ allowance: v.figure('hem'), shift: v.figure('down'), least: v.figure('least'), hem: true, unit: v.unit }, as),
  'HEM.FULLNESS': (v, as) => hemFullness({ hem: v.figure('hem'), part: v.figure('part'), sewnDown: false, unit: v.unit }, as),
  'HEM.EASED': (v, as) => hemFullness({ hem: v.figure('hem'), part: v.figure('part'), sewnDown: true, unit: v.unit }, as),

  'BIAS.LENGTH': (v, as) => biasSquare({ strip: v.figure('strip'), side: v.figure('side'), length: v.result, unit: v.unit }, as),
  'BIAS.SQUARE': (v, as) => (v.result < v.figure('strip') ? undefined : biasSquare({ strip: v.figure('strip'), side: v.result, length: v.figure('length'), unit: v.unit }, as)),
  'BIAS.CONTINUOUS': joinedBias,
  'BIAS.STRIPS': joinedBias,
  'BIAS.SIDE': (v, as) => (v.result < v.figure('strip') ? undefined : biasSquare({ strip: v.figure('strip'), side: v.result, length: v.figure('length'), joined: true, unit: v.unit }, as)),
  'BIAS.STEP': (v, as) => biasSquare({ strip: v.figure('strip'), unit: v.unit }, as),

  'CAP.EASE': capBars,
  'CAP.SHARE': capBars,
  'STRETCH.PERCENT': (v, as) => twoLengths({
    base: { name: 'At rest', of: 'the length at rest', length: v.figure('rest') }, other: { name: 'Stretched', length: v.figure('stretched') }, more: 'stretches by', less: 'shorter by', unit: v.unit,
  }, as),
  'STRETCH.WORN': (v, as) => stretchBars(v.figure('garment'), v, as),
  'STRETCH.GARMENT': (v, as) => stretchBars(v.result, v, as),
  'ELASTIC.STRETCH': (v, as) => twoLengths({
    base: { name: 'Elastic', of: 'the elastic', length: v.figure('elastic') }, other: { name: 'What it must pass', length: v.figure('over') }, more: 'stretches by', less: 'looser by', unit: v.unit,
  }, as),
  'ELASTIC.LENGTH': (v, as) => twoLengths({
    base: { name: 'Elastic', of: 'the elastic', length: v.result }, other: { name: 'Body', length: v.figure('body') }, more: 'stretches by', less: 'looser by', unit: v.unit,
  }, as),
  'OPENING.ROOM': (v, as) => twoLengths({
    base: { name: 'What must pass', of: 'what must pass', length: v.figure('over') }, other: { name: 'Opening', length: v.figure('over') + v.result },
    more: 'room', less: 'too small by', lessIsWrong: true, unit: v.unit,
  }, as),
  'INTERFACING.SPARE': (v, as) => twoLengths({
    base: { name: 'Band', of: 'the band', length: v.figure('band') }, other: { name: 'Interfacing', length: v.figure('interfacing') },
    more: 'to spare', less: 'too short by', lessIsWrong: true, unit: v.unit,
  }, as),
  'CLOTH.SHRUNK': (v, as) => twoLengths({
    base: { name: 'Before washing', of: 'the length before', length: v.figure('length') }, other: { name: 'After washing', length: v.result }, more: 'grows by', less: 'shrinks by', unit: v.unit,
  }, as),
  'SHRINK.PERCENT': (v, as) => twoLengths({
    base: { name: 'Before washing', of: 'the length before', length: v.figure('before') }, other: { name: 'After washing', length: v.figure('after') }, more: 'grows by', less: 'shrinks by', unit: v.unit,
  }, as),
};

function easeBars(v: Values, as: ShowAs): Picture {
  return twoLengths({ base: { name: 'Body', of: 'the body', length: v.figure('body') }, other: { name: 'Garment', length: v.figure('finished') }, more: 'ease', less: 'smaller by', unit: v.unit }, as);
}

function capBars(v: Values, as: ShowAs): Picture {
  return twoLengths({
    base: { name: 'Armhole', of: 'the armhole', length: v.figure('armhole') }, other: { name: 'Sleeve cap', length: v.figure('cap') }, more: 'ease', less: 'too short by', lessIsWrong: true, unit: v.unit,
  }, as);
}

function stretchBars(garment: number, v: Values, as: ShowAs): Picture {
  return twoLengths({ base: { name: 'Garment', of: 'the garment', length: garment }, other: { name: 'Body', length: v.figure('body') }, more: 'stretches by', less: 'looser by', unit: v.unit }, as);
}

function dartOf(v: Values, as: ShowAs): Picture {
  return dart({ intake: v.figure('intake'), length: v.figure('length'), unit: v.unit }, as);
}

function goreOf(v: Values, as: ShowAs): Picture | undefined {
  const [length, longer] = [v.figure('length'), v.given('amount') ?? 0];
  return length + longer > 0 ? goreShape({ length, top: v.figure('top'), bottom: v.figure('bottom'), longer, unit: v.unit }, as) : undefined;
}

function joinedBias(v: Values, as: ShowAs): Picture {
  return biasSquare({ strip: v.figure('strip'), side: v.figure('side'), length: v.result, joined: true, unit: v.unit }, as);
}

function circleLay(v: Values, as: ShowAs): Picture | undefined {
  return circleOnCloth({
    radius: v.figure('radius'), length: v.figure('length'), part: v.figure('part'), width: v.figure('width'), allowance: v.figure('allowance'), unit: v.unit,
  }, as);
}

/** The functions that have a picture. */
export const PICTURED: readonly string[] = Object.keys(MAKERS);

/** Ten kilometres; beyond it a figure is a slip, and a picture of it shows nothing. */
const MOST = 1e7;
/** A millionth of a millimetre; what is less is the dust of a sum that comes to nothing. */
const LEAST = 1e-6;

/**
 * The picture of a call, with its figures as the sheet shows them (`as`); or
 * nothing, where the function has none, the call gave no figure, or its figures
 * are beyond anything that is sewn. Never throws for what a function accepts.
 */
export function pictureFor(call: PictureCall, as: ShowAs): Picture | undefined {
  const maker = MAKERS[call.name];
  const fn = functionNamed(call.name);
  if (maker === undefined || fn === undefined || typeof call.result === 'string') return undefined;
  const clean = (value: Quantity): Quantity => (Math.abs(value.value) < LEAST ? { ...value, value: 0 } : value);
  const given = call.given.map(({ name, value }) => ({ name, value: typeof value === 'string' ? value : clean(value) }));
  const drawable = ({ name, value }: PictureCall['given'][number]): boolean => {
    if (typeof value === 'string') return true;
    const bound = fn.args.find((arg) => arg.name === name)?.above;
    return Math.abs(value.value) <= MOST && (bound === undefined || value.value > bound);
  };
  if (!(Math.abs(call.result.value) <= MOST) || !given.every(drawable)) return undefined;
  return maker(valuesOf({ ...call, given }, fn, clean(call.result)), as);
}

function valuesOf({ given }: PictureCall, fn: SewingFunction, result: Quantity): Values {
  const find = (name: string): Quantity | string | undefined => given.find((each) => each.name === name)?.value;
  const usual = (name: string): number | string | undefined => fn.args.find((arg) => arg.name === name)?.usual;
  const isLength = (value: Quantity | string): value is Quantity => typeof value !== 'string' && value.dimension === 'length';
  const unit = given.map(({ value }) => value).find(isLength)?.unit ?? (isLength(result) ? result.unit : 'cm');
  const figure = (name: string): number => {
    const value = find(name);
    return Number(typeof value === 'object' ? value.value : (value ?? usual(name)));
  };
  return {
    figure,
    given: (name) => (Number.isFinite(figure(name)) ? figure(name) : undefined),
    word(name) {
      const value = find(name) ?? usual(name) ?? '';
      if (typeof value === 'object') return show(inBase(value.value, value.unit), { system: 'own', inchStep: 32 }).main;
      const text = String(value).trim();
      return fn.args.find((arg) => arg.name === name)?.kind === 'choice' ? text.toLowerCase() : text;
    },
    all: (name) => given.flatMap((each) => (each.name === name && typeof each.value === 'object' ? [each.value.value] : [])),
    result: result.value,
    unit: UNITS[unit].dimension === 'length' ? unit : 'cm',
  };
}
