import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { LitElement } from 'lit';
import type { PeoplePanel, PeopleView, TakePerson, WorkedAsked, WorkedForm } from '../../../src/panels/index.ts';
import '../../../src/panels/people.ts';
import '../../../src/panels/worked-form.ts';
import type { MeasureSet, Person } from '../../../src/workbook/index.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts, words } from './support.ts';

const OLD: MeasureSet = { id: 'a', day: '2025-10-04', by: 'Ilse', remark: '', measures: [{ of: 'bust', raw: '36 1/2 in' }, { of: 'waist', raw: '74 cm' }] };
const NEW: MeasureSet = { id: 'b', day: '2026-11-03', by: '', remark: 'after the summer', measures: [{ of: 'waist', raw: '76 cm' }, { of: 'round the fist', raw: '22 cm' }] };
const MARA: Person = {
  name: 'Mara', child: false, notes: 'narrow shoulder', sets: [OLD, NEW], put: [],
  worked: [{ id: 'w', garment: 'Pleated skirt', day: '2025-12-01', sizes: [{ level: 'waist', raw: '16' }], ease: [{ level: 'waist', raw: '2 cm' }], length: '68 cm', alterations: 'back 1 cm in', remark: '' }],
};
const VIEW: PeopleView = {
  people: [{ id: 'p', name: 'Mara' }], id: 'p', person: MARA, place: 'Fit F4', elsewhere: null, inSheet: { hip: '98 cm' },
  standing: [
    { key: 'waist', name: 'Waist', place: 'Measures B6', now: '74 cm', newest: '76 cm', state: 'older' },
    { key: 'bust', name: 'Bust', place: 'Measures B3', now: '95 cm', newest: '36 1/2 in', state: 'by hand' },
  ],
  newest: { bust: '36 1/2 in', waist: '76 cm', 'round the fist': '22 cm' }, unit: 'cm', today: '2026-11-25', sentence: '', readonly: false,
};
async function panel(more: Partial<PeopleView> = {}): Promise<PeoplePanel> {
  const aside = await fixture(html`<aside aria-label="People"><tt-people .view=${{ ...VIEW, ...more }}></tt-people></aside>`);
  const made = aside.querySelector('tt-people')!;
  await made.updateComplete;
  return made;
}
/** The form inside the panel, once it is there. */
async function form(made: PeoplePanel) {
  await made.updateComplete;
  const found = find<HTMLElementTagNameMap['tt-set-form']>(made, 'tt-set-form');
  await found.updateComplete;
  const fields = find<HTMLElementTagNameMap['tt-measure-fields']>(found, 'tt-measure-fields');
  await fields.updateComplete;
  return { found, fields };
}
const inputOf = (fields: LitElement, label: string): HTMLInputElement => {
  const at = [...fields.renderRoot.querySelectorAll('label')].find((each) => words(each.textContent).startsWith(label));
  return find<HTMLInputElement>(fields, `#${at!.htmlFor}`);
};

