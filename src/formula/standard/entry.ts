/**
 * What is told of one standard function. A topic's file has a row for each:
 *
 *     ['ROUND', 'figure: what to round | places?: digits after the point; 0 if left out', 'Rounds to …', 'ROUND(2.345, 2)', 'asks', 'units'],
 *
 * Arguments are parted by ` | `; `?` marks one that may be left out, and a last
 * part `…` (or `…2`) says that the last one (or two) may be given again and
 * again. Questions are parted by `;`. The last text says what becomes of units,
 * and stands only where the engine has a function of our own; for the others the
 * engine's table of functions knows it.
 */
export type Row = readonly [name: string, args: string, about: string, example: string, asks?: string, units?: string];

export interface StandardArg {
  readonly name: string;
  readonly about: string;
  readonly optional: boolean;
}

export interface StandardFunction {
  readonly name: string;
  readonly topic: string;
  /** What it tells, in one plain sentence. */
  readonly about: string;
  readonly args: readonly StandardArg[];
  /** So many of the last arguments may be given again and again. */
  readonly repeats: number;
  /** A formula that works in an empty cell. */
  readonly example: string;
  /** Questions it answers, as people ask them. */
  readonly asks: readonly string[];
  /** What becomes of units; empty where the engine's table of functions says it. */
  readonly units: string;
}

/** Units in words, for rows of several topics. */
export const PLAIN = 'Takes no length and no other figure with a unit.';
export const SAME = 'Figures of one kind, such as all lengths; the result keeps the unit.';
export const FIRST = 'The first may hold figures with a unit, which the result keeps; the others are plain numbers.';
export const SQUARED = 'Lengths give an area: the result is in the square of the unit.';
export const COUNTED = 'Figures of one kind; the result is a plain number.';
export const AS_TEXT = 'A figure with a unit is taken as the text that it shows as.';
export const ANGLE = 'An angle with its unit, such as 30°; a plain number is in radians.';

export function topic(name: string, rows: readonly Row[]): readonly StandardFunction[] {
  return rows.map(([fn, args, about, example, asks = '', units = '']) => ({
    name: fn, topic: name, about, ...argumentsIn(args), example: `=${example}`, asks: asks.split(';').map((ask) => ask.trim()).filter(Boolean), units,
  }));
}

/** Other names of functions, as `name = the other's`; all that is told of the one holds for the other. */
export function otherNames(functions: readonly StandardFunction[], pairs: string): readonly StandardFunction[] {
  return pairs.trim().split(/\s*\n\s*/).flatMap((line) => {
    const [names = '', of = ''] = line.split(' = ');
    const fn = functions.find(({ name }) => name === of);
    if (fn === undefined) throw new Error(`There is no ${of} to be called ${names} too.`);
    return names.split(' ').map((name) => ({ ...fn, name, about: `The same as ${of}: ${fn.about.replace(/^[A-Z](?![A-Z])/, (letter) => letter.toLowerCase())}`, example: fn.example.replace(`=${of}(`, `=${name}(`) }));
  });
}

function argumentsIn(text: string): Pick<StandardFunction, 'args' | 'repeats'> {
  const parts = text.split(' | ').filter(Boolean);
  const last = parts.at(-1) ?? '';
  const repeats = last.startsWith('…') ? Number(last.slice(1) || 1) : 0;
  const args = (repeats > 0 ? parts.slice(0, -1) : parts).map((part): StandardArg => {
    const colon = part.indexOf(': ');
    const name = part.slice(0, colon);
    return { name: name.replace(/\?$/, ''), about: part.slice(colon + 2), optional: name.endsWith('?') };
  });
  return { args, repeats };
}
