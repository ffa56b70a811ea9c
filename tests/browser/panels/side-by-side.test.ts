import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { Comparison, ComparisonChange, KeptWish, SideBySidePanel } from '../../../src/panels/index.ts';
import { NO_COMPARISON } from '../../../src/panels/side-by-side.ts';
import { twoLengths } from '../../../src/pictures/index.ts';
import { quantity, type ShowAs, type UnitCode } from '../../../src/quantities/index.ts';
import type { Result } from '../../../src/reckoning/index.ts';
import { accessible, button, find, heard, press, tabTo, texts, words } from './support.ts';

const q = (amount: number, unit: UnitCode): Result => ({ kind: 'quantity', value: quantity(amount, unit).value, unit });
const cell = (row: number, col = 1) => ({ sheet: 1, row, col });

const SIZES: Comparison = {
  ...NO_COMPARISON,
  cases: ['As it is', 'Tried'],
  inputs: [{ cell: cell(4), label: 'Size to cut', place: 'Fit B5', now: '10', values: [null, '14'] }],
  outputs: [
    { cell: cell(5), label: 'Its waist', place: 'Fit B6', results: [q(30.5, 'in'), q(34, 'in')], differences: [q(0, 'in'), q(3.5, 'in')] },
    { cell: cell(6), label: 'Too tight by', place: 'Fit B7', results: [q(4, 'cm'), q(1, 'cm')], differences: [q(0, 'cm'), q(-3, 'cm')] },
    { cell: cell(7), label: 'Pleats', place: 'Fit B8', results: [q(8, ''), q(8, '')], differences: [q(0, ''), q(0, '')] },
    { cell: cell(8), label: 'Can it be cut?', place: 'Fit B9', results: [{ kind: 'text', text: 'yes' }, { kind: 'text', text: 'no' }], differences: [{ kind: 'empty' }, { kind: 'text', text: 'no' }] },
    { cell: cell(9), label: '', place: 'Fit B10', results: [q(1, 'cm'), { kind: 'error', sentence: 'Divides by 0.' }], differences: [q(0, 'cm'), null] },
  ],
};

async function panel(comparison: Comparison, more: Partial<SideBySidePanel> = {}): Promise<SideBySidePanel> {
  const aside = await fixture(html`<aside aria-label="Side by side"><tt-side-by-side></tt-side-by-side></aside>`);
  const made = aside.querySelector('tt-side-by-side')!;
  Object.assign(made, { comparison, ...more });
  await made.updateComplete;
  return made;
}
const rows = (made: SideBySidePanel, at: number): string[][] => [...made.renderRoot.querySelectorAll('table')[at]!.rows].map((row) => [...row.cells].slice(1).map((each) => words(each.textContent)));

