/** A short mark on the page that says what to try. It goes when it was done: nothing has to be put away. */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { formula, line, text } from './parts.ts';

export interface Mark {
  /** What to try: "Change the waist". */
  readonly say: string;
  /** Where. */
  readonly at: string;
  /** What stands there until it is done; `null` when it is done by keeping a layout. */
  readonly was: string | null;
}

export const markKind: RecordKindCard<Mark> = {
  called: 'a mark of what to try',
  schema: v.object({ say: line, at: formula, was: v.nullable(text) }),
  title: ({ say }) => say,
  follow: (data, rewrite) => {
    const at = rewrite(data.at);
    return at === data.at ? data : { ...data, at };
  },
};
