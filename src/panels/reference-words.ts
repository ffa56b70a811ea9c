/** A function's call in words, for the reference on the screen and for its Markdown. */
import type { FunctionCard } from '../reckoning/index.ts';

type Arg = FunctionCard['args'][number];

const argName = ({ name, optional }: Arg): string => (optional ? `[${name}]` : name);

/** `PLEAT.DEPTH(cloth, finished, pleats, [kind])`. */
export const signatureOf = ({ name, args, repeats }: FunctionCard): string => `${name}(${args.map(argName).join(', ')}${repeats ? ', …' : ''})`;

/** Of what kind an argument is, and whether it must be there: "a length; may be left out". */
export function argumentInWords({ args, repeats }: FunctionCard, place: number): string {
  const { kind, optional, choices } = args[place]!;
  const again = place >= args.length - repeats ? 'may be given again' : '';
  return [choices ? `one of ${choices.map((choice) => `"${choice}"`).join(', ')}` : kind, optional ? 'may be left out' : '', again].filter(Boolean).join('; ');
}
