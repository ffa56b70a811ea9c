/**
 * A person: what was measured, day by day, what carries over from garment to
 * garment, and what worked. A new set of measures keeps the old ones. The id of
 * the record goes with her from workbook to workbook, and so do the ids of sets
 * and of what worked; where her measures stand in this workbook does not.
 */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { day, formula, line, text } from './parts.ts';

/** A measure as it was typed, in either unit: raw text, as in a cell. */
export interface TakenMeasure {
  /** The key of a known measure (`bust`), else her own name for it. */
  readonly of: string;
  readonly raw: string;
}

export interface MeasureSet {
  /** Given once; equal in every workbook that has the set. */
  readonly id: string;
  /** When they were taken. */
  readonly day: string;
  /** Who took them. */
  readonly by: string;
  readonly remark: string;
  /** Each measure once. */
  readonly measures: readonly TakenMeasure[];
}

/** Something said of one level of a garment: a size, an ease. */
export interface AtLevel {
  /** `bust`, `waist`, `hip`, or her own word. */
  readonly level: string;
  readonly raw: string;
}

/** What worked, of one garment. */
export interface Worked {
  readonly id: string;
  readonly garment: string;
  readonly day: string;
  readonly sizes: readonly AtLevel[];
  /** As she liked it. */
  readonly ease: readonly AtLevel[];
  /** Finished, as she liked it; may be empty. */
  readonly length: string;
  /** What was altered, one a line; may be empty. */
  readonly alterations: string;
  readonly remark: string;
}

/** A cell of this workbook that a measure was put into. */
export interface PutMeasure {
  readonly of: string;
  /** `=Measures!B3`. */
  readonly cell: string;
  /** What was put there; a cell that holds something else was changed by hand. */
  readonly raw: string;
}

export interface Person {
  readonly name: string;
  readonly child: boolean;
  /** What carries over: "always a narrow shoulder, 1 cm". */
  readonly notes: string;
  /** The oldest first; of one day, in the order in which they came. */
  readonly sets: readonly MeasureSet[];
  /** The oldest first. */
  readonly worked: readonly Worked[];
  readonly put: readonly PutMeasure[];
}

const MOST_SETS = 200;
const MOST_MEASURES = 200;
const MOST_LEVELS = 20;

const id = v.pipe(line, v.nonEmpty());
const levels = v.pipe(v.array(v.object({ level: line, raw: line })), v.maxLength(MOST_LEVELS));
/** The oldest first; the order of those of one day stays. */
const byDay = <T extends { readonly day: string }>(list: readonly T[]): T[] => [...list].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
const distinct = (keys: readonly string[]): boolean => new Set(keys).size === keys.length;

const set = v.object({
  id, day, by: line, remark: text,
  measures: v.pipe(v.array(v.object({ of: id, raw: line })), v.maxLength(MOST_MEASURES), v.check((list) => distinct(list.map((one) => one.of)))),
});
const worked = v.object({ id, garment: line, day, sizes: levels, ease: levels, length: line, alterations: text, remark: text });

export const personKind: RecordKindCard<Person> = {
  called: 'the person',
  schema: v.object({
    name: v.pipe(line, v.nonEmpty()),
    child: v.boolean(),
    notes: text,
    sets: v.pipe(v.array(set), v.maxLength(MOST_SETS), v.check((list) => distinct(list.map((one) => one.id))), v.transform(byDay)),
    worked: v.pipe(v.array(worked), v.maxLength(MOST_SETS), v.check((list) => distinct(list.map((one) => one.id))), v.transform(byDay)),
    put: v.pipe(v.array(v.object({ of: id, cell: formula, raw: line })), v.maxLength(MOST_MEASURES)),
  }),
  title: ({ name }) => name,
  follow(data, rewrite) {
    const put = data.put.map((one) => {
      const cell = rewrite(one.cell);
      return cell === one.cell ? one : { ...one, cell };
    });
    return put.every((one, at) => one === data.put[at]) ? data : { ...data, put };
  },
};
