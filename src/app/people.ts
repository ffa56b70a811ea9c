/** The panel "People": who is in this workbook and in the others, and what becomes of what she asks for them. */
import { html } from 'lit';
import { cellName } from '../formula/index.ts';
import { newBookId } from '../keeping/index.ts';
import type { Elsewhere, PeoplePanel, PeopleView, StandingRow, TakePerson } from '../panels/index.ts';
import { NOBODY, joined, measuresInCells, nameOfMeasure, newestOf, putEdit, standing, useEdit, type Clash, type Standing } from '../people/index.ts';
import { recordCalled, recordsOf, sheetById, type Edit, type MeasureSet, type Person } from '../workbook/index.ts';
import { attempt } from './attempt.ts';
import { dayInWords, today } from './days.ts';
import { knownPeople, type KnownPerson } from './known-people.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';

export function panel(host: PanelHost): MorePanel {
  return new People(host);
}

const keyOf = ({ of, cell: { sheet, row, col } }: Standing): string => `${of} ${sheet} ${row} ${col}`;

class People implements MorePanel {
  #id = '';
  #sentence = '';
  #others: readonly KnownPerson[] | null = null;

  constructor(private readonly host: PanelHost) {}

  opened(): void {
    this.#sentence = '';
    this.#others = null;
  }

  render() {
    const on = <T>(handle: (detail: T) => void) => ({ detail, currentTarget }: CustomEvent<T> & { readonly currentTarget: EventTarget | null }) => {
      this.#sentence = '';
      handle(detail);
      // What could be done closes its form; what could not stays with all that was typed.
      if (this.#sentence === '') (currentTarget as PeoplePanel).done();
      this.host.draw();
    };
    return html`<tt-people .view=${this.#view()} .day=${(iso: string, short = false) => dayInWords(iso, short ? 'short' : 'long')}
      @tt-person=${({ detail }: CustomEvent<{ id: string }>) => { this.#id = detail.id; this.#sentence = ''; this.host.draw(); }}
      @tt-add-person=${on<{ name: string }>(({ name }) => this.#add({ ...NOBODY, name }, newBookId()))}
      @tt-change-person=${on<Pick<Person, 'name' | 'child' | 'notes'>>((parts) => this.#change(parts))}
      @tt-remove-person=${on(() => this.#do({ do: 'setRecord', kind: 'person', id: this.#here, data: null }))}
      @tt-keep-set=${on<MeasureSet>((set) => this.#keepSet(set))}
      @tt-remove-set=${on<{ id: string }>(({ id }) => this.#change({ sets: this.#person!.sets.filter((set) => set.id !== id) }))}
      @tt-put-measures=${on<{ names: boolean }>(({ names }) => this.#put(names))}
      @tt-use-measures=${on<{ keys: readonly string[] }>(({ keys }) => this.#use(keys))}
      @tt-remove-worked=${on<{ id: string }>(({ id }) => this.#change({ worked: this.#person!.worked.filter((one) => one.id !== id) }))}
      @tt-look-elsewhere=${() => void this.#look()}
      @tt-take-person=${on<TakePerson>((wish) => this.#take(wish))}></tt-people>`;
  }

  /** Who is shown: the one chosen, else the one for whom the workbook is, else the first. */
  get #here(): string {
    const { book } = this.host.desk;
    const people = recordsOf(book, 'person');
    return (people.find(({ id }) => id === this.#id) ?? people.find(({ data }) => data.name === book.person) ?? people[0])?.id ?? '';
  }

  get #person(): Person | undefined {
    return recordCalled(this.host.desk.book, 'person', this.#here);
  }

  #view(): PeopleView {
    const { desk } = this.host;
    const { book } = desk;
    const person = this.#person;
    const { row, col } = desk.selection.focus;
    const rows = person ? standing(book, person) : [];
    return {
      people: recordsOf(book, 'person').map(({ id, data: { name } }) => ({ id, name })), id: this.#here, person: person ?? null,
      place: `${desk.sheet.name} ${cellName(row, col)}`,
      standing: rows.map((one): StandingRow => ({
        key: keyOf(one), name: nameOfMeasure(one.of), now: one.now, newest: one.newest.raw, state: one.state,
        place: `${sheetById(book, one.cell.sheet)?.name ?? ''} ${cellName(one.cell.row, one.cell.col)}`,
      })),
      elsewhere: this.#others?.map((one) => this.#elsewhere(one)) ?? null,
      inSheet: Object.fromEntries(measuresInCells(book).map(({ of, raw }) => [of, raw])),
      newest: Object.fromEntries(person ? newestOf(person).map(({ of, raw }) => [of, raw]) : []),
      unit: book.settings.show === 'in' ? 'in' : 'cm', today: today(), sentence: this.#sentence, readonly: desk.reading !== null,
    };
  }

  #do(edit: Edit): boolean {
    const { desk } = this.host;
    if (desk.do(edit)) return true;
    this.#sentence = desk.said;
    return false;
  }

