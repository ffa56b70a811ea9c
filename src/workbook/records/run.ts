/** A run of values: one input from here to there, and the results that are looked at. */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { followAll, formula, line, text } from './parts.ts';

export interface RunRecord {
  readonly title: string;
  readonly input: string;
  /** As they are typed. */
  readonly from: string;
  readonly to: string;
  readonly step: string;
  readonly results: readonly string[];
}

/** More columns and plots are not looked at. */
export const MOST_RUN_RESULTS = 12;

export const runKind: RecordKindCard<RunRecord> = {
  called: 'the run of values',
  schema: v.object({ title: line, input: formula, from: text, to: text, step: text, results: v.pipe(v.array(formula), v.maxLength(MOST_RUN_RESULTS)) }),
  title: ({ title }) => title,
  follow: (data, rewrite) => {
    const input = rewrite(data.input);
    const results = followAll(data.results, rewrite);
    return input === data.input && results === data.results ? data : { ...data, input, results };
  },
};
