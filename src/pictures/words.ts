/** Figures and counts as the labels and the sentence of a picture have them. */
import { inBase, show } from '../quantities/index.ts';
import type { ShowAs, UnitCode } from '../quantities/index.ts';

/** Figures in base units as texts, in the units that the sheet shows. */
export interface Say {
  length(mm: number): string;
  number(value: number): string;
  angle(degrees: number): string;
  percent(share: number): string;
}

/** `unit`: the unit of length in which the figures were given. */
export function sayIn(unit: UnitCode, as: ShowAs): Say {
  const say = (value: number, own: UnitCode, ways: ShowAs = as): string => {
    const { main, also } = show(inBase(value, own), ways);
    // At the size of a label the bar of 15⁄16 would touch its figures.
    return (also === undefined ? main : `${main} (${also})`).replaceAll('⁄', '/');
  };
  return {
    // What is less than a metre is spoken of in centimetres, also where cloth is counted in metres.
    length: (mm) => say(mm, unit === 'm' && Math.abs(mm) < 1000 ? 'cm' : unit),
    number: (value) => say(value, '', { ...as, decimals: undefined }),
    angle: (degrees) => say(degrees, 'deg'),
    percent: (share) => say(share, '%'),
  };
}

export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** "half circle", "1.25 circles". */
export function circleWords(part: number, say: Say): string {
  const known: readonly (readonly [number, string])[] = [[1, 'whole circle'], [0.75, 'three-quarter circle'], [0.5, 'half circle'], [0.25, 'quarter circle']];
  const found = known.find(([share]) => Math.abs(share - part) < 1e-9);
  if (found !== undefined) return found[1];
  return part < 1 ? `${say.number(part)} of a circle` : `${say.number(part)} circles`;
}

export const sentences = (...parts: readonly (string | false | undefined)[]): string => parts.filter((part) => part).join(' ');

/** "103.5 cm (40 ¾ in)" as two lines, for labels at the side, which have little room. */
export function inTwo(text: string): string[] {
  const at = text.indexOf(' (');
  return at < 0 ? [text] : [text.slice(0, at), text.slice(at + 1)];
}
