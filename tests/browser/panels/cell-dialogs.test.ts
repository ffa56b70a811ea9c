/** The dialogs about cells: a note, sorting, and which rows are to show. */
import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import type { LitElement } from 'lit';
import type { Block, FilterPanel, FilterWish, NotePanel, SortPanel, SortWish } from '../../../src/panels/index.ts';
import '../../../src/panels/note.ts';
import '../../../src/panels/sort.ts';
import '../../../src/panels/filter.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts } from './support.ts';

const BLOCK: Block = {
  place: 'A1:C5 of Fit', rows: 5, headings: true, neighbours: false,
  columns: [{ col: 0, letter: 'A', heading: 'Part' }, { col: 1, letter: 'B', heading: 'Width' }, { col: 2, letter: 'C', heading: '' }],
};
const isOpen = (made: LitElement): boolean => find<HTMLDialogElement>(made, 'dialog').open;
const refuse = (made: LitElement, type: string): void => made.addEventListener(type, (event) => event.preventDefault());

describe('a note', () => {
  async function note(text = ''): Promise<NotePanel> {
    const made = await fixture<NotePanel>(html`<tt-note></tt-note>`);
    made.open('B4 of Fit', text);
    await made.updateComplete;
    return made;
  }

  it('is typed and kept by keys', async () => {
    const made = await note();
    const kept = heard(made, 'tt-note');
    expect(focused(made)?.localName).to.equal('textarea');
    await sendKeys({ type: 'over the blouse' });
    await press('Enter');
    await sendKeys({ type: 'twice' });
    await accessible(made);
    await press('Control+Enter');
    expect(kept).to.deep.equal([{ note: 'over the blouse\ntwice' }]);
    expect(isOpen(made)).to.equal(false);
  });

  it('is taken away, or left as it was', async () => {
    const made = await note('as measured');
    const kept = heard(made, 'tt-note');
    expect(find<HTMLTextAreaElement>(made, 'textarea').value).to.equal('as measured');
    await press('Escape');
    expect([kept.length, isOpen(made)]).to.deep.equal([0, false]);
    made.open('B4 of Fit', 'as measured');
    await made.updateComplete;
    await tabTo(made, button(made, 'Take the note away'));
    await press('Enter');
    expect(kept).to.deep.equal([{ note: '' }]);
  });

  it('stays open with a sentence when it cannot be kept', async () => {
    const made = await note();
    refuse(made, 'tt-note');
    await sendKeys({ type: 'x' });
    await press('Control+Enter');
    made.sentence = 'Nothing can be changed here: open in another tab.';
    await made.updateComplete;
    expect([isOpen(made), find(made, '[role=alert]').textContent]).to.deep.equal([true, 'Nothing can be changed here: open in another tab.']);
    await accessible(made);
  });
});

