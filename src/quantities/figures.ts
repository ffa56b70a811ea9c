/** Rounded figures in characters: decimals, and the fractions of a tape. */
import { noiseAt, tieToGreater } from './steps.ts';

export interface Figure {
  /** Below zero as shown: −0.04 cm shows as 0.0 cm. */
  readonly negative: boolean;
  /** Without its minus. */
  readonly text: string;
  /** The text names its units by itself: `1 yd 4 in`. */
  readonly hasUnits: boolean;
  readonly exact: boolean;
}

const TENS = Array.from({ length: 11 }, (_, places) => 10 ** places);

/** A number to so many decimals (0 to 10); `atMost` leaves zeros at the end off. */
export function decimalFigure(amount: number, places: number, mark: '.' | ',', atMost: boolean): Figure {
  const size = Math.abs(amount);
  const scale = TENS[places]!;
  const steps = size * scale;
  if (!(steps < Number.MAX_SAFE_INTEGER)) return largeFigure(amount, places, mark, atMost);
  const count = tieToGreater(steps);
  const part = count % scale;
  const whole = (count - part) / scale;
  let after = '';
  if (places === 1) after = part === 0 && atMost ? '' : `${mark}${part}`;
  else if (places > 1) after = decimals(part, places, mark, atMost);
  return { negative: amount < 0 && count > 0, text: whole + after, hasUnits: false, exact: Math.abs(steps - count) <= noiseAt(steps) };
}

function decimals(part: number, places: number, mark: '.' | ',', atMost: boolean): string {
  if (part === 0 && atMost) return '';
  let digits = String(part).padStart(places, '0');
  if (atMost) digits = digits.replace(/0+$/, '');
  return mark + digits;
}

/** Numbers with more figures than a double can count in steps. */
function largeFigure(amount: number, places: number, mark: '.' | ',', atMost: boolean): Figure {
  if (!Number.isFinite(amount)) return { negative: false, text: '—', hasUnits: true, exact: false };
  const size = Math.abs(amount);
  // toFixed writes an exponent from 10^21 on, where there are no decimals left to show.
  const [whole = '', part = '0'] = size < 1e21 ? size.toFixed(places).split('.') : [BigInt(size).toString()];
  const text = whole + (places === 0 ? '' : decimals(Number(part), places, mark, atMost));
  return { negative: amount < 0, text, hasUnits: false, exact: Number(`${whole}.${part}`) === size };
}

type Step = 8 | 16 | 32;

/** Unicode has characters for the eighths; other fractions are set with the fraction slash. */
const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

/** By step and number of steps, in lowest terms: `FRACTIONS[16][6]` is ⅜. */
function fractions(slash: '/' | '⁄'): Readonly<Record<Step, readonly string[]>> {
  const of = (step: Step): readonly string[] => Array.from({ length: step }, (_, parts) => {
    if (parts === 0) return '';
    if (slash === '⁄' && (parts * 8) % step === 0) return EIGHTHS[(parts * 8) / step]!;
    let [top, bottom] = [parts, step as number];
    while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
    return `${top}${slash}${bottom}`;
  });
  return { 8: of(8), 16: of(16), 32: of(32) };
}
const SCREEN_FRACTIONS = fractions('⁄');
const PLAIN_FRACTIONS = fractions('/');

const INCHES = { in: 1, ft: 12, yd: 36 } as const;

/** A length as a tape marks it: `28 ⅜` inches, `5 ft 6 ½ in`, `1 yd 4 in`. */
export function tapeFigure(mm: number, unit: 'in' | 'ft' | 'yd', step: Step, plain: boolean): Figure {
  const inches = Math.abs(mm) / 25.4;
  const steps = inches * step;
  // Too many to count in steps: whole ones of the unit.
  if (!(steps < Number.MAX_SAFE_INTEGER)) return largeFigure(mm / 25.4 / INCHES[unit], 0, '.', true);
  const count = tieToGreater(steps);
  const parts = count % step;
  const whole = (count - parts) / step;
  const fraction = (plain ? PLAIN_FRACTIONS : SCREEN_FRACTIONS)[step][parts]!;
  const negative = mm < 0 && count > 0;
  const exact = Math.abs(steps - count) <= noiseAt(steps);
  if (unit === 'in') return { negative, text: mixed(whole, fraction), hasUnits: false, exact };
  const inUnit = INCHES[unit];
  const over = whole % inUnit;
  const units = (whole - over) / inUnit;
  const rest = over === 0 && fraction === '' ? '' : `${mixed(over, fraction)} in`;
  const main = units > 0 || rest === '' ? `${units} ${unit}` : '';
  return { negative, text: main !== '' && rest !== '' ? `${main} ${rest}` : main + rest, hasUnits: true, exact };
}

function mixed(whole: number, fraction: string): string {
  if (fraction === '') return String(whole);
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}
