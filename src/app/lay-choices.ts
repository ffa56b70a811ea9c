/**
 * What she chose for the lay, as she typed it, and what it means. The choices
 * are the record “now” of the workbook; layouts that she keeps are records of
 * their own, each with the choices that it was made by.
 */
import { readQuantity, type Quantity } from '../quantities/index.ts';
import type { Cloth, Offer, Outline } from '../lay/index.ts';
import { recordCalled, recordsOf, type Book, type ClothTyped, type Lay } from '../workbook/index.ts';

export const NOW = 'now';

const CLOTH: ClothTyped = {
  which: '', width: '140 cm', length: '', gap: '', shrinkAlong: '', shrinkAcross: '', repeatAlong: '', repeatAcross: '',
  fold: 'open', foldAt: '', oneWay: false, alike: false, remnant: [], flaws: [],
};

/** Before she has chosen anything. */
export const NO_CHOICE: Lay = { name: '', pieces: '', second: '', cloth: CLOTH, aim: 'least length', leftWidth: '', price: '', shop: '10 cm', offers: [], kept: null };

export const choiceIn = (book: Book): Lay => recordCalled(book, 'lay', NOW) ?? NO_CHOICE;

export const keptIn = (book: Book) => recordsOf(book, 'lay').filter(({ data }) => data.kept !== null);

/** Where the shop cuts any length: a millimetre. */
const LEAST_STEP = 1;

/** What was typed could not be read: which field, and a sentence. */
export interface ChoiceFault {
  readonly field: string;
  readonly sentence: string;
}

export interface ReadChoice {
  /** `null` when something typed cannot be read. */
  readonly cloth: Cloth | null;
  /** mm, of the rectangle that is wanted; `null` for the cloth's whole width. */
  readonly leftWidth: number | null;
  /** For a metre. */
  readonly price: number | null;
  /** mm, in which the shop cuts. */
  readonly step: number;
  /** Other cloths to compare with. */
  readonly offers: readonly Offer[];
  readonly faults: readonly ChoiceFault[];
}

export function readChoice(lay: Lay, decimalMark: '.' | ',' = '.'): ReadChoice {
  const faults: ChoiceFault[] = [];
  const typed = lay.cloth;
  const read = (field: string, text: string, called: string, example: string, fits: (given: Quantity) => string | null): number | null => {
    if (text.trim() === '') return null;
    const reading = readQuantity(text, { decimalMark });
    const wrong = reading.kind === 'quantity' ? fits(reading.quantity) : reading.kind === 'refused' ? reading.sentence : `“${text}” is not understood: type it like ${example}, or leave it empty.`;
    if (reading.kind === 'quantity' && wrong === null) return reading.quantity.value;
    faults.push({ field, sentence: `${called}: ${wrong}` });
    return null;
  };
  const length = (field: string, text: string, called: string, example = '140 cm'): number | null => read(field, text, called, example, ({ dimension, value }) => {
    if (dimension === 'length') return null;
    // Nothing is nothing in every unit.
    if (dimension === 'number') return value === 0 ? null : `${text} has no unit: type ${text} cm or ${text} in.`;
    return `${text} is no length: type it like ${example}.`;
  });
  const share = (field: string, text: string, called: string): number => read(field, text, called, '3 %', ({ unit, value }) => (unit === '%' || value === 0 ? null : `${text} is no percentage: type it like 3 %.`)) ?? 0;

  const remnantPoints = typed.remnant.map(({ along, across }, i): readonly [number, number] => [
    length(`remnant-${i}-along`, along, `Corner ${i + 1} of the remnant, along`) ?? 0, length(`remnant-${i}-across`, across, `Corner ${i + 1} of the remnant, across`) ?? 0,
  ]);
  const remnant = remnantPoints.length >= 3 ? remnantPoints : null;
  if (remnantPoints.length === 1 || remnantPoints.length === 2) faults.push({ field: 'remnant', sentence: 'A remnant has at least 3 corners: give another one, or take them away.' });
  const width = remnant ? Math.max(...remnant.map(([, across]) => across)) : length('width', typed.width, 'Usable width');
  const atHand = remnant ? Math.max(...remnant.map(([along]) => along)) : length('length', typed.length, 'Length at hand', '2.5 m');
  if (width === null && !faults.some(({ field }) => field === 'width')) faults.push({ field: 'width', sentence: 'Give the usable width of the cloth, without its selvedges, like 140 cm.' });
  const gap = length('gap', typed.gap, 'Gap between pieces', '5 mm') ?? 0;
  const shrinkage = { along: share('shrinkAlong', typed.shrinkAlong, 'Shrinkage along'), across: share('shrinkAcross', typed.shrinkAcross, 'Shrinkage across') };
  const repeat = { along: length('repeatAlong', typed.repeatAlong, 'Repeat along', '12 cm') ?? 0, across: length('repeatAcross', typed.repeatAcross, 'Repeat across', '12 cm') ?? 0 };
  const foldAt = typed.fold === 'partly' ? length('foldAt', typed.foldAt, 'Depth of the fold', '40 cm') : null;
  const flaws = typed.flaws.map((flaw, i): Outline => {
    const of = (part: keyof typeof flaw): number => length(`flaw-${i}-${part}`, flaw[part], `Flaw ${i + 1}`, '10 cm') ?? 0;
    const [along, across, long, wide] = [of('along'), of('across'), of('length'), of('width')];
    return [[along, across], [along + long, across], [along + long, across + wide], [along, across + wide]];
  });
  typed.flaws.forEach((flaw, i) => {
    if (flaw.length.trim() === '' || flaw.width.trim() === '') faults.push({ field: `flaw-${i}-length`, sentence: `Flaw ${i + 1} has no size: give its length and its width.` });
  });
  const leftWidth = lay.aim === 'largest left' ? length('leftWidth', lay.leftWidth, 'Width of what is to be left', '40 cm') : null;
  const money = (field: string, text: string, called: string): number | null => read(field, text, called, '14.50', ({ dimension, unit, value }) => (dimension === 'number' && unit === '' && value >= 0 ? null : `${text} is no price: type a number, such as 14.50.`));
  const price = money('price', lay.price, 'Price of a metre');
  const step = length('shop', lay.shop, 'Steps of the shop', '10 cm') ?? 0;
  if (step < 0) faults.push({ field: 'shop', sentence: 'The shop cuts in steps above nothing: type them like 10 cm, or leave it empty.' });
  const offers = lay.offers.flatMap((offer, i): Offer[] => {
    const other = length(`offer-${i}-width`, offer.width, `Other cloth ${i + 1}`);
    const otherPrice = money(`offer-${i}-price`, offer.price, `Price of other cloth ${i + 1}`);
    return other === null ? [] : [{ width: other, price: otherPrice }];
  });
  if (width === null || faults.some(({ field }) => !field.startsWith('offer-'))) return { cloth: null, leftWidth, price, step: Math.max(step, LEAST_STEP), offers, faults };
  return {
    cloth: {
      width, length: atHand, flaws, oneWay: typed.oneWay, alike: typed.alike, fold: typed.fold, gap,
      ...(remnant && { remnant }),
      ...(foldAt !== null && { foldAt }),
      ...((repeat.along > 0 || repeat.across > 0) && { repeat }),
      ...((shrinkage.along !== 0 || shrinkage.across !== 0) && { shrinkage }),
    },
    leftWidth, price, step: Math.max(step, LEAST_STEP), offers, faults,
  };
}