describe('sorting', () => {
  async function sort(block = BLOCK, first = 1): Promise<SortPanel> {
    const made = await fixture<SortPanel>(html`<tt-sort></tt-sort>`);
    made.open(block, first);
    await made.updateComplete;
    return made;
  }
  const selects = (made: SortPanel): HTMLSelectElement[] => [...made.renderRoot.querySelectorAll('select')];

  it('by the column of the selected cell, at once', async () => {
    const made = await sort();
    const wished = heard<SortWish>(made, 'tt-sort');
    expect(selects(made).map((each) => each.selectedOptions[0]!.text)).to.deep.equal(['B, Width', 'smallest first']);
    await accessible(made);
    await tabTo(made, button(made, 'Sort 4 rows'));
    await press('Enter');
    expect(wished).to.deep.equal([{ headings: true, keys: [{ col: 1, descending: false }] }]);
    expect(isOpen(made)).to.equal(false);
  });

  it('by several columns, largest first, without headings', async () => {
    const made = await sort();
    const wished = heard<SortWish>(made, 'tt-sort');
    await tabTo(made, find(made, 'input'));
    await press('Space');
    await tabTo(made, selects(made)[1]!);
    await press('ArrowDown');
    await tabTo(made, button(made, 'And then by another column'));
    await press('Enter', 'Enter');
    await made.updateComplete;
    expect(button(made, 'And then by another column').disabled, 'no more columns than there are').to.equal(true);
    expect(selects(made).filter((_, at) => at % 2 === 0).map((each) => each.selectedOptions[0]!.text)).to.deep.equal(['Column B', 'Column A', 'Column C']);
    await tabTo(made, button(made, 'Not by this: key 2'));
    await press('Enter');
    await accessible(made);
    await tabTo(made, button(made, 'Sort 5 rows'));
    await press('Enter');
    expect(wished).to.deep.equal([{ headings: false, keys: [{ col: 1, descending: true }, { col: 2, descending: false }] }]);
  });

  it('says what would stay behind, and why it was refused', async () => {
    const made = await sort({ ...BLOCK, neighbours: true });
    refuse(made, 'tt-sort');
    expect(texts(made, '.note')).to.deep.equal(['Filled cells right beside A1:C5 of Fit are not among these columns and stay where they are. Select them too if they belong to the rows.']);
    await tabTo(made, button(made, 'Sort 4 rows'));
    await press('Enter');
    made.sentence = 'C3 of Fit uses B2 in another of these rows.';
    await made.updateComplete;
    expect([isOpen(made), find(made, '[role=alert]').textContent]).to.deep.equal([true, 'C3 of Fit uses B2 in another of these rows.']);
    await accessible(made);
  });
});

describe('rows that match', () => {
  const FIRST = { col: 1, test: 'is', text: '30.0 cm' } as const;
  async function filter(on = false): Promise<FilterPanel> {
    const made = await fixture<FilterPanel>(html`<tt-filter></tt-filter>`);
    made.open(BLOCK, on ? [{ col: 0, test: 'has', text: 'ba' }] : [], FIRST, on);
    await made.updateComplete;
    return made;
  }

  it('begin with what the selected cell shows', async () => {
    const made = await filter();
    const wished = heard<FilterWish>(made, 'tt-filter');
    await accessible(made);
    await tabTo(made, button(made, 'Show only these'));
    await press('Enter');
    expect(wished).to.deep.equal([{ headings: true, conditions: [FIRST] }]);
    expect(isOpen(made)).to.equal(false);
  });

  it('meet several conditions; some need no text', async () => {
    const made = await filter();
    const wished = heard<FilterWish>(made, 'tt-filter');
    await tabTo(made, find(made, '[aria-label="How, condition 1"]'));
    await sendKeys({ type: 'is at least' });
    await tabTo(made, find(made, '[aria-label="What, condition 1"]'));
    await sendKeys({ type: '20 cm' });
    await tabTo(made, button(made, 'And also'));
    await press('Enter');
    await made.updateComplete;
    await tabTo(made, find(made, '[aria-label="How, condition 2"]'));
    await sendKeys({ type: 'is empty' });
    await made.updateComplete;
    expect(made.renderRoot.querySelectorAll('li input').length).to.equal(1);
    await accessible(made);
    await tabTo(made, button(made, 'Show only these'));
    await press('Enter');
    expect(wished).to.deep.equal([{ headings: true, conditions: [{ col: 1, test: 'atLeast', text: '20 cm' }, { col: 0, test: 'empty', text: '' }] }]);
  });

  it('that are matched already can be matched otherwise, or all shown again', async () => {
    const made = await filter(true);
    const off = heard(made, 'tt-filter-off');
    expect(find<HTMLInputElement>(made, '[aria-label="What, condition 1"]').value).to.equal('ba');
    expect(made.renderRoot.querySelector('[type=checkbox]') === null, 'the headings are out of it already').to.equal(true);
    await accessible(made);
    await tabTo(made, button(made, 'Show all rows again'));
    await press('Enter');
    expect([off.length, isOpen(made)]).to.deep.equal([1, false]);
  });

  it('fit a narrow screen', async () => {
    await setViewport({ width: 390, height: 800 });
    const made = await filter();
    const dialog = find(made, 'dialog');
    expect(dialog.scrollWidth).to.be.at.most(dialog.clientWidth);
    await accessible(made);
    await setViewport({ width: 800, height: 600 });
  });
});