describe('people', () => {
  it('shows the sets side by side, the newest first, each figure in both systems, and what changed', async () => {
    const made = await panel();
    const [table] = made.renderRoot.querySelectorAll('table');
    const rows = [...table!.rows].map((row) => [...row.cells].map((each) => words(each.textContent)));
    expect(rows.slice(1)).to.deep.equal([
      ['Bust', '–', '–', '36 ½ in92.7 cm'],
      ['Waist', '76.0 cm29 ⅞ in', '+2.0 cm+¾ in', '74.0 cm29 ⅛ in'],
      ['round the fist', '22.0 cm8 ⅝ in', '–', '–'],
    ]);
    await accessible(made);
  });

  it('opens one measure: how it is taken, where the tape goes, its course as a picture and as a table', async () => {
    const made = await panel();
    await tabTo(made, button(made, 'Waist'));
    await press('Enter');
    await made.updateComplete;
    expect(words(find(made, '.told').textContent)).to.contain('waist girth Level all round');
    expect([...made.renderRoot.querySelectorAll('.one svg')].map((each) => each.getAttribute('aria-label'))).to.deep.equal([
      'A body from the front, with the tape where the waist is taken.', 'Waist over time: 2025-10-04 74.0 cm; 2026-11-03 76.0 cm.',
    ]);
    expect([...find<HTMLTableElement>(made, '.course').rows].map((row) => words(row.cells[2]!.textContent))).to.deep.equal(['Changed', '–', '+2.0 cm']);
    await accessible(made);
  });

  it('takes a new set by keys, with a bare figure in the unit of the workbook and a doubtful one doubted', async () => {
    const made = await panel();
    const kept = heard<MeasureSet>(made, 'tt-keep-set');
    await tabTo(made, button(made, 'New set of measures…'));
    await press('Enter');
    const { found, fields } = await form(made);
    const waist = inputOf(fields, 'Waist');
    expect(waist.placeholder).to.equal('76 cm');
    waist.focus();
    await sendKeys({ type: '9.1' });
    await fields.updateComplete;
    const says = fields.renderRoot.querySelector(`#${waist.id}-says`)!;
    expect(words(says.textContent)).to.contain('9.1 cm = 3 ⅝ in').and.to.contain('Is it 91.0 cm? It is kept as you typed it.');
    await press('Backspace', 'Backspace', 'Backspace');
    await sendKeys({ type: '78' });
    await accessible(made);
    await press('Enter');
    await found.updateComplete;
    button(found, 'Keep this set').click();
    expect(kept).to.deep.equal([{ id: '', day: '2026-11-25', by: '', remark: '', measures: [{ of: 'waist', raw: '78 cm' }] }]);
  });

  it('does not keep what is no length, goes to it, and loses nothing of what was typed', async () => {
    const made = await panel();
    const kept = heard(made, 'tt-keep-set');
    button(made, 'New set of measures…').click();
    const { found, fields } = await form(made);
    inputOf(fields, 'Hip').focus();
    await sendKeys({ type: 'wide' });
    button(found, 'Keep this set').click();
    await fields.updateComplete;
    expect([kept.length, focused(fields)!.id, inputOf(fields, 'Hip').value]).to.deep.equal([0, inputOf(fields, 'Hip').id, 'wide']);
    expect(texts(fields, '.wrong')).to.deep.equal(['✕ Hip: “wide” is not a length. Type a figure such as 94 cm.']);
    expect(inputOf(fields, 'Hip').getAttribute('aria-invalid')).to.equal('true');
    await accessible(made);
  });

  it('corrects a set, with a measure of her own, and says where nothing is to keep', async () => {
    const made = await panel();
    const kept = heard<MeasureSet>(made, 'tt-keep-set');
    button(made, 'Correct the set of 2025-10-04').click();
    const { found } = await form(made);
    find<HTMLInputElement>(found, '#own').focus();
    await sendKeys({ type: 'Waist' });
    await press('Enter');
    await found.updateComplete;
    expect(texts(found, '[role=alert]')).to.deep.equal(['✕ “Waist” is in the list already.']);
    button(found, 'Keep the corrections').click();
    expect(kept).to.deep.equal([OLD]);
  });

  it('uses the newest figures in the cells that are ticked: those typed by hand only when she ticks them', async () => {
    const made = await panel();
    const used = heard<{ keys: string[] }>(made, 'tt-use-measures');
    await tabTo(made, button(made, 'Use the new measures'));
    await press('Enter');
    await tabTo(made, find(made, '[aria-label="Use the newest Bust in Measures B3"]'));
    await press('Space');
    await made.updateComplete;
    button(made, 'Use the new measures').click();
    expect(used).to.deep.equal([{ keys: ['waist'] }, { keys: ['waist', 'bust'] }]);
  });

  it('puts the measures at the selected cell, with names unless she will not', async () => {
    const made = await panel({ standing: [] });
    const put = heard<{ names: boolean }>(made, 'tt-put-measures');
    await tabTo(made, find(made, '#names'));
    await press('Space');
    await tabTo(made, button(made, 'Put the measures at Fit F4'));
    await press('Enter');
    expect(put).to.deep.equal([{ names: false }]);
  });

  it('adds, renames and takes out a person, marks a child with the caution, keeps notes', async () => {
    const made = await panel();
    const [added, changed, removed] = [heard(made, 'tt-add-person'), heard<object>(made, 'tt-change-person'), heard(made, 'tt-remove-person')];
    await tabTo(made, find(made, '#new'));
    await sendKeys({ type: ' Ines ' });
    await press('Enter');
    await tabTo(made, find(made, '#child'));
    await press('Space');
    await tabTo(made, find(made, '#notes'));
    await press('Control+End');
    await sendKeys({ type: ', long arms' });
    await press('Tab');
    button(made, 'Take Mara out of this workbook…').click();
    await made.updateComplete;
    expect(removed).to.deep.equal([]);
    await accessible(made);
    button(made, 'Take her out').click();
    expect([added, removed.length]).to.deep.equal([[{ name: 'Ines' }], 1]);
    expect(changed).to.deep.equal([{ name: 'Mara', child: true, notes: 'narrow shoulder' }, { name: 'Mara', child: false, notes: 'narrow shoulder, long arms' }]);
    const child = await panel({ person: { ...MARA, child: true } });
    expect(words(find(child, '.note').textContent)).to.contain('local rules and licensed practice decide');
  });

  it('joins what another workbook knows, and asks where both differ', async () => {
    const made = await panel({ elsewhere: [{ key: 'k', name: 'Mara', about: 'Coat: one set', here: 'p', clashes: [{ id: 'a', what: 'The set of 4 October 2025', here: 'Waist 74 cm', there: 'Waist 47 cm' }] }] });
    const taken = heard<TakePerson>(made, 'tt-take-person');
    expect(words(find(made, 'fieldset').textContent)).to.contain('here: Waist 74 cm; there: Waist 47 cm');
    await accessible(made);
    button(made, 'Join to Mara here').click();
    await made.updateComplete;
    [...made.renderRoot.querySelectorAll<HTMLInputElement>('fieldset input')].at(-1)!.click();
    await made.updateComplete;
    button(made, 'Join to Mara here').click();
    button(made, 'Take as somebody else').click();
    expect(taken).to.deep.equal([{ key: 'k', into: 'p', choices: {} }, { key: 'k', into: 'p', choices: { a: 'there' } }, { key: 'k', into: '', choices: {} }]);
  });

  it('with nobody it says what goes here; where it can only be read, nothing is asked', async () => {
    const empty = await panel({ people: [], id: '', person: null, standing: [] });
    expect(words(empty.renderRoot.textContent)).to.contain('The sheets hold measures in cells with names (1)');
    await accessible(empty);
    const reading = await panel({ readonly: true });
    expect([...reading.renderRoot.querySelectorAll('button')].map((each) => words(each.textContent))).to.deep.equal(['Close', 'Bust', 'Waist', 'round the fist']);
  });

  it('has targets of 24 pixels, and scrolls inside itself where it is narrow', async () => {
    const made = await panel();
    made.parentElement!.style.width = '358px';
    for (const target of made.renderRoot.querySelectorAll('button, input:not([type=checkbox]), select, textarea')) {
      const { width, height } = target.getBoundingClientRect();
      expect(Math.min(width, height), target.outerHTML).to.be.at.least(23.9);
    }
    expect(made.scrollWidth).to.be.at.most(358);
    button(made, 'New set of measures…').click();
    const { found, fields } = await form(made);
    for (const each of [made, found, fields]) expect(each.scrollWidth, each.localName).to.be.at.most(358);
    const { right } = inputOf(fields, 'Hip').getBoundingClientRect();
    expect(right).to.be.at.most(fields.getBoundingClientRect().right + 0.5);
  });
});

