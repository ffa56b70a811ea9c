/** The panel "People" over a real desk: every wish is one edit, undone as one, and nothing is written over in silence. */
import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { render } from 'lit';
import { demoBook } from '../../../src/app/demo.ts';
import { Desk } from '../../../src/app/desk.ts';
import { panel } from '../../../src/app/people.ts';
import type { Shelf } from '../../../src/keeping/index.ts';
import type { PeoplePanel } from '../../../src/panels/index.ts';
import '../../../src/panels/people.ts';
import { cellAt, emptyBook, nameCalled, recordsOf, sheetNamed, type Book, type Person } from '../../../src/workbook/index.ts';
import { button, find, texts, words } from '../panels/support.ts';

const MARA: Person = { name: 'Aunt Oda', child: false, notes: 'below the knee', worked: [], put: [], sets: [{ id: 'x', day: '2024-05-01', by: 'Mara', remark: '', measures: [{ of: 'waist', raw: '75 cm' }] }] };
const COAT: Book = { ...emptyBook('coat'), title: 'Coat', records: [{ kind: 'person', id: 'p', data: MARA }] };
const shelf = {
  list: async () => [{ id: 'coat', title: 'Coat', person: '', changedAt: '2026-11-01T10:00:00Z', savedAt: null, putAway: false, binnedAt: null, picture: [] }],
  read: async () => ({ book: COAT, problems: [] }),
} as unknown as Shelf;

async function open() {
  const desk = new Desk(demoBook('test'));
  const place = await fixture<HTMLElement>(html`<aside aria-label="People"></aside>`);
  const draw = (): void => { render(made.render(), place); };
  const made = panel({ desk, keep: { keeping: { shelf } as never, start: async () => undefined }, draw, close: () => undefined });
  desk.addEventListener('change', draw);
  made.opened?.();
  draw();
  const shown = place.querySelector<PeoplePanel>('tt-people')!;
  await shown.updateComplete;
  const measure = (row: number): string => cellAt(sheetNamed(desk.book, 'Measures')!, row, 1)?.raw ?? '';
  const people = () => recordsOf(desk.book, 'person').map(({ data }) => data);
  const press = async (name: string) => {
    button(shown, name).click();
    await shown.updateComplete;
  };
  return { desk, shown, measure, people, press };
}

async function withOda() {
  const opened = await open();
  find<HTMLInputElement>(opened.shown, '#new').focus();
  await sendKeys({ type: 'Aunt Oda' });
  await sendKeys({ press: 'Enter' });
  await opened.shown.updateComplete;
  await opened.press('New set from the sheet’s figures…');
  const form = find<HTMLElementTagNameMap['tt-set-form']>(opened.shown, 'tt-set-form');
  await form.updateComplete;
  find<HTMLInputElement>(form, '#day').value = '2025-11-03';
  find(form, '#day').dispatchEvent(new Event('input'));
  button(form, 'Keep this set').click();
  await opened.shown.updateComplete;
  return opened;
}

/** A new set in which only the waist was measured. */
async function newWaist({ shown, press }: Awaited<ReturnType<typeof open>>, raw: string): Promise<void> {
  await press('New set of measures…');
  const form = find<HTMLElementTagNameMap['tt-set-form']>(shown, 'tt-set-form');
  await form.updateComplete;
  const fields = find<HTMLElementTagNameMap['tt-measure-fields']>(form, 'tt-measure-fields');
  await fields.updateComplete;
  fields.dispatchEvent(new CustomEvent('tt-measure', { detail: { of: 'waist', raw }, bubbles: true, composed: true }));
  await form.updateComplete;
  button(form, 'Keep this set').click();
  await shown.updateComplete;
}

describe('people over a desk', () => {
  it('a first set from the sheet, a newer one, and its figures into the cells: each one edit', async () => {
    const opened = await withOda();
    const { desk, people, measure, press, shown } = opened;
    expect(people()[0]!.sets.map(({ day, measures }) => [day, measures.length])).to.deep.equal([['2025-11-03', 34]]);
    expect(words(shown.renderRoot.textContent)).to.contain('34 cells hold her newest figures.');
    await newWaist(opened, '79');
    expect(people()[0]!.sets).to.have.length(2);
    expect(measure(5)).to.equal('77.5 cm');
    await press('Use the new measures');
    expect(measure(5)).to.equal('79 cm');
    expect(people()[0]!.put).to.deep.equal([{ of: 'waist', cell: '=Measures!B6', raw: '79 cm' }]);
    desk.undo();
    expect([measure(5), people()[0]!.put]).to.deep.equal(['77.5 cm', []]);
    desk.undo();
    desk.undo();
    desk.undo();
    expect(people()).to.deep.equal([]);
  });

  it('what she typed over by hand is not ticked, and stays', async () => {
    const opened = await withOda();
    const { desk, measure, shown } = opened;
    const sheet = sheetNamed(desk.book, 'Measures')!;
    desk.do({ do: 'setCells', sheet: sheet.id, cells: [{ row: 5, col: 1, cell: { raw: '78 cm', input: true } }] });
    await newWaist(opened, '79');
    expect(find<HTMLInputElement>(shown, '[aria-label="Use the newest Waist in Measures B6"]').checked).to.equal(false);
    expect([button(shown, 'Use the new measures').disabled, measure(5)]).to.deep.equal([true, '78 cm']);
  });

  it('puts them at the selected cell, or says what stands in the way and where', async () => {
    const { desk, press, shown } = await withOda();
    const fit = sheetNamed(desk.book, 'Fit')!;
    desk.select({ anchor: { row: 3, col: 1 }, focus: { row: 3, col: 1 } }, fit.id);
    await shown.updateComplete;
    const before = desk.book;
    await press('Put the measures at Fit B4');
    expect(desk.book === before).to.equal(true);
    expect(texts(shown, '[role=alert]')[0]).to.match(/^✕ B4 of Fit is not empty/);
    desk.select({ anchor: { row: 60, col: 5 }, focus: { row: 60, col: 5 } }, fit.id);
    await shown.updateComplete;
    await press('Put the measures at Fit F61');
    expect(cellAt(sheetNamed(desk.book, 'Fit')!, 62, 6)).to.deep.equal({ raw: '94 cm', input: true });
    expect(cellAt(sheetNamed(desk.book, 'Fit')!, 61, 5)?.raw).to.equal('Height');
    expect(nameCalled(desk.book, 'waist')!.area!.sheet, 'the name stays with its cell').to.equal(sheetNamed(desk.book, 'Measures')!.id);
    desk.undo();
    expect(cellAt(sheetNamed(desk.book, 'Fit')!, 61, 5)).to.equal(undefined);
  });

  it('joins the same name of another workbook, keeping what is here', async () => {
    const { people, press, shown, desk } = await withOda();
    await press('Look for people in the other workbooks of this device…');
    await new Promise((done) => setTimeout(done, 50));
    await shown.updateComplete;
    expect(words(find(shown, '.list').textContent)).to.contain('Coat: one set, the newest of 1 May 2024');
    await press('Join to Aunt Oda here');
    expect(people().map(({ sets, notes }) => [sets.map(({ day }) => day), notes])).to.deep.equal([[['2024-05-01', '2025-11-03'], 'below the knee']]);
    expect(desk.said).to.equal('New for Aunt Oda: sets of measures 1.');
    await press('Join to Aunt Oda here');
    expect(desk.said).to.equal('Aunt Oda has all of that already.');
    await press('Take as somebody else');
    expect(people().map(({ name }) => name)).to.deep.equal(['Aunt Oda', 'Aunt Oda']);
  });
});
