import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { Comparison, ComparisonChange, SideBySidePanel } from '../../../src/panels/index.ts';
import '../../../src/panels/side-by-side.ts';
import { quantity, type ShowAs, type UnitCode } from '../../../src/quantities/index.ts';
import type { Result } from '../../../src/reckoning/index.ts';
import { accessible, button, find, heard, press, tabTo, texts, words } from './support.ts';

const q = (amount: number, unit: UnitCode): Result => ({ kind: 'quantity', value: quantity(amount, unit).value, unit });
const cell = (row: number, col = 1) => ({ sheet: 1, row, col });

const SIZES: Comparison = {
  cases: ['As it is', 'Tried'],
  inputs: [{ cell: cell(4), label: 'Size to cut', place: 'Fit B5', values: ['10', '14'] }],
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
    const empty = await panel({ cases: ['As it is', 'Tried'], inputs: [], outputs: null });
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
