/** "Start my own": who is offered, and the workbook that comes of what she answered. */
import { html } from 'lit';
import type { StartPerson, Started } from '../panels/index.ts';
import { NOBODY, joined, latestWorked, newestOf, sameSet } from '../people/index.ts';
import { newBookId } from '../keeping/index.ts';
import { EditRefused, type MeasureSet, type Person } from '../workbook/index.ts';
import { GARMENTS, MORE_SHEETS } from './garments.ts';
import { gathered, knownPeople, type KnownPerson } from './known-people.ts';
import { dayInWords, today } from './days.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { startBook } from './start-book.ts';

export function panel(host: PanelHost): MorePanel {
  return new StartOwn(host);
}

class StartOwn implements MorePanel {
  #people: readonly KnownPerson[] = [];
  #offered: readonly StartPerson[] = [];
  #looking = false;
  #sentence = '';

  constructor(private readonly host: PanelHost) {}

  opened(): void {
    this.#sentence = '';
    void this.#look();
  }

  render() {
    return html`<tt-start-own .people=${this.#offered} .garments=${GARMENTS} .moreSheets=${MORE} .today=${today()} ?looking=${this.#looking} .sentence=${this.#sentence}
      @tt-start=${(event: CustomEvent<Started>) => void this.#start(event.detail)}></tt-start-own>`;
  }

  async #look(): Promise<void> {
    this.#looking = true;
    this.host.draw();
    try {
      const known = await knownPeople(this.host.desk.book, this.host.keep.keeping?.shelf ?? null, today());
      this.#people = gathered(known, (here, there) => ({ ...here, person: joined(here.person, there.person).person }));
    } catch (error) {
      this.#sentence = `The other workbooks could not be looked through: ${error instanceof Error ? error.message : String(error)}`;
    }
    this.#offered = this.#people.map(offer);
    this.#looking = false;
    this.host.draw();
  }

  async #start(answers: Started): Promise<void> {
    this.#sentence = '';
    try {
      const known = this.#people.find(({ key }) => key === answers.key);
      const { takes } = answers;
      const person = withNewSet(known?.person ?? { ...NOBODY, name: answers.name }, answers);
      const worked = latestWorked(person);
      const book = startBook({
        garment: answers.garment, more: answers.more, title: answers.title, show: answers.show, years: answers.years, chart: answers.chart,
        personId: known && !known.fromCells ? known.id : newBookId(), person,
        ease: takes.ease ? worked?.ease ?? [] : [], length: takes.length ? worked?.length ?? '' : '',
        remember: [...(takes.notes ? linesOf(person.notes) : []), ...(takes.alterations && worked ? linesOf(worked.alterations) : [])],
      });
      await this.host.keep.start(book);
    } catch (error) {
      this.#sentence = error instanceof EditRefused ? error.sentence : error instanceof Error ? error.message : String(error);
    }
    this.host.draw();
  }
}

const MORE = MORE_SHEETS.map(({ template, label }) => ({ id: template, label }));

const linesOf = (text: string): string[] => text.split('\n').map((line) => line.trim()).filter((line) => line !== '');

function offer({ key, title, person }: KnownPerson): StartPerson {
  const newest = newestOf(person);
  const day = person.sets.at(-1)?.day;
  return {
    key, name: person.name, child: person.child, notes: person.notes, worked: latestWorked(person) ?? null,
    where: day === undefined ? `${title}, not measured yet` : `${title}, measured ${dayInWords(day)}`,
    newest: Object.fromEntries(newest.map(({ of, raw }) => [of, raw])),
  };
}

/** Only what is not as it was last taken makes a new set; it keeps all that was typed, so that it stands by itself. */
function withNewSet(person: Person, { measures, day, by, child }: Started): Person {
  const set: MeasureSet = { id: newBookId(), day, by, remark: '', measures: measures.map(({ of, raw }) => ({ of, raw })) };
  const last = new Map(newestOf(person).map(({ of, raw }) => [of, raw]));
  const isNew = set.measures.some(({ of, raw }) => last.get(of) !== raw) && !person.sets.some((each) => sameSet(each, set));
  return { ...person, child, sets: isNew ? [...person.sets, set] : person.sets };
}