describe('side by side', () => {
  it('shows every result under both, and the difference', async () => {
    const made = await panel(SIZES);
    expect(rows(made, 1)).to.deep.equal([
      ['As it is', 'Tried', 'Difference'],
      ['30 ½ in', '34 in', '+3 ½ in'],
      ['4.0 cm', '1.0 cm', '−3.0 cm'],
      ['8', '8', 'same'],
      ['yes', 'no', 'no'],
      ['1.0 cm', '✕ Divides by 0.', '–'],
    ]);
    expect(texts(made, 'caption')).to.deep.equal(['Inputs', 'Results that depend on them']);
    await accessible(made);
  });

  it('shows both systems where the workbook does', async () => {
    const as: ShowAs = { system: 'both', inchStep: 8 };
    const made = await panel(SIZES, { as });
    expect(rows(made, 1)[1]).to.deep.equal(['30 ½ in77.5 cm', '34 in86.4 cm', '+3 ½ in+8.9 cm']);
  });

  it('calls a difference nothing only when it is', async () => {
    const near = (difference: Result): Comparison => ({ ...SIZES, outputs: [{ ...SIZES.outputs![0]!, differences: [q(0, 'in'), difference] }] });
    expect(rows(await panel(near(q(0.01, 'in'))), 1)[1]![2]).to.equal('less than is shown');
    expect(rows(await panel(near({ kind: 'quantity', value: 9e-14, unit: 'in' })), 1)[1]![2]).to.equal('same');
  });

  it('asks for another value by keys', async () => {
    const made = await panel(SIZES);
    const asked = heard<ComparisonChange>(made, 'tt-compare');
    await tabTo(made, find(made, '[aria-label="Size to cut, Tried"]'));
    await sendKeys({ type: '12' });
    await press('Enter');
    expect(asked).to.deep.equal([{ change: 'value', input: 0, case: 1, raw: '12' }]);
  });

  it('gives the sheet’s own value where a field says nothing of its own', async () => {
    const made = await panel(SIZES);
    const [own, tried] = ['As it is', 'Tried'].map((name) => find<HTMLInputElement>(made, `[aria-label="Size to cut, ${name}"]`));
    expect([own!.value, own!.className, tried!.value, tried!.className]).to.deep.equal(['10', 'sheets', '14', '']);
  });

  it('takes differences from any case, adds and leaves out cases, and puts one into the sheet', async () => {
    const results = [q(30.5, 'in'), q(32, 'in'), q(34, 'in')];
    const three: Comparison = {
      ...SIZES, cases: ['10', '12', '14'], against: 1, inputs: [{ ...SIZES.inputs[0]!, values: [null, '12', '14'] }],
      outputs: [{ ...SIZES.outputs![0]!, results, differences: [q(-1.5, 'in'), q(0, 'in'), q(2, 'in')] }],
    };
    const made = await panel(three);
    expect(rows(made, 1)).to.deep.equal([['10', '12', '14', '10 less 12', '14 less 12'], ['30 ½ in', '32 in', '34 in', '−1 ½ in', '+2 in']]);
    const asked = heard<ComparisonChange>(made, 'tt-compare');
    for (const name of ['leave out 14', 'Add a case', 'Put 14 in']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    await tabTo(made, find(made, '[name=against]'));
    await press('ArrowDown', 'Tab');
    expect(asked).to.deep.equal([{ change: 'remove-case', case: 2 }, { change: 'add-case' }, { change: 'put', case: 2 }, { change: 'against', case: 2 }]);
    expect(texts(made, '.tools button')).not.to.include('Put 10 in');
    await accessible(made);
  });

  it('shows the picture of every case, and says where there is none', async () => {
    const picture = twoLengths({ base: { name: 'Body', of: 'the body', length: 900 }, other: { name: 'Garment', length: 980 }, more: 'ease', less: 'smaller by', unit: 'cm' }, { system: 'own', inchStep: 8 });
    const made = await panel({ ...SIZES, pictured: [{ cell: '=Fit!B6', name: 'Ease · Fit B6' }], picture: '=Fit!B6', pictures: [picture, null] });
    expect(texts(made, 'figcaption')).to.deep.equal(['As it is', 'Tried']);
    expect(made.renderRoot.querySelectorAll('figure svg')).to.have.length(1);
    expect(words(made.renderRoot.querySelectorAll('figure')[1]!.textContent)).to.contain('No picture of this case.');
    await accessible(made);
  });

  it('opens one of several that are kept, names it, begins another and takes it away', async () => {
    const made = await panel({ ...SIZES, kept: { id: '2', all: [{ id: '1', title: 'Sizes' }, { id: '2', title: 'Cloths' }] } });
    const asked = heard<KeptWish>(made, 'tt-kept');
    await tabTo(made, find(made, '[name=title]'));
    await sendKeys({ type: 'Two cloths' });
    await press('Enter');
    for (const name of ['Another', 'Take away']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    expect(asked).to.deep.equal([{ kept: 'title', title: 'Two cloths' }, { kept: 'another' }, { kept: 'take away' }]);
    expect(texts(made, '[name=kept] option')).to.deep.equal(['Sizes', 'Cloths']);
    await accessible(made);
  });

  it('takes a case from another workbook', async () => {
    const made = await panel({ ...SIZES, books: [{ id: 'a', title: 'Last year' }, { id: 'b', title: 'Winter' }] });
    const asked = heard<ComparisonChange>(made, 'tt-compare');
    await tabTo(made, find(made, '[name=book]'));
    await press('ArrowDown');
    await tabTo(made, button(made, 'Add its values as a case'));
    await press('Enter');
    expect(asked).to.deep.equal([{ change: 'from-book', id: 'b' }]);
    await accessible(made);
  });

  it('asks for another heading', async () => {
    const made = await panel(SIZES);
    const asked = heard<ComparisonChange>(made, 'tt-compare');
    await tabTo(made, find(made, '[aria-label="Heading 2"]'));
    await sendKeys({ type: 'Size 14' });
    await press('Tab');
    expect(asked).to.deep.equal([{ change: 'case', case: 1, label: 'Size 14' }]);
  });

  it('takes the selected cell as an input, and leaves one out', async () => {
    const made = await panel(SIZES, { candidate: 'Waist · Fit C2' });
    const asked = heard<ComparisonChange>(made, 'tt-compare');
    await tabTo(made, button(made, 'Compare over Waist · Fit C2'));
    await press('Enter');
    await tabTo(made, button(made, 'Leave Size to cut out'));
    await press('Enter');
    expect(asked).to.deep.equal([{ change: 'add-input' }, { change: 'remove-input', input: 0 }]);
  });

  it('goes to a cell, saves and closes', async () => {
    const made = await panel(SIZES);
    const gone = heard<{ area: object }>(made, 'tt-go');
    const saved = heard(made, 'tt-export-comparison');
    const closed = heard(made, 'tt-close');
    await tabTo(made, button(made, 'Close'));
    await press('Enter');
    await tabTo(made, button(made, 'Save as CSV…'));
    await press('Enter');
    await tabTo(made, button(made, 'Fit B6 ↗'));
    await press('Enter');
    expect(gone).to.deep.equal([{ area: { sheet: 1, top: 5, left: 1, bottom: 5, right: 1 } }]);
    expect([saved.length, closed.length]).to.deep.equal([1, 1]);
  });

  it('says what to do first, that it is at work, and why there is nothing', async () => {
    const empty = await panel({ ...NO_COMPARISON, cases: ['As it is', 'Tried'] });
    expect(button(empty, 'Select an input in the sheet to add it').disabled).to.equal(true);
    expect(button(empty, 'Save as CSV…').disabled).to.equal(true);
    await accessible(empty);
    const busy = await panel({ ...SIZES, outputs: null });
    expect(find(busy, '[role=status]').textContent).to.equal('Working it out…');
    const none = await panel({ ...SIZES, outputs: [], sentence: 'No result depends on these inputs yet.' });
    expect(texts(none, '[role=status]')).to.deep.equal(['No result depends on these inputs yet.']);
    await accessible(none);
  });

  it('has targets of 24 pixels, and scrolls inside itself where it is narrow', async () => {
    const made = await panel(SIZES, { candidate: 'Waist · Fit C2' });
    made.parentElement!.style.width = '320px';
    for (const target of made.renderRoot.querySelectorAll('button, input')) {
      const { width, height } = target.getBoundingClientRect();
      expect(Math.min(width, height), target.outerHTML).to.be.at.least(23.9);
    }
    expect(made.scrollWidth).to.be.at.most(320);
  });
});
