import type { GenericSchema } from 'valibot';

/** What has to be known of a kind of record. */
export interface RecordKindCard<Data> {
  /** With an article: "a person". */
  readonly called: string;
  /** Lets through what a record of this kind may hold, in normal form: equal data, equal JSON. Bounds every length. */
  readonly schema: GenericSchema<unknown, Data>;
  /** Which one it is, for "change the person Nora"; empty where there is only one. */
  title(data: Data): string;
  /** The data with its formulas written otherwise; the same object when none is. Left out by kinds without formulas. */
  follow?(data: Data, rewrite: (formula: string) => string): Data;
}