describe('what worked', () => {
  it('begins with what the sheets say, takes what the selected cell shows, and is kept by keys', async () => {
    const made = await fixture<WorkedForm>(html`<tt-worked-form .people=${[{ id: 'p', name: 'Mara' }, { id: 'q', name: 'Ines' }]} .whom=${'Ines'} .place=${'Fit B13'} .shown=${'4 cm'}
      .begin=${{ garment: 'Tea dress', day: '2026-11-25', sizes: [{ level: 'waist', raw: '16' }], ease: [], length: '' }}></tt-worked-form>`);
    made.focus();
    await made.updateComplete;
    const kept = heard<WorkedAsked>(made, 'tt-keep-worked');
    await tabTo(made, button(made, 'Ease at the bust: take 4 cm from Fit B13'));
    await press('Enter');
    await tabTo(made, find(made, '#alterations'));
    await sendKeys({ type: 'back 1 cm in' });
    await accessible(made);
    await tabTo(made, button(made, 'Keep what worked'));
    await press('Enter');
    expect(kept).to.deep.equal([{
      person: 'q', name: 'Ines',
      worked: { id: '', garment: 'Tea dress', day: '2026-11-25', sizes: [{ level: 'waist', raw: '16' }], ease: [{ level: 'bust', raw: '4 cm' }], length: '', alterations: 'back 1 cm in', remark: '' },
    }]);
  });

  it('asks for the name of somebody new', async () => {
    const made = await fixture<WorkedForm>(html`<tt-worked-form .begin=${{ garment: 'Skirt', day: '2026-11-25', sizes: [], ease: [], length: '' }}></tt-worked-form>`);
    made.focus();
    await made.updateComplete;
    const kept = heard(made, 'tt-keep-worked');
    button(made, 'Keep what worked').click();
    await made.updateComplete;
    expect([kept.length, texts(made, '[role=alert]')]).to.deep.equal([0, ['✕ Type the name of the person.']]);
  });
});
