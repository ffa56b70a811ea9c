/** What the entry line and the reference page are told of the functions. */
import type { FunctionCard } from '../../src/reckoning/protocol.ts';
import { FUNCTIONS } from '../../src/sewing/index.ts';

export const CARDS: readonly FunctionCard[] = FUNCTIONS.map(({ name, topic, about, rule, source, example, args }): FunctionCard => ({
  name, topic, about, rule, source, example,
  args: args.map((arg) => ({
    name: arg.name, about: arg.about, kind: arg.kind, optional: arg.usual !== undefined, ...(arg.choices && { choices: arg.choices }),
  })),
}));
