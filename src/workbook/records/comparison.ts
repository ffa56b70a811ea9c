/** Cases side by side: which inputs are tried with which values. */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { formula, line, text } from './parts.ts';

export interface ComparisonInput {
  readonly cell: string;
  /** One a case, as it would be typed; `null` is what the sheet has. */
  readonly values: readonly (string | null)[];
}

export interface ComparisonRecord {
  readonly title: string;
  readonly cases: readonly string[];
  /** The case that the others are compared with. */
  readonly against: number;
  readonly inputs: readonly ComparisonInput[];
  /** The result whose picture is shown for every case. */
  readonly picture?: string | undefined;
}

/** So many are as wide as a screen can take. */
export const MOST_CASES = 24;
const MOST_INPUTS = 200;

export const comparisonKind: RecordKindCard<ComparisonRecord> = {
  called: 'the cases side by side',
  schema: v.pipe(
    v.object({
      title: line,
      cases: v.pipe(v.array(line), v.minLength(1), v.maxLength(MOST_CASES)),
      against: v.pipe(v.number(), v.integer(), v.minValue(0)),
      inputs: v.pipe(v.array(v.object({ cell: formula, values: v.pipe(v.array(v.nullable(text)), v.maxLength(MOST_CASES)) })), v.maxLength(MOST_INPUTS)),
      picture: v.optional(formula),
    }),
    v.check(({ cases, against, inputs }) => against < cases.length && inputs.every(({ values }) => values.length === cases.length)),
  ),
  title: ({ title }) => title,
  follow: (data, rewrite) => {
    const inputs = data.inputs.map((input) => {
      const cell = rewrite(input.cell);
      return cell === input.cell ? input : { ...input, cell };
    });
    const picture = data.picture === undefined ? undefined : rewrite(data.picture);
    if (picture === data.picture && inputs.every((input, at) => input === data.inputs[at])) return data;
    return { ...data, inputs, ...(picture !== undefined && { picture }) };
  },
};
