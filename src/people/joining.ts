/**
 * What two workbooks know of one person, joined. Nothing of either is lost: a
 * set that both have is there once, and one that was changed in one of them is
 * a clash, to be chosen by her; not chosen, both stay.
 */
import type { MeasureSet, Person, Worked } from '../workbook/index.ts';

export type ClashChoice = 'here' | 'there' | 'both';

/** The same set or the same garment, told differently. */
export type Clash =
  | { readonly what: 'set'; readonly id: string; readonly here: MeasureSet; readonly there: MeasureSet }
  | { readonly what: 'worked'; readonly id: string; readonly here: Worked; readonly there: Worked };

export interface Joined {
  readonly person: Person;
  readonly clashes: readonly Clash[];
  /** How many sets, and garments that worked, came in. */
  readonly sets: number;
  readonly worked: number;
}

const contentOf = ({ id: _, ...rest }: MeasureSet | Worked): string => JSON.stringify(rest);

/** Equal but for their ids. */
export const sameSet = (a: MeasureSet | Worked, b: MeasureSet | Worked): boolean => contentOf(a) === contentOf(b);

/**
 * @param here as the workbook has it; its name, and where its measures were put, stay
 * @param choose what becomes of a clash; both are kept if not given
 */
export function joined(here: Person, there: Person, choose: (clash: Clash) => ClashChoice = () => 'both'): Joined {
  const clashes: Clash[] = [];
  const sets = joinLists(here.sets, there.sets, (mine, theirs) => {
    const clash: Clash = { what: 'set', id: mine.id, here: mine, there: theirs };
    clashes.push(clash);
    return choose(clash);
  });
  const worked = joinLists(here.worked, there.worked, (mine, theirs) => {
    const clash: Clash = { what: 'worked', id: mine.id, here: mine, there: theirs };
    clashes.push(clash);
    return choose(clash);
  });
  return {
    person: { ...here, child: here.child || there.child, notes: joinNotes(here.notes, there.notes), sets: byDay(sets.all), worked: byDay(worked.all) },
    clashes, sets: sets.came, worked: worked.came,
  };
}

function joinLists<T extends MeasureSet | Worked>(here: readonly T[], there: readonly T[], choose: (here: T, there: T) => ClashChoice): { all: T[]; came: number } {
  const all = [...here];
  let came = 0;
  for (const theirs of there) {
    if (all.some((mine) => sameSet(mine, theirs))) continue;
    const at = all.findIndex(({ id }) => id === theirs.id);
    const choice = at < 0 ? 'both' : choose(all[at]!, theirs);
    if (choice === 'here') continue;
    if (choice === 'there') all[at] = theirs;
    else all.push(at < 0 ? theirs : { ...theirs, id: freeId(theirs.id, all) });
    came++;
  }
  return { all, came };
}

function freeId(id: string, taken: readonly { readonly id: string }[]): string {
  for (let n = 2; ; n++) {
    const wish = `${id.replace(/ \d+$/, '')} ${n}`;
    if (!taken.some((each) => each.id === wish)) return wish;
  }
}

const byDay = <T extends { readonly day: string }>(list: readonly T[]): T[] => [...list].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));

/** Line by line: those that are not there already come below. */
function joinNotes(here: string, there: string): string {
  const have = new Set(here.split('\n').map((line) => line.trim()));
  const more = there.split('\n').filter((line) => line.trim() !== '' && !have.has(line.trim()));
  return [...(here === '' ? [] : [here]), ...more].join('\n');
}