  #add(person: Person, id: string): void {
    const { book } = this.host.desk;
    const first: Edit[] = book.person === '' ? [{ do: 'setTitle', title: book.title, person: person.name }] : [];
    if (this.#do({ do: 'many', label: `add ${person.name}`, edits: [{ do: 'setRecord', kind: 'person', id, data: person }, ...first] })) this.#id = id;
  }

  #change(parts: Partial<Person>): void {
    const person = this.#person;
    if (person) this.#do({ do: 'setRecord', kind: 'person', id: this.#here, data: { ...person, ...parts } });
  }

  #keepSet(set: MeasureSet): void {
    const sets = this.#person?.sets ?? [];
    this.#change({ sets: set.id === '' ? [...sets, { ...set, id: newBookId() }] : sets.map((old) => (old.id === set.id ? set : old)) });
  }

  #put(names: boolean): void {
    const { desk } = this.host;
    const { row, col } = desk.selection.focus;
    const of = newestOf(this.#person ?? NOBODY).map((one) => one.of);
    if (!attempt(desk, () => putEdit(desk.book, this.#here, { at: { sheet: desk.sheetId, row, col }, of, names }))) this.#sentence = desk.said;
  }

  #use(keys: readonly string[]): void {
    const { desk } = this.host;
    const person = this.#person;
    if (!person) return;
    const chosen = standing(desk.book, person).filter((one) => keys.includes(keyOf(one)));
    if (!attempt(desk, () => useEdit(desk.book, this.#here, chosen))) this.#sentence = desk.said;
    else desk.say(`${chosen.length === 1 ? 'One cell holds' : `${chosen.length} cells hold`} the newest figures now.`);
  }

  async #look(): Promise<void> {
    const { desk, keep } = this.host;
    try {
      this.#others = (await knownPeople(desk.book, keep.keeping?.shelf ?? null, today())).filter(({ book }) => book !== desk.book.id);
    } catch (error) {
      this.#sentence = `The other workbooks could not be looked through: ${error instanceof Error ? error.message : String(error)}`;
    }
    this.host.draw();
  }

  /** The same id is the same person; the same name may be, which she decides. */
  #elsewhere({ key, id, person, title }: KnownPerson): Elsewhere {
    const people = recordsOf(this.host.desk.book, 'person');
    const here = people.find((one) => one.id === id) ?? people.find(({ data }) => data.name.trim().toLowerCase() === person.name.trim().toLowerCase());
    const last = person.sets.at(-1);
    const sets = person.sets.length === 1 ? 'one set' : `${person.sets.length} sets`;
    return {
      key, name: person.name, here: here?.id ?? '',
      about: last ? `${title}: ${sets}, the newest of ${dayInWords(last.day)}` : `${title}: no measures yet`,
      clashes: here ? joined(here.data, person).clashes.map((clash) => ({ id: clash.id, ...inWords(clash) })) : [],
    };
  }

  #take({ key, into, choices }: TakePerson): void {
    const found = this.#others?.find((one) => one.key === key);
    if (!found) return;
    const { book } = this.host.desk;
    const here = recordCalled(book, 'person', into);
    if (!here) {
      const taken = found.fromCells || recordCalled(book, 'person', found.id) !== undefined;
      this.#add(found.person, taken ? newBookId() : found.id);
      return;
    }
    const { person, sets, worked } = joined(here, found.person, ({ id }) => choices[id] ?? 'both');
    this.#id = into;
    if (JSON.stringify(person) === JSON.stringify(here)) this.host.desk.say(`${here.name} has all of that already.`);
    else if (this.#do({ do: 'many', label: `join what ${found.title} knows of ${here.name}`, edits: [{ do: 'setRecord', kind: 'person', id: into, data: person }] })) {
      this.host.desk.say(cameIn(sets, worked, here.name));
    }
  }
}

function cameIn(sets: number, worked: number, name: string): string {
  if (sets > 0 && worked > 0) return `New for ${name}: sets of measures ${sets}, garments that worked ${worked}.`;
  if (sets > 0) return `New for ${name}: sets of measures ${sets}.`;
  return worked > 0 ? `New for ${name}: garments that worked ${worked}.` : `New for ${name}: notes that carry over.`;
}

function inWords(clash: Clash): { what: string; here: string; there: string } {
  if (clash.what === 'worked') return { what: `What worked on ${clash.here.garment}`, here: `${clash.here.alterations} ${clash.here.remark}`.trim() || 'as kept', there: `${clash.there.alterations} ${clash.there.remark}`.trim() || 'as kept' };
  const told = (one: MeasureSet, other: MeasureSet): string => {
    const theirs = new Map(other.measures.map(({ of, raw }) => [of, raw]));
    return one.measures.filter(({ of, raw }) => theirs.get(of) !== raw).map(({ of, raw }) => `${nameOfMeasure(of)} ${raw}`).join(', ') || (one.remark || 'without the difference');
  };
  return { what: `The set of ${dayInWords(clash.here.day)}`, here: told(clash.here, clash.there), there: told(clash.there, clash.here) };
}
