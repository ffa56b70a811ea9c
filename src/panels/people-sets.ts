/** Sets of measures side by side, the newest first, with what changed since the set before; and one measure over time. */
import { html, nothing, type TemplateResult } from 'lit';
import { courseOf, lengthOf, measureCalled, measuredOf, nameOfMeasure } from '../people/index.ts';
import { drawn, overTime, tapeOnBody } from '../pictures/index.ts';
import { inBase, show, type Quantity, type ShowAs } from '../quantities/index.ts';
import type { MeasureSet, Person } from '../workbook/index.ts';

const BOTH: ShowAs = { system: 'both', inchStep: 8 };
/** So many sets stand side by side before she asks for all. */
export const FEW = 3;

interface Ask {
  /** Shows one measure over time, or none. */
  open(of: string | null): void;
  correct(set: MeasureSet): void;
}

export function setsTable(person: Person, all: boolean, opened: string | null, day: (iso: string) => string, ask: Ask, readonly: boolean): TemplateResult {
  const sets = [...person.sets].reverse();
  const seen = all ? sets : sets.slice(0, FEW);
  const rows = measuredOf(person);
  return html`<div class="scroll" role="region" aria-label="Sets of measures" tabindex="0"><table>
    <caption>Measures of ${person.name}</caption>
    <thead><tr><th scope="col">Measure</th>${seen.map((set, index) => html`<th scope="col">${day(set.day)}${set.by ? html`<small>by ${set.by}</small>` : nothing}
      ${readonly ? nothing : html`<button class="small" aria-label="Correct the set of ${day(set.day)}" @click=${() => ask.correct(set)}>Correct</button>`}${set.remark ? html`<small>${set.remark}</small>` : nothing}</th>
      ${index === 0 && sets.length > 1 ? html`<th scope="col">Changed</th>` : nothing}`)}</tr></thead>
    <tbody>${rows.map((of) => html`<tr class=${of === opened ? 'open' : ''}><th scope="row"><button class="name" aria-expanded=${of === opened} @click=${() => ask.open(of === opened ? null : of)}>${nameOfMeasure(of)}</button></th>
      ${seen.map((set, index) => html`<td>${figure(rawIn(set, of))}</td>${index === 0 && sets.length > 1 ? html`<td>${change(of, sets)}</td>` : nothing}`)}</tr>
      ${of === opened ? html`<tr class="detail"><td colspan=${seen.length + 1 + (sets.length > 1 ? 1 : 0)}>${oneMeasure(person, of, day)}</td></tr>` : nothing}`)}</tbody>
  </table></div>`;
}

const rawIn = (set: MeasureSet, of: string): string => set.measures.find((one) => one.of === of)?.raw ?? '';

function figure(raw: string): TemplateResult | string {
  const length = lengthOf(raw);
  if (!length) return raw === '' ? html`<span class="soft">–</span>` : raw;
  const { main, also } = show(length, BOTH);
  return html`${main}${also ? html`<small>${also}</small>` : nothing}`;
}

/** What the newest figure has over the one before it, in the unit of the newest. */
export function changeOf(of: string, sets: readonly MeasureSet[]): Quantity | null {
  const figures = sets.flatMap((set) => lengthOf(rawIn(set, of)) ?? []);
  const [newest, before] = figures;
  return newest && before && lengthOf(rawIn(sets[0]!, of)) ? inBase(newest.value - before.value, newest.unit) : null;
}

function change(of: string, sets: readonly MeasureSet[]): TemplateResult | string {
  const moved = changeOf(of, sets);
  if (!moved) return html`<span class="soft">–</span>`;
  if (Math.abs(moved.value) < 1e-9) return 'same';
  const { main, also } = show(moved, BOTH);
  const sign = moved.value > 0 ? '+' : '';
  return html`<strong class="moved">${sign}${main}</strong>${also ? html`<small>${sign}${also}</small>` : nothing}`;
}

/** How it is taken, where the tape goes, and its course over time as a picture and as a table. */
function oneMeasure(person: Person, of: string, day: (iso: string) => string): TemplateResult {
  const course = courseOf(person, of);
  const known = measureCalled(of);
  const tape = tapeOnBody(of);
  const last = course.at(-1);
  return html`<div class="one">
    ${tape ? html`<div class="tape">${drawn(tape)}</div>` : nothing}
    <div class="told">${known ? html`<p><strong>${known.term === 'common practice' ? known.name : known.term}</strong> ${known.taken}</p>` : html`<p>A measure of her own.</p>`}
      ${last && course.length > 1 ? drawn(overTime({ name: nameOfMeasure(of), unit: last.quantity.unit, moments: course.map((one) => ({ day: one.day, when: day(one.day), mm: one.quantity.value })) }, { system: 'own', inchStep: 8 })) : nothing}
      <table class="course"><caption>Over time</caption><thead><tr><th scope="col">Day</th><th scope="col">${nameOfMeasure(of)}</th><th scope="col">Changed</th></tr></thead>
        <tbody>${course.map((one, index) => html`<tr><td>${day(one.day)}</td><td>${figure(one.raw)}</td><td>${index === 0 ? '–' : moved(inBase(one.quantity.value - course[index - 1]!.quantity.value, one.quantity.unit))}</td></tr>`)}</tbody></table>
    </div></div>`;
}

const moved = (q: Quantity): string => (Math.abs(q.value) < 1e-9 ? 'same' : `${q.value > 0 ? '+' : ''}${show(q, BOTH).main}`);
